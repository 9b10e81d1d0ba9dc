using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The days of a summary release that are not plain: an affidavit served on a day in doubt, one of which the file says little, several
/// papers, and what follows in court (Civ. Code §§ 9404-9412). Entries 0 to 2 are the furnishing and the two notices.
/// </summary>
public sealed class SummaryReleaseDaysTests
{
    private static JobBuilder Job() => new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct").StopPaymentGiven("2025-11-03", 6430m, false, "city");

    private static JobBuilder Served(string on = "2025-12-01", string? answerBy = "2025-12-12", Manner? manner = Manner.CertifiedMail) =>
        Job().Add(i =>
            new ReleaseAffidavitServed { Index = i, On = When(on), Manner = manner, AnswerBy = answerBy is null ? null : Day(answerBy) });

    private static JobBuilder Answer(JobBuilder job, string on = "2025-12-10", bool? proof = true, Manner? manner = Manner.Personal) =>
        job.Add(i => new CounteraffidavitServed { Index = i, On = When(on), To = ["city", "direct"], Manner = manner, Proof = proof });

    private static Finding Last(JobBuilder job, string asOf = "2025-12-04") => job.On(asOf).Get("summary-release.answer-last-day");

    // "Not less than 10 days nor more than 20 days after service": served between the 1st and the 3rd, at least ten days after the 3rd is
    // the 13th, and at most twenty after the 1st is the 21st; what lies outside is not surely as the section asks, and the earlier day is
    // planned on.
    [Theory]
    [InlineData(null, new[] { "2025-12-11" }, false, "2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-10", new[] { "2025-12-10", "2025-12-11" }, false, "2025-12-12", Standing.InDoubt)]
    [InlineData("2025-12-12", new[] { "2025-12-12" }, false, "2025-12-13", Standing.InDoubt)]
    [InlineData("2025-12-13", new[] { "2025-12-13" }, true, "2025-12-14", Standing.Lost)]
    [InlineData("2025-12-21", new[] { "2025-12-21" }, true, "2025-12-22", Standing.Lost)]
    [InlineData("2025-12-22", new[] { "2025-12-21", "2025-12-22" }, false, "2025-12-22", Standing.InDoubt)]
    [InlineData("2025-12-22", new[] { "2025-12-21", "2025-12-22" }, false, "2025-12-23", Standing.Lost)]
    [Proves("Civ. Code § 9404")]
    public void An_affidavit_served_on_a_day_in_doubt_is_counted_from_the_end_that_is_safe(string? answerBy, string[] days, bool asAsked,
        string asOf, Standing expected)
    {
        var last = Last(Served("2025-12-01..2025-12-03", answerBy), asOf);
        Assert.Equal(days, last.DaysOf());
        Assert.Equal((expected, !asAsked), (last.Standing, last.Says("not as the section asks")));
        Assert.Equal(days[^1], LawText.IsoDay(last.Band!.Latest!.Day));
    }

