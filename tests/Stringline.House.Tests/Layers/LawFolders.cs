namespace Stringline.House.Tests.Layers;

/// <summary>One folder of the law library knows another.</summary>
/// <param name="From">The folder that knows.</param>
/// <param name="To">The folder that is known.</param>
internal readonly record struct Arrow(string From, string To)
{
    /// <summary>As it is listed.</summary>
    public override string ToString() => $"{From} -> {To}";
}

/// <summary>The folders of the law library and what they know of each other.</summary>
internal static class LawFolders
{
    private const string Root = "Stringline.Law";

    /// <summary>Each arrow with the uses that make it, in words: <c>LastDay uses CompletionDay (Law/ClaimOfLien)</c>.</summary>
    public static IReadOnlyDictionary<Arrow, IReadOnlyList<string>> Arrows { get; } = Read();

    /// <summary>The folders.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. Arrows.Keys.SelectMany(static arrow => new[] { arrow.From, arrow.To }).Distinct().Order(StringComparer.Ordinal)];

    private static Dictionary<Arrow, IReadOnlyList<string>> Read()
    {
        var found = new Dictionary<Arrow, SortedSet<string>>();
        foreach (var (user, used) in UsedTypes.In(typeof(Law.Assessment).Assembly.Location))
        {
            if (FolderOf(user) is { } from && FolderOf(used) is { } to && from != to)
                Uses(new Arrow(from, to)).Add($"{NameOf(user)} uses {NameOf(used)}");
        }

        // A constant leaves no trace in what is compiled, but its file says whom it uses: what is not needed there is refused by the build.
        foreach (var file in Directory.EnumerateFiles(Repository.Path($"src/{Root}"), "*.cs", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(Repository.Path($"src/{Root}"), file).Split(Path.DirectorySeparatorChar);
            if (path.Length < 2 || path[0] is "obj" or "bin")
                continue;
            foreach (var line in File.ReadLines(file))
            {
                if (line.StartsWith("using ", StringComparison.Ordinal) && line.IndexOf(Root + ".", StringComparison.Ordinal) is var at
                    and > 0
                    && line[(at + Root.Length + 1)..].Split('.', ';')[0] is var to && to != path[0])
                {
                    Uses(new Arrow(path[0], to)).Add($"{path[^1]} says {line}");
                }
            }
        }

        return found.ToDictionary(static pair => pair.Key, static pair => (IReadOnlyList<string>)[.. pair.Value]);

        SortedSet<string> Uses(Arrow arrow) =>
            found.TryGetValue(arrow, out var uses) ? uses : found[arrow] = new SortedSet<string>(StringComparer.Ordinal);
    }

    // Null for the door above all folders, and for what the compiler makes of its own.
    private static string? FolderOf(string type) => type.StartsWith(Root + ".", StringComparison.Ordinal)
        && type[(Root.Length + 1)..].Split('.') is { Length: > 1 } parts ? parts[0] : null;

    private static string NameOf(string type) => type[(type.LastIndexOf('.') + 1)..];
}
