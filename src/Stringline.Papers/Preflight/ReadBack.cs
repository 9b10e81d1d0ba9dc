using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Stringline.Papers.Preflight;

/// <summary>A letter as read back. Points; origin top left, y down.</summary>
/// <param name="Text">The character.</param>
/// <param name="Left">Where it begins.</param>
/// <param name="Right">Where the next begins.</param>
/// <param name="Baseline">Its baseline.</param>
/// <param name="Points">Type size.</param>
/// <param name="Font">Name of the face.</param>
/// <param name="Upright">Whether it stands upright; DRAFT does not.</param>
/// <param name="Black">Whether it is black, or near it.</param>
/// <param name="Seen">Whether it is painted at all.</param>
internal sealed record ReadLetter(string Text, double Left, double Right, double Baseline, double Points, string Font, bool Upright,
    bool Black, bool Seen)
{
    /// <summary>Whether the face is bold. PdfPig's own flag is false for every face our writer embeds, so its name decides.</summary>
    public bool Bold => Font.Contains("Bold", StringComparison.Ordinal);

    /// <summary>Whether it is a space.</summary>
    public bool Blank => string.IsNullOrWhiteSpace(Text);
}

/// <summary>A word: letters with no space between them.</summary>
internal sealed record ReadWord(IReadOnlyList<ReadLetter> Letters, int Page)
{
    /// <summary>The word.</summary>
    public string Text { get; } = string.Concat(Letters.Select(l => l.Text));

    /// <summary>Where it begins.</summary>
    public double Left => Letters[0].Left;

    /// <summary>Where it ends.</summary>
    public double Right => Letters[^1].Right;

    /// <summary>Its baseline.</summary>
    public double Baseline => Letters[0].Baseline;

    /// <summary>Its largest type.</summary>
    public double Points => Letters.Max(l => l.Points);
}

/// <summary>A drawn line or shape: its outermost edges.</summary>
internal sealed record ReadShape(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether it is a horizontal rule.</summary>
    public bool IsRule => Bottom - Top < 1.5 && Right - Left > 40;
}

/// <summary>A page as read back.</summary>
internal sealed record ReadPage(int Number, double Width, double Height, IReadOnlyList<ReadLetter> Letters,
    IReadOnlyList<IReadOnlyList<ReadWord>> Lines, IReadOnlyList<ReadShape> Shapes)
{
    /// <summary>What covers what lies under it: filled shapes and pictures.</summary>
    public required IReadOnlyList<ReadShape> Covers { get; init; }

    /// <summary>The single lines that are drawn; of a frame its four.</summary>
    public required IReadOnlyList<ReadShape> Strokes { get; init; }

    /// <summary>What makes the page other than it looks here: an annotation, a unit of its own. Null where nothing does.</summary>
    public string? Oddity { get; init; }

    /// <summary>The words in reading order.</summary>
    public IEnumerable<ReadWord> Words => Lines.SelectMany(l => l);
}

/// <summary>A paper as PdfPig reads it, which is not the library that wrote it.</summary>
internal sealed class ReadBack
{
    private ReadBack(IReadOnlyList<ReadPage> pages, bool isLocked) => (Pages, IsLocked) = (pages, isLocked);

    /// <summary>Whether the file is encrypted, so that a reader may be told not to print it.</summary>
    public bool IsLocked { get; }

    /// <summary>The pages.</summary>
    public IReadOnlyList<ReadPage> Pages { get; }

    /// <summary>Reads a paper strictly.</summary>
    /// <exception cref="PdfDocumentFormatException">The bytes are no sound PDF.</exception>
    public static ReadBack Of(ReadOnlyMemory<byte> bytes)
    {
        using var document = PdfDocument.Open(bytes.ToArray(), new ParsingOptions { UseLenientParsing = false });
        return new ReadBack([.. document.GetPages().Select(Read)], document.IsEncrypted);
    }

    /// <summary>The text of the pages without their running feet, white space made single.</summary>
    public string Text => string.Join(' ', Body.Select(w => w.Text));

