namespace Stringline.Papers.Layout;

/// <summary>A paper before it is printed: what stands on it, in order.</summary>
internal sealed record PaperPlan
{
    /// <summary>Title, in the file's properties; a recorded paper bears it directly under the recorder's space.</summary>
    public required string Title { get; init; }

    /// <summary>The words at the left of the running foot.</summary>
    public required string Foot { get; init; }

    /// <summary>Type of the running foot.</summary>
    public TypeStyle FootStyle { get; init; } = TypeStyle.Foot;

    /// <summary>The day the paper is made, for the file's properties.</summary>
    public required LocalDate Made { get; init; }

    /// <summary>The return block of a paper to be recorded; null for any other paper.</summary>
    public ReturnBlock? Return { get; init; }

    /// <summary>
    /// A cover page in front, which then bears the return block; null where the paper's own first page carries all that the recorder needs.
    /// </summary>
    public CoverSheet? Cover { get; init; }

    /// <summary>Whether DRAFT is printed across each page.</summary>
    public bool Draft { get; init; }

    /// <summary>The blocks.</summary>
    public required IReadOnlyList<Block> Blocks { get; init; }

    /// <summary>The headings and paragraphs that stand across its pages, in order, those of a cover first.</summary>
    public IReadOnlyList<string> Says => [.. (Cover?.Blocks ?? []).Concat(Blocks).SelectMany(b => b.Says)];
}
