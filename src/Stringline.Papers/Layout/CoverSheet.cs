namespace Stringline.Papers.Layout;

/// <summary>
/// A page in front of a paper whose first page cannot carry what the recorder needs: the recorder's space, who asks for recording and
/// where it goes back, the title or titles (Gov. Code §§ 27324, 27361.6), and, where a fee exemption is claimed, its statement. It is
/// part of the paper and is charged as a page. A plan asks for it with <see cref="PaperPlan.Cover"/>.
/// </summary>
internal sealed record CoverSheet
{
    /// <summary>
    /// The titles, each as the paper behind bears it; every one beyond the first is charged as a further paper (Gov. Code § 27361.1).
    /// </summary>
    public required IReadOnlyList<string> Titles { get; init; }

    /// <summary>What helps to index the paper, such as names and parcel: label and text.</summary>
    public IReadOnlyList<CoverLine> Lines { get; init; } = [];

    /// <summary>Why no homes fee is due, word for word as claimed; null where it is due.</summary>
    public string? Exemption { get; init; }

    /// <summary>The blocks of the page, without the return block, which is the plan's.</summary>
    public IReadOnlyList<Block> Blocks =>
    [
        .. Titles.Select((title, i) => new Heading(title.ToUpperInvariant(), TypeStyle.Title) { Before = i == 0 ? 0 : 2 }),
        .. Lines.Select((line, i) => new FieldRow(line.Label, line.Text) { Before = i == 0 ? 24 : 9 }),
        .. Exemption is { } words ? [new FieldRow("Fee exemption", words) { Before = 9 }] : Array.Empty<Block>(),
        new Paragraph("Cover page. It stands in front of the document because the document’s own first page has no room for what the "
            + "recorder needs (Gov. Code § 27361.6). It is part of the document and is charged as a page.",
            TypeStyle.Small) { Before = 24 },
    ];
}

/// <summary>A line of a cover sheet.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Text">What it says.</param>
internal sealed record CoverLine(string Label, string Text);
