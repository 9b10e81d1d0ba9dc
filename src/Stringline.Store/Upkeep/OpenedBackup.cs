using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// A backup, opened without a word being written to it or beside it. One that an earlier version of the program made is brought to this
/// version in a copy, which is removed when it is closed.
/// </summary>
internal sealed class OpenedBackup : IDisposable
{
    private readonly PartFolder? copied;

    private OpenedBackup(SqlJournal journal, PartFolder? copied) => (Journal, this.copied) = (journal, copied);

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
            var parts = PartFolder.In(Path.GetTempPath());
            try
            {
                var copy = parts.Of(Path.GetFileName(path));
                WholeCopy.OfFile(path, copy);
                return new OpenedBackup(Journals.Connect(copy, clock, OpenStore.MustExist), parts);
            }
            catch
            {
                parts.Dispose();
                throw;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Journal.Dispose();
        copied?.Dispose();
    }
}
