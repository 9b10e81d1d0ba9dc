using static Stringline.Law.Tests.Counting.Independent.OutsideCalendar;

namespace Stringline.Law.Tests.Counting.Independent;

/// <summary>
/// Source: date-holidays 3.37.0 (npm), a general-purpose calendar library, its region US-CA, type public; days copied by
/// make-csv.mjs into us-ca-holidays.csv, whose head names the license.
/// </summary>
public sealed class UsCaHolidaysTests
{
    /// <summary>The library moves 31 March off a Sunday but not off a Saturday; rule 1.11 does both.</summary>
    private static readonly string[] March31OnSaturday = ["2029-03-30", "2035-03-30"];

    /// <summary>
    /// The library counts the observance of Veterans Day as a bank day, not a public one; Gov. Code § 6701 and rule 1.11 move it.
    /// </summary>
    private static readonly string[] VeteransDayObserved = ["2028-11-10", "2029-11-12", "2034-11-10", "2035-11-12"];

    [Fact]
    public void The_courts_keep_the_librarys_days_for_California_and_those_it_lacks()
    {
        var listed = Rows("us-ca-holidays.csv").Select(row => Days.Day(row[0])).ToHashSet();

        Assert.True(listed.Count > 12 * 11, "the file holds fewer days than eleven holidays in twelve years");
        AssertDiffersOnlyOn(
            listed.Contains,
            onlyOutside: [],
            onlyHere: [.. LincolnDay, .. NativeAmericanDay, .. March31OnSaturday, .. VeteransDayObserved]);
    }
}
