using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>The notice of demand and default, ten days before the claim is recorded, and the time to record.</summary>
public sealed class DefaultNoticeTests
{
    // Known 22 October 2025: day 90 is Tuesday 20 January 2026; ten days before is Saturday the 10th.
    [Theory]
    [InlineData("2025-12-01", Standing.Open)]
    [InlineData("2026-01-09", Standing.Open)]
    [InlineData("2026-01-10", Standing.InDoubt)]
    [InlineData("2026-01-11", Standing.Lost)]
    [Proves("Civ. Code § 8304(c)")]
    public void It_has_a_last_day_of_its_own(string asOf, Standing expected)
    {
        var last = Architect.Job().WillNotCommence("2025-10-22").On(asOf).Get("design-lien.demand-last-day");
        Assert.Equal(["2026-01-10"], last.DaysOf());
        Assert.Equal("2026-01-09", last.Plan());
        Assert.Equal(expected, last.Standing);
        Assert.Contains(last.Why, r => r.Section == "Civ. Code § 8304(c)");
    }

    // Known 22 September: day 90 is Sunday 21 December, so the recorder takes the claim on Friday the 19th; notice by the 9th. If the
    // Sunday rolls to Monday the 22nd, by the 12th.
    [Theory]
    [InlineData("2025-12-09", Standing.Open)]
    [InlineData("2025-12-10", Standing.InDoubt)]
    [InlineData("2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-13", Standing.Lost)]
    [Proves("Civ. Code § 8304(c)")]
    public void It_is_counted_back_from_the_last_day_on_which_the_recorder_is_open(string asOf, Standing expected)
    {
        var last = Architect.Job().WillNotCommence("2025-09-22").On(asOf).Get("design-lien.demand-last-day");
        Assert.Equal(["2025-12-09"], last.DaysOf());
        Assert.Equal(JobBuilder.Day("2025-12-12"), last.Readings[0].Rolled);
        Assert.Equal("2025-12-09", last.Plan());
        Assert.Equal(expected, last.Standing);
    }

    // Known 22 September as before: a notice of the 13th leaves no ten days before the last day to record, Monday 22 December by the roll.
    [Theory]
    [InlineData("2025-12-09", Standing.Open, Standing.Open)]
    [InlineData("2025-12-10", Standing.InDoubt, Standing.InDoubt)]
    [InlineData("2025-12-12", Standing.InDoubt, Standing.InDoubt)]
    [InlineData("2025-12-13", Standing.Lost, Standing.Lost)]
    [InlineData("2025-12-15", Standing.Lost, Standing.Lost)]
    [Proves("Civ. Code § 8304(c)")]
    public void With_no_time_left_for_it_there_is_no_lien_and_nothing_to_record(string asOf, Standing right, Standing record)
    {
        var on = Architect.Job().WillNotCommence("2025-09-22").On(asOf);
        Assert.Equal(right, on.Get("design-lien.right").Standing);
        Assert.Equal(record, on.Get("design-lien.last-day").Standing);
        Assert.Equal(right != Standing.Open, on.Get("design-lien.right").Says("and this needs it."));
    }

    // A bill that may have been the notice leaves it in doubt, and a claim recorded with none before it falls.
    [Theory]
    [InlineData(null, "2025-12-09", Standing.Open)]
    [InlineData(null, "2025-12-15", Standing.InDoubt)]
    [InlineData(false, "2025-12-15", Standing.Lost)]
    [InlineData(true, "2025-12-15", Standing.Open)]
    [Proves("Civ. Code § 8304(c)")]
    public void It_is_lost_only_where_no_demand_may_have_been_one(bool? ofDefault, string asOf, Standing expected) =>
        Assert.Equal(expected, Architect.Job().WillNotCommence("2025-09-22").DefaultNotice("2025-10-20", 24_000m, ofDefault).On(asOf)
            .Get("design-lien.right").Standing);

    [Fact]
    [Proves("Civ. Code § 8304(c)")]
    public void A_claim_recorded_without_it_creates_no_lien_once_it_cannot_be_given()
    {
        var job = Architect.Job().WillNotCommence("2025-09-22").Design("2025-11-07");
        Assert.Equal(Standing.InDoubt, job.On("2025-12-10").Get("design-lien.right").Standing);
        foreach (var id in (string[])["design-lien.right", "design-lien.last-day", "design-lien.enforcement-last-day"])
            Assert.Equal(Standing.Lost, job.On("2025-12-15").Get(id).Standing);
    }

