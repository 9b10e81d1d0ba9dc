using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Html;

/// <summary>Findings in words for a person.</summary>
internal static class FindingWords
{
    /// <summary>Its day, or its band of days; null where it has none.</summary>
    public static Sentence? Band(Finding finding) => finding.Band switch
    {
        null => null,
        { Latest: null } open => (Sentence)$"{open.Earliest.Day}, no end yet",
        { Latest: { } latest } band when latest.Day == band.Earliest.Day => (Sentence)$"{latest.Day}",
        { Latest: { } latest } band => (Sentence)$"{band.Earliest.Day} to {latest.Day}",
    };

    /// <summary>By which reading the band begins and by which it ends, where they are two days; else empty.</summary>
    public static string Ends(Finding finding) => finding.Band switch
    {
        { Latest: { } latest } band when latest.Day != band.Earliest.Day =>
            $"from the reading “{PlainWords.Of(band.Earliest.Words)}” to “{PlainWords.Of(latest.Words)}”",
        { Latest: null } open when finding.Readings.Count > 0 => $"from the reading “{PlainWords.Of(open.Earliest.Words)}”",
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
