using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Text;

namespace Stringline.Browser.Tests;

/// <summary>What every page says, as a person reads it. Weekdays come from NodaTime's calendar.</summary>
public sealed partial class WordsTests(Chromium chromium)
{
    [Fact]
    public async Task Every_page_says_days_with_their_weekday_carries_the_caution_and_uses_no_word_that_is_the_programs_own()
    {
        var walk = await chromium.Walked();
        Assert.True(walk.Days > 300, $"Only {walk.Days} days were seen.");
        Found.Nothing("things to say better", walk.Words);
    }

    [Theory]
    [InlineData("Act by 2026-07-15", 1)]
    [InlineData("Act by 2026-07-15 (Tue)", 1)]
    [InlineData("Act by 2026-07-15 (Wed), instrument 2026-0047012", 0)]
    public void A_day_without_its_weekday_or_with_a_wrong_one_is_seen(string text, int seen) => Assert.Equal(seen, Bare(text).Count());

    /// <summary>What a page says and should say otherwise.</summary>
    /// <param name="page">The page.</param>
    /// <param name="visit">The window in which it is.</param>
    /// <param name="days">The days that were seen, to which its own are added.</param>
    internal static async Task<List<string>> WrongOn(EveryPage page, Visit visit, List<string> days)
    {
        var wrong = new List<string>();
        var text = await visit.Page.InnerTextAsync("body");
        if (!(await visit.Page.InnerTextAsync("footer")).Contains(Law.Assessment.Caution, StringComparison.Ordinal))
            wrong.Add($"{page.Name}: no caution");
        if (await visit.Page.Locator("h1").CountAsync() != 1)
            wrong.Add($"{page.Name}: not one heading");
        if ((await visit.Page.TitleAsync()).StartsWith(" ·", StringComparison.Ordinal))
            wrong.Add($"{page.Name}: no title");

        // The page of the law speaks of the code, and says since when a version governs; nobody acts on that day.
        if (page.Name == "law")
            return wrong;
        days.AddRange(Day().Matches(text).Select(day => day.Value));
        wrong.AddRange(Bare(text).Select(bare => $"{page.Name}: without its weekday: {bare}"));
        wrong.AddRange(ProgramWord().Matches(text).Select(word => $"{page.Name}: a word of the program: {word.Value}").Distinct());
        return wrong;
    }

    private static IEnumerable<string> Bare(string text) => Day().Matches(text)
        .Where(day =>
            day.Groups[2].Value != LocalDatePattern.Iso.Parse(day.Groups[1].Value).Value.ToString("ddd", CultureInfo.InvariantCulture))
        .Select(day => text[Math.Max(0, day.Index - 60)..Math.Min(text.Length, day.Index + 40)].Replace('\n', ' '));

    [GeneratedRegex(@"(?<![\d-])(\d{4}-\d\d-\d\d)(?![\d-])(?: \((\w{3})\))?")]
    private static partial Regex Day();

    [GeneratedRegex(
        @"(?<=[Aa]dd |[Ee]nter )[a-z]+(?:-[a-z]+)+|\b(?:work|claimant|contract|parties)\.[a-zA-Z]+|\b\w+\[\d+\]|\b[a-z]+(?:-[a-z]+)*\.(?:last-day|first-day|next-day|day)\b|\b[a-z]+[a-z]*[A-Z][a-z]+[A-Z]?\w*\b")]
    private static partial Regex ProgramWord();
}
