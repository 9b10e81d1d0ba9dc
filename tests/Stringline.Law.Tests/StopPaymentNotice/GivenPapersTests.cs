using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// What of the papers that were given counts, what is said of each, and what the public entity answers (Civ. Code §§ 8128, 8508, 8520-8534,
/// 9300, 9354, 9362). Of the usual public job entries 0 to 3 are the search, the furnishing, the notice and the acceptance; of the private
/// one 0 to 2 all but the search.
/// </summary>
public sealed class GivenPapersTests
{
    private static Finding Last(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.last-day");

    private static JobBuilder Given(string on = "2025-11-03") => UsualPublic().StopPaymentGiven(on, 6430m, false, "city");

    // Preliminary notice between 1 and 4 November: it surely came first only before a paper of the 4th or later.
    [Theory]
    [InlineData("2025-10-31", Standing.Open)]
    [InlineData("2025-10-29..2025-10-31", Standing.Open)]
    [InlineData("2025-10-31..2025-11-01", Standing.InDoubt)]
    [InlineData("2025-11-03", Standing.InDoubt)]
    [InlineData("2025-11-03..2025-11-05", Standing.InDoubt)]
    [InlineData("2025-11-04", Standing.Kept)]
    [InlineData("2025-11-04..2025-11-06", Standing.Kept)]
    [Proves("Civ. Code § 9300(c)")]
    public void The_preliminary_notice_surely_comes_first_or_it_is_in_doubt(string given, Standing expected)
    {
        var last = Last(Public().Furnished("2025-10-20", 6430m).Accepted().NoticedPublic("2025-11-01..2025-11-04")
            .StopPaymentGiven(given, 6430m, false, "city"));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Open ? [4] : [], last.EntriesOf("before the preliminary notice, which must come first"));
        Assert.Equal(expected == Standing.InDoubt ? [4] : [], last.EntriesOf("Whether the preliminary notice to all came before"));
        Assert.Equal(expected == Standing.Kept ? [4] : [], last.EntriesOf("Stop payment notice given to the public entity"));
    }

