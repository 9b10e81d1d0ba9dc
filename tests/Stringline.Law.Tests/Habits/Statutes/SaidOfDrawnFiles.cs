using System.Text.RegularExpressions;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Tests.DesignLien;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Habits.Statutes;

/// <summary>
/// What the law says of some thousands of drawn job files, always the same ones: which findings, on which sections, and what it asks.
/// </summary>
internal static partial class SaidOfDrawnFiles
{
    private const int Files = 3000;

    private static readonly Lazy<(Dictionary<string, HashSet<string>> Sections, HashSet<string> Questions)> Said = new(Gather);

    /// <summary>
    /// Why a run that draws fewer files, as a mutation run does, has nothing to hold the tables against: a rare finding may be missing.
    /// </summary>
    public static string? TooFew => Times.AtMost(Files) < Files ? "Rare findings are made by the whole number of files only." : null;

    /// <summary>
    /// Of each finding by its id, less the number of a second one of its kind, the sections that its reasons name, roads not taken
    /// included.
    /// </summary>
    public static IReadOnlyDictionary<string, HashSet<string>> SectionsOfFindings => Said.Value.Sections;

    /// <summary>The questions asked.</summary>
    public static IReadOnlyCollection<string> Questions => Said.Value.Questions;

    private static (Dictionary<string, HashSet<string>> Sections, HashSet<string> Questions) Gather()
    {
        var sections = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        var questions = new HashSet<string>(StringComparer.Ordinal);
        var draw = new PCG(1, 20_260_101);
        var day = new PCG(2, 20_260_101);
        for (var i = 0; i < Files; i++)
        {
            Note(JobFileGen.Job.Generate(draw, null, out _), JobFileGen.Day.Generate(day, null, out _));
            var (remedy, asked) = RemedyJobGen.Of((ulong)i);
            Note(remedy, asked);
            var job = LienJobGen.HalfAYear.AnyWork.Generate(draw, null, out _);
            var asOf = LienJobGen.HalfAYear.AsOf.Generate(day, null, out _);
            Note(job, asOf);

            // What the draws seldom make.
            Note(OfALargeProject(job, i % 2 == 0 ? 2_000_000m : 6_000_000m), asOf);
            Note(OfTheState(job, i % 2 == 0 ? PublicBody.State : PublicBody.StateUniversity), asOf);
            Note(BehindAnAgent(job), asOf);
        }

        foreach (var (job, asOf) in Seldom)
            Note(job, asOf);
        return (sections, questions);

        void Note(JobFile job, LocalDate asOf)
        {
            foreach (var finding in Assessment.Of(job, asOf, OpenDays.Statutory).Findings)
            {
                var id = Number().Replace(finding.Id, "");
                if (!sections.TryGetValue(id, out var of))
                    sections.Add(id, of = new(StringComparer.Ordinal));
                foreach (var reason in finding.Why.Tree())
                    of.Add(reason.Section);
                foreach (var question in finding.Questions)
                    questions.Add(question.Text);
            }
        }
    }

