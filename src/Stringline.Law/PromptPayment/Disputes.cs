using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>Which sum a good-faith dispute is about: each dispute lets a part of one sum be held, and of one only.</summary>
internal static class Disputes
{
    /// <summary>
    /// Gives each sum what is disputed of it. A dispute about other sums excuses nothing (United Riggers &amp; Erectors v. Coast Iron &amp;
    /// Steel (2018) 4 Cal.5th 1082); one of which nobody says what it is about is taken to be about the sum that falls due earliest, which
    /// leaves the lower penalty.
    /// </summary>
    [Rule("Civ. Code § 8800(b)")]
    [Rule("Civ. Code § 8814(c)")]
    public static void Assign(FactsAsOf facts, List<SumDue> sums, Func<SumDue, bool> isRetention)
    {
        foreach (var sum in sums)
            sum.Disputed = 0m;
        foreach (var dispute in facts.All<Disputed>())
        {
            var about = sums.FindAll(s => IsAbout(dispute, s, isRetention(s)));
            if (about.Count == 0)
                continue;
            about.Sort(static (a, b) => a.Due.CompareTo(b.Due));
            var taken = about[0];
            Ask(facts, dispute, taken, about);
            taken.Disputed += dispute.Amount;
        }
    }

    private static bool IsAbout(Disputed dispute, SumDue sum, bool isRetention)
    {
        if (dispute.Demand is { } demand)
            return sum.Fact.Id == demand;
        return dispute.About switch
        {
            DisputeAbout.OtherSums => false,
            DisputeAbout.Retention => isRetention,
            DisputeAbout.Progress => !isRetention,
            null => true,
            _ => throw new InvalidOperationException($"No such dispute: {dispute.About}."),
        };
    }

    private static void Ask(FactsAsOf facts, Disputed dispute, SumDue taken, List<SumDue> about)
    {
        var saved = Saved(taken, dispute, facts.AsOf);
        var least = saved;
        foreach (var other in about)
            least = Math.Min(least, Saved(other, dispute, facts.AsOf));
        if (least < saved)
            taken.Questions
                .Add(new Question($"Which demand is the dispute about? It is counted once, for the one that falls due "
                    + $"earliest.{MoneyKinds.Disputed.At("demand"):aside}", Dollars: saved - least) { Corrects = dispute });
        // Whether a dispute that is first raised after the due day excuses the days before it the sections do not say.
        if (dispute.On.Earliest > taken.Due && saved > 0)
            taken.Questions
                .Add(new Question($"Was the dispute first raised on that day? It came after the sum fell due.{MoneyKinds.Disputed:aside}",
                    Dollars: saved) { Corrects = dispute });
    }

    private static decimal Saved(SumDue sum, Disputed dispute, LocalDate asOf) =>
        sum.Penalty(sum.Disputed!.Value, asOf).ForMonths - sum.Penalty(sum.Disputed.Value + dispute.Amount, asOf).ForMonths;
}
