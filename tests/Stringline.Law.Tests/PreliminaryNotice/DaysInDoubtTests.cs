using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// A late preliminary notice reaches back 20 days (Civ. Code §§ 8204(a), 9304). Where a day in doubt decides whether it reaches any work,
/// nothing is kept or narrowed for sure, and nothing lost.
/// </summary>
public sealed class DaysInDoubtTests
{
    private static JobBuilder Sub(string furnished, string ended, bool isPublic = false)
    {
        var job = new JobBuilder();
        return (isPublic ? job.PublicWork() : job).Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Subcontractor, "sub")
            .Licensed("2012-06-01..").Furnished(furnished, 6430m).Ended(ended);
    }

    private static Standing Notice(JobBuilder job, string asOf) => job.On(asOf).Get("preliminary-notice.last-day").Standing;

    // Told 21 January 2027, it reaches back to 1 January, the last of the days on which the one delivery may have been.
    [Theory]
    [InlineData("2026-12-28..2027-01-01", "2027-01-21", false, Standing.InDoubt)]
    [InlineData("2026-12-28..2027-01-01", "2027-01-21", true, Standing.InDoubt)]
    [InlineData("2026-12-28..2027-01-01", "2027-01-22", true, Standing.Lost)]
    [InlineData("2026-12-28..2027-01-01", "2027-01-23", false, Standing.Lost)]
    [InlineData("2026-12-31", "2027-01-21", false, Standing.Lost)]
    [InlineData("2027-01-01", "2027-01-21", false, Standing.Kept)]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 9304")]
    public void A_delivery_that_may_lie_before_its_reach_leaves_right_and_notices_in_doubt(string furnished, string given, bool isPublic,
        Standing expected)
    {
        var job = Sub(furnished, "2027-01-01", isPublic).Notice(given, Manner.CertifiedMail, isPublic ? "city" : "owner", "direct");
        Assert.Equal(expected, Notice(job, "2027-02-10"));
        Assert.Equal(expected == Standing.Kept
            ? Standing.Open : expected, job.On("2027-02-10").Get("stop-payment-notice.last-day").Standing);
    }

    // First furnished Monday 1 February 2027: the twentieth day is Sunday the 21st, which a roll carries to the 22nd.
    [Theory]
    [InlineData("2027-02-20..2027-02-21", Standing.Kept)]
    [InlineData("2027-02-20..2027-02-22", Standing.InDoubt)]
    [InlineData("2027-02-22..2027-02-23", Standing.InDoubt)]
    [InlineData("2027-02-23..2027-02-24", Standing.Lost)]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_that_may_have_been_in_time_by_its_earliest_day_loses_nothing(string given, Standing expected) =>
        Assert.Equal(expected, Notice(Sub("2027-02-01", "2027-02-01").Notice(given), "2027-04-01"));

    // The latest first day is Sunday 30 August 2026: its twentieth day, Saturday 19 September, rolls to Monday the 21st.
    [Theory]
    [InlineData("2026-09-21", Standing.InDoubt)]
    [InlineData("2026-09-22", Standing.Lost)]
    [Proves("Civ. Code § 8204(a)")]
    public void Not_given_it_is_lost_only_when_the_latest_twentieth_day_is_over(string asOf, Standing expected) =>
        Assert.Equal(expected, Notice(Sub("2026-08-27..2026-08-30", "2026-08-30"), asOf));

    // Accepted on 24 February 2026: from the 25th no work comes that a notice of 17 March could reach; one of the 15th may reach some that
    // is missing.
    [Theory]
    [InlineData("2026-03-15..2026-03-16", Standing.Narrowed)]
    [InlineData("2026-03-15..2026-03-17", Standing.InDoubt)]
    [InlineData("2026-03-17..2026-03-18", Standing.Lost)]
    [Proves("Civ. Code § 9304")]
    public void Of_days_about_the_completion_some_may_reach_work_that_is_missing_from_the_file(string given, Standing expected)
    {
        var job = new JobBuilder().PublicWork().Role(ClaimantRole.Supplier, "sub").Furnished("2026-02-18", 6430m)
            .Completed("2026-02-24", CompletionTheory.Acceptance).Notice(given, Manner.CertifiedMail, "city", "direct");
        Assert.Equal(expected, Notice(job, "2026-03-24"));
    }

    // Mailed 3 September after leaving, it is complete on the 8th and reaches 19 August; one given by hand on the 6th would reach the 17th.
    [Theory]
    [InlineData("2026-08-18", "2026-09-06", Standing.InDoubt)]
    [InlineData("2026-08-18", "2026-09-08", Standing.Lost)]
    [InlineData("2026-08-16", "2026-09-06", Standing.Lost)]
    [Proves("Civ. Code § 8116")]
    public void One_that_is_not_complete_yet_takes_nothing_from_one_given_today(string lastWork, string asOf, Standing expected)
    {
        var job = new JobBuilder().PartyWith("owner", p => p with { NaturalPerson = false })
            .PartyWith("direct", p => p with { NaturalPerson = false })
            .Furnished("2026-07-19", 6430m, until: lastWork).Ended(lastWork).Add(i => new NoticeGiven
            {
                Index = i, On = JobBuilder.When("2026-09-02"), Notice = NoticeKind.Preliminary, To = ["owner", "direct"],
                    Manner = Manner.Substituted, Mailed = JobBuilder.Day("2026-09-03"),
            });
        Assert.Equal(expected, Notice(job, asOf));
    }

    // Hired by the owner, notice is due to a lender who was of record on the first day of work (Kodiak Industries v. Ellis (1986) 185
    // Cal.App.3d 75).
    [Theory]
    [InlineData("2026-08-03", Standing.Lost)]
    [InlineData("2026-08-04", Standing.InDoubt)]
    [InlineData("2026-08-07", Standing.InDoubt)]
    [InlineData("2026-08-08", Standing.Kept)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_lender_who_may_have_come_after_the_first_day_leaves_it_in_doubt(string knownSince, Standing expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2012-06-01..")
            .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: knownSince)
            .Furnished("2026-08-03..2026-08-07", 1900m).Ended("2026-09-07");
        Assert.Equal(expected, Notice(job, "2026-11-13"));
    }
}
