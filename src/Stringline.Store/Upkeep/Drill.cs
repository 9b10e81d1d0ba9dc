namespace Stringline.Store.Upkeep;

/// <summary>A restore to try whether it would work: a backup that nobody has restored is a hope.</summary>
public static class Drill
{
    /// <summary>Restores the newest backup of a folder into a temporary place, walks it from end to end, and removes it again.</summary>
    /// <param name="folder">The folder of backups.</param>
    /// <param name="clock">For the restored store.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <exception cref="StoreException">There is none, or it cannot be restored, or what was restored is not whole.</exception>
    public static Drilled Newest(BackupFolder folder, IClock clock, IProgress<StoreProgress>? progress = null)
    {
        if (folder.All() is not [var newest, ..])
        {
            throw new StoreException(
                StoreFault.Missing, folder.Path, "no backup of this store",
                "the folder in which its daily backups lie; --from names another");
        }

        using var place = PartFolder.In(Path.GetTempPath());
        var restored = place.Of("restored.stringline");
        Restore.From(newest.Path, restored, replace: false, clock, progress);
        using var journal = Journals.Connect(restored, clock, OpenStore.ReadOnly);
        var check = journal.Check(progress);
        StoreCopy.MustBeWhole(check, newest.Path);
        return new Drilled(newest, check);
    }
}

/// <summary>What a drill gave.</summary>
/// <param name="Backup">The backup.</param>
/// <param name="Check">What the walk through the restored store gave.</param>
public sealed record Drilled(DatedBackup Backup, CheckReport Check);
