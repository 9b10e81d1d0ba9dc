using System.Xml.Linq;

namespace Stringline.House.Tests;

/// <summary>The mark by which <c>./test quick</c> chooses.</summary>
public sealed class SlowTests
{
    [Fact]
    public void What_only_a_slow_test_may_use_fails_one_without_the_mark()
    {
        foreach (var kind in Enum.GetValues<Slow>())
        {
            var failed = Assert.Throws<InvalidOperationException>(() => SlowAttribute.Must(kind));
            Assert.Contains($"must be marked [Slow(Slow.{kind})]", failed.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    [Slow(Slow.Fuzz)]
    public void Another_kind_s_mark_is_not_enough()
    {
        SlowAttribute.Must(Slow.Fuzz);
        Assert.Throws<InvalidOperationException>(() => SlowAttribute.Must(Slow.Crash));
    }

    /// <summary>A browser is opened before any test runs, so here the whole project bears the mark.</summary>
    [Fact]
    public void A_project_that_drives_a_browser_bears_the_mark()
    {
        var projects = Directory.EnumerateFiles(Repository.Path("tests"), "*.csproj", SearchOption.AllDirectories)
            .Where(file => XDocument.Load(file).Descendants("PackageReference")
                .Any(package => package.Attribute("Include")!.Value.Contains("Playwright", StringComparison.Ordinal)))
            .Select(file => Path.GetDirectoryName(file)!).ToList();
        Assert.NotEmpty(projects);
        Assert.All(projects, project => Assert.Contains(Directory.EnumerateFiles(project, "*.cs"), file =>
            File.ReadAllText(file).Contains("[assembly: Slow(Slow.Browser)]", StringComparison.Ordinal)));
    }

    /// <summary>
    /// The marks stand in the sources of the tests that start a server or a program to be killed, which a run without them passes over.
    /// </summary>
    [Theory]
    [InlineData("STRINGLINE_TEST_POSTGRES", "Must(Slow.PostgreSql)")]
    [InlineData("{bin}/initdb", "Must(Slow.PostgreSql)")]
    [InlineData("STRINGLINE_CRASH_WRITER", "Must(Slow.Crash)")]
    public void Whoever_reaches_a_server_or_the_writer_that_is_killed_asks_for_the_mark(string sign, string must)
    {
        var own = Path.GetFileName(GetType().Name + ".cs");
        var users = Directory.EnumerateFiles(Repository.Path("tests"), "*.cs", SearchOption.AllDirectories)
            .Where(file => Path.GetFileName(file) != own && File.ReadAllText(file).Contains(sign, StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(users);
        Assert.All(users, file => Assert.Contains(must, File.ReadAllText(file), StringComparison.Ordinal));
    }
}
