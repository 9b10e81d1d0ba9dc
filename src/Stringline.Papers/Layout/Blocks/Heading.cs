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
    protected override IEnumerable<Strip> Slices(Measure measure, double width) =>
        new Paragraph(Text, Style) { Before = Before, Align = Align, WithNext = true }.Cut(measure, width)
            .Select(s => s with { ToNext = Glue.Fast, Part = null });
}
