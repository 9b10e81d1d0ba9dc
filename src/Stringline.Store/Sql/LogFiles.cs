namespace Stringline.Store.Sql;

/// <summary>The files that SQLite keeps beside a database while it is in use (https://www.sqlite.org/tempfiles.html).</summary>
internal static class LogFiles
{
    /// <summary>The write-ahead log.</summary>
    public const string WriteAhead = "-wal";

    /// <summary>What is added to the name of the database for each of them.</summary>
    public static IReadOnlyList<string> Ends { get; } = [WriteAhead, "-shm", "-journal"];

    /// <summary>The ends of those that are beside a database.</summary>
    public static IEnumerable<string> Beside(string path) => Ends.Where(end => File.Exists(path + end));
}
