using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The sections of the stop payment notice that differ between private and public works.</summary>
/// <param name="Before">That preliminary notice comes before it.</param>
/// <param name="Recipients">To whom it is given.</param>
/// <param name="Manner">In what manner, and with what contents.</param>
/// <param name="DueOnly">What it may claim.</param>
/// <param name="Falsehood">What a falsehood costs.</param>
/// <param name="Forfeit">What is forfeited, in words.</param>
/// <param name="ReleaseBond">The bond that frees the money.</param>
/// <param name="First">The first day to sue.</param>
/// <param name="Last">The last day to sue.</param>
/// <param name="Tell">Telling of the suit.</param>
/// <param name="Trial">The time to trial.</param>
/// <param name="Ends">What ends the notice.</param>
internal sealed record StopPaymentLaw(
    string Before, string Recipients, string Manner, string DueOnly, string Falsehood, string Forfeit, string ReleaseBond,
    string First, string Last, string Tell, string Trial, string Ends)
{
    /// <summary>The finding about the time to give it.</summary>
    public const string ToGiveId = "stop-payment-notice.last-day";

    /// <summary>What that finding is called.</summary>
    public const string ToGiveTitle = "Stop payment notice: last day to give";

    /// <summary>How much of the claim the bond that frees the money is for.</summary>
    public required Number BondPercent { get; init; }

    /// <summary>How long after the notice no action may be brought.</summary>
    public required Number BeforeAction { get; init; }

    /// <summary>How long after the time to give the notice the action may be brought.</summary>
    public required Number ToSue { get; init; }

    /// <summary>How soon after the action those who got the notice are told of it.</summary>
    public required Number ToTell { get; init; }

    /// <summary>How soon after the action it is brought to trial.</summary>
    public required Number ToTrial { get; init; }

    /// <summary>The sections of a private work.</summary>
    [Rule("Civ. Code § 8504")]
    public static StopPaymentLaw Private { get; } = new(
        "Civ. Code § 8508(a)", "Civ. Code § 8506(a)", "Civ. Code § 8502(a)", "Civ. Code § 8502(c)", "Civ. Code § 8504",
        "the fund and the lien are forfeited", "Civ. Code § 8510",
        "Civ. Code § 8550(a)", "Civ. Code § 8550(b)", "Civ. Code § 8550(e)", "Civ. Code § 8554", "Civ. Code § 8556")
    {
        BondPercent = Number.BondAgainstNotice,
        BeforeAction = Number.NoActionOnNotice,
        ToSue = Number.SueOnNotice,
        ToTell = Number.TellOfAction,
        ToTrial = Number.BringNoticeToTrial,
    };

    /// <summary>The sections of a public work. The bond is not forfeited by a falsehood.</summary>
    [Rule("Civ. Code § 9454")]
    public static StopPaymentLaw Public { get; } = new(
        "Civ. Code § 9300(c)", "Civ. Code § 9354", "Civ. Code § 9352(a)", "Civ. Code § 9352(c)", "Civ. Code § 9454",
        "the share of the money withheld is forfeited", "Civ. Code § 9364",
        "Civ. Code § 9502(a)", "Civ. Code § 9502(b)", "Civ. Code § 9504", "Civ. Code § 9508", "Civ. Code § 9510")
    {
        BondPercent = Number.BondAgainstPublicNotice,
        BeforeAction = Number.NoActionOnPublicNotice,
        ToSue = Number.SueOnPublicNotice,
        ToTell = Number.TellEntityOfAction,
        ToTrial = Number.BringPublicNoticeToTrial,
    };
}

/// <summary>The time in which a stop payment notice may be given.</summary>
/// <param name="Readings">Readings of its last day; not rolled.</param>
/// <param name="EndKnown">Whether an end of it is known.</param>
/// <param name="EndFirm">Whether an uncontested reading carries it.</param>
public sealed record TimeOfGiving(IReadOnlyList<Reading> Readings, bool EndKnown, bool EndFirm);
