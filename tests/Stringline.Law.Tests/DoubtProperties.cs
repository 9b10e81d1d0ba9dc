using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests;

/// <summary>
/// What a day in doubt may never do, whatever the remedy: let a deadline be planned on later than some day of the doubt allows, or call
/// a right lost that some day of the doubt leaves alive.
/// </summary>
public sealed class DoubtProperties
{
    private static readonly int Tries = Times.AtMost(2000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static readonly Gen<Func<DayFact, Entry>> Doubtful = Gen.OneOf(
        Gen.Const<Func<DayFact, Entry>>(on => new Completed { Index = 0, On = on, By = CompletionTheory.Actual }),
        Gen.Const<Func<DayFact, Entry>>(on => new Completed { Index = 0, On = on, By = CompletionTheory.Acceptance }),
        Gen.Const<Func<DayFact, Entry>>(on => new LaborCeased { Index = 0, On = on }),
        Gen.Const<Func<DayFact, Entry>>(on => new WorkWillNotCommence { Index = 0, On = on }),
        Gen.Const<Func<DayFact, Entry>>(on => new ReleaseBondRecorded { Index = 0, On = on }),
        Gen.Select(Gen.Enum<OwnerNotice>(), Gen.OneOf((string?[])[null, null, "direct"]), (notice, contract) =>
            (Func<DayFact, Entry>)(on => new OwnerRecorded { Index = 0, On = on, Notice = notice, ContractOf = contract })));

    // A claimant's own labor speaks against a stop of labor before it: there the exact day is doubted more than the span around it.
    private static bool MayContradictOwnLabor(JobFile job, Func<DayFact, Entry> entry) =>
        entry(new DayFact.Unknown()) is LaborCeased && new FactsAsOf(job, LienJobGen.Start).FurnishesLabor;

    // What would make the days of the doubt differ in more than the day: a claim that one of them makes void, so that another or none
    // counts; a copy received before the recording, which is none of it; a second stop of labor inside the first.
    private static bool FitsWith(Entry doubtful, Entry other, JobFile job) => other switch
    {
        ClaimRecorded claim =>
            claim == job.All<ClaimRecorded>().First() && job.All<Furnished>().All(f => f.Until.Latest < claim.On.Earliest),
        OwnerToldUs => false,
        LaborCeased => doubtful is not LaborCeased,
        _ => true,
    };

    [Fact]
    [Proves("Civ. Code § 8610")]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 9356(a)")]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8460(b)")]
    [Proves("Civ. Code § 8312")]
    public void A_day_in_doubt_is_planned_on_as_early_and_lost_as_late_as_any_day_of_it() =>
        Gen.Select(Draw.AnyWork, Doubtful, Draw.Day, Gen.Int[1, 40], Gen.Int[0, 40], Draw.AsOf)
        .Where(t => !MayContradictOwnLabor(t.Item1, t.Item2)).Sample(
            (drawn, entry, first, more, which, asked) =>
            {
                var job = drawn.Reordered(drawn.Entries.Where(e => FitsWith(entry(new DayFact.Unknown()), e, drawn)));
                var asOf = LocalDate.Max(asked, first.PlusDays(more));
                var inDoubt = Assessment.Of(job.With(entry(new DayFact.Between(first, first.PlusDays(more)))), asOf, OpenDays.Statutory);
                var exact = Assessment.Of(job.With(entry(DayFact.On(first.PlusDays(Math.Min(more, which))))), asOf, OpenDays.Statutory);
                foreach (var finding in inDoubt.Findings.Where(f => f.IsDeadline))
                {
                    if (exact.Find(finding.Id) is not { } settled)
                        continue;
                    // On public work the watch is kept for the bond notice, with its shorter time, only where the stop payment notice is
                    // gone: two watches for different notices are not one day in doubt.
                    if (finding.Id == "index-watch.next-day" && !finding.Sections.SequenceEqual(settled.Sections))
                        continue;
                    Assert.True(settled.ActBy is null || finding.ActBy <= settled.ActBy,
                        $"{finding.Id}: plans on {finding.ActBy}, settled {settled.ActBy}");
                    // Not yet: on that day there is no claim that counts, or no notice, whose time could have run.
                    Assert.True(finding.Standing != Standing.Lost || settled.Standing is Standing.Lost or Standing.NotYet,
                        $"{finding.Id}: lost, settled {settled.Standing}");
                }
            },
            print: t => $"{t.Item6}: {t.Item2(
                new DayFact.Between(t.Item3,
                    t.Item3.PlusDays(t.Item4)))} settled +{t.Item5} in {t.Item1.Work.Kind} {t.Item1.Work.PaymentBond} {t.Item1.Print()}",
                        iter: Tries);
}
