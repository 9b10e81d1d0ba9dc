using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Law.Tests.Counting.Days;

namespace Stringline.Law.Tests.Counting;

/// <summary>
/// How readings of a last day become a band, a day to plan on and a standing. The days are made up; the closed ones are those of
/// OpenDaysTests.
/// </summary>
public sealed class DeadlineTests
{
    private static NumberRow SixMonths { get; } = NumberTable.Shipped.On(Number.SueOnReleaseBond, new LocalDate(2026, 1, 1));

    private static readonly Reading Early = new($"early", Day("2026-06-24"));
    private static readonly Reading AlsoEarly = new($"also early", Day("2026-06-24"));
    private static readonly Reading Middle = new($"middle", Day("2026-06-26"));

    // Saturday and Independence Day; by Code Civ. Proc. § 12a it would roll to Monday 6 July.
    private static readonly Reading Late = Deadline.Own($"late", Day("2026-07-04"), OpenDays.Statutory);

    public static TheoryData<Reading[], Reading[]> Orders => new()
    {
        { [], [] },
        { [Middle], [Middle] },
        { [Early, Middle, Late], [Early, Middle, Late] },
        { [Late, Middle, Early], [Early, Middle, Late] },
        { [Early, Late, Middle], [Early, Middle, Late] },
        { [Middle, Early], [Early, Middle] },
        { [Early, AlsoEarly], [AlsoEarly, Early] }, // one day: by name, so that the order of entries changes nothing
        { [AlsoEarly, Early], [AlsoEarly, Early] },
        { [Middle, Middle], [Middle] }, // said twice
        { [Early, Middle, Early], [Early, Middle] },
    };

    [Theory]
    [MemberData(nameof(Orders))]
    public void A_finding_holds_every_reading_once_earliest_first(Reading[] given, Reading[] expected)
    {
        var finding = Made(given);

        Assert.Equal(expected, finding.Readings);
        Assert.Equal(expected, Deadline.Sorted(given));
        Assert.True(finding.IsDeadline);
    }

    [Fact]
    public void The_band_runs_from_the_earliest_reading_to_the_latest_and_has_no_end_where_none_is_known()
    {
        Assert.Equal(new Band(Early, Late), Made([Late, Early]).Band);
        Assert.Equal(new Band(Early, null), Made([Late, Early], endKnown: false).Band);
        Assert.Null(Made([]).Band);
        Assert.Null(Made([]).ActBy);
    }

    [Theory]
    [InlineData("2026-06-24", "2026-06-24")] // Wednesday
    [InlineData("2026-07-04", "2026-07-02")] // Saturday; Friday the courts observe the holiday
    [InlineData("2026-10-12", "2026-10-09")] // Columbus Day, a State holiday only
    public void One_plans_on_the_earliest_reading_moved_back_to_an_open_day(string earliest, string actBy)
    {
        var first = new Reading($"first", Day(earliest));
        var then = new Reading($"then", Day(earliest).PlusDays(30));

        Assert.Equal(Day(actBy), Deadline.ActByOf([then, first], OpenDays.Statutory));
        Assert.Equal(Day(actBy), Made([then, first]).ActBy);
        Assert.Equal(Day(actBy), Deadline.ActByOf([first], OpenDays.Statutory));
    }

    [Theory]
    // Nothing done: open through the earliest reading, lost after the argument for a roll of the latest one.
    [InlineData("2026-06-24", null, true, Standing.Open)]
    [InlineData("2026-06-25", null, true, Standing.InDoubt)]
    [InlineData("2026-07-06", null, true, Standing.InDoubt)]
    [InlineData("2026-07-07", null, true, Standing.Lost)]
    [InlineData("2026-07-07", null, false, Standing.InDoubt)]
    // Done: kept if within the shortest reading, whatever the day of asking.
    [InlineData("2026-08-01", "2026-06-24", true, Standing.Kept)]
    [InlineData("2026-08-01", "2026-06-25", true, Standing.InDoubt)]
    [InlineData("2026-08-01", "2026-07-06", true, Standing.InDoubt)]
    [InlineData("2026-08-01", "2026-07-07", true, Standing.Lost)]
    [InlineData("2026-08-01", "2026-07-07", false, Standing.InDoubt)]
    public void A_deadline_stands_by_its_shortest_reading_and_is_lost_by_its_longest(string asOf, string? done, bool endFirm,
        Standing expected)
    {
        Reading[] readings = [Late, Early];
        Law.Counting.DaySpan? day = done is null ? null : new Law.Counting.DaySpan(Day(done), Day(done));

        Assert.Equal(expected, Deadline.StandingOf(Day(asOf), readings, day, endFirm));
    }

