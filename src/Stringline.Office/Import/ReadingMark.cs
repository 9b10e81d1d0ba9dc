namespace Stringline.Office.Import;

/// <summary>
/// A file that is held open beside a table while the table is read. The system lets go of it when the program ends, however it ends: a
/// mark that nobody holds says that a program ended while it was reading that table.
/// </summary>
internal static class ReadingMark
{
    private const string Name = "reading";

    /// <summary>Sets it; it is gone when what is given back is disposed of.</summary>
    /// <param name="folder">The table's folder.</param>
    /// <returns>Null where another desk holds it.</returns>
    public static IDisposable? Set(string folder)
    {
        try
        {
            var path = Path.Combine(folder, Name);
            return new Held(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None), path);
        }
        catch (IOException)
        {
            return null;
        }
    }

    /// <summary>Whether one was left by a program that ended; it is taken away then.</summary>
    /// <param name="folder">The table's folder.</param>
    public static bool TakeLeft(string folder)
    {
        var path = Path.Combine(folder, Name);
        if (!File.Exists(path))
            return false;
        try
        {
            using (new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None))
                File.Delete(path);
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    private sealed class Held(FileStream stream, string path) : IDisposable
    {
        public void Dispose()
        {
            // Let go of last, so that no other desk takes it for one that was left. Windows deletes no file that is open.
            if (!OperatingSystem.IsWindows())
                File.Delete(path);
            stream.Dispose();
            if (OperatingSystem.IsWindows())
                File.Delete(path);
        }
    }
}
