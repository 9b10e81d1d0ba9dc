using Microsoft.Data.Sqlite;
using NodaTime.Text;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Puts a backup in the place of a store.</summary>
public static class Restore
{
    private static readonly InstantPattern Stamp = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'_'HHmmss");

    /// <summary>
    /// Restores a backup, and walks what was restored once more in its place. At every moment the address holds the whole old store or the
    /// whole new one, even where the program is killed.
    /// </summary>
    /// <param name="backup">The backup's file.</param>
    /// <param name="address">The store's address.</param>
    /// <param name="replace">Whether a store that is there may be replaced. It is set aside under another name, never erased.</param>
    /// <param name="clock">Gives the name of what is set aside.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <exception cref="StoreException">
    /// The backup is not whole, or a store is there and may not be replaced, or is in use. What is there stays as it was.
    /// </exception>
    public static Restored From(string backup, string address, bool replace, IClock clock, IProgress<StoreProgress>? progress = null)
    {
        var place = StoreAddress.Read(address);
        using var opened = OpenedBackup.Of(StoreAddress.ReadFile(backup, "the backup"), clock);
        var source = opened.Journal;
        var check = source.Check(progress);
        StoreCopy.MustBeWhole(check, backup);
        var aside = KeptStores.Aside + Stamp.Format(clock.GetCurrentInstant());
        var restored = place switch
        {
            StoreAddress.OnServer server => ServerSwap.Restore(source, check, server, replace, aside, clock, progress),
            StoreAddress.InFile file => ToFile(source, check, Links.Follow(file.Path), replace, aside, clock, progress),
            _ => throw new InvalidOperationException("Neither a file nor a server."),
        };

        // What was walked before it was put there says nothing of what else lies there.
        using var there = Journals.Connect(place, clock, OpenStore.MustExist);
        var walked = there.Check(progress);
        StoreCopy.MustBeWhole(walked, there.Name);
        StoreCopy.MustBeEqual(check, walked, there.Name);
        return restored with { Check = walked };
    }

    internal static StoreException Exists(string store) => new(
        StoreFault.Exists, store, "a store that is there already",
        "an empty place, or --replace: the store is then set aside under another name and the backup takes its place");

    private static Restored ToFile(
        SqlJournal source, CheckReport expected, string path, bool replace, string aside, IClock clock, IProgress<StoreProgress>? progress)
    {
        var there = Path.Exists(path);
        if (there && !replace)
            throw Exists(path);
        if (Directory.Exists(path))
            throw new StoreException(StoreFault.NotAStore, path, "a folder", "the file of a store");
        List<string> cleared = [];
        IReadOnlyList<string> kept = [];
        var report = SqliteFile.Finish(
            path,
            part =>
            {
                source.Database.Run(connection => WholeCopy.OfDatabase((SqliteConnection)connection, part, path));
                SqliteFile.Settle(part, writeAheadLog: true);
                CheckReport check;
                using (var copy = Journals.Connect(part, clock, OpenStore.MustExist))
                    check = copy.Check(progress);
                StoreCopy.MustBeWhole(check, part);
                StoreCopy.MustBeEqual(expected, check, part);
                return check;
            },
            part => kept = there ? [SqliteSwap.Replace(part, path, aside, cleared: cleared)] : PutFirst(part, path, aside),
            cleared);
        return new Restored(report, there ? kept[0] : null) { StrayLogs = there ? [] : kept, Cleared = cleared };
    }

    // A desk that makes its store at the same place would otherwise have its log set aside as one that a lost store left.
    private static IReadOnlyList<string> PutFirst(string part, string path, string aside)
    {
        using var turn = MakingTurn.Of(path);
        return Path.Exists(path) ? throw Exists(path) : SqliteSwap.Put(part, path, aside);
    }
}

/// <summary>What was restored.</summary>
/// <param name="Check">The check of the restored store.</param>
/// <param name="SetAside">Where the store is now that was there before; null where there was none.</param>
public sealed record Restored(CheckReport Check, string? SetAside)
{
    /// <summary>Where logs are now that a store left at the place which is no longer there; they are part of no store.</summary>
    public IReadOnlyList<string> StrayLogs { get; init; } = [];

    /// <summary>What was removed that programs left which were killed over a restore or a backup.</summary>
    public IReadOnlyList<string> Cleared { get; init; } = [];
}
