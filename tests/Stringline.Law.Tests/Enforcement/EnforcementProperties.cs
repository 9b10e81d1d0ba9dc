using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Enforcement;

/// <summary>What holds of the action, and of all that follows it, on every file.</summary>
public sealed class EnforcementProperties
{
    private static readonly int Tries = Times.AtMost(1000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    // Completed and ceased, with a claim in time; what else the file holds is anybody's guess.
    private static readonly Gen<JobFile> Recorded =
        Gen.Select(Draw.Private, Gen.Int[0, 40], (job, day) => Claimed(job, First.PlusDays(day)));

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Select(Draw.Private, Draw.AsOf);

    private static LocalDate First => LienJobGen.Start.PlusDays(200);

    private static Assessment Of(JobFile job, LocalDate asOf) => Assessment.Of(job, asOf, OpenDays.Statutory);

    private static string Print((JobFile Job, LocalDate AsOf) asked) => $"{asked.AsOf}: {asked.Job.Print()}";

    private static JobFile Claimed(JobFile job, LocalDate recorded) =>
        job.Reordered(
            job.Entries.Where(e => e is not (ClaimRecorded or ReleaseRecorded or Furnished or FurnishingEnded or Completed or OwnerRecorded
                or LaborCeased or ActionFiled or CreditRecorded or ReleaseBondRecorded)))
            .With(new Furnished { Index = 0, On = DayFact.On(LienJobGen.Start), Until = DayFact.On(LienJobGen.Start), Amount = 6_430m })
            .With(new FurnishingEnded { Index = 0, On = DayFact.On(LienJobGen.Start) })
            .With(new Completed { Index = 0, On = DayFact.On(First.PlusDays(-1)), By = CompletionTheory.Actual })
            .With(new ClaimRecorded { Index = 0, On = DayFact.On(recorded), Id = "first", Amount = 6_430m, Lien = LienKind.Mechanics });

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void A_later_claim_never_makes_a_kept_action_worse_nor_the_day_to_sue_later() =>
        Gen.Select(Recorded, Gen.Int[0, 45], Gen.Int[0, 80], Gen.Int[0, 200], Gen.OneOf((string?[])[null, "first"])).Sample(
            (job, later, filed, asked, amends) =>
            {
                var first = job.All<ClaimRecorded>().Single().On.Earliest!.Value;
                var second =
                    new ClaimRecorded { Index = 0, On = DayFact.On(first.PlusDays(later)), Amends = amends, Lien = LienKind.Mechanics };
                var asOf = first.PlusDays(Math.Max(later, asked));
                var unsued = Of(job, asOf).Get("enforcement.last-day");
                Assert.True(Of(job.With(second), asOf).Get("enforcement.last-day").ActBy <= unsued.ActBy);
                // An action that names no claim may be on the second, which may not count.
                var sued = job.With(new ActionFiled { Index = 0, On = DayFact.On(first.PlusDays(Math.Min(filed, Math.Max(later, asked)))),
                    Claim = "first" });
                if (Of(sued, asOf).Get("enforcement.last-day").Standing == Standing.Kept)
                    Assert.Equal(Standing.Kept, Of(sued.With(second), asOf).Get("enforcement.last-day").Standing);
            },
            print: t => $"+{t.Item2} filed +{t.Item3} as of +{t.Item4} {t.Item5}: {t.Item1.Print()}", iter: Tries);

    // For every list of holidays: the first open day after a last day on it.
    [Fact]
    [Proves("Civ. Code § 10")]
    public void An_action_on_the_first_open_day_after_a_closed_last_day_is_never_lost() =>
        Gen.Select(Recorded, Gen.Int[0, 40]).Sample(
            (job, later) =>
            {
                var last = NumberTable.Shipped.LastDay(Number.SueOnClaim, job.All<ClaimRecorded>().Single().On.Latest!.Value);
                var open = OpenDays.Statutory.RollForwardOnAnyList(last);
                if (open == last)
                    return;
                // An action that ended against the claimant is another reason.
                var licensed = job.Reordered(job.Entries.Where(e => e is not ActionEnded)) with { Claimant =
                    job.Claimant with { Role = ClaimantRole.Laborer, License = null } };
                Assert.NotEqual(Standing.Lost, Of(licensed, open).Get("enforcement.last-day").Standing);
                Assert.NotEqual(Standing.Lost, Of(licensed.With(new ActionFiled { Index = 0, On = DayFact.On(open) }), open.PlusDays(later))
                    .Get("enforcement.last-day").Standing);
            },
            print: t => t.Item1.Print(), iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8461")]
    public void What_follows_an_action_follows_one_on_or_after_the_claim() =>
        Asked.Sample(
            asked =>
            {
                var on = Of(asked.Job, asked.AsOf);
                if (on.Find("lis-pendens.last-day") is not { } notice)
                    return;
                var actions = asked.Job.All<ActionFiled>()
                    .Where(a => a.On.Earliest is { } day && TimeLimit.LastDay(day, 20) == notice.Readings[0].Day).ToArray();
                Assert.NotEmpty(actions);
                Assert.Contains(actions, a => asked.Job.All<ClaimRecorded>().Any(c => c.On.Earliest <= a.On.Latest));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8424(c)")]
    public void After_a_release_that_says_satisfied_or_a_full_bond_nothing_is_recorded_against_the_land() =>
        Gen.Select(Recorded, Gen.Bool, Gen.Int[0, 200], Gen.Int[0, 60]).Sample(
            (job, bond, asked, filed) =>
            {
                var first = job.All<ClaimRecorded>().Single().On.Earliest!.Value;
                var sued = job.With(new ActionFiled { Index = 0, On = DayFact.On(first.PlusDays(Math.Min(asked, filed))) });
                var free = bond
                    ? sued.With(new ReleaseBondRecorded { Index = 0, On = DayFact.On(first), Amount = 8_037.50m })
                    : sued.With(new ReleaseRecorded { Index = 0, On = DayFact.On(first), Satisfied = true });
                var on = Of(free, first.PlusDays(asked));
                foreach (var id in (string[])["lis-pendens.last-day", "credit.last-day", "release.answer-by", "release.petition-first-day"])
                    Assert.False(on.Find(id) is { ActBy: not null, Standing: Standing.Open or Standing.InDoubt or Standing.NotYet }, id);
            },
            print: t => $"{t.Item2} +{t.Item3} {t.Item1.Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8482")]
    public void While_the_time_to_sue_runs_or_is_kept_no_demand_is_to_be_answered_by_a_day() =>
        Asked.Sample(
            asked =>
            {
                var on = Of(asked.Job, asked.AsOf);
                if (on.Get("enforcement.last-day").Standing is Standing.Open or Standing.Kept)
                    Assert.Null(on.Find("release.answer-by")?.ActBy);
            },
            print: Print, iter: Tries);

    private static readonly string[] Mine = ["enforcement.", "credit.", "lis-pendens.", "prosecution.", "release", "debt.", "design-lien."];

    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void Nothing_is_open_or_not_yet_with_a_last_day_that_is_over() =>
        Asked.Sample(
            asked => Assert.All(Of(asked.Job, asked.AsOf).Findings.Where(f => Mine.Any(m => f.Id.StartsWith(m, StringComparison.Ordinal))
                && f.ActBy is not null), f =>
                Assert.False(f.Standing is Standing.Open or Standing.NotYet && f.Readings[0].Day < asked.AsOf, f.Id)),
            print: Print, iter: Tries);

    private static readonly Gen<JobFile> Designer =
        Gen.Select(Draw.Private, Gen.OneOf((LocalDate?[])[null, LienJobGen.Start.PlusDays(90), LienJobGen.Start.PlusDays(900)]),
            (job, commenced) => job with
    {
        Claimant = job.Claimant with { Role = ClaimantRole.DesignProfessional, HiredBy = "owner" },
        Contract = job.Contract with { Written = true },
        Work = job.Work with { Commenced = commenced },
    });

    // Civ. Code § 8308(a): nothing of the part on preliminary notice applies to it.
    [Fact]
    [Proves("Civ. Code § 8308")]
    public void No_preliminary_notice_changes_a_design_professionals_lien() =>
        Gen.Select(Designer, Draw.AsOf, Draw.Notice).Sample(
            (job, asOf, more) =>
            {
                string[] Said(JobFile file) =>
                    [.. Of(file, asOf).Findings.Where(f => f.Id.StartsWith("design-lien.", StringComparison.Ordinal))
                        .Select(f => $"{f.Id} {f.Standing} {f.ActBy} {f.Amount}")];
                var none = job.Reordered(job.Entries.Where(e => e is not NoticeGiven));
                Assert.Equal(Said(none), Said(none.With(more)));
                Assert.Equal(Said(none), Said(job));
            },
            print: t => $"{t.Item2} {t.Item3}: {t.Item1.Print()}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8306(b)(1)")]
    [Proves("Civ. Code § 8306(b)(2)")]
    public void A_design_claim_has_a_day_to_sue_until_the_work_commences_or_it_is_released() =>
        Gen.Select(Designer, Gen.Int[0, 80], Gen.Int[0, 200], Gen.Bool).Sample(
            (drawn, day, asked, released) =>
            {
                var recorded = LienJobGen.Start.PlusDays(day);
                var job = drawn.Reordered(drawn.Entries.Where(e => e is not (ClaimRecorded or ReleaseRecorded)))
                    .With(new ClaimRecorded { Index = 0, On = DayFact.On(recorded), Lien = LienKind.Design });
                if (released)
                    job = job.With(new ReleaseRecorded { Index = 0, On = DayFact.On(recorded) });
                var asOf = recorded.PlusDays(asked);
                var row = Of(job, asOf).Find("design-lien.enforcement-last-day");
                Assert.Equal(!released && !(job.Work.Commenced <= asOf), row is not null);
                Assert.True(row is null || row.ActBy <= TimeLimit.LastDay(recorded, 90));
            },
            print: t => $"+{t.Item2} +{t.Item3} {t.Item4}: {t.Item1.Print()}", iter: Tries);
}
