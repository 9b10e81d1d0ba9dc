using Stringline.Law.Numbers;

namespace Stringline.Law.PromptPayment;

/// <summary>The penalty by the month on money wrongly withheld: simple, in place of or beside interest as its section says.</summary>
public static class Late
{
    // The year of the sections that charge by the year.
    private const int DaysOfAYear = 365;

    /// <summary>What is wrongly withheld: what is due, less at most 150 percent of what is disputed in good faith.</summary>
    /// <param name="due">Dollars and cents due and unpaid.</param>
    /// <param name="disputed">Dollars and cents disputed in good faith.</param>
    /// <param name="terms">What the law says of it.</param>
    [Rule("Civ. Code § 8800(b)")]
    [Rule("Civ. Code § 8812(c)")]
    [Rule("Civ. Code § 8814(c)")]
    public static decimal WronglyWithheld(decimal due, decimal disputed, LateTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return due - Math.Min(due, terms.MostHeld?.PercentOf(disputed) ?? 0m);
    }

    /// <summary>
    /// The penalty for whole months after the due day. Part months are not dealt with in the text; they are counted apart, day by
    /// day at 24 percent a year of 365 days.
    /// </summary>
    /// <param name="withheld">Dollars and cents wrongly withheld.</param>
    /// <param name="due">The last day on which payment was in time.</param>
    /// <param name="asOf">The day of asking.</param>
    /// <param name="terms">What the law says of it.</param>
    [Rule("Civ. Code § 8818", Sure = Sure.OurReading)]
    public static (int WholeMonths, decimal ForMonths, decimal ByDays) Penalty(decimal withheld, LocalDate due, LocalDate asOf,
        LateTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        if (asOf <= due || withheld <= 0)
            return (0, 0m, 0m);
        var months = 0;
        while (Counting.TimeLimit.AddMonths(due, months + 1) <= asOf)
            months++;
        var days = NodaTime.Period.DaysBetween(due, asOf);
        return (
            months,
            Cents(terms.PerMonth.PercentOf(withheld) * months),
            Cents(terms.OfAYear(withheld) * days / DaysOfAYear));
    }

    /// <summary>Simple interest for the days after the due day, at a rate for a year of 365 days.</summary>
    /// <param name="money">Dollars and cents.</param>
    /// <param name="rate">The rate by the year.</param>
    /// <param name="due">The last day on which payment was in time.</param>
    /// <param name="asOf">The day of asking.</param>
    public static decimal Interest(decimal money, NumberRow rate, LocalDate due, LocalDate asOf)
    {
        ArgumentNullException.ThrowIfNull(rate);
        return asOf <= due ? 0m : Cents(rate.PercentOf(money) * NodaTime.Period.DaysBetween(due, asOf) / DaysOfAYear);
    }

    private static decimal Cents(decimal dollars) => decimal.Round(dollars, 2, MidpointRounding.AwayFromZero);
}
