using Stringline.Law.Facts;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The jobs on which stop payment notice and bond are tried: completed on Wednesday 22 October 2025. 75 days end on Monday 5 January 2026;
/// 90 days on Tuesday 20 January, which is open; 90 days more on Monday 20 April; six months on 22 April, which is day 182 as well.
/// </summary>
internal static class RemedyJobs
{
    /// <summary>
    /// A city's job, a supplier to a subcontractor, a bond of <c>surety</c>; the index searched when all that can be recorded was.
    /// </summary>
    public static JobBuilder Public(string? hiredBy = "sub") =>
        new JobBuilder().PublicWork().Role(ClaimantRole.Supplier, hiredBy).PaymentBond(null)
        .IndexSearched("2025-11-10");

    /// <summary>The preliminary notice of 14 August 2025 to those to whom it is due on public work.</summary>
    public static JobBuilder NoticedPublic(this JobBuilder job, string on = "2025-08-14") =>
        job.Notice(on, Manner.CertifiedMail, "city", "direct");

    /// <summary>Accepted by the city on 22 October 2025.</summary>
    public static JobBuilder Accepted(this JobBuilder job) => job.Completed("2025-10-22", CompletionTheory.Acceptance);

    /// <summary>The usual public job: 6,430.00 on 5 August 2025, noticed in time, accepted.</summary>
    public static JobBuilder UsualPublic() => Public().Furnished("2025-08-05", 6430m).NoticedPublic().Accepted();

    /// <summary>A private job, a supplier to a subcontractor.</summary>
    public static JobBuilder Private(ClaimantRole role = ClaimantRole.Supplier, string? hiredBy = "sub") =>
        new JobBuilder().Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.").Role(role, hiredBy).Licensed("2012-06-01..");

    /// <summary>The usual private job: 6,430.00 on 5 August 2025, noticed in time, completed.</summary>
    public static JobBuilder UsualPrivate(params string[] noticed) => Private().Furnished("2025-08-05", 6430m)
        .Notice("2025-08-14", Manner.CertifiedMail, noticed).Completed("2025-10-22");

    /// <summary>A direct contractor with a lender that was told.</summary>
    public static JobBuilder DirectContractor() => Private(ClaimantRole.DirectContractor, "owner").NoParty("direct").NoParty("sub");

    /// <summary>Changes the stop payment notice added last.</summary>
    public static JobBuilder Paper(this JobBuilder job, Func<StopPaymentGiven, StopPaymentGiven> change) =>
        job.Which(e => change((StopPaymentGiven)e));

    /// <summary>Changes the bond notice added last.</summary>
    public static JobBuilder BondPaper(this JobBuilder job, Func<BondNoticeGiven, BondNoticeGiven> change) =>
        job.Which(e => change((BondNoticeGiven)e));

    /// <summary>Changes the action added last.</summary>
    public static JobBuilder Action(this JobBuilder job, Func<ActionFiled, ActionFiled> change) => job.Which(e => change((ActionFiled)e));
}
