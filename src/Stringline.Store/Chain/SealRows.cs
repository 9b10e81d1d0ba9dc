using System.Data.Common;
using Stringline.Store.Sql;

namespace Stringline.Store.Chain;

/// <summary>What a seal looks at of a job: where each of its changes stands in the chain, and when it was recorded.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Key">Its key.</param>
/// <param name="Rows">Its changes in order.</param>
internal sealed record SealRows(long Id, string Key, IReadOnlyList<SealRow> Rows)
{
    /// <summary>How many of the first changes were recorded by a moment: those before the first that was not.</summary>
    public int By(Instant moment)
    {
        var limit = RawRow.Microseconds(moment);
        var count = 0;
        while (count < Rows.Count && Rows[count].At <= limit)
            count++;
        return count;
    }

    /// <summary>Where the job was after so many changes.</summary>
    public JobTip After(int count) => new(Id, Key, "", count, count == 0 ? ChainHash.Beginning : Rows[count - 1].Hash);

    /// <summary>Every job, by id.</summary>
    public static IEnumerable<SealRows> All(DbConnection connection, DbTransaction transaction)
    {
        using var command = RowReading.Command(
            connection,
            transaction,
            "select j.id, j.key, c.sequence, c.at, c.hash from jobs j left join changes c on c.job = j.id order by j.id, c.sequence");
        using var reader = command.ExecuteReader();
        SealRows? job = null;
        List<SealRow> rows = [];
        while (reader.Read())
        {
            if (job?.Id != reader.GetInt64(0))
            {
                if (job is not null)
                    yield return job;
                job = new SealRows(reader.GetInt64(0), reader.GetString(1), rows = []);
            }

            if (!reader.IsDBNull(2))
                rows.Add(new SealRow(reader.GetInt64(2), reader.GetInt64(3), ContentHash.From(reader.GetFieldValue<byte[]>(4))));
        }

        if (job is not null)
            yield return job;
    }
}

/// <summary>A change as far as a seal looks at it.</summary>
/// <param name="Sequence">Its number.</param>
/// <param name="At">When it was recorded, in microseconds since 1970.</param>
/// <param name="Hash">Its hash.</param>
internal readonly record struct SealRow(long Sequence, long At, ContentHash Hash);
