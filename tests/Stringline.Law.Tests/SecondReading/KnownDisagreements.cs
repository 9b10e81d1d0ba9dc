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
