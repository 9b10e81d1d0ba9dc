namespace Stringline.Papers.Layout;

/// <summary>A heading; never parted from what follows.</summary>
/// <param name="Text">The words.</param>
/// <param name="Style">Type.</param>
internal sealed record Heading(string Text, TypeStyle Style) : Block
{
    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 16;

    /// <summary>Where it stands.</summary>
    public Align Align { get; init; } = Align.Center;

    /// <inheritdoc/>
    public override IEnumerable<string> Says => [Text];

    /// <inheritdoc/>
    protected override int Level => Style == TypeStyle.Title ? 1 : 2;

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var inset = Align == Align.Center ? (width - Balanced(measure, width)) / 2 : 0;
        return new Paragraph(Text, Style) { Before = Before, Align = Align, WithNext = true }.Cut(measure, width - (2 * inset))
            .Select(s => s with { ToNext = KeepTogether.Fast, Part = null, Draw = (ink, x, y) => s.Draw(ink, x + inset, y) });
    }

    // The least width in which the words take no more lines: no single word is left over for the last.
    private double Balanced(Measure measure, double width)
    {
        const double step = 6;
        var lines = measure.Lines(Text, Style, width).Count;
        if (lines < 2)
            return width;
        var least = width;
        while (least > step && measure.Lines(Text, Style, least - step).Count == lines)
            least -= step;
        return least;
    }
}
