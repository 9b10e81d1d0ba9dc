using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Completed Wednesday 22 October 2025: 90 days end on Tuesday 20 January 2026. Notice of completion recorded Monday 27 October: 30 days end on
/// Wednesday 26 November; copies are due by Thursday 6 November.
/// </summary>
public sealed class OwnersCopyTests
{
    private static JobBuilder Job() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6430m)
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22").OwnerRecorded("2025-10-27", states: "2025-10-22");

    private static Finding Last(JobBuilder job, string asOf = "2025-12-05") => job.On(asOf).Get("claim-of-lien.last-day");

    // Civ. Code § 8190(b): in compliance with §§ 8106 and 8110. The copy came in time; only its manner differs.
    [Theory]
    [InlineData(Manner.Personal, Standing.Lost)]
    [InlineData(Manner.CertifiedMail, Standing.Lost)]
    [InlineData(Manner.RegisteredMail, Standing.Lost)]
    [InlineData(Manner.ExpressMail, Standing.Lost)]
    [InlineData(Manner.OvernightCarrier, Standing.Lost)]
    [InlineData(Manner.Email, Standing.InDoubt)]
    [InlineData(Manner.Fax, Standing.InDoubt)]
    [InlineData(Manner.FirstClassMail, Standing.InDoubt)]
    [InlineData(Manner.CertificateOfMailing, Standing.InDoubt)]
    [InlineData(Manner.Other, Standing.InDoubt)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 8190(b)")]
    [Proves("Civ. Code § 8190(c)")]
    public void A_copy_in_another_manner_or_none_that_is_known_is_planned_on_and_never_loses_the_right(Manner? manner, Standing expected)
    {
        var last = Last(Job().OwnerToldUs("2025-10-30", manner: manner));
        Assert.Equal(expected, last.Standing);
        Assert.Equal("2025-11-26", last.Plan());
        Assert.Equal(expected == Standing.Lost ? ["2025-11-26"] : ["2025-11-26", "2026-01-20"], last.DaysOf());
        Assert.Equal(manner is null, last.Asks("(owner-told-us.manner)"));
        if (manner is null)
            Assert.IsType<OwnerToldUs>(last.Questions.Single(q => q.Text.Contains("(owner-told-us.manner)", StringComparison.Ordinal)).Corrects);
    }

    // Left on 27 October and mailed: complete five days after mailing (Civ. Code § 8116(c)). Mailed on 1 November, it is complete on the 6th, the tenth
    // day; mailed on the 2nd, on the 7th.
    [Theory]
    [InlineData("2025-11-01", "2025-11-26")]
    [InlineData("2025-11-02", "2026-01-20")]
    [InlineData(null, "2025-11-26 2026-01-20")]
    [Proves("Civ. Code § 8190(b)")]
    public void A_copy_left_and_mailed_is_complete_five_days_after_mailing(string? mailed, string days) =>
        Assert.Equal(days.Split(' '), Last(Job().OwnerToldUs("2025-10-31", mailed: mailed, manner: Manner.Substituted), "2025-11-10").DaysOf());

    // A copy of 18 November is late, whatever its manner.
    [Theory]
    [InlineData(Manner.CertifiedMail)]
    [InlineData(Manner.Email)]
    [InlineData(null)]
    [Proves("Civ. Code § 8190(c)")]
    public void A_late_copy_shortens_nothing_in_any_manner(Manner? manner) =>
        Assert.Equal(["2026-01-20"], Last(Job().OwnerToldUs("2025-11-18", manner: manner), "2025-11-20").DaysOf());

    // § 8190(d): no copy is due from one who lives there in four units or fewer, nor from one whose interest came by a court's order, a foreclosure or a
    // fiduciary. Where the file does not say, both days stand.
    [Theory]
    [InlineData(WorkUse.Commercial, TitleSource.Sale, "2026-01-20")]
    [InlineData(WorkUse.Residential, TitleSource.Sale, "2026-01-20")]
    [InlineData(null, TitleSource.Sale, "2025-11-26 2026-01-20")]
    [InlineData(WorkUse.OwnerOccupiedOneToFour, TitleSource.Sale, "2025-11-26")]
    [InlineData(WorkUse.Commercial, null, "2025-11-26 2026-01-20")]
    [InlineData(null, null, "2025-11-26 2026-01-20")]
    [InlineData(WorkUse.OwnerOccupiedOneToFour, null, "2025-11-26")]
    [InlineData(WorkUse.Commercial, TitleSource.Foreclosure, "2025-11-26")]
    [InlineData(WorkUse.Commercial, TitleSource.Court, "2025-11-26")]
    [InlineData(WorkUse.Residential, TitleSource.Fiduciary, "2025-11-26")]
    [Proves("Civ. Code § 8190(d)(1)")]
    [Proves("Civ. Code § 8190(d)(3)")]
    public void A_late_copy_leaves_the_longer_time_only_where_one_was_surely_due(WorkUse? use, TitleSource? title, string days)
    {
        var last = Last(Job().Work(w => w with { Use = use }).PartyWith("owner", p => p with { TookTitleBy = title }).OwnerToldUs("2025-11-18"), "2025-11-20");
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(use is null, last.Asks("(work.use)"));
        Assert.Equal(use != WorkUse.OwnerOccupiedOneToFour && title is null, last.Asks("(parties.tookTitleBy)"));
        // 55 days: from 26 November to 20 January.
        Assert.All(last.Questions.Where(q => q.Text.Contains("(work.use)", StringComparison.Ordinal)), q => Assert.Equal(55, q.Days));
    }

    // One owner of two took by foreclosure: which of them recorded the notice is not said.
    [Fact]
    [Proves("Civ. Code § 8190(d)(3)")]
    public void Of_two_owners_one_of_whom_need_not_tell_both_days_stand() =>
        Assert.Equal(["2025-11-26", "2026-01-20"], Last(Job().Party("other", PartyCapacity.Owner).PartyWith("other", p => p with { TookTitleBy = TitleSource.Foreclosure })
            .OwnerToldUs("2025-11-18"), "2025-11-20").DaysOf());

    // Two copies: one by e-mail in time, one by certified mail in time.
    [Fact]
    [Proves("Civ. Code § 8190(b)")]
    public void A_good_copy_counts_beside_a_bad_one() =>
        Assert.Equal(Standing.Lost, Last(Job().OwnerToldUs("2025-10-29", manner: Manner.Email).OwnerToldUs("2025-10-30")).Standing);

    // Recorded Monday 4 May 2026; the copy came on the 12th by certified mail. Whether one was due to who gave the owner notice on 6 May is open, but one was given.
    [Theory]
    [InlineData("2026-05-06", "2026-05-12", Verdict.Yes)]
    [InlineData("2026-05-06", "2026-06-30", Verdict.Open)]
    [InlineData("2026-05-06", null, Verdict.Open)]
    [InlineData("?", "2026-05-12", Verdict.Yes)]
    [InlineData("?", "2026-06-30", Verdict.Open)]
    [InlineData("?", null, Verdict.Open)]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void A_copy_that_was_given_counts_whether_or_not_one_was_due(string noticed, string? received, Verdict expected)
    {
        var job = new JobBuilder().PartyWith("owner", p => p with { TookTitleBy = TitleSource.Sale }).Work(w => w with { Use = WorkUse.Commercial }).Furnished("2026-04-27", 10m).Notice(noticed).OwnerRecorded("2026-05-04");
        if (received is not null)
            job.OwnerToldUs(received);
        Assert.Equal(expected, OwnersNotice.Of(job.FactsOn("2026-07-30"), OpenDays.Statutory)[0].ReachesClaimant);
    }
}
