using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>The lien is lost: claim of 2 December 2025, no action by 2 March 2026. Work from 5 August to 10 October 2025.</summary>
public sealed class DebtDaysTests
{
    private static JobBuilder Job(bool? written) =>
        new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed("2012-06-01..").Contract(c => c with { Written = written })
        .Furnished("2025-08-05", 6_430m, until: "2025-10-10").Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22")
        .ClaimRecorded("2025-12-02", 6_430m);

    [Theory]
    [InlineData(true, "2029-08-05", "2029-10-10", "2029-08-03")]
    [InlineData(false, "2027-08-05", "2027-10-10", "2027-08-05")]
    [InlineData(null, "2027-08-05", "2029-10-10", "2027-08-05")]
    [Proves("Civ. Code § 8468(a)")]
    [Proves("Code Civ. Proc. § 337")]
    [Proves("Code Civ. Proc. § 339")]
    public void The_debt_outlives_the_lien_by_the_time_of_its_contract(bool? written, string earliest, string latest, string plan)
    {
        var debt = Job(written).On("2026-03-10").Get("debt.last-day");
        Assert.Equal(earliest, debt.DaysOf()[0]);
        Assert.Equal(latest, debt.DaysOf()[^1]);
        Assert.Equal(plan, debt.Plan());
        Assert.Equal(Standing.Open, debt.Standing);
        Assert.Equal(written is null, debt.Asks("(contract.written)"));
        Assert.Equal(written != false, debt.Says("within four years"));
        Assert.Equal(written != true, debt.Says("within two years"));
        Assert.True(debt.Says("writ of attachment refers to this section"));
    }

    [Theory]
    [InlineData("2029-08-03", Standing.Open)]
    [InlineData("2029-08-05", Standing.InDoubt)]
    [InlineData("2029-08-06", Standing.InDoubt)]
    [InlineData("2031-08-06", Standing.InDoubt)]
    [Proves("Code Civ. Proc. § 337")]
    public void When_it_fell_due_is_not_in_the_file_so_it_is_never_called_lost(string asOf, Standing expected) =>
        Assert.Equal(expected, Job(true).On(asOf).Get("debt.last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 8468(a)")]
    public void While_the_lien_lives_it_has_no_row_and_an_action_on_the_debt_keeps_it()
    {
        Assert.Null(Job(true).On("2026-03-02").Find("debt.last-day"));
        Assert.Equal(Standing.Kept, Job(true).ActionOn("2026-03-16", ActionOn.Debt).On("2026-04-01").Get("debt.last-day").Standing);
        Assert.Equal(Standing.Open, Job(true).ActionOn("2026-03-16", ActionOn.Lien).On("2026-04-01").Get("debt.last-day").Standing);
        Assert.True(Job(true).Bankrupt("direct", "2026-03-02").On("2026-04-01").Get("debt.last-day").Says("file a claim there"));
    }

    // Without a license nothing is recovered for the work, by any road (Bus. & Prof. Code § 7031(a)).
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void One_who_was_never_licensed_has_no_action_on_the_debt_either()
    {
        var on = Job(true).Claimant(c => c with { License = new License { Required = true, Never = true } }).On("2026-03-10");
        Assert.Equal(Standing.Lost, on.Get("license").Standing);
        Assert.Equal(Standing.Lost, on.Get("debt.last-day").Standing);
    }

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, false, 7_000)]
    [InlineData(ClaimantRole.Subcontractor, false, 7_000)]
    [InlineData(ClaimantRole.Supplier, false, null)]
    [InlineData(ClaimantRole.DirectContractor, true, null)]
    [Proves("Civ. Code § 8470")]
    public void A_contractor_defends_the_action_on_a_lower_tiers_lien(ClaimantRole role, bool stopPaymentNotice, int? withheld)
    {
        var on = new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Price(51_000m)
            .Furnished("2025-08-05", 51_000m).Completed("2025-10-22")
            .LowerTier("2025-11-10", 7_000m).Which(e => (LowerTierClaim)e with { StopPaymentNotice = stopPaymentNotice }).On("2025-12-01");
        Assert.Equal((decimal?)withheld, on.Find("lower-tier.defense")?.Amount);
        if (withheld is not null)
            Assert.True(on.Get("lower-tier.defense").Says("the owner may withhold $7,000.00"));
    }
}
