using System.Data.Common;
using System.Globalization;
using Stringline.Tables;
using Stringline.Store.Chain;
using Stringline.Store.Search;

namespace Stringline.Store.Sql;

/// <summary>Appends changes to one job.</summary>
internal sealed class Appending(Database database, RecordingClock clock)
{
    public AppendOutcome Append(long job, long expectedSequence, IReadOnlyList<JobChange> changes, string who)
    {
        Names.Checked(who, nameof(who));
        if (changes.Count == 0)
            throw new ArgumentException("There is no change to append.", nameof(changes));
        return database.Change<AppendOutcome>((connection, transaction) =>
        {
            var moments = new Moments(database, connection, transaction, clock);
            if (RowReading.Tip(connection, transaction, job, database.ForUpdate) is not { } tip)
                return (new AppendOutcome.NoSuchJob(), false);
            if (tip.Sequence != expectedSequence)
                return (new AppendOutcome.SomeoneWroteFirst(tip.Sequence, Since(connection, transaction, tip, expectedSequence)), false);
            var stored = RowReading.Job(database, tip, RowReading.Rows(connection, transaction, job));
            var added = new NewRows(tip, who, moments.After(stored.Rows[^1].At));
            foreach (var change in changes)
                added.Add(change);
            List<JournalRow> sound = [.. added.Rows.Select(Sound)];
            if (Unproved(tip.Key, changes, [.. stored.Rows, .. sound]) is { } fault)
                return (new AppendOutcome.Refused([fault]), false);
            switch (RowReading.Assemble(tip.Key, stored.Rows, sound))
            {
                case JobFileResult.Read read:
                    ProofTable.Write(connection, transaction, changes.SelectMany(ProofsOf));
                    var after = added.After(read.Job.Name);
                    database.Write(connection, transaction,
                        [new JobWrite(after, IsNew: false, added.Rows, SearchTexts.Of(tip.Key, read.Job))]);
                    return (new AppendOutcome.Appended(after.Sequence, after.Hash), true);
                case JobFileResult.Refused refused:
                    return (new AppendOutcome.Refused(refused.Faults), false);
                default:
                    throw new InvalidOperationException("Neither read nor refused.");
            }
        });
    }

    private List<JournalRow> Since(DbConnection connection, DbTransaction transaction, JobTip tip, long expected) =>
        [.. RowReading.Rows(connection, transaction, tip.Id, expected).Select(row => row.Read(out var fault)
            ?? throw new StoreException(
                StoreFault.Damaged, database.Name, $"job \"{tip.Key}\", change {row.Sequence}: {fault}",
                "a store that `stringline store check` finds whole"))];

    private static JournalRow Sound(RawRow row) =>
        row.Read(out var fault) ?? throw new InvalidOperationException("A row just made cannot be read: " + fault);

    private static IReadOnlyList<Proof> ProofsOf(JobChange change) => change switch
    {
        JobChange.Happened happened => happened.Proofs,
        JobChange.Proved proved => proved.Proofs,
        _ => [],
    };

    /// <summary>What is wrong with papers attached later: there must be some, and the change they prove must be an entry.</summary>
    private static Fault? Unproved(string key, IReadOnlyList<JobChange> changes, List<JournalRow> rows)
    {
        foreach (var proved in changes.OfType<JobChange.Proved>())
        {
            if (proved.Proofs.Count == 0)
                return new Fault(key, "", "no paper", "at least one paper that proves the entry");
            if (!rows.Exists(row => row.Sequence == proved.Sequence && row.Kind == ChangeKind.Entry))
                return new Fault(key, "", string.Create(CultureInfo.InvariantCulture, $"papers for change {proved.Sequence}"),
                    "the number of a change that made an entry");
        }

        return null;
    }
}
