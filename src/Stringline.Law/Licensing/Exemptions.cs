using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Licensing;

/// <summary>Who needs no contractor's license.</summary>
internal static class Exemptions
{
    /// <summary>
    /// Who builds, or installs what it sells, or contracts for its installation, or furnishes an operator with equipment, is a contractor.
    /// </summary>
    [Rule("Bus. & Prof. Code § 7026")]
    [Rule("Bus. & Prof. Code § 7045")]
    private static bool ActsAsContractor(Claimant claimant) =>
        claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor
        || claimant is { Role: ClaimantRole.Supplier or ClaimantRole.EquipmentLessor, Installs: true };

    /// <summary>The file says nothing about a license.</summary>
    public static Outcome WhereTheFileIsSilent(Claimant claimant) => ActsAsContractor(claimant)
        ? LicenseGate.Answer(Standing.InDoubt,
            [Reason.Of(LicenseGate.Bar, $"A contractor must be licensed on every day of its work; the file says nothing about a license.")],
            [new Question($"Was a contractor's license needed, and on which days was it active?{HeadField.ClaimantLicense:aside}")])
        : LicenseGate.Answer(Standing.Kept, [Assumed(claimant.Role)], Ask(claimant));

    /// <summary>The file says that no license is needed.</summary>
    public static Outcome NotRequired(FactsAsOf facts) => ActsAsContractor(facts.Job.Claimant)
        ? LicenseGate.Answer(Standing.InDoubt,
            [Reason.Of(LicenseGate.Bar, $"The file says that no license is needed, but the claimant is a contractor; the minor-work "
                + $"exemption ends at {facts.Numbers.On(Number.MinorWork, facts.Job.Contract.On ?? facts.AsOf)} for the whole undertaking, "
                + $"asks that no permit is needed and that nobody is employed, and is never open where the work is only a part of a larger "
                + $"one (Bus. & Prof. Code § 7048).")],
            [new Question($"On which exemption does the claimant, a contractor, rely?{HeadField.ClaimantLicense:aside}")])
        : LicenseGate.Answer(Standing.Kept, [Said(facts.Job.Claimant.Role)], []);

    /// <summary>A supplier, one licensed in its own profession, and an employee for wages each have an exemption of their own.</summary>
    [Rule("Bus. & Prof. Code § 7052")]
    [Rule("Bus. & Prof. Code § 7051")]
    [Rule("Bus. & Prof. Code § 7053")]
    private static string Section(ClaimantRole role) => role switch
    {
        ClaimantRole.DesignProfessional => "Bus. & Prof. Code § 7051",
        ClaimantRole.Laborer => "Bus. & Prof. Code § 7053",
        _ => "Bus. & Prof. Code § 7052",
    };

    private static Reason Assumed(ClaimantRole role) => role switch
    {
        ClaimantRole.DesignProfessional =>
            Reason.Of(Section(role), $"Assumed: the claimant is a licensed architect or a registered engineer who acts solely in that "
                + $"capacity, so no contractor's license is needed."),
        ClaimantRole.Laborer =>
            Reason.Of(Section(role), $"Assumed: the claimant works as an employee for wages alone, so no contractor's license is needed."),
        _ => Reason.Of(Section(role), $"Assumed: the claimant only furnishes, and neither installs nor contracts for the installation, so "
            + $"no contractor's license is needed (also Bus. & Prof. Code § 7045)."),
    };

    private static Reason Said(ClaimantRole role) =>
        Reason.Of(Section(role), $"The file says that the claimant's part of the work needs no license.");

    private static IReadOnlyList<Question> Ask(Claimant claimant) => claimant.Role switch
    {
        ClaimantRole.DesignProfessional =>
            [new Question($"Is the claimant licensed as an architect or registered as an engineer, and did it act solely in that "
                + $"capacity?{HeadField.ClaimantLicense:aside}")],
        ClaimantRole.Laborer =>
            [new Question($"Does the claimant work for wages alone, without a say in how the work is done, or is it a fund for such pay? "
                + $"An agency that supplies labor may need a license "
                + $"(Bus. & Prof. Code § 7026.1(a)(3)).{HeadField.ClaimantLicense:aside}")],
        _ when claimant.Installs is null =>
            [new Question($"Does the claimant install what it furnishes, contract for its installation, fabricate it into the work, or "
                + $"furnish an operator with equipment? Then it needs a license.{HeadField.ClaimantInstalls:aside}")],
        _ => [],
    };
}
