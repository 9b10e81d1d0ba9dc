using System.Data.Common;
using System.Text;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>
/// Makes a seal, and sees to it that whatever is recorded later has a later moment: so what stood then can be told at any time.
/// </summary>
internal static class Sealing
{
    // A change that another desk recorded a little in the future still belongs to today's seal; one of next year does not.
    private static readonly Duration Ahead = Duration.FromDays(1);

    public static Seal Make(Database database, DbConnection connection, DbTransaction transaction, RecordingClock clock)
    {
        RowReading.Run(connection, transaction, database.BeforeSealing);
        var at = Moment(connection, transaction, Moments.Now(database, clock.Clock));
        var hash = new SealHash();
        var each = new List<SealedJob>();
        long changes = 0, notInLine = 0;
        foreach (var job in SealRows.All(connection, transaction))
        {
            var marks = new StringBuilder(job.Rows.Count * SealedJob.MarkLength);
            foreach (var row in job.Rows)
                marks.Append(SealedJob.MarkOf(row.Hash));
            var last = job.After(job.Rows.Count);
            each.Add(new SealedJob(job.Key, last.Sequence, last.Hash, marks.ToString()));
            var by = job.By(at);
            hash.Add(job.After(by));
            changes += by;
            notInLine += job.Rows.Count - by;
        }

        RowReading.Run(connection, transaction, "update store set sealed = @sealed", ("@sealed", SealedAt.Write(at)));
        return new Seal(at, each.Count, changes, hash.Value().ToString()[..Seal.HeadLength]) { Each = each, NotInLine = notInLine };
    }

    private static Instant Moment(DbConnection connection, DbTransaction transaction, Instant now)
    {
        using var command = RowReading.Command(
            connection, transaction, "select max(at) from changes where at <= @limit", ("@limit", RawRow.Microseconds(now + Ahead)));
        var at = now;
        if (command.ExecuteScalar() is long last && RawRow.Moment(last) > at)
            at = RawRow.Moment(last);
        if (SealedAt.Read(SealedAt.Kept(connection, transaction)) is { } before && before > at)
            at = before;

        // Up to the next whole second, which is easier to write down.
        var seconds = at.ToUnixTimeSeconds();
        return Instant.FromUnixTimeSeconds(Instant.FromUnixTimeSeconds(seconds) < at ? seconds + 1 : seconds);
    }
}
