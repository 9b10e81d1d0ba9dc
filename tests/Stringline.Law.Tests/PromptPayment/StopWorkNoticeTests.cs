using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// The three steps of stopping work by their days and papers (Civ. Code §§ 8830-8844): demanded 1 June 2026, due 1 July under the contract,
/// so the notice may be given from Thursday 6 August.
/// </summary>
public sealed class StopWorkNoticeTests
{
    private static JobBuilder Job(bool? written = true, int? dueDays = 30) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
        .Contract(c => c with { Written = written, PaymentDueDays = dueDays }).Furnished("2026-03-02", 50_000m);

    private static JobBuilder Demanded(JobBuilder job, string on = "2026-06-01", string? due = null, decimal amount = 12_000m) =>
        job.Add(i => new PaymentDemanded { Index = i, On = When(on), Amount = amount, Due = due is null ? null : Day(due) });

    private static JobBuilder Given(JobBuilder job, string on, params string[] to) =>
        job.Add(i => new StopWorkNoticeGiven { Index = i, On = When(on), To = to });

    private static Finding? Find(JobBuilder job, string id, string asOf = "2026-08-20") => job.On(asOf).Find($"stop-work.{id}");

    // § 8832: 35 days after the day that the contract sets, at its latest, rolled for the owner. 5 July is a Sunday.
    [Theory]
    [InlineData("2026-06-01", null, 30, "2026-08-06")]
    [InlineData("2026-06-01..2026-06-05", null, 30, "2026-08-11")]
    [InlineData("2026-06-01", "2026-07-05", 30, "2026-08-11")]
    [InlineData("2026-06-01", "2026-07-05", null, "2026-08-11")]
    [InlineData("2026-06-01", null, 34, "2026-08-11")]
    [InlineData("?", null, 30, null)]
    [Proves("Civ. Code § 8832")]
    public void The_notice_waits_for_35_days_after_the_day_payment_is_due(string demanded, string? due, int? days, string? first) =>
        Assert.Equal(first, Find(Demanded(Job(dueDays: days), demanded, due), "notice-first-day")?.DaysOf().Single());

    // Where the contract's day is not told for each of them the 30 days are only taken for it, and it is asked.
    [Theory]
    [InlineData(30, null, null, false)]
    [InlineData(null, "2026-07-01", "2026-07-01", false)]
    [InlineData(null, "2026-07-01", null, true)]
    [InlineData(null, null, "2026-07-01", true)]
    [Proves("Civ. Code § 8832")]
    public void The_contracts_day_is_asked_where_one_demand_has_none(int? days, string? firstDue, string? secondDue, bool asked)
    {
        var notice = Find(Demanded(Demanded(Job(dueDays: days), due: firstDue), due: secondDue), "notice-first-day")!;
        Assert.Equal(asked, notice.Asks("(contract.paymentDueDays)"));
        Assert.Equal(asked ? Standing.InDoubt : Standing.Open, notice.Standing);
        Assert.All(notice.Questions, q => Assert.Equal(30, q.Days));
    }

    // The earliest due counts, in whatever order they were demanded; what is not yet overdue by 35 days is no part of the sum.
    [Fact]
    [Proves("Civ. Code § 8830")]
    public void The_earliest_sum_due_opens_the_notice()
    {
        var job = Demanded(Demanded(Job(), "2026-06-01", "2026-08-03", 8_000m), "2026-06-08", "2026-07-01", 4_000m);
        var notice = Find(job, "notice-first-day")!;
        Assert.Equal(("2026-08-06", (decimal?)4_000m), (notice.DaysOf().Single(), notice.Amount));
        Assert.Equal(12_000m, Find(job, "notice-first-day", "2026-09-08")!.Amount); // 3 August and 35 days
        Assert.Equal(4_000m, Find(job, "notice-first-day", "2026-09-07")!.Amount);
        Assert.Equal(4_000m, Find(job, "notice-first-day", "2026-07-01")!.Amount);
    }

    // § 8830: under a written contract, and with no dispute about the performance.
    [Theory]
    [InlineData(true, 0, "2026-08-05", Standing.NotYet, "")]
    [InlineData(true, 0, "2026-08-06", Standing.Open, "")]
    [InlineData(null, 0, "2026-08-05", Standing.NotYet, "in writing")]
    [InlineData(null, 0, "2026-08-06", Standing.InDoubt, "in writing")]
    [InlineData(true, 1, "2026-08-06", Standing.InDoubt, "performance")]
    [InlineData(false, 0, "2026-08-05", Standing.Lost, "")]
    [InlineData(false, 0, "2026-08-06", Standing.Lost, "")]
    [Proves("Civ. Code § 8830")]
    [Proves("Civ. Code § 8832")]
    public void What_the_right_asks_for(bool? written, int disputes, string asOf, Standing expected, string asked)
    {
        var job = Demanded(Job(written));
        var notice = Find(disputes == 0 ? job : job.Disputed("2026-06-20", 100m), "notice-first-day", asOf)!;
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(asked.Length == 0 ? 0 : 1, notice.Questions.Count);
        Assert.True(notice.Asks(asked) || asked.Length == 0);
        Assert.Equal(written == false, notice.Sections.Contains("Civ. Code § 8830"));
        Assert.Contains("Civ. Code § 8834(b)", notice.Sections);
    }

