namespace Stringline.Law.Tests;

/// <summary>What a waiver and release takes beyond its payment, said before it is signed (Civ. Code §§ 8132-8138).</summary>
public sealed class WaiverOutlookTests
{
    [Theory]
    [InlineData(6_430, 0, 2_000, 6_430, 4_430)]
    [InlineData(6_430, 1_500, 4_930, 4_930, null)]
    [InlineData(6_430, 1_500, 5_000, 4_930, null)]
    [InlineData(6_430, 6_430, 100, 0, null)]
    public void What_is_released_beyond_the_payment(int now, int then, int payment, int released, int? beyond)
    {
        var outlook = new WaiverOutlook(now, then, payment);
        Assert.Equal(released, outlook.Released);
        Assert.Equal(beyond, outlook.BeyondPayment);
        Assert.Null((outlook with { Payment = null }).BeyondPayment);
    }
}
