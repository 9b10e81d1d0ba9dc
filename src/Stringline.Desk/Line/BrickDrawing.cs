using System.Globalization;
using System.Text.Encodings.Web;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Line;

/// <summary>
/// Draws a waterfall as courses of brick: each step a course laid from where the one before ended; what is taken off is an empty course,
/// and the last one is what is left to demand. Lengths are in units of the picture.
/// </summary>
internal sealed class BrickDrawing : IHtmlContent
{
    private const int Width = 1120;
    private const int Left = 250;
    private const int Right = 150;
    private const int Course = 34;

    private readonly XElement svg;

    private BrickDrawing(Waterfall amount)
    {
        var height = ((amount.Steps.Count + 1) * Course) + 12;
        svg = new XElement(
            "svg", new XAttribute("class", "bricks"), new XAttribute("viewBox", $"0 0 {Width} {height}"), new XAttribute("role", "img"),
            new XAttribute("aria-label", $"From the first step to what is claimed, {(amount.IsUnknown ? "which is not known" : LawText.Money(amount.Demand))}; the table below says the same."),
            Patterns());
        var most = 0m;
        var so = 0m;
        foreach (var step in amount.Steps)
            most = Math.Max(most, so += step.Amount);
        if (most <= 0)
            most = 1m;
        int X(decimal dollars) => Left + (int)(Math.Clamp(dollars, 0m, most) * (Width - Left - Right) / most);

        var y = 6;
        so = 0m;
        foreach (var step in amount.Steps)
        {
            var (from, to) = (X(Math.Min(so, so + step.Amount)), X(Math.Max(so, so + step.Amount)));
            so += step.Amount;
            Row(y, step.Title, step.Amount, from, to, step.Amount < 0 ? "taken" : "laid");
            svg.Add(Line("joint", X(so), y + 4, X(so), y + Course + 8));
            y += Course;
        }

        Row(y, amount.Title, amount.Demand, X(0), X(amount.Demand), "demand", amount.IsUnknown ? "not known" : null);
    }

    /// <summary>The drawing.</summary>
    public static IHtmlContent Of(Waterfall amount) => new LineScroll(new BrickDrawing(amount));

    /// <inheritdoc/>
    public void WriteTo(TextWriter writer, HtmlEncoder encoder) => writer.Write(svg.ToString(SaveOptions.DisableFormatting));

    private void Row(int y, string title, decimal dollars, int from, int to, string kind, string? words = null)
    {
        // A course of nothing is named and not drawn.
        var laid = dollars == 0 ? null : Box("brick " + kind, from, y + 5, Math.Max(2, to - from), Course - 9);
        var marks = laid is null ? null : kind == "taken" ? Hatched(from, y + 5, Math.Max(2, to - from), Course - 9) : Bonds(from, y + 5, to, Course - 9);
        svg.Add(
            new XElement("text", new XAttribute("class", "brick-name end"), new XAttribute("x", Left - 12), new XAttribute("y", y + 22), title),
            laid,
            marks,
            new XElement("text", new XAttribute("class", "brick-money"), new XAttribute("x", to + 8), new XAttribute("y", y + 22), words ?? LawText.Money(dollars)));
    }

    private static XElement Patterns() => new(
        "defs",
        new XElement(
            "pattern", new XAttribute("id", "hatch"), new XAttribute("width", 8), new XAttribute("height", 8), new XAttribute("patternUnits", "userSpaceOnUse"),
            new XAttribute("patternTransform", "rotate(45)"), Line("hatching", 0, 0, 0, 8)));

    private static XElement Hatched(int x, int y, int width, int height)
    {
        var box = Box("band-hatch", x, y, width, height);
        box.Add(new XAttribute("fill", "url(#hatch)"));
        return box;
    }

    // The vertical joints of a course.
    private static XElement Bonds(int from, int y, int to, int height)
    {
        const int brick = 44;
        var path = string.Concat(Enumerable.Range(1, Math.Max(0, (to - from - 1) / brick)).Select(i => string.Create(CultureInfo.InvariantCulture, $"M{from + (i * brick)} {y}v{height}")));
        return new XElement("path", new XAttribute("class", "bonds"), new XAttribute("d", path));
    }

    private static XElement Box(string kind, int x, int y, int width, int height) => new(
        "rect", new XAttribute("class", kind), new XAttribute("x", x), new XAttribute("y", y), new XAttribute("width", width), new XAttribute("height", height));

    private static XElement Line(string kind, int x1, int y1, int x2, int y2) => new(
        "line", new XAttribute("class", kind), new XAttribute("x1", x1), new XAttribute("y1", y1), new XAttribute("x2", x2), new XAttribute("y2", y2));

    private sealed class LineScroll(BrickDrawing drawing) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            writer.Write("<div class=\"line-scroll\" tabindex=\"0\" role=\"region\" aria-label=\"The amount, drawn as courses of brick; scrolls sideways on narrow screens\">");
            drawing.WriteTo(writer, encoder);
            writer.Write("</div>");
        }
    }
}
