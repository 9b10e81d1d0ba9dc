namespace Stringline.Papers.Tests;

public sealed class PaperTextTests
{
    /// <summary>Amounts spelled out by hand as on a check (common practice, no source).</summary>
    [Theory]
    [InlineData("0.05", "zero and 05/100 dollars")]
    [InlineData("1", "one and 00/100 dollars")]
    [InlineData("13.13", "thirteen and 13/100 dollars")]
    [InlineData("21", "twenty-one and 00/100 dollars")]
    [InlineData("100", "one hundred and 00/100 dollars")]
    [InlineData("999.99", "nine hundred ninety-nine and 99/100 dollars")]
    [InlineData("1000", "one thousand and 00/100 dollars")]
    [InlineData("12345.67", "twelve thousand three hundred forty-five and 67/100 dollars")]
    [InlineData("100000.10", "one hundred thousand and 10/100 dollars")]
    [InlineData("2000015", "two million fifteen and 00/100 dollars")]
    [InlineData("582676.73", "five hundred eighty-two thousand six hundred seventy-six and 73/100 dollars")]
    public void Dollars_are_spelled_out(string amount, string words) =>
        Assert.Equal(words, PaperText.InWords(decimal.Parse(amount, CultureInfo.InvariantCulture)));

    [Theory]
    [InlineData("-1")]
    [InlineData("0.005")]
    public void What_is_no_amount_of_cents_is_refused(string amount) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PaperText.InWords(decimal.Parse(amount, CultureInfo.InvariantCulture)));

    [Theory]
    [InlineData("70121010000012345678", "7012 1010 0000 1234 5678")]
    [InlineData("9407 1118 9876 5432 1012 38", "9407 1118 9876 5432 1012 38")]
    [InlineData(" RE 123 456 789 US ", "RE 123 456 789 US")]
    public void Article_numbers_stand_in_fours(string written, string shown) => Assert.Equal(shown, PaperText.Article(written));

    [Fact]
    public void Days_are_written_out() =>
        Assert.Equal(("June 26, 2026", "Friday, June 26, 2026"),
            (PaperText.Day(Jobs.Day("2026-06-26")), PaperText.DayOfWeek(Jobs.Day("2026-06-26"))));

    [Fact]
    public void A_name_with_loose_accents_is_composed() =>
        Assert.Equal("Muñoz\nNguyễn", PaperText.Clean("  Mun\u0303oz \n\n Nguye\u0302\u0303n "));
}
