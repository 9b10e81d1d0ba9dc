using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>Money that one debtor pays without saying for which job (Civ. Code § 1479, Three).</summary>
public sealed class AcrossJobsTests
{
    private static readonly LocalDate Received = new(2026, 5, 4);

    private static JobBuilder InTime() => new JobBuilder().Notice("2026-03-02");

    private static (int Job, decimal Amount)[] Parts(decimal amount, params JobBuilder[] jobs) =>
        [.. AcrossJobs.Of([.. jobs.Select(job => job.Build())], Received, amount, OpenDays.Statutory).Parts
            .Select(part => (part.Job, part.Amount))];

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_interest_due_is_paid_first_on_whichever_job() =>
        Assert.Equal(
            [(1, 30m), (0, 70m)],
            Parts(100m, InTime().Furnished("2026-03-03", 500m), InTime().Charged("2026-04-01", 30m, ChargeKind.Interest)
                .Furnished("2026-04-10", 100m)));

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
            Parts(100m, InTime().Furnished("2026-03-09", 500m), InTime().Furnished("2026-03-09", 500m), InTime()
                .Furnished("2026-03-09", 500.01m)));

    [Fact]
    public void What_was_paid_before_on_a_job_is_off_and_what_came_after_the_day_takes_no_part()
    {
        var applied = AcrossJobs.Of(
            [InTime().Furnished("2026-03-09", 500m).Paid("2026-04-01", 450m).Build(), InTime().Furnished("2026-05-05", 100m).Build()],
                Received, 80m, OpenDays.Statutory);
        Assert.Equal(50m, Assert.Single(applied.Parts).Amount);
        Assert.Equal(30m, applied.Left);
    }

    [Theory]
    [InlineData(WorkKind.Public)]
    [InlineData(WorkKind.Federal)]
    [InlineData(WorkKind.Private)]
    [Proves("Civ. Code § 1479")]
    public void What_is_secured_goes_by_the_kind_of_each_work(WorkKind kind)
    {
        // Both furnished on one day. On public work without a notice to the public entity the claim is out of reach, and so unsecured; on
        // federal work no notice is due here; on private work the notice of 2 March reaches it.
        var other = new JobBuilder().Role(ClaimantRole.Supplier, "sub").Party("sub", PartyCapacity.Subcontractor).Notice("2026-03-02")
            .Furnished("2026-03-09", 200m).Work(w => w with { Kind = kind });
        Assert.Equal(
            kind == WorkKind.Public ? [(1, 200m), (0, 50m)] : [(0, 178.57m), (1, 71.43m)],
            Parts(250m, InTime().Furnished("2026-03-09", 500m), other));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void On_public_work_what_the_notice_reaches_is_secured()
    {
        var reached = new JobBuilder().Role(ClaimantRole.Supplier, "sub").Party("sub", PartyCapacity.Subcontractor)
            .Party("city", PartyCapacity.PublicEntity)
            .Notice("2026-03-10", Manner.CertifiedMail, "city", "direct").Furnished("2026-03-09", 200m)
            .Work(w => w with { Kind = WorkKind.Public });
        Assert.Equal([(0, 178.57m), (1, 71.43m)], Parts(250m, InTime().Furnished("2026-03-09", 500m), reached));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void To_the_last_cent_nothing_is_shared_out_twice_or_lost()
    {
        var applied =
            AcrossJobs.Of([InTime().Furnished("2026-03-09", 0.01m).Furnished("2026-03-10", 0.01m).Build(), InTime()
                .Furnished("2026-03-09", 0.02m).Build()], Received, 0.01m, OpenDays.Statutory);
        Assert.Equal(0.01m, applied.Parts.Sum(part => part.Amount));
        Assert.Single(applied.Parts);
        Assert.Equal(0m, applied.Left);
        Assert.Equal(
            [(0, 0.01m), (1, 0.02m), (0, 0.01m)],
            Parts(0.04m, InTime().Furnished("2026-03-09", 0.01m).Furnished("2026-03-10", 0.01m), InTime().Furnished("2026-03-09", 0.02m)));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void The_odd_cents_go_to_the_largest_remainders_and_of_equal_ones_to_the_first()
    {
        // A third of a dollar each leaves one cent.
        Assert.Equal([(0, 0.34m), (1, 0.33m), (2, 0.33m)],
            Parts(1m, InTime().Furnished("2026-03-09", 5m), InTime().Furnished("2026-03-09", 5m), InTime().Furnished("2026-03-09", 5m)));
        // 2/7, 2/7 and 3/7 of $1.00 leave 0.571, 0.571 and 0.857 of a cent: two odd cents, for the third and the first.
        Assert.Equal([(0, 0.29m), (1, 0.28m), (2, 0.43m)],
            Parts(1m, InTime().Furnished("2026-03-09", 2m), InTime().Furnished("2026-03-09", 2m), InTime().Furnished("2026-03-09", 3m)));
    }

    [Fact]
    [Proves("Civ. Code § 1479")]
    public void What_is_due_comes_before_what_may_not_be_due_yet_and_what_falls_due_that_day_is_due()
    {
        // The delivery on some day up to 6 May may fall due after the money came; that of 4 May is due.
        var applied = AcrossJobs.Of(
            [InTime().Furnished("2026-05-01..2026-05-06", 100m, "in doubt").Build(), InTime().Furnished("2026-05-04", 100m, "that day")
                .Build()], Received, 150m, OpenDays.Statutory);
        Assert.Equal([AppliedTo.Due, AppliedTo.NotYetDue], applied.Parts.Select(part => part.Why));
        Assert.Equal(["that day", "in doubt"], applied.Parts.Select(part => part.Ref));
        Assert.Equal(new LocalDate(2026, 5, 6), applied.Parts[1].Due);
    }

    // A job that is paid in full takes no part, whatever else fell due on its day.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void A_job_paid_in_full_takes_no_part() =>
        Assert.Equal([(1, 50m)],
            Parts(50m, InTime().Furnished("2026-03-09", 500m).Paid("2026-04-01", 500m), InTime().Furnished("2026-03-10", 100m)));

    [Theory]
    [InlineData(200, 100, 100, 1, "0.50 0.25 0.25")]
    [InlineData(1, 1, 98, 100, "1.00 1.00 98.00")]
    [InlineData(1, 1, 98, 250, "1.00 1.00 98.00")]
    [Proves("Civ. Code § 1479")]
    public void A_class_gets_no_more_than_it_is_owed(int first, int second, int third, int money, string shares)
    {
        var applied =
            AcrossJobs.Of([InTime().Furnished("2026-03-09", first).Build(), InTime().Furnished("2026-03-09", second).Build(), InTime()
                .Furnished("2026-03-09", third).Build()], Received, money, OpenDays.Statutory);
        Assert.Equal(shares,
            string.Join(' ',
                applied.Parts.Select(part => part.Amount.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal(Math.Max(0, money - (first + second + third)), applied.Left);
    }

    [Fact]
    public void Without_jobs_all_is_left_and_without_money_nothing_is_asked()
    {
        Assert.Equal(80m, AcrossJobs.Of([], Received, 80m, OpenDays.Statutory).Left);
        Assert.Throws<ArgumentOutOfRangeException>(() => AcrossJobs.Of([], Received, 0m, OpenDays.Statutory));
        Assert.Throws<ArgumentNullException>(() => AcrossJobs.Of(null!, Received, 1m, OpenDays.Statutory));
    }
}