    [Theory]
    [InlineData("2025-12-12", "2025-12-12", Standing.Open)]
    [InlineData("2025-12-12", "2025-12-13", Standing.Lost)]
    [InlineData(null, "2025-12-11", Standing.Open)]
    [InlineData(null, "2025-12-12", Standing.InDoubt)]
    [Proves("Civ. Code § 9406(b)")]
    public void The_money_is_lost_only_past_a_day_that_the_section_allows(string? answerBy, string asOf, Standing expected)
    {
        var last = Last(Served(answerBy: answerBy), asOf);
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.Lost, last.Says("unless the papers and the proof of service went by then"));
    }

    // What the file does not say of the affidavit itself is asked: ten days lie between the least and the most.
    [Theory]
    [InlineData(null, null, 10, true)]
    [InlineData("2025-12-12", null, null, true)]
    [InlineData(null, Manner.Personal, 10, false)]
    [InlineData("2025-12-12", Manner.Personal, null, false)]
    [Proves("Civ. Code § 9404")]
    public void What_the_file_does_not_say_of_the_affidavit_is_asked(string? answerBy, Manner? manner, int? days, bool asksManner)
    {
        var last = Last(Served(answerBy: answerBy, manner: manner));
        Assert.Equal(days,
            last.Questions.SingleOrDefault(q => q.Text.Contains("(release-affidavit-served.answerBy)", StringComparison.Ordinal))?.Days);
        Assert.Equal(days is null ? [] : [3], last.Corrected("(release-affidavit-served.answerBy)"));
        Assert.Equal(asksManner ? [3] : [], last.Corrected("(release-affidavit-served.manner)"));
        Assert.Equal([3], last.EntriesOf("served the direct contractor's affidavit 2025-12-01"));
        Assert.False(last.Says("the ground is that"));
    }

    // Either side may go to court once the papers are served (Civ. Code § 9408(a)): papers that are late, or without proof, open no court.
    [Theory]
    [InlineData("2025-12-12", true, Manner.Personal, true)]
    [InlineData("2025-12-13", true, Manner.Personal, false)]
    [InlineData("2025-12-12..2025-12-13", true, Manner.Personal, true)]
    [InlineData("2025-12-10", true, null, true)]
    [InlineData("2025-12-10", null, Manner.Personal, false)]
    [InlineData("2025-12-10", false, Manner.Personal, false)]
    [Proves("Civ. Code § 9408(a)")]
    public void The_court_is_open_once_an_answer_may_hold_the_money(string on, bool? proof, Manner? manner, bool open)
    {
        var job = Answer(Served(), on, proof, manner);
        Assert.Equal(open, job.On("2025-12-16").Find("summary-release.rights-action") is not null);
        var filed = job.Add(i => new RightsActionFiled { Index = i, On = When("2025-12-22") }).On("2026-01-05")
            .Get("summary-release.rights-action");
        Assert.Equal((Standing.Done, "5"), (filed.Standing, string.Join(',', filed.HangsOn("Civ. Code § 9408(a)"))));
    }

    [Fact]
    [Proves("Civ. Code § 9404")]
    public void An_answer_in_time_to_one_affidavit_opens_the_court_whatever_becomes_of_the_other()
    {
        var two = Answer(Served()
            .Add(i => new ReleaseAffidavitServed { Index =
                i, On = When("2025-12-15"), Manner = Manner.Personal, AnswerBy = Day("2025-12-29"), Amount = 430m }));
        var on = two.On("2025-12-30");
        Assert.Equal((Standing.Kept, Standing.Lost),
            (on.Get("summary-release.answer-last-day").Standing, on.Get("summary-release.answer-last-day.2").Standing));
        Assert.Equal(430m, on.Get("summary-release.answer-last-day.2").Amount);
        Assert.NotNull(on.Find("summary-release.rights-action"));
        Assert.Null(on.Find("summary-release.answer-last-day.1"));
    }

    // Five days before Wednesday 14 January is the 9th; by mail complete five days after deposit, so mailed by the 4th
    // (Civ. Code § 9408(c)).
    [Theory]
    [InlineData("2026-01-09", Manner.Personal, Standing.Kept, false)]
    [InlineData("2026-01-08..2026-01-10", Manner.Personal, Standing.InDoubt, false)]
    [InlineData("2026-01-05", Manner.Substituted, Standing.InDoubt, false)]
    [InlineData("2026-01-04", Manner.ExpressMail, Standing.Kept, false)]
    [InlineData("2026-01-03..2026-01-05", Manner.ExpressMail, Standing.InDoubt, false)]
    [InlineData("2026-01-04", null, Standing.Kept, false)]
    [InlineData("2026-01-05", null, Standing.InDoubt, true)]
    [InlineData("2026-01-09", null, Standing.InDoubt, true)]
    [InlineData("2026-01-10", null, Standing.InDoubt, false)] // too late either way
    [Proves("Civ. Code § 9408(b)")]
    [Proves("Civ. Code § 9408(c)")]
    public void Notice_of_the_hearing_is_in_time_by_its_latest_day(string on, Manner? manner, Standing expected, bool asks)
    {
        var notice = Noticed(Answer(Served()), on, manner).On("2026-01-12").Get("summary-release.hearing-notice");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(asks ? [5] : [], notice.Corrected("(hearing-noticed.manner)"));
        Assert.Equal([5], notice.HangsOn("Civ. Code § 9408(b)"));
        Assert.True(notice.Says("by 2026-01-09 (Fri); by mail"));
        Assert.Equal((Day("2026-01-14"), Day("2026-01-14")), (notice.Band!.Earliest.Day, notice.Band.Latest!.Day));
    }

    private static JobBuilder Noticed(JobBuilder job, string on, Manner? manner, string hearing = "2026-01-14") =>
        job.Add(i => new HearingNoticed { Index = i, On = When(on), Manner = manner, Hearing = Day(hearing) });

    // § 9408(b): "to the public entity and to the other party", which is the direct contractor, or the claimant where the direct contractor
    // moved.
    [Theory]
    [InlineData("", null, Standing.Kept, "", true, false)]
    [InlineData("city direct", null, Standing.Kept, "", false, false)]
    [InlineData("direct", null, Standing.InDoubt, "No notice to City of Davis", false, false)]
    [InlineData("city", null, Standing.InDoubt, "No notice to Brushline Builders Inc.", false, true)]
    [InlineData("city", "direct", Standing.Kept, "", false, false)]
    [InlineData("sub", "direct", Standing.InDoubt, "No notice to City of Davis", false, false)]
    [Proves("Civ. Code § 9408(b)")]
    public void Notice_of_the_hearing_goes_to_the_entity_and_the_other_party(string to, string? by, Standing expected, string says,
        bool asksTo, bool asksBy)
    {
        var notice = Noticed(Answer(Served()), "2026-01-06", Manner.Personal)
            .Which(e => (HearingNoticed)e with { To = to.Length == 0 ? [] : to.Split(' '), By = by })
            .On("2026-01-12").Get("summary-release.hearing-notice");
        Assert.Equal(expected, notice.Standing);
        Assert.True(notice.Says(says));
        Assert.Equal((asksTo, asksBy), (notice.Asks("(hearing-noticed.to)"), notice.Asks("(hearing-noticed.by)")));
    }

    // § 9408(c): "shall comply with the requirements of Chapter 2": by hand, by mail with a record, or left and mailed.
    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.Kept)]
    [InlineData(Manner.Substituted, Standing.Kept)]
    [InlineData(Manner.Email, Standing.InDoubt)]
    [InlineData(Manner.FirstClassMail, Standing.InDoubt)]
    [Proves("Civ. Code § 9408(c)")]
    public void Notice_of_the_hearing_is_given_as_notices_are(Manner manner, Standing expected)
    {
        var notice = Noticed(Answer(Served()), "2026-01-02", manner).On("2026-01-12").Get("summary-release.hearing-notice");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Says("give it again"));
    }

    // One given again in time takes the place of one that was not; else the last is told.
    [Theory]
    [InlineData("2026-01-12", "2026-01-21", Standing.Kept, "2026-01-21")]
    [InlineData("2026-01-12", "2026-01-16", Standing.InDoubt, "2026-01-16")]
    [Proves("Civ. Code § 9408(b)")]
    public void A_notice_of_a_hearing_given_again_counts(string again, string hearing, Standing expected, string told)
    {
        var notice = Noticed(Noticed(Answer(Served()), "2026-01-10", Manner.Personal), again, Manner.Personal, hearing).On("2026-01-12")
            .Get("summary-release.hearing-notice");
        Assert.Equal((expected, told), (notice.Standing, Assert.Single(notice.DaysOf())));
    }

    [Fact]
    [Proves("Civ. Code § 9412(c)")]
    public void One_notice_of_a_hearing_is_told_and_none_once_the_court_has_ordered()
    {
        var two = Noticed(Noticed(Answer(Served()), "?", Manner.Personal, "2026-01-10"), "2026-01-05", Manner.Personal);
        Assert.Equal(["2026-01-14"], two.On("2026-01-12").Get("summary-release.hearing-notice").DaysOf());
        Assert.Single(Noticed(two, "2026-01-06", Manner.Personal, "2026-01-21").On("2026-01-12").Findings, f =>
            f.Id == "summary-release.hearing-notice");
        Assert.Null(two.Add(i => new ReleaseOrdered { Index = i, On = When("2026-01-20") }).On("2026-02-02")
            .Find("summary-release.hearing-notice"));
    }

    // A later order replaces an earlier one.
    [Theory]
    [InlineData(null, 2400, 2400, 6)]
    [InlineData(2400, null, 0, 6)]
    [Proves("Civ. Code § 9412(c)")]
    public void The_last_order_counts(int? first, int? second, int amount, int entry)
    {
        var order = Answer(Served()).Add(i => new ReleaseOrdered { Index = i, On = When("2026-01-20"), Amount = first })
            .Add(i => new ReleaseOrdered { Index = i, On = When("2026-01-27"), Amount = second }).On("2026-02-02")
            .Get("summary-release.order");
        Assert.Equal(amount, order.Amount);
        Assert.Equal([entry], order.HangsOn("Civ. Code § 9412(c)"));
        Assert.Equal(second is null, order.Says("stays withheld"));
    }
}
