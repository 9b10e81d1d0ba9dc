using Stringline.Law.Facts;
using Stringline.Law.Recording;

namespace Stringline.Papers.Catalogue;

/// <summary>
/// What a paper needs to be told that is no fact of the job yet. <see cref="Paper.Asks"/> says which of these a paper looks at.
/// </summary>
public sealed record PaperOptions
{
    /// <summary>Nothing said.</summary>
    public static PaperOptions None { get; } = new();

    /// <summary>Print in spite of every reason against it, with DRAFT across each page.</summary>
    public bool Draft { get; init; }

    /// <summary>The recorder's prices; null takes the shipped row of the site's county.</summary>
    public RecorderOffice? Office { get; init; }

    /// <summary>Party ids to whom the paper goes; empty takes those whom the law names.</summary>
    public IReadOnlyList<string> To { get; init; } = [];

    /// <summary>Through date of a progress waiver.</summary>
    public LocalDate? Through { get; init; }

    /// <summary>Dollars and cents: the check of a waiver, the sum demanded, or the amount by which a notice is reduced.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Maker of the check that a conditional waiver describes.</summary>
    public string? Maker { get; init; }

    /// <summary>To whom that check is payable; null takes the claimant.</summary>
    public string? Payee { get; init; }

    /// <summary>Dollars and cents of disputed extras that a final waiver keeps.</summary>
    public decimal? Disputed { get; init; }

    /// <summary>The day the payment cleared the bank, confirmed by whoever asks for an unconditional waiver.</summary>
    public LocalDate? PaymentCleared { get; init; }

    /// <summary>
    /// Dollars and cents that a waiver releases, as its maker typed them: a waiver that gives away more than it pays for is made only with
    /// that figure.
    /// </summary>
    public decimal? Releases { get; init; }

    /// <summary>The through date once more, where it lies ahead of the day of signing.</summary>
    public LocalDate? ThroughAgain { get; init; }

    /// <summary>Whether a bond comes with the stop payment notice.</summary>
    public bool Bonded { get; init; }

    /// <summary>Last day of a credit.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Words of its own that a paper asks for: the terms of a credit, the part released, the grounds of a demand.</summary>
    public string? Words { get; init; }

    /// <summary>The day of completion, or the day a payment was due.</summary>
    public LocalDate? Day { get; init; }

    /// <summary>The number of the paper, bond or article that the file does not hold.</summary>
    public string? Number { get; init; }

    /// <summary>On which grounds release of money withheld is asked for (Civ. Code § 9400).</summary>
    public IReadOnlyList<ReleaseGround> Grounds { get; init; } = [];

    /// <summary>Days of a time extension that is claimed.</summary>
    public int? ExtensionDays { get; init; }

    /// <summary>Id of the one of several structures that a claim is on; null for the whole work.</summary>
    public string? Structure { get; init; }

    /// <summary>
    /// Name and address of the one who transferred the property to the owner who signs, where that was after the work began
    /// (Civ. Code § 8182(c)(2)).
    /// </summary>
    public string? FormerOwner { get; init; }

    /// <summary>Whether a notice of completion is for the whole work, though the work has several direct contracts.</summary>
    public bool WholeWork { get; init; }

    /// <summary>Which kind of notice a proof of notice is for; null for the one kind that the file tells of.</summary>
    public ProvedNotice? Notice { get; init; }

    /// <summary>The documents that go with a claim and support it, one each.</summary>
    public IReadOnlyList<string> Documents { get; init; } = [];
}
