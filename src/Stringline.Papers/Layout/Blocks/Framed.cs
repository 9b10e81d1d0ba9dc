namespace Stringline.Papers.Layout;

/// <summary>Blocks in a frame, never cut: for what must be seen first. What no page can hold flows without a frame.</summary>
/// <param name="Blocks">The blocks.</param>
internal sealed record Framed(params IReadOnlyList<Block> Blocks) : Block
{
    private const double Pad = 9;

    /// <summary>White above in points.</summary>
    public double Before { get; init; } = 10;

    /// <summary>Thickness of the frame in points.</summary>
    public double Thickness { get; init; } = 1.5;

    /// <inheritdoc/>
    public override IEnumerable<string> Says => Blocks.SelectMany(b => b.Says);

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        var strips = Blocks.SelectMany(b => b.Cut(measure, width - (2 * Pad))).ToList();
        var inside = strips.Sum(s => s.Before + s.Height) - strips[0].Before;
        if (inside > Sheet.Bottom - Sheet.Top - 60)
        {
            foreach (var strip in Blocks.SelectMany(b => b.Cut(measure, width)))
                yield return strip;
            yield break;
        }

        yield return new LayoutRow
        {
            Before = Before,
            Lines = strips.Sum(s => s.Lines),
            Part = Part.None,
            Height = inside + (2 * Pad) - 2,
            Draw = (ink, x, y) =>
            {
                ink.Aside(() => ink.Frame(x, y, width, inside + (2 * Pad) - 2, Thickness));
                var top = y + Pad - 1 - strips[0].Before;
                List<Placed> placed = [];
                foreach (var strip in strips)
                {
                    placed.Add(new Placed(strip, top + strip.Before));
                    top += strip.Before + strip.Height;
                }

                ink.Put(placed, x + Pad);
            },
        };
    }
}
