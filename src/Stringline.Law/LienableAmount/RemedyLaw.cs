using Stringline.Law.Facts;

namespace Stringline.Law.LienableAmount;

/// <summary>What limits the amount of a remedy, and the sections that say so.</summary>
internal sealed record RemedyLaw
{
    /// <summary>What is due, less all credits.</summary>
    public required string Due { get; init; }

    /// <summary>The agreed price.</summary>
    public required string Price { get; init; }

    /// <summary>The value of the work that was provided.</summary>
    public required string Value { get; init; }

    /// <summary>Changes to the price, and what an ended contract does to it.</summary>
    public required string Changes { get; init; }

    /// <summary>What is not for work.</summary>
    public required string Charges { get; init; }

    /// <summary>In which order a payment pays what is owed.</summary>
    public required string Order { get; init; }

    /// <summary>How far back a late preliminary notice reaches; null where none limits the remedy.</summary>
    public string? Reach { get; init; }

    /// <summary>Whether the reasonable value limits it where it is below the price.</summary>
    public bool ValueLimits { get; init; }

    /// <summary>Whether a statutory waiver and release takes from it.</summary>
    public bool WaiversBind { get; init; }

    /// <summary>Whether work outside the direct contract is no part of it (Civ. Code § 8432).</summary>
    public bool DirectContractLimits { get; init; }

    private const string Application = "Civ. Code § 1479";

    private static RemedyLaw Plain(string section, string order = Application) =>
        new() { Due = section, Price = section, Value = section, Changes = section, Charges = section, Order = order };

    [Rule("Civ. Code § 8416(a)(1)")]
    [Rule("Civ. Code § 8430(a)")]
    private static RemedyLaw Lien { get; } = new()
    {
        Due = "Civ. Code § 8416(a)(1)",
        Price = "Civ. Code § 8430(a)(2)",
        Value = "Civ. Code § 8430(a)(1)",
        Changes = "Civ. Code § 8430(c)",
        Charges = "Civ. Code § 8430(a)",
        Order = Application,
        Reach = "Civ. Code § 8204(a)",
        ValueLimits = true,
        WaiversBind = true,
        DirectContractLimits = true,
    };

    /// <summary>Only the amount due for work through the day of the notice; the reasonable value is a limit of the lien alone.</summary>
    [Rule("Civ. Code § 8502(c)")]
    private static RemedyLaw PrivateStopPayment { get; } =
    Plain("Civ. Code § 8502(c)") with { Reach = "Civ. Code § 8204(a)", WaiversBind = true };

    [Rule("Civ. Code § 9352(c)")]
    [Rule("Civ. Code § 9304")]
    private static RemedyLaw PublicStopPayment { get; } =
    Plain("Civ. Code § 9352(c)") with { Reach = "Civ. Code § 9304", WaiversBind = true };

    /// <summary>The bond pays the claims of all claimants in full.</summary>
    [Rule("Civ. Code § 8606(a)")]
    private static RemedyLaw PrivateBond { get; } = Plain("Civ. Code § 8606(a)") with { Reach = "Civ. Code § 8204(a)", WaiversBind = true };

    /// <summary>The bond pays the claims of all claimants in full.</summary>
    [Rule("Civ. Code § 9554(c)")]
    private static RemedyLaw PublicBond { get; } = Plain("Civ. Code § 9554(c)") with { Reach = "Civ. Code § 9304", WaiversBind = true };

    /// <summary>What is unpaid; nothing of the Civil Code limits it.</summary>
    [Rule("40 U.S.C. § 3133(b)(1)", Sure = Sure.FromMemory)]
    private static RemedyLaw Federal { get; } = Plain("40 U.S.C. § 3133(b)(1)", "40 U.S.C. § 3133(b)(1)") with { WaiversBind = true };

    /// <summary>
    /// The lesser of fee and reasonable value, less deposits and payments. Of the notices and waiver forms none applies
    /// (Civ. Code § 8308(a)).
    /// </summary>
    [Rule("Civ. Code § 8302(b)")]
    private static RemedyLaw DesignLien { get; } = Plain("Civ. Code § 8302(b)") with { ValueLimits = true };

    /// <summary>
    /// What is due by the terms of the contract. A statutory release gives up remedies, not the debt (Civ. Code §§ 8132-8138).
    /// </summary>
    [Rule("Civ. Code § 3302", Sure = Sure.FromMemory)]
    private static RemedyLaw Debt { get; } = Plain("Civ. Code § 3302");

    private static RemedyLaw DebtUnderFederal { get; } = Federal with { WaiversBind = false };

    [Rule("41 U.S.C. § 7103", Sure = Sure.FromMemory)]
    private static RemedyLaw DebtOfTheUnitedStates { get; } = Plain("41 U.S.C. § 7103", "41 U.S.C. § 7103");

    /// <summary>The law of a remedy on this work; null where this claimant has no such remedy on work of this kind.</summary>
    public static RemedyLaw? Of(Remedy remedy, JobFile job)
    {
        var isDirect = job.Claimant.Role == ClaimantRole.DirectContractor;
        return (remedy, job.Work.Kind) switch
        {
            (Remedy.Debt, WorkKind.Private or WorkKind.Public) => Debt,
            (Remedy.Debt, WorkKind.Federal) => isDirect ? DebtOfTheUnitedStates : DebtUnderFederal,
            (Remedy.Lien, WorkKind.Private) => Lien,
            (Remedy.StopPaymentNotice, WorkKind.Private) => PrivateStopPayment,
            (Remedy.StopPaymentNotice, WorkKind.Public) => isDirect ? null : PublicStopPayment,
            (Remedy.PaymentBond, WorkKind.Private) => PrivateBond,
            (Remedy.PaymentBond, WorkKind.Public) => isDirect ? null : PublicBond,
            (Remedy.FederalBond, WorkKind.Federal) => isDirect ? null : Federal,
            (Remedy.DesignLien, WorkKind.Private) => job.Claimant.Role == ClaimantRole.DesignProfessional ? DesignLien : null,
            _ => null,
        };
    }

    /// <summary>The remedy that is asked about first: the lien, or what takes its place.</summary>
    public static Remedy Main(JobFile job) => job.Work.Kind switch
    {
        WorkKind.Private => Remedy.Lien,
        WorkKind.Public => job.Claimant.Role == ClaimantRole.DirectContractor ? Remedy.Debt : Remedy.StopPaymentNotice,
        WorkKind.Federal => job.Claimant.Role == ClaimantRole.DirectContractor ? Remedy.Debt : Remedy.FederalBond,
        _ => throw new InvalidOperationException($"No such kind of work: {job.Work.Kind}."),
    };
}
