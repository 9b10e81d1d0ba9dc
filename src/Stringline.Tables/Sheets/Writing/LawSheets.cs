using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.LienableAmount;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Writing;

/// <summary>An assessment of one job as tables.</summary>
public static class LawSheets
{
    /// <summary>The amount, step by step; the steps add up to the last row.</summary>
    public static Sheet Waterfall(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return new(
            "Waterfall",
            [new("step", Width: 34), new("amount", Look.Money), new("section", Width: 28), new("why", Width: 90),
                new("entries", Width: 30)],
            [
                .. assessment.Amount.Steps.Select(step => (IReadOnlyList<Cell>)
                    [Cell.Of(step.Title), Cell.Of(step.Amount), Cell.Of(step.Why.Section), Cell.Of(step.Why.Text),
                        Cell.Of(string.Join(' ', step.Why.Facts.Select(fact => fact.Path)))]),
                Sum(assessment.Amount),
            ]);
    }

    // A sum that is not known is no sum of nothing: its cell is left empty.
    private static IReadOnlyList<Cell> Sum(Waterfall amount) =>
    [
        Cell.Of(amount.Title), amount.IsUnknown ? default : Cell.Of(amount.Demand), Cell.Of(amount.Section),
        amount.IsUnknown
            ? Cell.Of("not known") : amount.IsBand
            ? Cell.Of($"{LawText.Money(amount.AtLeast)} to {LawText.Money(amount.AtMost)} on the readings that are open") : default,
            default,
    ];

    /// <summary>Every day of every finding: a row for each reading.</summary>
    public static Sheet Days(Assessment assessment)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        return new(
            "Days",
            [
                new("finding", Width: 30), new("what", Width: 40), new("standing"), new("act by", Look.Day),
                    new("what is left of it", Width: 60), new("reading", Width: 40), new("day", Look.Day),
                new("rolled", Look.Day), new("sections", Width: 60),
            ],
            assessment.Findings.Where(finding => finding.ActBy is not null || finding.Readings.Count > 0)
                .SelectMany(finding => Rows(finding, assessment.AsOf)));
    }

    private static IEnumerable<IReadOnlyList<Cell>> Rows(Finding finding, LocalDate asOf)
    {
        var sections = Cell.Of(string.Join("; ", finding.Sections));
        var left = Cell.Of(Outlook.Of(finding, asOf)?.Text);
        Law.Reasoning.Reading?[] readings = finding.Readings.Count == 0 ? [null] : [.. finding.Readings];
        return readings.Select(reading => (IReadOnlyList<Cell>)
        [
            Cell.Of(finding.Id), Cell.Of(finding.Title), Cell.Of(finding.Standing.Word()), Day(finding.ActBy), left, Cell.Of(reading?.Name),
                Day(reading?.Day), Day(reading?.Rolled), sections,
        ]);
    }

    private static Cell Day(LocalDate? day) => day is { } known ? Cell.Of(known) : default;
}
