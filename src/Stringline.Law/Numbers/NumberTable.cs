using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Law.Numbers;

/// <summary>Every number of the law in all its versions, each without gap or overlap from the first to the last.</summary>
/// <remarks>Immutable; any number of threads may ask one instance. An answer is a row that the table holds, and costs no memory.</remarks>
public sealed class NumberTable
{
    private const string Header = "id,value,unit,section,from,until,sure,source";

    private static readonly string[] Units = Enum.GetNames<NumberUnit>();
    private static readonly string[] Sures = Enum.GetNames<Sure>();

    // By number, then by first day.
    private readonly NumberRow[][] versions;

    /// <summary>A table of rows in any order.</summary>
    /// <param name="rows">At least one row of each number.</param>
    /// <exception cref="FormatException">A number has no row, or its versions leave a gap, overlap, or count different things.</exception>
    public NumberTable(IEnumerable<NumberRow> rows)
    {
        // In plain loops: the table is read at every start, and generic code over numbers and days would be compiled then.
        var names = Enum.GetNames<Number>();
        var byNumber = new List<NumberRow>[names.Length];
        for (var i = 0; i < byNumber.Length; i++)
            byNumber[i] = [];
        foreach (var row in rows)
            byNumber[(int)row.Id].Add(row);
        versions = new NumberRow[names.Length][];
        for (var number = 0; number < names.Length; number++)
        {
            var id = names[number];
            byNumber[number].Sort(static (one, other) => one.From.CompareTo(other.From));
            versions[number] = [.. byNumber[number]];
            var of = versions[number];
            if (of.Length == 0)
                throw new FormatException($"{id} has no row. Right: at least one row with the id {id}.");
            for (var i = 1; i < of.Length; i++)
            {
                if (of[i - 1].Until?.PlusDays(1) != of[i].From)
                    throw new FormatException(
                        $"{id}: one version governs {Through(of[i - 1])} and the next from {Iso(of[i].From)}. Right: the next begins on "
                            + $"the "
                            + "day after the last day of the one before.");
                if (of[i].Unit != of[0].Unit)
                    throw new FormatException($"{id}: a version in {of[i].Unit} follows one in {of[0].Unit}. Right: one unit; another one "
                        + $"is another number.");
            }
        }
    }

    /// <summary>The table of <c>data/numbers.csv</c>, with which the program was built.</summary>
    public static NumberTable Shipped { get; } = Parse(EmbeddedText());

    /// <summary>Reads a table.</summary>
    /// <param name="csv">The table's text, its first line the names of the columns.</param>
    /// <exception cref="FormatException">Something is wrong; the message says on which line, in which cell, what is there and what would be
    /// right.</exception>
    public static NumberTable Parse(string csv)
    {
        ArgumentNullException.ThrowIfNull(csv);
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var name in Enum.GetNames<Number>())
            ids.Add(name, ids.Count);
        var rows = new List<NumberRow>();
        foreach (var row in ShippedRows.Read(csv, Header))
            rows.Add(Row(row.Cells, row.Line, ids));
        return new NumberTable(rows);
    }

    /// <summary>The version that governs a day. Before the first version it is the first, and after the last one the last.</summary>
    /// <remarks>
    /// What is older than the first version is answered under it, as the assessment says (<c>assumptions</c>). A rule of a section that
    /// ends, or that began when the one before it was another, asks <see cref="Begins"/> and <see cref="Ends"/> first.
    /// </remarks>
    /// <param name="id">The number.</param>
    /// <param name="day">The day that the number governs, such as that of the recording from which it is counted.</param>
    public NumberRow On(Number id, LocalDate day)
    {
        var of = versions[(int)id];
        var at = of.Length - 1;
        while (at > 0 && of[at].From > day)
            at--;
        return of[at];
    }

    /// <summary>The first day that any version governs: that of a section that began with it.</summary>
    public LocalDate Begins(Number id) => versions[(int)id][0].From;

    /// <summary>The last day that any version governs; null while the section is in force.</summary>
    public LocalDate? Ends(Number id) => versions[(int)id][^1].Until;

    /// <summary>The day from which a period runs that ends on a day.</summary>
    /// <param name="id">The number, of days.</param>
    /// <param name="lastDay">The last day of the period.</param>
    public LocalDate RunsFrom(Number id, LocalDate lastDay)
    {
        var of = versions[(int)id];
        foreach (var row in of)
        {
            var from = row.LookBack(lastDay);
            if (ReferenceEquals(On(id, from), row))
                return from;
        }

        return of[^1].LookBack(lastDay);
    }

    /// <summary>The last day of a period that runs from a day, by the version that governs that day; not rolled.</summary>
    public LocalDate LastDay(Number id, LocalDate from) => On(id, from).LastDay(from);

    /// <summary>The versions of a number, earliest first.</summary>
    public IReadOnlyList<NumberRow> Of(Number id) => versions[(int)id];

    /// <summary>Every version of the numbers that a section fixes, in the order of the numbers.</summary>
    public IEnumerable<NumberRow> OfSection(string section) => versions.SelectMany(of => of).Where(row => row.Section == section);

    private static NumberRow Row(IReadOnlyList<string> cells, int number, Dictionary<string, int> ids)
    {
        if (!ids.TryGetValue(cells[0], out var id))
            throw Wrong("id", cells[0], $"one of {string.Join(", ", ids.Keys)}");
        var unit = (NumberUnit)Named("unit", cells[2], Units);
        if (!decimal.TryParse(cells[1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) || value <= 0
            || (unit is not (NumberUnit.Percent or NumberUnit.Inches) && !decimal.IsInteger(value)) || value > int.MaxValue)
        {
            throw Wrong("value", cells[1], unit is NumberUnit.Percent or NumberUnit.Inches
                ? "a number above 0, such as 5 or 7.5" : "a whole number above 0, such as 90");
        }

        if (!cells[3].Contains('§'))
            throw Wrong("section", cells[3], "the section that fixes it, such as Civ. Code § 8460(a)");
        var from = Day("from", cells[4]);
        var until = cells[5].Length == 0 ? (LocalDate?)null : Day("until", cells[5]);
        if (until < from)
            throw Wrong("until", cells[5], $"empty, or a day not before {cells[4]}");
        if (string.IsNullOrWhiteSpace(cells[7]))
            throw Wrong("source", cells[7], "the text in which it was read, or that it is from memory");
        return new NumberRow((Number)id, value, unit, cells[3], from, until, (Sure)Named("sure", cells[6], Sures), cells[7]);

        int Named(string column, string cell, string[] names) =>
            Array.IndexOf(names, cell) is var at and >= 0 ? at : throw Wrong(column, cell, $"one of {string.Join(", ", names)}");

        LocalDate Day(string column, string cell) => ShippedRows.Day(cell) ?? throw Wrong(column, cell, "a day, such as 2012-07-01");

        FormatException Wrong(string column, string cell, string right) =>
            new(string.Create(CultureInfo.InvariantCulture, $"Line {number}, {column}: «{cell}». Right: {right}."));
    }

    private static string Through(NumberRow row) => row.Until is { } until ? $"through {Iso(until)}" : "without an end";

    private static string Iso(LocalDate day) => LawText.IsoDay(day);

    private static string EmbeddedText()
    {
        using var stream = typeof(NumberTable).Assembly.GetManifestResourceStream("numbers.csv")
            ?? throw new InvalidOperationException("numbers.csv is missing from the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
