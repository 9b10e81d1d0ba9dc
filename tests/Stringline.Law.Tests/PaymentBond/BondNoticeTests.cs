using Stringline.Law.Facts;
using Stringline.Law.PaymentBond;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// Private work completed on Monday 4 May 2026, no preliminary notice: 75 days end on Saturday 18 July, which would roll to Monday
/// 20 July; the day to plan on is Friday 17 July.
/// </summary>
public sealed class BondNoticeTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier) =>
        new JobBuilder().Party("sub", PartyCapacity.Subcontractor, "Tamper & Screed Co.").Role(role, "sub").PaymentBond("2026-01-12")
        .Furnished("2026-03-02", 1000m).Ended("2026-04-06").Completed("2026-05-04").IndexSearched("2026-05-20");

    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("payment-bond.notice-last-day");

    [Theory]
    [InlineData("2026-07-18", Standing.InDoubt)]
    [InlineData("2026-07-20", Standing.InDoubt)]
    [InlineData("2026-07-21", Standing.Lost)]
    [Proves("Civ. Code § 8612(b)")]
    public void Without_a_recorded_notice_of_completion_it_is_due_within_75_days_after_completion(string asOf, Standing expected)
    {
        var notice = Notice(Job(), asOf);
        Assert.Equal([new Reading($"75 days after actual completion", JobBuilder.Day("2026-07-18"), JobBuilder.Day("2026-07-20"))],
            notice.Readings);
        Assert.Equal("2026-07-17", notice.Plan());
        Assert.Equal(expected, notice.Standing);
    }

    [Theory]
    [InlineData("2026-07-18", Standing.Kept)]
    [InlineData("2026-07-20", Standing.InDoubt)]
    [InlineData("2026-07-21", Standing.Lost)]
    [Proves("Civ. Code § 8612(b)")]
    public void Given_on_the_last_day_it_is_in_time(string given, Standing expected) =>
        Assert.Equal(expected, Notice(Job().BondNoticeGiven(given), "2026-10-01").Standing);

    // The fifteenth day after completion is 19 May; a notice recorded on the 20th has no effect for the lien. The section on the bond asks
    // only that one be recorded.
    [Theory]
    [InlineData("2026-05-04", "2026-05-19")]
    [InlineData("2026-05-19", "2026-06-03")]
    [InlineData("2026-05-20", "2026-06-04", "2026-07-18")]
    [Proves("Civ. Code § 8612(b)")]
    public void A_notice_of_completion_leaves_fifteen_days_and_a_late_one_the_75_beside_them(string recorded, params string[] lastDays) =>
        Assert.Equal(lastDays, Notice(Job().OwnerRecorded(recorded, states: "2026-05-04")).DaysOf());

    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    public void A_notice_of_cessation_is_not_named_and_shortens_nothing() =>
        Assert.Equal(["2026-07-18"], Notice(Job().LaborCeased("2026-04-10").OwnerRecorded("2026-05-11", OwnerNotice.Cessation)).DaysOf());

    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    public void A_notice_for_one_direct_contract_leaves_the_75_days_standing_beside_its_fifteen()
    {
        var job = Job().OwnerRecorded("2026-05-18", states: "2026-05-04", contractOf: "direct");
        Assert.Equal(["2026-06-02", "2026-07-18"], Notice(job).DaysOf());
        Assert.Equal(Standing.InDoubt, Notice(job, "2026-06-10").Standing);
    }

    [Theory]
    [InlineData("2026-03-22", Standing.Kept)]
    [InlineData("2026-03-23", Standing.Open)]
    [InlineData(null, Standing.Open)]
    [Proves("Civ. Code § 8612(a)")]
    public void A_preliminary_notice_that_reaches_everything_stands_in_for_it(string? preliminary, Standing expected)
    {
        var job = preliminary is null ? Job() : Job().Notice(preliminary);
        Assert.Equal(expected, Notice(job).Standing);
        Assert.Equal(expected == Standing.Kept, Notice(job).Readings.Count == 0);
    }

    // "Within 15 days after recordation of a notice of completion", whoever saw it; "if no notice of completion has been recorded", 75
    // days: until the index was searched after the day by which one could be recorded, 19 May, the shorter is planned on.
    [Theory]
    [InlineData(null, "2026-05-19", Standing.Open, new[] { "2026-05-19", "2026-06-03", "2026-07-18" })]
    [InlineData("2026-05-19", "2026-05-19", Standing.Open, new[] { "2026-05-19", "2026-06-03", "2026-07-18" })]
    [InlineData(null, "2026-05-20", Standing.InDoubt, new[] { "2026-05-19", "2026-06-03", "2026-07-18" })]
    [InlineData("2026-05-20", "2026-05-20", Standing.Open, new[] { "2026-07-18" })]
    [InlineData(null, "2026-07-21", Standing.Lost, new[] { "2026-05-19", "2026-06-03", "2026-07-18" })]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 8182(a)")]
    public void An_unseen_notice_of_completion_starts_its_fifteen_days_all_the_same(string? searched, string asOf, Standing expected,
        string[] days)
    {
        var job = new JobBuilder().Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, "sub").PaymentBond("2026-01-12")
            .Furnished("2026-03-02", 1000m).Ended("2026-04-06").Completed("2026-05-04");
        var notice = Notice(searched is null ? job : job.IndexSearched(searched), asOf);
        Assert.Equal(days, notice.DaysOf());
        Assert.Equal((expected, days[0] == "2026-07-18" ? "2026-07-17" : days[0]), (notice.Standing, notice.Plan()));
        Assert.Equal(days.Length > 1, notice.Asks("(index-searched)"));
        Assert.Equal(days.Length > 1, notice.Says("whether or not a copy was sent"));
        // Given in between it is kept only once the index was searched.
        Assert.Equal(searched == "2026-05-20"
            ? Standing.Kept : Standing.InDoubt, Notice(job.BondNoticeGiven("2026-06-10"), "2026-07-01").Standing);
        Assert.Equal(Standing.Kept, Notice(job.IndexSearched("2026-05-20"), "2026-07-01").Standing);
    }

    // On public work a notice of cessation is planned on too (§ 9560(b)), so an unseen one is looked for.
    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void On_public_work_an_unseen_notice_of_cessation_is_looked_for()
    {
        JobBuilder Idle() =>
            new JobBuilder().PublicWork().PaymentBond(null).Furnished("2026-02-02", 1000m).LaborCeased("2026-02-06", unfinished: true);
        Assert.Equal("2026-03-23", Notice(Idle(), "2026-03-16").Plan()); // 15 days after Sunday 8 March
        Assert.True(Notice(Idle(), "2026-03-16").Asks("cessation recorded?"));
    }

    [Fact]
    [Proves("Civ. Code § 8612(e)")]
    public void A_laborer_gives_none()
    {
        var notice = Notice(Job(ClaimantRole.Laborer), "2027-06-01");
        Assert.Equal(Standing.Kept, notice.Standing);
        Assert.Equal(["Civ. Code § 8612(e)"], notice.Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8612(d)")]
    public void That_the_late_road_may_be_closed_is_said_and_asked()
    {
        Assert.Contains("Civ. Code § 8612(d)", Notice(Job()).Sections);
        Assert.True(Notice(Job()).Asks("undisputed progress payments"));
        Assert.DoesNotContain("Civ. Code § 8612(d)", Notice(Job().Notice("2026-03-02")).Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8612(a)")]
    public void Where_the_file_knows_of_no_bond_nothing_is_said_and_a_surety_is_enough_to_know_of_one()
    {
        var none = new JobBuilder().Furnished("2026-03-02", 1000m).Completed("2026-05-04");
        Assert.Null(none.On("2026-06-01").Find("payment-bond.notice-last-day"));
        Assert.Null(none.On("2026-06-01").Find("payment-bond.action-last-day"));
        Assert.NotNull(new JobBuilder().PaymentBond("2026-01-12").NoParty("surety").On("2026-06-01").Find("payment-bond.notice-last-day"));
        Assert.NotNull(none.Party("surety", PartyCapacity.Surety).On("2026-06-01").Find("payment-bond.notice-last-day"));
    }

    // Completed between 1 and 20 May, notice of completion recorded on the 20th: if it was completed by 4 May the notice has no effect
    // and 75 days run; from 5 May on it has, and 15 days run from it.
    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    public void A_completion_in_doubt_is_planned_on_its_shortest_reading_and_lost_only_on_its_longest()
    {
        var job = new JobBuilder().PaymentBond("2026-01-12").Furnished("2026-03-02", 1000m).Ended("2026-04-06")
            .Completed("2026-05-01..2026-05-20").IndexSearched("2026-06-05");
        Assert.Equal(["2026-07-15", "2026-08-03"], Notice(job, "2026-06-08").DaysOf());
        Assert.Equal(Standing.InDoubt, Notice(job, "2026-08-03").Standing);
        Assert.Equal(Standing.Lost, Notice(job, "2026-08-04").Standing);
        Assert.Contains("2026-06-04", Notice(job.OwnerRecorded("2026-05-20")).DaysOf());
        Assert.Equal("2026-06-04", Notice(job).Plan());
        Assert.Single(Notice(job).Why, r => r.Text.Contains("was recorded on 2026-05-20", StringComparison.Ordinal));
    }

    // American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193: $41,775.00 furnished, $625.00 of it within 20 days
    // before the late notice; the bond claim is for all of it.
    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 9560(b)")]
    public void A_claim_on_the_bond_has_no_look_back()
    {
        var job = new JobBuilder().Furnished("2026-03-02", 41_150m).Furnished("2026-04-20", 625m).Ended("2026-04-20").Notice("2026-05-01");
        Assert.Equal(625m, job.On("2026-05-10").Amount.Demand);
        Assert.Equal(41_775m, BondClaim.Of(job.FactsOn("2026-05-10")).Demand);
    }

    // Subdivision (d) speaks of "a subcontractor who has a direct contractual relationship with the general contractor to whom the claimant
    // has provided materials or services": whom the owner or the contractor hired has provided to none.
    [Theory]
    [InlineData("sub", true)]
    [InlineData(null, true)]
    [InlineData("direct", false)]
    [InlineData("owner", false)]
    [Proves("Civ. Code § 8612(d)")]
    public void Only_one_who_may_have_worked_for_a_subcontractor_is_asked_whether_that_one_was_paid(string? hiredBy, bool asked)
    {
        var notice = Notice(Job().Role(ClaimantRole.Supplier, hiredBy));
        Assert.Equal(asked, notice.Says("the late notice may be closed"));
        Assert.Equal(asked,
            notice.Questions.Any(q => q.Text.Contains("was it paid its undisputed progress payments", StringComparison.Ordinal)));
    }
}
