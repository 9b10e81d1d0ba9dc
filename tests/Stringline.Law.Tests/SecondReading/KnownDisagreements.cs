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
        new("A designer's claim that does not say which lien, commencement not told; and a notice before the work commenced (§§ 8204(b), 8520(a)).",
            (_, m) => m is { Kind: WorkKind.Private, Role: ClaimantRole.DesignProfessional }),
        new("A day in doubt in whose span a condition is met on some days only.",
            (_, m) => m.Known.Any(e => e.On is DayFact.Between)),
    ];

    /// <summary>
    /// What no cause above covers and nobody has judged yet, by finding: how many of the 100,000 files at the most. Most are a right that
    /// is said to be sure, or not yet to be exercised, beside one that may be dead.
    /// </summary>
    public static IReadOnlyDictionary<string, int> NotJudged { get; } = new Dictionary<string, int>
    {
        ["claim-of-lien.last-day"] = 9,
        ["enforcement.last-day"] = 5,
        ["lien-right"] = 6,
        ["payment-bond.action-last-day"] = 15,
        ["payment-bond.notice-last-day"] = 2,
        ["preliminary-notice.last-day"] = 19,
        ["stop-payment-notice.action-first-day"] = 2,
        ["stop-payment-notice.action-last-day"] = 26,
        ["stop-payment-notice.last-day"] = 22,
        ["stop-payment-notice.lender"] = 15,
        ["stop-payment-notice.owner"] = 10,
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
