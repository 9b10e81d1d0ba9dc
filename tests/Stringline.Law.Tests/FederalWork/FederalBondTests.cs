using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.FederalWork;

/// <summary>
/// Last furnished on Wednesday 15 April 2026: notice by Tuesday 14 July, action from Wednesday 15 July 2026 to Thursday 15 April 2027.
/// Counted apart with Python's calendar arithmetic; the text of 40 U.S.C. § 3133 is from memory.
/// </summary>
public sealed class FederalBondTests
{
    private static JobBuilder Job(string hiredBy = "sub", string last = "2026-04-15") => new JobBuilder().Work(w => w with { Kind = WorkKind.Federal })
        .Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, hiredBy).Furnished("2026-03-02", 1m).Furnished(last, 1m);

    [Theory]
    [InlineData("2026-07-14", Standing.Open)]
    [InlineData("2026-07-15", Standing.Lost)]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void One_hired_by_a_subcontractor_gives_the_prime_notice_within_ninety_days_after_last_furnishing(string asOf, Standing expected)
    {
        var notice = Job().On(asOf).Get("federal-bond.notice-last-day");
        Assert.Equal(["2026-07-14"], notice.DaysOf());
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.Open ? Standing.Kept : Standing.Lost, Job().BondNoticeGiven(asOf).On("2026-08-03").Get("federal-bond.notice-last-day").Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    public void One_hired_by_the_prime_gives_none()
    {
        var notice = Job("direct").On("2027-01-04").Get("federal-bond.notice-last-day");
        Assert.Equal(Standing.Kept, notice.Standing);
        Assert.Empty(notice.Readings);
    }

    [Theory]
    [InlineData("2026-07-14", Standing.NotYet)]
    [InlineData("2026-07-15", Standing.Open)]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_action_waits_until_ninety_days_have_passed(string asOf, Standing expected)
    {
        var first = Job("direct").On(asOf).Get("federal-bond.action-first-day");
        Assert.Equal(["2026-07-15"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
    }

    [Theory]
    [InlineData("2027-04-15", Standing.Open)]
    [InlineData("2027-04-16", Standing.Lost)]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void The_action_is_due_within_a_year_after_last_furnishing(string asOf, Standing expected)
    {
        var last = Job("direct").On(asOf).Get("federal-bond.action-last-day");
        Assert.Equal(["2027-04-15"], last.DaysOf());
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Open ? Standing.Kept : Standing.Lost, Job("direct").ActionFiled(asOf).On("2027-06-01").Get("federal-bond.action-last-day").Standing);
    }

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(2)")]
    [Proves("40 U.S.C. § 3133(b)(4)")]
    public void A_last_day_in_doubt_is_planned_on_its_earliest_and_lost_only_after_its_latest()
    {
        var job = Job(last: "2026-04-10..2026-04-15");
        Assert.Equal(["2026-07-09", "2026-07-14"], job.On("2026-06-01").Get("federal-bond.notice-last-day").DaysOf());
        Assert.Equal("2026-07-09", job.On("2026-06-01").Get("federal-bond.notice-last-day").Plan());
        Assert.Equal(Standing.InDoubt, job.On("2026-07-14").Get("federal-bond.notice-last-day").Standing);
        Assert.Equal(Standing.Lost, job.On("2026-07-15").Get("federal-bond.notice-last-day").Standing);
        Assert.Equal(["2027-04-10", "2027-04-15"], job.On("2026-06-01").Get("federal-bond.action-last-day").DaysOf());
        Assert.Equal(Standing.InDoubt, Job("direct", "2026-04-10..2026-04-15").On("2027-04-15").Get("federal-bond.action-last-day").Standing);
        // Without the notice there is no action (40 U.S.C. § 3133(b)(2)).
        Assert.Equal(Standing.Lost, job.On("2027-04-01").Get("federal-bond.action-last-day").Standing);
    }

    [Fact]
    public void With_nothing_furnished_on_a_known_day_nothing_runs() =>
        Assert.Null(new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).On("2026-06-01").Find("federal-bond.notice-last-day"));

    [Fact]
    [Proves("40 U.S.C. § 3133(b)(1)")]
    public void The_prime_contractor_has_no_claim_on_its_own_bond()
    {
        var answer = new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Role(ClaimantRole.DirectContractor, "owner").Furnished("2026-03-02", 1m).On("2026-06-01");
        Assert.Equal(Standing.Lost, answer.Get("federal-bond.action-last-day").Standing);
        Assert.Null(answer.Find("federal-bond.notice-last-day"));
    }
}
