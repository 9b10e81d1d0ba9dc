using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Stringline.Store;

namespace Stringline.Office.Import;

/// <summary>
/// Tables that were given to the desk, each in a folder of its own beside the store (for a store on a server: in the user's own folder).
/// Nothing of it is served but the list of refused rows, as a download.
/// </summary>
internal sealed partial class WaitingTables(DeskOptions options, IClock clock)
{
    private const int MostKept = 20;
    private const int LongestName = 100;
    private const string StateFile = "state.json";

    private readonly Lock gate = new();

    /// <summary>The folder.</summary>
    public string Folder { get; } = StoreAddress.Read(options.Store) is StoreAddress.InFile file
        ? Path.GetFullPath(file.Path) + ".imports"
        : Path.Combine(DeskOptions.UserFolder, "imports",
            Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(options.Store)))[..12]);

    /// <summary>The folder of one table.</summary>
    public string FolderOf(ImportState state) => Path.Combine(Folder, state.Id);

    /// <summary>The table.</summary>
    public string PathOf(ImportState state) => Path.Combine(FolderOf(state), state.File);

    /// <summary>The list of its refused rows; null where there is none.</summary>
    public string? RefusedOf(ImportState state)
    {
        var path = RefusedRowsFile.NameOf(PathOf(state));
        return File.Exists(path) ? path : null;
    }

    /// <summary>Takes a table in, straight into a file.</summary>
    /// <param name="from">Its content.</param>
    /// <param name="name">Its name at home.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>It, or why it was not taken.</returns>
    public async Task<Outcome<ImportState>> ReceiveAsync(Stream from, string name, CancellationToken stop)
    {
        var id = Guid.NewGuid().ToString("N");
        var folder = Path.Combine(Folder, id);
        try
        {
            OwnerOnly.Folder(Folder);
            OwnerOnly.Folder(folder);
            var part = Path.Combine(folder, "received.part");
            var (bytes, lines, whole) = await CopyAsync(from, part, stop).ConfigureAwait(false);
            var found = $"larger than {options.LargestTable / (1024 * 1024)} MiB";
            if (!whole || TableContent.EndingOf(part, stop, out found) is not { } ending)
            {
                Directory.Delete(folder, recursive: true);
                return new Outcome<ImportState>.Refused(
                    [$"\"{Shown(name)}\" was not taken: it is {found}. It should be a table: CSV, or a workbook (XLSX) without a password, "
                        + $"of at most {options.LargestTable / (1024 * 1024)} MiB."]);
            }

            var state = new ImportState
            {
                Id = id,
                File = SafeName(name, ending),
                Bytes = bytes,
                AboutRows = ending == ".csv" ? lines : 0,
                Received = clock.GetCurrentInstant().ToString("g", CultureInfo.InvariantCulture),
            };
            File.Move(part, Path.Combine(folder, state.File));
            Keep(state);
            Tidy(state);
            return new Outcome<ImportState>.Done(state);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Drop(folder);
            return new Outcome<ImportState>.Refused(
                [$"\"{Shown(name)}\" could not be kept beside the store ({e.Message}). Nothing was imported. There should be room for it "
                    + $"at {Folder}."]);
        }
        catch
        {
            Drop(folder);
            throw;
        }
    }

    /// <summary>The table of that name; null where there is none.</summary>
    public ImportState? Find(string id)
    {
        if (!Id().IsMatch(id))
            return null;
        lock (gate)
        {
            var path = Path.Combine(Folder, id, StateFile);
            try
            {
                return File.Exists(path) ? JsonSerializer.Deserialize(File.ReadAllBytes(path), ImportJson.Default.ImportState) : null;
            }
            catch (JsonException)
            {
                // Written by another version of the program: the table must be given again.
                return null;
            }
        }
    }

    /// <summary>All of them, the last received first.</summary>
    public IReadOnlyList<ImportState> All() => !Directory.Exists(Folder)
        ? []
        : [.. Directory.EnumerateDirectories(Folder).Select(folder => Find(Path.GetFileName(folder))).OfType<ImportState>()
            .OrderByDescending(state => state.Received, StringComparer.Ordinal)
            .ThenByDescending(state => Directory.GetCreationTimeUtc(FolderOf(state)))];

    /// <summary>Keeps how far a table has come.</summary>
    public void Keep(ImportState state)
    {
        lock (gate)
        {
            var path = Path.Combine(Folder, state.Id, StateFile);
            OwnerOnly.Write(path + ".part", JsonSerializer.SerializeToUtf8Bytes(state, ImportJson.Default.ImportState));
            File.Move(path + ".part", path, overwrite: true);
        }
    }

    /// <summary>Puts a table away for good; what was imported stays.</summary>
    public void Remove(ImportState state)
    {
        lock (gate)
            Directory.Delete(FolderOf(state), recursive: true);
    }

    /// <summary>Deletes the table itself once it is written; what was told of it stays.</summary>
    public void RemoveTable(ImportState state) => File.Delete(PathOf(state));

    /// <summary>Marks a table as being read, until what is given back is disposed of; null where another desk reads it.</summary>
    public IDisposable? Mark(ImportState state) => ReadingMark.Set(FolderOf(state));

    /// <summary>Whether a program ended while it was reading that table. It is told once.</summary>
    public bool TakeLeftMark(ImportState state) => ReadingMark.TakeLeft(FolderOf(state));

    private void Tidy(ImportState received)
    {
        foreach (var old in All().Where(state => !state.IsRunning && state.Id != received.Id).Skip(MostKept))
            Remove(old);
    }

    private static void Drop(string folder)
    {
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    // What is beyond the largest is read and dropped, up to a bound, so that the browser hears the answer instead of a broken line.
    private async Task<(long Bytes, long Lines, bool Whole)> CopyAsync(Stream from, string path, CancellationToken stop)
    {
        const int MostDropped = 8;
        var to = OwnerOnly.File(path, FileMode.CreateNew, isAsync: true);
        await using (to.ConfigureAwait(false))
        {
            var buffer = new byte[1 << 17];
            long bytes = 0, lines = 0;
            int read;
            while ((read = await from.ReadAsync(buffer, stop).ConfigureAwait(false)) > 0)
            {
                bytes += read;
                if (bytes > MostDropped * options.LargestTable)
                    break;
                if (bytes > options.LargestTable)
                    continue;
                lines += buffer.AsSpan(0, read).Count((byte)'\n');
                await to.WriteAsync(buffer.AsMemory(0, read), stop).ConfigureAwait(false);
            }

            return (bytes, lines, bytes <= options.LargestTable);
        }
    }

    private static string Shown(string name) => name.Length <= LongestName ? name : name[..LongestName] + "…";

    // A name from a form is only words: no folder, no mark that means something to a shell or a system, and the ending that the content
    // has.
    private static string SafeName(string name, string ending)
    {
        var bare = Path.GetFileNameWithoutExtension(name.Replace('\\', '/').Split('/')[^1]);
        var safe = new StringBuilder();
        foreach (var c in bare.Take(LongestName))
            safe.Append(char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or ' ' ? c : '-');
        var text = safe.ToString().Trim(' ', '-');
        return (text.Length == 0 || text is "state" ? "table" : text) + ending;
    }

    [GeneratedRegex("^[0-9a-f]{32}$")]
    private static partial Regex Id();
}
