using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Between what figures an amount lies, and what would settle it.</summary>
internal sealed class AmountDoubts(WorkValue work)
{
    private List<Question>? questions;

    private void Ask(string text, decimal? dollars, Entry? corrects = null) =>
        (questions ??= []).Add(new Question(text, Dollars: dollars) { Corrects = corrects });

    /// <summary>Whether a credit of which nobody says what it is for may belong to work within reach or to work out of it.</summary>
    public static bool UndirectedCredits(FactsAsOf facts, List<Obligation> items)
    {
        foreach (var credit in facts.All<Credited>())
        {
            if (credit.Toward is null || !items.Exists(i => i.Ref == credit.Toward))
                return items.Exists(static i => i.Secured) && items.Exists(static i => !i.Secured);
        }

        return false;
    }

    /// <summary>Whether nothing is owed only because the file does not say what the work was worth.</summary>
    public bool IsUnknown(FactsAsOf facts)
    {
        if (!work.HasUnpriced || !IsPaid() || work.Cap <= Received(facts))
            return false;
        return true;
    }

    private bool IsPaid()
    {
        foreach (var item in work.Items)
        {
            if (item.Unpaid > 0)
                return false;
        }

        return true;
    }

    private static decimal Received(FactsAsOf facts) => Total.Of(facts.All<Paid>(), static p => p.Amount) + Total.Of(facts.All<Credited>(), static c => c.Amount);

    /// <summary>The waterfall with its least and its most, and the questions; the same where there is no doubt.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="amount">The waterfall.</param>
    /// <param name="otherwise">What is left of each if undirected credits belong to the work within reach; null where that is no question.</param>
    /// <param name="released">What waivers take off.</param>
    public Waterfall Measure(FactsAsOf facts, Waterfall amount, List<Obligation>? otherwise, decimal released)
    {
        var (least, most) = (amount.Demand, amount.Demand);
        if (amount.InDoubt > 0)
            most += Straddling();
        if (otherwise is not null)
            least = Credits(facts, amount.Demand, Math.Max(0m, Demand.SecuredUnpaid(otherwise) - released));
        foreach (var (change, asked) in work.MaybeOutside)
        {
            least -= Math.Min(least, change.Amount);
            Ask(asked, change.Amount, change);
        }

        if (work.ValueQuestion is { } value)
        {
            most += value.Dollars ?? 0m;
            (questions ??= []).Add(value);
        }

        most += OpenPrice(facts, amount.IsUnknown);
        return questions is null ? amount : amount with { AtLeast = least, AtMost = most, Questions = questions };
    }

    private decimal Straddling()
    {
        var unpaid = 0m;
        Entry? first = null;
        foreach (var item in work.Items)
        {
            if (!item.Straddles || item.Unpaid == 0)
                continue;
            unpaid += item.Unpaid;
            first ??= item.Entry;
        }

        if (unpaid > 0)
            Ask("What was furnished on each side of the day that the preliminary notice reaches back to? Split the entry, with the value on each side. (furnished.amount)", unpaid, first);
        return unpaid;
    }

    // A credit for goods returned belongs to those goods; by analogy with a payment it goes to the oldest.
    private decimal Credits(FactsAsOf facts, decimal demand, decimal otherwise)
    {
        if (otherwise >= demand)
            return demand;
        foreach (var credit in facts.All<Credited>())
        {
            if (credit.Toward is null)
            {
                Ask("For which work was the credit given? If it was for work within reach of the notice, it lowers the claim. (credited.toward)", demand - otherwise, credit);
                break;
            }
        }

        return otherwise;
    }

    // An agreed price above what was received, and nothing left to claim: something is not entered.
    private decimal OpenPrice(FactsAsOf facts, bool unknown)
    {
        if (unknown)
        {
            var dollars = work.Cap is { } price ? price - Received(facts) : (decimal?)null;
            Ask(work.NotYetValued > 0
                ? "What was the work done so far worth, or is it finished? (furnished.amount)"
                : "What was the work worth that was furnished without a price? (furnished.amount)", dollars);
            return dollars ?? 0m;
        }

        if (work.Cap is { } cap && facts.HasFurnished && cap > Received(facts) && work.Priced <= Received(facts) && IsPaid())
            Ask($"All that is priced as furnished is paid, but the agreed price is {LawText.Money(cap)}. Was more furnished? (furnished.amount)", cap - Received(facts));
        return 0m;
    }
}
