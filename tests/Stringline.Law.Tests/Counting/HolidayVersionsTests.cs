using Stringline.Law.Counting;
using Stringline.Law.Sources;
using static Stringline.Law.Tests.Counting.Days;

namespace Stringline.Law.Tests.Counting;

/// <summary>From when until when a holiday stands on which list. Source beside each row: the bill that changed it.</summary>
public sealed class HolidayVersionsTests
{
    [Theory]
    [InlineData("2022-06-20", false, false, "Juneteenth: not before Stats. 2022 ch. 753, in force 1 January 2023 (Monday after a Sunday)")]
    [InlineData("2023-06-19", true, true, "Juneteenth: Stats. 2022 ch. 753")]
    [InlineData("2014-09-26", false, false, "Native American Day: not before Stats. 2014 ch. 537, in force 1 January 2015")]
    [InlineData("2015-09-25", true, false, "Native American Day: Stats. 2014 ch. 537; no court roll claimed before 2022")]
    [InlineData("2017-09-22", true, false, "Native American Day: the fourth of five Fridays")]
    [InlineData("2017-09-29", false, false, "Native American Day: the fifth Friday is none")]
    [InlineData("2021-09-24", true, false, "Native American Day: the last one before Stats. 2021 ch. 283")]
    [InlineData("2022-09-23", true, true, "Native American Day: Stats. 2021 ch. 283")]
    [InlineData("2021-10-11", true, true, "Columbus Day: the last judicial one before Stats. 2021 ch. 283")]
    [InlineData("2022-10-10", true, false, "Columbus Day: excepted by Stats. 2021 ch. 283")]
    [InlineData("2020-04-24", false, false, "24 April: not before 1 January 2023")]
    [InlineData("2023-04-24", true, false, "24 April: in force 1 January 2023, excepted by Code Civ. Proc. § 135")]
    [InlineData("2021-02-12", true, true, "Lincoln Day, also the new year of the moon in 2021")]
    [InlineData("2022-02-01", false, false, "Lunar New Year (from memory): not before Stats. 2022 ch. 792, in force 1 January 2023")]
    [InlineData("2025-01-29", true, false, "Lunar New Year: Stats. 2022 ch. 792, excepted by Code Civ. Proc. § 135")]
    [InlineData("2025-10-20", false, false, "Diwali (from memory): not before Stats. 2025 ch. 358, in force 1 January 2026")]
    [InlineData("2027-10-29", true, false, "Diwali: Stats. 2025 ch. 358, excepted by Code Civ. Proc. § 135")]
    [InlineData("1985-01-21", false, false, "Dr. Martin Luther King, Jr. Day: not before 1986 (from memory)")]
    [InlineData("1986-01-20", true, true, "Dr. Martin Luther King, Jr. Day: from 1986 (from memory)")]
    [InlineData("2000-03-31", false, false, "31 March: not before 2001 (from memory)")]
    [InlineData("2005-03-31", true, true, "31 March")]
    [InlineData("2026-03-31", true, true, "31 March, as renamed in 2026")]
    [InlineData("2026-09-09", true, false, "Admission Day: excepted by Code Civ. Proc. § 135")]
    [InlineData("2026-04-03", false, false, "Good Friday: no full day (Code Civ. Proc. § 135)")]
    [InlineData("2026-11-27", false, true, "Day after Thanksgiving: Code Civ. Proc. § 135 only")]
    public void A_weekday_is_on_the_lists_its_year_says(string day, bool state, bool courts, string source)
    {
        Assert.True(state == OpenDays.Statutory.IsStateHoliday(Day(day)), source);
        Assert.True(courts == OpenDays.Statutory.IsCourtHoliday(Day(day)), source);
    }

    [Theory]
    [InlineData("2023-01-02", true, true, "New Year's Day on Sunday: § 6701 and rule 1.11")]
    [InlineData("2024-09-09", true, false, "Admission Day itself, Monday")]
    [InlineData("2029-09-10", true, false, "Admission Day on Sunday: § 6701 only")]
    [InlineData("2023-09-08", false, false, "Admission Day on Saturday: no rule moves it")]
    [InlineData("2026-07-03", false, true, "Independence Day on Saturday: rule 1.11 only")]
    [InlineData("2023-11-10", true, true, "Veterans Day on Saturday: § 6701 and rule 1.11")]
    [InlineData("2028-02-11", false, true, "Lincoln Day on Saturday: rule 1.11 only")]
    [InlineData("2033-06-20", true, true, "Juneteenth on Sunday: rule 1.11; § 6701 taken to move it, not read")]
    [InlineData("2033-04-25", true, false, "24 April on Sunday: § 6701 taken to move it, not read")]
    [InlineData("2026-11-09", false, false, "Diwali on Sunday: not among the days § 6701 moves")]
    public void A_holiday_on_a_weekend_closes_the_weekday_its_rule_names(string day, bool state, bool courts, string source)
    {
        Assert.True(state == OpenDays.Statutory.IsStateHoliday(Day(day)), source);
        Assert.True(courts == OpenDays.Statutory.IsCourtHoliday(Day(day)), source);
    }

