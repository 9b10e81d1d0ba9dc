using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Store;

/// <summary>Where a job is.</summary>
/// <param name="Id">Its id, from 1 without a gap over the whole store.</param>
/// <param name="Key">How the outside names it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sequence">Number of its last change.</param>
/// <param name="Hash">Hash of its last change.</param>
public sealed record JobTip(long Id, string Key, string Name, long Sequence, ContentHash Hash);

/// <summary>A job as read from the journal.</summary>
public sealed record StoredJob
{
    internal StoredJob(JobTip tip, IReadOnlyList<JournalRow> rows, JobFile job) => (Tip, Rows, Job) = (tip, rows, job);

    /// <summary>Where it is.</summary>
    public JobTip Tip { get; }

    /// <summary>Its changes, in order.</summary>
    public IReadOnlyList<JournalRow> Rows { get; }

    /// <summary>The job file as now known.</summary>
    public JobFile Job { get; }

    /// <summary>The change that made an entry.</summary>
    /// <param name="index">The entry's index in the job file.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such entry.</exception>
    public JournalRow RowOf(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        return Rows.Where(row => row.Kind == ChangeKind.Entry).ElementAtOrDefault(index)
            ?? throw new ArgumentOutOfRangeException(nameof(index), index, "The job has no such entry.");
    }

    /// <summary>The papers that prove an entry, whenever they were attached.</summary>
    /// <param name="index">The entry's index in the job file.</param>
    public IReadOnlyList<ProofLink> ProofsOf(int index)
    {
        var row = RowOf(index);
        return [.. row.Proofs, .. Rows.Where(later => later.Kind == ChangeKind.Proof && ProofText.Read(later.Payload) == row.Sequence)
            .SelectMany(later => later.Proofs)];
    }

    /// <summary>
    /// The job file as it was known on a day: the head learned last by then, and the entries that can have happened and were learned by
    /// then. Entries keep the index they have in <see cref="Job"/>. Parties of whom such an entry speaks are in it in any case.
    /// </summary>
    public JobFile KnownOn(LocalDate day)
    {
        var leftOut = new FactsAsOf(Job, day).LeftOut.Select(entry => entry.Index).ToHashSet();
        var entries = Job.Entries.Where(entry => !leftOut.Contains(entry.Index)).ToList();
        var head = HeadOn(day);
        var mentioned = entries.SelectMany(Mentioned).ToHashSet(StringComparer.Ordinal);
        mentioned.ExceptWith(head.Parties.Select(party => party.Id));
        var learnedThrough = Job.Parties.Where(party => mentioned.Contains(party.Id));
        return head with { Entries = entries, Parties = mentioned.Count == 0 ? head.Parties : [.. head.Parties, .. learnedThrough] };
    }

    private JobFile HeadOn(LocalDate day)
    {
        var heads = Rows.Where(row => row.Kind == ChangeKind.Head).ToList();
        var known = heads.FindLastIndex(head => head.Learned is null || head.Learned <= day);
        var chosen = heads[Math.Max(known, 0)];
        return JournalText.Read(Tip.Key, chosen.Payload, []) switch
        {
            JobFileResult.Read read => read.Job,
            JobFileResult.Refused refused =>
                throw new InvalidOperationException("A head that was read before is refused: " + refused.Faults[0]),
            _ => throw new InvalidOperationException("Neither read nor refused."),
        };
    }

    private static IEnumerable<string> Mentioned(Entry entry) => entry switch
    {
        NoticeGiven notice => notice.To,
        ClaimServed served => served.To,
        StopPaymentGiven given => given.To,
        BondNoticeGiven given => given.To,
        OwnerRecorded { ContractOf: { } party } => [party],
        _ => [],
    };
}
