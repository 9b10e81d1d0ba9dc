namespace Stringline.Law.Numbers;

/// <summary>The numbers of the law by name; <c>data/numbers.csv</c> says what each is, since when, and how well it is known.</summary>
public enum Number
{
    // Claim of lien.
    /// <summary>From completion: a direct contractor's claim of lien is recorded.</summary>
    RecordAfterCompletionDirect,

    /// <summary>From the owner's recorded notice: a direct contractor's claim of lien.</summary>
    RecordAfterNoticeDirect,

    /// <summary>From completion: any other claimant's claim of lien is recorded.</summary>
    RecordAfterCompletion,

    /// <summary>From the owner's recorded notice: any other claimant's claim of lien.</summary>
    RecordAfterNotice,

    /// <summary>From knowledge of the work: notice of nonresponsibility is posted and recorded.</summary>
    Nonresponsibility,

    /// <summary>Of the price: the payment bond recorded before the work that may restrict the liens.</summary>
    BondBeforeWork,

    /// <summary>Of the deed of trust: the payment bond that puts the deed before the lien.</summary>
    BondBeforeDeed,

    /// <summary>Of the deed of trust: the payment bond that puts it before a site improvement lien.</summary>
    BondBeforeSiteImprovement,

    // Enforcing a recorded claim.
    /// <summary>From the recording of a claim of lien: the action that enforces it.</summary>
    SueOnClaim,

    /// <summary>From the recording of a claim of lien: notice of credit is recorded.</summary>
    RecordCredit,

    /// <summary>From the end of the credit: the action.</summary>
    SueAfterCredit,

    /// <summary>From completion of the work: the action after credit at the latest.</summary>
    SueAfterCompletion,

    /// <summary>From the action: notice of its pendency is recorded.</summary>
    RecordPendency,

    /// <summary>From the action: summons and complaint are served.</summary>
    ServeAction,

    /// <summary>From the action on a lien: it is brought to trial.</summary>
    BringToTrial,

    /// <summary>From any action: it is brought to trial at the latest.</summary>
    BringToTrialAtMost,

    /// <summary>From when money fell due under a written contract: the action on the debt.</summary>
    DebtInWriting,

    /// <summary>From when money fell due under any other contract: the action on the debt.</summary>
    DebtNotInWriting,

    /// <summary>Of the claim: the bond that frees the land from it.</summary>
    ReleaseBond,

    /// <summary>From notice that a release bond was recorded: the action on it.</summary>
    SueOnReleaseBond,

    /// <summary>From the owner's demand for a release: its petition for an order.</summary>
    PetitionAfterDemand,

    /// <summary>From the filing of the petition for release: the hearing.</summary>
    HearPetition,

    /// <summary>Before the hearing on the petition for release: its service.</summary>
    ServePetition,

    /// <summary>From the mailing of the petition for release: service is complete.</summary>
    PetitionByMail,

    // Stop payment notices.
    /// <summary>Of the claim: the bond that goes with a bonded stop payment notice.</summary>
    BondOfNotice,

    /// <summary>Of the amount claimed: the bond that frees the money on private work.</summary>
    BondAgainstNotice,

    /// <summary>Of the amount claimed: the bond that frees the money on public work.</summary>
    BondAgainstPublicNotice,

    /// <summary>From a stop payment notice on private work: no action on it sooner.</summary>
    NoActionOnNotice,

    /// <summary>From a stop payment notice on public work: no action on it sooner.</summary>
    NoActionOnPublicNotice,

    /// <summary>From the end of the time to give a stop payment notice on private work: the action.</summary>
    SueOnNotice,

    /// <summary>From the end of the time to give a stop payment notice on public work: the action.</summary>
    SueOnPublicNotice,

    /// <summary>From the action on private work: those who got the notice are told.</summary>
    TellOfAction,

    /// <summary>From the action on public work: the entity is told.</summary>
    TellEntityOfAction,

    /// <summary>From the action on a stop payment notice on private work: trial.</summary>
    BringNoticeToTrial,

