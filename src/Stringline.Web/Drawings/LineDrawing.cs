using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Web.Html;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Drawings;

/// <summary>
/// Draws a line as SVG: the cord, pegs for facts above it, bands and days of the law below it, today as a plumb line. Lengths are
/// in units of the picture, which is <see cref="Width"/> wide.
/// </summary>
internal sealed class LineDrawing
{
    private const int Width = 1120;
    private const int Margin = 24;
    private const int LabelHeight = 19;
    private const int Levels = 6;
    private const int LaneHeight = 46;
    private const decimal LetterWidth = 7.4m;

    private readonly LinePlan plan;
    private readonly XElement svg;
    private readonly int height;
    private readonly int cord;

    private LineDrawing(LinePlan plan)
    {
        this.plan = plan;
        var places = Places(plan, Inside);
        cord = 52 + ((places.Select(place => place.Level).DefaultIfEmpty(0).Max() + 1) * LabelHeight);
        height = cord + 34 + (plan.Lanes.Count * LaneHeight) + 40;
        svg = Svg.Picture(null, Width, height, "group", $"The line from {LawText.Day(plan.From)} to {LawText.Day(plan.To)}");
        svg.Add(Svg.Hatching("hatch", "hatching"));
        Months();
        Today();
        svg.Add(Svg.Line("cord", Margin - 12, cord, Width - Margin + 12, cord));
        places.ForEach(Draw);
        Lanes();
    }

    /// <summary>The drawing.</summary>
    public static IHtmlContent Of(LinePlan plan) => Svg.OnPage(new LineDrawing(plan).svg);

    private int X(LocalDate day) =>
        Margin + (int)((long)Period.DaysBetween(plan.From, day) * (Width - (2 * Margin)) / Math.Max(1, plan.Span - 1));

    private int Inside(LocalDate day) => Math.Clamp(X(day), Margin - 12, Width - Margin + 12);

    private void Months()
    {
        var months = (plan.Span / 30) + 1;
        var step = months switch { <= 14 => 1, <= 40 => 3, <= 80 => 6, _ => 12 };
        for (var month = new LocalDate(plan.From.Year, plan.From.Month, 1); month <= plan.To; month = month.PlusMonths(1))
        {
            if (month < plan.From || (month.Month - 1) % step != 0)
                continue;
            var x = X(month);
            svg.Add(Svg.Line("month", x, 22, x, height - 26));
            if (x < Width - 60)
                svg.Add(Svg.Text("month-name", x + 4, 18, month.ToString("MMM yyyy", CultureInfo.InvariantCulture)));
        }
    }

    private void Today()
    {
        if (plan.AsOf < plan.From || plan.AsOf > plan.To)
            return;
        var x = X(plan.AsOf);
        var bob = height - 26;
        svg.Add(
            Svg.Line("plumb", x, 24, x, bob - 14),
            Svg.Path("bob", $"M{x - 7} {bob - 14}h14l-7 20z"),
            x > Width - 180
                ? Svg.Text("plumb-name end", x - 12, bob + 4, (plan.IsKnown ? "as known " : "today ") + LawText.Day(plan.AsOf))
                : Svg.Text("plumb-name", x + 12, bob + 4, (plan.IsKnown ? "as known " : "today ") + LawText.Day(plan.AsOf)));
    }

    private sealed record Place(Peg Peg, int X, string Words, int Level);

    // From the last peg back: a label stands higher than those of the pegs it reaches over, so that no peg runs through a label. A peg for
    // which there is no room has none; its title still says what it is.
    private static List<Place> Places(LinePlan plan, Func<LocalDate, int> at)
    {
        var places = new List<Place>();
        for (var i = plan.Pegs.Count - 1; i >= 0; i--)
        {
            var peg = plan.Pegs[i];
            var words = LinePlan.Words(peg);
            var (x, end) = (at(peg.First), at(peg.First) + (int)(words.Length * LetterWidth) + 12);
            var level = end > Width ? -1 : places.Where(later => later.X < end).Select(later => later.Level + 1).DefaultIfEmpty(0).Max();
            places.Add(new Place(peg, x, words, level < Levels ? level : -1));
        }

        places.Reverse();
        return places;
    }

    private void Draw(Place place)
    {
        var (peg, x, words, level) = place;
        var content = new List<object>();
        if (peg.Last > peg.First)
            content.Add(Svg.Box(peg.InDoubt ? "spell doubt" : "spell", x, cord - 4, Math.Max(3, Inside(peg.Last) - x), 8));
        var top = level < 0 ? cord - 16 : cord - 22 - (level * LabelHeight);
        content.Add(Svg.Line("peg", x, top, x, cord + 9));
        content.Add(Svg.Box(peg.Entries.Count > 1 ? "peg-head many" : "peg-head", x - 4, cord - 5, 8, 10));
        if (level >= 0)
            content.Add(Svg.Text("peg-name", x + 5, top + 9, words));
        var told = (peg.Entries.Count > 1 ? words + ":\n" : "") + string.Join("\n", peg.Entries.Take(12).Select(EntryWords.Short))
            + (peg.Entries.Count > 12 ? $"\nand {peg.Entries.Count - 12} more" : "");
        svg.Add(Svg.Link($"#entry-{peg.Entries[0].Index}", told, content));
    }

    private void Lanes()
    {
        var y = cord + 34;
        foreach (var lane in plan.Lanes)
        {
            var finding = lane.Finding;
            var from = Inside(lane.From);
            var to = Inside(lane.To ?? plan.To.PlusDays(30));
            var content = new List<object>();
            if (to > from)
            {
                content.Add(Svg.Box("band", from, y + 20, to - from, 14));
                content.Add(Svg.HatchedBox("band-hatch", "hatch", from, y + 20, to - from, 14));
            }
            else
            {
                content.Add(Svg.Line("day", from, y + 18, from, y + 36));
            }

            if (finding.Standing != Standing.Lost && finding.ActBy is { } actBy && actBy >= plan.From && actBy <= plan.To)
            {
                var x = X(actBy);
                content.Add(Svg.Path("act-by", $"M{x} {y + 38}l-6 -10h12z"));
                content.Add(Svg.Line("act-by-line", x, cord + 4, x, y + 28));
            }

            var words = Words(lane);
            content.Add(Svg.Text("lane-name", Math.Max(6, Math.Min(from, Width - 6 - (int)(words.Length * LetterWidth))), y + 14, words));
            svg.Add(Svg.Link("#why-" + WhyTree.Anchor(finding.Id), Told(lane), content));
            y += LaneHeight;
        }
    }

    private static string Words(Lane lane)
    {
        var finding = lane.Finding;
        var act = finding.Standing != Standing.Lost && finding.ActBy is { } day ? $", act by {LawText.Day(day)}" : "";
        var ends = finding.Band is { Latest: { } latest, Earliest: var earliest } && latest.Day != earliest.Day
            ? $" ({PlainWords.Of(earliest.Words)} … {PlainWords.Of(latest.Words)})" : "";
        return $"{finding.Title}: {finding.Standing.Word()}{act}{ends}";
    }

    private static string Told(Lane lane) => string.Join(
        "\n",
        lane.Finding.Readings.Select(reading =>
            $"{PlainWords.Of(reading.Words)}: {(lane.Finding.IsDeadline ? "last day " : "")}{LawText.Day(reading.Day)}")
            .Prepend(Words(lane))
            .Append(lane.To is null ? "no end is known yet" : "")
            .Where(text => text.Length > 0));
}