    [Theory]
    [InlineData(true, 24_000, "", Standing.Kept, Standing.Open)]
    [InlineData(true, 24_000, "owner", Standing.Kept, Standing.Open)]
    [InlineData(null, 24_000, "", Standing.InDoubt, Standing.InDoubt)]
    [InlineData(true, 23_999, "", Standing.InDoubt, Standing.InDoubt)]
    [InlineData(null, 4_000, "", Standing.InDoubt, Standing.InDoubt)]
    [InlineData(false, 24_000, "", Standing.Open, Standing.NotYet)]
    [InlineData(true, 24_000, "bank", Standing.Open, Standing.NotYet)]
    [Proves("Civ. Code § 8304(c)")]
    public void Only_a_demand_to_the_landowner_that_states_the_default_and_its_amount_is_one(bool? ofDefault, int amount, string to,
        Standing last, Standing first)
    {
        var on = Architect.Job().Lender().WillNotCommence("2025-09-22").DefaultNotice("2025-10-20", amount, ofDefault, to.Length == 0
            ? [] : [to]).On("2025-12-01");
        Assert.Equal(last, on.Get("design-lien.demand-last-day").Standing);
        Assert.Equal(first, on.Get("design-lien.first-day").Standing);
        Assert.Equal(ofDefault is null, on.Get("design-lien.first-day").Asks("(payment-demanded.ofDefault)"));
        Assert.Equal(ofDefault is null, on.Get("design-lien.demand-last-day").Asks("(payment-demanded.ofDefault)"));
        Assert.Equal(first == Standing.NotYet, on.Get("design-lien.first-day").RuledOut("Civ. Code § 8304(c)"));
    }

    [Fact]
    [Proves("Civ. Code § 8304(c)")]
    public void Of_several_demands_the_first_that_is_one_counts()
    {
        var first = Architect.Job().PaymentDemanded("2025-04-01", 4_000m).DefaultNotice("2025-10-20", 24_000m)
            .DefaultNotice("2025-11-03", 24_000m).DefaultNotice("2025-11-10", 24_000m, false).On("2025-12-01").Get("design-lien.first-day");
        Assert.Equal(["2025-10-30"], first.DaysOf());
        Assert.Equal(Standing.Open, first.Standing);
    }

    // Demand 3 November: recording from the 13th. A claim of the 7th came four days after it.
    [Theory]
    [InlineData("2025-11-07", Standing.InDoubt)]
    [InlineData("2025-11-12", Standing.InDoubt)]
    [InlineData("2025-11-13", Standing.Kept)]
    [Proves("Civ. Code § 8304(c)")]
    public void A_claim_recorded_sooner_than_ten_days_after_it_is_recorded_anew(string recorded, Standing expected)
    {
        var on = Architect.Job().WillNotCommence("2025-09-22").DefaultNotice("2025-11-03", 24_000m).Design(recorded).On("2025-12-01");
        var last = on.Get("design-lien.last-day");
        // An action on it is worth no more than the claim.
        Assert.Equal(expected == Standing.Kept ? Standing.Open : Standing.InDoubt, on.Get("design-lien.enforcement-last-day").Standing);
        Assert.Equal(expected, last.Standing);
        Assert.Equal("2025-12-19", last.Plan());
        Assert.Equal(expected == Standing.InDoubt, last.Says("record anew while the time runs"));
    }

    [Fact]
    [Proves("Civ. Code § 8312")]
    public void Since_when_it_is_known_that_it_will_not_be_built_is_asked()
    {
        var on = Architect.Job().DefaultNotice("2025-10-20", 24_000m).On("2025-12-01");
        var last = on.Get("design-lien.last-day");
        Assert.Equal(Standing.NotYet, last.Standing);
        Assert.Null(last.ActBy);
        Assert.True(last.Asks("(work-will-not-commence)"));
        Assert.Null(on.Find("design-lien.demand-last-day"));
        Assert.Equal(Standing.Kept, Architect.Job().DefaultNotice("2025-10-20", 24_000m).Design("2025-11-07").On("2025-12-01")
            .Get("design-lien.last-day").Standing);
    }
}
