using Stringline.Law.Plan;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>
/// A paid claim that is still on record is a step, with the owner's ten days as its clock: no petition lies unless the owner gave notice at
/// least ten days before it files (Civ. Code § 8482), so that the ninth day after is the last on which it surely cannot have filed.
/// </summary>
public sealed class ReleaseStepTests
{
    private static JobBuilder Job() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02",
        1000m).Ended("2026-03-02").Completed("2026-05-04").ClaimRecorded("2026-06-01", 1000m);

    private static NextStep? Step(JobBuilder job, string asOf) =>
        job.On(asOf).Next.SingleOrDefault(step => step.Finding == "release.when-paid");

    // Paid on Monday 15 June: the ninth day is Wednesday 24 June.
    [Fact]
    [Proves("Civ. Code § 8482")]
    public void Paid_in_full_it_is_a_step_counted_from_the_payment()
    {
        var step = Step(Job().Paid("2026-06-15", 1000m), "2026-06-16")!;
        Assert.Equal(("Record the release of the claim", JobBuilder.Day("2026-06-24"), Standing.Open),
            (step.Do, step.ActBy, step.Standing));
        Assert.Equal("nothing owed; released in time it costs no petition and no attorney’s fees", step.Stakes!.Text(step.Finding));
    }

    // Demanded on Thursday 18 June: the owner may file on Sunday the 28th, so it is released by Saturday the 27th, planned for Friday the
    // 26th.
    [Fact]
    [Proves("Civ. Code § 8482")]
    public void The_owners_notice_starts_its_own_ten_days() =>
        Assert.Equal(JobBuilder.Day("2026-06-26"),
            Step(Job().Paid("2026-06-15", 1000m).ReleaseDemanded("2026-06-18"), "2026-06-19")!.ActBy);

    [Fact]
    [Proves("Civ. Code § 8482")]
    public void Paid_after_the_ten_days_it_is_due_on_the_day_of_payment() =>
        Assert.Equal(JobBuilder.Day("2026-07-15"),
            Step(Job().ReleaseDemanded("2026-06-03").Paid("2026-07-15", 1000m), "2026-07-15")!.ActBy);

    [Fact]
    public void It_stays_a_step_until_the_release_is_recorded()
    {
        var paid = Job().Paid("2026-06-15", 1000m);
        var late = Step(paid, "2026-12-01")!;
        Assert.Equal(Standing.InDoubt, late.Standing);
        Assert.Equal("Late. Planned day past. The last day before the owner could petition for a release, 2026-06-24 (Wed), is past too.",
            late.Outlook!.Text);
        Assert.Null(Step(paid.ReleaseRecorded("2026-06-22", true), "2026-06-23"));
        Assert.Null(Step(Job().Paid("2026-06-15", 999m), "2026-06-16"));
    }
}
