namespace Stringline.Law.PromptPayment;

/// <summary>The times of the claims procedures of public and private work (Pub. Contract Code § 9204; Civ. Code § 8850).</summary>
public static class ClaimTimes
{
    /// <summary>
    /// Days from receipt in which a public entity answers a claim, and the contractor a request to present one (Pub. Contract Code
    /// § 9204(d)(1), (5)).
    /// </summary>
    public const int EntitysDays = 45;

    /// <summary>
    /// Days from receipt in which an owner answers a claim, and the contractor a request to present one (Civ. Code § 8850(d), (j)).
    /// </summary>
    public const int OwnersDays = 30;

    /// <summary>
    /// Days from the demand for a conference in which it is scheduled (Pub. Contract Code § 9204(d)(2); Civ. Code § 8850(e)).
    /// </summary>
    public const int SchedulingDays = 30;

    /// <summary>
    /// Days from the statement in which the undisputed part is paid (Pub. Contract Code § 9204(d)(1); Civ. Code § 8850(d)).
    /// </summary>
    public const int PaymentDays = 60;
}
