using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Completed Wednesday 22 October 2025: 90 days end on Tuesday 20 January 2026. Notice of completion recorded Monday 27 October: 30 days
/// end on Wednesday 26 November; copies are due by Thursday 6 November.
/// </summary>
public sealed class OwnersCopyTests
{
    private static JobBuilder Job() => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6430m)
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .OwnerRecorded("2025-10-27", states: "2025-10-22");

    private static OwnersNotice Notice(JobBuilder job) =>
        Assert.Single(OwnersNotice.Of(job.FactsOn("2025-12-05"), Law.Counting.OpenDays.Statutory));

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
            Assert.IsType<OwnerToldUs>(last.Questions.Single(q =>
                q.Text.Contains("(owner-told-us.manner)", StringComparison.Ordinal)).Corrects);
    }

    // Left on 27 October and mailed: complete five days after mailing (Civ. Code § 8116(c)). Mailed on 1 November, it is complete on the
    // 6th, the tenth day; mailed on the 2nd, on the 7th.
    [Theory]
    [InlineData("2025-11-01", "2025-11-26")]
    [InlineData("2025-11-02", "2026-01-20")]
    [InlineData(null, "2025-11-26 2026-01-20")]
    [Proves("Civ. Code § 8190(b)")]
    public void A_copy_left_and_mailed_is_complete_five_days_after_mailing(string? mailed, string days) =>
        Assert.Equal(days.Split(' '), Last(Job().OwnerToldUs("2025-10-31", mailed: mailed, manner: Manner.Substituted), "2025-11-10")
            .DaysOf());

    // A copy of 18 November is late, whatever its manner.
    [Theory]
    [InlineData(Manner.CertifiedMail)]
    [InlineData(Manner.Email)]
    [InlineData(null)]
    [Proves("Civ. Code § 8190(c)")]
    public void A_late_copy_shortens_nothing_in_any_manner(Manner? manner) =>
        Assert.Equal(["2026-01-20"], Last(Job().OwnerToldUs("2025-11-18", manner: manner), "2025-11-20").DaysOf());

    // § 8190(d): no copy is due from one who lives there in four units or fewer, nor from one whose interest came by a court's order, a
    // foreclosure or a fiduciary. Where the file does not say, both days stand.
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
        var last = Last(Job().Work(w => w with { Use = use }).PartyWith("owner", p => p with { TookTitleBy = title })
            .OwnerToldUs("2025-11-18"), "2025-11-20");
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
        Assert.Equal(["2025-11-26", "2026-01-20"],
            Last(Job().Party("other", PartyCapacity.Owner).PartyWith("other", p => p with { TookTitleBy = TitleSource.Foreclosure })
            .OwnerToldUs("2025-11-18"), "2025-11-20").DaysOf());

    // Two copies: one by e-mail in time, one by certified mail in time.
    [Fact]
    [Proves("Civ. Code § 8190(b)")]
    public void A_good_copy_counts_beside_a_bad_one() =>
        Assert.Equal(Standing.Lost, Last(Job().OwnerToldUs("2025-10-29", manner: Manner.Email).OwnerToldUs("2025-10-30")).Standing);

    // Recorded Monday 4 May 2026; the copy came on the 12th by certified mail. Whether one was due to who gave the owner notice on 6 May is
    // open, but one was given.
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
        var job = new JobBuilder().PartyWith("owner", p => p with { TookTitleBy = TitleSource.Sale })
            .Work(w => w with { Use = WorkUse.Commercial }).Furnished("2026-04-27", 10m).Notice(noticed).OwnerRecorded("2026-05-04");
        if (received is not null)
            job.OwnerToldUs(received);
        Assert.Equal(expected, OwnersNotice.Of(job.FactsOn("2026-07-30"), OpenDays.Statutory)[0].ReachesClaimant);
    }

    // Of two copies the better counts, whichever came first: by certified mail in time it is given, by e-mail whether it is given is open,
    // and one that was left and mailed on the 2nd of November is given on the 7th, too late.
    [Theory]
    [InlineData(Manner.CertifiedMail, Manner.CertifiedMail, Verdict.Yes)]
    [InlineData(Manner.CertifiedMail, Manner.Email, Verdict.Yes)]
    [InlineData(Manner.CertifiedMail, Manner.Substituted, Verdict.Yes)]
    [InlineData(Manner.Email, Manner.CertifiedMail, Verdict.Yes)]
    [InlineData(Manner.Email, Manner.Email, Verdict.Open)]
    [InlineData(Manner.Email, Manner.Substituted, Verdict.Open)]
    [InlineData(Manner.Substituted, Manner.CertifiedMail, Verdict.Yes)]
    [InlineData(Manner.Substituted, Manner.Email, Verdict.Open)]
    [InlineData(Manner.Substituted, Manner.Substituted, Verdict.No)]
    [Proves("Civ. Code § 8190(b)")]
    [Proves("Civ. Code § 8190(c)")]
    public void Of_two_copies_the_better_counts(Manner first, Manner second, Verdict expected)
    {
        static string? Mailed(Manner manner) => manner == Manner.Substituted ? "2025-11-02" : null;
        Assert.Equal(expected,
            Notice(Job().OwnerToldUs("2025-10-29", mailed: Mailed(first), manner: first)
                .OwnerToldUs("2025-10-31", mailed: Mailed(second), manner: second)).ReachesClaimant);
    }

    // Copies are due by Thursday 6 November. Left on a day that is told and mailed on one that is not, it was surely late only if it was
    // left late.
    [Theory]
    [InlineData("2025-11-06", Verdict.Open)]
    [InlineData("2025-11-07", Verdict.No)]
    [InlineData("2025-11-06..2025-11-10", Verdict.Open)]
    [InlineData("2025-11-07..2025-11-10", Verdict.No)]
    [Proves("Civ. Code § 8190(b)")]
    public void A_copy_left_and_mailed_on_a_day_not_told_is_late_only_where_it_was_left_late(string left, Verdict expected)
    {
        var job = Job().OwnerToldUs(left, manner: Manner.Substituted);
        Assert.Equal(expected, Notice(job).ReachesClaimant);
        Assert.Equal(expected == Verdict.Open ? [5] : [], Last(job, "2025-11-20").Corrected("which was left, put in the mail?"));
    }

    // By hand it is given when it comes (Civ. Code § 8106(a)), whatever was put in the mail and when; no days for the mail are added.
    [Theory]
    [InlineData("2025-11-06", null, Verdict.Yes)]
    [InlineData("2025-11-07", null, Verdict.No)]
    [InlineData("2025-11-06..2025-11-08", null, Verdict.Open)]
    [InlineData("2025-11-07..2025-11-08", null, Verdict.No)]
    [InlineData("2025-11-07", "2025-11-03", Verdict.No)]
    [InlineData("2025-11-06", "2025-11-07", Verdict.Yes)]
    [Proves("Civ. Code § 8190(b)")]
    [Proves("Civ. Code § 8190(c)")]
    public void A_copy_by_hand_is_given_when_it_comes(string came, string? mailed, Verdict expected) =>
        Assert.Equal(expected, Notice(Job().OwnerToldUs(came, mailed: mailed, manner: Manner.Personal)).ReachesClaimant);

    // By certified mail it is given on deposit. Five days after the tenth are Tuesday 11 November; within them the postmark decides, and is
    // asked for.
    [Theory]
    [InlineData("2025-11-06", Verdict.Yes)]
    [InlineData("2025-11-07", Verdict.Open)]
    [InlineData("2025-11-11", Verdict.Open)]
    [InlineData("2025-11-12", Verdict.No)]
    [Proves("Civ. Code § 8190(c)")]
    public void The_postmark_is_asked_of_the_copy_that_may_have_been_under_way(string came, Verdict expected)
    {
        var job = Job().OwnerToldUs(came);
        Assert.Equal(expected, Notice(job).ReachesClaimant);
        Assert.Equal(expected == Verdict.Open ? [5] : [], Last(job, "2025-11-20").Corrected("The postmark says."));
    }

    // A copy in time settles that none more was due: whether the owner owed one at all is then not asked.
    [Theory]
    [InlineData("2025-11-03", Manner.CertifiedMail, Verdict.Yes, false)]
    [InlineData("2025-11-03", Manner.Email, Verdict.Open, false)]
    [InlineData("2025-11-18", Manner.CertifiedMail, Verdict.Open, true)]
    [Proves("Civ. Code § 8190(d)(1)")]
    [Proves("Civ. Code § 8190(a)")]
    public void Whether_the_owner_owed_a_copy_is_asked_only_where_it_came_too_late(string came, Manner manner, Verdict expected, bool asks)
    {
        var job = Job().Work(w => w with { Use = null }).OwnerToldUs(came, manner: manner);
        Assert.Equal(expected, Notice(job).ReachesClaimant);
        Assert.Equal(asks, Last(job, "2025-11-20").Asks("(work.use)"));
        Assert.Equal(asks ? "Civ. Code § 8190(d)(1)" : manner == Manner.Email
            ? "Civ. Code § 8190(b)" : "Civ. Code § 8190(a)", Notice(job).ReachWhy.Section);
    }

    // Of an owner whom the file does not name nobody knows how it came by the land.
    [Fact]
    [Proves("Civ. Code § 8190(d)(3)")]
    public void Of_an_owner_not_in_the_file_it_is_open_how_it_took_title()
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Licensed("2012-06-01..").NoParty("owner")
            .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10")
            .Completed("2025-10-22").OwnerRecorded("2025-10-27", states: "2025-10-22").OwnerToldUs("2025-11-18");
        Assert.Equal(Verdict.Open, Notice(job).ReachesClaimant);
        Assert.True(Last(job).Asks("(parties.tookTitleBy)"));
        // With the owner in the file, who bought the land, a copy was due, and the late one shortens nothing.
        Assert.Equal(Verdict.No,
            Notice(job.Party("owner", PartyCapacity.Owner)
                .PartyWith("owner", p => p with { TookTitleBy = TitleSource.Sale })).ReachesClaimant);
    }

    private static JobBuilder Told(string? given, Manner manner = Manner.CertifiedMail, params string[] to)
    {
        var job = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
            .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10").Completed("2025-10-22")
            .OwnerRecorded("2025-10-27", states: "2025-10-22");
        return given is null ? job : job.Notice(given, manner, to);
    }

    // A copy is due to claimants who gave the owner preliminary notice (§ 8190(a)(2)). Given on a day that nobody knows it may have been in
    // time, if it was given to the owner and in a manner in which it is given; no other makes a copy due.
    [Theory]
    [InlineData(null, Manner.CertifiedMail, "owner", Verdict.Yes)]
    [InlineData("2025-08-14", Manner.CertifiedMail, "owner", Verdict.No)]
    [InlineData("2025-08-14", Manner.CertifiedMail, "direct", Verdict.Yes)]
    [InlineData("2025-08-14", Manner.Email, "owner", Verdict.Yes)]
    [InlineData("?", Manner.CertifiedMail, "owner", Verdict.Open)]
    [InlineData("?", Manner.CertifiedMail, "direct", Verdict.Yes)]
    [InlineData("?", Manner.Email, "owner", Verdict.Yes)]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void A_notice_to_the_owner_on_a_day_that_nobody_knows_may_have_made_a_copy_due(string? given, Manner manner, string to,
        Verdict expected)
    {
        var job = Told(given, manner, to).OwnerToldUs("2025-11-18");
        Assert.Equal(expected, Notice(job).ReachesClaimant);
        Assert.Equal(expected == Verdict.No ? "Civ. Code § 8190(c)" : "Civ. Code § 8190(a)(2)", Notice(job).ReachWhy.Section);
        Assert.Equal(expected == Verdict.Open, job.On("2025-11-20").Get("claim-of-lien.last-day")
            .Asks("On which day was the preliminary notice given to the owner?"));
    }

    // It is asked of the notice to the owner, and not of one to somebody else.
    [Fact]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void The_day_is_asked_of_the_notice_to_the_owner()
    {
        var job = Told("?", Manner.CertifiedMail, "direct").Notice("?", Manner.Email, "owner").Notice("?", Manner.CertifiedMail, "owner")
            .OwnerToldUs("2025-11-18");
        Assert.Equal([6], job.On("2025-11-20").Get("claim-of-lien.last-day")
            .Corrected("On which day was the preliminary notice given to the owner?"));
    }

    // One to whom no copy is due is bound by the recording itself, whatever came. Whether one was due to a claimant who gave notice after
    // the recording is open; a copy that came settles it.
    [Theory]
    [InlineData(null, "2025-10-30", Verdict.Yes, "Civ. Code § 8190(a)(2)")]
    [InlineData(null, null, Verdict.Yes, "Civ. Code § 8190(a)(2)")]
    [InlineData("2025-10-29", "2025-10-31", Verdict.Yes, "Civ. Code § 8190(a)")]
    [InlineData("2025-10-29", "2025-11-18", Verdict.Open, "Civ. Code § 8190(a)(2)")]
    [InlineData("2025-10-29", null, Verdict.Open, "Civ. Code § 8190(a)(2)")]
    [InlineData("?", "2025-10-31", Verdict.Yes, "Civ. Code § 8190(a)")]
    [Proves("Civ. Code § 8190(a)(2)")]
    [Proves("Civ. Code § 8190(a)")]
    public void A_copy_that_came_settles_whether_one_was_due_where_that_is_open(string? given, string? came, Verdict expected,
        string section)
    {
        var job = Told(given, Manner.CertifiedMail, "owner");
        if (came is not null)
            job.OwnerToldUs(came);
        Assert.Equal((expected, section), (Notice(job).ReachesClaimant, Notice(job).ReachWhy.Section));
    }

    private static JobBuilder Recorded(string on) => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
        .Furnished("2025-08-05", 6430m, until: "2025-10-10").Ended("2025-10-10")
        .Notice("2025-08-14").Completed("2025-10-22").OwnerRecorded(on, states: "2025-10-22");

    // A copy is one of what is recorded already: one that surely came before is none of it; one that may have come after is, and by its day
    // of mailing it is told when it was given.
    [Theory]
    [InlineData("2025-10-27", "2025-10-26", null, Verdict.Open, "does not show whether the owner gave us a copy")]
    [InlineData("2025-10-27", "2025-10-24..2025-10-26", null, Verdict.Open, "does not show whether the owner gave us a copy")]
    [InlineData("2025-10-27", "2025-10-24..2025-10-27", null, Verdict.Open, "whether it was recorded by then is open")]
    [InlineData("2025-10-27..2025-10-29", "2025-10-28", null, Verdict.Open, "whether it was recorded by then is open")]
    [InlineData("2025-10-27..2025-10-29", "2025-10-26", null, Verdict.Open, "does not show whether the owner gave us a copy")]
    [InlineData("2025-10-27..2025-10-29", "2025-10-29", null, Verdict.Yes, "within 10 days of recording")]
    [InlineData("2025-10-27..2025-10-29", "2025-10-28..2025-10-31", "2025-10-29", Verdict.Yes, "put in the mail on 2025-10-29")]
    [InlineData("2025-10-27..2025-10-29", "2025-10-28..2025-10-31", "2025-10-28", Verdict.Open, "whether it was recorded by then is open")]
    [Proves("Civ. Code § 8190(a)")]
    public void A_copy_is_one_of_what_is_recorded_already(string recorded, string came, string? mailed, Verdict expected, string says)
    {
        var notice = Notice(Recorded(recorded).OwnerToldUs(came, mailed: mailed));
        Assert.Equal(expected, notice.ReachesClaimant);
        Assert.Contains(says, notice.ReachWhy.Text, StringComparison.Ordinal);
    }

    // How it came is asked though it may have come before the recording.
    [Fact]
    [Proves("Civ. Code § 8190(b)")]
    public void How_a_copy_came_is_asked_of_one_that_may_have_come_before_the_recording_too() =>
        Assert.True(Last(Recorded("2025-10-27..2025-10-29").OwnerToldUs("2025-10-28", manner: null), "2025-11-20")
            .Asks("(owner-told-us.manner)"));
}