    [Fact]
    public void An_act_on_a_day_in_doubt_is_kept_only_if_its_last_day_was_in_time_and_lost_only_if_its_first_was_late()
    {
        Reading[] readings = [Early, Middle];

        Assert.Equal(Standing.Kept, Deadline.StandingOf(Day("2026-08-01"), readings, new(Day("2026-06-20"), Day("2026-06-24"))));
        Assert.Equal(Standing.InDoubt, Deadline.StandingOf(Day("2026-08-01"), readings, new(Day("2026-06-20"), Day("2026-06-27"))));
        Assert.Equal(Standing.InDoubt, Deadline.StandingOf(Day("2026-08-01"), readings, new(Day("2026-06-26"), Day("2026-06-30"))));
        Assert.Equal(Standing.Lost, Deadline.StandingOf(Day("2026-08-01"), readings, new(Day("2026-06-27"), Day("2026-06-30"))));
    }

    [Fact]
    public void The_roll_is_shown_beside_a_last_day_only_where_there_is_one()
    {
        Assert.Equal(Day("2026-07-06"), Late.Rolled);
        Assert.Null(Deadline.Own($"open day", Day("2026-06-24"), OpenDays.Statutory).Rolled);
    }

    [Fact]
    public void Six_months_are_counted_in_days_too_where_that_gives_another_day()
    {
        // 1 January to 1 July is 181 days in a common year and 182 in a leap year (Gov. Code §§ 6803, 6804).
        Assert.Equal([Day("2027-07-02"), Day("2027-07-01")],
            Deadline.Months($"six months", Day("2027-01-01"), SixMonths, OpenDays.Statutory).Select(r => r.Day));
        Assert.Equal([Day("2028-07-01")], Deadline.Months($"six months", Day("2028-01-01"), SixMonths, OpenDays.Statutory)
            .Select(r => r.Day));
    }

    private static Finding Made(Reading[] readings, bool endKnown = true) =>
        Deadline.Of(Standing.Open, readings, OpenDays.Statutory, endKnown: endKnown).Finding("id", "title", []);

    // Thursday 24 April 2025 is a holiday of Gov. Code § 6700 on which the courts sit: Civ. Code §§ 7, 10 pass over it,
    // Code Civ. Proc. § 12a does not. Labor Day, Monday 7 September 2026, is on both lists.
    [Theory]
    [InlineData("2025-04-24", "2025-04-25", "2025-04-24")]
    [InlineData("2026-10-12", "2026-10-13", "2026-10-12")]
    [InlineData("2026-09-06", "2026-09-08", "2026-09-08")]
    [InlineData("2026-09-05", "2026-09-08", "2026-09-05")]
    [InlineData("2026-03-01", "2026-03-02", "2026-03-02")]
    [InlineData("2026-03-03", null, "2026-03-03")]
    [Proves("Civ. Code § 7")]
    public void The_argument_for_a_roll_goes_as_far_as_any_list_and_is_sure_only_as_far_as_both(string last, string? rolled, string onBoth)
    {
        Assert.Equal(rolled is null ? null : Day(rolled), Deadline.Own($"ninety days", Day(last), OpenDays.Statutory).Rolled);
        Assert.Equal(Day(onBoth), OpenDays.Statutory.RollForwardOnBothLists(Day(last)));
    }
}
