using Stringline.Law.Numbers;

namespace Stringline.Law.PaymentBond;

/// <summary>The sections of the payment bond that differ between private and public works.</summary>
/// <param name="Preliminary">That preliminary notice is given.</param>
/// <param name="Section">The notice to surety and bond principal.</param>
/// <param name="LateRoad">The paragraph that closes the late road.</param>
/// <param name="Manner">In what manner the notice is given.</param>
/// <param name="Action">The time to sue.</param>
/// <param name="CessationCounts">Whether the days from a notice of cessation are planned on as well, on the safer side.</param>
/// <param name="FromNotice">The days from the recording of a notice of completion.</param>
/// <param name="FromCompletion">The days from completion where none is recorded.</param>
internal sealed record BondLaw(string Preliminary, string Section, string LateRoad, string Manner, string Action, bool CessationCounts,
    Number FromNotice, Number FromCompletion)
{
    /// <summary>Private works: a notice of cessation is not named, so the days from completion run beside it.</summary>
    public static BondLaw Private { get; } = new("Civ. Code § 8612(a)", "Civ. Code § 8612(b)", "Civ. Code § 8612(d)", "Civ. Code § 8614",
        "Civ. Code § 8610", false, Number.BondNotice, Number.BondNoticeAfterCompletion);

    /// <summary>Public works: a notice of cessation is not named either; the days from it are the safe day.</summary>
    public static BondLaw Public { get; } = new("Civ. Code § 9560(a)", "Civ. Code § 9560(b)", "Civ. Code § 9560(d)", "Civ. Code § 9562",
        "Civ. Code § 9558", true, Number.PublicBondNotice, Number.PublicBondNoticeAfterCompletion);
}
