using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// Notice that work in dispute is done, and what the payer must then do about the retention held for it (Civ. Code § 8816).
/// </summary>
internal static class DisputedWork
{
    /// <summary>
    /// The finding <c>retention.disputed-work</c>, where the file says that disputed work was done, and
    /// <c>retention.disputed-work-payment</c>, where it was accepted.
    /// </summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor))
            yield break;
        var papers = facts.All<DisputedWorkDone>();
        if (papers.Count == 0)
            yield break;
        var paper = papers[^1];
        if (DaySpan.Of(paper.On) is { } on)
            yield return Answer(facts, paper, on, calendar);
        if (AcceptedBy(facts, paper) is { } accepted)
            yield return Payment(facts, paper, accepted, calendar);
    }

    private static LocalDate? AcceptedBy(FactsAsOf facts, DisputedWorkDone paper) => paper.Accepted <= facts.AsOf ? paper.Accepted : null;

    private static LocalDate? RejectedBy(FactsAsOf facts, DisputedWorkDone paper) => paper.Rejected <= facts.AsOf ? paper.Rejected : null;

    /// <summary>The payer says within ten days of the notice whether it accepts the work.</summary>
    [Rule("Civ. Code § 8816(a)")]
    private static Finding Answer(FactsAsOf facts, DisputedWorkDone paper, DaySpan on, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.AnswerDisputedWork, on.Latest);
        var answer = calendar.RollForwardOnAnyList(days.LastDay(on.Latest));
        var toPay = facts.Numbers.On(Number.PayDisputedWork, answer);
        var penalty = facts.Numbers.On(Number.RetentionPenalty, answer);
        var (accepted, rejected) = (AcceptedBy(facts, paper), RejectedBy(facts, paper));
        List<Reading> readings = [new Reading($"last day for the payer's answer", answer)];
        return new Finding
        {
            Id = "retention.disputed-work",
            Title = "Disputed work that is done: the payer's answer",
            Standing = accepted is not null || rejected is not null
                ? Standing.Done : facts.AsOf <= answer ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8816(a)", $"Notice that the work in dispute is completed in accordance with the contract was "
                    + $"given {on}: within {days} the payer gives notice that it accepts or rejects it, by {answer}.", [paper]),
                .. rejected is { } no
                    ? (Reason[])[Reason.Of("Civ. Code § 8816(a)", $"Rejected {no}: the retention for it stays in dispute.", [paper])] : [],
                .. accepted is { } yes ? (Reason[])[Reason.Of("Civ. Code § 8816(a)", $"Accepted {yes}.", [paper])] : [],
                Reason.Of("Civ. Code § 8816(b)", $"Within {toPay} after it accepts, it pays the retention for that work; after that the "
                    + $"penalty of {penalty} a month runs (Civ. Code § 8818)."),
            ],
            Questions = accepted is null && rejected is null
                ? [new Question($"Has the payer accepted or rejected that work, and on which day? Acceptance starts "
                    + $"its {toPay.Spelled} to pay.{DisputeKinds.DisputedWorkDone.At("accepted"):aside}") { Corrects = paper }]
                : [],
        };
    }

    /// <summary>
    /// The retention for work that was accepted is paid within ten days, else it costs 2 percent a month. How much that is no entry says.
    /// </summary>
    [Rule("Civ. Code § 8816(b)")]
    [Rule("Civ. Code § 8818")]
    private static Finding Payment(FactsAsOf facts, DisputedWorkDone paper, LocalDate accepted, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.PayDisputedWork, accepted);
        var last = calendar.RollForwardOnAnyList(days.LastDay(accepted));
        var penalty = facts.Numbers.On(Number.RetentionPenalty, last);
        List<Reading> readings = [new Reading($"last day for the payer", last)];
        return new Finding
        {
            Id = "retention.disputed-work-payment",
            Title = "Disputed work that was accepted: payment of its retention",
            Standing = facts.AsOf <= last ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8816(b)", $"The disputed work was accepted {accepted}: within {days} after that, "
                    + $"by {last}, the payer pays the portion of the retention that relates to it.", [paper]),
                Reason.Of("Civ. Code § 8818", $"What is wrongly withheld after {last} costs {penalty} a month in place of interest, and "
                    + $"who wins a suit for it has costs and reasonable attorney's fees."),
            ],
        };
    }
}
