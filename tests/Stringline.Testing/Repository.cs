namespace Stringline.Testing;

/// <summary>Where the repository's own files are while tests run.</summary>
public static class Repository
{
    private static readonly string Root = Find(AppContext.BaseDirectory);

    /// <summary>The full path of a file given from the repository's root.</summary>
    public static string Path(string relative) => System.IO.Path.Combine(Root, relative);

    private static string Find(string folder) => File.Exists(System.IO.Path.Combine(folder, "Stringline.slnx"))
        ? folder
        : Find(System.IO.Path.GetDirectoryName(System.IO.Path.TrimEndingDirectorySeparator(folder))
            ?? throw new InvalidOperationException("The tests do not run inside the repository."));
}
