using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace Stringline.Store.Upkeep;

/// <summary>
/// A folder in which something is made before it gets its place: a file that is not finished is a readable copy of the data, and must not
/// stay when the program is killed. Only its owner may open the folder, no two have the same, and a lock that the system takes back
/// however the program ends shows whether somebody still works in it. Whoever makes one removes those that nobody works in any more.
/// </summary>
internal sealed partial class PartFolder : IDisposable
{
    private const string LockName = "in-work";
    private const int Tries = 5;

    private readonly string folder;
    private readonly FileStream held;

    private PartFolder(string folder, FileStream held) => (this.folder, this.held) = (folder, held);

    /// <summary>What was removed of others.</summary>
    public IReadOnlyList<string> Swept { get; private init; } = [];

    /// <summary>Makes one.</summary>
    /// <param name="place">The folder in which it is made, on the disk on which the finished thing will be.</param>
    public static PartFolder In(string place)
    {
        OwnerOnly.Folder(place);
        for (var tried = 1; ; tried++)
        {
            var folder = Path.Combine(place, $"stringline-{RandomNumberGenerator.GetHexString(16, lowercase: true)}.part");
            try
            {
                OwnerOnly.Folder(folder);
                var held = OwnerOnly.File(Path.Combine(folder, LockName), FileMode.CreateNew, FileAccess.ReadWrite);

                // Another may have taken it for one that was left, in the moment before it was locked.
                if (File.Exists(Path.Combine(folder, LockName)))
                    return new PartFolder(folder, held) { Swept = SweepBeside(folder, place) };
                held.Dispose();
            }
            catch (IOException) when (tried < Tries)
            {
                RemoveEmpty(folder);
            }
            catch
            {
                RemoveEmpty(folder);
                throw;
            }
        }
    }

    /// <summary>Those in a folder in which nobody works.</summary>
    public static IEnumerable<string> Left(string place)
    {
        foreach (var folder in All(place).Where(one => new DirectoryInfo(one).LinkTarget is null))
        {
            using var taken = Take(folder);
            if (taken is not null || IsEmpty(folder))
                yield return folder;
        }
    }

    /// <summary>The place of a file or folder in it.</summary>
    public string Of(string name) => Path.Combine(folder, name);

    /// <inheritdoc/>
    public void Dispose() => Remove(folder, held);

    private static IEnumerable<string> All(string place) =>
        Directory.Exists(place) ? Directory.GetDirectories(place, "stringline-*.part").Where(one => Name().IsMatch(one)) : [];

    private static List<string> SweepBeside(string own, string place)
    {
        // Where a disk knows no locks nobody can tell who works in what.
        using var again = Take(own);
        return again is null ? [.. All(place).Where(one => one != own && Sweep(one))] : [];
    }

    private static bool Sweep(string folder)
    {
        if (new DirectoryInfo(folder).LinkTarget is not null)
            return false;
        return Take(folder) is { } taken ? Remove(folder, taken) : RemoveEmpty(folder);
    }

    // Null where somebody works in it, or it is another user's, or has no lock.
    private static FileStream? Take(string folder)
    {
        try
        {
            return new FileStream(Path.Combine(folder, LockName), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // The lock goes last: killed before, it still shows whose the rest is.
    private static bool Remove(string folder, FileStream taken) => Removed(() =>
    {
        using (taken)
        {
            foreach (var entry in new DirectoryInfo(folder).GetFileSystemInfos().Where(entry => entry.Name != LockName))
            {
                if (entry is DirectoryInfo { LinkTarget: null } inner)
                    inner.Delete(recursive: true);
                else
                    entry.Delete();
            }

            // Windows deletes no file that is open.
            if (OperatingSystem.IsWindows())
                taken.Dispose();
            File.Delete(Path.Combine(folder, LockName));
        }

        Directory.Delete(folder);
    });

    // Its program was killed before it had locked it, or when it had removed the lock.
    private static bool RemoveEmpty(string folder) => Removed(() => Directory.Delete(folder));

    // What cannot be removed stays for the next, and `store check` tells of it: what was made has its place by now, or an error of its own.
    private static bool Removed(Action remove)
    {
        try
        {
            remove();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool IsEmpty(string folder)
    {
        try
        {
            return !Directory.EnumerateFileSystemEntries(folder).Any();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    [GeneratedRegex(@"[\\/]stringline-[0-9a-f]{16}\.part$")]
    private static partial Regex Name();
}
