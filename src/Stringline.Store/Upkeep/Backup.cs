using System.Globalization;
using Microsoft.Data.Sqlite;
using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>Makes backups: one SQLite file, whatever the store is on, made while others read and write.</summary>
public static class Backup
{
    /// <summary>
    /// Makes a backup and reads it back: every chain and paper in it is whole, and it holds all that the store held when the backup began.
    /// </summary>
    /// <param name="journal">The store.</param>
    /// <param name="path">Where the backup goes; nothing may be there.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <returns>The check of the backup.</returns>
    /// <exception cref="StoreException">
    /// It cannot be made, or the backup is not what it should be. Nothing is then at <paramref name="path"/>.
    /// </exception>
    public static CheckReport Make(IJournal journal, string path, IProgress<StoreProgress>? progress = null)
    {
        var store = (SqlJournal)journal;
        StoreAddress.ReadFile(path, "the backup");
        if (Path.Exists(path))
            throw new StoreException(StoreFault.Exists, path, "something that is there already", "a new name for the backup");
        var before = store.Tips().ToList();
        var report = SqliteFile.Finish(path, part =>
        {
            if (store.Database is SqliteDatabase)
                store.Database.Run(connection => WholeCopy.OfDatabase((SqliteConnection)connection, part, path));
            else
                CopyFromServer(store, part, progress);
            SqliteFile.Settle(part, writeAheadLog: false);
            using var copy = Journals.Connect(part, SystemClock.Instance, OpenStore.ReadOnly);
            var check = copy.Check(progress);
            StoreCopy.MustBeWhole(check, part);
            if ((copy.FirstNotHeld(before) ?? store.FirstNotHeld(copy.Tips())) is { } missing)
                throw new StoreException(
                    StoreFault.Failed, path,
                    string.Create(CultureInfo.InvariantCulture,
                        $"a backup in which job \"{missing.Key}\" is not as in the store at change {missing.Sequence}"),
                    "the same as the store");
            return check;
        });
        return report;
    }

    private static void CopyFromServer(SqlJournal store, string part, IProgress<StoreProgress>? progress)
    {
        using var copy = Journals.Connect(part, SystemClock.Instance, OpenStore.OrMake);
        StoreCopy.Copy(store, copy, progress);
    }
}
