using System.Xml.Linq;

namespace Stringline.House.Tests.Layers;

/// <summary>
/// Who may know whom. The folders of the law library stand in an order, and one knows only what stands below it, so that no folders know
/// each other in a circle; the projects stand in layers. The picture of it is <c>docs/pictures/law-folders.svg</c>; with
/// STRINGLINE_ACCEPT=1 in the environment it is drawn anew, without it a stale one fails.
/// </summary>
public sealed class LayersTests
{
    /// <summary>The folders of the law library, the lowest first. A new one is put where everything that it knows stands before it.</summary>
    private static readonly string[] Order =
    [
        "Sources", "Counting", "Numbers", "Facts", "Recording", "Reasoning", "Bankruptcy", "Licensing", "PreliminaryNotice", "Completion",
        "LienableAmount", "ClaimOfLien", "Enforcement", "MechanicsLien", "DesignLien", "StopPaymentNotice", "PaymentBond", "PromptPayment",
        "LargeProject", "Waiver", "Plan",
    ];

    /// <summary>The projects of the program by their layers, the lowest first. A project knows those of the layers below its own.</summary>
    private static readonly string[][] Projects =
    [
        ["Stringline.Law"],
        ["Stringline.Exchange", "Stringline.Papers", "Stringline.Places"],
        ["Stringline.Store"],
        ["Stringline.Spreadsheets"],
        ["Stringline.Desk"],
    ];

    private static IEnumerable<Arrow> Upward => LawFolders.Arrows.Keys.Where(static arrow => Place(arrow.From) <= Place(arrow.To));

    [Fact]
    public void Every_folder_of_the_law_has_a_place_in_the_order() =>
        Assert.Equal(LawFolders.All, Order.Order(StringComparer.Ordinal));

    [Fact]
    public void No_folder_of_the_law_knows_one_above_it()
    {
        var unknown = Upward.OrderBy(static arrow => arrow.ToString());
        Assert.True(!unknown.Any(), string.Join('\n', unknown.Select(static arrow => $"{arrow}: {string.Join("; ", LawFolders.Arrows[arrow])}")));
    }

    [Fact]
    public void The_picture_of_the_folders_is_fresh()
    {
        var drawn = FolderPicture.Of(LawFolders.Arrows.Keys, Order);
        var path = Repository.Path("docs/pictures/law-folders.svg");
        if (Environment.GetEnvironmentVariable("STRINGLINE_ACCEPT") == "1")
            File.WriteAllText(path, drawn);
        Assert.True(File.Exists(path) && File.ReadAllText(path) == drawn,
            "docs/pictures/law-folders.svg is stale. Run the tests once with STRINGLINE_ACCEPT=1 and look at what changed.");
    }

    [Fact]
    public void A_project_knows_only_those_of_the_layers_below_it()
    {
        var known = Directory.EnumerateFiles(Repository.Path("src"), "*.csproj", SearchOption.AllDirectories)
            .ToDictionary(static file => Path.GetFileNameWithoutExtension(file), static file => XDocument.Load(file)
                .Descendants("ProjectReference").Select(static to => Path.GetFileNameWithoutExtension(to.Attribute("Include")!.Value)));
        Assert.Equal(Projects.SelectMany(static layer => layer).Order(StringComparer.Ordinal), known.Keys.Order(StringComparer.Ordinal));
        Assert.Empty(known.SelectMany(static pair => pair.Value.Where(to => Layer(to) >= Layer(pair.Key)).Select(to => $"{pair.Key} -> {to}")));
    }

    private static int Place(string folder) => Array.IndexOf(Order, folder);

    private static int Layer(string project) => Array.FindIndex(Projects, layer => layer.Contains(project));
}
