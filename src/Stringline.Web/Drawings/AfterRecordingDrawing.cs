using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Web.Html;
using Stringline.Law.Counting;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Drawings;

/// <summary>
/// Draws the time after recording: the cord of 90 days from the day of recording with a knot every ten, what happened above it, the last
/// days of the law below.
/// </summary>
internal sealed class AfterRecordingDrawing
{
    private const int Width = 1120;
    private const int Margin = 40;
    private const int Row = 24;
    private const int Knot = 10;
    private const decimal LetterWidth = 7.6m;

    private readonly XElement svg;
    private readonly LocalDate from;
    private readonly int days;

    private AfterRecordingDrawing(AfterRecording after, LocalDate recorded, LocalDate today, long job)
    {
        var lastDay = after.Ends.FirstOrDefault(end => end.Finding.Id == "enforcement.last-day").Day;
        var end = lastDay == default ? NumberTable.Shipped.LastDay(Number.SueOnClaim, recorded) : lastDay;
        var shown = after.Ends.Where(other => other.Finding.Id != "prosecution.last-day").Select(other => other.Day)
            .Concat(after.Marks.Select(mark => mark.Day)).Append(end);
        var latest = shown.Max();
        from = recorded.PlusDays(-3);
        days = Period.DaysBetween(from, LocalDate.Max(latest, today <= latest.PlusDays(60) ? today : latest)) + 12;
        var marks = after.Marks.Select((mark, i) => (mark.Day, mark.Words, mark.Entry, Level: i % 3)).ToList();
        var cord = 40 + (3 * Row);
        var ends = after.Ends.Where(other => Period.DaysBetween(from, other.Day) <= days).OrderBy(other => other.Day).ToList();
        var height = cord + 40 + ((ends.Count + 1) * Row) + 14;
        svg = Svg.Picture(null, Width, height, "group",
            $"From recording on {LawText.Day(recorded)} to the last day to sue, {LawText.Day(end)}");
        svg.Add(
            Svg.Line("month", X(recorded), cord, Width - Margin, cord),
            Svg.Line("cord", X(recorded), cord, X(end), cord));
        for (var count = Knot; recorded.PlusDays(count) <= end; count += Knot)
        {
            var at = X(recorded.PlusDays(count));
            svg.Add(Svg.Line("peg", at, cord - (count % 30 == 0 ? 8 : 4), at, cord + (count % 30 == 0 ? 8 : 4)));
            if (count % 30 == 0)
                svg.Add(Text("month-name", at + 4, cord + 19, count.ToString(CultureInfo.InvariantCulture) + " days", at));
        }

        foreach (var (day, words, entry, level) in marks)
        {
            var at = X(day);
            var top = cord - 22 - (level * Row);
            var told = $"{words}, {LawText.Day(day)}";
            List<object> drawn =
            [
                Svg.Line("peg", at, top, at, cord + 6), Svg.Box("peg-head", at - 4, cord - 5, 8, 10),
                    Text("peg-name", at + 5, top + 9, told, at),
            ];
            svg.Add(entry is null ? drawn : Svg.Link($"/job/{job}#entry-{entry.Index}", told, drawn));
        }

        var y = cord + 44;
        foreach (var (day, finding) in ends)
        {
            var at = X(day);
            var words = $"{finding.Title}: {finding.Standing.Word()}, last day {LawText.Day(day)}";
            svg.Add(Svg.Link("#after-" + WhyTree.Anchor(finding.Id), words,
            [
                Svg.Line("act-by-line", at, cord, at, y), Svg.Line("day", at, y - 9, at, y + 5),
                    Text("lane-name", at + 8, y + 3, words, at),
            ]));
            y += Row;
        }

        if (today >= from && Period.DaysBetween(from, today) <= days)
        {
            var at = X(today);
            svg.Add(
                Svg.Line("plumb", at, 18, at, y - 8), Svg.Path("bob", $"M{at - 7} {y - 8}h14l-7 18z"),
                Text("plumb-name", at + 10, y + 4, "today " + LawText.Day(today), at));
        }
    }

    /// <summary>The drawing; nothing where no claim is recorded on a known day.</summary>
    public static IHtmlContent? Of(AfterRecording after, LocalDate today, long job) =>
        after.Recorded is { } recorded ? Svg.OnPage(new AfterRecordingDrawing(after, recorded, today, job).svg) : null;

    private int X(LocalDate day) => Margin + (Period.DaysBetween(from, day) * (Width - (2 * Margin)) / Math.Max(1, days));

    // Words that would run over the right edge stand to the left of their place.
    private static XElement Text(string kind, int x, int y, string text, int place)
    {
        var fits = x + (int)(text.Length * LetterWidth) <= Width;
        return Svg.Text(fits ? kind : kind + " end", fits ? x : place - (x - place), y, text);
    }
}