    /// <summary>From the action on a stop payment notice on public work: trial.</summary>
    BringPublicNoticeToTrial,

    /// <summary>From receipt of the notice: the owner says that it relies on a payment bond.</summary>
    OwnerDeclines,

    /// <summary>From a bonded notice: the lender objects to the sureties.</summary>
    ObjectToSureties,

    /// <summary>From the lender's objection: the claimant brings another bond.</summary>
    ReplaceBond,

    /// <summary>From a recorded notice of completion, acceptance or cessation of public work: the stop payment notice.</summary>
    GiveNoticeAfterRecording,

    /// <summary>From completion or cessation of public work: the stop payment notice where no notice is recorded.</summary>
    GiveNoticeAfterCompletion,

    /// <summary>From completion, or a recorded notice of it: the entity tells of the time to sue.</summary>
    EntityTells,

    /// <summary>Paid with a stop payment notice by one who is to be told of the time to sue.</summary>
    FeeToBeTold,

    // Summary release of withheld public money.
    /// <summary>From service of the affidavit: the earliest day that may be set for an answer.</summary>
    LeastToAnswer,

    /// <summary>From service of the affidavit: the latest day that may be set for an answer.</summary>
    MostToAnswer,

    /// <summary>From the motion for a determination: its hearing.</summary>
    HearMotion,

    /// <summary>Before the hearing: notice of it.</summary>
    NoticeOfHearing,

    /// <summary>From the mailing of notice of the hearing: it is complete.</summary>
    HearingByMail,

    // Preliminary notice, and how notice is given.
    /// <summary>From first furnishing on private work: preliminary notice that covers all.</summary>
    NoticeAfterFurnishing,

    /// <summary>Before a late preliminary notice on private work: what it still covers.</summary>
    NoticeLookBack,

    /// <summary>From commencement of the work: a design professional's preliminary notice.</summary>
    NoticeAfterCommencement,

    /// <summary>Before preliminary notice on public work: what it covers.</summary>
    PublicNoticeLookBack,

    /// <summary>From mailing: a notice that was left and mailed is complete.</summary>
    LeftAndMailed,

    /// <summary>Tries to hand a notice over before it is left and mailed.</summary>
    TriesToDeliver,

    /// <summary>From filing: the recorder keeps a filed preliminary notice.</summary>
    FiledNoticeKept,

    /// <summary>From recording: the recorder mails word of a notice of completion or cessation.</summary>
    RecorderMails,

    /// <summary>A private subcontract up to which a missing preliminary notice is no cause for discipline.</summary>
    SmallSubcontract,

    /// <summary>A public subcontract up to which a missing preliminary notice is no cause for discipline.</summary>
    SmallPublicSubcontract,

    // Completion.
    /// <summary>Without labor on private work: it is complete.</summary>
    IdleDays,

    /// <summary>Without labor on public work: it is complete.</summary>
    PublicIdleDays,

    /// <summary>Without labor on private work: notice of cessation may be recorded.</summary>
    IdleDaysBeforeNotice,

    /// <summary>Without labor on public work: notice of cessation may be recorded.</summary>
    PublicIdleDaysBeforeNotice,

    /// <summary>From completion of private work: notice of completion is recorded.</summary>
    RecordCompletion,

    /// <summary>From completion of public work: notice of completion is recorded.</summary>
    RecordPublicCompletion,

    /// <summary>From recording: the owner gives a copy of its notice.</summary>
    OwnersCopy,

    // Payment bonds.
    /// <summary>From a recorded notice of completion of private work: notice to surety and principal.</summary>
    BondNotice,

    /// <summary>From completion of private work: that notice where none is recorded.</summary>
    BondNoticeAfterCompletion,

    /// <summary>From a recorded notice of completion of public work: notice to surety and principal.</summary>
    PublicBondNotice,

    /// <summary>From completion of public work: that notice where none is recorded.</summary>
    PublicBondNoticeAfterCompletion,

