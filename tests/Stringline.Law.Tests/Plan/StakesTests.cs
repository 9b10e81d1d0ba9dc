using CsCheck;
using Stringline.Law.Plan;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>What is owed and what a step can still save are two figures. Civ. Code § 8204(a): a late notice reaches back 20 days.</summary>
public sealed class StakesTests
{
    private static NextStep Notice(JobBuilder job, string asOf) =>
        job.On(asOf).Next.Single(step => step.Finding == "preliminary-notice.last-day");

    private static string Text(NextStep step) => step.Stakes!.Text(step.Finding);

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_that_reaches_nothing_furnished_so_far_still_says_what_is_owed() => Assert.Equal(
        "owed $6,210.10; a notice mailed today reaches $0.00 of it, and all later deliveries",
        Text(Notice(new JobBuilder().Furnished("2026-10-02", 4_310.55m).Furnished("2026-10-19", 2_210.10m).Credited("2026-10-25", 310.55m),
            "2026-11-29")));

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void A_notice_in_part_late_says_how_much_it_reaches() => Assert.Equal(
        "owed $9,500.00; a notice mailed today reaches $500.00 of it, and all later deliveries",
        Text(Notice(new JobBuilder().Furnished("2026-03-02", 9_000m).Furnished("2026-04-20", 500m), "2026-05-01")));

    [Fact]
    public void A_notice_in_time_reaches_all_of_it() => Assert.Equal(
        "owed $9,000.00; a notice mailed today reaches all of it, and all later deliveries",
        Text(Notice(new JobBuilder().Furnished("2026-03-02", 9_000m), "2026-03-10")));

    [Fact]
    public void A_claim_for_all_that_is_owed_says_so_once() => Assert.Equal(
        "owed $9,000.00, all of it at stake",
        Text(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 9_000m).On("2026-05-04").Next.First(step =>
            step.Finding == "claim-of-lien.last-day")));

    [Fact]
    public void The_agreed_price_stands_where_nothing_was_priced_yet()
    {
        Assert.Contains("agreed price $48,500.00", Text(Notice(new JobBuilder().Price(48_500m).Furnished("2026-03-02"), "2026-03-10")),
            StringComparison.Ordinal);
        Assert.Equal("no amount yet", new Stakes(null, null, null).Text("claim-of-lien.last-day"));
    }

    [Fact]
    public void No_step_shows_nothing_at_stake_without_saying_what_is_owed() => Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(Assessment.Of(job, day, OpenDays.Statutory).Next.Where(step => !step.Watch), step =>
        {
            Assert.NotNull(step.Stakes);
            Assert.Equal(step.AtStake, step.Stakes.Saves);
            Assert.Equal(step.AtStake is null, step.Stakes.Owed is null);
            Assert.NotEqual("$0.00", Text(step));
            Assert.False(step.AtStake == 0 && step.Stakes.Owed > 0 && !Text(step).Contains("owed $", StringComparison.Ordinal), Text(step));
        }),
        iter: 1000);
}
