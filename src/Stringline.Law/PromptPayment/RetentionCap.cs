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

    /// <summary>The finding <c>retention.cap</c>; null where the file shows no retention. Each contract is tested by its own day.</summary>
    [Rule("Civ. Code § 8811", Since = "2026-01-01")]
    public static Finding? Finding(FactsAsOf facts)
    {
        var held = facts.All<Retained>();
        if (held.Count == 0)
            return null;
        if (facts.Job.Contract.On is not { } made)
            return Answer(Standing.InDoubt, null, [Reason.Of("Civ. Code § 8811", $"The cap depends on the day of the contract, which the file does not give.", [.. held])], "On which day was the contract made? Add contract.on.");
        if (made < From)
            return Answer(Standing.Done, null, [Reason.Of("Civ. Code § 8811", $"The cap is on contracts made on or after {From}; this one was made on {made}: no cap.", [.. held])]);
        if (facts.Job.Work.LowRiseResidential == true)
            return Answer(Standing.Done, null, [Reason.Of("Civ. Code § 8811(b)(3)", $"A residential project that is not mixed-use and not over four stories has no cap.", [.. held])]);
        var retained = Total.Of(held, r => r.Amount);
        var question = facts.Job.Work.LowRiseResidential is null && facts.Job.Work.Use is WorkUse.Residential or WorkUse.OwnerOccupiedOneToFour
            ? "Is the project residential, not mixed-use and not over four stories? Then there is no cap (add work.lowRiseResidential)."
            : null;
        if (facts.Job.Contract.Price is not { } price)
            return Answer(Standing.InDoubt, null, [Reason.Of("Civ. Code § 8811", $"{retained} is retained; the cap is 5 percent of the price, which the file does not give.", [.. held])], "What is the contract price?");
        var whole = price + Total.Of(facts.All<Change>().Where(c => c.Agreed), c => c.Amount);
        var cap = decimal.Round(whole * Percent / 100m, 2, MidpointRounding.AwayFromZero);
        var excess = Math.Max(0, retained - cap);
        return Answer(question is not null ? Standing.InDoubt : excess > 0 ? Standing.Open : Standing.Kept, excess,
            [Reason.Of("Civ. Code § 8811", $"Retention may not exceed 5 percent of each payment nor of the price with its changes, {whole}: {cap}. Retained: {retained}; beyond the cap: {excess}.", [.. held])],
            question);
    }

    private static Finding Answer(Standing standing, decimal? excess, Reason[] why, string? question = null) => new()
    {
        Id = "retention.cap",
        Title = "Retention beyond the cap",
        Standing = standing,
        Amount = excess,
        Why = why,
        Questions = question is null ? [] : [new Question(question, Dollars: excess)],
    };
}
