using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>The claims procedure of private work, contracts from 2026 (Civ. Code § 8850), step by step.</summary>
public sealed class PrivateClaimTests
{
    private static JobBuilder Job(string? made = "2026-02-24", bool? lowRise = false, string? received = "2026-04-14", ClaimantRole role =
        ClaimantRole.DirectContractor, Manner? manner = Manner.CertifiedMail, string sent = "2026-04-13") => new JobBuilder()
        .Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct")
        .Contract(c => c with { On = made is null ? null : Day(made) }).Work(w => w with { LowRiseResidential = lowRise })
        .Add(i => new DisputeClaimSent { Index = i, On = When(sent), Received = received is null
            ? null : Day(received), Amount = 5_200m, Manner = manner });

    private static Finding Statement(JobBuilder job, string asOf = "2026-05-01") => job.On(asOf).Get("dispute-claim.owners-statement");

    [Theory]
    [InlineData("2025-12-31", Standing.Lost)]
    [InlineData("2026-01-01", Standing.NotYet)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 8850(n)")]
    public void It_governs_contracts_from_2026(string? made, Standing expected)
    {
        Assert.Equal(expected, Statement(Job(made)).Standing);
        Assert.Equal(made is null, Statement(Job(made)).Asks("(contract.on)"));
    }

    // The article is repealed on 1 January 2030, whenever the contract was made; no section saves what was begun under it.
    [Theory]
    [InlineData("2028-02-24", "2029-11-30", "2029-12-03", Standing.NotYet)]
    [InlineData("2028-02-24", "2029-11-30", "2030-01-02", Standing.InDoubt)]
    [InlineData("2028-02-24", "2029-12-03", "2029-12-10", Standing.InDoubt)]
    [InlineData("2028-02-24", "2030-02-14", "2030-03-01", Standing.InDoubt)]
    [InlineData("2029-12-31", "2030-02-14", "2030-03-01", Standing.InDoubt)]
    [InlineData("2030-01-01", "2030-02-14", "2030-03-01", Standing.Lost)]
    [Proves("Civ. Code § 8851")]
    public void It_is_repealed_by_the_day_and_not_by_the_contract(string made, string received, string asOf, Standing expected)
    {
        var statement = Statement(Job(made, received: received, sent: LawText.IsoDay(Day(received).PlusDays(-1))), asOf);
        Assert.Equal(expected, statement.Standing);
        Assert.Equal(expected == Standing.InDoubt, statement.Says("The article is repealed"));
    }

    // Received Tuesday 14 April: Thursday 14 May.
    [Theory]
    [InlineData("2026-05-14", Standing.NotYet)]
    [InlineData("2026-05-15", Standing.Open)]
    [Proves("Civ. Code § 8850(d)")]
    [Proves("Civ. Code § 8850(g)")]
    public void The_owner_states_within_thirty_days_of_receipt_what_it_disputes(string asOf, Standing expected)
    {
        var statement = Statement(Job(), asOf);
        Assert.Equal(["2026-05-14"], statement.DaysOf());
        Assert.Equal((expected, 5_200m), (statement.Standing, statement.Amount));
        Assert.Equal(Standing.Done,
            Statement(Job().Add(i => new DisputeClaimAnswered { Index = i, On = When("2026-05-01") }), asOf).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8850(d)")]
    public void Without_the_receipt_the_day_is_not_before_thirty_days_after_the_sending()
    {
        var statement = Statement(Job(received: null));
        Assert.Equal(["2026-05-13"], statement.DaysOf());
        Assert.True(statement.Says("not before the sending"));
        Assert.True(statement.Asks("(dispute-claim-sent.received)"));
        Assert.Equal(Standing.NotYet, statement.Standing);
        Assert.Equal(Standing.InDoubt, Statement(Job(received: null), "2026-05-14").Standing);
    }

    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.NotYet, false)]
    [InlineData(Manner.RegisteredMail, Standing.NotYet, false)]
    [InlineData(null, Standing.NotYet, true)]
    [InlineData(Manner.Email, Standing.InDoubt, false)]
    [Proves("Civ. Code § 8850(d)")]
    public void A_claim_is_sent_by_registered_or_certified_mail(Manner? manner, Standing expected, bool asks)
    {
        Assert.Equal(expected, Statement(Job(manner: manner)).Standing);
        Assert.Equal(asks, Statement(Job(manner: manner)).Asks("(dispute-claim-sent.manner)"));
        Assert.Equal(expected == Standing.InDoubt, Statement(Job(manner: manner)).Says("send it again"));
    }

    [Theory]
    [InlineData(true, Standing.Lost, false)]
    [InlineData(null, Standing.NotYet, true)]
    [Proves("Civ. Code § 8850(o)")]
    public void Not_on_housing_of_four_stories_or_fewer(bool? lowRise, Standing expected, bool asks)
    {
        Assert.Equal(expected, Statement(Job(lowRise: lowRise)).Standing);
        Assert.Equal(asks, Statement(Job(lowRise: lowRise)).Asks("not over four stories"));
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier)]
    [InlineData(ClaimantRole.EquipmentLessor)]
    [Proves("Civ. Code § 8850(b)")]
    public void A_supplier_is_not_named(ClaimantRole role)
    {
        var statement = Statement(Job(role: role));
        Assert.Equal(Standing.InDoubt, statement.Standing);
        Assert.Empty(statement.Readings);
    }

