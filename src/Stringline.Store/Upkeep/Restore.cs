using System.Globalization;
using NodaTime.Text;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Puts a backup in the place of a store.</summary>
public static class Restore
{
    private static readonly InstantPattern Stamp = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'_'HHmmss");

    /// <summary>Restores a backup and walks what was restored.</summary>
    /// <param name="backup">The backup's file.</param>
    /// <param name="address">The store's address.</param>
    /// <param name="replace">Whether a store that is there may be replaced. It is set aside under another name, never erased.</param>
    /// <param name="clock">Gives the name of what is set aside.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <exception cref="StoreException">The backup is not whole, or a store is there and may not be replaced. What is there stays as it was.</exception>
    public static Restored From(string backup, string address, bool replace, IClock clock, IProgress<StoreProgress>? progress = null)
    {
        var place = StoreAddress.Read(address);
        using var source = Journals.Connect(StoreAddress.ReadFile(backup, "the backup"), clock, OpenStore.ReadOnly);
        var check = source.Check(progress);
        StoreCopy.MustBeWhole(check, backup);
        var aside = "_replaced_" + Stamp.Format(clock.GetCurrentInstant());
        return place is StoreAddress.OnServer
            ? ToServer(source, check, address, replace, aside, clock, progress)
            : ToFile(source, check, address, replace, aside, clock, progress);
    }

    private static Restored ToFile(SqlJournal source, CheckReport expected, string path, bool replace, string aside, IClock clock, IProgress<StoreProgress>? progress)
    {
        var there = Path.Exists(path);
        if (there && !replace)
            throw Exists(path);
        if (Directory.Exists(path))
            throw new StoreException(StoreFault.NotAStore, path, "a folder", "the file of a store");
        string? kept = null;
        var report = SqliteFile.Finish(path, part =>
        {
            SqliteFile.Copy(source.Database, part);
            SqliteFile.Settle(part, writeAheadLog: true);
            CheckReport check;
            using (var copy = Journals.Connect(part, clock, OpenStore.MustExist))
                check = copy.Check(progress);
            StoreCopy.MustBeWhole(check, part);
            StoreCopy.MustBeEqual(expected, check, part);
            if (there)
                SqliteFile.SetAside(path, kept = path + aside);
            return check;
        });
        return new Restored(report, kept);
    }

    private static Restored ToServer(SqlJournal source, CheckReport expected, string address, bool replace, string aside, IClock clock, IProgress<StoreProgress>? progress)
    {
        string? kept = null;
        using (var there = Journals.Connect(address, clock, OpenStore.OrMake))
        {
            if (there.Tips().Any())
            {
                if (!replace)
                    throw Exists(there.Name);
                var server = (PostgresDatabase)there.Database;
                kept = (server.Schema + aside).ToLower(CultureInfo.InvariantCulture);
                server.SetAside(kept);
            }
        }

        using var store = Journals.Connect(address, clock, OpenStore.OrMake);
        var report = StoreCopy.Copy(source, store, progress);
        StoreCopy.MustBeEqual(expected, report, store.Name);
        return new Restored(report, kept is null ? null : "schema " + kept);
    }

    private static StoreException Exists(string store) => new(
        StoreFault.Exists, store, "a store that is there already", "an empty place, or --replace: the store is then set aside under another name and the backup takes its place");
}

/// <summary>What was restored.</summary>
/// <param name="Check">The check of the restored store.</param>
/// <param name="SetAside">Where the store is now that was there before; null where there was none.</param>
public sealed record Restored(CheckReport Check, string? SetAside);
