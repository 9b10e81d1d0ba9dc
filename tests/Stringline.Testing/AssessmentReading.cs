using System.Globalization;
using Stringline.Law;
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

    /// <summary>Every reason under these, depth first, themselves included.</summary>
    public static IEnumerable<Reason> Tree(this IEnumerable<Reason> reasons) =>
        reasons.SelectMany(r => r.Children.Tree().Prepend(r));
}
