namespace Stringline.Papers.Layout;

/// <summary>How fast a strip clings to the one after it.</summary>
internal enum Glue
{
    /// <summary>A page may end between the two.</summary>
    None,

    /// <summary>Kept together as long as the group fits on one page.</summary>
    Group,

    /// <summary>Never parted, unless the run alone is taller than a page.</summary>
    Fast,
}

/// <summary>A slice of a paper that is never cut: a line, a row, a signature block.</summary>
internal sealed record Strip
{
    /// <summary>Height in points.</summary>
    public required double Height { get; init; }

    /// <summary>White above it in points; dropped at the top of a page.</summary>
    public double Before { get; init; }

    /// <summary>How it clings to the next strip.</summary>
    public Glue ToNext { get; init; }

    /// <summary>Clings fast to the strip before it, whatever that one says.</summary>
    public bool ToPrevious { get; init; }

    /// <summary>Begins a new page.</summary>
    public bool OnNewPage { get; init; }

    /// <summary>Draws it with its left edge at x and its top at y.</summary>
    public required Action<Ink, double, double> Draw { get; init; }
}

/// <summary>A building block of a paper.</summary>
internal abstract record Block
{
    /// <summary>Cuts the block into strips for a column of this width.</summary>
    public abstract IEnumerable<Strip> Cut(Measure measure, double width);
}