    /// <summary>From completion: the action on a recorded payment bond of private work.</summary>
    SueOnBond,

    /// <summary>From when the claim accrued: the action on one that was not recorded before completion.</summary>
    SueOnBondNotRecorded,

    /// <summary>From the end of the time for a stop payment notice: the action on the bond of public work.</summary>
    SueOnPublicBond,

    /// <summary>A direct contract on public work up to which no payment bond is required.</summary>
    NoBondUpTo,

    /// <summary>From last furnishing on federal work: notice to the prime contractor.</summary>
    FederalBondNotice,

    /// <summary>From last furnishing on federal work: no action on the bond sooner.</summary>
    NoActionOnFederalBond,

    /// <summary>From last furnishing on federal work: the action on the bond.</summary>
    SueOnFederalBond,

    // Bankruptcy.
    /// <summary>From notice that a stay has ended: an action that was stayed.</summary>
    SueAfterStay,

    // Design professionals.
    /// <summary>Before the claim is recorded: notice of demand and default.</summary>
    DefaultNotice,

    /// <summary>From knowledge that the work will not commence: the claim is recorded.</summary>
    RecordDesignLien,

    /// <summary>From recording of the claim: the action that enforces it.</summary>
    SueOnDesignLien,

    /// <summary>From commencement of the work: the ended lien is recorded anew.</summary>
    ConvertDesignLien,

    /// <summary>Expected cost of an owner-occupied residence from which there is such a lien.</summary>
    LeastCostForDesignLien,

    // Large projects and licenses.
    /// <summary>A price above which the owner of the fee gives security.</summary>
    FeePriceWithSecurity,

    /// <summary>A price above which the owner of less than the fee gives security.</summary>
    LesserPriceWithSecurity,

    /// <summary>A lease for which the tenant counts as owner of the fee.</summary>
    LeaseLikeFee,

    /// <summary>A net worth of a company above which it gives no security.</summary>
    WorthWithoutSecurity,

    /// <summary>Of the price: the security.</summary>
    OwnersSecurity,

    /// <summary>Of the price: the security of short work.</summary>
    OwnersSecurityOfShortWork,

    /// <summary>From commencement to substantial completion: short work.</summary>
    ShortWork,

    /// <summary>From the demand for security: work may be suspended after it.</summary>
    SuspendForSecurity,

    /// <summary>From expiration of a license: a renewal that counts for the time past.</summary>
    RenewLicense,

    /// <summary>From its effective date: a certificate of insurance is received.</summary>
    InsureLicense,

    /// <summary>A whole undertaking below which no license is needed.</summary>
    MinorWork,

    // Prompt payment.
    /// <summary>From notice that demands it: the owner pays a progress payment.</summary>
    OwnersProgress,

    /// <summary>A month on a progress payment wrongly withheld by the owner.</summary>
    OwnersProgressPenalty,

    /// <summary>Of what is disputed of a progress payment: the most that the owner may hold.</summary>
    OwnersProgressHeld,

    /// <summary>From receipt from a public utility: its direct contractor pays on.</summary>
    UtilityProgress,

    /// <summary>From receipt: a contractor passes on a progress payment.</summary>
    HirersProgress,

    /// <summary>A month on a progress payment that was not passed on.</summary>
    HirersProgressPenalty,

    /// <summary>Of what is disputed of it: the most that a contractor may hold.</summary>
    HirersProgressHeld,

    /// <summary>From receipt on State work: a contractor passes on a progress payment.</summary>
    StateHirersProgress,

    /// <summary>A month on one that was not passed on, on State work.</summary>
    StateHirersProgressPenalty,

    /// <summary>Of what is disputed of it: the most that may be held, on State work.</summary>
    StateHirersProgressHeld,

    /// <summary>From completion: the owner pays the retention.</summary>
    OwnersRetention,

    /// <summary>Of what is disputed of retention: the most that the owner may hold.</summary>
    OwnersRetentionHeld,

    /// <summary>From receipt of retention: the direct contractor pays each share.</summary>
    HirersRetention,

