using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>Claim recorded on Monday 1 June 2026; the ninetieth day is Sunday 30 August.</summary>
public sealed class ReleaseTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-03-02").Completed("2026-05-04").ClaimRecorded("2026-06-01", 1000m);

    // Demand of Friday 12 June: the tenth day is Monday 22 June.
    [Theory]
    [InlineData("2026-06-22", Standing.Open)]
    [InlineData("2026-06-23", Standing.InDoubt)]
    [Proves("Civ. Code § 8482")]
    [Proves("Civ. Code § 8488(c)")]
    public void A_demand_for_release_is_answered_in_the_ten_days_before_the_owner_may_petition(string asOf, Standing expected)
    {
        var answer = Job().ReleaseDemanded("2026-06-12").On(asOf).Get("release.answer-by");
        Assert.Equal(["2026-06-22"], answer.DaysOf());
        Assert.Equal(expected, answer.Standing);
        Assert.True(answer.Says("the prevailing party gets its attorney's fees (Civ. Code § 8488(c))"));
    }

    [Theory]
    [InlineData("2026-08-30", Standing.NotYet)]
    [InlineData("2026-08-31", Standing.Open)]
    [Proves("Civ. Code § 8480")]
    [Proves("Civ. Code § 8486(a)")]
    public void The_owner_may_petition_once_the_time_to_sue_is_over(string asOf, Standing expected)
    {
        var petition = Job().On(asOf).Get("release.petition-first-day");
        Assert.Equal(["2026-08-31"], petition.DaysOf());
        Assert.Equal(expected, petition.Standing);
        Assert.True(petition.Says("within 30 days of filing (Civ. Code § 8486(a))"));
    }

    [Fact]
    [Proves("Civ. Code § 8480")]
    public void An_action_in_time_closes_that_road() =>
        Assert.Null(Job().ActionFiled("2026-07-01").On("2026-09-14").Find("release.petition-first-day"));

    [Fact]
    [Proves("Civ. Code § 8480")]
    public void Credit_recorded_in_time_moves_the_owners_first_day_with_the_time_to_sue() =>
        Assert.Equal(["2027-03-16"], Job().CreditRecorded("2026-08-03", "2026-12-15").On("2026-09-14").Get("release.petition-first-day").DaysOf());

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
        Assert.DoesNotContain(Job().ReleaseDemanded("2026-06-12").ReleaseRecorded("2026-06-15").On("2026-09-14").Findings, f => f.Id.StartsWith("release.", StringComparison.Ordinal));
        Assert.DoesNotContain(new JobBuilder().Furnished("2026-03-02", 1000m).ReleaseDemanded("2026-06-12").On("2026-09-14").Findings, f => f.Id.StartsWith("release.", StringComparison.Ordinal));
    }
}
