using Stringline.Law.Facts;
using Stringline.Papers.Fees;

namespace Stringline.Papers.Tests;

public sealed class RecorderTableTests
{
    private const string Head = "county,seat,base,extra_page,fraud,fraud_on_others,parcels_counted,covenant,names_per_ten,further_reference,notice_first,notice_next,notice_group,conformed_copy,conformed_per_page,hours,source,date_on_page,date_read,note";
    private const string Good = "Kern,Bakersfield,13,3,10,,yes,,,,,,,3,,,assessor.co.kern.ca.us,2018 or later,2026-11-25,\"a note, with a comma\"";

    [Fact]
    public void A_row_is_read_cell_by_cell()
    {
        var row = Assert.Single(RecorderTable.Parse($"{Head}\n{Good}\n"));
        Assert.Equal(("Kern", 13m, 3m, 10m, true), (row.County, row.Base, row.ExtraPage, row.Fraud, row.ParcelsCounted));
        Assert.Equal(("a note, with a comma", 1), (row.Note, row.NoticeGroup));
        Assert.Null(row.Covenant);
    }

    /// <summary>Each field broken once; the message names line, column, what is there and what would be right.</summary>
    [Theory]
    [InlineData("Kern,B", "Clark,B", "Line 2, county: 'Clark' is there; one of the 58 counties would be right.")]
    [InlineData(",13,", ",13.005,", "Line 2, base: '13.005' is there; dollars")]
    [InlineData(",13,", ",-13,", "Line 2, base: '-13' is there; dollars")]
    [InlineData(",13,", ",$13,", "Line 2, base: '$13' is there; dollars")]
    [InlineData("yes", "often", "Line 2, parcels_counted: 'often' is there; yes, no or nothing would be right.")]
    [InlineData("2026-11-25", "25 Nov", "Line 2, date_read: '25 Nov' is there; a day such as 2026-11-25 would be right.")]
    [InlineData("assessor.co.kern.ca.us", "", "Line 2, source: '' is there; words would be right.")]
    [InlineData("2018 or later", "", "Line 2, date_on_page: '' is there; words would be right.")]
    [InlineData(",,3,,,a", ",0,3,,,a", "Line 2, notice_group: '0' is there; a whole number above 0 would be right.")]
    [InlineData("assessor.co.kern.ca.us", "from memory", "Line 2, date_on_page: '2018 or later' is there; nothing, as the source is from memory, would be right.")]
    [InlineData("comma\"", "comma", "Line 2: a quoted cell must end")]
    [InlineData("Kern,", "Kern,,", "Line 2: 21 cells are there; 20 would be right.")]
    public void A_broken_row_is_refused(string there, string instead, string message)
    {
        var broken = Good.Replace(there, instead, StringComparison.Ordinal);
        Assert.NotEqual(Good, broken);
        Assert.Contains(message, Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head}\n{broken}")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_has_one_row() =>
        Assert.Contains("Kern has a row already", Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head}\n{Good}\n{Good}")).Message, StringComparison.Ordinal);

    [Fact]
    public void Other_columns_are_refused() =>
        Assert.StartsWith("Line 1:", Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head},extra\n{Good}")).Message, StringComparison.Ordinal);

    /// <summary>California has 58 counties (Gov. Code §§ 23101-23158, from memory).</summary>
    [Fact]
    public void There_are_58_counties_in_order_and_each_has_an_office()
    {
        Assert.Equal(58, Counties.All.Count);
        Assert.Equal(Counties.All.Order(StringComparer.Ordinal), Counties.All);
        Assert.All(Counties.All, c => Assert.Equal(c, RecorderTable.For(c).County));
    }

    [Theory]
    [InlineData("los angeles county", "Los Angeles")]
    [InlineData("City and County of San Francisco", "San Francisco")]
    [InlineData(" Del  Norte ", "Del Norte")]
    [InlineData("County of Kern", "Kern")]
    public void A_county_is_found_as_people_write_it(string written, string county) => Assert.Equal(county, Counties.Find(written));

    [Theory]
    [InlineData("Clark")]
    [InlineData("")]
    [InlineData(null)]
    public void Anything_else_is_no_county(string? written) => Assert.Null(Counties.Find(written));

    /// <summary>Sixteen counties' pages were read on 2026-11-25; of the others there is no price.</summary>
    [Fact]
    public void Every_county_has_a_row_that_names_its_source_or_says_from_memory()
    {
        Assert.Equal(Counties.All, RecorderTable.All.Select(r => r.County));
        Assert.Equal(16, RecorderTable.All.Count(r => r.DateRead == Jobs.Day("2026-11-25")));
        Assert.All(RecorderTable.All.Where(r => r.IsFromMemory), r => Assert.Equal(
            new RecorderOffice { County = r.County, Seat = r.Seat, Source = "from memory", Note = r.Note }, r));
        Assert.All(RecorderTable.All, r => Assert.NotNull(r.Seat));
    }
}
