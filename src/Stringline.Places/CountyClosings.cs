using System.Collections.Frozen;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Counting;
using Stringline.Law.Sources;

namespace Stringline.Places;

/// <summary>
/// The days on which a county's offices are closed beyond the statutory lists (<c>data/county-closings.csv</c>): rows that the user
/// can edit, each with its source. The shipped table is short: few counties' own days are known, so ask the office.
/// </summary>
public static class CountyClosings
{
    private const string Columns = "county,day,why,source,date_read,how_sure";

    private static readonly Lazy<IReadOnlyList<CountyClosing>> Shipped = new(() => Parse(ShippedTable.Text("county-closings.csv")));

    private static readonly Lazy<FrozenDictionary<string, OpenDays>> Calendars =
        new(() => All.Select(row => row.County).Distinct().ToFrozenDictionary(county => county, county => OpenDays.ForCounty(county, All)));

    /// <summary>The rows that ship with the program.</summary>
    public static IReadOnlyList<CountyClosing> All => Shipped.Value;

    /// <summary>
    /// The calendar of a county's offices: the statutory lists, and the county's own days where the table has any. One for each county, so
    /// that its years are worked out once.
    /// </summary>
    /// <param name="county">The county's name without the word County.</param>
    public static OpenDays Calendar(string county) =>
        Calendars.Value.GetValueOrDefault(county, OpenDays.Statutory);

    /// <summary>Reads a table in the form of the shipped one; lines that begin with <c>#</c> are remarks.</summary>
    /// <exception cref="FormatException">A line is not of that form; the message names line, column, what is there and what would be
    /// right.</exception>
    public static IReadOnlyList<CountyClosing> Parse(string csv)
    {
        ArgumentNullException.ThrowIfNull(csv);
        var rows = new List<CountyClosing>();
        foreach (var row in ShippedRows.Read(csv, Columns))
            rows.Add(Row(row, rows));
        return rows;
    }

    private static CountyClosing Row(ShippedRow shipped, List<CountyClosing> before)
    {
        var (number, cells) = shipped;
        var county = cells[0];
        if (!Counties.All.Contains(county))
            throw Wrong(number, "county", county, "one of the 58 counties, without the word county,");
        var row = new CountyClosing(county, Day(cells[1], number, "day"), Words(cells[2], number, "why"), Words(cells[3], number, "source"),
            Day(cells[4], number, "date_read"))
        {
            Sure = cells[5] switch
            {
                "read" => Sure.Read,
                "from memory" => Sure.FromMemory,
                "open" => Sure.OurReading,
                var other => throw Wrong(number, "how_sure", other, "read, from memory or open"),
            },
        };
        if (before.Exists(b => b.County == row.County && b.Day == row.Day))
            throw Wrong(number, "day", cells[1], $"one row for {row.County} on a day");
        return row;
    }

    private static string Words(string cell, int number, string column) =>
        cell.Trim().Length > 0 ? cell.Trim() : throw Wrong(number, column, cell, "words");

    private static LocalDate Day(string cell, int number, string column) =>
        ShippedRows.Day(cell) ?? throw Wrong(number, column, cell, "a day such as 2026-03-30");

    private static FormatException Wrong(int number, string column, string there, string right) =>
        new($"Line {number}, {column}: '{there}' is there; {right} would be right.");
}
