using System.Globalization;
using Stringline.Law.Counting;

namespace Stringline.Law.Numbers;

/// <summary>One version of a number of the law, with what it is known from.</summary>
/// <param name="Id">Which number.</param>
/// <param name="Value">How many; above 0, and whole except for a percentage or inches.</param>
/// <param name="Unit">Of what.</param>
/// <param name="Section">The section that fixes it, such as <c>Civ. Code § 8460(a)</c>.</param>
/// <param name="From">The first day that it governs.</param>
/// <param name="Until">The last day that it governs, included; null while it is in force.</param>
/// <param name="Sure">How well it is known.</param>
/// <param name="Source">In which text it was read.</param>
public sealed record NumberRow(
    Number Id, decimal Value, NumberUnit Unit, string Section, LocalDate From, LocalDate? Until, Sure Sure, string Source)
{
    /// <summary>How many, where it counts whole things: days, months, years.</summary>
    public int Count { get; } = (int)decimal.Truncate(Value);

    /// <summary>In figures: <c>90 days</c>, <c>125 percent</c>, <c>$50,000</c>; with a day of a month, <c>20th</c>.</summary>
    /// <remarks>Written once, when the table is read: the names of readings hold it, and they are made for every answer.</remarks>
    public string Text { get; } = Figures(Value, Unit);

    /// <summary>The same with the number spelled out: <c>ninety days</c>, <c>one year</c>, <c>ten business days</c>.</summary>
    public string Spelled { get; } = NumberWords.Cardinal(Value) + Noun(Value, Unit);

    /// <summary>Its place in a row: <c>ninetieth</c>.</summary>
    public string Ordinal { get; } = NumberWords.Ordinal(Value);

    /// <summary>The number with the days on which it governs: <c>45 days from 2017-01-01 through 2026-12-31</c>.</summary>
    public string Governing => $"{Text} from {LawText.IsoDay(From)}{(Until is { } until ? $" through {LawText.IsoDay(until)}" : "")}";

    /// <summary>The last day of the period, included and not rolled. The day that it runs from is not counted.</summary>
    /// <param name="from">The day that it runs from.</param>
    /// <exception cref="InvalidOperationException">It is no period of the calendar.</exception>
    public LocalDate LastDay(LocalDate from) => Unit switch
    {
        NumberUnit.Days => TimeLimit.LastDay(from, Count),
        NumberUnit.Months => TimeLimit.AddMonths(from, Count),
        NumberUnit.Years => TimeLimit.AddYears(from, Count),
        NumberUnit.BusinessDays or NumberUnit.Percent or NumberUnit.Dollars or NumberUnit.DayOfMonth or NumberUnit.Times
            or NumberUnit.Inches =>
            throw new InvalidOperationException($"{Id} is {Text}, no period that a calendar alone counts."),
        _ => throw new InvalidOperationException($"No such unit: {Unit}."),
    };

    /// <summary>
    /// The last day of a period on the reading that ends last: of six months the longer of the two half years
    /// (<see cref="TimeLimit.SixMonthsAtTheLatest"/>).
    /// </summary>
    /// <param name="from">The day that it runs from.</param>
    public LocalDate LastDayAtTheLatest(LocalDate from) => IsHalfYear ? TimeLimit.SixMonthsAtTheLatest(from) : LastDay(from);

    /// <summary>Whether it is six months, which Gov. Code §§ 6803 and 6804 count in two ways.</summary>
    public bool IsHalfYear => (Value, Unit) is (6, NumberUnit.Months);

    /// <summary>The first day once the whole period has passed; not rolled.</summary>
    /// <param name="from">The day that it runs from.</param>
    public LocalDate FirstDayAfter(LocalDate from) => LastDay(from).PlusDays(1);

    /// <summary>The earliest day that a period of days reaches when it is counted back; not rolled.</summary>
    /// <param name="day">The day that it is counted back from.</param>
    public LocalDate LookBack(LocalDate day) => Unit == NumberUnit.Days
        ? TimeLimit.LookBack(day, Count) : throw new InvalidOperationException($"{Id} is {Text}; only days are counted back.");

    /// <summary>The last day of so many business days; a day that any list closes is none.</summary>
    /// <param name="from">The day that they run from.</param>
    /// <param name="calendar">The calendar.</param>
    public LocalDate LastBusinessDay(LocalDate from, OpenDays calendar)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        for (var i = 0; i < Count; i++)
            from = calendar.RollForwardOnAnyList(from.PlusDays(1));
        return from;
    }

    /// <summary>That day of the month after a month.</summary>
    public LocalDate InNextMonth(YearMonth month) => month.OnDayOfMonth(1).PlusMonths(1).PlusDays(Count - 1);

    /// <summary>That percentage of a sum, not rounded.</summary>
    /// <param name="dollars">The sum.</param>
    public decimal PercentOf(decimal dollars) => Unit == NumberUnit.Percent
        ? dollars * Value / 100m : throw new InvalidOperationException($"{Id} is {Text}, no percentage.");

    /// <summary>As <see cref="Text"/>.</summary>
    public override string ToString() => Text;

    private static string Figures(decimal value, NumberUnit unit) => unit switch
    {
        NumberUnit.Dollars => "$" + value.ToString("#,0.##", CultureInfo.InvariantCulture),
        NumberUnit.DayOfMonth => NumberWords.Place((int)value),
        _ => value.ToString("0.##", CultureInfo.InvariantCulture) + Noun(value, unit),
    };

    private static string Noun(decimal value, NumberUnit unit) => unit switch
    {
        NumberUnit.Days => value == 1 ? " day" : " days",
        NumberUnit.BusinessDays => value == 1 ? " business day" : " business days",
        NumberUnit.Months => value == 1 ? " month" : " months",
        NumberUnit.Years => value == 1 ? " year" : " years",
        NumberUnit.Percent => " percent",
        NumberUnit.Inches => value == 1 ? " inch" : " inches",
        NumberUnit.Dollars => value == 1 ? " dollar" : " dollars",
        NumberUnit.DayOfMonth or NumberUnit.Times => "",
        _ => throw new InvalidOperationException($"No such unit: {unit}."),
    };
}
