using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>What holds of the demand on every job file.</summary>
public sealed class DemandProperties
{
    private static readonly int Tries = Times.AtMost(5000);

    private static readonly LienJobGen Draw = LienJobGen.HalfAYear;

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Select(Draw.Private, Draw.AsOf);

    private static Waterfall Amount(JobFile job, LocalDate asOf)
    {
        var facts = new FactsAsOf(job, asOf);
        return Demand.Of(facts, PreliminaryNoticeDays.ReachOf(facts, OpenDays.Statutory));
    }

    private static string Print((JobFile Job, LocalDate AsOf) asked) => $"{asked.AsOf}: {asked.Job.Print()}";

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void The_steps_add_up_to_the_demand_to_the_cent_and_it_is_never_negative() =>
        Asked.Sample(
            asked =>
            {
                var amount = Amount(asked.Job, asked.AsOf);
                Assert.Equal(amount.Demand, amount.Steps.Sum(s => s.Amount));
                Assert.True(amount.Demand >= 0);
                Assert.Equal(decimal.Round(amount.Demand, 2), amount.Demand);
                Assert.InRange(amount.InDoubt, 0m, -amount.Step("outside-reach"));
                Assert.All(amount.Steps, s => Assert.NotEqual("", s.Why.Section));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    [Proves("Civ. Code § 8430(c)")]
    public void The_demand_never_exceeds_the_price_with_its_agreed_changes() =>
        Asked.Where(a => a.Job.Contract.Price is not null).Sample(
            asked =>
            {
                var changes = asked.Job.All<Change>().Where(c => c.Agreed && !(c.On.Earliest > asked.AsOf)).Sum(c => c.Amount);
                Assert.True(Amount(asked.Job, asked.AsOf).Demand <= Math.Max(0, asked.Job.Contract.Price!.Value + changes));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8430(a)(1)")]
    public void The_demand_never_exceeds_the_reasonable_value_nor_what_was_furnished() =>
        Asked.Sample(
            asked =>
            {
                var demand = Amount(asked.Job, asked.AsOf).Demand;
                Assert.True(asked.Job.Contract.ReasonableValue is not { } reasonable || demand <= reasonable);
                var furnished = new FactsAsOf(asked.Job, asked.AsOf).Furnished;
                Assert.True(furnished.Count > 0 || demand == 0);
                Assert.True(furnished.All(f => f.Amount is null) || demand <= furnished.Sum(f => f.Amount ?? 0));
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8416(a)(1)")]
    [Proves("Civ. Code § 1479")]
    [Proves("Civ. Code § 8124")]
    // but a conditional progress form, which a later one may list as unpaid
    public void One_more_payment_credit_or_waiver_never_raises_the_demand() =>
        Gen.Select(Asked,
            Gen.OneOf(Draw.Paid.Select(e => (Entry)e), Draw.Credited.Select(e => (Entry)e),
                Draw.Waived.Where(w => w.Form != WaiverForm.ConditionalProgress).Select(e => (Entry)e))).Sample(
            (asked, more) => Assert.True(Amount(asked.Job.With(more), asked.AsOf).Demand <= Amount(asked.Job, asked.AsOf).Demand),
            print: t => $"{Print(t.Item1)}{Environment.NewLine}and {t.Item2}", iter: Tries);

    // Where a cap holds it is not so: an earlier item may push a later one beyond the cap, and a waiver may reach only the earlier.
    // An item before the first one may also turn a notice in time into a late one.
    [Fact]
    [Proves("Civ. Code § 8430(a)(2)")]
    public void Without_a_cap_one_more_item_not_before_the_first_never_lowers_the_demand() =>
        Gen.Select(Asked, Draw.Furnished).Where(t =>
                t.Item1.Job.Contract is { Price: null, ReasonableValue: null }
                && t.Item2.On.Earliest is { } day && t.Item2.Until.Latest is not null
                && new FactsAsOf(t.Item1.Job, t.Item1.AsOf) is { HasFurnished: true } facts && !(day < facts.FirstFurnished?.Earliest))
            .Sample(
                (asked, more) => Assert.True(Amount(asked.Job.With(more), asked.AsOf).Demand >= Amount(asked.Job, asked.AsOf).Demand),
                print: t => $"{Print(t.Item1)}{Environment.NewLine}and {t.Item2}", iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_given_earlier_never_leaves_less_to_claim() =>
        Gen.Select(Asked, Draw.Day, Gen.Int[1, 90]).Where(t => !t.Item1.Job.All<NoticeGiven>().Any()).Sample(
            (asked, day, later) =>
            {
                // Both are known by the day of asking; later than that nothing was given.
                var asOf = LocalDate.Max(asked.AsOf, day.PlusDays(later));
                decimal Given(LocalDate on) =>
                    Amount(asked.Job
                        .With(new NoticeGiven { Index = 0, On = DayFact.On(on), Notice =
                            NoticeKind.Preliminary, Manner = Manner.CertifiedMail, To = ["owner", "direct", "bank"] }), asOf).Demand;
                Assert.True(Given(day) >= Given(day.PlusDays(later)));
            },
            print: t => $"{Print(t.Item1)}{Environment.NewLine}{t.Item2} {t.Item3}", iter: Tries);
}
