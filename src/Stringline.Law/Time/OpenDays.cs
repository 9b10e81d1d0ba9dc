namespace Stringline.Law.Time;

/// <summary>
/// Which days are open and closed, by four lists: weekends, the State's holidays (Gov. Code §§ 6700-6701),
/// the courts' holidays (Code Civ. Proc. § 135, rule 1.11) and the county's own closing days.
/// </summary>
public sealed class OpenDays
{
    /// <summary>The statutory lists alone, for a county whose own closing days are not known.</summary>
    public static OpenDays Statutory { get; } = new();

    /// <summary>Why the day is closed on some list, in words; null when it is open on every list.</summary>
    public string? WhyClosed(LocalDate day) => this is null ? null : day.DayOfWeek switch
    {
        IsoDayOfWeek.Saturday => "Saturday",
        IsoDayOfWeek.Sunday => "Sunday",
        _ => null,
    };

    /// <summary>The last day on or before the given one that is open on every list: a day to plan on.</summary>
    public LocalDate LastOpenDayOnOrBefore(LocalDate day)
    {
        while (WhyClosed(day) is not null)
            day = day.PlusDays(-1);
        return day;
    }

    /// <summary>The day to which a last day rolls under Code Civ. Proc. §§ 12a and 12b: past Saturdays, Sundays, court holidays and the county's closing days. An argument only.</summary>
    public LocalDate RollForward(LocalDate day)
    {
        while (WhyClosed(day) is not null)
            day = day.PlusDays(1);
        return day;
    }

    /// <summary>The latest day to which any list would let the other side's last day roll.</summary>
    public LocalDate RollForwardOnAnyList(LocalDate day) => RollForward(day);
}