    [Fact]
    [Proves("Civ. Code § 8850(j)")]
    public void A_subcontractors_claim_goes_through_the_contractor()
    {
        var job = Job(role: ClaimantRole.Subcontractor);
        var statement = Statement(job);
        Assert.Equal(Standing.InDoubt, statement.Standing);
        Assert.Empty(statement.Readings);
        Assert.True(statement.Says("not before 2026-05-13"));
        Assert.True(statement.Asks("(claim-request-made)"));
        var asked = job.Add(i => new ClaimRequestMade { Index = i, On = When("2026-04-13"), Amount = 5_200m });
        Assert.Empty(Statement(asked).Questions);
        var answer = asked.On("2026-05-13").Get("dispute-claim.contractors-answer");
        Assert.Equal(["2026-05-13"], answer.DaysOf());
        Assert.Equal((Standing.NotYet, 5_200m), (answer.Standing, answer.Amount));
        Assert.Equal(Standing.Open, asked.On("2026-05-14").Get("dispute-claim.contractors-answer").Standing);
        Assert.Equal(Standing.Done, asked.Add(i => new ClaimRequestAnswered { Index = i, On = When("2026-05-04"), Presented = false })
            .On("2026-05-14").Get("dispute-claim.contractors-answer").Standing);
    }

    // Nor is a contractor bound to answer under a direct contract made before the section, or on low-rise housing.
    [Theory]
    [InlineData(null, null, Standing.NotYet)]
    [InlineData("2026-01-01", false, Standing.NotYet)]
    [InlineData("2025-12-31", null, Standing.Lost)]
    [InlineData("2030-01-01", null, Standing.Lost)]
    [InlineData("2026-01-01", true, Standing.Lost)]
    [Proves("Civ. Code § 8850(n)")]
    [Proves("Civ. Code § 8850(o)")]
    public void A_contractor_answers_a_request_only_where_the_procedure_governs(string? directContract, bool? lowRise, Standing expected)
    {
        var asked = Job(role: ClaimantRole.Subcontractor).Work(w => w with
        {
            LowRiseResidential = lowRise,
            DirectContract = directContract is null ? null : new DirectContract { On = Day(directContract) },
        }).Add(i => new ClaimRequestMade { Index = i, On = When("2026-04-13"), Amount = 5_200m });
        var answer = asked.On("2026-05-04").Get("dispute-claim.contractors-answer");
        Assert.Equal(expected, answer.Standing);
        Assert.Equal(expected == Standing.Lost, answer.Readings.Count == 0);
    }

