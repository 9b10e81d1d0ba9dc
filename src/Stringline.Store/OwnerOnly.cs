namespace Stringline.Store;

/// <summary>
/// Makes files and folders that no other account of the machine may open, whatever the umask is. On Windows they have the rights of the
/// folder they are made in, which within a user's profile are that user's alone. What is there already keeps its mode.
/// </summary>
public static class OwnerOnly
{
    private const UnixFileMode ForFiles = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode ForFolders = ForFiles | UnixFileMode.UserExecute;

    /// <summary>Makes a folder, and those above it that are missing.</summary>
    public static DirectoryInfo Folder(string path)
    {
        if (OperatingSystem.IsWindows())
            return Directory.CreateDirectory(path);

        // One by one: the system call gives its mode to the last one only.
        var missing = new Stack<string>();
        for (var folder = Path.GetFullPath(path); folder is not null && !Directory.Exists(folder); folder = Path.GetDirectoryName(folder))
            missing.Push(folder);
        while (missing.TryPop(out var folder))
            Directory.CreateDirectory(folder, ForFolders);
        return new DirectoryInfo(path);
    }

    /// <summary>Opens a file to be written, and makes it where it is not there.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="mode">What to do where it is there; one of the modes that may make it.</param>
    /// <param name="access">How it is used.</param>
    /// <param name="isAsync">Whether it is written without waiting.</param>
    public static FileStream File(string path, FileMode mode, FileAccess access = FileAccess.Write, bool isAsync = false)
    {
        var options = new FileStreamOptions { Mode = mode, Access = access, Share = FileShare.None };
        if (isAsync)
            options.Options |= FileOptions.Asynchronous;
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = ForFiles;
        return new FileStream(path, options);
    }

    /// <summary>Makes an empty file where none is, for SQLite, which would make it by the umask and gives its log the same mode.</summary>
    /// <remarks>
    /// It is closed before it has its name: whoever closes a file that SQLite has open in the same process lets go of SQLite’s locks on
    /// it.
    /// </remarks>
    public static void Claim(string path)
    {
        if (Path.Exists(path))
            return;
        var unnamed = $"{path}.{Guid.NewGuid():N}";
        File(unnamed, FileMode.CreateNew).Dispose();
        try
        {
            // A move looks first and then moves over what came in between, which another program may have open by then. A second name is
            // given only where none is.
            if (!Upkeep.HardLink.Make(unnamed, path) && !Path.Exists(path))
                System.IO.File.Move(unnamed, path);
        }
        catch (IOException) when (Path.Exists(path))
        {
            // Somebody else made it meanwhile, on a disk that knows no second names.
        }
        finally
        {
            System.IO.File.Delete(unnamed);
        }
    }

    /// <summary>Writes a whole file, in place of one that is there.</summary>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        using var file = File(path, FileMode.Create);
        file.Write(content);
    }
}
