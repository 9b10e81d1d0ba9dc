using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>What a recorded claim says, and in which form (Civ. Code § 8416(a)).</summary>
internal static class ClaimContents
{
    /// <summary>
    /// Whether nothing of what the section asks is told to be missing: signature and verification, the statements, the affidavit of
    /// service, and the notice in its type. What lacks something may do all the same, so that the claim is in doubt and never lost on it.
    /// </summary>
    [Rule("Civ. Code § 8416(a)")]
    public static bool IsWhole(ClaimRecorded claim) => claim.Lacks is null;

    /// <summary>Why a claim that lacks something is in doubt; null where it is whole.</summary>
    public static Reason? Why(ClaimRecorded claim) => claim.Lacks is not { } lacks ? null : Reason.Of("Civ. Code § 8416(a)",
        $"The claim recorded {DaySpan.Of(claim.On)} lacks, as entered: {lacks}. The section asks for a statement signed and verified by "
            + $"the claimant, with all that it lists and the notice in at least 10-point boldface type. A mistake about the demand, the "
            + $"credits, the work or the site does not undo a claim (Civ. Code § 8422(a)); whether one that lacks this is good is open. "
            + $"Record a whole claim anew inside the time.", [claim]);

    /// <summary>What is asked of a claim that lacks something.</summary>
    public static Question Ask(ClaimRecorded claim) =>
        new($"Does the conformed copy of the recorded claim in truth lack that?{ClaimKinds.ClaimRecorded.At("lacks"):aside}") { Corrects =
            claim };
}
