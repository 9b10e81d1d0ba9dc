using CsCheck;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Counting;

/// <summary>
/// What holds for every day and period. The checks are definitions of Code Civ. Proc. §§ 12 and 12a and Civ. Code § 10 restated, or
/// arithmetic.
/// </summary>
public sealed class TimeProperties
{
    private static readonly OpenDays County = OpenDays.ForCounty("Yolo",
        Enumerable.Range(0, 200).Select(i =>
            new CountyClosing("Yolo", new LocalDate(1995, 1, 2).PlusDays(i * 97), "made up", "none", new LocalDate(2026, 1, 1))));

    private static readonly Gen<LocalDate> AnyDay =
        Gen.Int[0, 55_000].Select(days => new LocalDate(1920, 1, 1).PlusDays(days)); // 1920 to 2070: the table and past it

    private static readonly Gen<OpenDays> AnyCalendar = Gen.Bool.Select(county => county ? County : OpenDays.Statutory);

    [Fact]
    public void The_table_answers_as_the_rows_do_on_every_day_from_1990_to_2050()
    {
        foreach (var day in Days.OfYears(1990, 2050))
        {
            var rows = CaliforniaHolidays.ListsOn(day);
            Assert.True(rows == OpenDays.Statutory.ListsOn(day), $"{day}: rows {rows}, table {OpenDays.Statutory.ListsOn(day)}");
            Assert.True(OpenDays.Statutory.IsOpen(day) == (OpenDays.Statutory.WhyClosed(day) is null), $"{day}: open and a reason at once");
        }
    }

    [Fact]
    public void The_table_answers_as_the_rows_do_at_both_its_ends()
    {
        foreach (var day in Days.OfYears(OpenDays.FirstYear - 1, OpenDays.FirstYear)
            .Concat(Days.OfYears(OpenDays.LastYear, OpenDays.LastYear + 1)))
            Assert.Equal(CaliforniaHolidays.ListsOn(day), OpenDays.Statutory.ListsOn(day));
    }

    [Fact]
    public void The_safe_day_is_the_last_open_day_not_after_the_day() =>
        Gen.Select(AnyCalendar, AnyDay).Sample((calendar, day) =>
        {
            var safe = calendar.LastOpenDayOnOrBefore(day);
            return safe <= day
                && calendar.IsOpen(safe)
                && safe.DayOfWeek is not (IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday)
                && !Days.From(safe.PlusDays(1), day).Any(calendar.IsOpen)
                && calendar.LastOpenDayOnOrBefore(safe) == safe;
        });

    [Fact]
    public void A_rolled_day_is_the_first_day_not_before_it_that_neither_courts_nor_county_close() =>
        Gen.Select(AnyCalendar, AnyDay).Sample((calendar, day) =>
        {
            var rolled = calendar.RollForward(day);
            bool Closed(LocalDate d) => calendar.IsCourtHoliday(d) || calendar.ListsOn(d).HasFlag(HolidayLists.County);
            return rolled >= day && !Closed(rolled) && Days.From(day, rolled.PlusDays(-1)).All(Closed);
        });

    [Fact]
    public void The_roll_on_any_list_is_never_before_the_roll_of_any_one_list() =>
        Gen.Select(AnyCalendar, AnyDay).Sample((calendar, day) =>
        {
            var stateRoll = day;
            while (calendar.IsStateHoliday(stateRoll))
                stateRoll = stateRoll.PlusDays(1);
            var any = calendar.RollForwardOnAnyList(day);
            return any >= calendar.RollForward(day) && any >= stateRoll && calendar.IsOpen(any);
        });

    [Fact]
    public void An_open_day_is_its_own_safe_day_and_rolls_nowhere() =>
        Gen.Select(AnyCalendar, AnyDay).Where((calendar, day) => calendar.IsOpen(day)).Sample((calendar, day) =>
            calendar.LastOpenDayOnOrBefore(day) == day && calendar.RollForward(day) == day && calendar.RollForwardOnAnyList(day) == day);

    [Fact]
    public void A_countys_closing_days_only_ever_add_closed_days() =>
        AnyDay.Sample(day =>
            (County.ListsOn(day) & ~HolidayLists.County) == OpenDays.Statutory.ListsOn(day)
            && County.LastOpenDayOnOrBefore(day) <= OpenDays.Statutory.LastOpenDayOnOrBefore(day)
            && County.RollForward(day) >= OpenDays.Statutory.RollForward(day));

    [Fact]
    public void Days_add_up() =>
        Gen.Select(AnyDay, Gen.Int[1, 800], Gen.Int[1, 800]).Sample((trigger, a, b) =>
            TimeLimit.LastDay(TimeLimit.LastDay(trigger, a), b) == TimeLimit.LastDay(trigger, a + b)
            && TimeLimit.LookBack(TimeLimit.LastDay(trigger, a), a) == trigger
            && TimeLimit.FirstDayAfter(trigger, a) == TimeLimit.LastDay(trigger, a + 1));

    [Fact]
    public void A_period_of_n_days_holds_n_days_after_its_trigger() =>
        Gen.Select(AnyDay, Gen.Int[1, 400]).Sample((trigger, n) =>
            Days.From(trigger.PlusDays(1), TimeLimit.LastDay(trigger, n)).Count() == n);

    [Fact]
    public void Six_months_end_first_no_later_than_they_end_last() =>
        AnyDay.Sample(trigger =>
        {
            var earliest = TimeLimit.SixMonthsAtTheEarliest(trigger);
            var latest = TimeLimit.SixMonthsAtTheLatest(trigger);
            var calendarMonths = TimeLimit.AddMonths(trigger, 6);
            return earliest <= calendarMonths && calendarMonths <= latest
                && earliest <= trigger.PlusDays(182) && trigger.PlusDays(182) <= latest
                && latest <= trigger.PlusDays(184); // the longest six months: March to September and the like
        });

    [Fact]
    public void Months_keep_the_day_or_end_the_month() =>
        Gen.Select(AnyDay, Gen.Int[1, 60]).Sample((trigger, months) =>
        {
            var end = TimeLimit.AddMonths(trigger, months);
            var monthsApart = ((end.Year - trigger.Year) * 12) + end.Month - trigger.Month;
            return monthsApart == months && (end.Day == trigger.Day || (end.Day < trigger.Day && end.PlusDays(1).Day == 1));
        });

    [Fact]
    public void Twelve_months_are_a_year() =>
        Gen.Select(AnyDay, Gen.Int[1, 12]).Sample((trigger, years) =>
            TimeLimit.AddYears(trigger, years) == TimeLimit.AddMonths(trigger, 12 * years));
}
