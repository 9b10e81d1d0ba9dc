using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Drawings;

/// <summary>What is known of a claim of lien after it was recorded. Days come from the assessment; nothing here is law.</summary>
/// <param name="Claim">The recorded claim that counts; null where none does.</param>
/// <param name="Recorded">The day it was recorded; null where no day is known.</param>
/// <param name="Marks">What happened since, earliest first.</param>
/// <param name="Ends">Days of the law that lie ahead or behind.</param>
internal sealed record AfterRecording(ClaimRecorded? Claim, LocalDate? Recorded,
    IReadOnlyList<(LocalDate Day, string Words, Entry? Entry)> Marks, IReadOnlyList<(LocalDate Day, Finding Finding)> Ends)
{
    private static readonly string[] Deadlines =
    [
        "enforcement.last-day", "enforcement.stay-notice-last-day", "enforcement.later-claim-last-day", "credit.last-day",
            "credit.enforcement-last-day",
        "lis-pendens.last-day", "release.answer-by", "release.hearing", "release-bond.action-last-day",
        "prosecution.service-last-day", "prosecution.last-day", "prosecution.five-years",
        .. Design,
    ];

    private static string[] Design =>
    [
        "design-lien.enforcement-last-day", "design-lien.lis-pendens.last-day", "design-lien.release.answer-by",
            "design-lien.release-bond.action-last-day",
        "design-lien.prosecution.service-last-day", "design-lien.prosecution.last-day", "design-lien.prosecution.five-years",
        "design-lien.conversion-last-day", "design-lien.converted-action-last-day",
    ];

    private static readonly string[] Others =
    [
        "release.when-paid", "release.partial", "release.petition-first-day", "release-bond.amount", "claim-of-lien.overstated",
            "lower-tier.defense",
        "design-lien.release", "design-lien.release.petition-first-day", "design-lien.release-bond.amount",
    ];

    /// <summary>The findings about the time after recording, in the order in which they are acted on.</summary>
    public static IReadOnlyList<Finding> Findings(Assessment assessment) =>
        [.. Deadlines.Concat(Others).Select(assessment.Find).OfType<Finding>()];

    /// <summary>Gathers it.</summary>
    public static AfterRecording Of(OpenJob job)
    {
        // The law says which claim counts: the finding about the suit stands on it.
        var action =
            job.Assessment.Find("enforcement.last-day") is { } lien && lien.Why.Any(reason => reason.Facts.OfType<ClaimRecorded>().Any())
            ? lien
            : job.Assessment.Find("design-lien.converted-action-last-day") ?? job.Assessment.Find("design-lien.enforcement-last-day");
        var claim = action?.Why.SelectMany(reason => reason.Facts).OfType<ClaimRecorded>().FirstOrDefault();
        var recorded = claim?.On.Earliest;
        var marks = new List<(LocalDate, string, Entry?)>();
        foreach (var entry in new FactsAsOf(job.Facts, job.AsOf).Known)
        {
            if (!IsOnTheLine(entry) || entry.On.Earliest is not { } day || day < recorded)
                continue;
            marks.Add((day, Web.Html.EntryWords.Kind(entry), entry));
            if (entry is CreditRecorded credit)
                marks.Add((credit.Until, "Credit ends", entry));
        }

        var ends = Deadlines.Select(job.Assessment.Find).OfType<Finding>()
            .Where(finding => finding.Standing is not (Standing.NotYet or Standing.Done) && finding.Band is not null)
            .Select(finding => (finding.Band!.Earliest.Day, finding));
        return new AfterRecording(claim, recorded, [.. marks.OrderBy(mark => mark.Item1)], [.. ends]);
    }

    private static bool IsOnTheLine(Entry entry) =>
        entry is ClaimRecorded or CreditRecorded or ActionFiled or ActionServed or TrialBegun or ActionEnded or LisPendensRecorded
            or ReleaseRecorded or ReleaseBondRecorded or ReleaseDemanded or ReleasePetitionServed;
}
