using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// Every finding about money that is due: the section it rests on, a band from its first reading to its last, and a title.
/// </summary>
public sealed class BandsAndReasonsTests
{
    private static JobBuilder Claim(JobBuilder job) =>
        job.Add(i => new DisputeClaimSent { Index = i, On = When("2026-06-01"), Received = Day("2026-06-03"), Amount = 5_200m,
            Manner = Manner.CertifiedMail });

    private static JobBuilder Answered(JobBuilder job) =>
        job.Add(i => new DisputeClaimAnswered { Index = i, On = When("2026-06-20"), Undisputed = 100m });

    private static JobBuilder Demanded(JobBuilder job) => job.Add(i => new ConferenceDemanded { Index = i, On = When("2026-06-25") });

    private static JobBuilder Held(JobBuilder job) => job.Add(i => new ConferenceHeld { Index = i, On = When("2026-07-10") });

    private static JobBuilder Request(JobBuilder job) =>
        job.Add(i => new ClaimRequestMade { Index = i, On = When("2026-06-01"), Amount = 5_200m });

    private static JobBuilder Owner() => new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").NoParty("direct")
        .Licensed("2012-06-01..").Work(w => w with { LowRiseResidential = false })
        .Contract(c => c with { On = Day("2026-02-24"), Written = true, PaymentDueDays = 30, Price = 50_000m })
        .Furnished("2026-03-02", 50_000m)
        .Add(i => new DisputedWorkDone { Index = i, On = When("2026-06-01") }).Retained("2026-04-01", 1_000m)
        .PaymentDemanded("2026-04-15", 12_000m).Completed("2026-05-01")
        .Add(i => new StopWorkNoticeGiven { Index = i, On = When("2026-06-24"), To = ["owner"] });

    private static JobBuilder Hirer(WorkKind kind) => (kind == WorkKind.Public
        ? new JobBuilder().PublicWork() : new JobBuilder()).Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..")
        .Work(w => w with { Body = PublicBody.State, DirectContract = new DirectContract { On = Day("2025-07-01") } })
        .Contract(c => c with { On = Day("2026-02-24"), Price = 50_000m }).Furnished("2026-03-02", 50_000m)
        .Retained("2026-04-01", 1_000m).HirerPaid("2026-04-15", 5_000m).HirerPaid("2026-05-04", 1_000m, PaymentOf.Retention);

    private static JobBuilder Entity(PublicBody body) =>
        new JobBuilder().PublicWork().Role(ClaimantRole.DirectContractor, "city").Licensed("2012-06-01..").Work(w => w with { Body = body })
        .Contract(c => c with { On = Day("2025-07-14"), Price = 50_000m }).Furnished("2026-03-02", 50_000m).Retained("2026-04-01", 1_000m)
        .PaymentDemanded("2026-04-15", 12_000m)
        .Completed("2026-05-01", CompletionTheory.Acceptance);

    public static TheoryData<string, string> Findings => new()
    {
        { "owner", "prompt-payment.progress=Civ. Code § 8800(a); retention.due=Civ. Code § 8812; retention.cap=Civ. Code § 8811(b)(1)(A); "
            + "retention.disputed-work=Civ. Code § 8816(a); stop-work.posting=Civ. Code § 8834(a); stop-work.notice-first-day="
            + "Civ. Code § 8832; stop-work.first-day=Civ. Code § 8830; dispute-claim.owners-statement=Civ. Code § 8850(d); "
            + "dispute-claim.conference=Civ. Code § 8850(e); dispute-claim.suspension-first-day=Civ. Code § 8850(k)" },
        { "owner demanded", "dispute-claim.conference=Civ. Code § 8850(e)" },
        { "owner held", "dispute-claim.second-statement=Civ. Code § 8850(e)" },
        { "hirer", "prompt-payment.progress=Bus. & Prof. Code § 7108.5; retention.due=Civ. Code § 8814; retention.cap="
            + "Civ. Code § 8811(b)(1)(A); dispute-claim.contractors-answer=Civ. Code § 8850(j)" },
        { "waiting", "retention.due=Civ. Code § 8812" },
        { "public hirer", "prompt-payment.progress=Pub. Contract Code § 10262.5; prompt-payment.report=Pub. Contract Code § 10262; "
            + "retention.due=Pub. Contract Code § 7107(d); retention.cap=Pub. Contract Code § 7201(b)(1); "
            + "dispute-claim.contractors-answer=Pub. Contract Code § 9204(d)(5)" },
        { "entity", "prompt-payment.progress=Pub. Contract Code § 20104.50(b); retention.due=Pub. Contract Code § 7107(c); "
            + "retention.cap=Pub. Contract Code § 7201(b)(1); dispute-claim.entitys-statement=Pub. Contract Code § 9204; "
            + "dispute-claim.conference-last-day=Pub. Contract Code § 9204(d)(2); dispute-claim.conference="
            + "Pub. Contract Code § 9204(d)(2); dispute-claim.filing-last-day=Pub. Contract Code § 20104.2(a); "
            + "dispute-claim.undisputed-part="
            + "Pub. Contract Code § 9204(d)(1)" },
        { "entity held", "dispute-claim.second-statement=Pub. Contract Code § 9204(d)(2)" },
        { "state", "prompt-payment.progress=Pub. Contract Code § 10261.5(a); retention.due=Pub. Contract Code § 7107(c); "
            + "dispute-claim.arbitration-first-day=Pub. Contract Code § 10240.2" },
        { "state decided", "dispute-claim.arbitration-last-day=Pub. Contract Code § 10240.1" },
    };

