using Stringline.Law.Reasoning;
using Stringline.Spreadsheets.Cells;
using Stringline.Spreadsheets.Writing;
using Stringline.Store;

namespace Stringline.Desk.Portfolio;

/// <summary>The desk's list as a table.</summary>
internal static class DeskSheet
{
    private static readonly SheetColumn[] Columns =
    [
        new("act by", Look.Day), new("overdue"), new("what is left of it"), new("until when", Width: 60), new("what to do", Width: 40), new("remedy", Width: 24), new("standing"), new("job", Width: 34), new("key"), new("customer", Width: 30),
        new("county"), new("signer", Width: 24), new("owed", Look.Money), new("at stake", Look.Money), new("owed and at stake", Width: 50), new("reading", Width: 40), new("section", Width: 28), new("as of", Look.Day),
    ];

    /// <summary>The heads of its columns.</summary>
    public static IEnumerable<string> Heads => Columns.Select(column => column.Header);

    /// <summary>Says so where the day to act by was past on the day as of which the job was assessed; else nothing.</summary>
    public static string Overdue(StepLine line) => line.Step.ActBy < line.AsOf ? "overdue" : "";

    /// <summary>A row a step.</summary>
    public static Sheet Of(IEnumerable<StepLine> lines) => new("To do", Columns, lines.Select(Row));

    private static IReadOnlyList<Cell> Row(StepLine line) =>
    [
        Cell.Of(line.Step.ActBy), Cell.Of(Overdue(line)), Cell.Of(line.Step.Left), Cell.Of(line.Step.Outlook), Cell.Of(line.Step.Do), Cell.Of(line.Step.Remedy), Cell.Of(line.Step.Standing.Word()), Cell.Of(line.Name), Cell.Of(line.Key),
        Cell.Of(line.Customer), Cell.Of(line.County), Cell.Of(line.Person),
        line.Step.Owed is { } owed ? Cell.Of(owed) : default, line.Step.AtStake is { } dollars ? Cell.Of(dollars) : default, Cell.Of(line.Step.Stakes), Cell.Of(line.Step.Reading), Cell.Of(line.Step.Section), Cell.Of(line.AsOf),
    ];
}
