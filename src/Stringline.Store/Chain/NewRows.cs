using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Store.Chain;

/// <summary>Turns changes into the next rows of a job's chain.</summary>
internal sealed class NewRows(JobTip tip, string who, Instant at)
{
    private readonly long moment = RawRow.Microseconds(at);
    private readonly List<RawRow> rows = [];
    private ContentHash last = tip.Hash;

    /// <summary>A job that has no change yet.</summary>
    public static JobTip Nothing(long id, string key, string name) => new(id, key, name, 0, ChainHash.Beginning);

    /// <summary>The rows so far.</summary>
    public IReadOnlyList<RawRow> Rows => rows;

    /// <summary>Where the job is after them.</summary>
    public JobTip After(string name) => tip with { Name = name, Sequence = tip.Sequence + rows.Count, Hash = last };

    /// <summary>Adds a change.</summary>
    public void Add(JobChange change)
    {
        switch (change)
        {
            case JobChange.Revised revised:
                Head(JournalText.Head(revised.Head), revised.Learned);
                break;
            case JobChange.Happened happened:
                Entry(happened.Entry, JournalText.Entry(happened.Entry), happened.Proofs);
                break;
            case JobChange.Proved proved:
                Row(ChangeKind.Proof, null, null, Links(proved.Proofs), ProofText.Write(proved.Sequence));
                break;
            default:
                throw new ArgumentException("No such change.", nameof(change));
        }
    }

    /// <summary>Adds a head.</summary>
    public void Head(byte[] payload, LocalDate? learned) => Row(ChangeKind.Head, learned, null, null, payload);

    /// <summary>Adds an entry.</summary>
    public void Entry(Entry entry, byte[] payload, IReadOnlyList<Proof> proofs) =>
        Row(ChangeKind.Entry, entry.Learned, entry.Supersedes, Links(proofs), payload);

    private void Row(ChangeKind kind, LocalDate? learned, string? supersedes, string? proofs, byte[] payload)
    {
        var row = new RawRow(
            tip.Sequence + rows.Count + 1, moment, who, kind.Word(), learned is { } day ? DayText.Write(day) : null, supersedes, proofs,
            payload, []);
        last = ChainHash.Of(last, tip.Id, tip.Key, row);
        rows.Add(row with { Hash = last.ToBytes() });
    }

    private static string? Links(IReadOnlyList<Proof> proofs) =>
        RawRow.Lines([.. proofs.Select(proof => new ProofLink(proof.Hash, proof.Name))]);
}
