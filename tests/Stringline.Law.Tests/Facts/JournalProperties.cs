using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Facts;

/// <summary>What a correction, a later learning and a question about a past day do to every answer.</summary>
public sealed class JournalProperties
{
    private static readonly int Tries = Times.AtMost(1000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static string[] Said(JobFile job, LocalDate asOf) => Assessment.Of(job, asOf, OpenDays.Statutory).Said(assumptions: false);

    private static JobFile Without(JobFile job, int index) => job.Reordered(job.Entries.Where((_, i) => i != index));

    private static bool IsKnown(Entry entry, LocalDate on) => !(entry.On.Earliest > on) && !(entry.Learned > on);

    [Fact]
    public void A_corrected_entry_gives_the_answer_of_a_file_that_never_had_it() =>
        Gen.Select(Draw.AnyWork, Draw.Entry, Gen.Int[0, 13], Draw.AsOf)
        .Where(t => t.Item3 < t.Item1.Entries.Count && IsKnown(t.Item2(0), t.Item4)).Sample(
            (job, correction, which, asOf) =>
            {
                var wrong = job.Reordered(job.Entries.Select((e, i) => i == which ? e with { Id = "wrong" } : e))
                    .With(correction(0) with { Supersedes = "wrong" });
                Assert.Equal(Said(Without(job, which).With(correction(0)), asOf), Said(wrong, asOf));
            },
            print: t => $"{t.Item4}: entry {t.Item3} replaced by {t.Item2(0)} in {t.Item1.Print()}", iter: Tries);

    [Fact]
    public void A_correction_of_a_correction_leaves_only_the_last() =>
        Gen.Select(Draw.AnyWork, Draw.Entry, Draw.Entry, Gen.Int[0, 13], Draw.AsOf)
            .Where(t => t.Item4 < t.Item1.Entries.Count && IsKnown(t.Item2(0), t.Item5) && IsKnown(t.Item3(0), t.Item5)).Sample(
            (job, first, second, which, asOf) =>
            {
                var wrong = job.Reordered(job.Entries.Select((e, i) => i == which ? e with { Id = "wrong" } : e))
                    .With(first(0) with { Id = "wrong too", Supersedes = "wrong" }).With(second(0) with { Supersedes = "wrong too" });
                Assert.Equal(Said(Without(job, which).With(second(0)), asOf), Said(wrong, asOf));
            },
            print: t => $"{t.Item5}: entry {t.Item4} of {t.Item1.Print()}", iter: Tries);

    [Fact]
    public void A_withdrawn_entry_gives_the_answer_of_a_file_that_never_had_it() =>
        Gen.Select(Draw.AnyWork, Draw.When, Gen.Int[0, 13], Draw.AsOf)
        .Where(t => t.Item3 < t.Item1.Entries.Count && !(t.Item2.Earliest > t.Item4)).Sample(
            (job, on, which, asOf) =>
            {
                var wrong = job.Reordered(job.Entries.Select((e, i) => i == which ? e with { Id = "wrong" } : e))
                    .With(new Withdrawn { Index = 0, On = on, Supersedes = "wrong" });
                Assert.Equal(Said(Without(job, which), asOf), Said(wrong, asOf));
            },
            print: t => $"{t.Item4}: entry {t.Item3} withdrawn {t.Item2} in {t.Item1.Print()}", iter: Tries);

    [Fact]
    public void What_is_learned_later_is_unknown_the_day_before_and_known_on_its_day() =>
        Gen.Select(Draw.AnyWork, Draw.Entry, Draw.Day).Where(t => !(t.Item2(0).On.Earliest > t.Item3)).Sample(
            (job, entry, learned) =>
            {
                var told = job.With(entry(0) with { Learned = learned });
                Assert.Equal(Said(job, learned.PlusDays(-1)), Said(told, learned.PlusDays(-1)));
                Assert.Equal(Said(job.With(entry(0)), learned), Said(told, learned));
            },
            print: t => $"{t.Item3}: learned {t.Item2(0)} besides {t.Item1.Print()}", iter: Tries);

    [Fact]
    public void A_question_about_a_past_day_is_answered_as_by_the_file_of_that_day() =>
        Gen.Select(Draw.Journal, Draw.AsOf).Sample(
            (job, asOf) => Assert.Equal(Said(job.Reordered(job.Entries.Where(e => IsKnown(e, asOf))), asOf), Said(job, asOf)),
            print: t => $"{t.Item2}: {t.Item1.Print()}", iter: Tries);

    // Entered as known by then, without the days of learning and without what was replaced: nothing of the journal is left.
    [Fact]
    public void It_is_also_the_answer_of_a_plain_file_with_only_what_counted_then() =>
        Gen.Select(Draw.Journal, Draw.AsOf).Sample(
            (job, asOf) =>
            {
                var known = job.Entries.Where(e => IsKnown(e, asOf)).ToArray();
                var plain = known.Where(e => e is not Withdrawn && State(e, known) == "counts")
                    .Select(e => e with { Id = null, Supersedes = null, Learned = null });
                Assert.Equal(Said(job.Reordered(plain), asOf), Said(job, asOf));
            },
            print: t => $"{t.Item2}: {t.Item1.Print()}", iter: Tries);

    [Fact]
    public void A_withdrawn_correction_gives_the_answer_of_a_file_that_never_had_it() =>
        Gen.Select(Draw.AnyWork, Draw.Entry, Draw.When, Gen.Int[0, 13], Draw.AsOf)
            .Where(t => t.Item4 < t.Item1.Entries.Count && IsKnown(t.Item2(0), t.Item5) && !(t.Item3.Earliest > t.Item5)).Sample(
            (job, correction, on, which, asOf) =>
            {
                var wrong = job.Reordered(job.Entries.Select((e, i) => i == which ? e with { Id = "right" } : e))
                    .With(correction(0) with { Id = "wrong", Supersedes = "right" })
                    .With(new Withdrawn { Index = 0, On = on, Supersedes = "wrong" });
                Assert.Equal(Said(job, asOf), Said(wrong, asOf));
            },
            print: t => $"{t.Item5}: entry {t.Item4} corrected by {t.Item2(0)}, withdrawn {t.Item3}, in {t.Item1.Print()}", iter: Tries);

    // Said anew, by recursion, for the generated chains: they are short and run in no circle.
    private static string State(Entry entry, Entry[] known)
    {
        var effects = known.Where(e => e.Supersedes is { } id && id == entry.Id).Select(e => (State(e, known), e is Withdrawn) switch
        {
            ("withdrawn", _) => "counts",
            ("counts", true) => "withdrawn",
            _ => "replaced",
        }).ToArray();
        return effects.Contains("replaced") ? "replaced" : effects.Contains("withdrawn") ? "withdrawn" : "counts";
    }
}
