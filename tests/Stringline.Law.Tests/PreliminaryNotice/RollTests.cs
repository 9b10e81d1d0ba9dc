using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// A notice given on the first open day after a twentieth day on which offices are shut (Civ. Code § 10; Code Civ. Proc. § 12a).
/// </summary>
public sealed class RollTests
{
    // First furnished 2,700 so that the twentieth day is Sunday 26 October 2025; 1,500 lie within 20 days before any of these notices.
    [Theory]
    [InlineData("2025-10-24", Standing.Kept, 4200)]
    [InlineData("2025-10-26", Standing.Kept, 4200)]
    [InlineData("2025-10-27", Standing.InDoubt, 4200)]
    [InlineData("2025-10-28", Standing.Narrowed, 1500)]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 10")]
    [Proves("Code Civ. Proc. § 12a")]
    public void After_a_Sunday_nothing_is_cut_and_what_hangs_on_the_roll_is_said(string given, Standing expected, int demand)
    {
        var assessment = new JobBuilder().Furnished("2025-10-06", 2700m).Furnished("2025-10-14", 1500m).Notice(given).On("2025-12-01");
        var notice = assessment.Get("preliminary-notice.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal("2025-10-24", notice.Plan());
        Assert.Equal(expected == Standing.InDoubt, notice.Says("$2,700.00"));
        Assert.Equal(expected == Standing.InDoubt
            ? Standing.InDoubt : expected, assessment.Get("preliminary-notice.reaches-back-to").Standing);
    }

    // The twentieth day on a Saturday (18 October 2025), on Columbus Day (Monday 13 October 2025, a holiday of the Government Code
    // only), on Thanksgiving (27 November 2025, with the day after it), and on a working day.
    [Theory]
    [InlineData("2025-09-28", "2025-10-20", true)]
    [InlineData("2025-09-28", "2025-10-21", false)]
    [InlineData("2025-09-23", "2025-10-14", true)]
    [InlineData("2025-09-23", "2025-10-15", false)]
    [InlineData("2025-11-07", "2025-12-01", true)]
    [InlineData("2025-11-07", "2025-12-02", false)]
    [InlineData("2025-09-24", "2025-10-15", false)]
    [Proves("Civ. Code § 10")]
    [Proves("Code Civ. Proc. § 12a")]
    public void It_is_so_after_a_day_shut_on_any_list(string first, string given, bool whole)
    {
        var assessment = new JobBuilder().Furnished(first, 100m).Notice(given).On("2026-01-05");
        Assert.Equal(whole ? 100m : 0m, assessment.Amount.Demand);
        Assert.Equal(whole ? Standing.InDoubt : Standing.Narrowed, assessment.Get("preliminary-notice.last-day").Standing);
    }

    [Theory]
    [InlineData("2026-03-22", Standing.InDoubt, 100)]
    [InlineData("2026-03-23", Standing.InDoubt, 100)]
    [InlineData("2026-03-24", Standing.Narrowed, 0)]
    [Proves("Civ. Code § 10")]
    public void Not_given_yet_it_is_in_doubt_on_the_day_to_which_it_would_roll(string asOf, Standing expected, int demand)
    {
        var assessment = new JobBuilder().Furnished("2026-03-02", 100m).On(asOf);
        Assert.Equal(expected, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(demand, assessment.Amount.Demand);
    }

    // The twentieth day is Sunday 22 March 2026: told on the Monday, owner or contractor, or the lender of one hired by the owner.
    [Theory]
    [InlineData("direct", "2026-03-10", "2026-03-10", false)]
    [InlineData("direct", "2026-03-23", "2026-03-10", true)]
    [InlineData("direct", "2026-03-23", "2026-03-23", true)]
    [InlineData("owner", "2026-03-10", null, false)]
    [InlineData("owner", "2026-03-23", null, true)]
    [InlineData("owner", "2026-04-10", null, false)]
    [InlineData("owner", null, null, false)]
    [Proves("Civ. Code § 10")]
    public void That_it_is_in_time_by_the_roll_only_is_known(string hiredBy, string? first, string? second, bool byRoll)
    {
        var job = new JobBuilder().Role(ClaimantRole.Supplier, hiredBy).Furnished("2026-03-02", 100m);
        if (hiredBy == "owner")
            job.Lender();
        if (first is not null)
            job.Notice(first, Manner.CertifiedMail, hiredBy == "owner" ? "bank" : "owner");
        if (second is not null)
            job.Notice(second, Manner.CertifiedMail, "direct");
        Assert.Equal(byRoll, PreliminaryNoticeDays.ReachOf(job.FactsOn(first == "2026-04-10" ? "2026-06-01" : "2026-03-23"),
            OpenDays.Statutory).InTimeByRollOnly);
    }

    // § 9304 sets no last day, only a reach of 20 days; nothing is there to roll.
    [Fact]
    [Proves("Civ. Code § 9304")]
    public void On_public_work_nothing_rolls() =>
        Assert.Equal(0m, new JobBuilder().PublicWork().Furnished("2026-03-02", 100m)
            .Notice("2026-03-23", Manner.CertifiedMail, "city", "direct").On("2026-06-01").Amount.Demand);
}
