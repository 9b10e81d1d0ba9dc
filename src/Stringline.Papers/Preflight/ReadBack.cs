using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Tokens;

namespace Stringline.Papers.Preflight;

/// <summary>A paper as PdfPig reads it, which is not the library that wrote it.</summary>
internal sealed class ReadBack
{
    private ReadBack(IReadOnlyList<ReadPage> pages, bool isLocked)
    {
        (Pages, IsLocked) = (pages, isLocked);
        Body = [.. pages.SelectMany(p => p.Words).Where(w => w.Baseline < Layout.Sheet.FootBaseline - 8)];
    }

    /// <summary>Whether the file is encrypted, so that a reader may be told not to print it.</summary>
    public bool IsLocked { get; }

    /// <summary>The pages.</summary>
    public IReadOnlyList<ReadPage> Pages { get; }

    /// <summary>Reads a paper strictly.</summary>
    /// <exception cref="PdfDocumentFormatException">The bytes are no sound PDF.</exception>
    public static ReadBack Of(ReadOnlyMemory<byte> bytes) => Of(bytes.ToArray());

    /// <summary>The same.</summary>
    public static ReadBack Of(byte[] bytes)
    {
        using var document = PdfDocument.Open(bytes, new ParsingOptions { UseLenientParsing = false });
        return new ReadBack([.. document.GetPages().Select(Read)], document.IsEncrypted);
    }

    /// <summary>The text of the pages without their running feet, white space made single.</summary>
    public string Text => string.Join(' ', Body.Select(w => w.Text));

    /// <summary>The words of all pages, running feet and the word DRAFT left out.</summary>
    public IReadOnlyList<ReadWord> Body { get; }

    /// <summary>
    /// The text column by column: what stands under the same left edge, over all pages, feet left out and white space dropped.
    /// A value beside a label, or in a table's cell, is whole here though the lines of a page mix it with its neighbours.
    /// </summary>
    public string Columns()
    {
        var columns = new Dictionary<int, System.Text.StringBuilder>();
        foreach (var line in Pages.SelectMany(p => p.Lines).Where(l => l[0].Baseline < Layout.Sheet.FootBaseline - 8))
        {
            var column = 0;
            for (var i = 0; i < line.Count; i++)
            {
                if (i == 0 || line[i].Left - line[i - 1].Right > ColumnGap)
                    column = (int)Math.Round(line[i].Left);
                if (!columns.TryGetValue(column, out var text))
                    columns[column] = text = new System.Text.StringBuilder();
                text.Append(line[i].Text);
            }
        }

        return string.Join('\n', columns.Values);
    }

    /// <summary>White wider than this parts columns; a space between words is a third of it.</summary>
    private const double ColumnGap = 8;

    private static ReadPage Read(Page page)
    {
        var letters = Letters(page);
        var (shapes, covers, strokes) = (new List<ReadShape>(), new List<ReadShape>(), new List<ReadShape>());
        foreach (var path in page.Paths)
        {
            if (path.GetBoundingRectangle() is not { } box)
                continue;
            var shape = new ReadShape(box.Left, page.Height - box.Top, box.Right, page.Height - box.Bottom);
            shapes.Add(shape);
            if (path.IsFilled)
                covers.Add(shape);
            if (path.IsStroked)
            {
                foreach (var figure in path)
                    AddSides(figure, page.Height, strokes);
            }
        }

        foreach (var image in page.GetImages())
        {
            var box = image.BoundingBox;
            shapes.Add(new ReadShape(box.Left, page.Height - box.Top, box.Right, page.Height - box.Bottom));
            covers.Add(shapes[^1]);
        }

        return new ReadPage(page.Number, page.Width, page.Height, letters, ReadLines.Of(letters, page.Number), shapes)
        {
            Covers = covers,
            Strokes = strokes,
            Oddity = page.GetAnnotations().Any() ? "an annotation lies over it"
                : page.Dictionary.ContainsKey(NameToken.Create("UserUnit")) ? "it has a unit of its own, so that it prints in another size"
                : null,
        };
    }

    private static List<ReadLetter> Letters(Page page)
    {
        var letters = new List<ReadLetter>(page.Letters.Count);
        IColor? color = null;
        var isBlack = false;
        foreach (var letter in page.Letters)
        {
            // Letters that are drawn one after the other have the very same color.
            if (!ReferenceEquals(color, letter.Color))
                (color, isBlack) = (letter.Color, IsBlack(letter.Color));
            var (start, end) = (letter.StartBaseLine, letter.EndBaseLine);
            letters.Add(new ReadLetter(letter.Value, Math.Min(start.X, end.X), Math.Max(start.X, end.X), page.Height - start.Y,
                letter.PointSize, letter.FontName ?? "", letter.TextOrientation == TextOrientation.Horizontal, isBlack,
                letter.RenderingMode is TextRenderingMode.Fill or TextRenderingMode.FillThenStroke or TextRenderingMode.Stroke));
        }

        return letters;
    }

    // The lines of a drawn figure, from point to point; a closed one comes back to its beginning.
    private static void AddSides(PdfSubpath figure, double height, List<ReadShape> sides)
    {
        PdfPoint first = default, at = default;
        var begun = false;
        void Add(PdfPoint a, PdfPoint b) => sides.Add(new ReadShape(
            Math.Min(a.X, b.X), height - Math.Max(a.Y, b.Y), Math.Max(a.X, b.X), height - Math.Min(a.Y, b.Y)));
        foreach (var command in figure.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    first = at = move.Location;
                    begun = true;
                    break;
                case PdfSubpath.Line line:
                    Add(line.From, line.To);
                    at = line.To;
                    break;
                case PdfSubpath.CubicBezierCurve curve:
                    Add(curve.StartPoint, curve.EndPoint);
                    at = curve.EndPoint;
                    break;
                case PdfSubpath.Close when begun:
                    Add(at, first);
                    break;
            }
        }
    }

    private static bool IsBlack(IColor color)
    {
        var (red, green, blue) = color.ToRGBValues();
        return red < 0.2 && green < 0.2 && blue < 0.2;
    }
}
