using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What was furnished, priced, capped by the agreed price and the reasonable value (Civ. Code § 8430).</summary>
internal sealed class WorkValue
{
    private const string Price = "Civ. Code § 8430(a)(2)";

    private readonly FactsAsOf facts;

    /// <summary>Works it out and writes the first steps.</summary>
    public WorkValue(FactsAsOf facts, List<WaterfallStep> steps)
    {
        this.facts = facts;
        Items = new List<Obligation>(facts.Furnished.Count);
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Amount is { } amount)
                Items.Add(Item(furnished, amount));
        }

        if (facts.Job.Contract.Price is { } price)
            AgreedPrice(price, steps);
        else
            UnitPrices(steps);
        ReasonableValue(steps);
    }

    /// <summary>The items of work, earliest first, at the value that may be claimed for them.</summary>
    public List<Obligation> Items { get; }

    private decimal Whole => Total.Of(Items, i => i.Value);

    private Obligation Item(Furnished furnished, decimal amount) => new()
    {
        Order = Items.Count,
        Entry = furnished,
        From = furnished.On.Earliest,
        Due = furnished.Until.Latest ?? facts.AsOf,
        Ref = furnished.Ref,
        IsWork = true,
        Value = amount,
        Unpaid = amount,
    };

    [Rule("Civ. Code § 8430(a)(2)")]
    private void AgreedPrice(decimal price, List<WaterfallStep> steps)
    {
        steps.Add(new WaterfallStep("agreed-price", "Agreed price", price,
            Reason.Of(Price, $"The price agreed between the claimant and the one who contracted with it.")));
        var cap = price + Changes(steps, counted: _ => true);
        if (Items.Count == 0 && facts.HasFurnished)
            WholePriceAsOneItem(cap);
        var furnished = Whole;
        if (furnished > Math.Max(0, cap))
        {
            CutLatest(furnished - Math.Max(0, cap));
            steps.Add(new WaterfallStep("beyond-price", "Furnished beyond the agreed price", 0m,
                Reason.Of(Price, $"{furnished} was furnished; {furnished - Math.Max(0, cap)} of it lies beyond the price with its agreed changes and is not claimed.")));
        }

        var value = Whole;
        if (value != cap)
        {
            steps.Add(new WaterfallStep("not-furnished", "Not furnished", value - cap,
                Reason.Of("Civ. Code § 8430(a)(1)", $"Only work that was provided can be claimed: {value} was furnished.", facts.Furnished)));
        }
    }

    /// <summary>Without a total price the unit prices of what was furnished are the price agreed; only a deduction changes them.</summary>
    [Rule("Civ. Code § 8430(a)(2)", Sure = Sure.OurReading)]
    private void UnitPrices(List<WaterfallStep> steps)
    {
        var furnished = Whole;
        steps.Add(new WaterfallStep("agreed-price", "Furnished at the agreed prices", furnished,
            Reason.Of(Price, $"No total price is agreed; what was furnished counts at the prices it was billed at.", facts.Furnished)));
        var deductions = Changes(steps, counted: c => c.Amount < 0);
        CutLatest(Math.Min(furnished, -deductions));
        if (furnished + deductions < 0)
            steps.Add(new WaterfallStep("not-furnished", "Not furnished", -(furnished + deductions), Reason.Of(Price, $"The agreed deductions exceed what was furnished.")));
    }

    /// <summary>Changes count where they are agreed in writing; others are named and left out.</summary>
    [Rule("Civ. Code § 8430(c)")]
    private decimal Changes(List<WaterfallStep> steps, Func<Change, bool> counted)
    {
        var changes = facts.All<Change>();
        if (changes.Count == 0)
            return 0;
        var agreed = changes.Where(c => c.Agreed && counted(c)).ToArray();
        var sum = Total.Of(agreed, c => c.Amount);
        var left = changes.Where(c => !c.Agreed).Select(c => Reason.NotApplied("Civ. Code § 8430(c)", $"The change of {c.Amount} is not agreed in writing and is not counted.", c)).ToArray();
        var unit = changes.Where(c => c.Agreed && !counted(c)).Select(c => Reason.NotApplied("Civ. Code § 8430(a)(2)", $"No total price is agreed, so the extra of {c.Amount} counts only through what was furnished for it.", c)).ToArray();
        steps.Add(new WaterfallStep("changes", "Agreed changes", sum,
            Reason.Of("Civ. Code § 8430(c)", $"Written changes to the contract: {sum}.", agreed, [.. left, .. unit])));
        return sum;
    }

    // The contract was performed and nothing is priced item by item: the price stands for all of it. While work goes on nobody
    // can say which part of the price is earned, and nothing is claimed.
    private void WholePriceAsOneItem(decimal cap)
    {
        if (facts.All<FurnishingEnded>().Count == 0 || cap <= 0)
            return;
        Items.Add(new Obligation
        {
            Order = 0,
            Entry = facts.Furnished[0],
            From = facts.FirstFurnished?.Earliest,
            Due = facts.LastFurnished?.Latest ?? facts.AsOf,
            IsWork = true,
            Value = cap,
            Unpaid = cap,
        });
    }

    /// <summary>The reasonable value, where it is put below the price.</summary>
    [Rule("Civ. Code § 8430(a)(1)")]
    private void ReasonableValue(List<WaterfallStep> steps)
    {
        var value = Whole;
        if (facts.Job.Contract.ReasonableValue is not { } reasonable || reasonable >= value)
            return;
        CutLatest(value - reasonable);
        steps.Add(new WaterfallStep("reasonable-value", "Down to the reasonable value", reasonable - value,
            Reason.Of("Civ. Code § 8430(a)(1)", $"The reasonable value of the work, {reasonable}, is less than its price, {value}; the lesser counts.")));
    }

    // What lies beyond a cap is the last that was furnished. Items stand in the order of their first day; a later end is later.
    private void CutLatest(decimal excess)
    {
        if (excess <= 0)
            return;
        var latestFirst = Items.ToArray();
        Array.Sort(latestFirst, static (a, b) =>
        {
            var byEnd = b.Due.CompareTo(a.Due);
            return byEnd != 0 ? byEnd : Obligation.ByFirstDay(b, a);
        });
        foreach (var item in latestFirst)
        {
            var cut = Math.Min(excess, item.Value);
            item.Value -= cut;
            item.Unpaid -= cut;
            excess -= cut;
        }
    }

    /// <summary>Marks the items within reach and takes the others off.</summary>
    /// <returns>Dollars and cents of items that are within reach on one reading of the days in doubt only; they are left out.</returns>
    [Rule("Civ. Code § 8204(a)")]
    public decimal TakeOffOutsideReach(Reach reach, List<WaterfallStep> steps)
    {
        decimal outside = 0, straddling = 0;
        var entries = new List<Entry>();
        foreach (var item in Items)
        {
            item.Secured = reach.SurelyCovers(item.From);
            if (item.Secured || item.Value == 0)
                continue;
            outside += item.Value;
            if (item.Entry is { } entry)
                entries.Add(entry);
            if (reach.MayCover(item.Due))
                straddling += item.Value;
        }

        if (outside > 0)
        {
            Reason[] split = straddling > 0
                ? [Reason.Of("Civ. Code § 8204(a)", $"{straddling} of it was furnished over days on both sides of that day, or on a day in doubt; only what surely lies within reach is claimed. Split the entry, with the value on each side, to claim the rest.")]
                : [];
            steps.Add(new WaterfallStep("outside-reach", "Outside the reach of the preliminary notice", -outside,
                Reason.Of("Civ. Code § 8204(a)", $"Furnished before {reach.From!.Value.Latest}, more than 20 days before the preliminary notice.", [.. entries], split)));
        }

        return straddling;
    }
}