    /// <summary>Of what is disputed of a share: the most that the direct contractor may hold.</summary>
    HirersRetentionHeld,

    /// <summary>A month on retention wrongly withheld on private work.</summary>
    RetentionPenalty,

    /// <summary>From notice that disputed work is done: the payer accepts or rejects it.</summary>
    AnswerDisputedWork,

    /// <summary>From acceptance of disputed work: its retention is paid.</summary>
    PayDisputedWork,

    /// <summary>Of a payment and of the price: the most retained on private work.</summary>
    RetentionCap,

    /// <summary>Of a payment and of the price: the most retained on public work.</summary>
    PublicRetentionCap,

    /// <summary>From the due day: unpaid so long, a direct contractor may give a stop work notice.</summary>
    StopWorkUnpaid,

    /// <summary>Before the stop work notice: notice of intent is posted.</summary>
    StopWorkPosting,

    /// <summary>From the stop work notice: work may stop after it.</summary>
    StopWork,

    /// <summary>From the stop work notice: the owner gives the lender a copy.</summary>
    OwnerTellsLender,

    /// <summary>Of the next month: a carrier's charges are submitted.</summary>
    ChargesSubmitted,

    /// <summary>Of the next month: a carrier's charges are paid.</summary>
    ChargesPaid,

    /// <summary>A month on a carrier's charges that are not paid.</summary>
    ChargesPenalty,

    /// <summary>Of what is disputed of them: the most that may be held.</summary>
    ChargesHeld,

    // Prompt payment by public entities.
    /// <summary>From receipt of a proper request: a local agency pays.</summary>
    LocalProgress,

    /// <summary>From receipt of a proper request: a State agency pays.</summary>
    StateProgress,

    /// <summary>From receipt of a proper request: the Trustees of the State University pay.</summary>
    TrusteesProgress,

    /// <summary>From receipt: a local agency returns a request that is not proper.</summary>
    LocalReturn,

    /// <summary>From receipt: a State agency returns a request that is not proper.</summary>
    StateReturn,

    /// <summary>From receipt: the Trustees return a request that is not proper.</summary>
    TrusteesReturn,

    /// <summary>A year: the legal rate on judgments, which late public progress payments bear.</summary>
    LegalRate,

    /// <summary>From completion: the public entity releases the retention.</summary>
    PublicRetention,

    /// <summary>From completion: a State agency that holds little releases it.</summary>
    StateRetention,

    /// <summary>Of the work still to be done: up to it a State agency holds little.</summary>
    StateRetentionLittle,

    /// <summary>From receipt: the direct contractor passes on shares of public retention.</summary>
    PassOnPublicRetention,

    /// <summary>A month on public retention improperly withheld.</summary>
    PublicRetentionCharge,

    /// <summary>Of what is disputed of it: the most that may be held.</summary>
    PublicRetentionHeld,

    /// <summary>Without labor, beyond the contractor's control: complete for the retention.</summary>
    RetentionIdleDays,

    /// <summary>Without labor, with a recorded notice: complete for the retention.</summary>
    RetentionIdleDaysWithNotice,

    // Disputed claims on public work.
    /// <summary>From receipt of a claim: the entity answers it.</summary>
    EntitysStatement,

    /// <summary>From the next meeting of its governing body: the entity answers a claim.</summary>
    AfterMeeting,

    /// <summary>From its statement: the entity pays what it does not dispute.</summary>
    EntityPays,

    /// <summary>From the demand: the entity schedules a conference.</summary>
    EntitysConference,

    /// <summary>From the conference: the entity states what is left in dispute.</summary>
    EntitysSecondStatement,

    /// <summary>From the naming of what is disputed: a mediator is agreed on.</summary>
    EntitysMediator,

    /// <summary>A year on what is not paid in time of a claim.</summary>
    EntitysInterest,

    /// <summary>From the request: the contractor says whether it presented a claim.</summary>
    ContractorsAnswer,

