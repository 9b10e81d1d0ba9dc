using Stringline.Law.Reasoning;

namespace Stringline.Desk.Web.Html;

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
