namespace Stringline.Papers.Layout;

/// <summary>Where lines stand in their column.</summary>
internal enum Align
{
    /// <summary>At the left edge.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Center,
}

/// <summary>Running text. Never one line alone at the foot or head of a page.</summary>
/// <param name="Text">The text; line ends in it are kept.</param>
/// <param name="Style">Type.</param>
internal sealed record Paragraph(string Text, TypeStyle Style) : Block
{
    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 7;

    /// <summary>Indent of every line in points.</summary>
    public double Indent { get; init; }

    /// <summary>Mark in the indent before the first line, such as a bullet.</summary>
    public string? Mark { get; init; }

    /// <summary>Where the lines stand.</summary>
    public Align Align { get; init; }

    /// <summary>Whether it clings to what follows, as a heading does.</summary>
    public bool WithNext { get; init; }

    /// <summary>Whether a short one may be cut where a page is full: two lines stay on each side.</summary>
    public bool MayPart { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Says => [Text.Replace(Unbroken.Space, ' ')];

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var lines = measure.Lines(Text, Style, width - Indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            var first = i == 0;
            yield return new LayoutRow
            {
                Height = Style.Pitch,
                Before = first ? Before : 0,
                ToNext = KeepRules.Line(i, lines.Count, MayPart) || (WithNext && i == lines.Count - 1)
                    ? KeepTogether.Fast : KeepTogether.None,
                Draw = (ink, x, y) =>
                {
                    var start = Align == Align.Center ? (width - Indent - measure.Width(line, Style)) / 2 : 0;
                    ink.Text(line, x + Indent + start, y + KeepRules.Baseline(Style), Style);
                    if (first && Mark is not null)
                        ink.Text(Mark, x + Indent - measure.Width(Mark, Style) - 6, y + KeepRules.Baseline(Style), Style);
                },
            };
        }
    }
}

/// <summary>Rules that all lines of text share.</summary>
internal static class KeepRules
{
    // A paragraph of no more lines is never cut.
    private const int WholeParagraph = 5;

    /// <summary>Whether a line clings to the next so that no page begins or ends with a single line of a longer text.</summary>
    public static bool Line(int line, int count, bool mayPart = false) =>
        line < count - 1 && ((count <= WholeParagraph && !mayPart) || line == 0 || line == count - 2);

    /// <summary>Distance from a line's top to its baseline in points: ascenders and accents stay inside the line.</summary>
    public static double Baseline(TypeStyle style) => (style.Pitch + (0.72 * style.Points)) / 2;
}