    // § 8834(a): at least five days before the notice. Posted today, the notice may be given in five days, and not before its first day.
    [Theory]
    [InlineData("2026-07-20", "posted today, the notice may be given from 2026-08-06 (Thu)")]
    [InlineData("2026-08-01", "posted today, the notice may be given from 2026-08-06 (Thu)")]
    [InlineData("2026-08-02", "posted today, the notice may be given from 2026-08-07 (Fri)")]
    [Proves("Civ. Code § 8834(a)")]
    public void Posted_today_the_notice_may_be_given_in_five_days(string asOf, string says)
    {
        var posting = Find(Demanded(Job()), "posting", asOf)!;
        Assert.Equal(["2026-08-01"], posting.DaysOf());
        Assert.True(posting.Says(says));
        Assert.True(posting.Says("by 2026-08-01 (Sat) for a notice on 2026-08-06 (Thu)"));
        Assert.Contains("Civ. Code § 8838(a)", posting.Sections);
    }

    // A notice given between 10 and 12 August: posted by the 5th; work may stop on the eleventh day after the 12th, Sunday the 23rd.
    [Theory]
    [InlineData("2026-08-22", Standing.NotYet)]
    [InlineData("2026-08-23", Standing.Open)]
    [Proves("Civ. Code § 8834(a)")]
    [Proves("Civ. Code § 8844(a)")]
    public void A_notice_of_a_day_in_doubt_is_posted_early_and_stops_work_late(string asOf, Standing expected)
    {
        var job = Given(Demanded(Job()), "2026-08-10..2026-08-12", "owner");
        var posting = Find(job, "posting", asOf)!;
        Assert.Equal(("2026-08-05", Standing.InDoubt), (posting.DaysOf().Single(), posting.Standing));
        Assert.True(posting.Says("for a notice on 2026-08-10 (Mon)"));
        Assert.True(posting.Asks("by 2026-08-05?"));
        var stop = Find(job, "first-day", asOf)!;
        Assert.Equal(("2026-08-23", expected), (stop.DaysOf().Single(), stop.Standing));
    }

