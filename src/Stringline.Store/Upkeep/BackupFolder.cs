using NodaTime.Text;

namespace Stringline.Store.Upkeep;

/// <summary>
/// A folder of backups of one store, each named <c>STORE_YEAR-MONTH-DAY_TIME.backup</c>. Whatever else lies there is left alone. A file
/// has its name only once it was read back and found whole (<see cref="Backup.Make"/>).
/// </summary>
public sealed class BackupFolder
{
    private const string Ending = ".backup";

    private static readonly LocalDateTimePattern Stamp = LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'_'HHmmss");

    private readonly string head;

    /// <summary>The folder; it need not be there yet.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="store">
    /// What the names of the backups begin with: letters, digits, dots and hyphens; other characters become hyphens.
    /// </param>
    public BackupFolder(string path, string store)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentException.ThrowIfNullOrWhiteSpace(store);
        Path = System.IO.Path.GetFullPath(path);
        head = string.Concat(store.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' ? c : '-')) + "_";
    }

    /// <summary>The folder's path.</summary>
    public string Path { get; }

    /// <summary>The backups of the store, newest first; none where the folder is not there.</summary>
    /// <exception cref="StoreException">The folder cannot be read.</exception>
    public IReadOnlyList<DatedBackup> All() => Asked(() => Directory.Exists(Path)
        ? Directory.EnumerateFiles(Path, head + "*" + Ending).Select(Dated).OfType<DatedBackup>().OrderByDescending(one => one.At).ToList()
        : []);

    /// <summary>Makes one, and reads it back.</summary>
    /// <param name="journal">The store.</param>
    /// <param name="now">The time for its name.</param>
    /// <param name="progress">Told how far it is; may be null.</param>
    /// <exception cref="StoreException">It cannot be made; then nothing of it is left.</exception>
    public DatedBackup Make(IJournal journal, LocalDateTime now, IProgress<StoreProgress>? progress = null)
    {
        var at = now.With(TimeAdjusters.TruncateToSecond);
        var path = System.IO.Path.Combine(Path, head + Stamp.Format(at) + Ending);
        Backup.Make(journal, path, progress);
        return new DatedBackup(path, at);
    }

    /// <summary>Deletes those that need not be kept (<see cref="BackupsKept"/>).</summary>
    /// <param name="today">Today.</param>
    /// <returns>Those deleted.</returns>
    /// <exception cref="StoreException">One cannot be deleted.</exception>
    public IReadOnlyList<DatedBackup> Thin(LocalDate today)
    {
        var all = All();
        var kept = BackupsKept.Of(all.Select(one => one.At), today);
        var over = all.Where(one => !kept.Contains(one.At)).ToList();
        return Asked(() =>
        {
            foreach (var one in over)
                File.Delete(one.Path);
            return over;
        });
    }

    private DatedBackup? Dated(string path)
    {
        var name = System.IO.Path.GetFileName(path);
        return name.Length > head.Length + Ending.Length && Stamp.Parse(name[head.Length..^Ending.Length]) is { Success: true } at
            ? new DatedBackup(path, at.Value)
            : null;
    }

    private T Asked<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreFault.NotAllowed, Path, e.Message, "a folder for backups that this user may read and write", e);
        }
    }
}
