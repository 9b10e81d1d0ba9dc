using Stringline.Law.Numbers;

namespace Stringline.Places;

/// <summary>What the tables say of a ZIP.</summary>
/// <param name="City">The place by which the Postal Service calls it.</param>
/// <param name="Counties">The counties in which it is said to lie, the one of the main table first; never empty.</param>
public sealed record ZipPlace(string City, IReadOnlyList<string> Counties);

/// <summary>
/// California's ZIPs with place and county (<c>data/zip-counties.csv</c>, GeoNames, CC BY 4.0), and the ZIPs for which four
/// sources name more than one county (<c>data/zip-straddlers.csv</c>). Counties are only suggested: about 2 in 100 ZIPs lie
/// mostly in another county than the main table says, and some that straddle are not known to.
/// </summary>
public static class ZipTable
{
    // The lookup of a ZIP is one search in the text: a command asks once, and a dictionary of 2,600 rows would cost more than that.
    // That of a city would have to look at every row, so it is kept: a desk asks for each of its jobs.
    private static readonly Lazy<string> Main = new(() => ShippedTable.Text("zip-counties.csv"));
    private static readonly Lazy<string> Straddlers = new(() => ShippedTable.Text("zip-straddlers.csv"));
    private static readonly Lazy<Dictionary<string, IReadOnlyList<string>>> Cities = new(ByCity);

    /// <summary>What is said of a ZIP of five digits; null where the table does not have it.</summary>
    public static ZipPlace? Find(string zip)
    {
        ArgumentNullException.ThrowIfNull(zip);
        var rows = Rows(Main.Value, zip);
        if (rows.Count == 0)
            return null;
        var (city, main) = (rows[0][1], rows[0][2]);
        var others = Rows(Straddlers.Value, zip).Select(row => row[1]).Where(county => county != main);
        return new ZipPlace(city, [main, .. others]);
    }

    /// <summary>The counties of all ZIPs that go by a place's name, in any case; empty where no ZIP does.</summary>
    public static IReadOnlyList<string> CountiesOf(string city)
    {
        ArgumentNullException.ThrowIfNull(city);
        return Cities.Value.TryGetValue(city, out var counties) ? counties : [];
    }

    private static Dictionary<string, IReadOnlyList<string>> ByCity()
    {
        var straddlers = ShippedRows.Read(Straddlers.Value, "zip,county,named_by")
            .ToLookup(row => row.Cells[0], row => row.Cells[1], StringComparer.Ordinal);
        var found = new Dictionary<string, SortedSet<string>>(StringComparer.OrdinalIgnoreCase);
        foreach (var (_, cells) in ShippedRows.Read(Main.Value, "zip,city,county"))
        {
            if (!found.TryGetValue(cells[1], out var counties))
                found[cells[1]] = counties = new SortedSet<string>(StringComparer.Ordinal);
            counties.Add(cells[2]);
            counties.UnionWith(straddlers[cells[0]]);
        }

        return found.ToDictionary(pair => pair.Key, pair => (IReadOnlyList<string>)[.. pair.Value], StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Every ZIP of the main table, in order.</summary>
    internal static IEnumerable<string> All =>
        Main.Value.Split('\n').Where(line => line.Length > 5 && char.IsAsciiDigit(line[0])).Select(line => line[..5]);

    private static List<string[]> Rows(string table, string zip)
    {
        var rows = new List<string[]>();
        var sought = $"\n{zip},";
        for (var at =
            table.IndexOf(sought, StringComparison.Ordinal); at >= 0; at = table.IndexOf(sought, at + 1, StringComparison.Ordinal))
        {
            var end = table.IndexOf('\n', at + 1);
            rows.Add(table[(at + 1)..(end < 0 ? table.Length : end)].Split(','));
        }

        return rows;
    }
}
