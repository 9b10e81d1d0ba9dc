using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Retention that stands inside a demand for progress payment: it falls due by its own section, and is counted there alone.
/// </summary>
internal sealed class RetentionInside
{
    private readonly decimal inside;
    private readonly Dictionary<SumDue, decimal> taken = [];

    private RetentionInside(decimal inside) => this.inside = inside;

    /// <summary>
    /// What is demanded beyond the work without its retention. Where something furnished is not priced nobody can tell, and nothing is
    /// taken out.
    /// </summary>
    [Rule("Civ. Code § 8800(d)")]
    public static RetentionInside Of(FactsAsOf facts)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0 || facts.All<PaymentDemanded>().Count == 0)
            return new RetentionInside(0m);
        var work = new WorkValue(facts, RemedyLaw.Of(Remedy.Debt, facts.Job)!, []);
        if (work.HasUnpriced)
            return new RetentionInside(0m);
        var retained = Total.Of(held, static r => r.Amount);
        var demanded = 0m;
        foreach (var demand in facts.All<PaymentDemanded>())
            demanded += OwnersProgress.IsNotice(facts, demand) ? demand.Amount : 0m;
        return new RetentionInside(Math.Clamp(demanded - (work.Priced - retained), 0m, retained));
    }

    /// <summary>The sums without it: it is taken out of those that fall due earliest, which leaves the lower penalty.</summary>
    public List<SumDue> TakeOut(List<SumDue> sums)
    {
        if (inside == 0)
            return sums;
        var left = inside;
        sums.Sort(static (a, b) => a.Due.CompareTo(b.Due));
        return sums.ConvertAll(sum =>
        {
            var part = Math.Min(left, sum.Unpaid);
            if (part == 0)
                return sum;
            left -= part;
            var without = new SumDue(sum.Fact, sum.From, sum.Due, sum.Unpaid - part, sum.Terms);
            taken[without] = part;
            return without;
        });
    }

    /// <summary>What is owed, with a word on what was taken out of the sum.</summary>
    public SumOwed Tell(SumOwed owed, SumDue sum) => !taken.TryGetValue(sum, out var part) ? owed : owed with
    {
        Why = [.. owed.Why,
            Reason.Of("Civ. Code § 8800(d)", $"{part} of what was demanded is retention; it falls due by Civ. Code § 8812 and is counted "
                + $"there alone.", [sum.Fact])],
    };
}
