using System.Xml.Linq;

namespace Stringline.House.Tests;

/// <summary>The projects of <c>src</c>, and what they were built to.</summary>
internal static class Projects
{
    /// <summary>Each project by its name, such as <c>Law</c>, with those it refers to.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> References { get; } = Files()
        .ToDictionary(Name, file =>
            (IReadOnlyList<string>)[.. Included(file, "ProjectReference").Select(Name).Order(StringComparer.Ordinal)]);

    /// <summary>Where the built assembly of a project is.</summary>
    public static string Assembly(string project)
    {
        var file = Files().Single(file => Name(file) == project);
        var name = XDocument.Load(file).Descendants("AssemblyName").SingleOrDefault()?.Value ?? Path.GetFileNameWithoutExtension(file);
        return Path.Combine(AppContext.BaseDirectory, name + ".dll");
    }

    private static IEnumerable<string> Files() =>
        Directory.EnumerateFiles(Repository.Path("src"), "*.csproj", SearchOption.AllDirectories);

    private static string Name(string file) => Path.GetFileNameWithoutExtension(file.Replace('\\', '/'))["Stringline.".Length..];

    private static IEnumerable<string> Included(string file, string element) =>
        XDocument.Load(file).Descendants(element).Select(item => item.Attribute("Include")!.Value);
}
