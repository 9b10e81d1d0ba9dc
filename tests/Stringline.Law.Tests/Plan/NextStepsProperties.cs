using CsCheck;
using Stringline.Law.Plan;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>Of every day of a claimant's there is a step, or a reason why no act is asked.</summary>
public sealed class NextStepsProperties
{
    private static readonly (string Finding, string Why)[] AskNoAct =
    [
        ("index-watch.next-day", "it is watched, and stands among the steps as a watch"),
        ("credit.last-day", "a choice, no duty: the step to sue names it beside the suit (Civ. Code § 8460(b))"),
        ("release.petition-first-day", "the owner's act (Civ. Code § 8480)"),
    ];

    // Back-plan days serve the day of the claim; what others owe by a day is theirs to do.
    private static readonly string[] OfOthers =
        ["back-plan.", "completion.", "prompt-payment.", "retention.", "dispute-claim.", "owners-security."];

    [Fact]
    public void Every_deadline_of_a_claimant_s_has_a_step_or_a_reason_why_it_asks_no_act() =>
        Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(Assessment.Of(job, day, OpenDays.Statutory).Findings.Where(f => f.IsDeadline), finding =>
        {
            var id = finding.Id.StartsWith("design-lien.", StringComparison.Ordinal) && !NextSteps.HasAct(finding.Id)
                ? finding.Id["design-lien.".Length..] : finding.Id;
            Assert.True(
                NextSteps.HasAct(id) || AskNoAct.Any(a => a.Finding == id) || OfOthers.Any(o => id.StartsWith(o, StringComparison.Ordinal)),
                $"{finding.Id} ({finding.Title}): a day of the claimant's without a step");
        }),
        iter: 1000);

    [Fact]
    public void What_asks_no_act_has_no_step() => Assert.All(AskNoAct, row => Assert.False(NextSteps.HasAct(row.Finding), row.Why));
}
