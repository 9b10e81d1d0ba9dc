using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// Where the two readers are known to part, and why; the list may only shrink. A cause that no drawn file needs any more fails the test, as does a
/// disagreement that no cause covers.
/// </summary>
internal static class KnownDisagreements
{
    /// <summary>A cause, and which disagreements it covers.</summary>
    /// <param name="Why">What each reader rests on.</param>
    /// <param name="Covers">Whether it is the cause of one.</param>
    internal sealed record Cause(string Why, Func<Disagreement, Matter, bool> Covers);

    public static IReadOnlyList<Cause> All { get; } =
    [
        new("A notice of acceptance recorded on private work shortens the time; Civ. Code §§ 8412 and 8414 name completion and cessation.",
            (_, m) => m.Kind == WorkKind.Private && m.Of<OwnerRecorded>().Any(e => e.Notice == OwnerNotice.Acceptance)),
        new("What needs the lien stays open beside a lien that is surely gone (§§ 8424(b), 8460(b), 8461).",
            (d, _) => d.Id is "release-bond.action-last-day" or "credit.last-day" or "credit.enforcement-last-day" or "lis-pendens.last-day"),
        new("A designer's claim that does not say which lien, commencement not told; and a notice before the work commenced (§§ 8204(b), 8520(a)).",
            (_, m) => m is { Kind: WorkKind.Private, Role: ClaimantRole.DesignProfessional }),
        new("Federal work: which of two contractors, one hired by the United States, and who was sued (40 U.S.C. § 3133(b)).",
            (_, m) => m.Kind == WorkKind.Federal),
        new("A day in doubt in whose span a condition is met on some days only.",
            (_, m) => m.Known.Any(e => e.On is DayFact.Between)),
        new("The owner's demand for a stop payment notice, to which the Code sets no days (§ 8520(b)).",
            (_, m) => m.Of<StopPaymentDemanded>().Length > 0),
    ];

    /// <summary>
    /// What no cause above covers and nobody has judged yet, by finding: how many of the 100,000 files at the most. Most are a right that
    /// is said to be sure, or not yet to be exercised, beside one that may be dead.
    /// </summary>
    public static IReadOnlyDictionary<string, int> NotJudged { get; } = new Dictionary<string, int>
    {
        ["claim-of-lien.first-day"] = 1,
        ["claim-of-lien.last-day"] = 9,
        ["enforcement.last-day"] = 5,
        ["lien-right"] = 4,
        ["payment-bond.action-last-day"] = 14,
        ["payment-bond.notice-last-day"] = 2,
        ["preliminary-notice.last-day"] = 18,
        ["stop-payment-notice.action-first-day"] = 2,
        ["stop-payment-notice.action-last-day"] = 25,
        ["stop-payment-notice.last-day"] = 19,
        ["stop-payment-notice.lender"] = 12,
        ["stop-payment-notice.owner"] = 9,
        ["stop-payment-notice.tell-of-action"] = 1,
    };

    /// <summary>The place of the first cause that covers it; -1 where none does.</summary>
    public static int CauseOf(Disagreement parted, Matter known)
    {
        for (var i = 0; i < All.Count; i++)
        {
            if (All[i].Covers(parted, known))
                return i;
        }

        return -1;
    }
}
