using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Reasoning;

public sealed class AssumptionsTests
{
    private static string[] Of(JobBuilder job, string asOf = "2026-06-01") => [.. (job.On(asOf).Find("assumptions")?.Why ?? []).Select(w => w.Text)];

    [Fact]
    public void A_full_file_takes_nothing_for_granted() =>
        Assert.Empty(Of(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m)));

    [Fact]
    public void What_is_left_out_undated_or_old_is_said()
    {
        var said = Of(new JobBuilder().Furnished("2010-03-02", 10m).Furnished("?", 10m).Paid("2026-07-01", 5m));
        Assert.Contains(said, t => t.StartsWith("1 entries begin after", StringComparison.Ordinal));
        Assert.Contains(said, t => t.StartsWith("1 entries have no known day", StringComparison.Ordinal));
        Assert.Contains(said, t => t.Contains("2012-07-01", StringComparison.Ordinal));
    }

    [Fact]
    public void A_silent_use_of_the_site_is_said() =>
        Assert.Contains(Of(new JobBuilder().Work(w => w with { Use = null })), t => t.Contains("whether the owner lives there", StringComparison.Ordinal));

    [Fact]
    public void The_whole_price_taken_for_unpriced_work_is_said() =>
        Assert.Contains(Of(new JobBuilder().Price(100m).Furnished("2026-03-02")), t => t.Contains("the whole price", StringComparison.Ordinal));

    [Fact]
    public void No_lender_named_where_the_owner_hired_is_said() =>
        Assert.Contains(Of(new JobBuilder().Role(ClaimantRole.Supplier, "owner")), t => t.Contains("no construction lender", StringComparison.Ordinal));

    [Fact]
    public void The_caution_goes_with_every_answer() => Assert.StartsWith("Not legal advice.", Assessment.Caution, StringComparison.Ordinal);
}
