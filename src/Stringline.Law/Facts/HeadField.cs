namespace Stringline.Law.Facts;

/// <summary>
/// A field of the head of a job file, as a sentence points to it: of the work, the claimant, its contract or the parties.
/// </summary>
/// <param name="Path">Where it stands in the file, such as <c>work.orderedByTenant</c>; of a list without the item's place.</param>
public sealed record HeadField(string Path) : IPointer
{
    /// <inheritdoc/>
    public string Name { get; private init; } = Path;

    // Each is called as its path says.
    internal static readonly HeadField ClaimantHiredBy = new("claimant.hiredBy");
    internal static readonly HeadField ClaimantInstalls = new("claimant.installs");
    internal static readonly HeadField ClaimantLicense = new("claimant.license");
    internal static readonly HeadField ClaimantLicenseActive = new("claimant.license.active");
    internal static readonly HeadField ClaimantLicenseActiveBeyondControl = new("claimant.license.active.beyondControl");
    internal static readonly HeadField ClaimantLicenseActiveCause = new("claimant.license.active.cause");
    internal static readonly HeadField ClaimantLicenseActiveSent = new("claimant.license.active.sent");
    internal static readonly HeadField ClaimantLicenseFitsWork = new("claimant.license.fitsWork");
    internal static readonly HeadField ClaimantLicenseGoodFaith = new("claimant.license.goodFaith");
    internal static readonly HeadField ClaimantLicenseInsuranceOnFile = new("claimant.license.insuranceOnFile");
    internal static readonly HeadField ClaimantLicenseSameEntity = new("claimant.license.sameEntity");
    internal static readonly HeadField ClaimantRole = new("claimant.role");
    internal static readonly HeadField ContractBondNotBrought = new("contract.bondNotBrought");
    internal static readonly HeadField ContractOn = new("contract.on");
    internal static readonly HeadField ContractPaymentDueDays = new("contract.paymentDueDays");
    internal static readonly HeadField ContractPrice = new("contract.price");
    internal static readonly HeadField ContractReasonableValue = new("contract.reasonableValue");
    internal static readonly HeadField ContractWritten = new("contract.written");
    internal static readonly HeadField PartiesAddress = new("parties.address");
    internal static readonly HeadField PartiesBankruptSince = new("parties.bankruptSince");
    internal static readonly HeadField PartiesDeedRecorded = new("parties.deedRecorded");
    internal static readonly HeadField PartiesKnewOfWork = new("parties.knewOfWork");
    internal static readonly HeadField PartiesMadeToPlans = new("parties.madeToPlans");
    internal static readonly HeadField PartiesNaturalPerson = new("parties.naturalPerson");
    internal static readonly HeadField PartiesSoldOn = new("parties.soldOn");
    internal static readonly HeadField PartiesTookTitleBy = new("parties.tookTitleBy");
    internal static readonly HeadField PartiesWorksUnder = new("parties.worksUnder");
    internal static readonly HeadField WorkBody = new("work.body");
    internal static readonly HeadField WorkCommenced = new("work.commenced");
    internal static readonly HeadField WorkCommonInterest = new("work.commonInterest");
    internal static readonly HeadField WorkDirectContractFiled = new("work.directContract.filed");
    internal static readonly HeadField WorkDirectContractOn = new("work.directContract.on");
    internal static readonly HeadField WorkDirectContractPrice = new("work.directContract.price");
    internal static readonly HeadField WorkDirectContractRetentionPercent = new("work.directContract.retentionPercent");
    internal static readonly HeadField WorkExpectedCost = new("work.expectedCost");
    internal static readonly HeadField WorkLowRiseResidential = new("work.lowRiseResidential");
    internal static readonly HeadField WorkOrderedByTenant = new("work.orderedByTenant");
    internal static readonly HeadField WorkPaymentBond = new("work.paymentBond");
    internal static readonly HeadField WorkPaymentBondAmount = new("work.paymentBond.amount");
    internal static readonly HeadField WorkPaymentBondPrincipal = new("work.paymentBond.principal") { Name = "paymentBond.principal" };
    internal static readonly HeadField WorkPaymentBondRecorded = new("work.paymentBond.recorded") { Name = "paymentBond.recorded" };
    internal static readonly HeadField WorkPaymentBondSurety = new("work.paymentBond.surety") { Name = "paymentBond.surety" };
    internal static readonly HeadField WorkPermit = new("work.permit");
    internal static readonly HeadField WorkPublicTakesOver = new("work.publicTakesOver");
    internal static readonly HeadField WorkResidentialStructures = new("work.residentialStructures");
    internal static readonly HeadField WorkSecurityExempt = new("work.securityExempt");
    internal static readonly HeadField WorkSeveralDirectContracts = new("work.severalDirectContracts");
    internal static readonly HeadField WorkSiteAlsoIn = new("work.site.alsoIn") { Name = "site.alsoIn" };
    internal static readonly HeadField WorkStateContractAct = new("work.stateContractAct");
    internal static readonly HeadField WorkStructures = new("work.structures");
    internal static readonly HeadField WorkSubjectToAcceptanceBy = new("work.subjectToAcceptanceBy");
    internal static readonly HeadField WorkSubstantiallyComplex = new("work.substantiallyComplex");
    internal static readonly HeadField WorkUnits = new("work.units");
    internal static readonly HeadField WorkUse = new("work.use");
}
