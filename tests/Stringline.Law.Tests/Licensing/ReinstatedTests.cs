using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Licensing;

/// <summary>A license put back after a lapse: by what it is judged, and what is asked where that is not settled.</summary>
public sealed class PutBackTests
{
    private static readonly (string Key, string Words)[] Questions =
    [
        ("why", "Why had the license lapsed"),
        ("by what", "By what was the license put back"),
        ("sent", "By 2025-11-25 it is in time"),
        ("beyond", "7125.1(b)"),
        ("days", "On which day exactly did the work begin and end"),
    ];

    // The work is from the first furnishing to the last; the license ran from 2012 to `ended`, was put back from 28 August 2025, and is
    // not said to be kept in bad faith.
    private static Finding License(string first, string last, string ended, string? goesOnTo, params LicenseSpan[] putBack) =>
        new JobBuilder()
        .Role(ClaimantRole.Subcontractor).Furnished(first, 100m).Furnished(last, 100m).Licensed($"2012-06-01..{ended}")
        .Claimant(c =>
            c with { License = c.License! with { GoodFaith =
                true, Active = [.. c.License.Active, .. putBack.Select(s => s with { To = goesOnTo is null ? s.To : Day(goesOnTo) })] } })
        .On("2026-01-15").Get("license");

    private static LicenseSpan Span(string putBack, LapseCause? cause, string? sent = null) =>
        new(Day("2025-08-28"), null, Day(putBack)) { Cause = cause, Sent = sent is null ? null : Day(sent) };

    private static string Asked(Finding license) => string.Join(", ", Questions.Where(q => license.Asks(q.Words)).Select(q => q.Key));

    // Expired on 27 August 2025: 90 days end on 25 November (Bus. & Prof. Code § 7141.5, by the postmark). A certificate effective on the
    // 28th: on 26 November (§ 7125.1(a), by the receipt; later for causes beyond control, (b)). Where the cause is not told, neither is
    // sure; what is late is asked about wherever the one or the other may still be shown to be in time.
    [Theory]
    [InlineData("2025-11-25", LapseCause.Renewal, null, "7141.5", "on 2025-11-25 (Tue), within 90 days", "")]
    [InlineData("2025-12-01", LapseCause.Renewal, "2025-11-20", "7141.5", "on 2025-11-20 (Thu), within 90 days", "")]
    [InlineData("2025-12-01", LapseCause.Renewal, "2025-11-26", "7141.5",
        "only on 2025-11-26 (Wed), after the 90 days that ended on 2025-11-25 (Tue)", "")]
    [InlineData("2025-11-24", LapseCause.Renewal, "2025-11-26", "7141.5",
        "had the renewal on 2025-11-24 (Mon), and that it was sent only on 2025-11-26 (Wed)", "")]
    [InlineData("2025-12-01", LapseCause.Renewal, null, "7141.5",
        "only on 2025-12-01 (Mon), after the 90 days that ended on 2025-11-25 (Tue)", "sent")]
    [InlineData("2025-11-26", LapseCause.Insurance, null, "7125.1(a)", "on 2025-11-26 (Wed), within 90 days", "")]
    [InlineData("2025-11-26", LapseCause.Insurance, "2025-11-01", "7125.1(a)", "on 2025-11-26 (Wed), within 90 days", "")]
    [InlineData("2025-12-01", LapseCause.Insurance, "2025-11-20", "7125.1(b)",
        "only on 2025-12-01 (Mon), after the 90 days that ended on 2025-11-26 (Wed)", "beyond")]
    [InlineData("2025-11-25", null, null, "7125.1(a)", "a renewal was in time by 2025-11-25 (Tue)", "why")]
    [InlineData("2025-11-26", null, null, "7125.1(a)", "a renewal was in time by 2025-11-25 (Tue)", "why, sent")]
    [InlineData("2025-12-01", null, "2025-11-25", "7125.1(a)", "a certificate of insurance by 2025-11-26 (Wed)", "why, beyond")]
    [InlineData("2025-11-27", null, null, "7125.1(a)", "a certificate of insurance by 2025-11-26 (Wed)", "why, sent, beyond")]
    [InlineData("2025-11-27", null, "2025-11-26", "7125.1(a)", "a certificate of insurance by 2025-11-26 (Wed)", "why, beyond")]
    [InlineData("2025-11-01", LapseCause.Other, null, "7125.1(a)", "from 2025-08-28 (Thu) on 2025-11-01 (Sat)", "by what")]
    [InlineData("2025-12-01", LapseCause.Other, null, "7125.1(a)", "from 2025-08-28 (Thu) on 2025-12-01 (Mon)", "by what, sent, beyond")]
    [InlineData("2025-12-01", LapseCause.Other, "2025-11-01", "7125.1(a)", "from 2025-08-28 (Thu) on 2025-12-01 (Mon)", "by what, beyond")]
    [Proves("Bus. & Prof. Code § 7141.5")]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void Each_cause_is_judged_by_its_own_section_day_and_90_days(string putBack, LapseCause? cause, string? sent, string section,
        string says, string asked)
    {
        var license = License("2025-08-05", "2025-10-20", "2025-08-27", null, Span(putBack, cause, sent));
        Assert.Contains(license.Why, w => w.Section == $"Bus. & Prof. Code § {section}" && w.Text.Contains(says, StringComparison.Ordinal));
        Assert.Equal(asked, Asked(license));
        Assert.All(license.Questions.Where(q => q.Text.StartsWith("Why had", StringComparison.Ordinal)), q => Assert.Equal(1, q.Days));
    }