    /// <summary>
    /// A walk over every day from 2000 to 2040. It proves that no two versions of one holiday meet on a day, that a holiday
    /// once on a list stays on it every year with no gap, and that lists change only in the years named below.
    /// It does NOT check that any holiday is on the right day, nor that a year named below is the right one: other tests do.
    /// </summary>
    [Fact]
    public void No_version_of_a_holiday_is_missing_or_doubled_on_a_walk_from_2000_to_2040()
    {
        var years = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        foreach (var day in OfYears(2000, 2040))
        {
            foreach (var list in (HolidayLists[])[HolidayLists.State, HolidayLists.Courts])
            {
                foreach (var sameHoliday in CaliforniaHolidays.On(day).Where(holiday => holiday.Lists.HasFlag(list))
                    .GroupBy(holiday => holiday.Rule.Id))
                {
                    var kept = Assert.Single(sameHoliday);
                    if (kept.Observance is not null)
                        continue;
                    var key = $"{kept.Rule.Id} {list}";
                    if (!years.TryGetValue(key, out var seen))
                        years.Add(key, seen = []);
                    Assert.False(seen.Contains(day.Year), $"{key} falls twice in {day.Year}.");
                    seen.Add(day.Year);
                }
            }
        }

        foreach (var (key, seen) in years)
            Assert.True(seen[^1] - seen[0] + 1 == seen.Count, $"{key} has a gap between {seen[0]} and {seen[^1]}.");

        // What does not run through from 2000 to 2040.
        Assert.Equal(
            [
                "columbus Courts 2000-2021",
                "diwali State 2026-2035",
                "genocide-remembrance State 2023-2040",
                "juneteenth Courts 2023-2040",
                "juneteenth State 2023-2040",
                "lunar-new-year State 2023-2035",
                "march-31 Courts 2001-2040",
                "march-31 State 2001-2040",
                "native-american Courts 2022-2040",
                "native-american State 2015-2040",
            ],
            years.Where(pair => pair.Value.Count != 41).Select(pair => $"{pair.Key} {pair.Value[0]}-{pair.Value[^1]}"));

        // And what does: every other holiday of Gov. Code § 6700(a) on the State's list, and of Code Civ. Proc. § 135 on the courts'.
        Assert.Equal(
            [
                "admission State", "christmas Courts", "christmas State", "columbus State", "day-after-thanksgiving Courts",
                "independence Courts", "independence State", "king Courts", "king State", "labor Courts", "labor State",
                "lincoln Courts", "lincoln State", "memorial Courts", "memorial State", "new-year Courts", "new-year State",
                "presidents Courts", "presidents State", "thanksgiving Courts", "thanksgiving State", "veterans Courts", "veterans State",
            ],
            years.Where(pair => pair.Value.Count == 41).Select(pair => pair.Key));
    }

    [Fact]
    public void Versions_of_one_holiday_never_govern_the_same_year()
    {
        foreach (var versions in CaliforniaHolidays.Rules.GroupBy(rule => rule.Id))
        {
            for (var year = OpenDays.FirstYear; year <= OpenDays.LastYear; year++)
                Assert.True(versions.Count(rule => rule.Governs(year)) <= 1, $"{versions.Key} has two versions in {year}.");
        }
    }

    [Fact]
    public void Every_row_cites_a_section_and_what_is_not_read_says_why()
    {
        Assert.All(CaliforniaHolidays.Rules, rule => Assert.Matches("§", rule.Section));
        Assert.All(CaliforniaHolidays.Observances, rule => Assert.Matches("§|rule 1\\.11", rule.Section));
        Assert.All(CaliforniaHolidays.Rules.Where(rule => rule.Sure != Sure.Read), rule => Assert.NotEmpty(rule.Note));
        Assert.All(CaliforniaHolidays.Observances.Where(rule => rule.Sure != Sure.Read), rule => Assert.NotEmpty(rule.Note));
        var ids = CaliforniaHolidays.Rules.Select(rule => rule.Id).ToHashSet();
        Assert.All(CaliforniaHolidays.Observances.SelectMany(rule => rule.Only ?? []), id => Assert.Contains(id, ids));
    }
}
