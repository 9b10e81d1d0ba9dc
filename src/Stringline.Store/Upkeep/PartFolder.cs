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
                return new PartFolder(folder, held) { Swept = [.. Left(place).Where(left => left != folder && Locks(folder) && Remove(left))] };
            }
            catch (IOException) when (tried < Tries)
            {
                // Another may have taken it for one that was left, in the moment before it was locked.
                Remove(folder);
            }
            catch
            {
                Remove(folder);
                throw;
            }
        }
    }

    /// <summary>Those in a folder in which nobody works.</summary>
    public static IEnumerable<string> Left(string place) => Directory.Exists(place)
        ? Directory.GetDirectories(place, "stringline-*.part").Where(one => Name().IsMatch(one) && IsLeft(one))
        : [];

    /// <summary>The place of a file or folder in it.</summary>
    public string Of(string name) => Path.Combine(folder, name);

    /// <inheritdoc/>
    public void Dispose()
    {
        held.Dispose();
        Remove(folder);
    }

    // Where a disk knows no locks nobody can tell who works in what.
    private static bool Locks(string own) => IsThere(own) && !CanLock(own);

    private static bool IsLeft(string folder) => new DirectoryInfo(folder).LinkTarget is null && IsThere(folder) && CanLock(folder);

    private static bool IsThere(string folder) => File.Exists(Path.Combine(folder, LockName));

    private static bool CanLock(string folder)
    {
        try
        {
            new FileStream(Path.Combine(folder, LockName), FileMode.Open, FileAccess.ReadWrite, FileShare.None).Dispose();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    // One that cannot be removed stays for the next, and `store check` tells of it: what was made has its place, or an error of its own.
    private static bool Remove(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    [GeneratedRegex(@"[\\/]stringline-[0-9a-f]{16}\.part$")]
    private static partial Regex Name();
}
