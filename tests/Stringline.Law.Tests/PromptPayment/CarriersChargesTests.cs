using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PromptPayment;

public sealed class CarriersChargesTests
{
    private const string Id = "prompt-payment.carrier";

    private static JobBuilder Carrier() => new JobBuilder().Role(ClaimantRole.Subcontractor).Claimant(c => c with { DumpTrucks = true });

    // Hauled in March, submitted Friday 3 April: due by Monday 20 April 2026.
    [Theory]
    [InlineData("2026-04-20", Standing.NotYet, 0)]
    [InlineData("2026-04-21", Standing.Open, 0)]
    [InlineData("2026-06-20", Standing.Open, 400)]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void Charges_submitted_by_the_fifth_are_due_on_the_twentieth(string asOf, Standing expected, int penalty)
    {
        var due = Carrier().Furnished("2026-03-02", 10_000m, until: "2026-03-30").PaymentDemanded("2026-04-03", 10_000m).On(asOf).Get(Id);
        Assert.Equal(["2026-04-20"], due.DaysOf());
        Assert.Equal((expected, (decimal?)penalty), (due.Standing, due.Amount));
    }

    // "if the charges ... are submitted by the fifth day following the last day of the calendar month".
    [Theory]
    [InlineData("2026-03-31", Standing.Open)]
    [InlineData("2026-04-05", Standing.Open)]
    [InlineData("2026-04-06", Standing.InDoubt)]
    [InlineData("2026-04-04..2026-04-06", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void Charges_submitted_after_the_fifth_have_no_day_by_the_section(string submitted, Standing expected)
    {
        var due = Carrier().Furnished("2026-03-02", 10_000m).PaymentDemanded(submitted, 10_000m).On("2026-05-04").Get(Id);
        Assert.Equal(expected, due.Standing);
        Assert.Equal(expected == Standing.InDoubt, due.Asks("submitted by"));
    }

    // Hauled over the month's end and submitted on the third: of the month before, unless the claimant says otherwise.
    [Fact]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void Charges_of_the_first_days_of_a_month_are_those_of_the_month_before()
    {
        var due = Carrier().Furnished("2026-03-02", 10_000m).Furnished("2026-04-01", 400m).PaymentDemanded("2026-04-03", 10_000m)
            .On("2026-05-04").Get(Id);
        Assert.Equal(["2026-04-20"], due.DaysOf());
        Assert.Equal(Standing.InDoubt, due.Standing);
        Assert.True(due.Asks("In which month"));
    }

    // "withhold payment of up to 150 percent of the disputed amount".
    [Fact]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void What_is_disputed_may_be_held_by_half_as_much_again()
    {
        var due = Carrier().Furnished("2026-03-02", 10_000m).PaymentDemanded("2026-04-03", 10_000m).Disputed("2026-04-10", 4_000m)
            .On("2026-05-20").Get(Id);
        Assert.Equal(80m, due.Amount);
        Assert.Equal(Standing.Done, Carrier().Furnished("2026-03-02", 10_000m).PaymentDemanded("2026-04-03", 10_000m)
            .Paid("2026-04-20", 10_000m).On("2026-05-20").Get(Id).Standing);
    }

    // "applies to all private works of improvement and to all public works of improvement".
    [Fact]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void On_public_work_it_is_the_same()
    {
        var due = Carrier().PublicWork().Furnished("2026-03-02", 10_000m).PaymentDemanded("2026-04-03", 10_000m).On("2026-05-20").Get(Id);
        Assert.Equal((Standing.Open, (decimal?)200m), (due.Standing, due.Amount));
    }

    // The 5th, a Sunday, is the carrier's own day and so planned on the Friday before: it is told before the charges are submitted, and
    // asked about afterwards.
    [Theory]
    [InlineData("2026-04-03", Standing.Open)]
    [InlineData("2026-04-06", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void Before_any_charges_are_entered_the_fifth_is_told(string asOf, Standing expected)
    {
        var due = Carrier().Furnished("2026-03-02", 10_000m).On(asOf).Get("prompt-payment.charges-last-day");
        Assert.Equal(expected, due.Standing);
        Assert.Equal(JobBuilder.Day("2026-04-03"), due.ActBy);
        Assert.True(due.Asks("(payment-demanded)"));
    }

    [Theory]
    [InlineData("sub", null)]
    [InlineData("owner", "a licensed contractor")]
    [InlineData(null, "(claimant.hiredBy)")]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void It_binds_a_licensed_contractor(string? hirer, string? asked)
    {
        var due = Carrier().Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.EquipmentLessor, hirer)
            .Furnished("2026-03-02", 10_000m).PaymentDemanded("2026-04-03", 10_000m).On("2026-05-20").Get(Id);
        Assert.Equal(asked is null ? Standing.Open : Standing.InDoubt, due.Standing);
        if (asked is not null)
            Assert.True(due.Asks(asked));
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7108.6")]
    public void Nobody_else_has_it()
    {
        Assert.Null(Carrier().Claimant(c => c with { DumpTrucks = null }).Furnished("2026-03-02", 10_000m)
            .PaymentDemanded("2026-04-03", 10_000m).On("2026-05-20").Find(Id));
        Assert.Null(Carrier().Role(ClaimantRole.DirectContractor, "owner").Furnished("2026-03-02", 10_000m)
            .PaymentDemanded("2026-04-03", 10_000m).On("2026-05-20").Find(Id));
    }
}
