using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>What is done in the owner's bankruptcy instead of suing.</summary>
internal static class StayNotice
{
    /// <summary>
    /// The finding <c>enforcement.stay-notice-last-day</c> while the owner is in bankruptcy and no action was brought before; null else.
    /// </summary>
    [Rule("11 U.S.C. § 546(b)", Sure = Sure.Opinion)]
    public static Finding? Finding(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        if (suits.Released == Verdict.Yes || suits.Leading is not { Stay: { } stay, Standing: Standing.Open or Standing.InDoubt } leading
            || !stay.IsOn(facts.AsOf))
            return null;
        return Deadline.Of(leading.Standing, leading.Readings, calendar)
            .Finding("enforcement.stay-notice-last-day", "Do not sue: notice under 11 U.S.C. § 546(b)",
            () => [stay.InsteadOfSuit(leading.FirstEnd)]);
    }
}
