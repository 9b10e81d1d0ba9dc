namespace Stringline.House.Tests;

/// <summary>Which project may refer to which: data walk one way, from the facts through the law to the papers and the doors.</summary>
public sealed class LayersTests
{
    private static readonly IReadOnlyDictionary<string, string[]> May = new Dictionary<string, string[]>
    {
        ["Law"] = [],
        ["Papers"] = ["Law"],
        ["Places"] = ["Law"],
        ["Exchange"] = ["Law"],
        ["Store"] = ["Exchange", "Law"],
        ["Spreadsheets"] = ["Exchange", "Law", "Store"],
        ["Desk"] = ["Exchange", "Law", "Papers", "Places", "Spreadsheets", "Store"],
    };

    [Fact]
    public void Every_project_refers_only_to_those_below_it()
    {
        Assert.Equal(May.Keys.Order(), Projects.References.Keys.Order());
        Assert.All(Projects.References, project => Assert.Empty(project.Value.Except(May[project.Key])));
    }
}
