namespace Stringline.Store;

/// <summary>One change as the journal keeps it.</summary>
/// <param name="Sequence">Its number in the job, from 1.</param>
/// <param name="At">When it was recorded, to the microsecond.</param>
/// <param name="Who">Who recorded it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Learned">The day on which the claimant learned it; null: on the day it happened, for a head: from the start.</param>
/// <param name="Supersedes">The id of the entry that it replaces; null where it replaces none.</param>
/// <param name="Proofs">The papers attached by this change.</param>
/// <param name="Payload">
/// JSON as UTF-8: a head or an entry as <see cref="Tables.JournalText"/> writes them; for proofs, which change they prove.
/// </param>
/// <param name="Hash">Hash over the change before and everything of this one.</param>
public sealed record JournalRow(
    long Sequence,
    Instant At,
    string Who,
    ChangeKind Kind,
    LocalDate? Learned,
    string? Supersedes,
    IReadOnlyList<ProofLink> Proofs,
    ReadOnlyMemory<byte> Payload,
    ContentHash Hash);

/// <summary>A paper as an entry names it.</summary>
/// <param name="Hash">Hash of its content.</param>
/// <param name="Name">The name under which it was attached.</param>
public sealed record ProofLink(ContentHash Hash, string Name);
