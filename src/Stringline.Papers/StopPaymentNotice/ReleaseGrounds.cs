using Stringline.Law.Facts;

namespace Stringline.Papers.StopPaymentNotice;

/// <summary>
/// The grounds of summary release in the words of the section (Civ. Code § 9400(a)-(d), as added by Stats. 2010, ch. 697).
/// </summary>
internal static class ReleaseGrounds
{
    /// <summary>The ground, word for word, with its subdivision.</summary>
    public static string Words(ReleaseGround ground) => ground switch
    {
        ReleaseGround.NotSuchAClaim =>
            "The claim on which the notice is based is not a type for which a stop payment notice is authorized under this chapter"
            + " (section 9400, subdivision (a)).",
        ReleaseGround.NotSuchAClaimant =>
            "The claimant is not a person authorized under Section 9100 to give a stop payment notice (section 9400, subdivision (b)).",
        ReleaseGround.Excessive =>
            "The amount of the claim stated in the stop payment notice is excessive (section 9400, subdivision (c)).",
        ReleaseGround.NoBasis => "There is no basis for the claim stated in the stop payment notice (section 9400, subdivision (d)).",
        _ => throw new ArgumentOutOfRangeException(nameof(ground), ground, "No such ground."),
    };
}
