namespace Stringline.House.Tests.Layers;

/// <summary>
/// Who may know whom. The folders of the law library stand in an order, and one knows only what stands below it, so that no folders know
/// each other in a circle. The picture of it is <c>docs/pictures/law-folders.svg</c>; with
/// STRINGLINE_ACCEPT=1 in the environment it is drawn anew, without it a stale one fails.
/// </summary>
public sealed class FolderOrderTests
{
    /// <summary>
    /// The folders of the law library, the lowest first. A new one is put where everything that it knows stands before it.
    /// </summary>
    private static readonly string[] Order =
    [
        "Sources", "Counting", "Numbers", "Facts", "Reasoning", "Recording", "Bankruptcy", "Licensing", "PreliminaryNotice", "Completion",
        "LienableAmount", "ClaimOfLien", "Enforcement", "MechanicsLien", "DesignLien", "StopPaymentNotice", "PaymentBond", "PromptPayment",
        "LargeProject", "Waiver", "Plan",
    ];

    private static IEnumerable<Arrow> Upward => LawFolders.Arrows.Keys.Where(static arrow => Place(arrow.From) <= Place(arrow.To));

    [Fact]
    public void Every_folder_of_the_law_has_a_place_in_the_order() =>
        Assert.Equal(LawFolders.All, Order.Order(StringComparer.Ordinal));

    [Fact]
    public void No_folder_of_the_law_knows_one_above_it()
    {
        var upward = Upward.Select(static arrow => $"{arrow}: {string.Join("; ", LawFolders.Arrows[arrow])}");
        Assert.True(!upward.Any(), string.Join('\n', upward.Order(StringComparer.Ordinal)));
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

    private static int Place(string folder) => Array.IndexOf(Order, folder);
}
