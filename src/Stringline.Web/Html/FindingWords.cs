using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Html;

/// <summary>Findings in words for a person.</summary>
internal static class FindingWords
{
    /// <summary>Its day, or its band of days; empty where it has none.</summary>
    public static string Band(Finding finding) => finding.Band switch
    {
        null => "",
        { Latest: null } open => $"{LawText.Day(open.Earliest.Day)}, no end yet",
        { Latest: { } latest } band when latest.Day == band.Earliest.Day => LawText.Day(latest.Day),
        { Latest: { } latest } band => $"{LawText.Day(band.Earliest.Day)} to {LawText.Day(latest.Day)}",
    };

    /// <summary>By which reading the band begins and by which it ends, where they are two days; else empty.</summary>
    public static string Ends(Finding finding) => finding.Band switch
    {
        { Latest: { } latest } band when latest.Day != band.Earliest.Day => $"from the reading “{PlainWords.Of(band.Earliest.Name)}” to “{PlainWords.Of(latest.Name)}”",
        { Latest: null } open when finding.Readings.Count > 0 => $"from the reading “{PlainWords.Of(open.Earliest.Name)}”",
        _ => "",
    };

    /// <summary>How much the answer to a question could move; empty where nobody can say.</summary>
    public static string Weight(Question question)
    {
        var parts = new List<string>();
        if (question.Days is { } days)
            parts.Add($"{days} {(days == 1 ? "day" : "days")}");
        if (question.Dollars is { } dollars)
            parts.Add(LawText.Money(dollars));
        return parts.Count == 0 ? "" : $"It could move {string.Join(" and ", parts)}.";
    }
}
