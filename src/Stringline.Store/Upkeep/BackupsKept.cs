namespace Stringline.Store.Upkeep;

/// <summary>
/// Which of many backups stay: the newest of each of the last 14 days, of each of the last 8 weeks (from Monday) and of each of the last
/// 12 months, the present ones counted. Common practice, no source.
/// </summary>
public static class BackupsKept
{
    /// <summary>Days of which the newest stays.</summary>
    public const int Days = 14;

    /// <summary>Weeks of which the newest stays.</summary>
    public const int Weeks = 8;

    /// <summary>Months of which the newest stays.</summary>
    public const int Months = 12;

    /// <summary>Those that stay.</summary>
    /// <param name="made">When each was made.</param>
    /// <param name="today">Today. What seems to be made after it stays: the clock may have been wrong.</param>
    public static IReadOnlySet<LocalDateTime> Of(IEnumerable<LocalDateTime> made, LocalDate today)
    {
        var all = made.ToHashSet();
        var monday = Monday(today);
        var month = new LocalDate(today.Year, today.Month, 1);
        return all.Where(at => at.Date > today)
            .Concat(NewestOf(all, today, at => at.Date, today.PlusDays(1 - Days)))
            .Concat(NewestOf(all, today, at => Monday(at.Date), monday.PlusWeeks(1 - Weeks)))
            .Concat(NewestOf(all, today, at => new LocalDate(at.Year, at.Month, 1), month.PlusMonths(1 - Months)))
            .ToHashSet();
    }

    private static IEnumerable<LocalDateTime> NewestOf(
        IEnumerable<LocalDateTime> all, LocalDate today, Func<LocalDateTime, LocalDate> period, LocalDate first) =>
        all.Where(at => at.Date <= today && period(at) >= first).GroupBy(period).Select(group => group.Max());

    private static LocalDate Monday(LocalDate day) => day.PlusDays(1 - (int)day.DayOfWeek);
}
