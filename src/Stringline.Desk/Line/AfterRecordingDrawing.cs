using System.Globalization;
using System.Text.Encodings.Web;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Desk.Web.Html;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Line;

/// <summary>
/// Draws the time after recording: the cord of 90 days from the day of recording with a knot every ten, what happened above it, the last
/// days of the law below. Text is put in as text, so that a name cannot become markup.
/// </summary>
internal sealed class AfterRecordingDrawing : IHtmlContent
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
        var shown = after.Ends.Where(other => other.Finding.Id != "prosecution.last-day").Select(other => other.Day).Concat(after.Marks.Select(mark => mark.Day)).Append(end);
        var latest = shown.Max();
        from = recorded.PlusDays(-3);
        days = Period.DaysBetween(from, LocalDate.Max(latest, today <= latest.PlusDays(60) ? today : latest)) + 12;
        var marks = after.Marks.Select((mark, i) => (mark.Day, mark.Words, mark.Entry, Level: i % 3)).ToList();
        var cord = 40 + (3 * Row);
        var ends = after.Ends.Where(other => Period.DaysBetween(from, other.Day) <= days).OrderBy(other => other.Day).ToList();
        var height = cord + 40 + ((ends.Count + 1) * Row) + 14;
        svg = new XElement(
            "svg",
            new XAttribute("viewBox", $"0 0 {Width} {height}"),
            new XAttribute("role", "group"),
            new XAttribute("aria-label", $"From recording on {LawText.Day(recorded)} to the last day to sue, {LawText.Day(end)}"),
            Line("month", X(recorded), cord, Width - Margin, cord),
            Line("cord", X(recorded), cord, X(end), cord));
        for (var count = Knot; recorded.PlusDays(count) <= end; count += Knot)
        {
            var at = X(recorded.PlusDays(count));
            svg.Add(Line("peg", at, cord - (count % 30 == 0 ? 8 : 4), at, cord + (count % 30 == 0 ? 8 : 4)));
            if (count % 30 == 0)
                svg.Add(Text("month-name", at + 4, cord + 19, count.ToString(CultureInfo.InvariantCulture) + " days", at));
        }

        foreach (var (day, words, entry, level) in marks)
        {
            var at = X(day);
            var top = cord - 22 - (level * Row);
            List<object> drawn = [Line("peg", at, top, at, cord + 6), Box(at, cord), Text("peg-name", at + 5, top + 9, $"{words}, {LawText.Day(day)}", at)];
            svg.Add(entry is null ? drawn : Link($"/job/{job}#entry-{entry.Index}", words + ", " + LawText.Day(day), drawn));
        }

        var y = cord + 44;
        foreach (var (day, finding) in ends)
        {
            var at = X(day);
            var words = $"{finding.Title}: {finding.Standing.Word()}, last day {LawText.Day(day)}";
            svg.Add(Link("#after-" + WhyTree.Anchor(finding.Id), words, [Line("act-by-line", at, cord, at, y), Line("day", at, y - 9, at, y + 5), Text("lane-name", at + 8, y + 3, words, at)]));
            y += Row;
        }

        if (today >= from && Period.DaysBetween(from, today) <= days)
        {
            var at = X(today);
            svg.Add(Line("plumb", at, 18, at, y - 8), new XElement("path", new XAttribute("class", "bob"), new XAttribute("d", $"M{at - 7} {y - 8}h14l-7 18z")), Text("plumb-name", at + 10, y + 4, "today " + LawText.Day(today), at));
        }
    }

    /// <summary>The drawing; nothing where no claim is recorded on a known day.</summary>
    public static IHtmlContent? Of(AfterRecording after, LocalDate today, long job) => after.Recorded is { } recorded ? new AfterRecordingDrawing(after, recorded, today, job) : null;

    /// <inheritdoc/>
    public void WriteTo(TextWriter writer, HtmlEncoder encoder) => writer.Write(svg.ToString(SaveOptions.DisableFormatting));

    private int X(LocalDate day) => Margin + (Period.DaysBetween(from, day) * (Width - (2 * Margin)) / Math.Max(1, days));

    private static XElement Link(string to, string told, List<object> content) =>
        new("a", new XAttribute("href", to), new XAttribute("aria-label", told), new XElement("title", told), content);

    private static XElement Line(string kind, int x1, int y1, int x2, int y2) => new(
        "line", new XAttribute("class", kind), new XAttribute("x1", x1), new XAttribute("y1", y1), new XAttribute("x2", x2), new XAttribute("y2", y2));

    private static XElement Box(int x, int cord) => new(
        "rect", new XAttribute("class", "peg-head"), new XAttribute("x", x - 4), new XAttribute("y", cord - 5), new XAttribute("width", 8), new XAttribute("height", 10));

    // Words that would run over the right edge stand to the left of their place.
    private static XElement Text(string kind, int x, int y, string text, int place)
    {
        var fits = x + (int)(text.Length * LetterWidth) <= Width;
        return new("text", new XAttribute("class", fits ? kind : kind + " end"), new XAttribute("x", fits ? x : place - (x - place)), new XAttribute("y", y), text);
    }
}
