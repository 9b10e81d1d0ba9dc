namespace Stringline.Law.Time;

/// <summary>stub, replaced on merge</summary>
public static class Period
{
    /// <summary>Last day.</summary>
    public static LocalDate LastDay(LocalDate trigger, int days) => trigger.PlusDays(days);

    /// <summary>Years.</summary>
    public static LocalDate AddYears(LocalDate day, int years) => day.PlusYears(years);

    /// <summary>Six months.</summary>
    public static LocalDate SixMonthsAtTheEarliest(LocalDate day) => LocalDate.Min(day.PlusMonths(6), day.PlusDays(182));
}
