namespace Stringline.Papers.Writing;

/// <summary>
/// The facts that are entered, by the names under which a person finds them on the screen "Enter a fact". A test holds them equal to those
/// of the forms.
/// </summary>
public static class EntryName
{
    private static readonly Dictionary<string, string> Titles = new(StringComparer.Ordinal)
    {
        ["action-ended"] = "Suit ended",
        ["action-filed"] = "Suit filed",
        ["action-served"] = "Summons served",
        ["action-told"] = "Notice of the suit given",
        ["bond-notice-given"] = "Notice of a bond claim given",
        ["bond-objected"] = "The lender objected to your bond",
        ["change"] = "Change order or extra",
        ["charged"] = "Billed, but not for work",
        ["claim-recorded"] = "Claim of lien recorded",
        ["claim-request-answered"] = "The contractor answered that request",
        ["claim-request-made"] = "A subcontractor asked to have its claim presented",
        ["claim-served"] = "Copy of the claim served",
        ["completed"] = "The whole work was completed",
        ["conference-demanded"] = "Conference demanded",
        ["conference-held"] = "Conference held",
        ["contract-ended"] = "Your contract ended",
        ["counteraffidavit-served"] = "Your counteraffidavit served",
        ["credit-recorded"] = "Notice of credit recorded",
        ["credited"] = "Credit, return or back charge allowed",
        ["dispute-claim-answered"] = "The owner answered that claim",
        ["dispute-claim-sent"] = "Claim sent to the owner for dispute resolution",
        ["disputed"] = "An amount is disputed in good faith",
        ["disputed-work-done"] = "Told the payer that the disputed work is done",
        ["final-decision-served"] = "Final written decision served",
        ["final-payment"] = "Direct contractor received final payment",
        ["furnished"] = "Delivery, or work done",
        ["furnishing-ended"] = "Furnished for the last time",
        ["hearing-noticed"] = "Notice of the hearing given",
        ["hirer-paid"] = "Your customer was paid for your work",
        ["index-searched"] = "County index searched",
        ["labor-ceased"] = "Labor on the whole work stopped",
        ["lender-sought"] = "Construction lender looked for, and none found",
        ["lis-pendens-recorded"] = "Notice of pendency recorded",
        ["lower-tier-claim"] = "A claim from below",
        ["nonresponsibility-recorded"] = "Notice of nonresponsibility",
        ["notice-filed"] = "Preliminary notice filed with the recorder",
        ["notice-given"] = "Preliminary notice, or another notice",
        ["owner-recorded"] = "The owner recorded a notice",
        ["owner-told-us"] = "The owner's copy of that notice came",
        ["paid"] = "Payment received",
        ["payment-demanded"] = "You demanded payment",
        ["release-affidavit-served"] = "Affidavit to free the money held, served on you",
        ["release-bond-recorded"] = "A lien release bond was recorded",
        ["release-demanded"] = "The owner demanded a release",
        ["release-ordered"] = "The court decided on the money held",
        ["release-petition-served"] = "Petition to release the property served on you",
        ["release-recorded"] = "Release recorded",
        ["retained"] = "Retention withheld from you",
        ["rights-action-filed"] = "Action to declare rights filed",
        ["security-demanded"] = "Security demanded from the owner",
        ["security-provided"] = "Security provided by the owner",
        ["stop-payment-bond-given"] = "A bond freed the money held",
        ["stop-payment-demanded"] = "The owner demanded a stop payment notice",
        ["stop-payment-given"] = "Stop payment notice given",
        ["stop-payment-released"] = "Stop payment notice released or reduced",
        ["stop-work-notice-given"] = "Stop work notice given",
        ["suspension-notice-sent"] = "Notice before suspending work sent",
        ["trial-begun"] = "Trial begun",
        ["waived"] = "Waiver and release signed",
        ["withdrawn"] = "Take an entry back",
        ["work-will-not-commence"] = "The work will not begin",
    };

    /// <summary>Every kind of entry with its name.</summary>
    public static IReadOnlyDictionary<string, string> All => Titles;

    /// <summary>The name of a kind of entry; null where no form has it.</summary>
    /// <param name="what">The kind's word in the job file.</param>
    public static string? Find(string what) => Titles.GetValueOrDefault(what);

    /// <summary>The step of a sheet: where it is entered. What follows tells with what.</summary>
    /// <param name="what">The kind's word in the job file.</param>
    internal static string Enter(string what) => $"Enter a fact, “{Titles[what]}”: ";
}
