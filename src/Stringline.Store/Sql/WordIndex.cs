using System.Globalization;
using System.Data.Common;
using Dapper;
using Microsoft.Data.Sqlite;

namespace Stringline.Store.Sql;

/// <summary>
/// The books that SQLite's index of words keeps of itself (https://www.sqlite.org/fts5.html, section 9): it does not look through them
/// where it has no texts of its own to compare with.
/// </summary>
internal static class WordIndex
{
    // Words stand in the index once a job, and in the texts of a job as this program joins them.
    private const string Sizes = "select d.id, d.sz, coalesce(v.n, 0) from search_docsize d left join (select doc, count(*) as n from "
        + "temp.search_terms group by doc) v on v.doc = d.id order by d.id";

    /// <summary>The words of each job, as the index gives them.</summary>
    public static IEnumerable<(long Job, string Word)> Words(DbConnection connection, DbTransaction snapshot)
    {
        Terms(connection, snapshot);
        using var command = RowReading.Command(connection, snapshot, "select doc, term from temp.search_terms");
        using var reader = command.ExecuteReader();
        while (reader.Read())
            yield return (reader.GetInt64(0), reader.GetString(1));
    }

    // Walked from end to end the index gives what it holds; asked for a word, what its own table of contents leads to. Both must be the
    // same.
    private const string Unled =
        """
        select v.term from temp.search_rows v
        where v.doc <> (select count(*) from search s where s.search match '"' || v.term || '"') order by v.term limit 1
        """;

    /// <summary>What is wrong with the books.</summary>
    public static IEnumerable<string> Check(DbConnection connection, DbTransaction snapshot)
    {
        Terms(connection, snapshot);
        using (var fresh = Fresh())
        {
            if (!Settings(connection, snapshot).SequenceEqual(Settings(fresh, null)))
                yield return "the settings of the index of words are not those that this program makes";
        }

        foreach (var (job, size, counted) in connection.Query<(long, byte[], long)>(Sizes, transaction: snapshot))
        {
            if (!Numbers(size).SequenceEqual([counted]))
                yield return string.Create(CultureInfo.InvariantCulture, $"job number {job}: the index of words does not count its words");
        }

        RowReading.Run(connection, snapshot, "drop table if exists temp.search_rows");
        RowReading.Run(connection, snapshot, "create virtual table temp.search_rows using fts5vocab(main, search, row)");
        if (connection.ExecuteScalar<string?>(Unled, transaction: snapshot) is { } word)
            yield return $"the index of words does not lead to the word \"{word}\"";
    }

    // A view of the index, of this connection alone.
    private static void Terms(DbConnection connection, DbTransaction snapshot)
    {
        RowReading.Run(connection, snapshot, "drop table if exists temp.search_terms");
        RowReading.Run(connection, snapshot, "create virtual table temp.search_terms using fts5vocab(main, search, instance)");
    }

    private static List<(string, string)> Settings(DbConnection connection, DbTransaction? snapshot) =>
        [.. connection.Query<(string, string)>("select k, cast(v as text) from search_config order by k", transaction: snapshot)];

    private static SqliteConnection Fresh()
    {
        var fresh = new SqliteConnection("Data Source=:memory:");
        fresh.Open();
        fresh.Execute(SqliteGuards.WordIndex);
        return fresh;
    }

    // Numbers as SQLite writes them: seven bits a byte, most significant first, the last byte below 128.
    private static List<long> Numbers(byte[] bytes)
    {
        var numbers = new List<long>();
        long number = 0;
        foreach (var part in bytes)
        {
            number = (number << 7) | (part & 0x7FL);
            if (part >= 0x80)
                continue;
            numbers.Add(number);
            number = 0;
        }

        return numbers;
    }
}
