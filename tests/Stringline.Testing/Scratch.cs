using System.Globalization;

namespace Stringline.Testing;

/// <summary>
/// A folder of a test's own. Its name is this process's number and a count: pages and messages show it, and random letters in it would
/// now and then spell a word that a test looks for.
/// </summary>
public static class Scratch
{
    private static int made;

    /// <summary>Makes an empty folder; whoever asked for it deletes it.</summary>
    /// <returns>Its whole path.</returns>
    public static string Folder()
    {
        var folder = Name();
        // A run that was cut off may have left one of the same number.
        if (Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
        return Directory.CreateDirectory(folder).FullName;
    }

    /// <summary>The path of a file that is not there yet; whoever writes it deletes it.</summary>
    /// <param name="ending">What its name ends with, without a dot.</param>
    public static string File(string ending)
    {
        var file = $"{Name()}.{ending}";
        System.IO.File.Delete(file);
        return file;
    }

    private static string Name() => Path.Combine(Path.GetTempPath(), string.Create(CultureInfo.InvariantCulture,
        $"stringline-tests-{Environment.ProcessId}-{Interlocked.Increment(ref made)}"));
}
