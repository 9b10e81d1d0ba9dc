using Stringline.Law.Facts;

namespace Stringline.Exchange;

/// <summary>The words of the job file's closed sets. Reader, writer and screens take them from here only.</summary>
public static class JobFileWords
{
    /// <summary><c>work.kind</c>.</summary>
    public static WordTable<WorkKind> Kind { get; } = new(
        ("private", WorkKind.Private), ("public", WorkKind.Public), ("federal", WorkKind.Federal));

    /// <summary><c>work.use</c>.</summary>
    public static WordTable<WorkUse> Use { get; } = new(
        ("commercial", WorkUse.Commercial),
        ("residential", WorkUse.Residential),
        ("owner-occupied-1-to-4", WorkUse.OwnerOccupiedOneToFour));

    /// <summary><c>claimant.role</c>.</summary>
    public static WordTable<ClaimantRole> Role { get; } = new(
        ("direct-contractor", ClaimantRole.DirectContractor),
        ("subcontractor", ClaimantRole.Subcontractor),
        ("supplier", ClaimantRole.Supplier),
        ("equipment-lessor", ClaimantRole.EquipmentLessor),
        ("laborer", ClaimantRole.Laborer),
        ("design-professional", ClaimantRole.DesignProfessional));

    /// <summary><c>parties[].capacity</c>.</summary>
    public static WordTable<PartyCapacity> Capacity { get; } = new(
        ("owner", PartyCapacity.Owner),
        ("direct-contractor", PartyCapacity.DirectContractor),
        ("subcontractor", PartyCapacity.Subcontractor),
        ("construction-lender", PartyCapacity.ConstructionLender),
        ("surety", PartyCapacity.Surety),
        ("public-entity", PartyCapacity.PublicEntity));

    /// <summary><c>charged.of</c>.</summary>
    public static WordTable<ChargeKind> Charge { get; } = new(
        ("interest", ChargeKind.Interest),
        ("finance", ChargeKind.Finance),
        ("delay", ChargeKind.Delay),
        ("lost-profit", ChargeKind.LostProfit),
        ("attorney-fees", ChargeKind.AttorneyFees),
        ("other", ChargeKind.Other));

    /// <summary><c>manner</c> of a paper given.</summary>
    public static WordTable<Manner> Manner { get; } = new(
        ("personal", Law.Facts.Manner.Personal),
        ("certified-mail", Law.Facts.Manner.CertifiedMail),
        ("registered-mail", Law.Facts.Manner.RegisteredMail),
        ("express-mail", Law.Facts.Manner.ExpressMail),
        ("overnight-carrier", Law.Facts.Manner.OvernightCarrier),
        ("certificate-of-mailing", Law.Facts.Manner.CertificateOfMailing),
        ("substituted", Law.Facts.Manner.Substituted));

    /// <summary><c>notice-given.notice</c>.</summary>
    public static WordTable<NoticeKind> Notice { get; } = new(
        ("preliminary", NoticeKind.Preliminary), ("completion-claim", NoticeKind.CompletionClaim));

    /// <summary><c>completed.by</c>.</summary>
    public static WordTable<CompletionTheory> Completion { get; } = new(
        ("actual", CompletionTheory.Actual),
        ("occupation", CompletionTheory.Occupation),
        ("cessation", CompletionTheory.Cessation),
        ("acceptance", CompletionTheory.Acceptance));

    /// <summary><c>owner-recorded.notice</c> and <c>owner-told-us.notice</c>.</summary>
    public static WordTable<OwnerNotice> OwnerNotice { get; } = new(
        ("completion", Law.Facts.OwnerNotice.Completion), ("cessation", Law.Facts.OwnerNotice.Cessation));

    /// <summary><c>waived.form</c>: the section that prescribes the form.</summary>
    public static WordTable<WaiverForm> Form { get; } = new(
        ("8132", WaiverForm.ConditionalProgress),
        ("8134", WaiverForm.UnconditionalProgress),
        ("8136", WaiverForm.ConditionalFinal),
        ("8138", WaiverForm.UnconditionalFinal));
}
