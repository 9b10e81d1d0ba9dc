using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>Claim recorded on Monday 1 June 2026; the ninetieth day is Sunday 30 August.</summary>
public sealed class ReleaseTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-03-02")
        .Completed("2026-05-04").ClaimRecorded("2026-06-01", 1000m);

    // Demand of Friday 12 June: the time to sue runs until 30 August, so nothing is to be answered and nothing released.
    [Theory]
    [InlineData("2026-06-22", false, Standing.NotYet)]
    [InlineData("2026-08-30", false, Standing.NotYet)]
    [InlineData("2026-06-22", true, Standing.Kept)]
    [InlineData("2026-10-05", true, Standing.Kept)]
    [Proves("Civ. Code § 8482")]
    [Proves("Civ. Code § 8480")]
    public void While_the_time_to_sue_runs_or_after_suit_in_time_a_demand_asks_for_nothing(string asOf, bool sued, Standing expected)
    {
        var job = Job().ReleaseDemanded("2026-06-12");
        var answer = (sued ? job.ActionFiled("2026-06-15") : job).On(asOf).Get("release.answer-by");
        Assert.Equal(expected, answer.Standing);
        Assert.Null(answer.ActBy);
        Assert.Empty(answer.Readings);
        Assert.True(answer.Says("Do not release the claim unless it is paid"));
        Assert.Equal(!sued, answer.Says("No petition lies before 2026-08-31 (Mon)"));
    }

    // The time ended on Sunday 30 August. Demand of Friday 28 August: petition from the tenth day, Monday 7 September, a holiday; answered
    // by Sunday the 6th, so act by Friday the 4th. Demand of 17 August: from the 31st, when the time is over.
    [Theory]
    [InlineData("2026-08-28", "2026-09-01", "2026-09-06", "2026-09-04", Standing.Open)]
    [InlineData("2026-08-28", "2026-09-07", "2026-09-06", "2026-09-04", Standing.InDoubt)]
    [InlineData("2026-08-17", "2026-09-01", "2026-08-30", "2026-08-28", Standing.InDoubt)]
    [InlineData("2026-08-21", "2026-09-01", "2026-08-30", "2026-08-28", Standing.InDoubt)]
    [InlineData("2026-08-22", "2026-09-01", "2026-08-31", "2026-08-31", Standing.InDoubt)]
    [Proves("Civ. Code § 8482")]
    [Proves("Civ. Code § 8488(c)")]
    public void After_the_time_a_demand_is_answered_before_the_owner_may_petition(string asked, string asOf, string last, string plan,
        Standing expected)
    {
        var answer = Job().ReleaseDemanded(asked).On(asOf).Get("release.answer-by");
        Assert.Equal([last], answer.DaysOf());
        Assert.Equal(plan, answer.Plan());
        Assert.Equal(expected, answer.Standing);
        Assert.True(answer.Says("the prevailing party gets its attorney's fees (Civ. Code § 8488(c))"));
        Assert.True(answer.Says("An expired claim is better released before"));
    }

    // Monday 31 August: past the Sunday on which the time ended, and not past its roll.
    [Fact]
    [Proves("Civ. Code § 8482")]
    public void While_it_is_in_doubt_whether_the_time_is_over_the_answer_says_why_the_claim_stands()
    {
        var answer = Job().ReleaseDemanded("2026-08-28").On("2026-08-31").Get("release.answer-by");
        Assert.Equal(Standing.Open, answer.Standing);
        Assert.True(answer.Says("answer with why the claim stands"));
    }

    [Theory]
    [InlineData("2026-08-30", null, "2026-08-31", Standing.NotYet)]
    [InlineData("2026-08-31", null, "2026-08-31", Standing.InDoubt)]
    [InlineData("2026-09-01", null, "2026-08-31", Standing.Open)]
    [InlineData("2026-09-01", "2026-08-21", "2026-08-31", Standing.Open)]
    [InlineData("2026-09-01", "2026-08-22", "2026-09-01", Standing.Open)]
    [InlineData("2026-09-01", "2026-08-23", "2026-09-02", Standing.NotYet)]
    [Proves("Civ. Code § 8480")]
    [Proves("Civ. Code § 8486(a)")]
    public void The_owner_may_petition_once_the_time_to_sue_and_ten_days_after_its_demand_are_over(string asOf, string? asked, string first,
        Standing expected)
    {
        var petition = (asked is null ? Job() : Job().ReleaseDemanded(asked)).On(asOf).Get("release.petition-first-day");
        Assert.Equal([first], petition.DaysOf());
        Assert.Equal(expected, petition.Standing);
        Assert.True(petition.Says("within 30 days of filing (Civ. Code § 8486(a))"));
        Assert.Equal(asked is null, petition.Says("of which the file shows none"));
        Assert.Equal(first != "2026-08-31", petition.Readings[0].Name == "the tenth day after the demand");
    }

    [Fact]
    [Proves("Civ. Code § 8482")]
    public void A_demand_from_before_the_claim_or_of_another_instrument_concerns_another_claim()
    {
        Assert.Null(Job().ReleaseDemanded("2026-05-29").On("2026-09-14").Find("release.answer-by"));
        Assert.NotNull(Job().ReleaseDemanded("2026-06-01").On("2026-09-14").Find("release.answer-by"));
        JobBuilder Of(string asked) => Job().Which(c => (ClaimRecorded)c with { Instrument = "2026-0001" }).ReleaseDemanded("2026-06-12")
            .Which(d => (ReleaseDemanded)d with { Instrument = asked });
        Assert.Null(Of("2026-0002").On("2026-09-14").Find("release.answer-by"));
        Assert.NotNull(Of("2026-0001").On("2026-09-14").Find("release.answer-by"));
    }

    // Credit until 15 December runs the time to 15 March 2027.
    [Fact]
    [Proves("Civ. Code § 8480")]
    public void While_a_credit_runs_a_demand_asks_for_nothing()
    {
        var answer =
            Job().CreditRecorded("2026-08-03", "2026-12-15").ReleaseDemanded("2026-09-07").On("2026-09-14").Get("release.answer-by");
        Assert.Null(answer.ActBy);
        Assert.True(answer.Says("No petition lies before 2027-03-16 (Tue)"));
    }

    // A demand of nothing is no payment: nothing priced, or nothing within reach, gives nobody a reason to release.
    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Only_money_or_a_waiver_makes_a_claim_one_to_release()
    {
        Assert.Null(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02").Ended("2026-03-02").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", 1000m).On("2026-06-22").Find("release.when-paid"));
        Assert.Null(new JobBuilder().Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-05-04")
            .ClaimRecorded("2026-06-01", 1000m).On("2026-06-22").Find("release.when-paid"));
        Assert.NotNull(Job().Waived("2026-06-15", WaiverForm.UnconditionalFinal).On("2026-06-22").Find("release.when-paid"));
    }

    // Petition served on Monday 14 September: heard on Monday 5 October; answered by Sunday the 4th, act by Friday the 2nd. By mail service
    // is complete on 19 September, 16 days before; of the 20th it would be 15, of the 21st 14.
    [Theory]
    [InlineData("2026-09-14", Manner.Personal, "2026-10-05", "2026-10-04", false)]
    [InlineData("2026-09-15", Manner.CertifiedMail, "2026-10-05", "2026-10-04", false)]
    [InlineData("2026-09-16", Manner.CertifiedMail, "2026-10-05", "2026-10-04", true)]
    [InlineData("2026-09-20", Manner.Personal, "2026-10-05", "2026-10-04", false)]
    [InlineData("2026-09-21", Manner.Personal, "2026-10-05", "2026-10-04", true)]
    [InlineData("2026-09-14", Manner.Personal, null, "2026-09-28", false)]
    [InlineData("2026-09-14", Manner.RegisteredMail, null, "2026-10-03", false)]
    [Proves("Civ. Code § 8486(b)")]
    [Proves("Civ. Code § 8486(c)")]
    [Proves("Civ. Code § 8488(a)")]
    public void A_petition_is_answered_before_the_hearing_where_the_claimant_proves_the_lien(string served, Manner manner, string? heard,
        string last, bool tooLate)
    {
        var hearing = Job()
            .Add(i => new ReleasePetitionServed { Index = i, On = When(served), Manner = manner, Hearing = heard is null
                ? null : Day(heard) }).On("2026-09-22").Get("release.hearing");
        Assert.Equal([last], hearing.DaysOf());
        Assert.Equal(Standing.Open, hearing.Standing);
        Assert.True(hearing.Says("the burden of proving that the lien is valid"));
        Assert.Equal(tooLate, hearing.Says("object to it"));
        Assert.Equal(heard is null, hearing.Asks("(release-petition-served.hearing)"));
        Assert.Equal(heard is null, hearing.Band!.Latest is null);
        Assert.False(hearing.Asks("(release-petition-served.manner)"));
    }

    [Fact]
    [Proves("Civ. Code § 8488(a)")]
    public void After_the_hearing_it_is_in_doubt_until_the_order_is_entered()
    {
        var job = Job().Add(i => new ReleasePetitionServed { Index = i, On = When("2026-09-14"), Hearing = Day("2026-10-05") });
        Assert.Equal(Standing.InDoubt, job.On("2026-10-05").Get("release.hearing").Standing);
        Assert.True(job.On("2026-10-05").Get("release.hearing").Asks("(release-petition-served.manner)"));
        Assert.Equal(Standing.Done, job.ActionEnded("2026-10-05", ActionEnd.ReleaseOrdered).On("2026-10-05")
            .Get("release.hearing").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8480")]
    public void An_action_in_time_closes_that_road() =>
        Assert.Null(Job().ActionFiled("2026-07-01").On("2026-09-14").Find("release.petition-first-day"));

    [Fact]
    [Proves("Civ. Code § 8480")]
    public void Credit_recorded_in_time_moves_the_owners_first_day_with_the_time_to_sue() =>
        Assert.Equal(["2027-03-16"], Job().CreditRecorded("2026-08-03", "2026-12-15").On("2026-09-14").Get("release.petition-first-day")
            .DaysOf());

    [Theory]
    [InlineData(999, "release.partial", 999)]
    [InlineData(1000, "release.when-paid", null)]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void A_claim_that_was_paid_is_released_and_one_paid_in_part_reduced(int paid, string id, int? by)
    {
        Assert.Equal((decimal?)by, Job().Paid("2026-06-15", paid).On("2026-06-22").Get(id).Amount);
        Assert.Null(Job().On("2026-06-22").Find(id));
    }

    [Fact]
    [Proves("Civ. Code § 8482")]
    public void Nothing_is_left_to_do_once_it_is_released_or_before_it_is_recorded()
    {
        Assert.DoesNotContain(Job().ReleaseDemanded("2026-06-12").ReleaseRecorded("2026-06-15").On("2026-09-14").Findings,
            f => f.Id.StartsWith("release.", StringComparison.Ordinal));
        Assert.DoesNotContain(new JobBuilder().Furnished("2026-03-02", 1000m).ReleaseDemanded("2026-06-12").On("2026-09-14").Findings,
            f => f.Id.StartsWith("release.", StringComparison.Ordinal));
    }
}
