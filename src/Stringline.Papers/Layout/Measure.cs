using PdfSharp.Drawing;

namespace Stringline.Papers.Layout;

/// <summary>Widths of text in points, and the breaking of text into lines. One for each paper; not shared between threads.</summary>
internal sealed class Measure
{
    private const int MostKnown = 20_000;

    private readonly XGraphics graphics;
    private readonly Dictionary<TypeStyle, XFont> fonts = [];
    private readonly Dictionary<TypeStyle, Dictionary<string, double>> widths = [];

    /// <summary>Makes a measure.</summary>
    public Measure()
    {
        Fonts.Open();
        graphics = XGraphics.CreateMeasureContext(new XSize(Sheet.Width, Sheet.Height), XGraphicsUnit.Point, XPageDirection.Downwards);
    }

    /// <summary>The face at its size.</summary>
    public XFont Font(TypeStyle style)
    {
        if (!fonts.TryGetValue(style, out var font))
            fonts[style] = font = Fonts.Font(style);
        return font;
    }

    /// <summary>Width of the text set on one line.</summary>
    public double Width(string text, TypeStyle style)
    {
        if (!widths.TryGetValue(style, out var known))
            widths[style] = known = new Dictionary<string, double>(StringComparer.Ordinal);
        if (!known.TryGetValue(text, out var width))
        {
            // A press that prints all day meets ever new names; the common words are soon known again.
            if (known.Count >= MostKnown)
                known.Clear();
            known[text] = width = graphics.MeasureString(text, Font(style)).Width;
        }

        return width;
    }

    /// <summary>
    /// The text in lines no wider than <paramref name="width"/>. It breaks at spaces and at the text's own line ends;
    /// a word wider than the line is broken where the line is full. No letter is lost or added, save spaces at a break; see
    /// <see cref="Typography"/> for how it is set.
    /// </summary>
    public IReadOnlyList<string> Lines(string text, TypeStyle style, double width)
    {
        var lines = new List<string>();
        foreach (var paragraph in Typography.Of(text, style.Face is Face.Sans or Face.SansBold).ReplaceLineEndings("\n").Split('\n'))
            Break(paragraph, style, width, lines);
        return lines;
    }

    private void Break(string paragraph, TypeStyle style, double width, List<string> lines)
    {
        var space = Width(" ", style);
        var line = "";
        var used = 0.0;
        foreach (var word in Words(paragraph).SelectMany(w => Fitting(w, style, width)))
        {
            var wide = Width(word, style);
            if (line.Length > 0 && used + space + wide > width)
            {
                lines.Add(line);
                line = "";
            }

            used = line.Length == 0 ? wide : used + space + wide;
            line = line.Length == 0 ? word : line + " " + word;
        }

        lines.Add(line);
    }

    /// <summary>The words; those that no line parts are one.</summary>
    private static IEnumerable<string> Words(string paragraph)
    {
        var held = "";
        var words = paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; i++)
        {
            var word = words[i].Replace(Unbroken.Space, ' ');
            if (i + 1 < words.Length && Unbroken.Are(word, words[i + 1]))
            {
                held += word + " ";
                continue;
            }

            yield return held + word;
            held = "";
        }
    }

    // Words that are one are parted before a word is cut.
    private IEnumerable<string> Fitting(string word, TypeStyle style, double width) =>
        Width(word, style) <= width ? [word] : word.Split(' ').SelectMany(w => Pieces(w, style, width));

    private IEnumerable<string> Pieces(string word, TypeStyle style, double width)
    {
        while (Width(word, style) > width)
        {
            var parts = StringInfo.ParseCombiningCharacters(word);
            var fit = 1;
            while (fit < parts.Length - 1 && Width(word[..parts[fit + 1]], style) <= width)
                fit++;
            if (parts.Length < 2)
                break;
            yield return word[..parts[fit]];
            word = word[parts[fit]..];
        }

        yield return word;
    }
}
