using Stringline.Law.Facts;
using Stringline.Law.Recording;

namespace Stringline.Papers.Writing;

/// <summary>What the sheet that goes with a paper must say, apart from what every such sheet says.</summary>
internal sealed record Guide
{
    /// <summary>The sections that apply on this job, where not all of the paper's do; null takes the paper's own.</summary>
    public string? Sections { get; init; }

    /// <summary>What the paper does when it is signed, said before anything else, on the sheet of a draft too.</summary>
    public IReadOnlyList<string> Effect { get; init; } = [];

    /// <summary>Who claims how much, in a line under the title of the sheet; null where nothing is claimed.</summary>
    public string? ForWhat { get; init; }

    /// <summary>The day before which the paper is not given, where a step is still missing; null takes the finding's own.</summary>
    public NotBefore? NotBefore { get; init; }

    /// <summary>What must be seen before anything else.</summary>
    public IReadOnlyList<string> First { get; init; } = [];

    /// <summary>To whom the paper goes.</summary>
    public IReadOnlyList<Party> To { get; init; } = [];

    /// <summary>What they are to this paper, where that is more than their capacity on the job; null takes the capacity.</summary>
    public Func<Party, string>? Capacity { get; init; }

    /// <summary>The line of the envelope that names the officer who must receive it; null where there is none.</summary>
    public Func<Party, string?>? Attention { get; init; }

    /// <summary>In which manner it goes to them, with its section.</summary>
    public string? Manner { get; init; }

    /// <summary>What to do, in order.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>What to do, or to enter in the job file, afterwards.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>What recording it takes; null for a paper that is not recorded.</summary>
    public Recording? Recording { get; init; }

    /// <summary>The law’s day to act by, of a paper whose last day is no finding of the file; else null.</summary>
    public LocalDate? ActBy { get; init; }
}

/// <summary>The first day on which a paper may be given.</summary>
/// <param name="Day">The day.</param>
/// <param name="If">On which condition, and what stands otherwise.</param>
internal sealed record NotBefore(LocalDate Day, string If);

/// <summary>What recording a paper takes.</summary>
/// <param name="Kind">What it is to the price list.</param>
/// <param name="Certificates">Pages of notaries’ certificates counted where it must be acknowledged (Gov. Code § 27287), one for each that
/// may sign apart; else 0.</param>
/// <param name="References">Recorded papers it refers to (Gov. Code § 27361.2).</param>
/// <param name="Why">Why a notary is needed, or not, with its section.</param>
internal sealed record Recording(RecordedPaperKind Kind, int Certificates, int References, string Why)
{
    /// <summary>Whether it is the owner's paper, on which the claimant of the job file has no part.</summary>
    public bool IsOwners { get; init; }

    /// <summary>
    /// Persons against whom an involuntary lien is recorded, counted for each address; empty where the office gives no notice to them (Gov.
    /// Code § 27297.5).
    /// </summary>
    public IReadOnlyList<int> NamesAtEachAddress { get; init; } = [];

    /// <summary>Whether a copy went by first-class mail with a certificate of mailing (Gov. Code § 27297.5(b)(3)).</summary>
    public bool ServedWithCertificateOfMailing { get; init; }

    /// <summary>Pages of a proof of service that is always recorded with the paper, at the least; else 0.</summary>
    public int ProofPages { get; init; }
}

/// <summary>A packet before it is printed.</summary>
/// <param name="Papers">The papers.</param>
/// <param name="Guide">What the accompanying sheet says.</param>
/// <param name="AlwaysDraft">Why the papers are only ever a draft; null where they are not.</param>
internal sealed record Bundle(IReadOnlyList<PaperBuilder> Papers, Guide Guide, Refusal? AlwaysDraft = null)
{
    /// <summary>
    /// The sheet, of a paper that has one of its own: made of the fee, the number of pages and what stands in the way; null takes the one
    /// that the guide makes.
    /// </summary>
    public Func<FeeEstimate, int, IReadOnlyList<Refusal>, ISheet>? Sheet { get; init; }
}
