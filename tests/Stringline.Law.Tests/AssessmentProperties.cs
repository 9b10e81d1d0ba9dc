using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests;

/// <summary>What holds of every assessment.</summary>
public sealed class AssessmentProperties
{
    private static readonly int Tries = Times.AtMost(1000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Select(Draw.AnyWork, Draw.AsOf);

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> AskedPrivate = Gen.Select(Draw.Private, Draw.AsOf);

    private static Assessment Of(JobFile job, LocalDate asOf) => Assessment.Of(job, asOf, OpenDays.Statutory);

    private static LocalDate? ActBy(JobFile job, LocalDate asOf) => Of(job, asOf).Get("claim-of-lien.last-day").ActBy;

    private static string Print((JobFile Job, LocalDate AsOf) asked) => $"{asked.AsOf}: {asked.Job.Work.Kind} {asked.Job.Print()}";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_order_of_the_entries_carries_no_meaning(bool crowded) =>
        Gen.Select((crowded ? LienJobGen.Crowded : Draw).Journal, Draw.AsOf)
        .SelectMany(asked =>
            Gen.Shuffle(asked.Item1.Entries.ToArray()), (asked, order) => (asked: (Job: asked.Item1, AsOf: asked.Item2), order)).Sample(
            t => Assert.Equal(Of(t.asked.Job, t.asked.AsOf).Said(reasons: true), Of(t.asked.Job.Reordered(t.order), t.asked.AsOf)
                .Said(reasons: true)),
            print: t => $"{Print(t.asked)}{Environment.NewLine}as {t.asked.Job.Reordered(t.order).Print()}", iter: Tries);

    [Fact]
    public void What_begins_after_the_day_of_asking_changes_nothing() =>
        Asked.Sample(
            asked =>
            {
                var known = asked.Job.Reordered(asked.Job.Entries.Where(e => !(e.On.Earliest > asked.AsOf)));
                Assert.Equal(Of(known, asked.AsOf).Said(assumptions: false), Of(asked.Job, asked.AsOf).Said(assumptions: false));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 10")]
    public void The_day_to_act_by_is_open_and_never_after_any_readings_last_day() =>
        Asked.Sample(
            asked => Assert.All(Of(asked.Job, asked.AsOf).Findings, finding =>
            {
                if (finding.ActBy is not { } actBy)
                    return;
                Assert.NotEmpty(finding.Readings);
                Assert.All(finding.Readings, r => Assert.True(actBy <= r.Day));
                Assert.Null(OpenDays.Statutory.WhyClosed(actBy));
            }),
            print: Print, iter: Tries);

    [Fact]
    public void Readings_are_sorted_and_the_band_spans_them() =>
        Asked.Sample(
            asked => Assert.All(Of(asked.Job, asked.AsOf).Findings, finding =>
            {
                Assert.Equal(finding.Readings.OrderBy(r => r.Day).Select(r => r.Day), finding.Readings.Select(r => r.Day));
                Assert.Equal(finding.Readings.Count == 0, finding.Band is null);
                if (finding.Band is { } band)
                {
                    Assert.Equal(finding.Readings[0].Day, band.Earliest.Day);
                    Assert.True(band.Latest is null || band.Latest.Day == finding.Readings[^1].Day);
                }

                Assert.All(finding.Readings, r => Assert.True(r.Rolled is null || r.Rolled > r.Day));
            }),
            print: Print, iter: Tries);

    [Fact]
    public void Every_finding_rests_on_a_section_and_every_text_renders() =>
        Asked.Sample(
            asked =>
            {
                var assessment = Of(asked.Job, asked.AsOf);
                Assert.Equal(assessment.Findings.Count, assessment.Findings.Select(f => f.Id).Distinct().Count());
                foreach (var finding in assessment.Findings)
                {
                    Assert.NotEmpty(finding.Title);
                    Assert.NotEmpty(finding.Why);
                    Assert.True(finding.Sections.Count > 0 || finding.Id == "assumptions", finding.Id);
                    Assert.NotEmpty(finding.Standing.Word());
                    Assert.All(finding.Questions, q => Reads(q.Text));
                }

                var reasons = assessment.Findings.SelectMany(f => f.Why).Concat(assessment.ClaimObstacles)
                    .Concat(assessment.Amount.Steps.Select(s => s.Why));
                Assert.All(reasons.Tree(), r => Reads(r.Text));
            },
            print: Print, iter: Tries);

    [Fact]
    public void What_is_supposed_is_found_as_if_the_file_held_it() =>
        Gen.Select(Asked, Draw.Notice).Sample(
            (asked, more) => Assert.Equal(
                Of(asked.Job.With(more), asked.AsOf).Said(reasons: true), Of(asked.Job, asked.AsOf)
                    .Supposing(more with { Index = asked.Job.Entries.Count }).Said(reasons: true)),
            print: t => $"{Print(t.Item1)}{Environment.NewLine}and {t.Item2}", iter: Times.AtMost(300));

    private static void Reads(string text)
    {
        Assert.NotEqual("", text.Trim());
        Assert.DoesNotContain('{', text);
        Assert.DoesNotContain('}', text);
        Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Stringline.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", text, StringComparison.Ordinal);
    }

    [Fact]
    [Proves("Civ. Code § 8190(c)")]
    public void A_copy_that_came_too_late_never_makes_the_day_to_act_by_earlier_than_one_in_time() =>
        Gen.Select(Draw.Private, Gen.Enum<OwnerNotice>(), Draw.Day, Gen.Int[0, 10], Gen.Int[1, 60]).Sample(
            (drawn, kind, recorded, soon, late) =>
            {
                // One notice, one copy: with several a copy too late for the first may be in time for the second.
                var job = drawn.Reordered(drawn.Entries.Where(e => e is not (OwnerRecorded or OwnerToldUs)))
                    .With(new OwnerRecorded { Index = 0, On = DayFact.On(recorded), Notice = kind });
                var asOf = LienJobGen.Start.PlusDays(600);
                LocalDate? Told(LocalDate on) => ActBy(job.With(new OwnerToldUs { Index = 0, On = DayFact.On(on), Notice = kind }), asOf);
                var inTime = Told(recorded.PlusDays(soon));
                var tooLate = Told(OpenDays.Statutory.RollForwardOnAnyList(recorded.PlusDays(10)).PlusDays(5 + late));
                var notSaid = ActBy(job, asOf);
                Assert.True(inTime is null || tooLate >= inTime);
                Assert.True(notSaid is null || tooLate >= notSaid);
                Assert.Equal(inTime, notSaid);
            },
            print: t => $"{t.Item1.Print()}{Environment.NewLine}{t.Item2} recorded {t.Item3}, told +{t.Item4} or +{t.Item5}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8180(a)")]
    public void A_contested_completion_never_moves_the_day_to_act_by_later() =>
        Gen.Select(AskedPrivate, Draw.Contested).Sample(
            (asked, more) =>
            {
                var before = ActBy(asked.Job, asked.AsOf);
                Assert.True(before is null || ActBy(asked.Job.With(more), asked.AsOf) <= before);
            },
            print: t => $"{Print(t.Item1)}{Environment.NewLine}and {t.Item2}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8414(b)")]
    public void A_completion_in_doubt_plans_on_no_later_a_day_than_any_exact_day_of_it_would() =>
        Gen.Select(AskedPrivate, Draw.Day, Gen.Int[1, 40], Gen.Int[0, 40]).Sample(
            (asked, first, more, which) =>
            {
                var asOf = LocalDate.Max(asked.AsOf, first.PlusDays(more));
                var exact = first.PlusDays(Math.Min(more, which));
                LocalDate? With(DayFact on) =>
                    ActBy(asked.Job.With(new Completed { Index = 0, On = on, By = CompletionTheory.Actual, Contested = true }), asOf);
                Assert.True(With(DayFact.On(exact)) is not { } planned
                    || With(new DayFact.Between(first, first.PlusDays(more))) <= planned);
            },
            print: t => $"{Print(t.Item1)}{Environment.NewLine}{t.Item2} +{t.Item3}, {t.Item4}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8190(a)(2)")]
    public void Giving_the_owner_notice_never_makes_the_day_to_act_by_earlier() =>
        Gen.Select(AskedPrivate, Draw.Notice).Sample(
            (asked, more) =>
            {
                var before = ActBy(asked.Job, asked.AsOf);
                Assert.True(before is null || ActBy(asked.Job.With(more), asked.AsOf) >= before);
            },
            print: t => $"{Print(t.Item1)}{Environment.NewLine}and {t.Item2}", iter: Tries);
}
