namespace Stringline.Papers.Layout;

/// <summary>A square to be ticked, with its words.</summary>
/// <param name="Text">The words.</param>
/// <param name="Ticked">Whether a cross stands in it.</param>
internal sealed record TickBox(string Text, bool Ticked) : Block
{
    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 3;

    /// <summary>Indent of the square in points.</summary>
    public double Indent { get; init; }

    /// <summary>Type.</summary>
    public TypeStyle Style { get; init; } = TypeStyle.Body;

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var side = Style.Points * 0.86;
        var words = new Paragraph(Text, Style) { Before = Before, Indent = Indent + side + 8 };
        var first = true;
        foreach (var strip in words.Cut(measure, width))
        {
            if (!first)
            {
                yield return strip;
                continue;
            }

            first = false;
            yield return strip with
            {
                Draw = (ink, x, y) =>
                {
                    strip.Draw(ink, x, y);
                    ink.Box(x + Indent, y + KeepRules.Baseline(Style) - side + 0.8, side, Ticked);
                },
            };
        }
    }
}