    // Before anything was furnished nothing is open; a doubtful preliminary notice leaves what was given, or is still to give, in doubt,
    // but not what is lost.
    [Theory]
    [InlineData(true, false, "2025-12-01", Standing.InDoubt)]
    [InlineData(true, true, "2025-12-01", Standing.InDoubt)]
    [InlineData(true, false, "2026-01-21", Standing.Lost)]
    [InlineData(false, true, "2025-12-01", Standing.Kept)]
    [InlineData(false, false, "2025-12-01", Standing.Open)]
    [Proves("Civ. Code § 9300(c)")]
    public void A_preliminary_notice_in_doubt_leaves_the_stop_payment_notice_in_doubt(bool doubtful, bool given, string asOf,
        Standing expected)
    {
        var job = Public().PartyWith("direct", p => p with { NaturalPerson = true }).Furnished("2025-08-05", 6430m)
            .Notice("2025-08-14", Manner.CertifiedMail, "city")
            .Notice("2025-08-14", doubtful ? Manner.Substituted : Manner.CertifiedMail, "direct").Accepted();
        Assert.Equal(expected, Last(given ? job.StopPaymentGiven("2025-11-03", 6430m, false, "city") : job, asOf).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9300(c)")]
    public void That_the_preliminary_notice_is_a_condition_is_told_as_it_stands()
    {
        Assert.Equal(Standing.NotYet, Last(Public()).Standing);
        Assert.True(Last(Public().Furnished("2025-10-20", 6430m).Accepted(), "2025-10-27").Says("give it first"));
        Assert.False(Last(UsualPublic()).Says("give it first"));
        Assert.False(Last(Public().NoticedPublic()).Says("give it first"));
        var lost = Last(Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").NoticedPublic("2025-10-01").Accepted());
        Assert.Equal((Standing.Lost, true), (lost.Standing, lost.Says("no work lies within its reach")));
        Assert.False(Last(UsualPublic(), "2026-02-02").Says("no work lies within its reach"));
        var never = Last(Public().Furnished("2025-08-05", 6430m).Ended("2025-08-05").Accepted());
        Assert.Equal((Standing.Lost, false), (never.Standing, never.Says("give it first")));
    }

    // Civ. Code § 9354(b): of a contract of the State the director of the department, of another the disbursing officer or the body that
    // awarded it.
    [Theory]
    [InlineData(PublicBody.State, null, true)]
    [InlineData(PublicBody.GeneralServices, null, true)]
    [InlineData(PublicBody.Transportation, null, true)]
    [InlineData(PublicBody.StateUniversity, null, true)]
    [InlineData(null, true, true)]
    [InlineData(PublicBody.Local, null, false)]
    [InlineData(null, null, false)]
    [InlineData(null, false, false)]
    [Proves("Civ. Code § 9354")]
    public void It_goes_to_the_officer_whom_the_section_names(PublicBody? body, bool? act, bool state)
    {
        var last = Last(Given().Work(w => w with { Body = body, StateContractAct = act }));
        Assert.Equal((state, !state),
            (last.Says("the director of the department that awarded the contract"),
                last.Says("the controller, auditor or other public disbursing officer")));
        Assert.Equal(state ? [4] : [], last.Corrected("Was the stop payment notice given to the director"));
        Assert.Equal(state ? [] : [4], last.Corrected("the entity's disbursing office or to the body"));
    }

    [Fact]
    [Proves("Civ. Code § 9362")]
    public void Whether_ten_dollars_were_paid_is_asked_of_a_paper_that_counts()
    {
        Assert.Equal([4], Last(Given()).Corrected("(stop-payment-given.tenDollars)"));
        Assert.Empty(Last(Given().Paper(p => p with { TenDollars = false })).Corrected("(stop-payment-given.tenDollars)"));
        // § 9362(c): nobody is told to pay what was paid.
        foreach (var paid in (bool?[])[true, false, null])
            Assert.Equal(paid != true, Last(Given().Paper(p => p with { TenDollars = paid })).Says("Pay the entity $10"));
        Assert.False(Last(Given().Paper(p => p with { Manner = Manner.Email })).Asks("(stop-payment-given."));
    }

    // Ten days after Friday 24 October 2025 are Monday 3 November; after a notice recorded on Wednesday the 29th, Saturday 8 November,
    // which rolls to Monday the 10th. Of a day in doubt the latest, for it is the entity's time.
    [Theory]
    [InlineData("2025-10-24", null, new[] { "2025-11-03" }, "2025-11-03", Standing.Open)]
    [InlineData("2025-10-24", null, new[] { "2025-11-03" }, "2025-11-04", Standing.Done)]
    [InlineData("2025-10-20..2025-10-24", null, new[] { "2025-11-03" }, "2025-11-03", Standing.Open)]
    [InlineData("2025-10-24", "2025-10-29", new[] { "2025-11-03", "2025-11-10" }, "2025-11-10", Standing.Open)]
    [InlineData("2025-10-24", "2025-10-27..2025-10-29", new[] { "2025-11-03", "2025-11-10" }, "2025-11-12", Standing.Done)]
    [Proves("Civ. Code § 9362")]
    public void The_entity_tells_of_the_time_to_sue_within_ten_days(string accepted, string? recorded, string[] days, string asOf,
        Standing expected)
    {
        var job = Public().Furnished("2025-08-05", 6430m).NoticedPublic().Completed(accepted, CompletionTheory.Acceptance)
            .StopPaymentGiven("2025-11-03", 6430m, false, "city").Paper(p => p with { TenDollars = true });
        if (recorded is not null)
            job.OwnerRecorded(recorded, states: "2025-10-24");
        var tells = job.On(asOf).Get("stop-payment-notice.entity-tells");
        Assert.Equal(days, tells.DaysOf());
        Assert.Equal((expected, days[^1]), (tells.Standing, LawText.IsoDay(tells.Band!.Latest!.Day)));
        Assert.Equal([4], tells.HangsOn("Civ. Code § 9362"));
    }

    // While nothing is known of completion, or sixty idle days are not over, nothing is to be told yet; nor without the ten dollars.
    [Fact]
    [Proves("Civ. Code § 9362")]
    public void Before_completion_or_without_ten_dollars_the_entity_tells_nothing()
    {
        JobBuilder Job(bool? ten = true) => Public().Furnished("2025-08-05", 6430m).NoticedPublic()
            .StopPaymentGiven("2025-09-01", 6430m, false, "city").Paper(p => p with { TenDollars = ten });
        Assert.Null(Job().On("2025-09-15").Find("stop-payment-notice.entity-tells"));
        Assert.Null(Job().LaborCeased("2025-08-15").On("2025-09-15").Find("stop-payment-notice.entity-tells"));
        Assert.NotNull(Job().LaborCeased("2025-08-15").On("2025-10-15").Find("stop-payment-notice.entity-tells"));
        Assert.Null(Job(null).Accepted().On("2025-10-27").Find("stop-payment-notice.entity-tells"));
    }

    // A release of before the paper is of another; of two given by its day nobody says which. One in part leaves the paper.
    [Theory]
    [InlineData("2025-11-03", "2025-11-02", null, Standing.Kept)]
    [InlineData("2025-11-03", "2025-11-03", null, Standing.Open)]
    [InlineData("2025-11-03", "2025-11-02..2025-11-04", null, Standing.Open)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-03", null, Standing.Open)]
    [InlineData("2025-11-03", "2025-11-10", 430, Standing.Kept)]
    [Proves("Civ. Code § 8128")]
    public void A_release_is_of_a_paper_that_was_given_by_then(string given, string released, int? amount, Standing expected) =>
        Assert.Equal(expected,
            Last(Given(given).Add(i => new StopPaymentReleased { Index = i, On = When(released), Amount = amount })).Standing);

    [Theory]
    [InlineData("2025-11-10", Standing.InDoubt)]
    [InlineData("2025-11-11", Standing.Kept)]
    [Proves("Civ. Code § 8128")]
    public void A_paper_given_after_the_release_is_not_the_one_released(string second, Standing expected)
    {
        var last = Last(Given().Which(e => e with { Id = "first" }).StopPaymentGiven(second, 6430m, false, "city")
            .Add(i => new StopPaymentReleased { Index = i, On = When("2025-11-10") }));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Kept ? [4] : [], last.EntriesOf("was released; it does not count"));
    }

    [Fact]
    [Proves("Civ. Code § 9354")]
    public void A_paper_is_told_by_its_day_and_by_those_to_whom_it_went()
    {
        Assert.True(Last(Given()).Says("Stop payment notice given to the public entity: 2025-11-03 (Mon)"));
        Assert.True(Last(Given("?")).Says("on a day that is not known"));
        Assert.True(Last(UsualPublic().StopPaymentGiven("?", 6430m, false, "direct"))
            .PassesOver("notice of of an unknown day went to Brushline Builders Inc."));
        Assert.True(Last(UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "nobody"))
            .PassesOver("notice of 2025-11-03 (Mon) went to nobody"));
        // To the lender alone it is none to the owner, and none the less given.
        Assert.False(Last(UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "bank"))
            .PassesOver("does not count"));
        Assert.True(Last(Given().Add(i => new StopPaymentReleased { Index = i, On = When("2025-11-10") }))
            .PassesOver("given to the public entity 2025-11-03 (Mon) was released"));
    }

    [Theory]
    [InlineData(null, null, true, false)]
    [InlineData(Manner.Personal, null, false, false)]
    [InlineData(Manner.Substituted, null, false, true)]
    [InlineData(Manner.Substituted, "2025-11-05", false, false)]
    [InlineData(Manner.Email, null, false, false)]
    [Proves("Civ. Code § 9352(a)")]
    public void Manner_and_mailing_are_asked_where_they_decide(Manner? manner, string? mailed, bool asksManner, bool asksMailed)
    {
        var last = Last(Given().Paper(p => p with { Manner = manner, Mailed = mailed is null ? null : Day(mailed) }));
        Assert.Equal(asksManner ? [4] : [], last.Corrected("(stop-payment-given.manner)"));
        Assert.Equal(asksMailed ? [4] : [], last.Corrected("(stop-payment-given.mailed)"));
    }

    // Served through an agent, its authority is asked; the owner has it of itself.
    [Theory]
    [InlineData("agent", new[] { 3 })]
    [InlineData("owner", new int[0])]
    [Proves("Civ. Code § 8066")]
    public void Of_an_agent_it_is_asked_whether_it_may_take_notices(string to, int[] corrects) =>
        Assert.Equal(corrects, UsualPrivate().Party("agent", PartyCapacity.OwnersAgent, "Quoin Management")
            .StopPaymentGiven("2025-11-03", 6430m, false, to).On("2025-12-01")
            .Get("stop-payment-notice.owner").Corrected("take notices for the owner?"));

    // What will not commence concerns a design professional alone.
    [Fact]
    [Proves("Civ. Code § 8520(a)")]
    public void A_supplier_has_its_notice_though_the_work_is_said_not_to_commence() =>
        Assert.Equal(Standing.Open, UsualPrivate().WillNotCommence("2025-11-03").On("2025-12-01")
            .Get("stop-payment-notice.owner").Standing);
}