    // What the draws may never make: a public utility, ten dollars paid with a notice, a claim that outlives its article, a design
    // professional's lien that was paid, a part of a claim that is not disputed, disputed work that was accepted, a lender that objects to
    // a bond.
    private static IEnumerable<(JobFile Job, LocalDate AsOf)> Seldom =>
    [
        (new JobBuilder().Role(ClaimantRole.Subcontractor).Work(w => w with { PublicUtility = true }).HirerPaid("2026-03-16", 12_000m)
            .Build(), new(2026, 6, 1)),
        (new JobBuilder().PublicWork().Furnished("2026-01-05", 500m).Notice("2026-01-05", Manner.CertifiedMail, "city", "direct")
            .Completed("2026-02-10", CompletionTheory.Acceptance)
            .StopPaymentGiven("2026-02-11", 500m, false, "city").Which(e => (StopPaymentGiven)e with { TenDollars = true })
            .Build(), new(2026, 2, 16)),
        (new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Contract(c => c with { On = new LocalDate(2026, 3, 2) })
            .DisputeClaim("2029-12-03", "2029-12-05", 500m).Build(), new(2030, 2, 1)),
        (Architect.Job().WillNotCommence("2025-09-22").DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").Paid("2025-12-08", 24_000m)
            .Build(), new(2025, 12, 10)),
        (new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Contract(c => c with { On = new LocalDate(2026, 3, 2) })
            .DisputeClaim("2026-06-01", "2026-06-03", 500m)
            .Add(i => new ConferenceHeld { Index = i, On = JobBuilder.When("2026-08-03") }).Build(), new(2026, 8, 10)),
        (new JobBuilder().Role(ClaimantRole.DirectContractor, "owner").Contract(c => c with { On = new LocalDate(2026, 3, 2) })
            .DisputeClaim("2026-06-01", "2026-06-03", 500m)
            .Add(i => new DisputeClaimAnswered { Index = i, On = JobBuilder.When("2026-06-15"), Undisputed = 200m })
            .Build(), new(2026, 10, 10)),
        (new JobBuilder().Lender().Furnished("2026-03-02", 500m).Notice("2026-03-04", Manner.CertifiedMail, "owner", "direct", "bank")
            .StopPaymentGiven("2026-03-10", 500m, true, "bank")
            .Add(i => new BondObjected { Index = i, On = JobBuilder.When("2026-03-16"), By = "bank" }).Build(), new(2026, 3, 20)),
        (new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Add(i => new DisputedWorkDone { Index = i, On = JobBuilder.When("2026-06-01"), Accepted = new LocalDate(2026, 6, 4) })
            .Build(), new(2026, 8, 10)),
    ];

    private static JobFile OfALargeProject(JobFile job, decimal price) => OfADirectContractor(job, WorkKind.Private) with
    {
        Contract = job.Contract with { Price = price },
        Entries =
        [
            .. job.Entries,
            new SecurityDemanded { Index = job.Entries.Count, On = Day(60) },
            new PaymentDemanded { Index = job.Entries.Count + 1, On = Day(5), Amount = 500m },
            new StopWorkNoticeGiven { Index = job.Entries.Count + 2, On = Day(90), To = ["owner"] },
        ],
    };

    private static JobFile OfTheState(JobFile job, PublicBody body)
    {
        var made = OfADirectContractor(job, WorkKind.Public);
        return made with
        {
            Work = made.Work with { Body = body },
            Entries =
            [
                .. made.Entries,
                new DisputeClaimSent { Index = made.Entries.Count, On = Day(40) },
                new ConferenceDemanded { Index = made.Entries.Count + 1, On = Day(95) },
                new ConferenceHeld { Index = made.Entries.Count + 2, On = Day(110) },
            ],
        };
    }

    private static JobFile OfADirectContractor(JobFile job, WorkKind kind) =>
        LienJobGen.As(job with { Claimant = job.Claimant with { Role = ClaimantRole.DirectContractor, HiredBy = "owner" } }, kind);

    private static JobFile BehindAnAgent(JobFile job) => job with
    {
        Work = job.Work with { Permit = null },
        Parties =
        [
            .. job.Parties.Select(p => p.Capacity == PartyCapacity.Owner ? p with { Address = null } : p),
            new Party { Id = "agent", Capacity = PartyCapacity.OwnersAgent, Name = "Tilde Management" },
        ],
        Entries =
        [
            .. job.Entries.Select(e => e is NoticeGiven notice
                ? notice with { To = [.. notice.To.Select(id => id == "owner" ? "agent" : id)] } : e),
            new ClaimServed { Index = job.Entries.Count, On = Day(120), To = ["direct"], Manner = Manner.CertifiedMail },
            new ClaimRecorded { Index = job.Entries.Count + 1, On = Day(122) },
        ],
    };

    private static DayFact Day(int after) => DayFact.On(LienJobGen.Start.PlusDays(after));

    [GeneratedRegex(@"\.\d+$")]
    private static partial Regex Number();
}