    // §§ 8832, 8834(b): to the owner, with a copy to each subcontractor with whom there is a direct contract, and not before its first day.
    // The last paper counts.
    [Theory]
    [InlineData("2026-08-06", "owner framer", Standing.Open, null)]
    [InlineData("2026-08-05", "owner framer", Standing.InDoubt, "Civ. Code § 8832")]
    [InlineData("2026-08-05..2026-08-06", "owner framer", Standing.InDoubt, "Civ. Code § 8832")]
    [InlineData("2026-08-06", "framer", Standing.InDoubt, "Civ. Code § 8832")]
    [InlineData("2026-08-06", "nobody framer", Standing.InDoubt, "Civ. Code § 8832")]
    [InlineData("2026-08-06", "owner", Standing.InDoubt, "Civ. Code § 8834(b)")]
    [InlineData("2026-08-06", "", Standing.Open, null)]
    [Proves("Civ. Code § 8832")]
    [Proves("Civ. Code § 8834(b)")]
    public void The_notice_reaches_the_owner_and_every_subcontractor(string on, string to, Standing expected, string? section)
    {
        var job = Demanded(Job()).Party("framer", PartyCapacity.Subcontractor, "Framer Co.")
            .Party("yard", PartyCapacity.Supplier, "Teasel Lumber Yard");
        var stop = Find(Given(job, on, to.Split(' ', StringSplitOptions.RemoveEmptyEntries)), "first-day")!;
        Assert.Equal(expected, stop.Standing);
        Assert.Equal(section is null ? [] : [section], stop.Sections.Except(["Civ. Code § 8830", "Civ. Code § 8844(a)"]));
        Assert.Equal(to.Length == 0 ? 1 : 0, stop.Questions.Count);
        Assert.All(stop.Questions, q => Assert.IsType<StopWorkNoticeGiven>(q.Corrects));
        Assert.False(stop.Says("Teasel"));
        Assert.Equal(Standing.NotYet, Find(job, "first-day", "2026-08-15")!.Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8830")]
    public void The_stop_has_the_standing_that_the_notice_leaves_it()
    {
        Assert.Equal(Standing.Lost, Find(Given(Demanded(Job(false)), "2026-08-06", "owner"), "first-day")!.Standing);
        Assert.Equal(Standing.InDoubt, Find(Given(Demanded(Job(null)), "2026-08-06", "owner"), "first-day")!.Standing);
        Assert.Equal(["2026-08-18"], Find(Given(Given(Demanded(Job()), "2026-08-06", "owner"), "2026-08-07", "owner"), "first-day")!
            .DaysOf());
        Assert.Null(Find(Given(Demanded(Job()), "?", "owner"), "first-day"));
        // Paid since: there is nothing left to stop for.
        Assert.Null(Find(Given(Demanded(Job()).Paid("2026-08-10", 12_000m), "2026-08-06", "owner"), "first-day"));
        // Where the file names no owner, nobody can say that it was not told.
        Assert.Equal(Standing.Open, Find(Given(Demanded(Job().NoParty("owner")), "2026-08-06", "direct"), "first-day")!.Standing);
    }

    // § 8816(a): done between 1 and 2 June 2026, so answered by Friday 12 June; the last paper counts.
    [Theory]
    [InlineData("2026-06-01..2026-06-02", "2026-06-12", Standing.NotYet)]
    [InlineData("2026-06-01..2026-06-02", "2026-06-13", Standing.Open)]
    [InlineData("2026-05-01 2026-06-02", "2026-06-12", Standing.NotYet)]
    [InlineData("?", "2026-06-12", null)]
    [Proves("Civ. Code § 8816(a)")]
    [Proves("Civ. Code § 8816(b)")]
    public void Disputed_work_that_is_done_is_answered_within_ten_days(string done, string asOf, Standing? expected)
    {
        foreach (var role in (ClaimantRole[])[ClaimantRole.DirectContractor, ClaimantRole.Subcontractor])
        {
            var job = new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct")
                .Furnished("2026-03-02", 50_000m);
            foreach (var day in done.Split(' '))
                job.Add(i => new DisputedWorkDone { Index = i, On = When(day) });
            var found = job.On(asOf).Find("retention.disputed-work");
            Assert.Equal(expected, found?.Standing);
            Assert.Equal(expected is null ? [] : ["2026-06-12"], found?.DaysOf() ?? []);
            Assert.Equal(expected is null ? [] : ["Civ. Code § 8816(a)", "Civ. Code § 8816(b)"], found?.Sections ?? []);
        }
    }

    // § 8816(b): accepted on Thursday 4 June, the tenth day is Sunday 14 June, so Monday the 15th. What is accepted after the day of asking
    // is not known yet.
    [Theory]
    [InlineData("2026-06-03", Standing.NotYet, null)]
    [InlineData("2026-06-04", Standing.Done, Standing.NotYet)]
    [InlineData("2026-06-15", Standing.Done, Standing.NotYet)]
    [InlineData("2026-06-16", Standing.Done, Standing.Open)]
    [Proves("Civ. Code § 8816(a)")]
    [Proves("Civ. Code § 8816(b)")]
    [Proves("Civ. Code § 8818")]
    public void Retention_for_disputed_work_is_due_ten_days_after_its_acceptance(string asOf, Standing answer, Standing? payment)
    {
        var on = new JobBuilder().Role(ClaimantRole.Subcontractor).Furnished("2026-03-02", 50_000m)
            .Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-01"), Accepted = Day("2026-06-04") }).On(asOf);
        Assert.Equal(answer, on.Get("retention.disputed-work").Standing);
        Assert.Equal(answer == Standing.NotYet, on.Get("retention.disputed-work").Asks("(disputed-work-done.accepted)"));
        var found = on.Find("retention.disputed-work-payment");
        Assert.Equal(payment, found?.Standing);
        Assert.Equal(payment is null ? [] : ["2026-06-15"], found?.DaysOf() ?? []);
        Assert.Equal(payment is null ? [] : ["Civ. Code § 8816(b)", "Civ. Code § 8818"], found?.Sections ?? []);
    }

    // The day of the notice does not matter for what was accepted.
    [Fact]
    [Proves("Civ. Code § 8816(b)")]
    public void Acceptance_counts_though_the_day_of_the_notice_is_unknown()
    {
        var on = new JobBuilder().Role(ClaimantRole.Subcontractor)
            .Add(i => new DisputedWorkDone { Index = i, On = When("?"), Accepted = Day("2026-06-04") }).On("2026-06-10");
        Assert.Null(on.Find("retention.disputed-work"));
        Assert.Equal(["2026-06-15"], on.Get("retention.disputed-work-payment").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8816(a)")]
    public void Work_that_was_rejected_stays_in_dispute()
    {
        var on = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-01"), Rejected = Day("2026-06-04") }).On("2026-06-20");
        Assert.Equal(Standing.Done, on.Get("retention.disputed-work").Standing);
        Assert.True(on.Get("retention.disputed-work").Says("stays in dispute"));
        Assert.False(on.Get("retention.disputed-work").Says("Accepted"));
        Assert.Null(on.Find("retention.disputed-work-payment"));
    }
}
