using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;

namespace Stringline.Law.Tests.Waiver;

/// <summary>What holds of waivers on every job file: they never reach too far.</summary>
public sealed class WaiverProperties
{
    private static readonly int Tries = Times.AtMost(3000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static readonly Gen<(JobFile Job, Waived Waiver, LocalDate AsOf)> Asked =
        Gen.Select(Draw.Private, Draw.Waived, Draw.AsOf)
        .Select((job, waiver, asOf) => (job.Reordered(job.Entries.Where(e => e is not Waived)), waiver, asOf));

    private static Waterfall Amount(JobFile job, LocalDate asOf) => Demand.Of(new FactsAsOf(job, asOf), Reach.Everything);

    private static decimal Released(JobFile job, Waived waiver, LocalDate asOf) => -Amount(job.With(waiver), asOf).Step("waived");

    private static string Print((JobFile Job, Waived Waiver, LocalDate AsOf) asked) =>
        $"{asked.AsOf}: {asked.Waiver} in {asked.Job.Print()}";

    // The value furnished on days through the earlier of the through date and the signing, each span spread evenly over its days.
    private static decimal FurnishedThrough(FactsAsOf facts, LocalDate? last)
    {
        var sum = 0m;
        foreach (var furnished in facts.Furnished)
        {
            if (last is not { } day || furnished.On.Latest is not { } from || furnished.Until.Latest is not { } until || from > day)
                continue;
            var all = NodaTime.Period.DaysBetween(from, until) + 1;
            var days = Math.Min(all, NodaTime.Period.DaysBetween(from, day) + 1);
            sum += (furnished.Amount ?? 0m) * days / all;
        }

        return sum;
    }

    [Fact]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8138")]
    public void What_it_releases_as_a_fact_was_furnished_by_its_through_date_and_its_signing() =>
        Asked.Where(a => a.Job.Contract.Price is null).Sample(
            asked =>
            {
                var final = asked.Waiver.Form is WaiverForm.ConditionalFinal or WaiverForm.UnconditionalFinal;
                var last = asked.Waiver.On.Earliest is { } signed
                    ? !final && asked.Waiver.Through < signed ? asked.Waiver.Through : signed : null;
                Assert.True(Released(asked.Job, asked.Waiver, asked.AsOf) <= FurnishedThrough(new FactsAsOf(asked.Job, asked.AsOf), last));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void A_span_that_ends_later_is_never_released_more() =>
        Gen.Select(Asked, Draw.Day, Gen.Int[0, 30], Gen.Int[1, 30], Draw.Money).Sample(
            (asked, from, length, more, amount) =>
            {
                var job = asked.Job.Reordered(asked.Job.Entries.Where(e => e is not (Furnished or Paid or Credited or Change)));
                job = job with { Contract = job.Contract with { Price = null, ReasonableValue = null } };
                decimal With(int days) =>
                    Released(job.With(new Furnished { Index = 0, On = DayFact.On(from), Until = DayFact.On(from.PlusDays(days)),
                        Amount = amount }), asked.Waiver, asked.AsOf);
                Assert.True(With(length + more) <= With(length));
            },
            print: t => $"{Print(t.Item1)} {t.Item2} {t.Item3} {t.Item4} {t.Item5}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8122")]
    public void Work_after_the_signing_is_never_released_as_a_fact() =>
        Gen.Select(Asked, Gen.Int[1, 60], Draw.Money)
        .Where(t => t.Item1.Waiver.On.Latest is not null && t.Item1.Job.Contract is { Price: null, ReasonableValue: null }).Sample(
            (asked, later, amount) =>
            {
                var job = asked.Job.Reordered(asked.Job.Entries.Where(e => e is not (Paid or Credited or Change)));
                var on = DayFact.On(asked.Waiver.On.Latest!.Value.PlusDays(later));
                Assert.True(Released(job.With(new Furnished { Index = 0, On = on, Until = on, Amount = amount }), asked.Waiver, asked.AsOf)
                    <= Released(job, asked.Waiver, asked.AsOf));
            },
            print: t => $"{Print(t.Item1)} {t.Item2} {t.Item3}", iter: Tries);

    [Fact]
    [Proves("40 U.S.C. § 3133(c)")]
    public void On_federal_work_a_waiver_before_the_first_furnishing_releases_nothing() =>
        Gen.Select(Asked, Gen.Int[1, 60]).Sample(
            (asked, before) =>
            {
                var job = asked.Job with { Work = asked.Job.Work with { Kind = WorkKind.Federal } };
                if (new FactsAsOf(job, asked.AsOf).FirstFurnished is not { } first)
                    return;
                var amount = Amount(job.With(asked.Waiver with { On = DayFact.On(first.Earliest.PlusDays(-before)) }), asked.AsOf);
                Assert.Equal(Amount(job, asked.AsOf).Demand, amount.Demand);
                Assert.Equal(Amount(job, asked.AsOf).AtLeast, amount.AtLeast);
            },
            print: t => $"{Print(t.Item1)} {t.Item2}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8132")]
    public void Retention_held_past_the_through_date_never_lowers_the_demand() =>
        Gen.Select(Asked, Draw.Money, Gen.Int[0, 40], Gen.Int[1, 40]).Where(t => t.Item1.Waiver.Through is not null).Sample(
            (asked, amount, before, after) =>
            {
                var through = asked.Waiver.Through!.Value;
                var asOf = LocalDate.Max(asked.AsOf, through.PlusDays(after));
                decimal Held(LocalDate on) =>
                    Amount(asked.Job.With(new Retained { Index = 0, On = DayFact.On(on), Amount = amount }).With(asked.Waiver),
                        asOf).Demand;
                Assert.True(Held(through.PlusDays(after)) >= Held(through.PlusDays(-before)));
            },
            print: t => $"{Print(t.Item1)} {t.Item2} {t.Item3} {t.Item4}", iter: Tries);
}
