using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// A preliminary notice on a day that nobody knows may have been in time: nothing is surely lost for want of notice, and the day is asked
/// for. And what ends all reach: the furnishing ended, the contract ended, or the whole work was complete before the first day within
/// reach.
/// </summary>
public sealed class UnknownDayTests
{
    private static JobBuilder Job(bool isPublic = false)
    {
        var job = new JobBuilder();
        return (isPublic ? job.PublicWork() : job).Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, "sub")
            .Furnished("2026-03-02", 6430m);
    }

    private static JobBuilder OnUnknownDay(JobBuilder job, params string[] to) =>
        job.Add(i => new NoticeGiven { Index = i, On = new DayFact.Unknown(), Notice = NoticeKind.Preliminary, To = to,
            Manner = Manner.CertifiedMail });

    [Theory]
    [InlineData(false, "owner")]
    [InlineData(true, "city")]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 9304")]
    public void It_leaves_in_doubt_what_would_else_be_lost_and_its_day_is_asked_for(bool isPublic, string owner)
    {
        Assert.Equal(Standing.Lost, Job(isPublic).Ended("2026-03-02").On("2026-06-01").Get("preliminary-notice.last-day").Standing);
        var answer = OnUnknownDay(Job(isPublic), owner, "direct").Ended("2026-03-02").On("2026-06-01");
        Assert.Equal(Standing.InDoubt, answer.Get("preliminary-notice.last-day").Standing);
        Assert.True(answer.Get("preliminary-notice.last-day").Asks("(notice-given.on)"));
        Assert.NotEqual(Standing.Lost, answer.Get("stop-payment-notice.last-day").Standing);
    }

    // The owner surely told too late, or never: the unknown day of the contractor's saves nothing. The contractor told too late or never:
    // the owner's may save the lien all the same (Industrial Asphalt v. Garrett (1986) 180 Cal.App.3d 1001). On public work it saves
    // nothing: Civ. Code § 9300(a) asks both.
    [Theory]
    [InlineData(false, "owner", null, Standing.InDoubt)]
    [InlineData(false, "owner", "2026-03-23", Standing.InDoubt)] // day 20 is Sunday the 22nd
    [InlineData(false, "owner", "2026-03-24", Standing.InDoubt)]
    [InlineData(false, "direct", null, Standing.Lost)]
    [InlineData(false, "direct", "2026-03-23", Standing.InDoubt)]
    [InlineData(false, "direct", "2026-03-24", Standing.Lost)]
    [InlineData(true, "city", null, Standing.Lost)]
    [InlineData(true, "city", "2026-03-22", Standing.InDoubt)]
    [InlineData(true, "city", "2026-03-23", Standing.Lost)]
    [InlineData(true, "direct", "2026-03-23", Standing.Lost)]
    [Proves("Civ. Code § 8200(c)")]
    [Proves("Civ. Code § 9304")]
    public void It_saves_nothing_where_one_on_whom_the_right_hangs_was_surely_told_too_late(bool isPublic, string undated,
        string? otherTold, Standing expected)
    {
        var job = OnUnknownDay(Job(isPublic), undated).Ended("2026-03-02");
        if (otherTold is not null)
            job.Notice(otherTold, Manner.CertifiedMail, undated == "direct" ? isPublic ? "city" : "owner" : "direct");
        Assert.Equal(expected, job.On("2026-06-01").Get("preliminary-notice.last-day").Standing);
    }

    // A notice given on the day of asking reaches back 20 days: to 2 April from 22 April, to 3 April from the 23rd. Until the whole work
    // was complete on 2 April a delivery may be missing from the file.
    [Theory]
    [InlineData("2026-04-22", Standing.Narrowed)]
    [InlineData("2026-04-23", Standing.Lost)]
    [Proves("Civ. Code § 8204(a)")]
    public void Once_the_whole_work_was_complete_before_all_that_is_within_reach_nothing_is_left(string asOf, Standing expected)
    {
        Assert.Equal(expected, Job().Completed("2026-04-02").On(asOf).Get("preliminary-notice.last-day").Standing);
        Assert.Equal(Standing.Narrowed, Job().Completed("2026-04-02", contested: true).On(asOf)
            .Get("preliminary-notice.last-day").Standing);
        Assert.Equal(Standing.Lost,
            Job().Add(i => new ContractEnded { Index = i, On = JobBuilder.When("2026-03-02"), How = ContractEnd.Performed }).On(asOf)
            .Get("preliminary-notice.last-day").Standing);
    }

    // § 8200(a): "before recording a claim of lien".
    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void A_claim_before_which_no_notice_stood_is_in_doubt_and_so_is_the_action_on_it()
    {
        var answer = Job().ClaimRecorded("2026-03-10", 6430m, id: "claim").ActionFiled("2026-03-16").On("2026-03-18");
        Assert.Equal(Standing.InDoubt, answer.Get("claim-of-lien.last-day").Standing);
        Assert.True(answer.Get("claim-of-lien.last-day").RuledOut("Civ. Code § 8200(a)"));
        Assert.Equal(Standing.InDoubt, answer.Get("enforcement.last-day").Standing);
    }

    // Given before the day of asking it was in time, but tomorrow nobody can say so. Day 20 is Sunday 22 March; the last open day before is
    // the 20th.
    [Theory]
    [InlineData(false, "owner", "2026-03-20")]
    [InlineData(true, "city", "2026-03-20")]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 9304")]
    public void While_the_time_runs_it_is_in_doubt_too_with_the_day_by_which_to_give_another(bool isPublic, string owner, string asOf)
    {
        var notice = OnUnknownDay(Job(isPublic), owner, "direct").On(asOf).Get("preliminary-notice.last-day");
        Assert.Equal((Standing.InDoubt, "2026-03-20"), (notice.Standing, notice.Plan()));
        Assert.True(notice.Asks("(notice-given.on)"));

        // On public work the notice to each is a condition, and one was surely not told; a private lien goes by the owner's notice.
        Assert.Equal(isPublic
            ? Standing.Open : Standing.InDoubt, OnUnknownDay(Job(isPublic), owner).On(asOf).Get("preliminary-notice.last-day").Standing);
    }

    // Left and mailed on the 19th it is complete on the 24th, too late for all of it; until the 22nd, planned on for the 20th, another may
    // be given by hand.
    [Theory]
    [InlineData(false, "owner", "2026-03-20", Standing.Open)]
    [InlineData(false, "owner", "2026-03-23", Standing.InDoubt)] // by the roll of Sunday the 22nd
    [InlineData(false, "owner", "2026-03-24", Standing.Lost)]
    [InlineData(true, "city", "2026-03-20", Standing.Open)]
    [InlineData(true, "city", "2026-03-23", Standing.Lost)]
    [Proves("Civ. Code § 8116")]
    [Proves("Civ. Code § 9304")]
    public void One_that_will_be_complete_too_late_leaves_the_time_open_for_another(bool isPublic, string owner, string asOf,
        Standing expected)
    {
        var job = Job(isPublic).PartyWith("direct", p => p with { NaturalPerson = false })
            .PartyWith(owner, p => p with { NaturalPerson = false }).Ended("2026-03-02")
            .Notice("2026-03-19", Manner.Substituted, owner, "direct");
        Assert.Equal(expected, job.On(asOf).Get("preliminary-notice.last-day").Standing);
    }
}
