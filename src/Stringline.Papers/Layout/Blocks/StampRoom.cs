namespace Stringline.Papers.Layout;

/// <summary>An empty frame for somebody else's stamp, with its caption above; never cut.</summary>
/// <param name="Caption">What goes into it.</param>
internal sealed record StampRoom(string Caption) : Block
{
    /// <summary>Height in points: a round date stamp of the post office is an inch across.</summary>
    public const double Height = 90;

    /// <summary>Width in points.</summary>
    public const double Width = 200;

    private const double Before = 12;

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var style = TypeStyle.BodyBold;
        yield return new LayoutRow
        {
            Before = Before,
            Height = style.Pitch + 4 + Height,
            Draw = (ink, x, y) =>
            {
                ink.Text(Caption, x, y + KeepRules.Baseline(style), style);
                ink.Aside(() => ink.Frame(x, y + style.Pitch + 4, Width, Height, 0.75));
            },
        };
    }
}
