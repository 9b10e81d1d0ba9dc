using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// A direct contractor's claim against a public entity (Pub. Contract Code §§ 9204, 20104-20104.6, 10240.1). Counted apart with Python.
/// </summary>
public sealed class PublicClaimTests
{
    private static JobBuilder Job(string? made = "2025-07-14", PublicBody? body =
        PublicBody.Local, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder().PublicWork()
        .Role(role, role == ClaimantRole.DirectContractor ? "city" : "direct").Licensed("2012-06-01..").Work(w => w with { Body = body })
        .Contract(c => c with { On = made is null ? null : Day(made), Price = 88000m })
        .Furnished("2025-08-05", 88000m);

    private static JobBuilder Claim(JobBuilder job, string sent = "2026-10-01", string? received = "2026-10-05", decimal? amount = 18400m,
        Manner? manner = Manner.CertifiedMail) =>
        job.Add(i => new DisputeClaimSent { Index = i, On = When(sent), Received = received is null
            ? null : Day(received), Amount = amount, Manner = manner });

    private static JobBuilder Answered(JobBuilder job, string on, decimal? undisputed = null) =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When(on), Undisputed = undisputed });

    private static JobBuilder Demanded(JobBuilder job, string on) =>
        job.Add(i => new ConferenceDemanded { Index = i, On = When(on), Manner = Manner.CertifiedMail });

    private static Finding Statement(JobBuilder job, string asOf = "2026-11-25") => job.On(asOf).Get("dispute-claim.entitys-statement");

    private static Finding Conference(JobBuilder job, string asOf = "2026-11-25") => job.On(asOf).Get("dispute-claim.conference-last-day");

    // Received Wednesday 3 June: the 45th day is Saturday 18 July, so Monday 20 July.
    [Theory]
    [InlineData("2026-07-20", Standing.NotYet)]
    [InlineData("2026-07-21", Standing.Open)]
    [InlineData("2026-12-31", Standing.Open)]
    [InlineData("2027-01-01", Standing.InDoubt)]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 9204(d)(3)")]
    [Proves("Pub. Contract Code § 9204(i)")]
    public void The_entity_answers_within_forty_five_days_of_receipt(string asOf, Standing expected)
    {
        var statement = Statement(Claim(Job(), "2026-06-01", "2026-06-03"), asOf);
        Assert.Equal(["2026-07-20"], statement.DaysOf());
        Assert.Equal(expected, statement.Standing);
        Assert.Equal("Pub. Contract Code § 9204", statement.Sections[0]);
        Assert.Equal(expected == Standing.InDoubt, statement.Says("keeps its argument"));
        Assert.Equal(Standing.Done, Statement(Answered(Claim(Job(), "2026-06-01", "2026-06-03"), "2026-07-10"), asOf).Standing);
    }

    // § 9204(d)(1)(A): the 45th day is 18 July, a Saturday; extended to 14 August. One that ends no later gives nothing.
    [Theory]
    [InlineData("2026-08-14", null, new[] { "2026-08-14" }, "2026-08-15", Standing.Open, "extended the entity's time to 2026-08-14")]
    [InlineData("2026-08-14", null, new[] { "2026-08-14" }, "2026-08-14", Standing.NotYet, "extended the entity's time to 2026-08-14")]
    [InlineData("2026-07-18", null, new[] { "2026-07-20" }, "2026-07-21", Standing.Open, "")]
    // § 9204(d)(1)(C): three days after the next meeting of the governing body, on Tuesday 4 August; one within the time gives nothing.
    [InlineData(null, "2026-08-04", new[] { "2026-07-20", "2026-08-07" }, "2026-08-07", Standing.NotYet,
        "three days after the next meeting")]
    [InlineData(null, "2026-08-04", new[] { "2026-07-20", "2026-08-07" }, "2026-08-08", Standing.Open, "three days after the next meeting")]
    [InlineData(null, "2026-07-18", new[] { "2026-07-20" }, "2026-07-21", Standing.Open, "")]
    [InlineData("2026-08-14", "2026-08-04", new[] { "2026-08-14" }, "2026-08-15", Standing.Open, "")]
    [InlineData("2026-08-14", "2026-08-18", new[] { "2026-08-14", "2026-08-21" }, "2026-08-15", Standing.NotYet,
        "three days after the next meeting")]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 9204(d)(3)")]
    public void An_extension_or_a_later_meeting_gives_the_entity_more_time(string? extended, string? meeting, string[] days, string asOf,
        Standing expected, string says)
    {
        var job = Claim(Job(), "2026-06-01", "2026-06-03")
            .Which(e => (DisputeClaimSent)e with { ExtendedTo = extended is null
                ? null : Day(extended), NextMeeting = meeting is null ? null : Day(meeting) });
        var statement = Statement(job, asOf);
        Assert.Equal(days, statement.DaysOf());
        Assert.Equal((expected, new Band(statement.Readings[0], statement.Readings[^1])), (statement.Standing, statement.Band));
        Assert.True(statement.Says(says));
        Assert.Equal(meeting is not null && days.Length == 1, statement.RuledOut("Pub. Contract Code § 9204(d)(1)"));
        Assert.Equal(meeting is null && expected == Standing.Open, statement.Asks("(dispute-claim-sent.nextMeeting)"));
    }

    // Neither an extension nor a meeting, on whatever day, leaves the entity less time than the 45 days.
    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    public void No_extension_and_no_meeting_shortens_the_time()
    {
        for (var day = Day("2026-06-01"); day < Day("2026-10-01"); day = day.PlusDays(1))
        {
            foreach (var change in (Func<DisputeClaimSent, DisputeClaimSent>[])[e =>
                e with { ExtendedTo = day }, e => e with { NextMeeting = day }])
                Assert.True(Statement(Claim(Job(), "2026-06-01", "2026-06-03").Which(e => change((DisputeClaimSent)e)),
                    "2026-06-10").Readings[^1].Day >= Day("2026-07-20"), LawText.IsoDay(day));
        }
    }

    // Without § 9204, § 20104.2 knows neither.
    [Fact]
    [Proves("Pub. Contract Code § 20104.2")]
    public void The_older_procedure_knows_no_extension() =>
        Assert.Equal(["2026-11-19"],
            Statement(Claim(Job("2016-12-31"))
                .Which(e => (DisputeClaimSent)e with { ExtendedTo = Day("2026-12-18"), NextMeeting = Day("2026-12-08") })).DaysOf());

    // § 20104.2(b), (c), under a contract from before 2017. Received 5 October: further documents are asked for by 4 November. Given on the
    // 20th, after 10 days, the agency has 15 more, or 30 for a claim over $50,000; given after 40 days it has as many, from 28 November to
    // 7 January.
    [Theory]
    [InlineData(18400, "2026-10-19", "2026-10-29", new[] { "2026-11-13" }, "within 15 days after that", "2026-11-28")]
    // 28 November is a Saturday
    [InlineData(62000, "2026-10-19", "2026-10-29", new[] { "2026-11-30" }, "within 30 days after that", "2026-12-13")]
    [InlineData(18400, "2026-10-19", "2026-11-28", new[] { "2027-01-07" }, "within 40 days after that", "2027-01-22")]
    [InlineData(18400, "2026-11-04", "2026-11-05", new[] { "2026-11-20" }, "within 15 days after that", "2026-12-05")]
    [InlineData(18400, "2026-11-05", "2026-11-06", new[] { "2026-11-19" }, "", "2026-12-04")]
    [InlineData(18400, "2026-10-19", null, new string[0], "15 days after it receives them", null)]
    [InlineData(62000, "2026-10-19", null, new string[0], "30 days after it receives them", null)]
    [Proves("Pub. Contract Code § 20104.2")]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void Documents_asked_for_put_the_agencys_answer_off(int amount, string asked, string? given, string[] days, string says,
        string? conference)
    {
        var job = Documents(Claim(Job("2016-12-31"), amount: amount), asked, given);
        var on = job.On("2026-11-28");
        var statement = on.Get("dispute-claim.entitys-statement");
        Assert.Equal(days, statement.DaysOf());
        Assert.True(statement.Says(says));
        Assert.Equal(asked == "2026-11-05", statement.RuledOut("Pub. Contract Code § 20104.2"));
        Assert.Equal(given is null, statement.Asks("(dispute-claim-sent.documentsGiven)"));
        Assert.Equal(given is null || days[0].CompareTo("2026-11-28", StringComparison.Ordinal) >= 0
            ? Standing.NotYet : Standing.Open, statement.Standing);
        Assert.Equal(conference is null ? [] : [conference], on.Find("dispute-claim.conference-last-day")?.DaysOf() ?? []);
        // What is asked or given later is not known yet; and it is asked for once the time is over.
        Assert.Equal([amount > 50_000 ? "2026-12-04" : "2026-11-19"], Statement(job, "2026-10-10").DaysOf());
        Assert.True(Statement(Claim(Job("2016-12-31"), amount: amount), "2026-12-07").Asks("(dispute-claim-sent.documentsAsked)"));
    }

    // Where § 9204 governs, or may govern, its 45 days stand; what the documents do under the older procedure stands beside them.
    [Theory]
    [InlineData("2025-07-14", "2026-10-29", new[] { "2026-11-19" })]
    [InlineData(null, "2026-10-29", new[] { "2026-11-13", "2026-11-19" })]
    [InlineData(null, null, new[] { "2026-11-19" })]
    [Proves("Pub. Contract Code § 20104.2")]
    public void Documents_move_no_day_of_the_newer_section(string? made, string? given, string[] days)
    {
        var on = Documents(Claim(Job(made)), "2026-10-19", given).On("2026-11-25");
        var statement = on.Get("dispute-claim.entitys-statement");
        Assert.Equal(days, statement.DaysOf());
        Assert.Equal(made is null && given is null, statement.Band!.Latest is null);
        Assert.Equal(["2026-12-04"], on.Get("dispute-claim.conference-last-day").DaysOf());
    }

    // Without the receipt, documents asked for later than thirty days after the sending may have been asked for in time: both readings.
    [Fact]
    [Proves("Pub. Contract Code § 20104.2")]
    public void Without_the_receipt_it_is_open_whether_documents_were_asked_for_in_time()
    {
        var on = Documents(Claim(Job("2016-12-31"), received: null), "2026-11-05", "2026-11-10").On("2026-11-28");
        // the 45th day, 15 November, is a Sunday
        Assert.Equal(["2026-11-16", "2026-11-25"], on.Get("dispute-claim.entitys-statement").DaysOf());
        Assert.Equal(["2026-11-30"], on.Get("dispute-claim.conference-last-day").DaysOf());
        // An answer starts the fifteen days though documents are still awaited.
        Assert.Equal(["2026-11-25"], Conference(Answered(Documents(Claim(Job("2016-12-31")), "2026-10-19", null), "2026-11-10")).DaysOf());
    }

    private static JobBuilder Documents(JobBuilder job, string asked, string? given) =>
        job.Which(e => (DisputeClaimSent)e with { DocumentsAsked = Day(asked), DocumentsGiven = given is null ? null : Day(given) });

    // Silent to 19 November, so 4 December; extended to 27 November, 12 December. Answered on the 20th the days end on the 4th on the older
    // count, and on the 5th.
    [Theory]
    [InlineData("2026-11-27", null, new[] { "2026-12-04", "2026-12-12" })]
    [InlineData("2026-11-27", "2026-11-20", new[] { "2026-12-04", "2026-12-05" })]
    [InlineData("2026-11-27", "2026-11-16", new[] { "2026-12-01" })]
    [InlineData("2026-11-19", null, new[] { "2026-12-04" })]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void Whether_an_extension_moves_the_fifteen_days_is_open(string extended, string? answered, string[] days)
    {
        var job = Claim(Job()).Which(e => (DisputeClaimSent)e with { ExtendedTo = Day(extended) });
        if (answered is not null)
            Answered(job, answered);
        Assert.Equal(days, Conference(job).DaysOf());
    }

    // The section ends with 2026: which law governs is told by the claim's day, whatever the day of asking.
    [Theory]
    [InlineData("2026-12-31", 18400, new[] { "2027-02-16" }, "keeps its argument")] // 14 February is a Sunday, the Monday a holiday
    [InlineData("2027-01-01", 18400, new[] { "2027-02-16" }, "SB 33")] // the 45th day, 15 February, is Presidents' Day
    [InlineData("2026-12-31", 62000, new[] { "2027-02-16" }, "keeps its argument")]
    [InlineData("2027-01-04", 62000, new[] { "2027-02-18", "2027-03-05" }, "SB 33")] // the older procedure has 60 days for a greater claim
    [Proves("Pub. Contract Code § 9204(i)")]
    [Proves("Pub. Contract Code § 20104.2")]
    [Proves("Pub. Contract Code § 20104(a)")]
    public void A_claim_on_each_side_of_the_sections_end_has_the_law_of_its_day(string received, int amount, string[] days, string says)
    {
        var statement = Statement(Claim(Job(), "2026-12-28", received, amount), "2027-03-10");
        Assert.Equal(days, statement.DaysOf());
        Assert.Equal(Standing.InDoubt, statement.Standing);
        Assert.True(statement.Says(says));
        Assert.Equal(received[..4] == "2027", statement.Says("the older procedure is left"));
    }

    [Theory]
    [InlineData("2016-12-31", 18400, "2026-11-19", Standing.Open, "Pub. Contract Code § 20104.2")]
    [InlineData("2016-12-31", 62000, "2026-12-04", Standing.NotYet, "Pub. Contract Code § 20104.2")]
    [InlineData("2017-01-01", 62000, "2026-11-19", Standing.Open, "Pub. Contract Code § 9204")]
    [Proves("Pub. Contract Code § 9204(g)")]
    public void A_contract_from_before_2017_is_under_the_older_procedure(string made, int amount, string day, Standing expected,
        string section)
    {
        var statement = Statement(Claim(Job(made), amount: amount));
        Assert.Equal([day], statement.DaysOf());
        Assert.Equal((expected, section), (statement.Standing, statement.Sections[0]));
    }

    [Fact]
    [Proves("Pub. Contract Code § 9204(g)")]
    [Proves("Pub. Contract Code § 20104(a)")]
    public void Neither_procedure_reaches_an_old_contract_with_a_claim_beyond_375_000_dollars()
    {
        Assert.Equal(Standing.Lost, Statement(Claim(Job("2016-12-31"), amount: 375000.01m)).Standing);
        Assert.Equal(Standing.NotYet, Statement(Claim(Job("2016-12-31"), amount: 375000m)).Standing);
        Assert.Equal(Standing.Open, Statement(Claim(Job(), amount: 375000.01m)).Standing);
        Assert.Null(Claim(Job(), amount: 375000.01m).On("2026-11-25").Find("dispute-claim.conference-last-day"));
    }

    [Theory]
    [InlineData(PublicBody.Transportation, Standing.Lost)]
    [InlineData(PublicBody.GeneralServices, Standing.Lost)]
    [InlineData(PublicBody.State, Standing.InDoubt)]
    [InlineData(PublicBody.StateUniversity, Standing.Open)]
    [InlineData(PublicBody.UniversityOrCourt, Standing.Open)]
    [InlineData(PublicBody.Local, Standing.Open)]
    [InlineData(null, Standing.Open)]
    [Proves("Pub. Contract Code § 9204(c)(3)")]
    public void Some_State_departments_are_outside_the_section(PublicBody? body, Standing expected)
    {
        var statement = Statement(Claim(Job(body: body)));
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(body is null, statement.Asks("(work.body)"));
        Assert.Equal(body is null or PublicBody.Local, Claim(Job(body: body)).On("2026-11-25")
            .Find("dispute-claim.conference-last-day") is not null);
    }

    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    public void Without_the_day_of_receipt_the_day_is_a_not_before_and_what_is_missing_is_asked()
    {
        var statement = Statement(Claim(Job(), "2026-04-13", received: null, manner: null), "2026-06-15");
        Assert.Equal(["2026-05-28"], statement.DaysOf());
        Assert.Contains("not before 2026-04-13", statement.Readings[0].Name, StringComparison.Ordinal);
        Assert.Equal(Standing.InDoubt, statement.Standing);
        Assert.True(statement.Asks("(dispute-claim-sent.received)"));
        Assert.True(statement.Asks("(dispute-claim-sent.manner)"));
        var full = Statement(Claim(Job()));
        Assert.False(full.Asks("(dispute-claim-sent.received)") || full.Asks("(dispute-claim-sent.manner)"));
    }

    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.Open)]
    [InlineData(Manner.RegisteredMail, Standing.Open)]
    [InlineData(Manner.Email, Standing.InDoubt)]
    [InlineData(Manner.Personal, Standing.InDoubt)]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    public void A_claim_is_one_sent_by_registered_or_certified_mail(Manner manner, Standing expected)
    {
        var statement = Statement(Claim(Job(), manner: manner));
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(expected == Standing.InDoubt, statement.Says("send it again that way"));
    }

    // Received 5 October: silent to 19 November, so the conference is demanded by Friday 4 December.
    [Theory]
    [InlineData("2026-11-19", Standing.NotYet)]
    [InlineData("2026-11-20", Standing.Open)]
    [InlineData("2026-12-04", Standing.Open)]
    [InlineData("2026-12-05", Standing.InDoubt)]
    [Proves("Pub. Contract Code § 9204(d)(2)")]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void The_conference_is_demanded_within_fifteen_days_of_the_failure_to_answer(string asOf, Standing expected)
    {
        var conference = Conference(Claim(Job()), asOf);
        Assert.Equal(["2026-12-04"], conference.DaysOf());
        Assert.Equal((expected, "2026-12-04"), (conference.Standing, conference.Plan()));
        Assert.Equal(Standing.Kept, Conference(Demanded(Claim(Job()), "2026-12-04"), "2026-12-07").Standing);
        Assert.Equal(Standing.InDoubt, Conference(Demanded(Claim(Job()), "2026-12-05"), "2026-12-07").Standing);
    }

    [Fact]
    [Proves("Pub. Contract Code § 20104.2(d)")]
    public void An_answer_begins_the_fifteen_days_when_it_comes_and_one_that_comes_late_moves_nothing()
    {
        Assert.Equal("2026-11-12", Conference(Answered(Claim(Job()), "2026-10-28"), "2026-11-02").Plan());
        Assert.Equal(Standing.Open, Conference(Answered(Claim(Job()), "2026-10-28"), "2026-11-02").Standing);
        Assert.Equal("2026-12-04", Conference(Answered(Claim(Job()), "2026-11-30"), "2026-12-02").Plan());
    }

    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(2)")]
    public void After_the_demand_come_the_conference_and_what_is_left_in_dispute()
    {
        var demanded = Demanded(Claim(Job(), "2026-06-01", "2026-06-03"), "2026-07-24");
        var conference = demanded.On("2026-08-24").Get("dispute-claim.conference");
        Assert.Equal(["2026-08-24"], conference.DaysOf());
        Assert.Equal(Standing.NotYet, conference.Standing); // the thirtieth day is Sunday 23 August
        Assert.Equal(Standing.Open, demanded.On("2026-08-25").Get("dispute-claim.conference").Standing);
        var held = demanded.Add(i => new ConferenceHeld { Index = i, On = When("2026-08-28") });
        Assert.Null(held.On("2026-09-08").Find("dispute-claim.conference"));
        // Labor Day and Admission Day between
        Assert.Equal(["2026-09-15"], held.On("2026-09-08").Get("dispute-claim.second-statement").DaysOf());
        Assert.Null(Claim(Job()).On("2026-11-25").Find("dispute-claim.conference"));
    }

    // Answered 10 July 2026: 60 days end on 8 September. 7 percent of 7,300.00 is 1.40 a day.
    [Theory]
    [InlineData("2026-09-08", Standing.NotYet, 0)]
    [InlineData("2026-09-10", Standing.Open, 2.80)]
    [InlineData("2026-10-09", Standing.Open, 43.40)]
    [Proves("Pub. Contract Code § 9204(d)(1)")]
    [Proves("Pub. Contract Code § 9204(d)(4)")]
    public void The_part_not_disputed_is_paid_within_sixty_days_and_bears_seven_percent_after(string asOf, Standing expected,
        decimal interest)
    {
        var part = Answered(Claim(Job(), "2026-06-01", "2026-06-03"), "2026-07-10", 7300m).On(asOf).Get("dispute-claim.undisputed-part");
        Assert.Equal(["2026-09-08"], part.DaysOf());
        Assert.Equal((expected, (decimal?)interest), (part.Standing, part.Amount));
        Assert.Equal(Standing.Done, Answered(Claim(Job(), "2026-06-01", "2026-06-03"), "2026-07-10", 7300m).Paid("2026-09-01", 7300m)
            .On(asOf).Get("dispute-claim.undisputed-part").Standing);
        Assert.Null(Answered(Claim(Job(), "2026-06-01", "2026-06-03"), "2026-07-10").On(asOf).Find("dispute-claim.undisputed-part"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 20104.2(a)")]
    public void Toward_a_local_agency_a_claim_is_filed_by_final_payment()
    {
        static JobBuilder Paid(JobBuilder job, string on) => job.Add(i => new FinalPayment { Index = i, On = When(on) });
        Finding Filing(JobBuilder job, string asOf = "2026-11-25") => job.On(asOf).Get("dispute-claim.filing-last-day");
        Assert.Equal(Standing.Kept, Filing(Paid(Claim(Job()), "2026-10-01")).Standing);
        Assert.Equal(Standing.InDoubt, Filing(Paid(Claim(Job()), "2026-09-30")).Standing);
        // Under the older procedure alone it is too late.
        Assert.Equal(Standing.Lost, Filing(Paid(Claim(Job("2016-12-31")), "2026-09-30")).Standing);
        Assert.Equal(Standing.Kept, Filing(Claim(Job())).Standing);
        var open = Filing(Job().Disputed("2026-09-01", 5200m));
        Assert.Equal(Standing.Open, open.Standing);
        Assert.True(open.Asks("(final-payment)"));
        Assert.Equal("2026-11-20", Filing(Paid(Job().Disputed("2026-09-01", 5200m), "2026-11-20"), "2026-11-20").Plan());
        Assert.Null(Paid(Job(), "2026-11-20").On("2026-11-25").Find("dispute-claim.filing-last-day"));
        Assert.Null(Claim(Job(body: PublicBody.State)).On("2026-11-25").Find("dispute-claim.filing-last-day"));
    }

    // Served Monday 5 October 2026: the ninetieth day is Sunday 3 January 2027, planned on Thursday the 31st, since New Year's Day is
    // Friday.
    [Fact]
    [Proves("Pub. Contract Code § 10240.1")]
    public void Arbitration_with_the_State_begins_within_ninety_days_of_the_final_decision()
    {
        var job = Job(body: PublicBody.Transportation).Add(i => new FinalDecisionServed { Index = i, On = When("2026-10-05") });
        var last = job.On("2026-11-25").Get("dispute-claim.arbitration-last-day");
        Assert.Equal(["2027-01-03"], last.DaysOf());
        Assert.Equal((Standing.Open, "2026-12-31"), (last.Standing, last.Plan()));
        Assert.Equal(Standing.InDoubt, job.On("2027-01-05").Get("dispute-claim.arbitration-last-day").Standing);
        Assert.True(last.Says("latent defect"));
    }

    [Theory]
    [InlineData("2026-06-19", Standing.NotYet)]
    [InlineData("2026-06-20", Standing.Open)]
    [Proves("Pub. Contract Code § 10240.2")]
    public void More_than_240_days_after_acceptance_it_may_begin_without_a_decision(string asOf, Standing expected)
    {
        var job = Claim(Job(body: PublicBody.State), "2026-01-05", "2026-01-07").Completed("2025-10-22", CompletionTheory.Acceptance);
        var first = job.On(asOf).Get("dispute-claim.arbitration-first-day");
        Assert.Equal(["2026-06-20"], first.DaysOf());
        Assert.Equal(expected, first.Standing);
        Assert.Null(Claim(Job(), "2026-01-05", "2026-01-07").Completed("2025-10-22", CompletionTheory.Acceptance).On(asOf)
            .Find("dispute-claim.arbitration-first-day"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(5)")]
    public void A_subcontractors_claim_goes_through_the_contractor_who_answers_within_forty_five_days()
    {
        var job = Job(role: ClaimantRole.Subcontractor)
            .Work(w => w with { DirectContract = new DirectContract { On = Day("2025-07-01") } });
        var asked = job.Add(i => new ClaimRequestMade { Index = i, On = When("2026-04-13"), Amount = 5200m });
        var answer = asked.On("2026-05-28").Get("dispute-claim.contractors-answer");
        Assert.Equal(["2026-05-28"], answer.DaysOf());
        Assert.Equal(Standing.NotYet, answer.Standing);
        Assert.Equal(Standing.Open, asked.On("2026-05-29").Get("dispute-claim.contractors-answer").Standing);
        Assert.Null(asked.On("2026-05-29").Find("dispute-claim.entitys-statement"));
        var told = asked.Add(i => new ClaimRequestAnswered { Index = i, On = When("2026-05-20"), Presented = false }).On("2026-05-29")
            .Get("dispute-claim.contractors-answer");
        Assert.Equal(Standing.Done, told.Standing);
        Assert.True(told.Says("did not present"));
    }

    [Fact]
    [Proves("Pub. Contract Code § 9204(d)(5)")]
    public void A_claim_of_one_with_no_contract_with_the_entity_is_taken_for_a_request()
    {
        var job = Job(role: ClaimantRole.Subcontractor);
        var answer = Claim(job, "2026-04-13", received: null).On("2026-06-15").Get("dispute-claim.contractors-answer");
        Assert.Equal(["2026-05-28"], answer.DaysOf());
        Assert.Equal(Standing.InDoubt, answer.Standing); // the day of the direct contract is not told
        Assert.True(answer.Says("not to the entity"));
        Assert.True(answer.Asks("(work.directContract.on)"));
        Assert.Equal(Standing.Lost,
            Claim(Job(role: ClaimantRole.Subcontractor)
                .Work(w => w with { DirectContract = new DirectContract { On = Day("2016-12-31") } })).On("2026-11-25")
                .Get("dispute-claim.contractors-answer").Standing);
    }
}
