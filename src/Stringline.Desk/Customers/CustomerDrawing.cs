using System.Globalization;
using System.Text.Encodings.Web;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Customers;

/// <summary>
/// Draws a customer's weeks as piers of brick: held below, what can still be secured on it, the unsecured hatched on top. A plumb line
/// parts what was known from what will be if nothing is done. Lengths are in units of the picture.
/// </summary>
internal sealed class CustomerDrawing : IHtmlContent
{
    private const int Width = 1120;
    private const int Height = 340;
    private const int Left = 110;
    private const int Right = 14;
    private const int Top = 34;
    private const int Ground = Height - 40;

    private readonly XElement svg;

    private CustomerDrawing(CustomerWeeks weeks)
    {
        List<Courses> all = [.. weeks.Past, .. weeks.Ahead];
        var most = Math.Max(1m, all.Max(course => course.Owed));
        var step = (Width - Left - Right) / all.Count;
        var now = weeks.Ahead[0];
        var last = weeks.Ahead[^1];
        svg = new XElement(
            "svg", new XAttribute("class", "weeks"), new XAttribute("viewBox", $"0 0 {Width} {Height}"), new XAttribute("role", "img"),
            new XAttribute("aria-label", $"Dollars by week. Today {LawText.Money(now.Held)} is held, {LawText.Money(now.MaySecure)} can still be secured and {LawText.Money(now.Unsecured)} is unsecured; if nothing is done, by {LawText.IsoDay(last.Day)} {LawText.Money(last.Unsecured)} is unsecured. The table below says the same."),
            new XElement("defs", new XElement(
                "pattern", new XAttribute("id", "bare"), new XAttribute("width", 8), new XAttribute("height", 8), new XAttribute("patternUnits", "userSpaceOnUse"), new XAttribute("patternTransform", "rotate(45)"),
                Line("hatching bare", 0, 0, 0, 8))));
        foreach (var part in (decimal[])[0m, most / 2, most])
        {
            var y = Y(part, most);
            svg.Add(Line("joint", Left - 6, y, Width - Right, y));
            svg.Add(Text("brick-money end", Left - 12, y + 5, LawText.Money(decimal.Round(part, 0)).Replace(".00", "", StringComparison.Ordinal)));
        }

        var (month, named) = (0, int.MinValue);
        for (var i = 0; i < all.Count; i++)
        {
            var x = Left + (i * step);
            Pier(all[i], x, step, most);
            if (all[i].Day.Month != month && x < Width - 60 && (named == int.MinValue || x - named > 84))
            {
                (month, named) = (all[i].Day.Month, x);
                svg.Add(Text("month-name", x, Ground + 18, all[i].Day.ToString(month == 1 || i == 0 ? "MMM uuuu" : "MMM", CultureInfo.InvariantCulture)));
            }
        }

        var plumb = Left + (weeks.Past.Count * step) - 1;
        svg.Add(Line("plumb", plumb, Top - 14, plumb, Ground + 4));
        svg.Add(Text("plumb-name", plumb + 6, Top - 8, "today; beyond it: if nothing is done"));
    }

    /// <summary>The drawing.</summary>
    public static IHtmlContent Of(CustomerWeeks weeks) => new CustomerDrawing(weeks);

    /// <inheritdoc/>
    public void WriteTo(TextWriter writer, HtmlEncoder encoder)
    {
        writer.Write("<div class=\"line-scroll\" tabindex=\"0\" role=\"region\" aria-label=\"Dollars by week; scrolls sideways on narrow screens\">");
        writer.Write(svg.ToString(SaveOptions.DisableFormatting));
        writer.Write("</div>");
    }

    private void Pier(Courses course, int x, int step, decimal most)
    {
        var low = 0m;
        foreach (var (dollars, kind) in ((decimal, string)[])[(course.Held, "held"), (course.MaySecure, "may"), (course.Unsecured, "bare")])
        {
            var (from, to) = (Y(low, most), Y(low + dollars, most));
            low += dollars;
            if (from == to)
                continue;
            var box = new XElement("rect", new XAttribute("class", "pier " + kind), new XAttribute("x", x), new XAttribute("y", to), new XAttribute("width", step - 4), new XAttribute("height", from - to));
            if (kind == "bare")
                box.Add(new XAttribute("fill", "url(#bare)"));
            box.Add(new XElement("title", $"{LawText.Day(course.Day)}: {LawText.Money(dollars)} {Words(kind)}"));
            svg.Add(box);
        }
    }

    private static string Words(string kind) => kind switch
    {
        "held" => "held",
        "may" => "can still be secured",
        _ => "unsecured",
    };

    private static int Y(decimal dollars, decimal most) => Ground - (int)(dollars * (Ground - Top) / most);

    private static XElement Text(string kind, int x, int y, string text) =>
        new("text", new XAttribute("class", kind), new XAttribute("x", x), new XAttribute("y", y), text);

    private static XElement Line(string kind, int x1, int y1, int x2, int y2) => new(
        "line", new XAttribute("class", kind), new XAttribute("x1", x1), new XAttribute("y1", y1), new XAttribute("x2", x2), new XAttribute("y2", y2));
}
