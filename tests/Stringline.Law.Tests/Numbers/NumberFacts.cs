using Stringline.Law.Facts;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Numbers;

/// <summary>
/// Jobs on which one number of the law or several matter that the drawn jobs do not reach: each with the day on which it is asked about.
/// Who adds a number adds a job here if the walk finds none.
/// </summary>
internal static class NumberFacts
{
    /// <summary>All of them.</summary>
    public static IEnumerable<(JobFile Job, LocalDate AsOf)> All =>
    [
        // Claim of lien: what binds the land, its rank, a lien of design, the filed notice.
        At("2026-06-01", Supplier().Work(w => w with { OrderedByTenant = true })
            .Nonresponsibility("2026-03-12", "2026-03-12", "2026-03-02")),
        At("2025-12-01", Behind("2025-08-01")),
        At("2025-12-01", Behind("2025-07-29").Work(w => w with { SiteImprovement = true })),
        At("2026-04-10", DesignLien.Architect.Job("2025-12-17").Lender().DefaultNotice("2025-10-20", 24_000m).Add(i => new ClaimRecorded
        {
            Index = i, On = When("2025-11-07"), Amount = 24_000m, Lien = LienKind.Design, Id = "design",
        })),
        At("2028-03-12", new JobBuilder().Furnished("2026-03-02", 500m).Notice("2026-03-10")
            .Add(i => new NoticeFiled { Index = i, On = When("2026-03-12") })),

        // Enforcing it: the petition that frees the land, the surety's bankruptcy.
        At("2026-09-22", Petitioned(Manner.Personal)),
        At("2026-09-22", Petitioned(Manner.CertifiedMail)),
        At("2026-03-02", RemedyJobs.UsualPrivate("owner", "direct").PaymentBond("2025-08-01").Bankrupt("surety", "2026-02-02")),

        // Stop payment notice: the sureties objected to, what the entity tells, the summary proceeding, a small public contract.
        At("2025-10-31", Bonded().Add(i => new BondObjected { Index = i, On = When("2025-10-20"), By = "bank" })),
        At("2025-12-01", Bonded().Add(i => new BondObjected { Index = i, On = When("2025-10-28"), By = "bank" })),
        At("2025-12-01", RemedyJobs.UsualPublic().StopPaymentGiven("2025-11-03", 6_430m, false, "city")
            .Paper(paper => paper with { TenDollars = true })),
        At("2025-12-02", Withheld("?")),
        At("2026-01-12", Withheld("2025-12-01")
            .Add(i => new CounteraffidavitServed { Index = i, On = When("2025-12-10"), To = ["city", "direct"], Manner = Manner.Personal,
                Proof = true })
            .Add(i => new RightsActionFiled { Index = i, On = When("2025-12-22") })
            .Add(i => new HearingNoticed { Index =
                i, On = When("2026-01-02"), Manner = Manner.FirstClassMail, Hearing = Day("2026-01-14") })),
        At("2025-12-01", RemedyJobs.UsualPublic()),

        // Prompt payment on private work, of the owner, of the hirer, of a utility, of a hauler.
        At("2026-08-10", Claimed(OwnersDebt())),
        At("2026-08-10", Demanded(Claimed(OwnersDebt()))),
        At("2026-08-10", Held(Demanded(Claimed(OwnersDebt())))),
        At("2026-10-01", OwnersDebt()),
        At("2027-03-16", Hired(new JobBuilder())),
        At("2026-08-10",
            Requested(Hired(new JobBuilder()).Work(w => w with { DirectContract = new DirectContract { On = Day("2026-01-05") } }))),
        At("2026-10-01", Hired(new JobBuilder()).Work(w => w with { PublicUtility = true })),
        At("2026-06-20", new JobBuilder().Role(ClaimantRole.Subcontractor).Claimant(c => c with { DumpTrucks = true })
            .Furnished("2026-03-02", 10_000m, until: "2026-03-30").PaymentDemanded("2026-04-03", 10_000m)),
        At("2026-01-05", SecuredBy(200_000m)),

        // Prompt payment on public work: by body, with the claim and its steps, and by the law before 2017.
        At("2026-08-10", Requested(Hired(new JobBuilder().PublicWork()))),
        At("2026-08-10", Demanded(Answered(Claimed(EntitysDebt(PublicBody.Local))))),
        At("2026-08-10", Held(Demanded(Claimed(EntitysDebt(PublicBody.Local))))),
        At("2026-08-10", Claimed(EntitysDebt(PublicBody.State))),
        At("2026-08-10", Claimed(EntitysDebt(PublicBody.State)).Add(i => new FinalDecisionServed { Index = i, On = When("2026-07-01") })),
        At("2026-08-10", EntitysDebt(PublicBody.StateUniversity)),
        At("2026-09-10", Answered(Claimed(EntitysDebt(PublicBody.Local)))),
        At("2026-11-25", OldClaim(18_400m, "2026-10-19", "2026-10-29")),
        At("2026-11-25", OldClaim(88_400m, "2026-10-19", "2026-10-29")),
        At("2026-11-25", OldClaim(18_400m, "2026-11-05", "2026-11-06")),
        At("2026-01-28", Idle()),
        At("2026-01-27", Idle().OwnerRecorded("2025-11-10", OwnerNotice.Cessation)),
    ];

