using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Tests;

public sealed class MoneyCellTests
{
    [Theory]
    [InlineData("1234.5", 123450)]
    [InlineData("1,234.50", 123450)]
    [InlineData("$1,234.50", 123450)]
    [InlineData("$ 1,234.50", 123450)]
    [InlineData("(1,234.50)", -123450)]
    [InlineData("($1,234.50)", -123450)]
    [InlineData("$(1,234.50)", -123450)]
    [InlineData("1,234.50-", -123450)]
    [InlineData("-1,234.50", -123450)]
    [InlineData("-$1,234.50", -123450)]
    [InlineData("$-1,234.50", -123450)]
    [InlineData("\u22121,234.50", -123450)]
    [InlineData("1,234.50 CR", -123450)]
    [InlineData("12.500", 1250)]
    [InlineData(".50", 50)]
    [InlineData("1,234,567", 123456700)]
    [InlineData("0", 0)]
    [InlineData("0.00", 0)]
    public void Reads_an_amount(string text, long cents)
    {
        Assert.Null(MoneyCell.Read(Cell.Of(text), out var dollars));
        Assert.Equal(cents / 100m, dollars);
    }

    [Theory]
    [InlineData("1,23")]
    [InlineData("1.234,50")]
    [InlineData("12,34,567")]
    [InlineData("1.005")]
    [InlineData("(-5.00)")]
    [InlineData("--5")]
    [InlineData("5 USD")]
    [InlineData("$")]
    [InlineData(".")]
    [InlineData("1e3")]
    [InlineData("N/A")]
    [InlineData("1,000,000,000.00")]
    [InlineData("()")]
    public void Refuses_what_is_no_amount(string text)
    {
        Assert.NotNull(MoneyCell.Read(Cell.Of(text), out var dollars));
        Assert.Equal(0m, dollars);
    }

    [Fact]
    public void A_binary_number_is_the_cents_that_were_typed()
    {
        Assert.Null(MoneyCell.Read(Cell.OfBinary(0.1 + 0.2), out var dollars));
        Assert.Equal(0.30m, dollars);
        Assert.NotNull(MoneyCell.Read(Cell.OfBinary(1.005), out _));
    }
}
