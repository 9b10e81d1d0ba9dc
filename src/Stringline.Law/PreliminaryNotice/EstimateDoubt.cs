using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>
/// The alarm where what is claimed lies far above the estimate of a preliminary notice of which nobody says how it was reached.
/// </summary>
public static class EstimateDoubt
{
    /// <summary>
    /// How many times the estimate the price may be before it is asked how the estimate was reached. Our yardstick, no source.
    /// </summary>
    public const decimal SuspiciousRatio = 2m;

    /// <summary>
    /// The doubt; null where there is nothing to ask. An estimate must be reached by reasoning from what is
    /// known of the work: Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="demand">The demand, dollars and cents, set beside the estimate where no total price is agreed.</param>
    [Rule("Civ. Code § 8202(a)(2)", Sure = Sure.Opinion)]
    [Rule("Civ. Code § 9303(b)", Sure = Sure.Opinion)]
    public static Outcome? Of(FactsAsOf facts, decimal demand)
    {
        List<NoticeGiven>? unexplained = null;
        foreach (var notice in facts.PreliminaryNotices)
        {
            if (notice is { Estimate: not null, EstimateBasis: null } && Giving.Counts(notice))
                (unexplained ??= []).Add(notice);
        }

        if (unexplained is null)
            return null;
        var price = Math.Max(PriceEstimate.Of(facts) ?? 0, demand);
        var doubted = unexplained.FindAll(n => price > n.Estimate * SuspiciousRatio);
        return doubted.Count == 0 ? null : new Outcome(Standing.InDoubt, new Words(
            [
                .. doubted.Select(n => Reason.Of(
                    Section(facts),
                    $"The notice states an estimate of {n.Estimate!.Value}, and the price or the claim is {price}. An estimate is good if "
                        + $"it was worked out from what was known of the work, however wrong it proved; a stock figure makes the notice "
                        + $"bad, and the claim with it (Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445).",
                    [n])),
            ],
            [new Question($"How was the estimate in the preliminary notice reached? Keep the paper that shows "
                + $"it.{NoticeKinds.NoticeGiven.At("estimateBasis"):aside}", Dollars: demand) { Corrects = doubted[0] }]));
    }

    /// <summary>What the finding is called.</summary>
    internal const string Title = "Estimate in the preliminary notice";

    /// <summary>The finding <c>preliminary-notice.estimate</c>, where it is doubted.</summary>
    internal static Finding? Finding(Outcome? estimate) => estimate?.Finding("preliminary-notice.estimate", Title);

    /// <summary>The section that asks for the estimate.</summary>
    internal static string Section(FactsAsOf facts) =>
        facts.Job.Work.Kind == WorkKind.Private ? "Civ. Code § 8202(a)(2)" : "Civ. Code § 9303(b)";
}
