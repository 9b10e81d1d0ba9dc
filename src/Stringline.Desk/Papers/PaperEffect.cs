namespace Stringline.Desk.Papers;

/// <summary>What a paper does to rights, said before it is made.</summary>
/// <param name="Words">In plain words.</param>
/// <param name="Section">By which section.</param>
internal sealed record PaperEffect(string Words, string Section)
{
    /// <summary>The effect of a paper; null for one that binds nobody, and for an unconditional waiver, whose page says more.</summary>
    public static PaperEffect? Of(string paper) => paper switch
    {
        "waiver-8132" => new("Signed, it gives up lien, stop payment notice and payment bond rights through the day written on it, but only once the check that it names is paid by the bank. Until then nothing is given up.", "Civ. Code § 8132"),
        "waiver-8136" => new("Signed, it gives up lien, stop payment notice and payment bond rights for the whole job, but only once the check that it names is paid by the bank. Until then nothing is given up.", "Civ. Code § 8136"),
        "claim" or "amended-claim" => new("Recorded, it burdens the owner's property, and 90 days begin to run: without a suit or a notice of credit within them it expires. A claim that is false on purpose can cost the whole lien.", "Civ. Code §§ 8422, 8460"),
        "converted-claim" => new("Recorded, it burdens the owner's property from that day, in place of the design professional's lien that ended when work commenced, and 90 days begin to run: without a suit or a notice of credit within them it expires.", "Civ. Code §§ 8319, 8460"),
        "design-lien" => new("Recorded, it burdens the land until work commences, and no longer than 90 days without a suit.", "Civ. Code § 8306"),
        "design-lien-release" => new("Recorded, it says that the lien was satisfied to the extent written on it, and gives it up to that extent.", "Civ. Code § 8306(c)"),
        "notice-of-credit" => new("Signed with the owner and recorded, it gives the owner time to pay. The last day to sue moves to 90 days after the credit ends, but never past one year after completion.", "Civ. Code § 8460(b)"),
        "release" or "partial-release" => new("Recorded, it gives up the claim of lien on the property that it names. What is still owed must then be had another way, such as by a suit on the contract.", "Civ. Code § 8468"),
        "stop-payment-release" => new("Given, it lets the holder pay out what was held. Other rights stay, and a new notice may follow while there is time.", "Civ. Code § 8128"),
        "release-affidavit" => new("Sworn and served, it has the public entity serve a copy on whoever gave the stop payment notice. Unless that one answers under oath in the time stated, 10 to 20 days, the money is released. In court the burden of proof is the direct contractor's.", "Civ. Code §§ 9404-9410"),
        _ => null,
    };
}
