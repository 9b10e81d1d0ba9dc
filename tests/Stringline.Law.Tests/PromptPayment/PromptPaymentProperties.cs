using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>
/// What holds of every sum that is to be paid by a day, on private and public work: the penalty is on what is held and no more, from the
/// day after it was due (Civ. Code §§ 8800, 8818; Bus. &amp; Prof. Code §§ 7108.5, 7108.6; Pub. Contract Code § 7107).
/// </summary>
public sealed partial class PromptPaymentProperties
{
    private static readonly int Tries = Times.AtMost(3000);

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked =
        Gen.Select(LienJobGen.HalfAYear.Private, Money, Gen.Bool, LienJobGen.HalfAYear.AsOf,
        (job, money, isPublic, asOf) =>
            (LienJobGen.As(money.Aggregate(job, static (so, entry) => so.With(entry)), isPublic
                ? WorkKind.Public : WorkKind.Private), asOf));

    private static Gen<Entry[]> Money => Gen.OneOf(
        Gen.Select(LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money, (on, amount) =>
            (Entry)new PaymentDemanded { Index = 0, On = on, Amount = amount }),
        Gen.Select(LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money, Gen.Enum<PaymentOf>(), (on, amount, of) =>
            (Entry)new HirerPaid { Index = 0, On = on, Amount = amount, Of = of }),
        Gen.Select(LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money, (on, amount) =>
            (Entry)new Retained { Index = 0, On = on, Amount = amount }),
        Gen.Select(LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money, (on, amount) =>
            (Entry)new Paid { Index = 0, On = on, Amount = amount }),
        Gen.Select(LienJobGen.HalfAYear.When, LienJobGen.HalfAYear.Money, (on, amount) =>
            (Entry)new Disputed { Index = 0, On = on, Amount = amount })).Array[0, 5];

    private static IReadOnlyList<Finding> Due((JobFile Job, LocalDate AsOf) asked) =>
        [.. Assessment.Of(asked.Job, asked.AsOf, OpenDays.Statutory).Findings.Where(IsSumDue)];

    private static bool IsSumDue(Finding finding) => finding.Id != "prompt-payment.report"
        && (finding.Id.StartsWith("prompt-payment.", StringComparison.Ordinal)
            || finding.Id.StartsWith("retention.due", StringComparison.Ordinal));

    private static string Print((JobFile Job, LocalDate AsOf) asked) =>
        $"{asked.AsOf} {asked.Job.Work.Kind} {asked.Job.Work.Body}: {asked.Job.Print()}";

    [GeneratedRegex(@"(?:so|:) \$([\d,]+\.\d\d) is wrongly withheld")]
    private static partial Regex Withheld();

    // The greatest sum that the entries of a finding can make due: a demand, a receipt, or all that was retained.
    private static decimal Held((JobFile Job, LocalDate AsOf) asked, Finding finding)
    {
        var retained = asked.Job.Entries.OfType<Retained>().Where(r => !(r.On.Earliest > asked.AsOf)).Sum(r => r.Amount);
        return finding.Why.Tree().SelectMany(r => r.Facts).Select(e => e switch
        {
            PaymentDemanded demanded => demanded.Amount,
            HirerPaid { Of: PaymentOf.Retention } received when retained > 0 => Math.Min(received.Amount, retained),
            HirerPaid received => received.Amount,
            Retained => retained,
            _ => 0m,
        }).DefaultIfEmpty(0m).Max();
    }

    [Fact]
    [Proves("Civ. Code § 8818")]
    public void No_penalty_base_exceeds_the_sum_withheld() => Asked.Sample(
        asked =>
        {
            foreach (var finding in Due(asked))
            {
                var held = Held(asked, finding);
                foreach (var reason in finding.Why.Tree())
                {
                    foreach (Match match in Withheld().Matches(reason.Text))
                        Assert.True(decimal.Parse(match.Groups[1].Value, NumberStyles.Number, CultureInfo.InvariantCulture) <= held,
                            $"{finding.Id}: {reason.Text} of {held}");
                }

                if (finding.Amount is not { } penalty || finding.Band is not { } band)
                    continue;
                // Two percent a month, or ten a year: never more than whole months at two percent, and a cent for each sum that is rounded.
                var months =
                    Math.Max(0, NodaTime.Period.Between(band.Earliest.Day, LocalDate.Max(band.Earliest.Day, asked.AsOf),
                        PeriodUnits.Months).Months + 1);
                Assert.True(penalty <= held * NumberTable.Shipped.On(Number.RetentionPenalty, asked.AsOf).Value / 100m * months
                    + (0.01m * (asked.Job.Entries.Count + 1)), $"{finding.Id}: {penalty} on {held} for {months} months");
            }
        },
        print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 8800(a)")]
    [Proves("Civ. Code § 8812")]
    public void No_sum_is_called_wrongly_withheld_on_or_before_its_due_day() => Asked.Sample(
        asked =>
        {
            foreach (var finding in Due(asked).Where(f => f.Band is { } band && asked.AsOf <= band.Earliest.Day))
            {
                Assert.DoesNotContain(finding.Why.Tree(), r => r.Text.Contains("wrongly withheld", StringComparison.Ordinal));
                Assert.True(finding.Amount is null or 0m, $"{finding.Id}: {finding.Amount}");
                Assert.NotEqual(Standing.Open, finding.IsDeadline ? Standing.NotYet : finding.Standing);
            }
        },
        print: Print, iter: Tries);

    // What was paid is on a known day; of a day in doubt the earliest counts, so a greater sum is never worth less.
    [Fact]
    [Proves("Civ. Code § 1479")]
    public void Raising_what_was_paid_never_raises_what_is_due() =>
        Gen.Select(Asked, Gen.Int[1, 100_000], Gen.Int[0, 99]).Where(t => t.Item1.Job.Entries.Any(static e => e is Paid)).Sample(
        (asked, cents, place) =>
        {
            int[] paid = [.. Enumerable.Range(0, asked.Job.Entries.Count).Where(i => asked.Job.Entries[i] is Paid)];
            var at = paid[place % paid.Length];
            var raised =
                asked.Job with { Entries =
                    [.. asked.Job.Entries.Select((e, i) => i == at ? (Paid)e with { Amount = ((Paid)e).Amount + (cents / 100m) } : e)] };
            Assert.True(Assessment.Of(raised, asked.AsOf, OpenDays.Statutory).Owed.Demand
                <= Assessment.Of(asked.Job, asked.AsOf, OpenDays.Statutory).Owed.Demand);
            Assert.True(Sum((raised, asked.AsOf)) <= Sum(asked) + (0.01m * (asked.Job.Entries.Count + 1)),
                $"{Sum(asked)} became {Sum((raised, asked.AsOf))}");
        },
        print: t => $"{Print(t.Item1)} +{t.Item2} {t.Item3}", iter: Tries);

    private static decimal Sum((JobFile Job, LocalDate AsOf) asked) => Due(asked).Sum(f => f.Amount ?? 0m);
}