    [Fact]
    [Proves("Civ. Code § 8850(e)")]
    public void After_silence_or_an_answer_a_conference_is_demanded_and_held()
    {
        Assert.Null(Job().On("2026-05-14").Find("dispute-claim.conference"));
        var silent = Job().On("2026-07-01").Get("dispute-claim.conference");
        Assert.Equal((Standing.Open, "2026-05-15"), (silent.Standing, Assert.Single(silent.DaysOf())));
        Assert.Equal(["2026-05-04"], Job().Add(i => new DisputeClaimAnswered { Index = i, On = When("2026-05-04") }).On("2026-05-05")
            .Get("dispute-claim.conference").DaysOf());
        // Demanded Monday 1 June: Wednesday 1 July.
        static JobBuilder Demanded(Manner? manner) =>
            Job().Add(i => new ConferenceDemanded { Index = i, On = When("2026-06-01"), Manner = manner });
        Assert.Equal(["2026-07-01"], Demanded(Manner.CertifiedMail).On("2026-07-01").Get("dispute-claim.conference").DaysOf());
        Assert.Equal(Standing.NotYet, Demanded(null).On("2026-07-01").Get("dispute-claim.conference").Standing);
        Assert.Equal(Standing.Open, Demanded(Manner.CertifiedMail).On("2026-07-02").Get("dispute-claim.conference").Standing);
        Assert.Equal(Standing.InDoubt, Demanded(Manner.Email).On("2026-07-02").Get("dispute-claim.conference").Standing);
    }

    // Held Monday 22 June: ten business days, without Friday 3 July, end on Tuesday 7 July.
    [Theory]
    [InlineData("2026-07-07", Standing.NotYet)]
    [InlineData("2026-07-08", Standing.Open)]
    [Proves("Civ. Code § 8850(e)")]
    [Proves("Civ. Code § 8850(f)")]
    public void Ten_business_days_after_the_conference_the_owner_states_what_is_left(string asOf, Standing expected)
    {
        var second = Job().Add(i => new ConferenceDemanded { Index = i, On = When("2026-06-01") })
            .Add(i => new ConferenceHeld { Index = i, On = When("2026-06-22") }).On(asOf).Get("dispute-claim.second-statement");
        Assert.Equal(["2026-07-07"], second.DaysOf());
        Assert.Equal(expected, second.Standing);
        Assert.True(second.Says("mediation"));
    }

    // Denied by silence from 15 May. Told that day; thirty days end on Sunday 14 June, so the second notice is mailed on the 15th, and work
    // may stop on the 26th.
    [Fact]
    [Proves("Civ. Code § 8850(k)")]
    public void Work_may_be_suspended_after_two_notices()
    {
        var suspend = Job().On("2026-05-15").Get("dispute-claim.suspension-first-day");
        Assert.Equal(["2026-06-26"], suspend.DaysOf());
        Assert.Equal(Standing.InDoubt, suspend.Standing);
        Assert.True(suspend.Says("on 2026-06-15 (Mon)"));
        Assert.Equal(Standing.NotYet, Job().On("2026-05-14").Get("dispute-claim.suspension-first-day").Standing);
        Assert.Equal(["2026-07-17"], Job().On("2026-06-05").Get("dispute-claim.suspension-first-day").DaysOf());
        static JobBuilder Answered(decimal? undisputed) =>
            Job().Add(i => new DisputeClaimAnswered { Index = i, On = When("2026-05-04"), Undisputed = undisputed });
        Assert.Null(Answered(null).On("2026-07-10").Find("dispute-claim.suspension-first-day"));
        Assert.Null(Answered(0m).On("2026-07-10").Find("dispute-claim.suspension-first-day"));
        // The undisputed part was due by Monday 6 July, 60 days from 4 May being Friday 3 July, a holiday of the courts.
        Assert.Equal(Standing.NotYet, Answered(100m).On("2026-07-06").Get("dispute-claim.suspension-first-day").Standing);
        Assert.Equal(Standing.InDoubt, Answered(100m).On("2026-07-07").Get("dispute-claim.suspension-first-day").Standing);
    }
}
