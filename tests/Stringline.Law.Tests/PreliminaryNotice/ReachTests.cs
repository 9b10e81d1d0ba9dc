using Stringline.Law.Counting;
using Stringline.Law.PreliminaryNotice;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PreliminaryNotice;

public sealed class ReachTests
{
    private static readonly Reach Late = new(ReachKind.Late, new DaySpan(Day("2026-07-08"), Day("2026-07-11")),
        new DaySpan(Day("2026-07-28"), Day("2026-07-31")), [], false);

    [Theory]
    [InlineData("2026-07-07", false, false)]
    [InlineData("2026-07-08", false, true)]
    [InlineData("2026-07-10", false, true)]
    [InlineData("2026-07-11", true, true)]
    [Proves("Civ. Code § 8204(a)")]
    public void Between_the_two_look_back_days_work_is_within_reach_on_one_reading_only(string day, bool surely, bool maybe)
    {
        Assert.Equal(surely, Late.CertainlyCovers(Day(day)));
        Assert.Equal(maybe, Late.PossiblyCovers(Day(day)));
    }

    [Fact]
    public void Work_of_an_unknown_day_may_be_covered_by_a_late_notice_but_surely_is_not()
    {
        Assert.False(Late.CertainlyCovers(null));
        Assert.True(Late.PossiblyCovers(null));
    }

    [Theory]
    [InlineData(ReachKind.NoneDue)]
    [InlineData(ReachKind.Whole)]
    public void Where_the_notice_is_whole_or_none_is_due_everything_is_covered(ReachKind kind)
    {
        var reach = new Reach(kind, null, null, [], false);
        Assert.True(reach.CertainlyCovers(null));
        Assert.True(reach.CertainlyCovers(Day("1999-01-01")));
        Assert.True(reach.PossiblyCovers(Day("1999-01-01")));
    }
}
