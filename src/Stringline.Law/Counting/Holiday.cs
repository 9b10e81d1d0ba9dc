namespace Stringline.Law.Counting;

/// <summary>A holiday on a day of a year. Weekends as such are no holidays here.</summary>
/// <param name="Day">The closed day.</param>
/// <param name="Rule">The holiday's rule.</param>
/// <param name="Lists">The lists on which this day is closed.</param>
/// <param name="Observance">The rule that moved it off a weekend; null on the holiday itself.</param>
public sealed record Holiday(LocalDate Day, HolidayRule Rule, HolidayLists Lists, ObservanceRule? Observance);
