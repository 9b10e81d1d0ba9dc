using System.Xml.Linq;

namespace Stringline.House.Tests;

/// <summary>
/// What <c>Directory.Packages.props</c> pins is used, so that nobody has to keep the version of a package that nothing needs.
/// </summary>
public sealed class PinnedPackagesTests
{
    [Fact]
    public void Every_pinned_package_is_referred_to_by_a_project()
    {
        var pinned = Included(Repository.Path("Directory.Packages.props"), "PackageVersion").ToList();
        Assert.NotEmpty(pinned);
        Assert.Equal(pinned, pinned.Distinct(StringComparer.OrdinalIgnoreCase));
        Assert.Empty(pinned.Except(Projects().SelectMany(project => Included(project, "PackageReference")),
            StringComparer.OrdinalIgnoreCase));
    }

    private static IEnumerable<string> Projects() => new[] { "src", "tests", "bench", "eng" }
        .SelectMany(folder => Directory.EnumerateFiles(Repository.Path(folder), "*.csproj", SearchOption.AllDirectories));

    private static IEnumerable<string> Included(string file, string element) =>
        XDocument.Load(file).Descendants(element).Select(item => item.Attribute("Include")!.Value);
}
