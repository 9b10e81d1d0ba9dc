using Stringline.Law.Facts;
using Stringline.Papers.Fees;

namespace Stringline.Papers.Tests;

public sealed class RecorderTableTests
{
    private const string Head =
        "county,valid_from,seat,base,extra_page,fraud,fraud_on_others,parcels_counted,covenant,names_per_ten,further_reference,"
        + "notice_first,notice_next,notice_group,conformed_copy,conformed_per_page,hours,source,date_on_page,date_read,note";
    private const string Good =
        "Kern,,Bakersfield,13,3,10,,yes,,,,,,,3,,,assessor.co.kern.ca.us,2018 or later,2026-11-25,\"a note, with a comma\"";

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
    [InlineData("Kern,,B", "Clark,,B", "Line 2, county: 'Clark' is there; one of the 58 counties would be right.")]
    [InlineData(",13,", ",13.005,", "Line 2, base: '13.005' is there; dollars")]
    [InlineData(",13,", ",-13,", "Line 2, base: '-13' is there; dollars")]
    [InlineData(",13,", ",$13,", "Line 2, base: '$13' is there; dollars")]
    [InlineData("yes", "often", "Line 2, parcels_counted: 'often' is there; yes, no or nothing would be right.")]
    [InlineData("2026-11-25", "25 Nov", "Line 2, date_read: '25 Nov' is there; a day such as 2026-11-25 would be right.")]
    [InlineData("assessor.co.kern.ca.us", "", "Line 2, source: '' is there; words would be right.")]
    [InlineData("2018 or later", "", "Line 2, date_on_page: '' is there; words would be right.")]
    [InlineData(",,3,,,a", ",0,3,,,a", "Line 2, notice_group: '0' is there; a whole number above 0 would be right.")]
    [InlineData("assessor.co.kern.ca.us", "from memory",
        "Line 2, date_on_page: '2018 or later' is there; nothing, as the source is from memory, would be right.")]
    [InlineData("comma\"", "comma", "Line 2: a quoted cell must end")]
    [InlineData("Kern,,", "Kern,,,", "Line 2: 22 cells are there; 21 would be right.")]
    [InlineData("Kern,,", "Kern,2027,", "Line 2, valid_from: '2027' is there; a day such as 2026-11-25 would be right.")]
    public void A_broken_row_is_refused(string there, string instead, string message)
    {
        var broken = Good.Replace(there, instead, StringComparison.Ordinal);
        Assert.NotEqual(Good, broken);
        Assert.Contains(message, Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head}\n{broken}")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_county_has_one_row() =>
        Assert.Contains("Kern has a row already",
            Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head}\n{Good}\n{Good}")).Message, StringComparison.Ordinal);

    [Fact]
    public void Other_columns_are_refused() =>
        Assert.StartsWith("Line 1:", Assert.Throws<FormatException>(() => RecorderTable.Parse($"{Head},extra\n{Good}")).Message,
            StringComparison.Ordinal);

    /// <summary>California has 58 counties (Gov. Code §§ 23101-23158, from memory).</summary>
    [Fact]
    public void There_are_58_counties_in_order_and_each_has_an_office()
    {
        Assert.Equal(58, Counties.All.Count);
        Assert.Equal(Counties.All.Order(StringComparer.Ordinal), Counties.All);
        Assert.All(Counties.All, c => Assert.Equal(c, RecorderTable.For(c, Jobs.Day("2026-11-30")).County));
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

    /// <summary>Thirty-eight counties' pages were read on 2026-11-29; of the others there is no price.</summary>
    [Fact]
    public void Every_county_has_a_row_that_names_its_source_or_says_from_memory()
    {
        Assert.Equal(Counties.All, RecorderTable.All.Select(r => r.County));
        Assert.Equal(38, RecorderTable.All.Count(r => r.DateRead == Jobs.Day("2026-11-29")));
        Assert.All(RecorderTable.All.Where(r => r.IsFromMemory), r => Assert.Equal(
            new RecorderOffice { County = r.County, Seat = r.Seat, Source = "from memory", Note = r.Note }, r));
        Assert.All(RecorderTable.All, r => Assert.NotNull(r.Seat));
    }

    // Prices of 2027 are added as a row; until that day the row before it is in force, whichever stands first.
    [Theory]
    [InlineData("2026-12-31", 13)]
    [InlineData("2027-01-01", 15)]
    [InlineData("2027-06-30", 15)]
    [InlineData("2027-07-01", 16)]
    public void A_later_row_of_a_county_is_in_force_from_its_day(string on, int basePrice)
    {
        var later = Good.Replace("Kern,,Bakersfield,13,", "Kern,2027-01-01,Bakersfield,15,", StringComparison.Ordinal);
        var latest = Good.Replace("Kern,,Bakersfield,13,", "Kern,2027-07-01,Bakersfield,16,", StringComparison.Ordinal);
        foreach (var order in (string[][])[[Good, later, latest], [latest, later, Good], [later, Good, latest]])
        {
            Assert.Equal(basePrice,
                RecorderTable.InForce(RecorderTable.Parse($"{Head}\n{string.Join('\n', order)}"), "Kern", Jobs.Day(on)).Base);
        }

        Assert.Null(RecorderTable.InForce(RecorderTable.Parse($"{Head}\n{later}"), "Kern", Jobs.Day("2026-12-31")).Base);
    }

    // As the offices' own pages have it; where two pages conflict the newer.
    [Theory]
    [InlineData("Ventura", 14.0, 3.0, 10.0)]
    [InlineData("Placer", 14.0, 3.0, null)]
    [InlineData("Sierra", 14.0, 3.0, null)]
    [InlineData("San Mateo", null, null, 6.0)]
    [InlineData("Riverside", null, null, 10.0)]
    [InlineData("Orange", null, null, null)]
    [InlineData("Colusa", 16.0, 3.0, null)]
    [InlineData("Monterey", 12.0, 3.0, 10.0)]
    [InlineData("El Dorado", 15.0, 3.0, 2.0)]
    [InlineData("San Francisco", 14.0, 3.0, 0.0)]
    public void First_page_further_page_and_fraud_fee_are_those_that_were_read(string county, double? first, double? further, double? fraud)
    {
        var office = RecorderTable.For(county, Jobs.Day("2026-11-30"));
        Assert.Equal(((decimal?)first, (decimal?)further, (decimal?)fraud), (office.Base, office.ExtraPage, office.Fraud));
    }

    [Theory]
    [InlineData("Contra Costa", 7.0, 7.0, 1.0, 1.0)]
    [InlineData("San Francisco", 6.0, 2.0, 1.0, 1.0)]
    [InlineData("Los Angeles", 9.0, 2.0, 4.0, 1.0)]
    [InlineData("San Diego", 13.0, 6.0, 7.0, null)]
    [InlineData("Alameda", 7.0, 7.0, null, null)]
    [InlineData("Placer", 6.0, 6.0, 1.0, 1.0)]
    [InlineData("Merced", 3.0, null, 1.0, 1.0)]
    [InlineData("Shasta", 3.0, 3.0, 1.0, null)]
    [InlineData("Santa Barbara", 16.0, 7.0, 1.0, null)]
    public void So_are_the_prices_of_notices_names_and_references(string county, double first, double? next, double? names,
        double? reference)
    {
        var office = RecorderTable.For(county, Jobs.Day("2026-11-30"));
        Assert.Equal(((decimal?)first, (decimal?)next, (decimal?)names, (decimal?)reference),
            (office.NoticeFirst, office.NoticeNext, office.NamesPerTen, office.FurtherReference));
    }
}
