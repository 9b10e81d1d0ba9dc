namespace Stringline.Office.Tests;

public sealed class TodayTests
{
    /// <summary>
    /// California is UTC-8 in winter and UTC-7 in summer, from the second Sunday of March to the first of November (15 U.S.C. §§ 260a,
    /// 263).
    /// </summary>
    [Theory]
    [InlineData(2026, 1, 15, 7, 59, 2026, 1, 14)]
    [InlineData(2026, 1, 15, 8, 0, 2026, 1, 15)]
    [InlineData(2026, 7, 1, 6, 59, 2026, 6, 30)]
    [InlineData(2026, 7, 1, 7, 0, 2026, 7, 1)]
    public void The_day_changes_at_midnight_in_California(int year, int month, int day, int hour, int minute, int y, int m, int d) =>
        Assert.Equal(new LocalDate(y, m, d), Today.InCalifornia(new Stopped(Instant.FromUtc(year, month, day, hour, minute))));

    private sealed class Stopped(Instant at) : IClock
    {
        public Instant GetCurrentInstant() => at;
    }
}
