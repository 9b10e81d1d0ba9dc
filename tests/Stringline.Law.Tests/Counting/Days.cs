using NodaTime.Text;

namespace Stringline.Law.Tests.Counting;

/// <summary>How days are written in these tests.</summary>
internal static class Days
{
    /// <summary>A day from its ISO text; any other text fails the test.</summary>
    public static LocalDate Day(string iso) => LocalDatePattern.Iso.Parse(iso).Value;

    /// <summary>Every day from the first to the last, both included.</summary>
    public static IEnumerable<LocalDate> From(LocalDate first, LocalDate last)
    {
        for (var day = first; day <= last; day = day.PlusDays(1))
            yield return day;
    }

    /// <summary>Every day of the years, both included.</summary>
    public static IEnumerable<LocalDate> OfYears(int first, int last) =>
        From(new LocalDate(first, 1, 1), new LocalDate(last, 12, 31));
}
