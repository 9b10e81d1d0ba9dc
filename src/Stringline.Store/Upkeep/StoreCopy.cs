using System.Globalization;
using Dapper;
using Stringline.Store.Chain;
using Stringline.Store.Search;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// Copies every change and paper of one store, and what the office has set, into another that has none, as they are, in one transaction.
/// </summary>
internal static class StoreCopy
{
    private const int Batch = 500;

    /// <summary>
    /// Copies, then walks the copy: what comes back is the check of the copy, which is whole and has the seal of the source.
    /// </summary>
    /// <exception cref="StoreException">
    /// The target holds jobs; or the source cannot be read; or the copy is not the same, which is then left for inspection.
    /// </exception>
    public static CheckReport Copy(SqlJournal from, SqlJournal to, IProgress<StoreProgress>? progress)
    {
        var source = from.Check(progress);
        MustBeWhole(source, from.Name);
        to.Database.Change((writer, transaction) =>
        {
            if (writer.ExecuteScalar<long>("select jobs from store", transaction: transaction) > 0)
                throw new StoreException(
                    StoreFault.Exists, to.Name, "a store that holds jobs", "an empty store, or none: the copy takes its whole place");
            var jobs = 0L;
            foreach (var piece in from.Database.Stream(Pieces).Chunk(Batch))
            {
                foreach (var (hash, kind, content) in piece.Where(p => p.Paper is not null).Select(p => p.Paper!.Value))
                    ProofTable.Write(writer, transaction, hash, kind, content);
                List<JobWrite> writes = [.. piece.Where(p => p.Job is not null).Select(p => p.Job!)];
                if (writes.Count > 0)
                    to.Database.Write(writer, transaction, writes);
                jobs += writes.Count;
                progress?.Report(new StoreProgress("jobs copied", jobs, source.Jobs));
            }

            if (from.ReadSettings() is { } settings)
                SettingsTable.Write(writer, transaction, SettingsTable.Read(writer, transaction), settings);
            var kept = from.Database.Run(connection =>
            {
                using var snapshot = from.Database.BeginSnapshot(connection);
                return SealedAt.Kept(connection, snapshot) ?? "";
            });
            writer.Execute("update store set jobs = @jobs, sealed = @kept", new { jobs, kept }, transaction);
            return (true, true);
        });
        var copy = to.Check(progress);
        MustBeWhole(copy, to.Name);
        return copy;

        IEnumerable<Piece> Pieces(System.Data.Common.DbConnection connection, System.Data.Common.DbTransaction snapshot) =>
            ProofTable.All(connection, snapshot).Select(paper => new Piece(paper, null))
                .Concat(RowReading.Jobs(connection, snapshot, JobsToRead.All).Select(job =>
                {
                    var read = RowReading.Job(from.Database, job.Tip, job.Rows);
                    return new Piece(null, new JobWrite(job.Tip, IsNew: true, job.Rows, SearchTexts.Of(job.Tip.Key, read.Job)));
                }));
    }

    /// <summary>
    /// Refuses a store whose journal is not whole, with its first broken link. What is derived is made anew wherever it is needed.
    /// </summary>
    public static void MustBeWhole(CheckReport report, string store)
    {
        if (!report.JournalIsWhole)
            throw new StoreException(
                StoreFault.Damaged, store, report.Broken.First(link => link.Part == StorePart.Journal).ToString(),
                "a store that `stringline store check` finds whole");
    }

    /// <summary>Refuses a copy that is not the same as its source.</summary>
    public static void MustBeEqual(CheckReport source, CheckReport copy, string store)
    {
        if (source.Seal != copy.Seal || source.Jobs != copy.Jobs || source.Changes != copy.Changes || source.Proofs != copy.Proofs)
        {
            throw new StoreException(
                StoreFault.Failed,
                store,
                string.Create(CultureInfo.InvariantCulture,
                    $"{copy.Jobs} jobs, {copy.Changes} changes, {copy.Proofs} papers, seal {copy.Seal}"),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"as the source: {source.Jobs} jobs, {source.Changes} changes, {source.Proofs} papers, seal {source.Seal}; "
                    + $"stop all who write to it, and try again"));
        }
    }

    private sealed record Piece((byte[] Hash, string Kind, byte[] Content)? Paper, JobWrite? Job);
}
