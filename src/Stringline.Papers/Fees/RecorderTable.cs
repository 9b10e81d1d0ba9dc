using NodaTime.Text;
using Stringline.Law.Facts;

namespace Stringline.Papers.Fees;

/// <summary>The table of recorders' prices, <c>data/recorders.csv</c>: dated rows that the user can edit.</summary>
public static class RecorderTable
{
    private static readonly string[] Columns =
    [
        "county", "valid_from", "seat", "base", "extra_page", "fraud", "fraud_on_others", "parcels_counted", "covenant", "names_per_ten",
            "further_reference",
        "notice_first", "notice_next", "notice_group", "conformed_copy", "conformed_per_page", "hours", "source",
        "date_on_page", "date_read", "note",
    ];

    private static readonly Lazy<IReadOnlyList<RecorderOffice>> Shipped = new(() => Parse(Resources.Text("data/recorders.csv")));

    /// <summary>The source of a row of which no page was read; such a row has neither date_on_page nor date_read.</summary>
    private const string FromMemory = "from memory";

    /// <summary>The rows that ship with the program.</summary>
    public static IReadOnlyList<RecorderOffice> All => Shipped.Value;

    /// <summary>The row of a county that is in force on a day; one from memory and without prices where no schedule was read.</summary>
    /// <param name="county">The county.</param>
    /// <param name="on">The day of recording.</param>
    /// <exception cref="ArgumentException">There is no such county.</exception>
    public static RecorderOffice For(string county, LocalDate on) => InForce(All, county, on);

    /// <summary>The same of any table: of the rows that have begun the one that began last.</summary>
    internal static RecorderOffice InForce(IReadOnlyList<RecorderOffice> table, string county, LocalDate on)
    {
        var name = Counties.Find(county) ?? throw new ArgumentException($"'{county}' is no county of California.", nameof(county));
        RecorderOffice? found = null;
        foreach (var row in table)
        {
            if (row.County == name && !(row.ValidFrom > on) && !(found?.ValidFrom > (row.ValidFrom ?? LocalDate.MinIsoValue)))
                found = row;
        }

        return found ?? new RecorderOffice { County = name };
    }

    /// <summary>Reads a table in the form of the shipped one.</summary>
    /// <exception cref="FormatException">A line is not of that form; the message names line, column, what is there and what would be
    /// right.</exception>
    public static IReadOnlyList<RecorderOffice> Parse(string csv)
    {
        var lines = csv.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length == 0 || !Cells(lines[0], 1).SequenceEqual(Columns))
            throw new FormatException($"Line 1: the columns must be {string.Join(',', Columns)}.");
        var rows = new List<RecorderOffice>();
        for (var i = 1; i < lines.Length; i++)
        {
            var row = Row(new CsvLine(Cells(lines[i], i + 1), i + 1));
            if (rows.Exists(r => r.County == row.County && r.ValidFrom == row.ValidFrom))
            {
                throw new FormatException($"Line {i + 1}, county: {row.County} has a row already. One row for each county and each "
                    + "valid_from.");
            }

            rows.Add(row);
        }

        return rows;
    }

    private static RecorderOffice Row(CsvLine line) => new()
    {
        County = line.County("county"),
        ValidFrom = line.Text("valid_from") is null ? null : line.Day("valid_from"),
        Seat = line.Text("seat"),
        Base = line.Dollars("base"),
        ExtraPage = line.Dollars("extra_page"),
        Fraud = line.Dollars("fraud"),
        FraudOnOthers = line.Dollars("fraud_on_others"),
        ParcelsCounted = line.YesNo("parcels_counted"),
        Covenant = line.Dollars("covenant"),
        NamesPerTen = line.Dollars("names_per_ten"),
        FurtherReference = line.Dollars("further_reference"),
        NoticeFirst = line.Dollars("notice_first"),
        NoticeNext = line.Dollars("notice_next"),
        NoticeGroup = line.Count("notice_group") ?? 1,
        ConformedCopy = line.Dollars("conformed_copy"),
        ConformedPerPage = line.Dollars("conformed_per_page"),
        Hours = line.Text("hours"),
        Source = line.Needed("source"),
        DateOnPage = line.Needed("source") == FromMemory ? line.Empty("date_on_page") : line.Needed("date_on_page"),
        DateRead = line.Needed("source") == FromMemory ? line.EmptyDay("date_read") : line.Day("date_read"),
        Note = line.Text("note"),
    };

    private static List<string> Cells(string line, int number)
    {
        var cells = new List<string>();
        for (var at = 0; at <= line.Length;)
        {
            if (at < line.Length && line[at] == '"')
            {
                var end = line.IndexOf('"', at + 1);
                if (end < 0 || (end + 1 < line.Length && line[end + 1] != ','))
                {
                    throw new FormatException($"Line {number}: a quoted cell must end with a quote before the next comma, and hold no "
                        + "quote.");
                }

                cells.Add(line[(at + 1)..end]);
                at = end + 2;
            }
            else
            {
                var end = line.IndexOf(',', at);
                end = end < 0 ? line.Length : end;
                cells.Add(line[at..end]);
                at = end + 1;
            }
        }

        return cells;
    }

    private sealed record CsvLine(List<string> Cells, int Number)
    {
        public string? Text(string column)
        {
            if (Cells.Count != Columns.Length)
                throw new FormatException($"Line {Number}: {Cells.Count} cells are there; {Columns.Length} would be right.");
            var cell = Cells[Array.IndexOf(Columns, column)].Trim();
            return cell.Length == 0 ? null : cell;
        }

        public string Needed(string column) => Text(column) ?? throw Wrong(column, "", "words");

        public string? Empty(string column) =>
            Text(column) is { } cell ? throw Wrong(column, cell, $"nothing, as the source is {FromMemory},") : null;

        public LocalDate? EmptyDay(string column) => Empty(column) is null ? null : throw new InvalidOperationException("Not empty.");

        public string County(string column) =>
            Counties.Find(Text(column)) ?? throw Wrong(column, Text(column) ?? "", "one of the 58 counties");

        public decimal? Dollars(string column)
        {
            if (Text(column) is not { } cell)
                return null;
            return decimal.TryParse(cell, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var dollars)
                && decimal.Round(dollars, 2) == dollars
                ? dollars
                : throw Wrong(column, cell, "dollars with at most two places, such as 14 or 14.50, or nothing where the page does not say");
        }

        public int? Count(string column)
        {
            if (Text(column) is not { } cell)
                return null;
            return int.TryParse(cell, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0
                ? count
                : throw Wrong(column, cell, "a whole number above 0");
        }

        public bool? YesNo(string column) => Text(column) switch
        {
            null => null,
            "yes" => true,
            "no" => false,
            var other => throw Wrong(column, other, "yes, no or nothing"),
        };

        public LocalDate Day(string column)
        {
            var parsed = LocalDatePattern.Iso.Parse(Needed(column));
            return parsed.Success ? parsed.Value : throw Wrong(column, Needed(column), "a day such as 2026-11-25");
        }

        private FormatException Wrong(string column, string there, string right) =>
            new($"Line {Number}, {column}: '{there}' is there; {right} would be right.");
    }
}
