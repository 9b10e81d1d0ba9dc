namespace Stringline.Law.Tests.Habits;

/// <summary>No test may hang on letters drawn at random for a folder's or a file's name.</summary>
public sealed class ScratchFolderTests
{
    private static readonly string[] Drawn =
        [nameof(Directory.CreateTempSubdirectory), nameof(Path.GetRandomFileName), nameof(Path.GetTempFileName), nameof(Path.GetTempPath)];

    [Fact]
    public void Tests_get_their_folders_and_files_from_one_place()
    {
        var all = Directory.GetFiles(Repository.Path("tests"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).ToList();
        Assert.True(all.Count > 100, "The tests' own sources were not found.");
        Assert.Equal(
            ["Scratch.cs", "ScratchFolderTests.cs"],
            all.Where(f => File.ReadAllText(f) is var text && Drawn.Any(d => text.Contains($"{d}", StringComparison.Ordinal)))
                .Select(Path.GetFileName).Order(StringComparer.Ordinal).Where(f => f != "Program.cs"));
    }
}
