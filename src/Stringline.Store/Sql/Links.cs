namespace Stringline.Store.Sql;

/// <summary>The place that a path means in the end.</summary>
internal static class Links
{
    // More are a circle; systems stop there too.
    private const int Most = 40;

    private static readonly char[] Separators = [Path.DirectorySeparatorChar, Path.AltDirectorySeparatorChar];

    /// <summary>
    /// The path without any link: every one in it is followed, of folders too, as the system does when it opens the path. <c>..</c> means
    /// the folder above the one that a link before it leads to.
    /// </summary>
    public static string Follow(string path)
    {
        var left = new Stack<string>();
        var followed = Begin(Path.Combine(Environment.CurrentDirectory, path));
        for (var links = 0; left.TryPop(out var name);)
        {
            var next = Path.Combine(followed, name);
            if (name == "..")
                followed = Path.GetDirectoryName(followed) ?? followed;
            else if (links < Most && new FileInfo(next).LinkTarget is { } target)
                (followed, links) = (Begin(Path.Combine(followed, target)), links + 1);
            else if (name != ".")
                followed = next;
        }

        return followed;

        string Begin(string whole)
        {
            var root = Path.GetPathRoot(whole)!;
            foreach (var name in whole[root.Length..].Split(Separators, StringSplitOptions.RemoveEmptyEntries).Reverse())
                left.Push(name);
            return root;
        }
    }
}
