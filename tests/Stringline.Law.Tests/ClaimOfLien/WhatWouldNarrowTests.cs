using Stringline.Law.Facts;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>Which fact would narrow the band of the last day, and by how many days.</summary>
public sealed class WhatWouldNarrowTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Ended("2026-04-06");

    private static (string Text, int? Days)[] Asked(JobBuilder job, string asOf = "2026-06-01") =>
        [.. job.On(asOf).Get("claim-of-lien.last-day").Questions.Select(q => (q.Text, q.Days))];

    [Fact]
    public void One_certain_day_leaves_nothing_to_ask() => Assert.Empty(Asked(Job().Completed("2026-05-04")));

    // Completed 1 to 20 May: last day 30 July to 18 August. Known exactly, the band closes by its whole width of 19 days.
    [Fact]
    public void A_day_in_doubt_is_asked_for_with_the_width_of_its_band()
    {
        var only = Assert.Single(Asked(Job().Completed("2026-05-01..2026-05-20")));
        Assert.Contains("On which day exactly", only.Text, StringComparison.Ordinal);
        Assert.Equal(19, only.Days);
    }

    // Recorded 18 May, copy not known: 17 June if it counts, else 2 August. That it does not count moves the early end by 46 days.
    [Fact]
    public void A_copy_of_which_nothing_is_known_is_asked_for_with_the_days_it_moves()
    {
        var copy = Asked(Job().Completed("2026-05-04").OwnerRecorded("2026-05-18", states: "2026-05-04"))[0];
        Assert.Contains("owner's copy", copy.Text, StringComparison.Ordinal);
        Assert.Equal(46, copy.Days);
    }

    // Occupied 1 April (contested) against finished 4 May (certain): 30 June against 2 August, 33 days.
    [Fact]
    public void A_contested_reading_is_asked_about_with_the_days_it_costs()
    {
        var asked = Asked(Job().Completed("2026-05-04").Completed("2026-04-01", CompletionTheory.Occupation, contested: true));
        Assert.Contains(asked, q => q.Text.Contains("be ruled out", StringComparison.Ordinal) && q.Days == 33);
        Assert.Equal(asked.OrderByDescending(q => q.Days), asked);
    }

    // Recorded 18 May within 15 days of 4 May, and the copy came at once: 17 June if the notice is good, else 2 August. What it lacks is a
    // doubt that only the owner or a court settles; settled, it is asked no more.
    [Theory]
    [InlineData("verification", false, true)]
    [InlineData("verification", true, false)]
    [InlineData(null, false, false)]
    public void A_notice_that_lacks_something_is_asked_about_with_the_days_it_costs(string? lacks, bool held, bool asks)
    {
        var asked = Job().Completed("2026-05-04").OwnerRecorded("2026-05-18", states: "2026-05-04", lacks: lacks, heldIneffective: held)
            .OwnerToldUs("2026-05-18").On("2026-06-01").Get("claim-of-lien.last-day").Questions;
        var about = asked.Where(q => q.Text.Contains("(owner-recorded.heldIneffective)", StringComparison.Ordinal)).ToArray();
        Assert.Equal(asks ? 1 : 0, about.Length);
        if (!asks)
            return;
        Assert.Contains($"It lacks: {lacks}.", about[0].Text, StringComparison.Ordinal);
        Assert.Equal(46, about[0].Days);
        Assert.IsType<OwnerRecorded>(about[0].Corrects);
    }

    // The notice of cessation names one contract; Civ. Code § 8188 speaks of labor on the work as a whole. Stopped 2 March, recorded 6
    // April: complete that day if it is good for the whole, and 30 days end on 6 May; else complete 60 days after the stop, on 1 May, and
    // 90 days end on 30 July.
    [Fact]
    public void A_notice_of_cessation_for_one_contract_is_asked_about()
    {
        var asked = Job().LaborCeased("2026-03-02").OwnerRecorded("2026-04-06", OwnerNotice.Cessation, contractOf: "direct")
            .OwnerToldUs("2026-04-06", OwnerNotice.Cessation).On("2026-05-01").Get("claim-of-lien.last-day").Questions;
        var about = Assert.Single(asked, q => q.Text.Contains("(owner-recorded.contractOf)", StringComparison.Ordinal)
            && q.Text.Contains("speak of the whole work", StringComparison.Ordinal));
        Assert.True(about.Days > 0);
        Assert.IsType<OwnerRecorded>(about.Corrects);
        Assert.DoesNotContain(asked, q => q.Text.Contains("Until then its day stands", StringComparison.Ordinal));
    }

    // The file says 4 May for certain, the owner's notice another day: both days stand until it is settled which holds.
    [Theory]
    [InlineData("2026-05-11", true)]
    [InlineData("2026-05-04", false)]
    public void A_notice_that_states_another_day_than_the_file_is_asked_about(string states, bool asks)
    {
        var asked = Job().Completed("2026-05-04").OwnerRecorded("2026-05-18", states: states).OwnerToldUs("2026-06-30").On("2026-06-01")
            .Get("claim-of-lien.last-day").Questions;
        Assert.DoesNotContain(asked, q => q.Text.Contains("be ruled out", StringComparison.Ordinal));
        Assert.Equal(asks, asked.Any(q => q.Text.Contains("Until then its day stands beside that of the file", StringComparison.Ordinal)
            && q.Days > 0 && q.Corrects is OwnerRecorded));
    }

    // Recorded on 25 June, after the fifteenth day, the notice shortens nothing: whether a copy came is not asked, while the contested day
    // is.
    [Fact]
    public void What_moves_nothing_is_not_asked()
    {
        var asked = Asked(Job().Completed("2026-05-04").Completed("2026-04-27", CompletionTheory.Occupation, contested: true)
            .OwnerRecorded("2026-06-25", states: "2026-05-04"), "2026-07-01");
        Assert.DoesNotContain(asked, q => q.Text.Contains("owner's copy", StringComparison.Ordinal));
        Assert.All(asked.Where(q => q.Days is not null), q => Assert.True(q.Days > 0));
        Assert.Contains(asked, q => q.Text.Contains("be ruled out", StringComparison.Ordinal) && q.Days == 7);
    }

    // Contested 1 and 15 April, certain 4 May. The middle one carries neither end of the band; the certain one cannot be ruled out.
    [Fact]
    public void Only_what_moves_an_end_of_the_band_is_asked_and_a_certain_day_never()
    {
        var asked = Asked(Job().Completed("2026-05-04").Completed("2026-04-01", CompletionTheory.Occupation, contested: true)
            .Completed("2026-04-15", CompletionTheory.Cessation, contested: true));
        Assert.Contains("completion by occupation",
            Assert.Single(asked, q => q.Text.Contains("be ruled out", StringComparison.Ordinal)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_day_is_worth_asking_for()
    {
        var asked = Asked(Job().Completed("2026-05-04").Completed("2026-05-03", CompletionTheory.Occupation, contested: true));
        Assert.Equal(1, Assert.Single(asked, q => q.Text.Contains("be ruled out", StringComparison.Ordinal)).Days);
    }

    // Contested 20 and 21 April and 30 May: without the first the early end moves by a day, without the last the late end by 39, without
    // the middle one nothing moves.
    [Fact]
    public void What_moves_the_late_end_counts_too_and_what_moves_most_is_asked_first() =>
        Assert.Equal(
            [("occupation", 39), ("cessation", 1)],
            Asked(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1000m).Furnished("2026-04-20", 10m).Ended("2026-04-20")
                .Completed("2026-04-20", CompletionTheory.Cessation, contested: true).Completed("2026-04-21", contested: true)
                .Completed("2026-05-30", CompletionTheory.Occupation, contested: true))
            .Where(q => q.Text.Contains("be ruled out", StringComparison.Ordinal))
            .Select(q => (q.Text.Contains("occupation", StringComparison.Ordinal)
                ? "occupation" : q.Text.Contains("cessation", StringComparison.Ordinal) ? "cessation" : q.Text, q.Days!.Value)));
}
