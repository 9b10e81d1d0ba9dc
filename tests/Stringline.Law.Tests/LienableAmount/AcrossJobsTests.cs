using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Time;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>Money that one debtor pays without saying for which job (Civ. Code § 1479, Three).</summary>
public sealed class AcrossJobsTests
{
    private static readonly LocalDate Received = new(2026, 5, 4);

    private static JobBuilder InTime() => new JobBuilder().Notice("2026-03-02");

    private static (int Job, decimal Amount)[] Parts(decimal amount, params JobBuilder[] jobs) =>
        [.. AcrossJobs.Of([.. jobs.Select(job => job.Build())], Received, amount, OpenDays.Statutory).Parts.Select(part => (part.Job, part.Amount))];

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_interest_due_is_paid_first_on_whichever_job() =>
        Assert.Equal(
            [(1, 30m), (0, 70m)],
            Parts(100m, InTime().Furnished("2026-03-03", 500m), InTime().Charged("2026-04-01", 30m, ChargeKind.Interest).Furnished("2026-04-10", 100m)));

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void B_earliest_maturity_comes_before_anything_later() =>
        Assert.Equal([(1, 200m), (0, 50m)], Parts(250m, InTime().Furnished("2026-04-10", 500m), InTime().Furnished("2026-04-09", 200m)));

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void C_at_equal_maturity_the_unsecured_comes_first() =>
        // The notice of 20 April reaches back to 31 March: 9 March is out of its reach, and so not secured by a lien.
        Assert.Equal(
            [(1, 200m), (0, 50m)],
            Parts(250m, InTime().Furnished("2026-03-09", 500m), new JobBuilder().Notice("2026-04-20").Furnished("2026-03-09", 200m)));

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void D_inside_one_class_it_is_shared_ratably_to_the_cent() =>
        Assert.Equal(
            [(0, 33.33m), (1, 33.33m), (2, 33.34m)],
            Parts(100m, InTime().Furnished("2026-03-09", 500m), InTime().Furnished("2026-03-09", 500m), InTime().Furnished("2026-03-09", 500.01m)));

    [Fact]
    public void What_was_paid_before_on_a_job_is_off_and_what_came_after_the_day_takes_no_part()
    {
        var applied = AcrossJobs.Of(
            [InTime().Furnished("2026-03-09", 500m).Paid("2026-04-01", 450m).Build(), InTime().Furnished("2026-05-05", 100m).Build()], Received, 80m, OpenDays.Statutory);
        Assert.Equal(50m, Assert.Single(applied.Parts).Amount);
        Assert.Equal(30m, applied.Left);
    }
}
