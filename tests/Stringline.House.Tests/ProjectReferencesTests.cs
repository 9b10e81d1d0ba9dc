namespace Stringline.House.Tests;

/// <summary>
/// Which project may refer to which: data walk one way, from the facts through the law to the papers and the doors. The readers of tables
/// know facts and no store; the command line starts the desk, which does not know it.
/// </summary>
public sealed class ProjectReferencesTests
{
    private static readonly IReadOnlyDictionary<string, string[]> May = new Dictionary<string, string[]>
    {
        ["Law"] = [],
        ["Papers"] = ["Law"],
        ["Places"] = ["Law"],
        ["Tables"] = ["Law"],
        ["Store"] = ["Law", "Tables"],
        ["Office"] = ["Law", "Papers", "Places", "Store", "Tables"],
        ["Web"] = ["Office"],
        ["Cli"] = ["Office", "Web"],
    };

    [Fact]
    public void Every_project_refers_only_to_those_below_it()
    {
        Assert.Equal(May.Keys.Order(), Projects.References.Keys.Order());
        Assert.All(Projects.References, project => Assert.Empty(project.Value.Except(May[project.Key])));
    }
}
