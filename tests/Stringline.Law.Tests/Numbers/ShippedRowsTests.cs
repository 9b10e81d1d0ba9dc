using Stringline.Law.Numbers;

namespace Stringline.Law.Tests.Numbers;

/// <summary>The form of the tables that ship with the program.</summary>
public sealed class ShippedRowsTests
{
    private static IReadOnlyList<ShippedRow> Read(string csv) => ShippedRows.Read(csv, "a,b,c");

    [Theory]
    [InlineData("1,2,3", new[] { "1", "2", "3" })]
    [InlineData(",,", new[] { "", "", "" })]
    [InlineData("\"x, y\",,\"\"", new[] { "x, y", "", "" })]
    [InlineData("1,say \"no\",3", new[] { "1", "say \"no\"", "3" })]
    public void A_row_is_its_cells(string line, string[] cells) => Assert.Equal(cells, Assert.Single(Read("a,b,c\n" + line)).Cells);

    [Fact]
    public void Remarks_and_blank_lines_are_passed_over_and_lines_are_counted_with_them() =>
        Assert.Equal([4, 6], Read("# remark\r\na,b,c\r\n\r\n1,2,3\r\n#4,5,6\r\n7,8,9\r\n").Select(row => row.Line));

    [Theory]
    [InlineData("", "No line names the columns; a,b,c would be right.")]
    [InlineData("a,b", "Line 1: 'a,b' is there; the columns a,b,c would be right.")]
    [InlineData("a,b,c\n1,2", "Line 2: 2 cells are there; 3 would be right")]
    [InlineData("a,b,c\n1,2,3,4", "Line 2: 4 cells are there; 3 would be right")]
    [InlineData("a,b,c\n1,\"2,3", "Line 2: a quoted cell must end with a quote before the next comma")]
    [InlineData("a,b,c\n1,\"2\"\"\",3", "Line 2: a quoted cell must end with a quote before the next comma")]
    public void A_wrong_line_is_refused_by_its_number(string csv, string why) =>
        Assert.StartsWith(why, Assert.Throws<FormatException>(() => Read(csv)).Message, StringComparison.Ordinal);
}
