using Stringline.Law.LienableAmount;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>What a partial release, a partial satisfaction or a reduction leaves of a sum (Civ. Code §§ 8128(c), 8306(c)).</summary>
public sealed class LoweredTests
{
    [Theory]
    [InlineData("6430.00", "2000.00", "4430.00")]
    [InlineData("6430.00", "6429.99", "0.01")]
    [InlineData("6430.00", "6430.00", null)]
    [InlineData("6430.00", "6430.01", null)]
    public void Nothing_left_is_no_lowering(string stated, string by, string? left) =>
        Assert.Equal(left is null ? null : Dollars(left), Lowered.Left(Dollars(stated), Dollars(by)));

    private static decimal Dollars(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
