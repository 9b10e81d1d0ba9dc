using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.LienableAmount;

/// <summary>
/// What was furnished, priced, capped by the agreed price and, for some remedies, by the reasonable value (Civ. Code § 8430).
/// </summary>
internal sealed class WorkValue
{
    private readonly FactsAsOf facts;
    private readonly RemedyLaw law;
    private readonly EndedContract ended;

    /// <summary>Works it out and writes the first steps.</summary>
    public WorkValue(FactsAsOf facts, RemedyLaw law, List<WaterfallStep> steps)
    {
        this.facts = facts;
        this.law = law;
        ended = EndedContract.Of(facts);
        Items = new List<Obligation>(facts.Furnished.Count);
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Amount is { } amount)
                Items.Add(Item(furnished, amount));
            else
                HasUnpriced = true;
        }

        if (facts.Job.Contract.Price is { } price)
            AgreedPrice(price, steps);
        else
            UnitPrices(steps);
        Priced = Whole;
        ReasonableValue(steps);
        Outside(steps);
        PriceSteps = steps.Count;
    }

    /// <summary>The items of work, earliest first, at the value that may be claimed for them.</summary>
    public List<Obligation> Items { get; }

    /// <summary>The agreed price with its agreed changes; null where no total price is agreed.</summary>
    public decimal? Cap { get; private set; }

    /// <summary>What is priced as furnished, not more than the agreed price.</summary>
    public decimal Priced { get; }

    /// <summary>Whether something was furnished whose value the file does not give.</summary>
    public bool HasUnpriced { get; private set; }

    /// <summary>
    /// Of the agreed price what stands for work of which none is priced, while nobody can say which part of it is earned.
    /// </summary>
    public decimal NotYetValued { get; private set; }

    /// <summary>How many steps lead to the value of the work.</summary>
    public int PriceSteps { get; }

    /// <summary>Changes of which it is not known whether they are outside the direct contract, each with the question.</summary>
    public IReadOnlyList<(Change Change, Sentence Question)> MaybeOutside { get; private set; } = [];

    /// <summary>What would raise the value above the price; null where nothing would.</summary>
    public Question? ValueQuestion { get; private set; }

    private decimal Whole
    {
        get
        {
            var sum = 0m;
            foreach (var item in Items)
                sum += item.Value;
            return sum;
        }
    }

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
            Reason.Of(law.Price, $"The price agreed between the claimant and the one who contracted with it.")));
        var cap = price + Changes(steps, counted: static _ => true);
        Cap = cap;
        if (Items.Count == 0 && facts.HasFurnished && cap > 0)
            WholePriceAsOneItem(cap);
        if (ended.ValueCounts && facts.Job.Contract.ReasonableValue > Math.Min(Whole, Math.Max(0, cap)))
        {
            UpToTheValue(facts.Job.Contract.ReasonableValue.Value, cap, steps);
            return;
        }

        var furnished = Whole;
        if (furnished > Math.Max(0, cap))
        {
            CutLatest(furnished - Math.Max(0, cap));
            steps.Add(new WaterfallStep("beyond-price", "Furnished beyond the agreed price", 0m,
                Reason.Of(law.Price, $"{furnished} was furnished; {furnished - Math.Max(0, cap)} of it lies beyond the price with its "
                    + $"agreed changes and is not claimed.")));
        }

        var value = Whole;
        if (value != cap && NotYetValued == 0)
            steps.Add(NotFurnished(value - cap));
        ValueQuestion = ended.Question(value, facts);
    }

    // The step down from the price to what was provided.
    private WaterfallStep NotFurnished(decimal amount) => new("not-furnished", "Not furnished", amount,
        Reason.Of(law.Value, $"Only work that was provided can be claimed: {Whole} was furnished.", facts.Furnished));

    /// <summary>Without a total price the unit prices of what was furnished are the price agreed; only a deduction changes them.</summary>
    [Rule("Civ. Code § 8430(a)(2)", Sure = Sure.OurReading)]
    private void UnitPrices(List<WaterfallStep> steps)
    {
        var furnished = Whole;
        steps.Add(new WaterfallStep("agreed-price", "Furnished at the agreed prices", furnished,
            Reason.Of(law.Price, $"No total price is agreed; what was furnished counts at the prices it was billed at.", facts.Furnished)));
        var deductions = Changes(steps, counted: static c => c.Amount < 0);
        CutLatest(Math.Min(furnished, -deductions));
        if (furnished + deductions < 0)
            steps.Add(new WaterfallStep("not-furnished", "Not furnished", -(furnished + deductions),
                Reason.Of(law.Price, $"The agreed deductions exceed what was furnished.")));
    }

    /// <summary>Changes count where they are agreed in writing; others are named and left out.</summary>
    [Rule("Civ. Code § 8430(c)")]
    private decimal Changes(List<WaterfallStep> steps, Func<Change, bool> counted)
    {
        var changes = facts.All<Change>();
        return changes.Count == 0 ? 0 : Changes(changes, steps, counted);
    }

    private decimal Changes(IReadOnlyList<Change> changes, List<WaterfallStep> steps, Func<Change, bool> counted)
    {
        var agreed = changes.Where(c => c.Agreed && counted(c)).ToArray();
        var sum = Total.Of(agreed, static c => c.Amount);
        var left = changes.Where(c => !c.Agreed)
            .Select(c => Reason.NotApplied(law.Changes, $"The change of {c.Amount} is not agreed in writing and is not counted.", c))
            .ToArray();
        var unit = changes.Where(c => c.Agreed && !counted(c))
            .Select(c =>
                Reason.NotApplied(law.Price, $"No total price is agreed, so the extra of {c.Amount} counts only through what was furnished "
                    + $"for it.", c)).ToArray();
        steps.Add(new WaterfallStep("changes", "Agreed changes", sum,
            Reason.Of(law.Changes, $"Written changes to the contract: {sum}.", agreed, [.. left, .. unit])));
        return sum;
    }

    // The contract was performed and nothing is priced item by item: the price stands for all of it. While work goes on, or where the
    // contract ended before it was performed, nobody can say which part of the price is earned.
    private void WholePriceAsOneItem(decimal cap)
    {
        if (ended.Unperformed || !HasCeased.Of(facts, Completion))
        {
            NotYetValued = cap;
            return;
        }

        HasUnpriced = false;
        Items.Add(WholeWork(cap));
    }

    private static CompletionReadings Completion(FactsAsOf facts) => facts.Job.Work.Kind == WorkKind.Private
        ? CompletionDay.Of(facts, OwnersNotice.Of(facts, OpenDays.Statutory))
        : PublicCompletion.Of(facts, OwnersNotice.Of(facts, OpenDays.Statutory));

    private Obligation WholeWork(decimal value) => new()
    {
        Order = Items.Count,
        Entry = facts.Furnished[0],
        From = facts.FirstFurnished?.Earliest,
        Due = facts.LastFurnished?.Latest ?? facts.AsOf,
        IsWork = true,
        Value = value,
        Unpaid = value,
    };

    /// <summary>
    /// After the payer's breach or abandonment, or a rescission, the reasonable value counts where it is above the price.
    /// </summary>
    [Rule("Civ. Code § 8430(c)")]
    private void UpToTheValue(decimal value, decimal cap, List<WaterfallStep> steps)
    {
        NotYetValued = 0;
        HasUnpriced = false;
        var furnished = Whole;
        if (furnished > value)
            CutLatest(furnished - value);
        else if (furnished < value && facts.HasFurnished)
            Items.Add(WholeWork(value - furnished));
        if (Whole != cap)
            steps.Add(new WaterfallStep("reasonable-value", "To the reasonable value", Whole - cap, ended.Why(law, value, cap)));
    }

    /// <summary>The reasonable value, where it is put below the price.</summary>
    [Rule("Civ. Code § 8430(a)(1)")]
    private void ReasonableValue(List<WaterfallStep> steps)
    {
        if (!law.ValueLimits || facts.Job.Contract.ReasonableValue is not { } reasonable)
            return;
        var value = Whole;
        if (reasonable >= value)
            return;
        CutLatest(value - reasonable);
        steps.Add(new WaterfallStep("reasonable-value", "Down to the reasonable value", reasonable - value,
            Reason.Of(law.Value, $"The reasonable value of the work, {reasonable}, is less than its price, {value}; the lesser counts.")));
    }

    /// <summary>Takes off the extras that lie outside the direct contract, and notes those of which it is not known.</summary>
    private void Outside(List<WaterfallStep> steps)
    {
        if (!law.DirectContractLimits || facts.All<Change>().Count == 0 || facts.HiredByOwner)
            return;
        var outside = OutsideContract.Of(facts);
        MaybeOutside = outside.Maybe;
        var cut = Math.Min(outside.Surely, Whole);
        if (cut <= 0)
            return;
        CutLatest(cut);
        steps.Add(new WaterfallStep("outside-direct-contract", "Outside the direct contract", -cut, outside.Why));
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

    /// <summary>No preliminary notice limits the remedy.</summary>
    /// <returns>Nothing in doubt.</returns>
    public decimal AllWithinReach()
    {
        foreach (var item in Items)
            item.Secured = true;
        return 0m;
    }

    /// <summary>Marks the items within reach and takes the others off.</summary>
    /// <returns>Dollars and cents of items that are within reach on one reading of the days in doubt only; they are left out.</returns>
    [Rule("Civ. Code § 8204(a)")]
    [Rule("Civ. Code § 9304")]
    public decimal TakeOffOutsideReach(Reach reach, string section, List<WaterfallStep> steps)
    {
        decimal outside = 0, straddling = 0;
        List<Entry>? entries = null;
        foreach (var item in Items)
        {
            item.Secured = reach.CertainlyCovers(item.From);
            if (item.Secured || item.Value == 0)
                continue;
            outside += item.Value;
            if (item.Entry is { } entry)
                (entries ??= []).Add(entry);
            item.Straddles = reach.PossiblyCovers(item.Due);
            if (item.Straddles)
                straddling += item.Value;
        }

        if (outside > 0)
        {
            Reason[] split = straddling > 0
                ? [Reason.Of(section, $"{straddling} of it was furnished over days on both sides of that day, or on a day in doubt; only "
                    + $"what surely lies within reach is claimed. Split the entry, with the value on each side, to claim the rest.")]
                : [];
            steps.Add(new WaterfallStep("outside-reach", "Outside the reach of the preliminary notice", -outside,
                Reason.Of(section,
                    $"Furnished before {reach.From!.Value.Latest}, more than {Reach.LookBack(facts, reach.Given?.Latest
                        ?? facts.AsOf)} before the preliminary notice.", entries ?? [], split)));
        }

        return straddling;
    }
}
