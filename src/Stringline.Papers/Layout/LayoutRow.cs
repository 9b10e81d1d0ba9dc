namespace Stringline.Papers.Layout;

/// <summary>How fast a strip clings to the one after it.</summary>
internal enum KeepTogether
{
    /// <summary>A page may end between the two.</summary>
    None,

    /// <summary>Kept together as long as the group fits on one page.</summary>
    Group,

    /// <summary>Never parted, unless the run alone is taller than a page.</summary>
    Fast,
}

/// <summary>A slice of a paper that is never cut: a line, a row, a signature block.</summary>
internal sealed record LayoutRow
{
    /// <summary>Height in points.</summary>
    public required double Height { get; init; }

    /// <summary>White above it in points; dropped at the top of a page.</summary>
    public double Before { get; init; }

    /// <summary>How it clings to the next strip.</summary>
    public KeepTogether ToNext { get; init; }

    /// <summary>Clings fast to the strip before it, whatever that one says.</summary>
    public bool ToPrevious { get; init; }

    /// <summary>Begins a new page.</summary>
    public bool OnNewPage { get; init; }

    /// <summary>How many lines it is to the eye: a signature block and a frame are several.</summary>
    public int Lines { get; init; } = 1;

    /// <summary>What is set again above it where it comes to stand first on a page, as a table's head; empty where nothing is.</summary>
    public IReadOnlyList<LayoutRow> Again { get; init; } = [];

    /// <summary>Whether it is set again, having been said before.</summary>
    public bool IsAgain { get; init; }

    /// <summary>What it is to one who hears the paper read; null until its block says.</summary>
    public Part? Part { get; init; }

    /// <summary>Draws it with its left edge at x and its top at y; of a table’s row, what is no text of its cells.</summary>
    public required Action<PageCanvas, double, double> Draw { get; init; }

    /// <summary>The row of a table of which this is a line; null for any other strip.</summary>
    public TableRow? Row { get; init; }

    /// <summary>What each cell of that row has on this line, drawn as <see cref="Draw"/> is.</summary>
    public IReadOnlyList<Action<PageCanvas, double, double>> Cells { get; init; } = [];
}

/// <summary>A row of a table, however many lines it takes: its cells are read one after the other, not line by line.</summary>
/// <param name="isHead">Whether it holds the heads of the columns.</param>
internal sealed class TableRow(bool isHead)
{
    /// <summary>Whether it holds the heads of the columns.</summary>
    public bool IsHead => isHead;
}

/// <summary>A building block of a paper.</summary>
internal abstract record Block
{
    /// <summary>Cuts the block into strips for a column of this width; those of one block are one part of the paper.</summary>
    public IEnumerable<LayoutRow> Cut(Measure measure, double width)
    {
        var part = new Part(Level);
        return Slices(measure, width).Select(strip => strip.Part is null ? strip with { Part = part } : strip);
    }

    /// <summary>What the block is among headings: 1 for a title, 2 for a heading under it, 0 for text.</summary>
    protected virtual int Level => 0;

    /// <summary>The headings and paragraphs that it sets across the column, in order: what must be read back so.</summary>
    public virtual IEnumerable<string> Says => [];

    /// <summary>The strips; those of a block within keep the part that they are.</summary>
    protected abstract IEnumerable<LayoutRow> Slices(Measure measure, double width);
}

/// <summary>
/// A part of a paper as a screen reader tells it: one for each block, however many strips and pages it takes (PDF 32000-1, 14.8).
/// </summary>
/// <param name="level">1 for a title, 2 for a heading under it, 0 for text.</param>
internal sealed class Part(int level)
{
    /// <summary>What holds other blocks and says nothing itself, such as a frame.</summary>
    public static Part None { get; } = new(0);

    /// <summary>1 for a title, 2 for a heading under it, 0 for text.</summary>
    public int Level => level;
}
