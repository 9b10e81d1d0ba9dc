using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.Completion;

/// <summary>
/// How long a claim of lien may be recorded once the work is complete: a number that completion, or the owner's notice of it, starts.
/// </summary>
public static class TimeToClaim
{
    /// <summary>
    /// The time after the recording of the owner's notice. The longer one belongs to a direct contractor alone; a supplier or lessor hired
    /// by the owner has the shorter: Vaughn Materials v. Security Pacific (1985) 170 Cal.App.3d 908.
    /// </summary>
    [Rule("Civ. Code § 8412(b)")]
    [Rule("Civ. Code § 8414(b)(2)")]
    public static Number AfterNotice(Claimant claimant) =>
        claimant.Role == ClaimantRole.DirectContractor ? Number.RecordAfterNoticeDirect : Number.RecordAfterNotice;

    /// <summary>The time after completion of the work.</summary>
    [Rule("Civ. Code § 8412(a)")]
    [Rule("Civ. Code § 8414(b)(1)")]
    public static Number AfterCompletion(Claimant claimant) =>
        claimant.Role == ClaimantRole.DirectContractor ? Number.RecordAfterCompletionDirect : Number.RecordAfterCompletion;
}