    private static (JobFile, LocalDate) At(string asOf, JobBuilder job) => (job.Build(), Day(asOf));

    private static JobBuilder Supplier() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1_000m);

    private static JobBuilder Petitioned(Manner manner) => Supplier().Ended("2026-03-02").Completed("2026-05-04")
        .ClaimRecorded("2026-06-01", 1_000m).Add(i => new ReleasePetitionServed { Index = i, On = When("2026-09-14"), Manner = manner });

    private static JobBuilder Behind(string deed) => new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = Day(deed) })
        .Work(w => w with { Commenced = Day("2025-07-28") }).Furnished("2025-08-05", 6_430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank").PaymentBond("2025-07-30");

    private static JobBuilder Bonded() => RemedyJobs.Private(ClaimantRole.Subcontractor, "direct").Lender()
        .Furnished("2025-08-05", 33_600m).Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank")
        .StopPaymentGiven("2025-10-06", 33_600m, true, "bank").Paper(paper => paper with { BondAmount = 42_000m })
        .Completed("2025-10-22");

    private static JobBuilder Withheld(string served) => new JobBuilder().PublicWork().Furnished("2025-08-05", 6_430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct").StopPaymentGiven("2025-11-03", 6_430m, false, "city")
        .Add(i => new ReleaseAffidavitServed
        {
            Index = i, On = When(served), Manner = Manner.CertifiedMail, AnswerBy = Day("2025-12-12"), Amount = 6_430m,
            Ground = ReleaseGround.Excessive,
        });

    private static JobBuilder OwnersDebt() => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct")
        .Licensed("2012-06-01..").Work(w => w with { LowRiseResidential = false })
        .Contract(c => c with { On = Day("2026-02-24"), Written = true, PaymentDueDays = 30, Price = 50_000m })
        .Furnished("2026-03-02", 50_000m).Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-01") })
        .Retained("2026-04-01", 1_000m).PaymentDemanded("2026-04-15", 12_000m).Completed("2026-05-01")
        .Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-06-24"), To = ["owner"] });

    private static JobBuilder Hired(JobBuilder job) => job.Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
        .Work(w => w with { Body = PublicBody.State, DirectContract = new DirectContract { On = Day("2025-07-01") } })
        .Contract(c => c with { On = Day("2026-02-24"), Price = 50_000m }).Furnished("2026-03-02", 50_000m)
        .Retained("2026-04-01", 1_000m).HirerPaid("2026-04-15", 5_000m).HirerPaid("2026-05-04", 1_000m, PaymentOf.Retention);

    private static JobBuilder EntitysDebt(PublicBody body) => new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city")
        .Licensed("2012-06-01..").Work(w => w with { Body = body }).Contract(c => c with { On = Day("2025-07-14"), Price = 50_000m })
        .Furnished("2026-03-02", 50_000m).Retained("2026-04-01", 1_000m).PaymentDemanded("2026-04-15", 12_000m)
        .Completed("2026-05-01", CompletionTheory.Acceptance);

    private static JobBuilder Claimed(JobBuilder job) => job.Add(i => new DisputeClaimSent
    {
        Index = i, On = When("2026-06-01"), Received = Day("2026-06-03"), Amount = 5_200m, Manner = Manner.CertifiedMail,
    });

    private static JobBuilder Answered(JobBuilder job) =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When("2026-06-20"), Undisputed = 100m });

    private static JobBuilder Demanded(JobBuilder job) => job.Add(i => new ConferenceDemanded { Index = i, On = When("2026-06-25") });

    private static JobBuilder Held(JobBuilder job) => job.Add(i => new ConferenceHeld { Index = i, On = When("2026-07-10") });

    private static JobBuilder Requested(JobBuilder job) =>
        job.Add(i => new ClaimRequestMade { Index = i, On = When("2026-06-01"), Amount = 5_200m });

    // Under a contract made before 2017 the claim goes by Pub. Contract Code §§ 20104 ff. alone.
    private static JobBuilder OldClaim(decimal amount, string asked, string given) =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city")
        .Licensed("2012-06-01..").Work(w => w with { Body = PublicBody.Local })
        .Contract(c => c with { On = Day("2016-12-31"), Price = 188_000m }).Furnished("2025-08-05", 188_000m)
        .Add(i => new DisputeClaimSent
        {
            Index = i, On = When("2026-10-01"), Received = Day("2026-10-05"), Amount = amount, Manner = Manner.CertifiedMail,
            DocumentsAsked = Day(asked), DocumentsGiven = Day(given),
        });

    private static JobBuilder Idle() => new JobBuilder().PublicWork().Work(w => w with { Body = PublicBody.Local })
        .Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..").Price(44_000m)
        .Furnished("2025-08-05", 44_000m, until: "2025-10-09").Retained("2025-09-10", 2_200m).LaborCeased("2025-10-20");

    private static JobBuilder SecuredBy(decimal amount) => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Price(1_200_000m)
        .Work(w => w with { OrderedByTenant = true }).Furnished("2025-08-05", 20_000m)
        .Add(i => new SecurityDemanded { Index = i, On = When("2025-12-01"), Manner = Manner.Personal })
        .Add(i => new SecurityProvided { Index = i, On = When("2025-12-05"), Amount = amount });
}
