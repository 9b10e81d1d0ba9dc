using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>Design claim of 7 November 2025; the work commenced on 17 December. To convert by 16 January 2026.</summary>
public sealed class ConversionTests
{
    private static JobBuilder Job(string commenced = "2025-12-17") =>
        Architect.Job(commenced).Lender().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07");

    private static Finding? Converting(JobBuilder job, string asOf) => job.On(asOf).Find("design-lien.conversion-last-day");

    // No notice was given to the lender: for a converted lien none is needed.
    [Fact]
    [Proves("Civ. Code § 8319")]
    [Proves("Civ. Code § 8319(a)(4)")]
    public void It_is_converted_for_what_is_unpaid_without_a_preliminary_notice()
    {
        var on = Job().On("2025-12-22");
        var converting = on.Get("design-lien.conversion-last-day");
        Assert.Equal(Standing.Open, converting.Standing);
        Assert.Equal("2026-01-16", converting.Plan());
        Assert.Equal(24_000m, converting.Amount);
        Assert.Empty(on.ConvertedClaimObstacles);
        Assert.Equal(4_000m, Converting(Job().Paid("2025-12-01", 20_000m), "2025-12-22")!.Amount);
        Assert.Null(Converting(Job().Paid("2025-12-01", 24_000m), "2025-12-22"));
    }

    [Fact]
    [Proves("Civ. Code § 8319")]
    public void It_is_for_no_more_than_the_design_claim_states() =>
        Assert.Equal(20_000m, Converting(Architect.Job("2025-12-17").Design("2025-11-07", 20_000m), "2025-12-22")!.Amount);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [InlineData(null)]
    [Proves("Civ. Code § 8319")]
    public void A_design_lien_that_was_released_before_is_not_converted(bool? satisfied) =>
        Assert.Null(Converting(Job().ReleaseRecorded("2025-12-10", satisfied), "2025-12-22"));

    // Sued on by day 90, 5 February 2026, it had not expired when the work commenced on day 115: to convert by 1 April.
    [Theory]
    [InlineData("2026-01-15", "2026-04-01")]
    [InlineData("2026-02-05", "2026-04-01")]
    [InlineData("2026-02-06", null)]
    [InlineData(null, null)]
    [Proves("Civ. Code § 8319")]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void One_that_was_sued_on_in_its_ninety_days_is_converted_whenever_the_work_commences(string? filed, string? plan)
    {
        var job = Job("2026-03-02");
        var converting = Converting(filed is null ? job : job.ActionFiled(filed), "2026-03-10");
        Assert.Equal(plan, converting?.Plan());
        Assert.Equal(plan is not null, converting?.Says("bring the converted claim into it") ?? false);
    }

    [Theory]
    [InlineData(LienKind.Converted, "2026-01-16", Standing.Kept, false)]
    [InlineData(LienKind.Converted, "2026-01-17", Standing.Lost, false)]
    [InlineData(null, "2026-01-16", Standing.InDoubt, true)]
    [InlineData(LienKind.Mechanics, "2026-01-16", Standing.Lost, false)]
    [Proves("Civ. Code § 8319(a)(4)")]
    public void Only_a_claim_that_says_that_it_is_converted_is_one(LienKind? lien, string recorded, Standing expected, bool asks)
    {
        var converting = Converting(Job().ClaimRecorded(recorded, 24_000m, lien: lien), "2026-02-02")!;
        Assert.Equal(expected, converting.Standing);
        Assert.Equal(asks, converting.Asks("(claim-recorded.lien)"));
    }

    // Converted on 12 January 2026: day 90 is Sunday 12 April.
    [Theory]
    [InlineData("2026-04-10", null, Standing.Open)]
    [InlineData("2026-04-14", null, Standing.Lost)]
    [InlineData("2026-05-01", "2026-04-10", Standing.Kept)]
    [Proves("Civ. Code § 8319(a)(4)")]
    public void The_converted_claim_is_enforced_as_a_mechanics_lien_and_needs_no_notice(string asOf, string? filed, Standing expected)
    {
        var job = Job().ClaimRecorded("2026-01-12", 24_000m, lien: LienKind.Converted);
        var on = (filed is null ? job : job.ActionFiled(filed)).On(asOf);
        var action = on.Get("design-lien.converted-action-last-day");
        Assert.Equal("2026-04-10", action.Plan());
        Assert.Equal(expected, action.Standing);
        Assert.Equal(expected, on.Get("lien-right").Standing);
        Assert.Equal(expected == Standing.Kept, on.Find("design-lien.lis-pendens.last-day") is not null);
        Assert.NotEmpty(on.ConvertedClaimObstacles);
    }

    [Fact]
    [Proves("Civ. Code § 8319(a)(4)")]
    public void A_claim_that_says_converted_and_converts_nothing_is_in_doubt()
    {
        var on = Architect.Job("2025-12-17").ClaimRecorded("2026-01-12", 24_000m, lien: LienKind.Converted).On("2026-02-02");
        Assert.Equal(Standing.InDoubt, on.Get("design-lien.converted-action-last-day").Standing);
        Assert.Equal("Civ. Code § 8319(a)(1)", Assert.Single(on.ConvertedClaimObstacles).Section);
        Assert.Equal("Civ. Code § 8319(a)(3)", Assert.Single(Job().On("2026-01-17").ConvertedClaimObstacles).Section);
    }
}
