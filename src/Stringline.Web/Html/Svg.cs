using System.Text.Encodings.Web;
using System.Xml.Linq;
using Microsoft.AspNetCore.Html;

namespace Stringline.Web.Html;

/// <summary>
/// The marks that the desk's drawings are made of; how each looks is said by its class, in the style sheet. Text is put in as text, so
/// that a name cannot become markup. Lengths are in units of the picture.
/// </summary>
internal static class Svg
{
    /// <summary>An empty picture.</summary>
    /// <param name="kind">Its class; null for none.</param>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="role"><c>img</c> where it is read as one picture, <c>group</c> where its marks are links.</param>
    /// <param name="label">What it shows, for those who hear it.</param>
    public static XElement Picture(string? kind, int width, int height, string role, string label) => new(
        "svg", kind is null ? null : Kind(kind), new XAttribute("viewBox", $"0 0 {width} {height}"), new XAttribute("role", role),
        new XAttribute("aria-label", label));

    /// <summary>A straight line.</summary>
    public static XElement Line(string kind, int x1, int y1, int x2, int y2) => new(
        "line", Kind(kind), new XAttribute("x1", x1), new XAttribute("y1", y1), new XAttribute("x2", x2), new XAttribute("y2", y2));

    /// <summary>Words that begin at a place, or end there where the class says so.</summary>
    public static XElement Text(string kind, int x, int y, string words) =>
        new("text", Kind(kind), new XAttribute("x", x), new XAttribute("y", y), words);

    /// <summary>A rectangle from its upper left corner.</summary>
    public static XElement Box(string kind, int x, int y, int width, int height) => new("rect", Kind(kind), Place(x, y, width, height));

    /// <summary>The same, filled with a hatching.</summary>
    public static XElement HatchedBox(string kind, string hatching, int x, int y, int width, int height) =>
        new("rect", Kind(kind), Fill(hatching), Place(x, y, width, height));

    /// <summary>Fills a mark with a hatching.</summary>
    public static XAttribute Fill(string hatching) => new("fill", $"url(#{hatching})");

    /// <summary>An outline.</summary>
    public static XElement Path(string kind, string outline) => new("path", Kind(kind), new XAttribute("d", outline));

    /// <summary>Marks that lead to a place, with what is told of them when they are pointed at or heard.</summary>
    public static XElement Link(string to, string told, IEnumerable<object> marks) => new(
        "a", new XAttribute("href", to),
        new XAttribute("aria-label", told.Replace(":\n", ": ", StringComparison.Ordinal).Replace("\n", "; ", StringComparison.Ordinal)),
        new XElement("title", told), marks);

    /// <summary>A hatching, by the name that boxes ask for: it is seen on a black and white print too, where a tint is not.</summary>
    public static XElement Hatching(string name, string kind) => new(
        "defs", new XElement(
            "pattern", new XAttribute("id", name), new XAttribute("width", 8), new XAttribute("height", 8),
            new XAttribute("patternUnits", "userSpaceOnUse"), new XAttribute("patternTransform", "rotate(45)"), Line(kind, 0, 0, 0, 8)));

    /// <summary>The picture as it goes into a page.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="scrolls">What a frame is called in which it scrolls sideways on a narrow screen; null for no frame.</param>
    public static IHtmlContent OnPage(XElement picture, string? scrolls = null) => new Drawn(picture, scrolls);

    private static XAttribute[] Place(int x, int y, int width, int height) =>
        [new("x", x), new("y", y), new("width", width), new("height", height)];

    private static XAttribute Kind(string kind) => new("class", kind);

    private sealed class Drawn(XElement picture, string? scrolls) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            if (scrolls is not null)
                writer.Write($"<div class=\"line-scroll\" tabindex=\"0\" role=\"region\" aria-label=\"{scrolls}\">");
            writer.Write(picture.ToString(SaveOptions.DisableFormatting));
            if (scrolls is not null)
                writer.Write("</div>");
        }
    }
}
