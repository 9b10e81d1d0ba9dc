using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Reasoning;

public sealed class AssumptionsTests
{
    private static string[] Of(JobBuilder job, string asOf = "2026-06-01") =>
        [.. (job.On(asOf).Find("assumptions")?.Why ?? []).Select(w => w.Text)];

    [Fact]
    public void A_full_file_takes_nothing_for_granted() =>
        Assert.Empty(Of(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 10m)
            .Add(i => new LenderSought { Index = i, On = JobBuilder.When("2026-03-02") })));

    [Fact]
    public void What_is_left_out_undated_or_old_is_said()
    {
        var said = Of(new JobBuilder().Furnished("2010-03-02", 10m).Furnished("?", 10m).Paid("2026-07-01", 5m));
        Assert.Contains(said, t => t.StartsWith("1 entry begins after", StringComparison.Ordinal));
        Assert.Contains(said, t => t.StartsWith("1 entry has no known day", StringComparison.Ordinal));
        Assert.Contains(said, t => t.Contains("2012-07-01", StringComparison.Ordinal));
        var two = Of(new JobBuilder().Furnished("?", 10m).Furnished("?", 10m).Paid("2026-07-01", 5m).Paid("2026-07-01", 5m));
        Assert.Contains(two, t => t.StartsWith("2 entries begin after", StringComparison.Ordinal));
        Assert.Contains(two, t => t.StartsWith("2 entries have no known day", StringComparison.Ordinal));
    }

    [Fact]
    public void A_silent_use_of_the_site_is_said() =>
        Assert.Contains(Of(new JobBuilder().Work(w => w with { Use = null })), t =>
            t.Contains("whether the owner lives there", StringComparison.Ordinal));

    [Fact]
    public void The_whole_price_taken_for_unpriced_work_is_said() =>
        Assert.Contains(Of(new JobBuilder().Price(100m).Furnished("2026-03-02")), t =>
            t.Contains("the whole price", StringComparison.Ordinal));

    [Fact]
    public void No_lender_named_where_the_owner_hired_is_said() =>
        Assert.Contains(Of(new JobBuilder().Role(ClaimantRole.Supplier, "owner")), t =>
            t.Contains("no construction lender", StringComparison.Ordinal));

    // No copy of a recorded notice is due to anybody on public work, no construction lender takes part, and the United States are under
    // none of it.
    [Theory]
    [InlineData(WorkKind.Private, true)]
    [InlineData(WorkKind.Public, false)]
    [InlineData(WorkKind.Federal, false)]
    public void Home_and_lender_are_taken_for_granted_on_private_work_only(WorkKind kind, bool said)
    {
        var job = new JobBuilder().Role(ClaimantRole.Supplier, "owner").Work(w => w with { Use = null, Kind = kind })
            .Furnished("2026-03-02", 10m);
        Assert.Equal(said, Of(job).Any(t => t.Contains("whether the owner lives there", StringComparison.Ordinal)));
        Assert.Equal(said, Of(job).Any(t => t.Contains("no construction lender", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(WorkKind.Private, "Civ. Code § 8430(a)")]
    [InlineData(WorkKind.Public, "Civ. Code § 9352(c)")]
    [InlineData(WorkKind.Federal, "40 U.S.C. § 3133(b)(1)")]
    public void What_is_assumed_of_unpriced_work_cites_the_section_of_its_kind(WorkKind kind, string section)
    {
        static IEnumerable<string> Sections(JobBuilder job) =>
            job.Add(i => new LenderSought { Index = i, On = JobBuilder.When("2026-03-02") }).On("2026-06-01").Get("assumptions").Sections;
        Assert.Equal([section], Sections(new JobBuilder().Work(w => w with { Kind = kind }).Price(100m).Furnished("2026-03-02")));
        Assert.Equal([section],
            Sections(new JobBuilder().Work(w => w with { Kind = kind }).Furnished("2026-03-02").Furnished("2026-03-03", 10m)));
    }

    [Fact]
    public void Several_entries_are_told_as_several() =>
        Assert.Contains(Of(new JobBuilder().Paid("2026-07-01", 5m).Paid("2026-07-02", 5m)), t =>
            t.StartsWith("2 entries begin after", StringComparison.Ordinal));

    [Fact]
    public void That_facts_are_older_than_the_sections_is_said_where_the_Civil_Code_governs() =>
        Assert.DoesNotContain(Of(new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Furnished("2010-03-02", 10m)),
            t => t.Contains("2012-07-01", StringComparison.Ordinal));

    [Fact]
    public void The_caution_goes_with_every_answer() =>
        Assert.StartsWith("Not legal advice.", Assessment.Caution, StringComparison.Ordinal);
}
