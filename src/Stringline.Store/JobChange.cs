using Stringline.Law.Facts;

namespace Stringline.Store;

/// <summary>What a change of a job is. The words in the store are those of <see cref="ChangeKinds"/>.</summary>
public enum ChangeKind
{
    /// <summary>The head of the job file, whole, as it is from now on.</summary>
    Head,

    /// <summary>One entry.</summary>
    Entry,

    /// <summary>Papers that prove an entry made earlier.</summary>
    Proof,
}

/// <summary>The words for <see cref="ChangeKind"/>.</summary>
public static class ChangeKinds
{
    /// <summary>The word in the store.</summary>
    public static string Word(this ChangeKind kind) => kind switch
    {
        ChangeKind.Head => "head",
        ChangeKind.Entry => "entry",
        ChangeKind.Proof => "proof",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of change."),
    };

    /// <summary>The kind for a word; null where there is none.</summary>
    public static ChangeKind? Find(string word) => word switch
    {
        "head" => ChangeKind.Head,
        "entry" => ChangeKind.Entry,
        "proof" => ChangeKind.Proof,
        _ => null,
    };
}

/// <summary>One change to be appended to a job. The three cases are the only ones.</summary>
public abstract record JobChange
{
    private JobChange()
    {
    }

    /// <summary>The head is now this one.</summary>
    /// <param name="Head">A job file; its entries are not looked at.</param>
    /// <param name="Learned">
    /// The day on which the claimant learned it; null: it was so from the start, and the older head was mistaken.
    /// </param>
    public sealed record Revised(JobFile Head, LocalDate? Learned = null) : JobChange;

    /// <summary>Something happened, or an older entry is corrected or withdrawn.</summary>
    /// <param name="Entry">The entry; its index is not looked at.</param>
    public sealed record Happened(Entry Entry) : JobChange
    {
        /// <summary>The papers that prove it.</summary>
        public IReadOnlyList<Proof> Proofs { get; init; } = [];
    }

    /// <summary>An entry made earlier is proved.</summary>
    /// <param name="Sequence">The sequence number of the change that made the entry.</param>
    /// <param name="Proofs">The papers; at least one.</param>
    public sealed record Proved(long Sequence, IReadOnlyList<Proof> Proofs) : JobChange;
}