    private static JobBuilder Made(string which) => which switch
    {
        "owner" => Claim(Owner()),
        "owner demanded" => Demanded(Claim(Owner())),
        "owner held" => Held(Demanded(Claim(Owner()))),
        // The claims procedure is one of direct contracts made from 2026 (Civ. Code § 8850(n)).
        "hirer" => Request(Hirer(WorkKind.Private)
            .Work(w => w with { DirectContract = w.DirectContract is { } made ? made with { On = Day("2026-01-05") } : null })),
        "waiting" => new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Furnished("2026-03-02", 50_000m)
            .Retained("2026-04-01", 1_000m).Completed("2026-05-01"),
        "public hirer" => Request(Hirer(WorkKind.Public)),
        "entity" => Demanded(Answered(Claim(Entity(PublicBody.Local)))),
        "entity held" => Held(Demanded(Claim(Entity(PublicBody.Local)))),
        "state" => Claim(Entity(PublicBody.State)),
        "state decided" => Claim(Entity(PublicBody.State)).Add(i => new FinalDecisionServed { Index = i, On = When("2026-07-01") }),
        _ => throw new ArgumentOutOfRangeException(nameof(which), which, "No such job."),
    };

    [Theory]
    [MemberData(nameof(Findings))]
    public void Each_rests_on_its_section_and_has_the_band_of_its_readings(string which, string findings)
    {
        var answer = Made(which).On("2026-08-10");
        foreach (var expected in findings.Split("; "))
        {
            var found = answer.Get(expected[..expected.IndexOf('=', StringComparison.Ordinal)]);
            Assert.Equal(expected, $"{found.Id}={found.Why[0].Section}");
            Assert.NotEqual("", found.Title);
            if (found.Readings.Count == 0)
                Assert.Null(found.Band);
            else
                Assert.Equal(new Band(found.Readings[0], found.Readings[^1]), found.Band);
        }
    }

    // Which entries a reason hangs on: those that it tells of.
    [Theory]
    [InlineData("owner", "prompt-payment.progress", typeof(PaymentDemanded))]
    [InlineData("owner", "retention.due", typeof(Retained))]
    [InlineData("owner", "retention.disputed-work", typeof(DisputedWorkDone))]
    [InlineData("owner", "stop-work.notice-first-day", typeof(PaymentDemanded))]
    [InlineData("owner", "stop-work.first-day", typeof(StopWorkNoticeGiven))]
    [InlineData("owner", "dispute-claim.owners-statement", typeof(DisputeClaimSent))]
    [InlineData("owner demanded", "dispute-claim.conference", typeof(ConferenceDemanded))]
    [InlineData("owner held", "dispute-claim.second-statement", typeof(ConferenceHeld))]
    [InlineData("hirer", "retention.due", typeof(HirerPaid))]
    [InlineData("hirer", "prompt-payment.progress", typeof(HirerPaid))]
    [InlineData("hirer", "dispute-claim.contractors-answer", typeof(ClaimRequestMade))]
    [InlineData("waiting", "retention.due", typeof(Retained))]
    [InlineData("public hirer", "prompt-payment.progress", typeof(HirerPaid))]
    [InlineData("entity", "prompt-payment.progress", typeof(PaymentDemanded))]
    [InlineData("entity", "dispute-claim.conference", typeof(ConferenceDemanded))]
    [InlineData("entity", "dispute-claim.undisputed-part", typeof(DisputeClaimAnswered))]
    [InlineData("entity held", "dispute-claim.second-statement", typeof(ConferenceHeld))]
    [InlineData("state decided", "dispute-claim.arbitration-last-day", typeof(FinalDecisionServed))]
    public void Each_hangs_on_the_entry_that_it_tells_of(string which, string id, Type entry) =>
        Assert.Contains(Made(which).On("2026-08-10").Get(id).Why[0].Facts, f => f.GetType() == entry);
}