    // A second lapse is judged alone: the first, put back in time, asks nothing.
    [Fact]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void What_was_put_back_in_time_asks_nothing_beside_what_was_not()
    {
        var inTime = new LicenseSpan(Day("2025-08-28"), Day("2025-09-10"), Day("2025-09-20")) { Cause = LapseCause.Renewal };
        var late = new LicenseSpan(Day("2025-09-11"), null, Day("2026-01-05")) { Cause = LapseCause.Insurance };
        Assert.Equal("beyond", Asked(License("2025-08-05", "2025-10-20", "2025-08-27", null, inTime, late)));
    }

    // Licensed only by what was put back: too late, and no day of the work is covered.
    [Theory]
    [InlineData("2025-11-26", Standing.Kept)]
    [InlineData("2025-11-27", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void A_license_that_was_never_anything_but_put_back_is_judged_the_same(string putBack, Standing expected)
    {
        var license = new JobBuilder().Role(ClaimantRole.Subcontractor).Furnished("2025-09-05", 100m).Licensed()
            .Claimant(c => c with { License = c.License! with { Active = [Span(putBack, LapseCause.Insurance)] } }).On("2026-01-15")
            .Get("license");
        Assert.Equal(expected, license.Standing);
    }

    // The days of the work are asked where they may matter: where some day that may be one of the work is uncovered on every reading of the
    // license put back.
    [Theory]
    [InlineData("2025-08-01..2025-08-10", "2025-10-15..2025-10-25", "2025-08-27", null, "why, sent")]
    [InlineData("2025-08-01..2025-08-10", "2025-10-15..2025-10-25", "2025-08-27", "2025-10-25", "why, sent")]
    [InlineData("2025-08-01..2025-08-10", "2025-10-15..2025-10-25", "2025-08-27", "2025-10-24", "why, sent, days")]
    [InlineData("2025-08-01..2025-08-10", "2025-10-15..2025-10-25", "2025-08-27", "2025-10-15", "why, sent, days")]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void The_days_of_the_work_are_asked_only_where_they_may_settle_it(string first, string last, string ended, string? goesOnTo,
        string asked)
    {
        var license = License(first, last, ended, goesOnTo, Span("2025-11-26", null));
        Assert.Equal(Standing.InDoubt, license.Standing);
        Assert.Equal(asked, Asked(license));
    }
}
