using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Licensing;

/// <summary>A license against days of the work that are in doubt: a gap bars only if it is there on every reading of these days.</summary>
public sealed class DaysOfTheWorkTests
{
    private static Finding License(JobBuilder work, params string[] spans) => work.Role(ClaimantRole.Subcontractor).Licensed(spans)
        .Claimant(c => c with { License = c.License! with { GoodFaith = false } }).On("2026-01-15").Get("license");

    // Bus. & Prof. Code § 7031(a): at all times during the performance. Begun between 1 and 10 August, ended between 15 and 25 October;
    // an earlier license, and no good faith, so that a sure gap is lost without a hearing ((e)).
    [Theory]
    [InlineData("2025-08-01..", Standing.Kept)]
    [InlineData("2025-08-02..", Standing.InDoubt)]
    [InlineData("2025-08-10..", Standing.InDoubt)]
    [InlineData("2025-08-11..", Standing.Lost)]
    [InlineData("2025-08-01..2025-10-25", Standing.Kept)]
    [InlineData("2025-08-01..2025-10-24", Standing.InDoubt)]
    [InlineData("2025-08-01..2025-10-15", Standing.InDoubt)]
    [InlineData("2025-08-01..2025-10-14", Standing.Lost)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void A_gap_is_sure_only_between_the_latest_first_day_and_the_earliest_last_day(string span, Standing expected)
    {
        var license = License(new JobBuilder().Furnished("2025-08-01..2025-08-10", 100m).Furnished("2025-10-15..2025-10-25", 100m),
            "2012-06-01..2020-05-31", span);
        Assert.Equal(expected, license.Standing);
        Assert.Equal(expected == Standing.InDoubt, license.Asks("On which day exactly did the work begin and end"));
    }

    // All the work was on one day from 1 to 10 August, or on two of these days: no day of them is surely one of the work, so the gap is
    // sure only where the license reaches none of the days on which all of it may have been done.
    [Theory]
    [InlineData("2012-06-01..2025-07-31", false, Standing.Lost)]
    [InlineData("2012-06-01..2025-08-01", false, Standing.InDoubt)]
    [InlineData("2012-06-01..2025-08-05", false, Standing.InDoubt)]
    [InlineData("2012-06-01..2025-08-10", false, Standing.Kept)]
    [InlineData("2025-08-10..2025-08-31", false, Standing.InDoubt)]
    [InlineData("2025-08-11..2025-08-31", false, Standing.Lost)]
    [InlineData("2012-06-01..2025-07-31 2025-08-11..2025-08-31", false, Standing.Lost)]
    [InlineData("2012-06-01..2020-05-31 2025-08-05..2025-08-05", false, Standing.InDoubt)]
    [InlineData("2012-06-01..2025-08-03", true, Standing.Lost)]
    [InlineData("2012-06-01..2025-08-04", true, Standing.InDoubt)]
    [InlineData("2025-08-07..2025-08-31", true, Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Work_of_a_single_day_in_doubt_is_barred_only_if_no_license_reaches_any_of_the_days(string spans, bool second,
        Standing expected)
    {
        var work = new JobBuilder().Furnished(second ? "2025-08-01..2025-08-07" : "2025-08-01..2025-08-10", 100m);
        if (second)
            work.Furnished("2025-08-04..2025-08-10", 100m);
        var license = License(work, spans.Split(' '));
        Assert.Equal(expected, license.Standing);
        if (expected == Standing.Lost)
            Assert.True(license.Says(second
                ? "on any day from 2025-08-04 (Mon) to 2025-08-07 (Thu)" : "on any day from 2025-08-01 (Fri) to 2025-08-10 (Sun)"));
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Work_of_one_known_day_names_that_day() =>
        Assert.True(License(new JobBuilder().Furnished("2025-08-05", 100m), "2012-06-01..2025-08-04")
            .Says("No license was active on 2025-08-05 (Tue), a day within the work; the bar"));

    // Bus. & Prof. Code § 7031(e): duly licensed before the performance, on some reading of its first day.
    [Theory]
    [InlineData("2025-08-10..2025-09-30", false)]
    [InlineData("2025-08-11..2025-09-30", true)]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void One_who_may_have_been_licensed_before_a_first_day_in_doubt_may_be_heard(string span, bool never)
    {
        var license = License(new JobBuilder().Furnished("2025-08-01..2025-08-10", 100m).Furnished("2025-10-20", 100m), span);
        Assert.Equal(never, license.Why.Any(w => w.Text.Contains("nor on any day before the work", StringComparison.Ordinal)));
        Assert.Equal(never, license.Why.Any(w => w.Text.Contains("MW Erectors", StringComparison.Ordinal)));
    }

    // The work stops on 10 October at the latest, after the last furnishing of the 1st: § 7031(a).
    [Theory]
    [InlineData("2025-10-05..2025-10-10", "2025-10-09", Standing.InDoubt, "after 2025-10-09")]
    [InlineData("2025-10-05..2025-10-10", "2025-10-10", Standing.Kept, null)]
    [InlineData("2025-10-01", "2025-10-01", Standing.Kept, null)]
    [InlineData("?", "2025-10-01", Standing.Kept, null)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void A_license_must_last_to_the_latest_day_on_which_the_work_may_have_ended(string ended, string licenseEnds, Standing expected,
        string? asked)
    {
        var license = License(new JobBuilder().Furnished("2025-08-05", 100m).Furnished("2025-10-01", 100m).Ended(ended),
            $"2012-06-01..{licenseEnds}");
        Assert.Equal(expected, license.Standing);
        Assert.True(asked is null || license.Asks(asked));
    }
}
