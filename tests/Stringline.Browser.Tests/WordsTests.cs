using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Text;

namespace Stringline.Browser.Tests;

/// <summary>What every page says, as a person reads it. Weekdays come from NodaTime's calendar.</summary>
public sealed partial class WordsTests(Chromium chromium)
{
    [Fact]
    public async Task Every_day_that_a_page_names_stands_with_its_weekday()
    {
        var bare = new List<string>();
        var named = 0;
        await chromium.OnEveryPage(async (page, visit) =>
        {
            // The page of the law says since when a version governs; nobody acts on that day.
            var text = page.Name == "law" ? "" : await visit.Page.InnerTextAsync("body");
            foreach (Match day in Day().Matches(text))
            {
                named++;
                var weekday = LocalDatePattern.Iso.Parse(day.Groups[1].Value).Value.ToString("ddd", CultureInfo.InvariantCulture);
                if (day.Groups[2].Value != weekday)
                    bare.Add($"{page.Name}: {text[Math.Max(0, day.Index - 60)..Math.Min(text.Length, day.Index + 40)].Replace('\n', ' ')}");
            }
        });
        Assert.True(named > 500, $"Only {named} days were seen.");
        Found.Nothing("days without their weekday", bare);
    }

    [Fact]
    public async Task Every_page_carries_the_caution_a_title_of_its_own_and_one_heading()
    {
        var wrong = new List<string>();
        await chromium.OnEveryPage(async (page, visit) =>
        {
            if (!(await visit.Page.InnerTextAsync("footer")).Contains(Law.Assessment.Caution, StringComparison.Ordinal))
                wrong.Add($"{page.Name}: no caution");
            if (await visit.Page.Locator("h1").CountAsync() != 1)
                wrong.Add($"{page.Name}: not one heading");
            if ((await visit.Page.TitleAsync()).StartsWith(" ·", StringComparison.Ordinal))
                wrong.Add($"{page.Name}: no title");
        });
        Found.Nothing("pages without", wrong);
    }

    [Fact]
    public async Task No_page_shows_a_word_that_is_the_programs_own()
    {
        // Paths of the job file and ids of findings are for programs; a person reads words.
        var wrong = new List<string>();
        await chromium.OnEveryPage(async (page, visit) =>
        {
            if (page.Name != "law")
                wrong.AddRange(ProgramWord().Matches(await visit.Page.InnerTextAsync("body")).Select(word => $"{page.Name}: {word.Value}").Distinct());
        });
        Found.Nothing("words of the program", wrong);
    }

    [GeneratedRegex(@"(?<![\d-])(\d{4}-\d\d-\d\d)(?![\d-])(?: \((\w{3})\))?")]
    private static partial Regex Day();

    [GeneratedRegex(@"\b(?:work|claimant|contract|parties)\.[a-zA-Z]+|\b\w+\[\d+\]|\b[a-z]+(?:-[a-z]+)*\.(?:last-day|first-day|next-day|day)\b|\b[a-z]+[a-z]*[A-Z][a-z]+[A-Z]?\w*\b")]
    private static partial Regex ProgramWord();
}
