using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;
using Stringline.Web.Html;
using Stringline.Law.Counting;
using Stringline.Law.LienableAmount;

namespace Stringline.Web.Drawings;

/// <summary>
/// Draws a waterfall as courses of brick: each step a course laid from where the one before ended; what is taken off is an empty course,
/// and the last one is what is left to demand. Lengths are in units of the picture.
/// </summary>
internal sealed class BrickDrawing
{
    private const int Width = 1120;
    private const int Left = 250;
    private const int Right = 150;
    private const int Course = 34;

    private readonly XElement svg;

    private BrickDrawing(Waterfall amount)
    {
        var height = ((amount.Steps.Count + 1) * Course) + 12;
        svg = Svg.Picture("bricks", Width, height, "img", $"From the first step to what is claimed, "
            + $"{(amount.IsUnknown ? "which is not known" : LawText.Money(amount.Demand))}; the table below says the same.");
        svg.Add(Svg.Hatching("hatch", "hatching"));
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
            svg.Add(Svg.Line("joint", X(so), y + 4, X(so), y + Course + 8));
            y += Course;
        }

        Row(y, amount.Title, amount.Demand, X(0), X(amount.Demand), "demand", amount.IsUnknown ? "not known" : null);
    }

    /// <summary>The drawing.</summary>
    public static IHtmlContent Of(Waterfall amount) =>
        Svg.OnPage(new BrickDrawing(amount).svg, "The amount, drawn as courses of brick; scrolls sideways on narrow screens");

    private void Row(int y, string title, decimal dollars, int from, int to, string kind, string? words = null)
    {
        svg.Add(Svg.Text("brick-name end", Left - 12, y + 22, title));
        // A course of nothing is named and not drawn.
        if (dollars != 0)
        {
            var width = Math.Max(2, to - from);
            svg.Add(Svg.Box("brick " + kind, from, y + 5, width, Course - 9));
            var marks = kind == "taken" ? Svg.Box("band-hatch", from, y + 5, width, Course - 9) : Bonds(from, y + 5, to, Course - 9);
            if (kind == "taken")
                marks.Add(Svg.Fill("hatch"));
            svg.Add(marks);
        }

        svg.Add(Svg.Text("brick-money", to + 8, y + 22, words ?? LawText.Money(dollars)));
    }

    // The vertical joints of a course.
    private static XElement Bonds(int from, int y, int to, int height)
    {
        const int brick = 44;
        var path = string.Concat(Enumerable.Range(1, Math.Max(0, (to - from - 1) / brick))
            .Select(i => string.Create(CultureInfo.InvariantCulture, $"M{from + (i * brick)} {y}v{height}")));
        return Svg.Path("bonds", path);
    }
}