    /// <summary>The most that a claim under the older procedure may come to.</summary>
    GreatestClaim,

    /// <summary>Above it a local agency has longer to answer a claim.</summary>
    GreaterClaim,

    /// <summary>From receipt: a local agency answers a claim.</summary>
    AgencysStatement,

    /// <summary>From receipt: a local agency answers a greater claim.</summary>
    AgencysStatementOnGreater,

    /// <summary>From receipt: a local agency asks for further documents.</summary>
    AskForDocuments,

    /// <summary>From their receipt: a local agency answers a claim.</summary>
    AfterDocuments,

    /// <summary>From their receipt: a local agency answers a greater claim.</summary>
    AfterDocumentsOnGreater,

    /// <summary>From the answer, or when it was due: the claimant demands a conference.</summary>
    DemandConference,

    /// <summary>From the department's final decision: arbitration is begun.</summary>
    Arbitrate,

    /// <summary>From acceptance: arbitration may be begun without a decision after it.</summary>
    ArbitrateWithoutDecision,

    // Disputed claims on private work.
    /// <summary>From receipt of a claim: the owner answers it.</summary>
    OwnersStatement,

    /// <summary>From its statement: the owner pays what it does not dispute.</summary>
    OwnerPays,

    /// <summary>From the demand: the owner schedules a conference.</summary>
    OwnersConference,

    /// <summary>From the conference: the owner states what is left in dispute.</summary>
    OwnersSecondStatement,

    /// <summary>From that statement: the owner pays the rest.</summary>
    OwnerPaysTheRest,

    /// <summary>From the naming of what is disputed: a mediator is agreed on.</summary>
    OwnersMediator,

    /// <summary>A month on what is not paid in time of a claim.</summary>
    OwnersInterest,

    /// <summary>From the request: the contractor says whether it presented a claim.</summary>
    PrivateContractorsAnswer,

    /// <summary>From notice that payment is due: notice of intent to stop work.</summary>
    SecondSuspensionNotice,

    /// <summary>From notice of intent: work may stop after it.</summary>
    SuspendAfterClaim,

    // Recording.
    /// <summary>Recording the first page, at the most, without what a county adds.</summary>
    FirstPage,

    /// <summary>Recording each further page, at the most.</summary>
    FurtherPage,

    /// <summary>Of the first page's price, for archives or a trusted system, where the county took it.</summary>
    ArchiveDollar,

    /// <summary>More for every page of a paper in which one is not of the standard size.</summary>
    PageOfAnotherSize,

    /// <summary>More for each page whose print is too close.</summary>
    PenaltyPrint,

    /// <summary>Lines in an inch at the most that are no penalty print.</summary>
    LinesInAnInch,

    /// <summary>Characters and spaces in an inch at the most, over at least three inches, that are no penalty print.</summary>
    CharactersInAnInch,

    /// <summary>References to recorded papers that cost nothing.</summary>
    FreeReferences,

    /// <summary>Each further reference to a recorded paper.</summary>
    FurtherReference,

    /// <summary>Names in a group, of which the first costs nothing.</summary>
    NamesInAGroup,

    /// <summary>Each further group of names.</summary>
    GroupOfNames,

    /// <summary>Real estate fraud fee, at the most.</summary>
    FraudFee,

    /// <summary>Building Homes and Jobs Act fee, for each title and parcel.</summary>
    HomesFee,

    /// <summary>How often that fee is charged at the most for one transaction.</summary>
    MostHomesFees,

    /// <summary>Restrictive covenant fee, where the county took it up.</summary>
    CovenantFee,

    /// <summary>Width of a standard page.</summary>
    PageWidth,

    /// <summary>Height of a standard page.</summary>
    PageHeight,

    /// <summary>The least white left and right on every page.</summary>
    SideMargin,

    /// <summary>Height of the band at the top of the first page.</summary>
    TopBand,

    /// <summary>
    /// Width of the left part of that band, which says who asks for recording and where to return the paper; the rest is the recorder's.
    /// </summary>
    ReturnPart,
}
