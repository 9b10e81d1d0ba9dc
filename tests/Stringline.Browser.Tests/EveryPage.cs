namespace Stringline.Browser.Tests;

/// <summary>A page of the desk as the demo office shows it.</summary>
/// <param name="Name">Its name, and that of its picture in the user guide.</param>
/// <param name="Address">Its address.</param>
public sealed record EveryPage(string Name, string Address)
{
    /// <summary>The status with which it answers.</summary>
    public int Status { get; init; } = 200;

    /// <summary>The pages of the demo office. The job in doubt is the eleventh, the recorded one the thirteenth, the waivers are the ninth's.</summary>
    public static IReadOnlyList<EveryPage> All { get; } =
    [
        new("desk", "/"),
        new("desk-filtered", "/?county=Yolo"),
        new("job", "/job/11"),
        new("job-as-known", "/job/11?known=2026-05-20"),
        new("amount", "/job/9/amount"),
        new("enter", "/job/11/enter"),
        new("enter-delivery", "/job/11/enter?what=furnished"),
        new("enter-notice", "/job/11/enter?what=notice-given"),
        new("enter-completion", "/job/11/enter?what=completed"),
        new("enter-recorded", "/job/11/enter?what=claim-recorded"),
        new("enter-waiver", "/job/9/enter?what=waived"),
        new("correct", "/job/11/enter?supersedes=e1"),
        new("file", "/job/11/file"),
        new("file-parties", "/job/11/file?part=parties"),
        new("prove", "/job/11/prove?entry=0"),
        new("papers", "/job/11/papers"),
        new("papers-for", "/job/11/papers?for=claim-of-lien.last-day"),
        new("paper-claim", "/job/11/papers/claim"),
        new("paper-notice", "/job/4/papers/preliminary-notice"),
        new("paper-waiver", "/job/9/papers/waiver-8138"),
        new("after-recording", "/job/13/after-recording"),
        new("after-recording-none", "/job/11/after-recording"),
        new("customers", "/customers"),
        new("customer", "/customer?name=Fennimore%20Framing%2C%20Inc."),
        new("calendar", "/calendar"),
        new("searches", "/searches?county=Yolo"),
        new("search", "/search?for=alder"),
        new("search-empty", "/search?for=zzzz"),
        new("settings", "/settings"),
        new("law", "/law"),
        new("new-job", "/jobs/new"),
        new("not-found", "/job/4711") { Status = 404 },
    ];

    /// <summary>The pages as the rows of a theory.</summary>
    public static TheoryData<EveryPage> Rows => [.. All];

    /// <inheritdoc/>
    public override string ToString() => Name;
}