    /// <summary>The words of all pages, running feet and the word DRAFT left out.</summary>
    public IEnumerable<ReadWord> Body => Pages.SelectMany(p => p.Words).Where(w => w.Baseline < Layout.Sheet.FootBaseline - 8);

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
        var letters = page.Letters.Select(l => new ReadLetter(
            l.Value, Math.Min(l.StartBaseLine.X, l.EndBaseLine.X), Math.Max(l.StartBaseLine.X, l.EndBaseLine.X),
            page.Height - l.StartBaseLine.Y, l.PointSize, l.FontName ?? "", l.TextOrientation == TextOrientation.Horizontal, IsBlack(l),
            l.RenderingMode is TextRenderingMode.Fill or TextRenderingMode.FillThenStroke or TextRenderingMode.Stroke)).ToList();
        var (shapes, covers, strokes) = (new List<ReadShape>(), new List<ReadShape>(), new List<ReadShape>());
        ReadShape Shape(double left, double top, double right, double bottom) => new(left, page.Height - top, right, page.Height - bottom);
        foreach (var path in page.Paths)
        {
            if (path.GetBoundingRectangle() is not { } box)
                continue;
            var shape = Shape(box.Left, box.Top, box.Right, box.Bottom);
            shapes.Add(shape);
            if (path.IsFilled)
                covers.Add(shape);
            if (path.IsStroked)
            {
                strokes.AddRange(path.SelectMany(Sides)
                    .Select(s => Shape(Math.Min(s.A.X, s.B.X), Math.Max(s.A.Y, s.B.Y), Math.Max(s.A.X, s.B.X), Math.Min(s.A.Y, s.B.Y))));
            }
        }

        foreach (var image in page.GetImages())
        {
            var box = image.BoundingBox;
            shapes.Add(Shape(box.Left, box.Top, box.Right, box.Bottom));
            covers.Add(shapes[^1]);
        }

        return new ReadPage(page.Number, page.Width, page.Height, letters, Lines(letters, page.Number), shapes)
        {
            Covers = covers,
            Strokes = strokes,
            Oddity = page.GetAnnotations().Any() ? "an annotation lies over it"
                : page.Dictionary.ContainsKey(NameToken.Create("UserUnit")) ? "it has a unit of its own, so that it prints in another size"
                : null,
        };
    }

    // The lines of a drawn figure, from point to point; a closed one comes back to its beginning.
    private static IEnumerable<(PdfPoint A, PdfPoint B)> Sides(PdfSubpath figure)
    {
        PdfPoint? first = null, at = null;
        foreach (var command in figure.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    first = at = move.Location;
                    break;
                case PdfSubpath.Line line:
                    yield return (line.From, line.To);
                    at = line.To;
                    break;
                case PdfSubpath.CubicBezierCurve curve:
                    yield return (curve.StartPoint, curve.EndPoint);
                    at = curve.EndPoint;
                    break;
                case PdfSubpath.Close when first is { } begun && at is { } ended:
                    yield return (ended, begun);
                    break;
            }
        }
    }

    private static bool IsBlack(Letter letter)
    {
        var (red, green, blue) = letter.Color.ToRGBValues();
        return red < 0.2 && green < 0.2 && blue < 0.2;
    }

    /// <summary>Upright letters by baseline, to half a point, from top to bottom and left to right.</summary>
    private static List<IReadOnlyList<ReadWord>> Lines(List<ReadLetter> letters, int page)
    {
        var lines = new Dictionary<int, List<ReadLetter>>();
        foreach (var letter in letters.Where(l => l.Upright))
        {
            var baseline = (int)Math.Round(letter.Baseline * 2);
            if (!lines.TryGetValue(baseline, out var line))
                lines[baseline] = line = [];
            line.Add(letter);
        }

        return [.. lines.OrderBy(l => l.Key).Select(l => (IReadOnlyList<ReadWord>)Words(FromLeft(l.Value), page)).Where(l => l.Count > 0)];
    }

    /// <summary>Letters of a line from left to right; a loose accent stays after the letter it stands on.</summary>
    private static IEnumerable<ReadLetter> FromLeft(List<ReadLetter> line)
    {
        for (var i = 1; i < line.Count; i++)
        {
            if (line[i].Left < line[i - 1].Left)
                return line.OrderBy(l => l.Left);
        }

        return line;
    }

    private static List<ReadWord> Words(IEnumerable<ReadLetter> line, int page)
    {
        var words = new List<ReadWord>();
        var word = new List<ReadLetter>();
        void End()
        {
            if (word.Count > 0)
                words.Add(new ReadWord(word, page));
            word = [];
        }

        foreach (var letter in line)
        {
            if (letter.Blank || (word.Count > 0 && letter.Left - word[^1].Right > 0.2 * letter.Points))
                End();
            if (!letter.Blank)
                word.Add(letter);
        }

        End();
        return words;
    }
}
