using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// The searches of the county index, told by the watch over it. A notice may be recorded in any county in which a part of the work is (Civ.
/// Code § 8060(b)), so of several counties the one searched least lately counts.
/// </summary>
public sealed class IndexSearchesTests
{
    private static JobBuilder Job(params string[] alsoIn) =>
        new JobBuilder().Notice("2026-01-05").Furnished("2026-01-05", 1m).Work(w => w with { Site = w.Site with { AlsoIn = alsoIn } });

    private static Finding Watch(JobBuilder job, string asOf = "2026-06-15") => job.On(asOf).Get("index-watch.next-day");

    // On a day in doubt the search may have been on the first of them, and what was recorded since would not have shown.
    [Theory]
    [InlineData("2026-06-01..2026-06-10", null, "2026-06-01")]
    [InlineData("2026-06-01..2026-06-10", "2026-06-04", "2026-06-04")]
    [InlineData("2026-06-01..2026-06-10", "2026-06-02..2026-06-03", "2026-06-02")]
    [InlineData("2026-06-01", "2026-06-08", "2026-06-08")]
    [InlineData("?", "2026-06-08", "2026-06-08")]
    [Proves("Civ. Code § 8060")]
    public void The_last_search_counts_from_the_first_day_on_which_it_can_have_been(string one, string? other, string counts)
    {
        var job = Job().IndexSearched(one);
        if (other is not null)
            job.IndexSearched(other);
        Assert.Equal(Watch(Job().IndexSearched(counts)).Plan(), Watch(job).Plan());
        Assert.True(Watch(job).Says($"Searched {LawText.Day(JobBuilder.Day(counts))}."));
    }

    // The site lies in Yolo and Solano.
    [Theory]
    [InlineData("2026-06-01..2026-06-12", "2026-06-08", "2026-06-01")]
    [InlineData("2026-06-08", "2026-06-01..2026-06-12", "2026-06-01")]
    [InlineData("2026-06-08..2026-06-09", "2026-06-10", "2026-06-08")]
    [InlineData("2026-06-10", "2026-06-08..2026-06-12", "2026-06-08")]
    [InlineData("2026-06-08..2026-06-12", "2026-06-10", "2026-06-08")]
    [Proves("Civ. Code § 8060")]
    public void Of_two_counties_the_earlier_of_their_last_searches_counts(string yolo, string solano, string counts)
    {
        var watch = Watch(Job("Solano").IndexSearched(yolo, "Yolo").IndexSearched(solano, "Solano"));
        Assert.Equal(Watch(Job().IndexSearched(counts)).Plan(), watch.Plan());
        Assert.True(watch.Says($"Searched {LawText.Day(JobBuilder.Day(counts))}."));
    }

    // Which county a search was of is asked only where there are several; on which day it was, wherever that is not told.
    [Theory]
    [InlineData(false, "2026-06-01", null, false, false)]
    [InlineData(false, "2026-06-01", "Yolo", false, false)]
    [InlineData(true, "2026-06-01", "Yolo", false, false)]
    [InlineData(true, "2026-06-01", null, true, false)]
    [InlineData(false, "?", null, false, true)]
    [InlineData(true, "?", "Yolo", false, true)]
    [InlineData(true, "?", null, true, true)]
    [InlineData(true, "2026-06-01..2026-06-03", "Solano", false, false)]
    [Proves("Civ. Code § 8060")]
    public void County_and_day_are_asked_only_where_they_are_wanting(bool several, string on, string? county, bool asksCounty, bool asksDay)
    {
        var watch = Watch((several ? Job("Solano") : Job()).IndexSearched(on, county));
        Assert.Equal(asksCounty ? [2] : [], watch.Corrected("(index-searched.county)"));
        Assert.Equal(asksDay ? [2] : [], watch.Corrected("(index-searched.on)"));
    }

    // A search on a day that is not told shows nothing of any day.
    [Theory]
    [InlineData(false, null, null, "search at once")]
    [InlineData(false, "?", null, "search at once")]
    [InlineData(false, "2026-06-01", "Solano", "search at once")]
    [InlineData(true, null, null, "of the index of Yolo and Solano")]
    [InlineData(true, "2026-06-01", null, "of the index of Yolo and Solano")]
    [InlineData(true, "2026-06-01", "Yolo", "of the index of Solano")]
    [InlineData(true, "2026-06-01", "Solano", "of the index of Yolo:")]
    [InlineData(true, "?", "Solano", "of the index of Yolo and Solano")]
    [Proves("Civ. Code § 8060")]
    public void The_counties_that_were_not_searched_are_named_where_there_are_several(bool several, string? on, string? county, string says)
    {
        var job = several ? Job("Solano") : Job();
        if (on is not null)
            job.IndexSearched(on, county);
        Assert.Equal("2026-06-15", Watch(job).Plan());
        Assert.True(Watch(job).Says($"The file shows no search yet{(several ? " " : ": ")}{says}"));
    }
}
