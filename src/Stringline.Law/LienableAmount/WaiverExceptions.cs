using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Dollars and cents that the exceptions of a waiver and release keep alive.</summary>
/// <param name="Surely">Surely kept.</param>
/// <param name="Retention">Retention that may have been held from work the form does not reach.</param>
/// <param name="Extras">Written extras: released by one sentence of the progress forms, kept by another.</param>
/// <param name="Earlier">Progress payments for which an earlier conditional waiver was given and not paid, of which the file does not say
/// whether they are listed.</param>
internal readonly record struct WaiverExceptions(decimal Surely, decimal Retention, decimal Extras, decimal Earlier)
{
    /// <summary>All that may be kept.</summary>
    public decimal AtMost => Surely + Retention + Extras + Earlier;

    /// <summary>What the exceptions of a form keep; a final form keeps only the sum it names.</summary>
    [Rule("Civ. Code § 8132")]
    [Rule("Civ. Code § 8134")]
    [Rule("Civ. Code § 8136")]
    [Rule("Civ. Code § 8138")]
    public static WaiverExceptions Of(FactsAsOf facts, Waived waiver, List<Obligation> items)
    {
        var named = waiver.Excepted ?? 0m;
        if (WaiverReach.IsFinal(waiver.Form))
            return new WaiverExceptions(named, 0m, 0m, 0m);
        var all = Total.Of(facts.All<Retained>(), static r => r.Amount);
        // Retention is kept whatever the day on which it was held; only where work goes on can some of it be of later work.
        var sure = waiver.Through is { } through && items.Exists(i => !(i.Due <= through))
            ? Total.Of(facts.All<Retained>(), r => r.On.Latest <= through ? r.Amount : 0m)
            : all;
        // An extra agreed on only after the through date is no part of the work that the form reaches: it needs no exception.
        var extras = named > 0 ? 0m : Total.Of(
            facts.All<Change>(), c => c is { Agreed: true, Amount: > 0 } && !(c.On.Earliest > waiver.Through) ? c.Amount : 0m);
        var (listed, asked) = EarlierUnpaid(facts, waiver, items);
        return new WaiverExceptions(named + sure + listed, all - sure, extras, asked);
    }

    /// <summary>
    /// The third exception of the conditional progress form keeps unpaid progress payments that it lists by the day of their waiver.
    /// </summary>
    [Rule("Civ. Code § 8132")]
    private static (decimal Listed, decimal Asked) EarlierUnpaid(FactsAsOf facts, Waived waiver, List<Obligation> items)
    {
        if (waiver.Form != WaiverForm.ConditionalProgress)
            return (0m, 0m);
        decimal listed = 0, asked = 0;
        foreach (var earlier in facts.All<Waived>())
        {
            if (earlier.Form != WaiverForm.ConditionalProgress || earlier.InStatutoryForm == false
                || !(earlier.On.Latest < waiver.On.Earliest) || WaiverBinding.Of(facts, earlier) != Verdict.No)
                continue;
            var sum = earlier.Amount ?? WaiverReach.Of(earlier, items).AtMost;
            if (waiver.UnpaidWaivers is not { } days)
                asked += sum;
            else if (days.Any(d => d >= earlier.On.Earliest && d <= earlier.On.Latest))
                listed += sum;
        }

        return (listed, asked);
    }
}
