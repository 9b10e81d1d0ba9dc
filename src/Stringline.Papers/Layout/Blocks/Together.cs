namespace Stringline.Papers.Layout;

/// <summary>Blocks that stay on one page as long as one page can hold them.</summary>
/// <param name="Blocks">The blocks.</param>
internal sealed record Together(params IReadOnlyList<Block> Blocks) : Block
{
    /// <summary>Whether they take the last line before them along to another page: an oath is not read without what is sworn.</summary>
    public bool WithPrevious { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<string> Says => Blocks.SelectMany(b => b.Says);

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width)
    {
        LayoutRow? waiting = null;
        foreach (var strip in Blocks.SelectMany(b => b.Cut(measure, width)))
        {
            if (waiting is not null)
                yield return waiting with { ToNext = waiting.ToNext == KeepTogether.None ? KeepTogether.Group : waiting.ToNext };
            waiting = waiting is null && WithPrevious ? strip with { ToPrevious = true } : strip;
        }

        if (waiting is not null)
            yield return waiting;
    }
}

/// <summary>Begins a new page.</summary>
/// <param name="First">The block that stands at its head.</param>
internal sealed record OnNewPage(Block First) : Block
{
    /// <inheritdoc/>
    public override IEnumerable<string> Says => First.Says;

    /// <inheritdoc/>
    protected override IEnumerable<LayoutRow> Slices(Measure measure, double width) =>
        First.Cut(measure, width).Select((s, i) => i == 0 ? s with { OnNewPage = true } : s);
}
