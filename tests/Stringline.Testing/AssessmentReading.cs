using System.Globalization;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Testing;

/// <summary>Short ways to read an assessment in a test.</summary>
public static class AssessmentReading
{
    /// <summary>The finding with that id.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static Finding Get(this Assessment assessment, string id) =>
        assessment.Find(id) ?? throw new InvalidOperationException($"No finding {id}.");

    /// <summary>The readings, as <c>2026-08-02 actual completion</c>, earliest first.</summary>
    public static string[] Lines(this Finding finding) =>
        [.. finding.Readings.Select(r => $"{LawText.IsoDay(r.Day)} {r.Name}")];

    /// <summary>The days of the readings, each once, earliest first.</summary>
    public static string[] DaysOf(this Finding finding) =>
        [.. finding.Readings.Select(r => LawText.IsoDay(r.Day)).Distinct()];

    /// <summary>The steps, as <c>paid -500.00</c>, in order.</summary>
    public static string[] Lines(this Waterfall waterfall) =>
        [.. waterfall.Steps.Select(s => $"{s.Id} {s.Amount.ToString("0.00", CultureInfo.InvariantCulture)}")];

    /// <summary>The amount of a step; 0 where there is none.</summary>
    public static decimal Step(this Waterfall waterfall, string id) =>
        waterfall.Steps.Where(s => s.Id == id).Sum(s => s.Amount);

    /// <summary>The day to plan on, as <c>2026-08-02</c>; null where there is none.</summary>
    public static string? Plan(this Finding finding) => finding.ActBy is { } day ? LawText.IsoDay(day) : null;

    /// <summary>Whether a reason that applied, at any depth, says the words.</summary>
    public static bool Says(this Finding finding, string words) =>
        finding.Why.Tree().Any(r => r.Applied && r.Text.Contains(words, StringComparison.Ordinal));

    /// <summary>Whether a road not taken, at any depth, lay under the section.</summary>
    public static bool RuledOut(this Finding finding, string section) =>
        finding.Why.Tree().Any(r => !r.Applied && r.Section == section);

    /// <summary>Whether the finding asks for a fact in these words.</summary>
    public static bool Asks(this Finding finding, string words) =>
        finding.Questions.Any(q => q.Text.Contains(words, StringComparison.Ordinal));

    /// <summary>All that an answer says, for comparing two.</summary>
    /// <param name="assessment">The answer.</param>
    /// <param name="assumptions">Whether the finding that counts what was left out is told too.</param>
    /// <param name="reasons">Whether the reasons are told too.</param>
    public static string[] Said(this Assessment assessment, bool assumptions = true, bool reasons = false) =>
    [
        .. assessment.Findings.Where(f => assumptions || f.Id != "assumptions").SelectMany(f => (string[])
        [
            $"{f.Id}: {f.Standing}, act by {f.ActBy}, amount {f.Amount}, end {f.Band?.Latest?.Day}",
            .. f.Readings.Select(r => $"  {r}"),
            .. f.Questions.Select(q => $"  {q}"),
            .. reasons ? f.Why.Tree().Select(r => $"  {r.Section} {r.Applied} {r.Text}") : [],
        ]),
        .. assessment.Amount.Lines(),
        $"demand {assessment.Amount.Demand}, left out {assessment.Amount.LeftOut}, in doubt {assessment.Amount.InDoubt}",
        .. assessment.ClaimObstacles.Select(o => $"obstacle {o.Section}"),
    ];

    /// <summary>Every reason under these, depth first, themselves included.</summary>
    public static IEnumerable<Reason> Tree(this IEnumerable<Reason> reasons) =>
        reasons.SelectMany(r => r.Children.Tree().Prepend(r));
}
