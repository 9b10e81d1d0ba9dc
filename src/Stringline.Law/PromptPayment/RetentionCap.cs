using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>The cap of 5 percent on retention in private contracts made on or after 1 January 2026 (Civ. Code § 8811).</summary>
public static class RetentionCap
{
    /// <summary>Contracts made before this day have no cap.</summary>
    public static LocalDate From { get; } = new(2026, 1, 1);

    /// <summary>Percent of each payment and of the whole price.</summary>
    public const decimal Percent = 5m;

    private const string Each = "Civ. Code § 8811(b)(1)(A)";

    /// <summary>The finding <c>retention.cap</c>; null where the file shows no retention. Each contract is tested by its own day.</summary>
    [Rule("Civ. Code § 8811(a)", Since = "2026-01-01")]
    [Rule("Civ. Code § 8811(b)(3)", Since = "2026-01-01")]
    [Rule("Civ. Code § 8811(b)(2)", Since = "2026-01-01")]
    public static Finding? Finding(FactsAsOf facts)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0)
            return null;
        if (facts.Job.Contract.On is not { } made)
            return Answer(Standing.InDoubt, null, [Reason.Of("Civ. Code § 8811(a)", $"The cap depends on the day of the contract, which the file does not give.", [.. held])], [new Question("On which day was the contract made? (contract.on)")]);
        if (made < From)
            return Answer(Standing.Done, null, [Reason.Of("Civ. Code § 8811(a)", $"The cap is on contracts made on or after {From}; this one was made on {made}: no cap.", [.. held])], []);
        if (facts.Job.Work.LowRiseResidential == true)
            return Answer(Standing.Done, null, [Reason.Of("Civ. Code § 8811(b)(3)", $"A residential project that is not mixed-use and not over four stories has no cap.", [.. held])], []);
        if (facts.Job.Contract.BondNotBrought == true && facts.Job.Claimant.Role == ClaimantRole.Subcontractor)
            return Answer(Standing.Done, null, [Reason.Of("Civ. Code § 8811(b)(2)", $"The claimant was told in writing, before or at the request for bids, that payment and performance bonds are required, and brought none: no cap.", [.. held])], []);
        return Measured(facts, held);
    }

    /// <summary>At most 5 percent of each payment, and 5 percent of the price in all; below the direct contract at most its own percentage.</summary>
    [Rule("Civ. Code § 8811(b)(1)(A)", Since = "2026-01-01")]
    [Rule("Civ. Code § 8811(b)(1)(B)", Since = "2026-01-01")]
    [Rule("Civ. Code § 8811(b)(1)(C)", Since = "2026-01-01")]
    private static Finding Measured(FactsAsOf facts, IReadOnlyList<Retained> held)
    {
        var retained = Total.Of(held, static r => r.Amount);
        decimal? whole = facts.Job.Contract.Price is { } price ? price + Total.Of(facts.All<Change>(), static c => c.Agreed ? c.Amount : 0m) : null;
        // Nothing was paid, and so nothing retained, of what was not furnished.
        decimal? work = facts.HasFurnished && facts.Furnished.All(static f => f.Amount is not null) ? Total.Of(facts.Furnished, static f => f.Amount!.Value) : null;
        if (whole is null && work is null)
            return Answer(Standing.InDoubt, null, [Reason.Of(Each, $"{retained} is retained; the cap is 5 percent of each payment and of the price, which the file does not give.", [.. held])], [new Question("What is the contract price? (contract.price)")]);
        var isSub = facts.Job.Claimant.Role == ClaimantRole.Subcontractor;
        var isNamed = isSub || facts.Job.Claimant.Role == ClaimantRole.DirectContractor;
        var primes = isSub ? facts.Job.Work.DirectContract?.RetentionPercent : null;
        var percent = Math.Min(Percent, primes ?? Percent);
        var overPrice = whole is { } all ? Over(retained, all, percent) : 0m;
        var overWork = work is { } done ? Over(retained, done, percent) : 0m;
        var excess = Math.Max(overPrice, overWork);
        var questions = new List<Question>();
        if (whole is null)
            questions.Add(new Question("What is the contract price? (contract.price)"));
        if (overWork > overPrice)
            questions.Add(new Question("Did the payments run ahead of the work? The cap is on each payment: compare what was retained from each with its sum. (retained)", Dollars: overWork - overPrice));
        var lowRise = facts.Job.Work.LowRiseResidential is null && facts.Job.Work.Use != WorkUse.Commercial;
        if (lowRise)
            questions.Add(new Question("Is the project residential, not mixed-use and not over four stories? Then there is no cap. (work.lowRiseResidential)", Dollars: excess));
        if (isSub && primes is null)
            questions.Add(new Question("What percentage does the direct contract let the owner retain? No more may be retained below it. (work.directContract.retentionPercent)", Dollars: retained - excess));
        if (isSub && excess > 0 && facts.Job.Contract.BondNotBrought is null)
            questions.Add(new Question("Was the claimant told in writing, before or at the request for bids, that payment and performance bonds are required, and did it bring none? Then there is no cap. (contract.bondNotBrought)", Dollars: excess));
        return Answer(
            lowRise || !isNamed || (excess == 0 && (whole is null || (isSub && primes is null))) ? Standing.InDoubt : excess > 0 ? Standing.Open : Standing.Kept,
            excess,
            [
                Reason.Of(Each, $"Retention may not exceed {InWords(percent)} percent of each payment{(work is { } furnished ? $": of the work furnished so far, {LawText.Money(furnished)}, {LawText.Money(Part(furnished, percent))}" : "")}.", [.. held]),
                Reason.Of("Civ. Code § 8811(b)(1)(B)", $"Nor of the price with its changes{(whole is { } p ? $", {LawText.Money(p)}: {LawText.Money(Part(p, percent))}" : "")}. Retained: {retained}; beyond the cap: {excess}.", [.. held]),
                .. primes is { } direct ? (Reason[])[Reason.Of("Civ. Code § 8811(b)(1)(C)", $"The direct contract lets {InWords(direct)} percent be retained; no more may be below it.")] : [],
                .. isNamed ? (Reason[])[] : [Reason.Of(Each, $"The section names direct contractors and subcontractors; whether a claimant in this role may use it is open.")],
            ],
            questions);
    }

    /// <summary>A rate in words, so that it is not taken for money.</summary>
    internal static string InWords(decimal percent) => percent.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    private static decimal Part(decimal of, decimal percent) => decimal.Round(of * percent / 100m, 2, MidpointRounding.AwayFromZero);

    private static decimal Over(decimal retained, decimal of, decimal percent) => Math.Max(0m, retained - Part(of, percent));

    private static Finding Answer(Standing standing, decimal? excess, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions) => new()
    {
        Id = "retention.cap",
        Title = "Retention beyond the cap",
        Standing = standing,
        Amount = excess,
        Why = why,
        Questions = questions,
    };
}
