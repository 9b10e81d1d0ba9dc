using Stringline.Papers.Prescribed;

namespace Stringline.Papers.Preflight;

/// <summary>What a paper must be.</summary>
public sealed record PaperExpectations
{
    /// <summary>Number of pages: the one on which the fee was reckoned.</summary>
    public required int Pages { get; init; }

    /// <summary>Whether DRAFT must stand across each page; else it must stand on none.</summary>
    public bool Draft { get; init; }

    /// <summary>What a paper to be recorded must be besides; null for any other paper.</summary>
    public RecordedPaper? Recorded { get; init; }

    /// <summary>Wording the paper must hold letter for letter, or null.</summary>
    public PrescribedText? Wording { get; init; }

    /// <summary>Least type size of that wording in points; it must be boldface too. Null where the section says nothing of type.</summary>
    public double? WordingPoints { get; init; }

    /// <summary>
    /// Whether the last sentence of that wording must be in capitals, but for a web address in lower case (Civ. Code § 8416(a)(8)).
    /// </summary>
    public bool LastSentenceInCapitals { get; init; }

    /// <summary>
    /// Text that must be in type at least as large as the largest otherwise on the paper (Civ. Code §§ 8134, 8138), or null.
    /// </summary>
    public string? LargestText { get; init; }

    /// <summary>Names that must be typed under a signature rule, as often as they sign.</summary>
    public IReadOnlyList<string> Signers { get; init; } = [];

    /// <summary>Headings and paragraphs that must be read back whole and in this order, over all pages.</summary>
    public IReadOnlyList<string> InOrder { get; init; } = [];

    /// <summary>Texts that must be read back whole, such as names to be indexed.</summary>
    public IReadOnlyList<string> MustHold { get; init; } = [];
}

/// <summary>What a paper to be recorded must show on its first page.</summary>
/// <param name="Title">The one title, in capitals.</param>
/// <param name="ReturnName">Who asks for recording.</param>
/// <param name="ReturnAddress">Where the paper goes back.</param>
public sealed record RecordedPaper(string Title, string ReturnName, string ReturnAddress);
