using System.Data.Common;
using Stringline.Tables;
using Stringline.Store.Search;

namespace Stringline.Store.Sql;

/// <summary>Makes the search texts of every job, for a store that had none.</summary>
internal static class SearchFilling
{
    private const int Batch = 500;

    public static void Fill(Database database, DbConnection connection, DbTransaction transaction)
    {
        for (long after = 0; ;)
        {
            // In batches, because a connection of PostgreSQL cannot write while it reads. Jobs that do not read are left to the check.
            var jobs = RowReading.Jobs(connection, transaction, new JobsToRead { After = after }).Take(Batch).ToList();
            if (jobs.Count == 0)
                return;
            after = jobs[^1].Tip.Id;
            var writes = new List<JobWrite>();
            foreach (var (tip, rows) in jobs)
            {
                var read = rows.Select(row => row.Read(out _)).OfType<JournalRow>().ToList();
                if (RowReading.Assemble(tip.Key, read, []) is JobFileResult.Read job)
                    writes.Add(new JobWrite(tip, IsNew: false, [], SearchTexts.Of(tip.Key, job.Job)));
            }

            database.Write(connection, transaction, writes);
        }
    }
}
