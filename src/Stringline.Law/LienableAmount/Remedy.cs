namespace Stringline.Law.LienableAmount;

/// <summary>What money is asked by. Each has limits and sections of its own.</summary>
public enum Remedy
{
    /// <summary>
    /// What is owed under the contract, by any road: neither notice nor release of lien rights nor reasonable value limits it.
    /// </summary>
    Debt,

    /// <summary>The mechanics lien (Civ. Code § 8400); private work only.</summary>
    Lien,

    /// <summary>The stop payment notice, on private work (Civ. Code § 8500) or public (§ 9350).</summary>
    StopPaymentNotice,

    /// <summary>The payment bond, on private work (Civ. Code § 8600) or public (§ 9550).</summary>
    PaymentBond,

    /// <summary>The payment bond of federal work (40 U.S.C. § 3131).</summary>
    FederalBond,

    /// <summary>The design professional's lien before the work commences (Civ. Code § 8300); private work only.</summary>
    DesignLien,
}
