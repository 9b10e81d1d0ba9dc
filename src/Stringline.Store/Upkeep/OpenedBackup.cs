using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// A backup, opened without a word being written to it or beside it. One that an earlier version of the program made is brought to this
/// version in a copy, which is removed when it is closed.
/// </summary>
internal sealed class OpenedBackup : IDisposable
{
    private readonly DirectoryInfo? copied;

    private OpenedBackup(SqlJournal journal, DirectoryInfo? copied) => (Journal, this.copied) = (journal, copied);

    /// <summary>What it holds.</summary>
    public SqlJournal Journal { get; }

    /// <summary>Opens it.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="clock">For the journal.</param>
    /// <exception cref="StoreException">It cannot be opened, or is no store.</exception>
    public static OpenedBackup Of(string path, IClock clock)
    {
        try
        {
            return new OpenedBackup(Journals.Connect(path, clock, OpenStore.ReadOnly), null);
        }
        catch (StoreException e) when (e.Fault == StoreFault.EarlierVersion)
        {
            var folder = Directory.CreateTempSubdirectory("stringline-backup-");
            try
            {
                var copy = Path.Combine(folder.FullName, Path.GetFileName(path));
                using (var from = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read))
                using (var to = OwnerOnly.File(copy, FileMode.CreateNew))
                    from.CopyTo(to);
                return new OpenedBackup(Journals.Connect(copy, clock, OpenStore.MustExist), folder);
            }
            catch
            {
                folder.Delete(recursive: true);
                throw;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Journal.Dispose();
        copied?.Delete(recursive: true);
    }
}
