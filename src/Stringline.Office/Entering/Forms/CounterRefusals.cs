namespace Stringline.Office.Entering.Forms;

/// <summary>Why a recorder hands a paper back, and what mends it.</summary>
/// <param name="Said">What is said at the counter.</param>
/// <param name="Mend">What to do.</param>
/// <param name="Section">The section; empty where it is common practice.</param>
internal sealed record CounterRefusal(string Said, string Mend, string Section);

/// <summary>
/// The reasons of form, index and money for which a recorder may refuse; of legal merit it may not judge (Gov. Code § 27201(a)).
/// </summary>
/// <remarks>A second check along, and asking for the supervisor, are common practice, no source.</remarks>
internal static class CounterRefusals
{
    /// <summary>They.</summary>
    public static IReadOnlyList<CounterRefusal> All { get; } =
    [
        new("The fee is short", "Pay the difference at the counter, or write the check anew; ask whether the county takes the notice fee "
            + "for each debtor. Have a second, blank check along.", "Gov. Code § 27361"),
        new("The first page leaves no room", "Print the page anew: the top 2½ inches are the recorder's, your return name and address "
            + "stand in their left 3½ inches, the title is directly below.", "Gov. Code § 27361.6"),
        new("Margins, or the size of the page", "Print on 8½ by 11 inches, one side, with ½ inch at both sides of every page; or pay the "
            + "surcharge for every page.", "Gov. Code § 27361.6"),
        new("A name is missing, or cannot be indexed", "Give the owners of record and the claimant in the names in which they are indexed; "
            + "mend the parties in the file and make the papers anew.", "Gov. Code § 27288.1"),
        new("A signature is missing", "Sign in ink: the claim, its verification, and the proof of service affidavit. A claim of lien needs "
            + "no notary; a release does.", "Civ. Code § 8416"),
        new("It belongs to another county", "Record where the site lies; check the county in the file.", "Civ. Code § 8060"),
        new("It is said not to be good in law", "That is not the recorder's to judge: ask for the supervisor, and for the refusal in "
            + "writing.", "Gov. Code § 27201(a)"),
    ];
}
