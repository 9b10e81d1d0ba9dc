using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.LargeProject;

/// <summary>The security that the owner of a large private project gives its direct contractor (Civ. Code §§ 8700-8730).</summary>
public sealed class OwnersSecurityTests
{
    private static JobBuilder Job(decimal price =
        1_200_000m, bool? tenant = true, bool? exempt = false, ClaimantRole role = ClaimantRole.DirectContractor) => new JobBuilder()
        .Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct").Price(price)
        .Work(w => w with { OrderedByTenant = tenant, SecurityExempt = exempt }).Furnished("2025-08-05", 20_000m);

    private static Finding? Due(JobBuilder job) => job.On("2025-12-15").Find("owners-security.due");

    [Theory]
    [InlineData("1000000.00", true, null)]
    [InlineData("1000000.01", true, Standing.Open)]
    [InlineData("1000000.01", null, Standing.InDoubt)]
    [InlineData("5000000.00", false, null)]
    [InlineData("5000000.00", null, Standing.InDoubt)]
    [InlineData("5000000.01", false, Standing.Open)]
    [InlineData("5000000.01", null, Standing.Open)]
    [Proves("Civ. Code § 8700(a)")]
    public void It_is_owed_above_five_millions_by_the_owner_of_the_fee_and_above_one_by_a_tenant(string price, bool? tenant,
        Standing? expected)
    {
        var due = Due(Job(decimal.Parse(price, System.Globalization.CultureInfo.InvariantCulture), tenant));
        Assert.Equal(expected, due?.Standing);
        Assert.Equal(expected == Standing.InDoubt, due?.Asks("(work.orderedByTenant)") == true && tenant is null);
    }

    [Fact]
    [Proves("Civ. Code § 8722")]
    [Proves("Civ. Code § 8710")]
    [Proves("Civ. Code § 8720")]
    public void It_is_fifteen_percent_of_the_price_or_twenty_five_where_the_work_is_short()
    {
        var due = Due(Job())!;
        Assert.Equal(180_000m, due.Amount);
        Assert.True(due.Says("25 percent, $300,000.00"));
        Assert.Equal(120_000m, due.Questions.Single(q => q.Text.Contains("six months", StringComparison.Ordinal)).Dollars);
        Assert.True(due.Says("certified by the recorder"));
        Assert.True(due.Asks("at least 35 years"));
        Assert.False(Due(Job(6_000_000m))!.Asks("at least 35 years"));
    }

    [Theory]
    [InlineData(true, null, false)]
    [InlineData(null, Standing.InDoubt, true)]
    [InlineData(false, Standing.Open, false)]
    [Proves("Civ. Code § 8702")]
    [Proves("Civ. Code § 8704")]
    public void Houses_and_certain_owners_are_free_of_it(bool? exempt, Standing? expected, bool asks)
    {
        Assert.Equal(expected, Due(Job(exempt: exempt))?.Standing);
        Assert.Equal(asks, Due(Job(exempt: exempt))?.Asks("(work.securityExempt)") == true);
    }

    [Fact]
    public void Only_a_direct_contractor_of_private_work_with_a_price_has_it()
    {
        Assert.Null(Due(Job(role: ClaimantRole.Subcontractor)));
        Assert.Null(Due(Job().Contract(c => c with { Price = null })));
        Assert.Null(Due(Job().Work(w => w with { Kind = WorkKind.Public })));
    }

