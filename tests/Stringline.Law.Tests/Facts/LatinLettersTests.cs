using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Facts;

/// <summary>Names in Latin letters with marks.</summary>
public sealed class LatinLettersTests
{
    // The letters that files were named with before there was one table, and the plain ones that stood for them.
    private const string Accented = "àáâãäåçèéêëìíîïðñòóôõöøùúûüýÿāăąćĉċčďđēĕėęěĝğġģĥħĩīĭįıĵķĺļľłńņňōŏőŕŗřśŝşšţťũūŭůűųŵŷźżž"
        + "ạảấầẩẫậắằẳẵặẹẻẽếềểễệỉịọỏốồổỗộớờởỡợụủứừửữựỳỵỷỹ";

    private const string Plain = "aaaaaaceeeeiiiidnoooooouuuuyyaaaccccddeeeeegggghhiiiiijkllllnnnooorrrssssttuuuuuuwyzzz"
        + "aaaaaaaaaaaaeeeeeeeeiioooooooooooouuuuuuuyyyy";

    [Fact]
    public void A_letter_with_marks_is_written_without_them_in_either_case()
    {
        foreach (var (letter, plain) in Accented.Zip(Plain))
        {
            Assert.Equal(plain.ToString(), LatinLetters.Plain(letter));
            Assert.Equal(plain.ToString(), LatinLetters.Plain(char.ToUpperInvariant(letter)));
        }
    }

    [Theory]
    [InlineData('ß', "ss")]
    [InlineData('Œ', "oe")]
    [InlineData('Ǽ', "ae")]
    [InlineData('A', "a")]
    [InlineData('木', null)]
    [InlineData('7', null)]
    [InlineData('-', null)]
    public void A_letter_is_spelled_in_plain_ones_or_has_none(char letter, string? plain) =>
        Assert.Equal(plain, LatinLetters.Plain(letter));

    [Theory]
    [InlineData("Mun\u0303oz", "Muñoz")]
    [InlineData("a\u0302\u0301", "ấ")]
    [InlineData("x\u0303", "x\u0303")]
    [InlineData("\u0303", "\u0303")]
    [InlineData("Muñoz", "Muñoz")]
    public void A_loose_mark_joins_its_letter_where_there_is_one_for_both(string written, string joined) =>
        Assert.Equal(joined, LatinLetters.Joined(written));
}
