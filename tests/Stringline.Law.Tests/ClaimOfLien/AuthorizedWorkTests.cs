using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

public sealed class AuthorizedWorkTests
{
    private static JobBuilder Job(bool? madeToPlans) => new JobBuilder().Role(ClaimantRole.Supplier, "yard")
        .Party("yard", PartyCapacity.Supplier, "Teasel Lumber Yard", madeToPlans: madeToPlans)
        .Notice("2026-03-03").Furnished("2026-03-02", 1000m).Ended("2026-04-06");

    [Theory]
    [InlineData(true, Standing.Kept, Standing.Open)]
    [InlineData(null, Standing.InDoubt, Standing.InDoubt)]
    [InlineData(false, Standing.Lost, Standing.Lost)]
    [Proves("Civ. Code § 8404(b)")]
    public void Who_furnishes_to_a_supplier_has_a_right_only_if_that_supplier_made_its_part_to_the_plans(bool? madeToPlans,
        Standing authorized, Standing right)
    {
        var assessment = Job(madeToPlans).Party("surety", PartyCapacity.Surety).Completed("2026-05-04").On("2026-05-05");

        Assert.Equal(authorized, assessment.Get("authorized-work").Standing);
        Assert.Equal(right, assessment.Get("lien-right").Standing);
        Assert.Equal(right, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(madeToPlans == false, assessment.Get("payment-bond.action-last-day").Standing == Standing.Lost);
        Assert.Equal(madeToPlans == false, assessment.ClaimObstacles.Count > 0);
        Assert.Equal(madeToPlans is null, assessment.Get("authorized-work").Asks("Teasel Lumber Yard"));
        Assert.Equal(madeToPlans is null ? 1000m : null, assessment.Get("authorized-work").Questions.SingleOrDefault()?.Dollars);
    }

    [Theory]
    [InlineData(PartyCapacity.Owner)]
    [InlineData(PartyCapacity.DirectContractor)]
    [InlineData(PartyCapacity.Subcontractor)]
    [Proves("Civ. Code § 8404(b)")]
    public void Nothing_is_asked_where_somebody_in_charge_ordered_it(PartyCapacity hirer) =>
        Assert.Null(new JobBuilder().Role(ClaimantRole.Supplier, "one").Party("one", hirer).Furnished("2026-03-02", 1000m).On("2026-03-03")
            .Find("authorized-work"));

    [Theory]
    [InlineData(true, Standing.Open)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Civ. Code § 9100")]
    public void On_public_work_it_is_the_same(bool? madeToPlans, Standing expected)
    {
        var assessment = Job(madeToPlans).Work(w => w with { Kind = WorkKind.Public }).Party("city", PartyCapacity.PublicEntity)
            .Notice("2026-03-03", Manner.CertifiedMail, "city", "direct").On("2026-03-05");

        Assert.Equal(expected, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.DoesNotContain(assessment.Next, step =>
            madeToPlans == false && step.Finding.StartsWith("stop-payment-notice", StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Civ. Code § 9100")]
    public void What_is_no_remedy_is_left_as_it_is_and_a_remedy_says_why_it_is_lost()
    {
        static JobBuilder Public(bool? madeToPlans) =>
            Job(madeToPlans).Work(w => w with { Kind = WorkKind.Public }).Party("city", PartyCapacity.PublicEntity)
            .Notice("2026-03-03", Manner.CertifiedMail, "city", "direct").Completed("2026-05-04", CompletionTheory.Acceptance);
        var (good, sold) = (Public(true).On("2026-05-20"), Public(false).On("2026-05-20"));

        foreach (var id in (string[])["preliminary-notice.last-day", "preliminary-notice.reaches-back-to", "completion.day", "license"])
            Assert.Equal(good.Get(id).Standing, sold.Get(id).Standing);
        Assert.False(sold.Get("completion.day").Says("only sells"));
        Assert.True(sold.Get("stop-payment-notice.last-day").Says("only sells"));
        Assert.True(sold.Get("stop-payment-notice.last-day").Says("2026-05-04"));
        Assert.True(sold.Get("payment-bond.action-last-day").Says("only sells"));
        Assert.NotEqual(Standing.Lost, good.Get("payment-bond.action-last-day").Standing);
    }

    // A remedy that is lost or done for another reason stays so, and what is no remedy of the claimant's is left alone.
    [Fact]
    public void It_makes_nothing_better_and_touches_no_other_finding()
    {
        var sold = Job(null);
        var assessment = sold.Completed("2026-05-04").On("2027-05-05");
        Assert.Equal(Standing.Lost, assessment.Get("stop-payment-notice.last-day").Standing);
        Assert.Equal(Job(true).Completed("2026-05-04").On("2027-05-05").Get("completion.day").Standing,
            assessment.Get("completion.day").Standing);
    }
}
