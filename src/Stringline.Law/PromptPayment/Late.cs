using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>The penalty of 2 percent a month on money wrongly withheld: simple, in place of or beside interest as its section says.</summary>
public static class Late
{
    /// <summary>Percent a month.</summary>
    public const decimal PercentPerMonth = 2m;

    /// <summary>What is wrongly withheld: what is due, less at most 150 percent of what is disputed in good faith.</summary>
    /// <param name="due">Dollars and cents due and unpaid.</param>
    /// <param name="disputed">Dollars and cents disputed in good faith.</param>
    [Rule("Civ. Code § 8800(b)")]
    [Rule("Civ. Code § 8812(c)")]
    [Rule("Civ. Code § 8814(c)")]
    public static decimal WronglyWithheld(decimal due, decimal disputed) => due - Math.Min(due, disputed * 1.5m);

    /// <summary>
    /// The penalty for whole months after the due day. Part months are not dealt with in the text; they are counted apart, day by
    /// day at 24 percent a year of 365 days.
    /// </summary>
    /// <param name="withheld">Dollars and cents wrongly withheld.</param>
    /// <param name="due">The last day on which payment was in time.</param>
    /// <param name="asOf">The day of asking.</param>
    [Rule("Civ. Code § 8818", Sure = Sure.OurReading)]
    public static (int WholeMonths, decimal ForMonths, decimal ByDays) Penalty(decimal withheld, LocalDate due, LocalDate asOf)
    {
        if (asOf <= due || withheld <= 0)
            return (0, 0m, 0m);
        var months = 0;
        while (Time.Period.AddMonths(due, months + 1) <= asOf)
            months++;
        var days = NodaTime.Period.DaysBetween(due, asOf);
        return (
            months,
            Cents(withheld * PercentPerMonth / 100m * months),
            Cents(withheld * 0.24m * days / 365m));
    }

    /// <summary>The legal rate on judgments, percent a year.</summary>
    [Rule("Code Civ. Proc. § 685.010(a)", Since = "1983-07-01", Sure = Sure.FromMemory)]
    public static decimal LegalRate => 10m;

    /// <summary>Simple interest for the days after the due day, at a rate for a year of 365 days.</summary>
    /// <param name="money">Dollars and cents.</param>
    /// <param name="percent">Percent a year.</param>
    /// <param name="due">The last day on which payment was in time.</param>
    /// <param name="asOf">The day of asking.</param>
    public static decimal Interest(decimal money, decimal percent, LocalDate due, LocalDate asOf) =>
        asOf <= due ? 0m : Cents(money * percent / 100m * NodaTime.Period.DaysBetween(due, asOf) / 365m);

    private static decimal Cents(decimal dollars) => decimal.Round(dollars, 2, MidpointRounding.AwayFromZero);
}
