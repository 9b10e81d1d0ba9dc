using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// What is retained, against a part of the price and of the work furnished: what the cap of private work (Civ. Code § 8811) and that of
/// public work (Pub. Contract Code § 7201) have in common. Which contracts they reach, and from what day, each says for itself.
/// </summary>
internal sealed class CapMeasure
{
    private readonly decimal overPrice;
    private readonly decimal overWork;

    private CapMeasure(decimal retained, decimal? price, decimal? work, decimal percent)
    {
        Retained = retained;
        Price = price;
        Work = work;
        Percent = percent;
        overPrice = price is { } whole ? Over(whole) : 0m;
        overWork = work is { } done ? Over(done) : 0m;
    }

    /// <summary>Dollars and cents retained.</summary>
    public decimal Retained { get; }

    /// <summary>The price with its agreed changes; null where the file does not give it.</summary>
    public decimal? Price { get; }

    /// <summary>
    /// The work furnished: nothing was paid, and so nothing retained, of what was not furnished. Null where some of it has no price.
    /// </summary>
    public decimal? Work { get; }

    /// <summary>The percentage that may be retained.</summary>
    public decimal Percent { get; }

    /// <summary>Dollars and cents beyond the cap.</summary>
    public decimal Excess => Math.Max(overPrice, overWork);

    /// <summary>Measures what is held; null where the file gives neither the price nor the work.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="held">What was retained.</param>
    /// <param name="most">The percentage that the law allows, of each payment and of the whole price.</param>
    /// <param name="primes">The percentage that the direct contract allows, where it binds the claimant's; else null.</param>
    public static CapMeasure? Of(FactsAsOf facts, IReadOnlyList<Retained> held, NumberRow most, decimal? primes)
    {
        decimal? price = facts.Job.Contract.Price is { } agreed
            ? agreed + Total.Of(facts.All<Change>(), static c => c.Agreed ? c.Amount : 0m) : null;
        decimal? work = facts.HasFurnished && facts.Furnished.All(static f => f.Amount is not null)
            ? Total.Of(facts.Furnished, static f => f.Amount!.Value) : null;
        return price is null && work is null ? null
            : new CapMeasure(Total.Of(held, static r => r.Amount), price, work, Math.Min(most.Value, primes ?? most.Value));
    }

    /// <summary>That share of a sum which may be retained.</summary>
    public decimal Part(decimal of) => decimal.Round(of * Percent / 100m, 2, MidpointRounding.AwayFromZero);

    private decimal Over(decimal of) => Math.Max(0m, Retained - Part(of));

    /// <summary>What both caps ask of the price and of the single payments.</summary>
    public List<Question> Questions()
    {
        var questions = new List<Question>();
        if (Price is null)
            questions.Add(AskPrice);
        if (overWork > overPrice)
            questions.Add(new Question($"Did the payments run ahead of the work? The cap is on each payment: compare what was retained "
                + $"from each with its sum.{MoneyKinds.Retained:aside}", Dollars: overWork - overPrice));
        return questions;
    }

    /// <summary>The answer where neither the price nor the work is known.</summary>
    public static Finding NotMeasured(string section, IReadOnlyList<Retained> held) => Answer(Standing.InDoubt, null,
        [Reason.Of(section, $"{Total.Of(held, static r => r.Amount)} is retained; the cap is a part of each payment and of the price, "
            + $"which the file does not give.", [.. held])], [AskPrice]);

    /// <summary>Asks for the day of the contract, by which it is known whether a cap reaches it.</summary>
    public static Question AskDay { get; } = new($"On which day was the contract made?{HeadField.ContractOn:aside}");

    private static readonly Question AskPrice = new($"What is the contract price?{HeadField.ContractPrice:aside}");

    /// <summary>A rate in words, so that it is not taken for money.</summary>
    public string PercentInWords => InWords(Percent);

    /// <summary>A rate in words.</summary>
    public static string InWords(decimal percent) => percent.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The finding <c>retention.cap</c>.</summary>
    public static Finding Answer(Standing standing, decimal? excess, IReadOnlyList<Reason> why, IReadOnlyList<Question> questions) => new()
    {
        Id = "retention.cap",
        Title = "Retention beyond the cap",
        Standing = standing,
        Amount = excess,
        Why = why,
        Questions = questions,
    };
}
