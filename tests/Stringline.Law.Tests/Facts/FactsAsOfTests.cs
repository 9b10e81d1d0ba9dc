using Stringline.Law.Counting;
using Stringline.Law.Facts;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Facts;

public sealed class FactsAsOfTests
{
    [Fact]
    public void Entries_that_begin_after_the_day_are_left_out_and_one_that_may_have_begun_stays()
    {
        var facts = new JobBuilder().Furnished("2026-03-02", 1m).Furnished("2026-03-03", 1m).Furnished("2026-03-01..2026-03-09", 1m)
            .Furnished("?", 1m).FactsOn("2026-03-02");
        Assert.Equal([1], facts.LeftOut.Select(e => e.Index));
        Assert.Equal([3, 2, 0], facts.Known.Select(e => e.Index));
    }

    [Fact]
    public void What_was_learned_later_was_not_known_then()
    {
        var job = new JobBuilder().Add(i =>
            new Completed { Index = i, On = When("2026-03-02"), By = CompletionTheory.Actual, Learned = Day("2026-04-01") });
        Assert.Empty(job.FactsOn("2026-03-31").Known);
        Assert.Single(job.FactsOn("2026-04-01").Known);
    }

    [Fact]
    public void A_replaced_entry_counts_no_more_once_its_replacement_is_known()
    {
        var job = new JobBuilder()
            .Add(i => new Furnished { Index = i, Id = "a", On = When("2026-03-02"), Until = When("2026-03-02"), Amount = 100m })
            .Add(i => new Furnished { Index = i, Supersedes = "a", On = When("2026-03-04"), Until = When("2026-03-04"), Amount = 90m,
                Learned = Day("2026-05-01") });
        Assert.Equal([100m], job.FactsOn("2026-04-30").Furnished.Select(f => f.Amount));
        Assert.Equal([90m], job.FactsOn("2026-05-01").Furnished.Select(f => f.Amount));
    }

    [Fact]
    public void A_withdrawn_entry_says_nothing_and_neither_does_its_withdrawal()
    {
        var job = new JobBuilder()
            .Add(i => new Furnished { Index = i, Id = "a", On = When("2026-03-02"), Until = When("2026-03-02"), Amount = 100m })
            .Add(i => new Withdrawn { Index = i, Supersedes = "a", On = When("2026-03-05") });
        Assert.Empty(job.FactsOn("2026-06-01").Known);
    }

    [Fact]
    public void First_and_last_furnishing_run_over_all_spans_and_are_unknown_where_one_is()
    {
        var job = new JobBuilder().Furnished("2026-03-02", until: "2026-05-01").Furnished("2026-03-01..2026-03-20").Furnished("2026-04-06");
        var facts = job.FactsOn("2026-06-01");
        Assert.Equal(new DaySpan(Day("2026-03-01"), Day("2026-03-02")), facts.FirstFurnished);
        Assert.Equal(new DaySpan(Day("2026-05-01"), Day("2026-05-01")), facts.LastFurnished);
        Assert.Null(job.Furnished("?").FactsOn("2026-06-01").FirstFurnished);
    }

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", true)]
    [InlineData(ClaimantRole.Supplier, "owner", true)]
    [InlineData(ClaimantRole.Supplier, "direct", false)]
    [InlineData(ClaimantRole.Subcontractor, "nobody", false)]
    public void Hired_by_the_owner_is_read_from_the_party(ClaimantRole role, string hiredBy, bool expected) =>
        Assert.Equal(expected, new JobBuilder().Role(role, hiredBy).FactsOn("2026-06-01").HiredByOwner);
}
