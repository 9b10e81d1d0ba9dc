using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>The claims procedure of private work, paper by paper (Civ. Code §§ 8850, 8851), and days that are in doubt.</summary>
public sealed class PrivateClaimStepsTests
{
    private static JobBuilder Job(string sent = "2026-04-13", string? received = "2026-04-14", ClaimantRole role =
        ClaimantRole.DirectContractor, string hiredBy = "owner", string made = "2026-02-24", Manner? manner = Manner.CertifiedMail) =>
            new JobBuilder()
        .Role(role, hiredBy).Contract(c => c with { On = Day(made) }).Work(w => w with { LowRiseResidential = false })
        .Add(i => new DisputeClaimSent { Index = i, On = When(sent), Received = received is null
            ? null : Day(received), Amount = 5_200m, Manner = manner });

    private static JobBuilder Answered(JobBuilder job, string on, decimal? undisputed = null) =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When(on), Undisputed = undisputed });

    private static JobBuilder Demanded(JobBuilder job, string on, Manner? manner = Manner.CertifiedMail) =>
        job.Add(i => new ConferenceDemanded { Index = i, On = When(on), Manner = manner });

    private static JobBuilder Held(JobBuilder job, string on) => job.Add(i => new ConferenceHeld { Index = i, On = When(on) });

    private static JobBuilder Suspends(JobBuilder job, string on, SuspensionNotice notice, Manner? manner = Manner.CertifiedMail) =>
        job.Add(i => new SuspensionNoticeSent { Index = i, On = When(on), Notice = notice, Manner = manner });

    private static Finding? Find(JobBuilder job, string id, string asOf) => job.On(asOf).Find($"dispute-claim.{id}");

    // § 8850(d): 30 days after the receipt; where that is not told, not before 30 days after the latest day of the sending.
    [Theory]
    [InlineData("2026-04-13", "2026-04-14", "2026-05-14 owner's statement, 30 days after receipt")]
    [InlineData("?", "2026-04-14", "2026-05-14 owner's statement, 30 days after receipt")]
    [InlineData("2026-04-10..2026-04-13", null, "2026-05-13 owner's statement, not before 30 days after the sending")]
    [InlineData("?", null, null)]
    [Proves("Civ. Code § 8850(d)")]
    public void The_owners_days_run_from_the_receipt(string sent, string? received, string? reading) =>
        Assert.Equal(reading is null ? [] : [reading], Find(Job(sent, received), "owners-statement", "2026-04-20")?.Lines() ?? []);

    // § 8850(d)(2): extended to Monday 1 June; an extension that ends no later than the thirtieth day gives nothing. Saturday 30 May ends
    // on Monday.
    [Theory]
    [InlineData("2026-06-01", "2026-04-14", "2026-06-01 owner's statement, by the day agreed in writing", "2026-06-01", Standing.NotYet)]
    [InlineData("2026-05-30", "2026-04-14", "2026-06-01 owner's statement, by the day agreed in writing", "2026-06-02", Standing.Open)]
    [InlineData("2026-06-01", null, "2026-06-01 owner's statement, by the day agreed in writing", "2026-06-02", Standing.Open)]
    [InlineData("2026-05-14", "2026-04-14", "2026-05-14 owner's statement, 30 days after receipt", "2026-05-15", Standing.Open)]
    [Proves("Civ. Code § 8850(d)")]
    [Proves("Civ. Code § 8850(g)")]
    public void An_extension_agreed_on_moves_the_owners_last_day(string extended, string? received, string reading, string asOf,
        Standing expected)
    {
        var job = Job(received: received).Which(e => (DisputeClaimSent)e with { ExtendedTo = Day(extended) });
        var statement = Find(job, "owners-statement", asOf)!;
        Assert.Equal([reading], statement.Lines());
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(extended != "2026-05-14", statement.Says("extended the owner's time"));
        // Denied by silence on the next day, from which the owner may be told.
        Assert.Equal(expected == Standing.NotYet ? Standing.NotYet : Standing.InDoubt, Find(job, "suspension-first-day", asOf)!.Standing);
    }

    // § 8850(b) and (j): one hired by the owner claims from it; a subcontractor of the direct contractor goes through that one.
    [Theory]
    [InlineData(ClaimantRole.Subcontractor, "owner", 1, 0)]
    [InlineData(ClaimantRole.Subcontractor, "direct", 0, 1)]
    [InlineData(ClaimantRole.DirectContractor, "owner", 1, 0)]
    [Proves("Civ. Code § 8850(j)")]
    public void Who_is_hired_by_the_owner_needs_nobody_to_present_its_claim(ClaimantRole role, string hiredBy, int readings, int asked)
    {
        var statement = Find(Job(role: role, hiredBy: hiredBy), "owners-statement", "2026-04-20")!;
        Assert.Equal(readings, statement.Readings.Count);
        Assert.Equal(asked == 1, statement.Asks("(claim-request-made)"));
        Assert.Equal(asked == 1, statement.Sections is ["Civ. Code § 8850(j)"]);
    }

    // § 8851: repealed on 1 January 2030. Received 1 December 2029, the thirtieth day is the 31st; a day later it is beyond the end.
    [Theory]
    [InlineData("2029-12-01", "2029-12-31", Standing.NotYet)]
    [InlineData("2029-12-02", "2029-12-31", Standing.InDoubt)]
    [InlineData("2029-11-01", "2029-12-31", Standing.Open)]
    [InlineData("2029-11-01", "2030-01-01", Standing.InDoubt)]
    [Proves("Civ. Code § 8851")]
    public void The_article_is_in_force_to_the_end_of_2029(string received, string asOf, Standing expected)
    {
        var statement = Find(Job(received, received, made: "2028-02-24"), "owners-statement", asOf)!;
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(expected == Standing.InDoubt, statement.Sections.Contains("Civ. Code § 8851"));
        Assert.Contains("Civ. Code § 8850(g)", statement.Sections);
        // Lien and stop-work rights go on beside it.
        Assert.Contains("Civ. Code § 8850(j)", statement.Sections);
    }

    // Every question that is open, and no other.
    [Fact]
    [Proves("Civ. Code § 8850(d)")]
    [Proves("Civ. Code § 8850(n)")]
    public void What_the_file_does_not_say_is_asked()
    {
        Assert.Empty(Find(Job(), "owners-statement", "2026-04-20")!.Questions);
        var silent = Find(Job(received: null, manner: null).Contract(c => c with { On = null })
            .Work(w => w with { LowRiseResidential = null }), "owners-statement", "2026-04-20")!;
        Assert.Equal(["(contract.on)", "(work.lowRiseResidential)", "(dispute-claim-sent.received)", "(dispute-claim-sent.manner)"],
            silent.Questions.Select(q => q.Text[q.Text.LastIndexOf('(')..]));
        Assert.Equal([false, false, true, true], silent.Questions.Select(q => q.Corrects is DisputeClaimSent));
        var answered = Find(Answered(Job(), "2026-05-04"), "owners-statement", "2026-05-20")!;
        Assert.True(answered.Says("Answered 2026-05-04 (Mon)"));
        Assert.False(Find(Job(), "owners-statement", "2026-05-20")!.Says("Answered"));
    }

    // § 8850(e): denied by silence from 15 May; a conference held between 20 and 22 June is followed by ten business days after the 22nd,
    // without Friday 3 July; one demanded between 29 May and 1 June is held by 1 July. The last paper of a kind counts.
    [Theory]
    [InlineData(null, null, null, "2026-05-14", null, null, null)]
    [InlineData(null, null, null, "2026-05-15", "conference", "2026-05-15 the day after the owner's time to answer", Standing.Open)]
    [InlineData("2026-05-02..2026-05-04", null, null, "2026-05-05", "conference", "2026-05-04 the day of the answer", Standing.Open)]
    [InlineData("?", null, null, "2026-05-05", "conference", "2026-05-15 the day of the answer", Standing.Open)]
    [InlineData(null, "2026-05-29..2026-06-01", null, "2026-07-01", "conference", "2026-07-01 30 days after the demand for a conference",
        Standing.NotYet)]
    [InlineData(null, "2026-05-18 2026-06-01", null, "2026-07-02", "conference", "2026-07-01 30 days after the demand for a conference",
        Standing.Open)]
    [InlineData(null, "2026-06-01", "2026-06-20..2026-06-22", "2026-07-07", "second-statement",
        "2026-07-07 ten business days after the conference", Standing.NotYet)]
    [InlineData(null, "2026-06-01", "2026-06-20..2026-06-22", "2026-07-08", "second-statement",
        "2026-07-07 ten business days after the conference", Standing.Open)]
    [InlineData(null, "2026-06-01", "2026-06-20..2026-06-22", "2030-01-01", "second-statement",
        "2026-07-07 ten business days after the conference", Standing.InDoubt)]
    [InlineData(null, "2026-06-01", null, "2029-12-31", "conference", "2026-07-01 30 days after the demand for a conference",
        Standing.Open)]
    [Proves("Civ. Code § 8850(e)")]
    [Proves("Civ. Code § 8850(f)")]
    public void One_step_follows_the_other(string? answered, string? demanded, string? held, string asOf, string? id, string? reading,
        Standing? expected)
    {
        var job = Job();
        if (answered is not null)
            Answered(job, answered);
        foreach (var day in demanded?.Split(' ') ?? [])
            Demanded(job, day);
        if (held is not null)
            Held(job, held);
        foreach (var step in (string[])["conference", "second-statement"])
        {
            var found = Find(job, step, asOf);
            Assert.Equal(step == id ? [reading!] : [], found?.Lines() ?? []);
            Assert.Equal(step == id ? expected : null, found?.Standing);
        }
    }

    // A statement that is itself in doubt leaves what follows in doubt; so does a demand that went by no registered or certified mail.
    [Fact]
    [Proves("Civ. Code § 8850(e)")]
    public void What_rests_on_a_doubt_is_in_doubt()
    {
        Assert.Equal(Standing.InDoubt, Find(Job(manner: Manner.Email), "conference", "2026-05-20")!.Standing);
        foreach (var manner in (Manner?[])[null, Manner.CertifiedMail, Manner.RegisteredMail, Manner.FirstClassMail])
        {
            var conference = Find(Demanded(Job(), "2026-06-01", manner), "conference", "2026-07-02")!;
            Assert.Equal(manner == Manner.FirstClassMail ? Standing.InDoubt : Standing.Open, conference.Standing);
            Assert.Equal(manner == Manner.FirstClassMail, conference.Says("send it again that way"));
        }
    }

    // § 8850(k): answered between 2 and 4 May with a part not disputed, due 60 days after the 4th, Friday 3 July being a holiday of the
    // courts Monday the 6th: told on 7 July, thirty days to Thursday 6 August, and work may stop on the eleventh day after it.
    [Theory]
    [InlineData("0", "2026-07-10", null, null, null)]
    [InlineData("0.50", "2026-07-06", "2026-08-17", Standing.NotYet, "payment is due")]
    [InlineData("0.50", "2026-07-07", "2026-08-17", Standing.InDoubt, "payment is due")]
    [InlineData("0.50", "2026-07-08", "2026-08-18", Standing.InDoubt, "payment is due")]
    [InlineData(null, "2026-05-14", "2026-06-26", Standing.NotYet, "the claim is denied by silence")]
    [InlineData(null, "2026-05-15", "2026-06-26", Standing.InDoubt, "the claim is denied by silence")]
    [Proves("Civ. Code § 8850(k)")]
    public void Work_may_be_suspended_thirty_and_ten_days_after_two_notices(string? undisputed, string asOf, string? stop,
        Standing? expected, string? says)
    {
        var job = undisputed is null
            ? Job() : Answered(Job(), "2026-05-02..2026-05-04",
                decimal.Parse(undisputed, System.Globalization.CultureInfo.InvariantCulture));
        var suspension = Find(job, "suspension-first-day", asOf);
        Assert.Equal(stop is null ? [] : [stop], suspension?.DaysOf() ?? []);
        Assert.Equal(expected, suspension?.Standing);
        Assert.True(says is null || suspension!.Says(says));
    }

    // § 8850(k): denied by silence from 15 May. Told on the 18th, the 30th day after is Wednesday 17 June; mailed then, work may stop on
    // the eleventh day after it, 28 June, "until payment is received".
    [Theory]
    [InlineData("2026-05-18", null, "2026-06-01", "2026-06-28", Standing.NotYet, "")]
    [InlineData("2026-05-18", null, "2026-06-19", "2026-07-03", Standing.NotYet, "")] // 19 and 20 June are shut: mailed on Monday the 22nd
    [InlineData("2026-05-18", "2026-06-17", "2026-06-27", "2026-06-28", Standing.NotYet, "")]
    [InlineData("2026-05-18", "2026-06-17", "2026-06-28", "2026-06-28", Standing.Open, "")]
    [InlineData("2026-05-16..2026-05-18", "2026-06-15..2026-06-17", "2026-06-28", "2026-06-28", Standing.InDoubt, "less than thirty days")]
    [InlineData("2026-05-16..2026-05-18", "2026-06-17..2026-06-18", "2026-06-29", "2026-06-29", Standing.Open, "")]
    [InlineData("2026-05-18", "2026-06-16", "2026-06-28", "2026-06-27", Standing.InDoubt, "less than thirty days")]
    [InlineData("2026-05-18", "2026-06-16 2026-06-19", "2026-06-30", "2026-06-30", Standing.Open, "")]
    [InlineData("2026-05-14", "2026-06-17", "2026-06-28", "2026-06-28", Standing.InDoubt, "on which payment was first overdue")]
    [InlineData("2026-05-14 2026-05-18", "2026-06-17", "2026-06-28", "2026-06-28", Standing.Open, "")]
    [Proves("Civ. Code § 8850(k)")]
    public void Both_notices_in_the_file_tell_the_day_on_which_work_may_stop(string told, string? intent, string asOf, string stop,
        Standing expected, string says)
    {
        var job = Job();
        foreach (var day in told.Split(' '))
            Suspends(job, day, SuspensionNotice.PaymentDue);
        foreach (var day in intent?.Split(' ') ?? [])
            Suspends(job, day, SuspensionNotice.StopWork);
        var found = Find(job, "suspension-first-day", asOf)!;
        Assert.Equal([stop], found.DaysOf());
        Assert.Equal(expected, found.Standing);
        Assert.Equal(expected == Standing.InDoubt, found.Says("send it again"));
        Assert.True(found.Says(says));
        Assert.False(found.Asks("(suspension-notice-sent"));
    }

    // By registered or certified mail, return receipt requested, both of them; asked where the file does not say.
    [Theory]
    [InlineData(Manner.RegisteredMail, Manner.CertifiedMail, Standing.Open)]
    [InlineData(null, Manner.CertifiedMail, Standing.Open)]
    [InlineData(Manner.CertifiedMail, null, Standing.Open)]
    [InlineData(Manner.Email, Manner.CertifiedMail, Standing.InDoubt)]
    [InlineData(Manner.CertifiedMail, Manner.Personal, Standing.InDoubt)]
    [Proves("Civ. Code § 8850(k)")]
    public void The_two_notices_go_by_registered_or_certified_mail(Manner? told, Manner? intent, Standing expected)
    {
        var found = Find(Suspends(Suspends(Job(), "2026-05-18", SuspensionNotice.PaymentDue, told), "2026-06-17", SuspensionNotice.StopWork,
            intent), "suspension-first-day", "2026-06-28")!;
        Assert.Equal(expected, found.Standing);
        Assert.Equal(told is null || intent is null, found.Asks("(suspension-notice-sent.manner)"));
        Assert.Equal(expected == Standing.InDoubt, found.Says("send it again that way"));
    }

    // What rests on a claim that is in doubt is in doubt; the ten-day notice alone, or one on a day that nobody knows, tells nothing.
    [Fact]
    [Proves("Civ. Code § 8850(k)")]
    public void The_notices_need_a_claim_that_is_surely_denied_or_due()
    {
        JobBuilder Both(JobBuilder job, string told, string intent) =>
            Suspends(Suspends(job, told, SuspensionNotice.PaymentDue), intent, SuspensionNotice.StopWork);
        Assert.Equal(Standing.InDoubt,
            Find(Both(Job(manner: Manner.Email), "2026-05-18", "2026-06-17"), "suspension-first-day", "2026-06-28")!.Standing);
        Assert.Equal(Standing.InDoubt,
            Find(Both(Job(received: null), "2026-05-18", "2026-06-17"), "suspension-first-day", "2026-06-28")!.Standing);
        Assert.Equal(Standing.InDoubt, Find(Both(Job(), "2026-05-18", "2026-06-17"), "suspension-first-day", "2030-01-02")!.Standing);
        Assert.Equal(Standing.Open,
            Find(Both(Answered(Job(), "2026-05-04", 100m), "2026-07-07", "2026-08-06"), "suspension-first-day", "2026-08-17")!.Standing);
        Assert.True(Find(Suspends(Job(), "2026-06-17", SuspensionNotice.StopWork), "suspension-first-day", "2026-06-28")!
            .Asks("(suspension-notice-sent)"));
        Assert.True(Find(Suspends(Job(), "?", SuspensionNotice.PaymentDue), "suspension-first-day", "2026-06-28")!
            .Asks("(suspension-notice-sent)"));
        // Paid in time, nothing is left for which to stop.
        Assert.Null(Find(Both(Answered(Job(), "2026-05-04", 100m), "2026-07-07", "2026-08-06").Paid("2026-07-01", 100m),
            "suspension-first-day", "2026-08-17"));
    }

    // Answered on 11 May: 60 days end on Friday 10 July, and the owner is told on the 11th; thirty days end on Monday 10 August.
    [Fact]
    [Proves("Civ. Code § 8850(k)")]
    public void Payment_of_the_undisputed_part_is_due_sixty_days_after_the_answer() =>
        Assert.Equal(["2026-08-21"], Find(Answered(Job(), "2026-05-11", 100m), "suspension-first-day", "2026-07-01")!.DaysOf());

    // § 8850(k), "the contractor and subcontractors": the claim presented and received on 14 April is denied by silence from 15 May.
    [Theory]
    [InlineData(true, "2026-04-14", null, "2026-06-26", null)]
    [InlineData(true, null, null, null, "(dispute-claim-sent.received)")]
    [InlineData(false, "2026-04-14", null, null, "(claim-request-answered.presented)")]
    [InlineData(null, "2026-04-14", null, null, "(claim-request-answered.presented)")]
    [InlineData(true, "2026-04-14", 100, "2026-08-11", null)]
    [Proves("Civ. Code § 8850(k)")]
    public void A_subcontractor_may_suspend_too_once_its_claim_was_presented_and_received(bool? presented, string? received,
        int? undisputed, string? stop, string? asked)
    {
        var job = Job(received: received, role: ClaimantRole.Subcontractor, hiredBy: "direct")
            .Add(i => new ClaimRequestMade { Index = i, On = When("2026-04-01") })
            .Add(i => new ClaimRequestAnswered { Index = i, On = When("2026-04-10"), Presented = presented });
        if (undisputed is { } part)
            Answered(job, "2026-05-01", part);
        var suspension = Find(job, "suspension-first-day", "2026-05-15")!;
        Assert.Equal(stop is null ? [] : [stop], suspension.DaysOf());
        Assert.Equal(stop is null ? Standing.NotYet : undisputed is null ? Standing.InDoubt : Standing.NotYet, suspension.Standing);
        Assert.Contains("Civ. Code § 8850(k)", suspension.Sections);
        Assert.True(asked is null || suspension.Asks(asked));
    }

    // Everything is disputed, and the claim is not denied by silence: nothing is due yet for which to stop.
    [Fact]
    [Proves("Civ. Code § 8850(k)")]
    public void A_subcontractor_has_nothing_to_suspend_for_where_all_is_disputed() =>
        Assert.Null(Find(Answered(Job(role: ClaimantRole.Subcontractor, hiredBy: "direct")
            .Add(i => new ClaimRequestAnswered { Index = i, On = When("2026-04-10"), Presented = true }), "2026-05-01", 0m),
            "suspension-first-day", "2026-05-15"));

    // §§ 8850(j), (n): where the procedure does not govern, or the claim goes through the contractor, nothing follows; a direct contractor
    // is one whoever is entered as having hired it.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2025-12-31", new[] { "dispute-claim.owners-statement" })]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-02-24",
        new[] { "dispute-claim.owners-statement", "dispute-claim.suspension-first-day" })]
    [InlineData(ClaimantRole.DirectContractor, null, "2026-02-24",
        new[] { "dispute-claim.owners-statement", "dispute-claim.conference", "dispute-claim.suspension-first-day" })]
    [Proves("Civ. Code § 8850(n)")]
    [Proves("Civ. Code § 8850(j)")]
    public void Nothing_follows_a_claim_that_the_procedure_does_not_reach(ClaimantRole role, string? hiredBy, string made, string[] ids)
    {
        var answer = Job(role: role, made: made).Role(role, hiredBy).On("2026-06-01");
        Assert.Equal(ids, answer.Findings.Select(f => f.Id).Where(id => id.StartsWith("dispute-claim.", StringComparison.Ordinal)));
        Assert.Equal(ids.Length == 3, answer.Find("dispute-claim.suspension-first-day")?.Asks("(suspension-notice-sent)") ?? false);
    }

    // Sent on 13 April, its receipt not told: not late on the thirtieth day, 13 May, and in doubt from the next.
    [Theory]
    [InlineData("2026-05-13", Standing.NotYet)]
    [InlineData("2026-05-14", Standing.InDoubt)]
    [Proves("Civ. Code § 8850(d)")]
    public void Without_a_receipt_silence_is_in_doubt_after_the_thirtieth_day(string asOf, Standing expected) =>
        Assert.Equal(expected, Find(Job(received: null), "owners-statement", asOf)!.Standing);

    // Received on a known day though the sending is unknown: § 8850(j), the contractor's 30 days are not counted from the sending.
    [Fact]
    [Proves("Civ. Code § 8850(j)")]
    public void The_contractors_days_are_told_from_the_sending_where_it_is_known()
    {
        Assert.True(Find(Job("2026-04-10..2026-04-13", role: ClaimantRole.Subcontractor, hiredBy: "direct"), "owners-statement",
            "2026-05-01")!.Says("not before 2026-05-13 for what was sent on 2026-04-13"));
        Assert.False(Find(Job("?", role: ClaimantRole.Subcontractor, hiredBy: "direct"), "owners-statement", "2026-05-01")!
            .Says("not before"));
    }
}
