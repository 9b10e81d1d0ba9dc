using Stringline.Office.Customers;
using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Web.Html;
using Stringline.Law.Counting;

namespace Stringline.Web.Drawings;

/// <summary>
/// Draws a customer's weeks as piers of brick: held below, what can still be secured on it, the unsecured hatched on top. A plumb line
/// parts what was known from what will be if nothing is done. Lengths are in units of the picture.
/// </summary>
internal sealed class CustomerDrawing
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
        List<WeekTotals> all = [.. weeks.Past, .. weeks.Ahead];
        var most = Math.Max(1m, all.Max(course => course.Owed));
        var step = (Width - Left - Right) / all.Count;
        var now = weeks.Ahead[0];
        var last = weeks.Ahead[^1];
        svg = Svg.Picture("weeks", Width, Height, "img", $"Dollars by week. Today {LawText.Money(now.Held)} is held, "
            + $"{LawText.Money(now.MaySecure)} can still be secured and {LawText.Money(now.Unsecured)} is unsecured; if nothing is done, "
            + $"by {LawText.IsoDay(last.Day)} "
            + $"{LawText.Money(last.Unsecured)} is unsecured. The table below says the same.");
        svg.Add(Svg.Hatching("bare", "hatching bare"));
        foreach (var part in (decimal[])[0m, most / 2, most])
        {
            var y = Y(part, most);
            svg.Add(Svg.Line("joint", Left - 6, y, Width - Right, y));
            var dollars = LawText.Money(decimal.Round(part, 0)).Replace(".00", "", StringComparison.Ordinal);
            svg.Add(Svg.Text("brick-money end", Left - 12, y + 5, dollars));
        }

        var (month, named) = (0, int.MinValue);
        for (var i = 0; i < all.Count; i++)
        {
            var x = Left + (i * step);
            Pier(all[i], x, step, most);
            if (all[i].Day.Month != month && x < Width - 60 && (named == int.MinValue || x - named > 84))
            {
                (month, named) = (all[i].Day.Month, x);
                var name = all[i].Day.ToString(month == 1 || i == 0 ? "MMM uuuu" : "MMM", CultureInfo.InvariantCulture);
                svg.Add(Svg.Text("month-name", x, Ground + 18, name));
            }
        }

        var plumb = Left + (weeks.Past.Count * step) - 1;
        svg.Add(Svg.Line("plumb", plumb, Top - 14, plumb, Ground + 4));
        svg.Add(Svg.Text("plumb-name", plumb + 6, Top - 8, "today; beyond it: if nothing is done"));
    }

    /// <summary>The drawing.</summary>
    public static IHtmlContent Of(CustomerWeeks weeks) =>
        Svg.OnPage(new CustomerDrawing(weeks).svg, "Dollars by week; scrolls sideways on narrow screens");

    private void Pier(WeekTotals course, int x, int step, decimal most)
    {
        var low = 0m;
        foreach (var (dollars, kind) in ((decimal, string)[])[(course.Held, "held"), (course.MaySecure, "may"), (course.Unsecured, "bare")])
        {
            var (from, to) = (Y(low, most), Y(low + dollars, most));
            low += dollars;
            if (from == to)
                continue;
            var box = Svg.Box("pier " + kind, x, to, step - 4, from - to);
            if (kind == "bare")
                box.Add(Svg.Fill("bare"));
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
}
