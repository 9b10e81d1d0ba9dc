using Stringline.Law.Facts;

namespace Stringline.Office;

/// <summary>A job's head in words.</summary>
internal static class JobWords
{
    /// <summary>The site on one line: street, city, county.</summary>
    public static string Site(JobFile job)
    {
        var site = job.Work.Site;
        return string.Join(", ",
            ((string?[])[site.Street, site.City, site.County + " County"]).Where(part => !string.IsNullOrWhiteSpace(part)));
    }

    /// <summary>What a step's day is, seen from today: <c>3 days past</c>, <c>today</c>, <c>in 12 days</c>.</summary>
    public static string Away(LocalDate day, LocalDate today) => Period.DaysBetween(today, day) switch
    {
        0 => "today",
        1 => "tomorrow",
        -1 => "1 day past",
        < 0 and var past => $"{-past} days past",
        var days => $"in {days} days",
    };

    /// <summary>The day in California on which a change was written.</summary>
    public static LocalDate Written(Store.JournalRow row) => row.At.InZone(California).Date;

    private static readonly DateTimeZone California = DateTimeZoneProviders.Tzdb["America/Los_Angeles"];

    /// <summary>A number and its noun: <c>1 job</c>, <c>2 jobs</c>.</summary>
    public static string Count(long count, string one, string more) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{count:N0} {(count == 1 ? one : more)}");
}
