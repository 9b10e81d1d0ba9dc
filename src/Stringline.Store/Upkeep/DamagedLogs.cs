using System.Globalization;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// Write-ahead logs of a SQLite store of which SQLite will not take, or did not take, all. Before anybody opens the store to write to it,
/// which goes over what was not taken, the log is kept beside it.
/// </summary>
internal static class DamagedLogs
{
    private const string Kept = "_damaged_log_";

    /// <summary>Keeps the log that is there, where it is damaged.</summary>
    /// <param name="path">The store.</param>
    /// <exception cref="StoreException">It cannot be kept. Nothing was written to the store.</exception>
    public static void Keep(string path)
    {
        path = Links.Follow(path);
        var log = path + LogFiles.WriteAhead;
        LostFrames? lost = null;
        try
        {
            lost = WriteAheadLog.Lost(log);
            if (lost is not null && !File.Exists(NameOf(path, lost)))
                WholeCopy.OfFile(log, NameOf(path, lost));
        }
        catch (IOException e) when ((e as FileNotFoundException)?.FileName == log || (lost is not null && File.Exists(NameOf(path, lost))))
        {
            // Another program opened the store in the same moment, and so has kept the log.
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(
                StoreFault.NotAllowed, log,
                $"a log that cannot be read, or that is damaged and cannot be kept beside the store ({e.Message})",
                "a log that can be copied to another name in its folder before the store is written to", e);
        }
    }

    /// <summary>What is said of each: of those that were kept, and of the one that is there.</summary>
    /// <param name="path">The store.</param>
    public static IReadOnlyList<string> Told(string path)
    {
        try
        {
            return [.. Words(Links.Follow(path))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [$"the logs beside {path} cannot be read: {e.Message}"];
        }
    }

    private static IEnumerable<string> Words(string path)
    {
        foreach (var kept in Beside(path))
            yield return $"the write-ahead log that is kept as {kept} was damaged when the store was opened: "
                + $"{Words(WriteAheadLog.Lost(kept))}";
        var log = path + LogFiles.WriteAhead;
        if (WriteAheadLog.Lost(log) is { } lost && !File.Exists(NameOf(path, lost)))
            yield return $"the write-ahead log {log} is damaged: {Words(lost)}";
    }

    private static string Words(LostFrames? lost) => lost switch
    {
        null => "what it lost can no longer be told",
        { Changes: 1 } => Frames(lost) + "the last change that was recorded may be missing",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Frames(lost)}up to {lost.Changes} changes that were recorded may be missing"),
    };

    private static string Frames(LostFrames lost) => string.Create(
        CultureInfo.InvariantCulture, $"{lost.Fit} of its frames were taken and {lost.Lost} after them were not, so ");

    private static string NameOf(string path, LostFrames lost) =>
        string.Create(CultureInfo.InvariantCulture, $"{path}{Kept}{lost.Salts:x16}");

    private static IEnumerable<string> Beside(string path) => Path.GetDirectoryName(path) is { } folder && Directory.Exists(folder)
        ? Directory.GetFiles(folder)
            .Where(file => Path.GetFileName(file).StartsWith(Path.GetFileName(path) + Kept, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
        : [];
}
