namespace Stringline.Tables.Tests;

/// <summary>One grammar of dollars and cents as a person types them; that every entrance has it is proved beside the desk.</summary>
public sealed class TypedMoneyTests
{
    [Theory]
    [InlineData("0", 0)]
    [InlineData("12500", 1250000)]
    [InlineData(" $ 12,500.00 ", 1250000)]
    [InlineData("1,234,567.8", 123456780)]
    [InlineData(".50", 50)]
    [InlineData("12.", 1200)]
    [InlineData("-350.00", -35000)]
    [InlineData("- $1,350", -135000)]
    [InlineData("999,999,999.99", 99999999999)]
    public void What_is_an_amount_is_read_to_the_cent(string typed, long cents) => Assert.Equal(cents / 100m, TypedMoney.Read(typed));

    [Theory]
    [InlineData("")]
    [InlineData("$")]
    [InlineData("12,50")]
    [InlineData("6,43")]
    [InlineData("1,2500")]
    [InlineData(",250")]
    [InlineData("1,250,00")]
    [InlineData("1.250,00")]
    [InlineData("12.345")]
    [InlineData("1e3")]
    [InlineData("12 500")]
    [InlineData("$-5")]
    [InlineData("1,000,000,000")]
    [InlineData("999999999.999")]
    [InlineData("1.000.000")]
    public void What_is_none_is_refused(string typed) => Assert.Null(TypedMoney.Read(typed));

    [Fact]
    public void An_amount_above_zero_is_not_zero_and_not_less()
    {
        Assert.Equal(0.01m, TypedMoney.AboveZero("0.01"));
        Assert.Null(TypedMoney.AboveZero("0"));
        Assert.Null(TypedMoney.AboveZero("-1"));
    }
}
