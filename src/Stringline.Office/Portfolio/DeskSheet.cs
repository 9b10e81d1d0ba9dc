using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Writing;
using Stringline.Store;

namespace Stringline.Office.Portfolio;

/// <summary>The desk's list as a table: its columns stand here once, for every file of it and from either door.</summary>
internal static class DeskSheet
{
    private const int Page = 5000;

    private static readonly (SheetColumn Column, Func<StepLine, Cell> Of)[] Columns =
    [
        (new("act by", Look.Day), line => Cell.Of(line.Step.ActBy)),
        (new("overdue"), line => Cell.Of(line.Step.ActBy < line.AsOf ? "overdue" : "")),
        (new("what is left of it"), line => Cell.Of(line.Step.Left)),
        (new("until when", Width: 60), line => Cell.Of(line.Step.Outlook)),
        (new("what to do", Width: 40), line => Cell.Of(line.Step.Do)),
        (new("remedy", Width: 24), line => Cell.Of(line.Step.Remedy)),
        (new("standing"), line => Cell.Of(line.Step.Standing.Word())),
        (new("job", Width: 34), line => Cell.Of(line.Name)),
        (new("key"), line => Cell.Of(line.Key)),
        (new("customer", Width: 30), line => Cell.Of(line.Customer)),
        (new("county"), line => Cell.Of(line.County)),
        (new("signer", Width: 24), line => Cell.Of(line.Person)),
        (new("owed", Look.Money), line => Dollars(line.Step.Owed)),
        (new("at stake", Look.Money), line => Dollars(line.Step.AtStake)),
        (new("owed and at stake", Width: 50), line => Cell.Of(line.Step.Stakes)),
        (new("reading", Width: 40), line => Cell.Of(line.Step.Reading)),
        (new("section", Width: 28), line => Cell.Of(line.Step.Section)),
        (new("as of", Look.Day), line => Cell.Of(line.AsOf)),
    ];

    /// <summary>A row a step.</summary>
    public static Sheet Of(IEnumerable<StepLine> lines) => new("To do", [.. Columns.Select(column => column.Column)], lines.Select(Row));

    /// <summary>Every step, watches included, page by page: what is past first, then by day, and of one day most dollars first.</summary>
    public static IEnumerable<StepLine> All(IJournal journal, StepFilter filter)
    {
        for (var skip = 0; ; skip += Page)
        {
            var lines = journal.Steps(new StepQuery(filter, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), Page) { Watch = null,
                Skip = skip });
            foreach (var line in lines)
                yield return line;
            if (lines.Count < Page)
                break;
        }
    }

    private static IReadOnlyList<Cell> Row(StepLine line) => Array.ConvertAll(Columns, column => column.Of(line));

    private static Cell Dollars(decimal? dollars) => dollars is { } known ? Cell.Of(known) : default;
}
