using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// The days of the notice to surety and principal, and the amount that hangs on it (Civ. Code §§ 8612, 9560): 15 days after a notice of
/// completion is recorded, else
/// 75 after completion. Completed on 22 October 2025, day 75 is 5 January 2026.
/// </summary>
public sealed class BondNoticeDaysTests
{
    private static JobBuilder OnPublic() => Public().Furnished("2025-08-05", 6430m).Accepted();

    private static JobBuilder OnPrivate() =>
        Private().PaymentBond("2025-07-01").Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10");

    private static Finding Notice(JobBuilder job, string asOf = "2025-11-10") => job.On(asOf).Get("payment-bond.notice-last-day");

    // On public work every recorded notice is planned on; only one of completion of the whole work, in form and within 15 days, takes the
    // 75 days away.
    [Theory]
    [InlineData(OwnerNotice.Completion, "2025-10-29", null, new[] { "2025-11-13" }, new[] { "2025-11-13" })]
    [InlineData(OwnerNotice.Completion, "2025-10-29", "its verification", new[] { "2025-11-13", "2026-01-05" },
        new[] { "2025-11-13", "2026-01-05" })]
    [InlineData(OwnerNotice.Completion, "2025-11-06", null, new[] { "2025-11-21" }, new[] { "2025-11-21" })]
    [InlineData(OwnerNotice.Completion, "2025-11-05..2025-11-07", null, new[] { "2025-11-20", "2025-11-22", "2026-01-05" },
        new[] { "2025-11-20", "2025-11-22", "2026-01-05" })]
    [InlineData(OwnerNotice.Acceptance, "2025-10-29", null, new[] { "2025-11-13", "2026-01-05" }, new[] { "2026-01-05" })]
    [InlineData(OwnerNotice.Cessation, "2025-10-29", null, new[] { "2025-11-13", "2026-01-05" }, new[] { "2026-01-05" })]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8612(b)")]
    public void A_recorded_notice_leaves_fifteen_days_and_only_a_sure_one_takes_the_75_away(OwnerNotice kind, string recorded,
        string? lacks, string[] onPublic, string[] onPrivate)
    {
        var states = kind == OwnerNotice.Cessation ? null : "2025-10-22";
        Assert.Equal(onPublic, Notice(OnPublic().OwnerRecorded(recorded, kind, states, lacks: lacks)).DaysOf());
        Assert.Equal(onPrivate, Notice(OnPrivate().OwnerRecorded(recorded, kind, states, lacks: lacks)).DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Each_day_is_told_with_the_paper_it_is_counted_from()
    {
        var fifteen = Notice(OnPublic().OwnerRecorded("2025-10-29", states: "2025-10-22"));
        Assert.Equal(["2025-11-13 15 days after the notice of completion of 2025-10-29"], fifteen.Lines());
        Assert.Equal([3], fifteen.EntriesOf("was recorded on 2025-10-29"));
        Assert.False(fifteen.Says("no notice of completion that surely counts is recorded"));
        Assert.Empty(fifteen.EntriesOf("It is settled that the notice of completion"));
        var none = Notice(OnPublic().OwnerRecorded("2025-10-29", states: "2025-10-22", heldIneffective: true));
        Assert.Equal(["2026-01-05 75 days after acceptance by the public entity"], none.Lines());
        Assert.Equal([3], none.EntriesOf("It is settled that the notice of completion"));
        Assert.True(none.Says("no notice of completion that surely counts is recorded"));
        // One that was held to have no effect hides no other.
        Assert.Equal(["2025-11-14"], Notice(OnPublic().OwnerRecorded("2025-10-29", states: "2025-10-22", heldIneffective: true)
            .OwnerRecorded("2025-10-30", states: "2025-10-22")).DaysOf());
        Assert.NotNull(none.Band!.Latest);
        Assert.Null(Notice(Public().Furnished("2025-08-05", 6430m)
            .Completed("2025-10-22", CompletionTheory.Acceptance, contested: true)).Band!.Latest);
    }

    // Nothing is known of completion, not even work of the claimant's: a recorded notice is planned on all the same.
    [Theory]
    [InlineData(OwnerNotice.Cessation, "2025-10-29", new[] { "2025-11-13" })]
    [InlineData(OwnerNotice.Cessation, "2025-10-27..2025-10-29", new[] { "2025-11-11", "2025-11-13" })]
    [Proves("Civ. Code § 9560(b)")]
    public void A_recorded_notice_is_planned_on_where_no_completion_is_known(OwnerNotice kind, string recorded, string[] expected) =>
        Assert.Equal(expected, Notice(new JobBuilder().PublicWork().PaymentBond(null).OwnerRecorded(recorded, kind)).DaysOf());

    [Theory]
    [InlineData(OwnerNotice.Completion, new[] { "2025-11-13" })]
    [InlineData(OwnerNotice.Cessation, new string[0])]
    [Proves("Civ. Code § 8612(b)")]
    public void On_a_private_work_that_waits_for_acceptance_only_a_notice_of_completion_is(OwnerNotice kind, string[] expected)
    {
        var notice =
            Notice(Private().PaymentBond("2025-07-01").Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true })
                .Furnished("2025-08-05", 6430m).OwnerRecorded("2025-10-29", kind));
        Assert.Equal(expected, notice.DaysOf());
        Assert.Equal(expected,
            Notice(Private().PaymentBond("2025-07-01").Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true })
                .Furnished("2025-08-05", 6430m).OwnerRecorded("2025-10-29", kind, contractOf: "direct")).DaysOf());
        Assert.Equal(expected.Length == 0, notice.Says("The section sets an end and no beginning"));
    }

    // Past day 75: what a late preliminary notice reaches is left, and what none reaches is lost; where the notice may not count it is in
    // doubt.
    [Theory]
    [InlineData("2025-10-10", "2025-09-25", Standing.Narrowed)] // reaches back to 20 September
    [InlineData("2025-10-20", "2025-09-25", Standing.Lost)] // to 30 September
    [InlineData("2025-10-10", "2025-09-15..2025-09-25", Standing.InDoubt)] // it may have been before the 20th
    [InlineData(null, "2025-09-25", Standing.Lost)]
    [InlineData(null, "2025-12-20", Standing.Narrowed)] // one given on 6 January would reach back to 17 December
    [Proves("Civ. Code § 9560(a)")]
    public void After_its_time_the_preliminary_notice_decides_what_is_left(string? noticed, string second, Standing expected)
    {
        var job = Public().Furnished("2025-08-05", 6430m).Furnished(second, 1000m).Ended(second).Accepted();
        var notice = Notice(noticed is null ? job : job.NoticedPublic(noticed), "2026-01-06");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(noticed is not null, notice.Says("The preliminary notice came too late for what was furnished before"));
    }

    [Theory]
    [InlineData("2025-08-14", Standing.InDoubt)]
    [InlineData("2025-10-10", Standing.Narrowed)]
    [Proves("Civ. Code § 9560(a)")]
    public void A_preliminary_notice_that_may_not_count_is_made_good_by_it(string noticed, Standing after)
    {
        JobBuilder Job() => Public().PartyWith("direct", p => p with { NaturalPerson = true }).Furnished("2025-08-05", 6430m)
            .Furnished("2025-09-25", 1000m).Ended("2025-09-25").Accepted()
            .Notice(noticed, Manner.CertifiedMail, "city").Notice(noticed, Manner.Substituted, "direct");
        Assert.True(Notice(Job()).Says("may not count toward everyone to whom it is due"));
        Assert.Equal(after, Notice(Job(), "2026-01-06").Standing);
        Assert.Equal(Standing.Kept, Notice(Job().BondNoticeGiven("2025-11-03"), "2026-01-06").Standing);
    }

    [Theory]
    [InlineData("direct", "No preliminary notice was due")]
    [InlineData("sub", "Preliminary notice was given in time and covers everything")]
    [Proves("Civ. Code § 9560(a)")]
    public void Why_none_is_needed_is_told(string hiredBy, string words)
    {
        var notice = Notice(Public(hiredBy).Furnished("2025-08-05", 6430m).NoticedPublic().Accepted());
        Assert.Equal((Standing.Kept, 0, true), (notice.Standing, notice.Readings.Count, notice.Says(words)));
    }

    // On private work no preliminary notice is due of one hired by the owner, and the section asks one or the other: in doubt once the 75
    // days are over.
    [Theory]
    [InlineData("2026-01-05", Standing.Open)]
    [InlineData("2026-01-06", Standing.InDoubt)]
    [Proves("Civ. Code § 8612(a)")]
    public void One_hired_by_the_owner_gives_it_on_the_owners_bond(string asOf, Standing expected) =>
        Assert.Equal(expected, Notice(Private(hiredBy: "owner").PaymentBond("2025-07-01", "owner").Furnished("2025-08-05", 6430m)
            .Completed("2025-10-22").IndexSearched("2025-11-10"), asOf).Standing);

    // Before anything was furnished nothing is due; a paper given all the same is kept while no day ends its time.
    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Given_before_any_end_is_known_it_is_kept()
    {
        JobBuilder Job() => Private().PaymentBond("2025-07-01")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).Furnished("2025-08-05", 6430m);
        Assert.Equal(Standing.Open, Notice(Job()).Standing);
        Assert.Equal(Standing.Kept, Notice(Job().BondNoticeGiven("2025-09-01")).Standing);
        Assert.Equal(Standing.InDoubt, Notice(Job().BondNoticeGiven("?")).Standing);
    }

    private static Finding Amount(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("payment-bond.amount");

    // The preliminary notice of 10 October reaches the 1,000.00 of 25 September and not the 6,430.00 of 5 August; the bond notice has no
    // look-back (American Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193).
    [Theory]
    [InlineData(true, "2025-12-01", Standing.Kept, 7430)]
    [InlineData(false, "2025-12-01", Standing.Open, 7430)]
    [InlineData(false, "2026-01-06", Standing.Narrowed, 1000)]
    [InlineData(true, "2026-08-03", Standing.Lost, 0)]
    [Proves("Civ. Code § 9560(b)")]
    public void The_amount_follows_the_road_that_is_left(bool given, string asOf, Standing expected, int amount)
    {
        var job = Public().Furnished("2025-08-05", 6430m).Furnished("2025-09-25", 1000m).Ended("2025-09-25").NoticedPublic("2025-10-10")
            .Accepted();
        var found = Amount(given ? job.BondNoticeGiven("2025-11-03").BondPaper(p => p with { Amount = 7430m }) : job, asOf);
        Assert.Equal((expected, amount), (found.Standing, found.Amount));
        Assert.Equal(expected == Standing.Kept, found.Says("which has no look-back"));
        Assert.Equal(expected == Standing.Open, found.Says("if the notice is given to surety and principal by 2026-01-05"));
        Assert.Equal(expected == Standing.Narrowed, found.Says("$6,430.00 with it"));
        Assert.Equal(expected == Standing.Lost, found.Says("Nothing may be claimed on the bond any more"));
        Assert.False(found.Says("All unpaid work"));
        Assert.False(found.Says("given today"));
        Assert.False(found.Says("The notice states"));
        Assert.False(found.Says("The bond is for"));
    }

    [Theory]
    [InlineData(6430, Standing.NotYet, 0)]
    [InlineData(6429.99, Standing.Kept, 0.01)]
    [Proves("Civ. Code § 9560(a)")]
    public void A_cent_that_is_left_may_be_claimed(decimal paid, Standing expected, decimal amount)
    {
        var found = Amount(UsualPublic().Paid("2025-11-10", paid));
        Assert.Equal((expected, amount), (found.Standing, found.Amount));
        Assert.True(found.Says("All unpaid work"));
    }

    // None was given yet: what one given today would reach is told.
    [Fact]
    [Proves("Civ. Code § 9560(a)")]
    public void What_a_preliminary_notice_given_today_would_reach_is_told()
    {
        var found = Amount(Public().Furnished("2025-08-05", 6430m).Furnished("2025-11-20", 1000m).Accepted());
        Assert.True(found.Says("$1,000.00 by preliminary notice given today; $7,430.00 if the notice is given"));
        var open = Amount(Private().PaymentBond("2025-07-01")
            .Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true }).Furnished("2025-08-05", 6430m));
        Assert.True(open.Says("$6,430.00 if the notice is given to surety and principal: that notice has no look-back"));
    }
}