    // Demanded on 1 December: the tenth day is the 11th.
    [Theory]
    [InlineData("2025-12-11", Manner.Personal, Standing.NotYet, "2025-12-12")]
    [InlineData("2025-12-12", Manner.Personal, Standing.Open, "2025-12-12")]
    [InlineData("2025-12-12", null, Standing.Open, "2025-12-12")]
    [InlineData("2025-12-12", Manner.Email, Standing.InDoubt, "2025-12-12")]
    [InlineData("2025-12-16", Manner.Substituted, Standing.NotYet, "2025-12-17")]
    [Proves("Civ. Code § 8712")]
    public void Work_may_be_suspended_on_the_eleventh_day_after_a_demand_that_counts(string asOf, Manner? manner, Standing expected,
        string first)
    {
        static JobBuilder Demanded(Manner? manner, bool? exempt = false) =>
            Job(exempt: exempt).Add(i => new SecurityDemanded { Index = i, On = When("2025-12-01"), Manner = manner });
        var suspend = Demanded(manner).On(asOf).Get("owners-security.suspension-first-day");
        Assert.Equal([first], suspend.DaysOf());
        Assert.Equal(expected, suspend.Standing);
        Assert.Equal(manner is null, suspend.Asks("(security-demanded.manner)"));
        Assert.Equal(manner == Manner.Email, suspend.Says("give it again"));
        Assert.Equal(expected == Standing.NotYet
            ? Standing.NotYet : Standing.InDoubt, Demanded(manner, null).On(asOf).Get("owners-security.suspension-first-day").Standing);
        Assert.Null(Job().On(asOf).Find("owners-security.suspension-first-day"));
    }

    // Demanded on 1 December, so from the 12th on work may be suspended "until the owner provides or maintains the security".
    [Theory]
    [InlineData("2025-12-05", "200000.00", null, Standing.Done, Standing.Done)]
    [InlineData("2025-12-20", "180000.00", null, Standing.Done, Standing.Done)]
    [InlineData("?", "180000.00", null, Standing.Done, Standing.Done)]
    [InlineData("2025-12-20", null, null, Standing.Done, Standing.Done)]
    [InlineData("2025-12-20", "179999.99", null, Standing.InDoubt, Standing.InDoubt)]
    [InlineData("2025-12-20..2026-01-20", "180000.00", null, Standing.InDoubt, Standing.InDoubt)]
    [InlineData("2025-12-20", "180000.00", "2026-01-05", Standing.Open, Standing.Open)]
    [InlineData("2025-12-20", "180000.00", "2026-01-06", Standing.Done, Standing.Done)]
    [InlineData("2025-11-03", "180000.00", null, Standing.InDoubt, Standing.InDoubt)]
    [InlineData("2026-01-06", "180000.00", null, Standing.Open, Standing.Open)]
    [Proves("Civ. Code § 8712")]
    [Proves("Civ. Code § 8722")]
    public void With_the_security_the_right_to_suspend_ends(string provided, string? amount, string? until, Standing due, Standing suspend)
    {
        var on = Job().Add(i => new SecurityDemanded { Index = i, On = When("2025-12-01"), Manner = Manner.Personal })
            .Add(i => new SecurityProvided { Index = i, On = When(provided), Amount = amount is null
                ? null : decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), Until = until is null
                ? null : Day(until) })
            .On("2026-01-05");
        Assert.Equal((due, suspend), (on.Get("owners-security.due").Standing, on.Get("owners-security.suspension-first-day").Standing));
        Assert.Equal(amount is null, on.Get("owners-security.due").Asks("(security-provided.amount)"));
        Assert.Equal(provided == "2025-11-03", on.Get("owners-security.due").Asks("(security-provided.until)"));
        Assert.Equal(provided == "2026-01-06", on.Get("owners-security.suspension-first-day").Asks("(security-provided)"));
    }

    // "or if the work of improvement is to be substantially completed within six months ... not less than 25 percent": asked while less is
    // there.
    [Theory]
    [InlineData("299999.99", true)]
    [InlineData("300000.00", false)]
    [Proves("Civ. Code § 8722")]
    public void A_security_of_a_quarter_of_the_price_is_enough_for_short_work(string amount, bool asks) =>
        Assert.Equal(asks,
            Due(Job().Add(i => new SecurityProvided { Index = i, On = When("2025-12-01"), Amount =
                decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture) }))!.Asks("six months"));
}
