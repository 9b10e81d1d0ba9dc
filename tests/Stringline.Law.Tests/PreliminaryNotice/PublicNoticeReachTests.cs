using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// Who is told on public work, and how far back the notice reaches (Civ. Code §§ 9300, 9304). First furnished on Monday 2 March 2026.
/// </summary>
public sealed class PublicNoticeReachTests
{
    private static JobBuilder Job(string first = "2026-03-02") =>
        new JobBuilder().PublicWork().Furnished(first, 400m).Furnished("2026-04-06", 600m);

    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "city", 0)]
    [InlineData(ClaimantRole.Laborer, "sub", 0)]
    [InlineData(ClaimantRole.Supplier, "direct", 0)]
    [InlineData(ClaimantRole.Supplier, "sub", 2)]
    [Proves("Civ. Code § 9100(b)")]
    [Proves("Civ. Code § 9300(b)")]
    public void Nobody_is_told_where_no_notice_is_due(ClaimantRole role, string hiredBy, int told)
    {
        var facts = Job().Role(role, hiredBy).FactsOn("2026-05-01");
        var recipients = PublicNotice.RecipientsOf(facts);
        Assert.Equal(told == 0 ? [] : [PartyCapacity.PublicEntity, PartyCapacity.DirectContractor], recipients.Select(r => r.Who));
        var reach = PublicNotice.ReachOf(facts);
        Assert.Equal((told == 0 ? ReachKind.NoneDue : ReachKind.NotGiven, false), (reach.Kind, reach.InTimeByRollOnly));
        Assert.Equal(told, reach.Each.Count);
    }

    // Of the days on which the two were told the later counts, whichever it was.
    [Theory]
    [InlineData("2026-03-10", "2026-03-25", "2026-03-05", Standing.Narrowed)]
    [InlineData("2026-03-25", "2026-03-10", "2026-03-05", Standing.Narrowed)]
    [InlineData("2026-03-10", "2026-03-22", "2026-03-02", Standing.Kept)]
    [Proves("Civ. Code § 9304")]
    public void The_later_of_the_two_notices_counts(string city, string direct, string from, Standing expected)
    {
        var job = Job().Notice(city, Manner.CertifiedMail, "city").Notice(direct, Manner.CertifiedMail, "direct");
        Assert.Equal([$"{from} 20 days before the notice was given"], job.On("2026-05-01").Get("preliminary-notice.reaches-back-to")
            .Lines());
        Assert.Equal(expected, job.On("2026-05-01").Get("preliminary-notice.last-day").Standing);
        var reach = PublicNotice.ReachOf(job.FactsOn("2026-05-01"));
        Assert.Equal(JobBuilder.Day(from).PlusDays(20), reach.Given!.Value.Latest);
        Assert.False(reach.InTimeByRollOnly);
    }

    [Fact]
    [Proves("Civ. Code § 9304")]
    public void Where_none_was_given_it_reaches_back_from_the_day_of_asking()
    {
        Assert.Equal(["2026-04-11 if notice is given on the day of asking"], Job().On("2026-05-01")
            .Get("preliminary-notice.reaches-back-to").Lines());
        var one = Job().Notice("2026-03-10", Manner.CertifiedMail, "city").On("2026-05-01");
        Assert.Equal(["2026-04-11 if notice is given on the day of asking"], one.Get("preliminary-notice.reaches-back-to").Lines());
        Assert.True(one.Get("preliminary-notice.last-day").Says("the file shows none given"));
    }

    [Fact]
    [Proves("Civ. Code § 9300(b)")]
    public void Where_none_is_due_there_is_no_day_and_the_reason_is_told()
    {
        var none = Job().Role(ClaimantRole.Supplier, "direct").On("2026-05-01").Get("preliminary-notice.last-day");
        Assert.Equal((Standing.Kept, 0), (none.Standing, none.Readings.Count));
        Assert.Equal(["Civ. Code § 9300(b)"], none.Sections);
        Assert.True(none.Says("a direct contract with the direct contractor"));
    }

    // First furnished between the 2nd and the 6th: the twentieth day after the 2nd covers all of it on every reading.
    [Fact]
    [Proves("Civ. Code § 9304")]
    public void The_twenty_days_run_from_the_first_day_on_which_work_may_have_been_furnished() =>
        Assert.Equal(["2026-03-22"], Job("2026-03-02..2026-03-06").On("2026-03-20").Get("preliminary-notice.last-day").DaysOf());

    // Left and mailed, with nothing told of tries to hand it over: toward a natural person it may be none.
    [Theory]
    [InlineData("2026-03-10", Manner.CertifiedMail, Standing.Kept)]
    [InlineData("2026-03-10", Manner.Substituted, Standing.InDoubt)]
    [InlineData("2026-03-25", Manner.CertifiedMail, Standing.Narrowed)]
    [InlineData("2026-03-25", Manner.Substituted, Standing.InDoubt)]
    [Proves("Civ. Code § 9304")]
    public void A_notice_that_may_not_count_leaves_it_in_doubt_in_time_or_late(string given, Manner manner, Standing expected)
    {
        var job = Job().PartyWith("direct", p => p with { NaturalPerson = true }).Notice(given, Manner.CertifiedMail, "city")
            .Notice(given, manner, "direct");
        Assert.Equal(expected, job.On("2026-05-01").Get("preliminary-notice.last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9304")]
    public void One_that_went_in_no_good_manner_is_told_and_does_not_count()
    {
        var notice =
            Job().Notice("2026-03-10", Manner.FirstClassMail, "city", "direct").On("2026-05-01").Get("preliminary-notice.last-day");
        Assert.Equal([2], notice.EntriesOf("by first-class mail counts for nothing here"));
        Assert.Equal(Standing.Narrowed, notice.Standing);
        Assert.Equal([2], Job().Work(w => w with { Body = PublicBody.GeneralServices })
            .Notice("2026-03-10", Manner.CertifiedMail, "city", "direct").On("2026-05-01")
            .Get("preliminary-notice.officer").Corrected("(notice-given.to)"));
    }

    // A direct contractor has no remedy of this title, but its work is completed as any other.
    [Fact]
    [Proves("Civ. Code § 9200(a)")]
    public void A_direct_contractor_is_told_of_completion() =>
        Assert.Equal(["2026-05-04"], Job().Role(ClaimantRole.DirectContractor, "city").Completed("2026-05-04", CompletionTheory.Acceptance)
            .On("2026-05-15").Get("completion.day").DaysOf());
}
