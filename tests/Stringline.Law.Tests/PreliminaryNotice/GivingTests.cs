using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PreliminaryNotice;

public sealed class GivingTests
{
    [Theory]
    [InlineData(Manner.Personal, true)]
    [InlineData(Manner.CertifiedMail, true)]
    [InlineData(Manner.RegisteredMail, true)]
    [InlineData(Manner.ExpressMail, true)]
    [InlineData(Manner.OvernightCarrier, true)]
    [InlineData(Manner.Substituted, true)]
    [InlineData(Manner.CertificateOfMailing, false)]
    [Proves("Civ. Code § 8106")]
    [Proves("Civ. Code § 8110")]
    public void Only_the_named_manners_give_notice(Manner manner, bool good) => Assert.Equal(good, Giving.IsGood(manner));

    [Theory]
    [InlineData(Manner.Personal, "2026-03-20")]
    [InlineData(Manner.CertifiedMail, "2026-03-20")]
    [InlineData(Manner.OvernightCarrier, "2026-03-20")]
    [InlineData(Manner.Substituted, "2026-03-25")]
    [Proves("Civ. Code § 8116")]
    public void Notice_is_complete_on_delivery_or_deposit_but_five_days_after_leaving_and_mailing(Manner manner, string complete) =>
        Assert.Equal(new DaySpan(Day(complete), Day(complete)),
            Giving.CompleteOn(NumberTable.Shipped, new DaySpan(Day("2026-03-20"), Day("2026-03-20")), manner));

    // Only of one left and mailed does the day of mailing count: delivered by hand on 20 March it was complete that day, though a copy was
    // mailed on the 24th.
    [Theory]
    [InlineData(Manner.Personal, "2026-03-24", "2026-03-20")]
    [InlineData(Manner.Substituted, "2026-03-24", "2026-03-29")]
    [InlineData(Manner.Substituted, "2026-03-18", "2026-03-25")]
    [InlineData(null, "2026-03-24", "2026-03-20")]
    [Proves("Civ. Code § 8116")]
    public void A_copy_mailed_beside_it_delays_only_one_that_was_left(Manner? manner, string mailed, string complete) =>
        Assert.Equal(new DaySpan(Day(complete), Day(complete)),
            Giving.CompleteOn(NumberTable.Shipped, When("2026-03-20"), manner, Day(mailed)));

    // IGA Aluminum v. Manufacturers Bank (1982) 130 Cal.App.3d 699: first-class mail is not a manner of giving notice.
    [Fact]
    [Proves("Civ. Code § 8110")]
    public void A_certificate_of_mailing_gives_no_preliminary_notice()
    {
        var assessment = new JobBuilder().Furnished("2026-03-02", 100m).Notice("2026-03-04", Manner.CertificateOfMailing)
            .Ended("2026-03-02").On("2026-06-01");
        Assert.Equal(Standing.Lost, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Contains(assessment.Get("preliminary-notice.last-day").Why, w => !w.Applied && w.Section == "Civ. Code § 8110");
        Assert.DoesNotContain("Civ. Code § 8110", assessment.Get("preliminary-notice.last-day").Sections);
        Assert.Equal(0m, assessment.Amount.Demand);
    }

    [Fact]
    [Proves("Civ. Code § 8116")]
    public void The_notice_that_surely_reached_them_first_is_the_one_that_counts()
    {
        var facts = new JobBuilder()
            .Notice("2026-03-10", Manner.Substituted)
            .Notice("2026-03-12")
            .Notice("2026-03-01..2026-03-31", Manner.Personal)
            .Notice("?", Manner.Personal)
            .Notice("2026-03-05", Manner.CertificateOfMailing)
            .Notice("2026-03-06", Manner.CertifiedMail, "direct")
            .FactsOn("2026-04-01");
        var given = Giving.FirstGiven(NumberTable.Shipped, facts.All<NoticeGiven>(), [facts.Job.Party("owner")!], out var used);
        Assert.Equal(new DaySpan(Day("2026-03-12"), Day("2026-03-12")), given);
        Assert.Equal(1, used!.Index);
        // One that may have come sooner, and later too, is not the one that surely came first.
        var soon = new JobBuilder().Notice("2026-03-12").Notice("2026-03-01..2026-03-31").FactsOn("2026-04-01");
        Assert.Equal(new DaySpan(Day("2026-03-12"), Day("2026-03-12")),
            Giving.FirstGiven(NumberTable.Shipped, soon.PreliminaryNotices, [soon.Job.Party("owner")!], out _));
        var late = new JobBuilder().Notice("2026-03-01..2026-03-31").Notice("2026-03-12").FactsOn("2026-04-01");
        Assert.Equal(new DaySpan(Day("2026-03-12"), Day("2026-03-12")),
            Giving.FirstGiven(NumberTable.Shipped, late.PreliminaryNotices, [late.Job.Party("owner")!], out _));
    }

    [Fact]
    public void Nobody_reached_is_null()
    {
        var facts = new JobBuilder().Notice("2026-03-06", Manner.CertifiedMail, "direct").FactsOn("2026-04-01");
        Assert.Null(Giving.FirstGiven(NumberTable.Shipped, facts.All<NoticeGiven>(), [facts.Job.Party("owner")!], out var used));
        Assert.Null(used);
    }
}
