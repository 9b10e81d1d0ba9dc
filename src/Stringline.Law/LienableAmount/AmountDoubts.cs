using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Between what figures an amount lies, and what would settle it.</summary>
internal sealed class AmountDoubts(WorkValue work, List<Obligation> charges)
{
    private List<Question>? questions;

    private void Ask(Sentence text, decimal? dollars, Entry? corrects = null) =>
        (questions ??= []).Add(new Question(text, Dollars: dollars) { Corrects = corrects });

    /// <summary>
    /// The first credit of which nobody says what work it is for, so that it may belong to work within reach or to work out of it.
    /// </summary>
    public static Credited? Undirected(FactsAsOf facts, List<Obligation> items)
    {
        foreach (var credit in facts.All<Credited>())
        {
            if (!items.Exists(i => i.Ref is not null && i.Ref == credit.Toward))
                return credit;
        }

        return null;
    }

    /// <summary>Whether nothing is owed only because the file does not say what the work was worth.</summary>
    public bool IsUnknown(FactsAsOf facts) => work.HasUnpriced && IsPaid() && !(work.Cap <= Received(facts));

    private bool IsPaid() => work.Items.TrueForAll(static i => i.Unpaid == 0);

    // For work: what went to interest and charges lowers no price.
    private decimal Received(FactsAsOf facts) =>
        Total.Of(facts.All<Paid>(), static p => p.Amount) + Total.Of(facts.All<Credited>(), static c => c.Amount)
        - Total.Of(charges, static c => c.Value - c.Unpaid);

    /// <summary>The waterfall with its least and its most, and the questions; the same where there is no doubt.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="amount">The waterfall.</param>
    /// <param name="undirected">The first credit of which nobody says what it is for; null where each is for some work.</param>
    /// <param name="otherwise">What is left of each if undirected credits belong to the work within reach.</param>
    /// <param name="released">What waivers take off.</param>
    public Waterfall Measure(FactsAsOf facts, Waterfall amount, Credited? undirected, List<Obligation> otherwise, decimal released)
    {
        var most = amount.Demand + Straddling();
        var least = undirected is null
            ? amount.Demand : Credits(undirected, amount.Demand, Math.Max(0m, Demand.SecuredUnpaid(otherwise) - released));
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
            Ask($"What was furnished on each side of the day that the preliminary notice reaches back to? Split the entry, with the value "
                + $"on each side.{WorkKinds.Furnished.At("amount"):aside}", unpaid, first);
        return unpaid;
    }

    // A credit for goods returned belongs to those goods; by analogy with a payment it goes to the oldest.
    private decimal Credits(Credited credit, decimal demand, decimal otherwise)
    {
        if (otherwise >= demand)
            return demand;
        Ask($"For which work was the credit given? If it was for work within reach of the notice, it lowers the "
            + $"claim.{MoneyKinds.Credited.At("toward"):aside}", demand - otherwise, credit);
        return otherwise;
    }

    // An agreed price above what was received, and nothing left to claim: something is not entered.
    private decimal OpenPrice(FactsAsOf facts, bool unknown)
    {
        if (unknown)
        {
            var dollars = work.Cap is { } price ? price - Received(facts) : (decimal?)null;
            Ask(work.NotYetValued > 0
                ? (Sentence)$"What was the work done so far worth, or is it finished?{WorkKinds.Furnished.At("amount"):aside}"
                : $"What was the work worth that was furnished without a price?{WorkKinds.Furnished.At("amount"):aside}", dollars);
            return dollars ?? 0m;
        }

        if (work.Cap is { } cap && facts.HasFurnished && IsPaid() && Received(facts) is var received && cap > received
            && work.Priced <= received)
            Ask($"All that is priced as furnished is paid, but the agreed price is {LawText.Money(cap)}. Was more "
                + $"furnished?{WorkKinds.Furnished.At("amount"):aside}", cap - received);
        return 0m;
    }
}
