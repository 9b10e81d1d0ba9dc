using NodaTime.Text;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Recording;

namespace Stringline.Papers.Fees;

/// <summary>Reads the table of recorders. A wrong row is refused with its line, its field, what is there and what would be right.</summary>
internal static class RecorderRows
{
    /// <summary>The source of a fact of which no page was read; such a row has neither date_on_page nor date_read.</summary>
    public const string FromMemory = "from memory";

    private static readonly string[] Columns =
        ["county", "field", "value", "source", "date_on_page", "date_read", "from", "to", "remark"];

    /// <summary>Reads a table in the form of the shipped one.</summary>
    /// <exception cref="FormatException">A line is not of that form.</exception>
    public static IReadOnlyList<RecorderFact> Read(string csv)
    {
        var facts = new List<RecorderFact>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var row in ShippedRows.Read(csv, string.Join(',', Columns)))
        {
            var fact = new Row(row).Fact();
            if (!seen.Add(Key(fact)))
            {
                throw new FormatException($"Line {row.Line}, {fact.County}, {RecorderFieldNames.Of(fact.Field)}: the same value of the "
                    + $"same "
                    + "page stands there already. One row for each fact and page.");
            }

            facts.Add(fact);
        }

        return facts;
    }

    // No cell holds a line break. One string, and not a tuple of six, since a table is read at every start.
    private static string Key(RecorderFact fact) =>
        string.Join('\n', fact.County, RecorderFieldNames.Of(fact.Field), fact.Value, fact.Source,
        fact.DateOnPage, fact.From is { } from ? LocalDatePattern.Iso.Format(from) : "");

    private sealed class Row(ShippedRow row)
    {
        private string? of;

        public RecorderFact Fact()
        {
            var county = County();
            var field = RecorderFieldNames.Find(Text("field") ?? "")
                ?? throw Wrong("field", $"one of {string.Join(", ", RecorderFieldNames.All)}");
            of = $", {county}, {RecorderFieldNames.Of(field)}";
            var source = Needed("source");
            var memory = source == FromMemory;
            var (from, to) = (Day("from"), Day("to"));
            if (to < from)
                throw Wrong("to", "the same day as \"from\" or a later one");
            return new RecorderFact(county, field, Value(field), source,
                memory ? Empty("date_on_page") : DateOnPage(), memory ? EmptyDay() : Day("date_read") ?? throw Wrong("date_read",
                "a day such as 2026-11-25"), from, to, Text("remark"));
        }

        private string Value(RecorderField field)
        {
            var value = Needed("value");
            return RecorderFields.Kind(field) switch
            {
                RecorderValue.Words => value,
                RecorderValue.YesNo => value is "yes" or "no" ? value : throw Wrong("value", "yes or no"),
                RecorderValue.Count => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0
                    ? value : throw Wrong("value", "a whole number above 0"),
                RecorderValue.Dollars => decimal.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var sum)
                    && decimal.Round(sum, 2) == sum
                    ? value : throw Wrong("value", "dollars with at most two places, such as 14 or 14.50"),
                var other => throw new InvalidOperationException($"No such kind of value: {other}."),
            };
        }

        private string County() => Text("county") is RecorderFact.Statewide ? RecorderFact.Statewide
            : Counties.Find(Text("county")) ?? throw Wrong("county", $"one of the 58 counties, or {RecorderFact.Statewide},");

        private string DateOnPage() => Needed("date_on_page") is var date && RecorderFact.IsDate(date) ? date
            : throw Wrong("date_on_page", "a day, month or year such as 2026-01-31, 2026-01 or 2026, or undated, with words in brackets,");

        private string? Text(string column)
        {
            var cell = row.Cells[Array.IndexOf(Columns, column)].Trim();
            return cell.Length == 0 ? null : cell;
        }

        private string Needed(string column) => Text(column) ?? throw Wrong(column, "words");

        private string? Empty(string column) =>
            Text(column) is null ? null : throw Wrong(column, $"nothing, as the source is {FromMemory},");

        private LocalDate? EmptyDay() => Empty("date_read") is null ? null : throw new InvalidOperationException("Not empty.");

        private LocalDate? Day(string column)
        {
            if (Text(column) is not { } cell)
                return null;
            return ShippedRows.Day(cell) ?? throw Wrong(column, "a day such as 2026-11-25");
        }

        private FormatException Wrong(string column, string right) =>
            new($"Line {row.Line}{of}, {column}: '{Text(column)}' is there; {right} would be right.");
    }
}
