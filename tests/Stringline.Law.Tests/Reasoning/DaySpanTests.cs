using Stringline.Law.Counting;
using Stringline.Law.Facts;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Reasoning;

public sealed class DaysTests
{
    [Fact]
    public void The_later_of_two_days_in_doubt_is_later_end_by_end()
    {
        var a = new DaySpan(Day("2026-03-01"), Day("2026-03-31"));
        var b = new DaySpan(Day("2026-03-10"), Day("2026-03-12"));
        Assert.Equal(new DaySpan(Day("2026-03-10"), Day("2026-03-31")), DaySpan.Later(a, b));
        Assert.Equal(DaySpan.Later(a, b), DaySpan.Later(b, a));
    }

    [Theory]
    [InlineData("2026-03-02", "2026-03-02 (Mon)")]
    [InlineData("2026-03-01..2026-03-10", "between 2026-03-01 (Sun) and 2026-03-10 (Tue)")]
    public void A_day_is_written_with_its_weekday_and_a_doubt_with_both_ends(string fact, string words) =>
        Assert.Equal(words, DaySpan.Of(When(fact))!.Value.ToString());

    [Fact]
    public void An_unknown_day_has_no_days() => Assert.Null(DaySpan.Of(When("?")));

    [Fact]
    public void Moved_days_keep_their_width() =>
        Assert.Equal(new DaySpan(Day("2026-03-21"), Day("2026-03-30")), DaySpan.Of(When("2026-03-01..2026-03-10"))!.Value.Plus(20));

    [Fact]
    public void A_span_that_ends_before_it_begins_is_refused() =>
        Assert.Throws<ArgumentException>(() => new DayFact.Between(Day("2026-03-02"), Day("2026-03-01")));
}
