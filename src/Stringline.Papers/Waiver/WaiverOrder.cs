using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Waiver;

/// <summary>
/// A waiver that was asked for on a job: what it says, and every reason against it. For those who print many with a
/// <see cref="WaiverPress"/>.
/// </summary>
/// <param name="Waiver">What it says.</param>
/// <param name="Refusals">Why it may not be made; none when it may.</param>
public sealed record WaiverOrder(WaiverToBe Waiver, IReadOnlyList<Refusal> Refusals)
{
    /// <summary>Id of the refusal of a waiver whose figure was not typed.</summary>
    public const string NotTyped = "release-not-typed";

    /// <summary>What it gives away; null while nothing says how far it reaches or what is paid.</summary>
    public WaiverOutlook? Outlook { get; init; }

    /// <summary>
    /// The same rules as <see cref="PaperMaker.Make(Paper, JobFile, Assessment, PaperOptions)"/> has for the four waivers of the catalogue,
    /// without printing.
    /// </summary>
    /// <param name="form">Which form.</param>
    /// <param name="job">The facts.</param>
    /// <param name="assessment">What the law makes of them.</param>
    /// <param name="options">What is said of the payment.</param>
    public static WaiverOrder Of(WaiverForm form, JobFile job, Assessment assessment, PaperOptions options)
    {
        var matter = new Matter(job, assessment, options);
        return new WaiverOrder(WaiverPaper.Ordered(form, matter), matter.Refusals) { Outlook = matter.Outlook };
    }
}
