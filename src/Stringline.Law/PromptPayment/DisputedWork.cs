using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PromptPayment;

/// <summary>Notice that work in dispute is done, and what the payer must then do about the retention held for it (Civ. Code § 8816).</summary>
internal static class DisputedWork
{
    /// <summary>Days for the answer, and for the retention after acceptance.</summary>
    public const int AnswerDays = 10;

    /// <summary>Adds the finding <c>retention.disputed-work</c>, where the file says that disputed work was done.</summary>
    [Rule("Civ. Code § 8816(a)")]
    [Rule("Civ. Code § 8816(b)")]
    public static void AddTo(List<Finding> findings, FactsAsOf facts, OpenDays calendar)
    {
        if (facts.Job.Claimant.Role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor))
            return;
        var papers = facts.All<DisputedWorkDone>();
        if (papers.Count == 0 || Days.Of(papers[^1].On) is not { } on)
            return;
        var answer = calendar.RollForwardOnAnyList(Period.LastDay(on.Latest, AnswerDays));
        List<Reading> readings = [new Reading("last day for the payer's answer", answer)];
        findings.Add(new Finding
        {
            Id = "retention.disputed-work",
            Title = "Disputed work that is done: the payer's answer",
            Standing = facts.AsOf <= answer ? Standing.NotYet : Standing.Open,
            Readings = readings,
            Band = Deadline.Band(readings),
            Why =
            [
                Reason.Of("Civ. Code § 8816(a)", $"Notice that the work in dispute is completed in accordance with the contract was given {on}: within 10 days the payer gives notice that it accepts or rejects it, by {answer}.", [papers[^1]]),
                Reason.Of("Civ. Code § 8816(b)", $"Within 10 days after it accepts, it pays the retention for that work; after that the penalty of 2 percent a month runs (Civ. Code § 8818)."),
            ],
        });
    }
}
