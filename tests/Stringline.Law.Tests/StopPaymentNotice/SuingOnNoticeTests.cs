using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// Which action is one on the notice (Civ. Code §§ 8550, 9502): given on Monday 3 November 2025, it may be sued on after ten days, from the
/// 14th, and until
/// 20 April 2026. Of the usual public job entries 0 to 3 are the search, the furnishing, the notice and the acceptance, entry 4 the stop
/// payment notice.
/// </summary>
public sealed class SuingOnNoticeTests
{
    private static JobBuilder Given(string on = "2025-11-03") => UsualPublic().StopPaymentGiven(on, 6430m, false, "city");

    private static Finding Last(JobBuilder job, string asOf = "2025-12-22") => job.On(asOf).Get("stop-payment-notice.action-last-day");

    [Theory]
    [InlineData("2025-11-03", "2025-11-02", Standing.Open)]
    [InlineData("2025-11-03", "2025-11-01..2025-11-02", Standing.Open)]
    [InlineData("2025-11-03", "2025-11-02..2025-11-03", Standing.InDoubt)]
    [InlineData("2025-11-03", "2025-11-13", Standing.InDoubt)]
    [InlineData("2025-11-03", "2025-11-13..2025-11-15", Standing.InDoubt)]
    [InlineData("2025-11-03", "2025-11-14", Standing.Kept)]
    [InlineData("2025-11-03", "2025-11-14..2025-11-17", Standing.Kept)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-02", Standing.Open)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-03", Standing.InDoubt)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-15", Standing.InDoubt)]
    [InlineData("2025-11-03..2025-11-05", "2025-11-16", Standing.Kept)]
    [InlineData("2025-11-03", "?", Standing.Open)]
    [Proves("Civ. Code § 9502(a)")]
    public void An_action_is_brought_after_ten_days_from_giving_the_notice(string given, string filed, Standing expected)
    {
        var last = Last(Given(given).ActionOn(filed, ActionOn.StopPaymentNotice));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(expected == Standing.InDoubt ? [5] : [], last.EntriesOf("it may be thrown out as brought too early"));
        Assert.Equal(expected == Standing.Kept ? [5] : [], last.EntriesOf("it counts here if it is on the stop payment notice too"));
        Assert.Equal(expected == Standing.Open && filed != "?"
            ? [5] : [], last.EntriesOf("was filed before the notice to the public entity was given"));
    }

    // Against the public entity and the direct contractor both (Civ. Code § 9502(b)). Too late, it is lost whoever was sued.
    [Theory]
    [InlineData("2025-12-01", "city,direct", "2025-12-22", Standing.Kept)]
    [InlineData("2025-12-01", "city", "2025-12-22", Standing.InDoubt)]
    [InlineData("2025-12-01", "direct", "2025-12-22", Standing.InDoubt)]
    [InlineData("2026-04-21", "city", "2026-04-22", Standing.Lost)]
    [InlineData("2026-04-20", "city,direct", "2026-04-22", Standing.Kept)]
    [Proves("Civ. Code § 9502(b)")]
    public void Entity_and_contractor_are_both_sued(string filed, string against, string asOf, Standing expected)
    {
        var last = Last(Given().ActionOn(filed, ActionOn.StopPaymentNotice, null, null, against.Split(',')), asOf);
        Assert.Equal(expected, last.Standing);
        Assert.Equal(against != "city,direct", last.Says("not against all who must be sued: the public entity and the direct contractor"));
    }

    [Theory]
    [InlineData(ActionEnd.Won, null, Standing.Done, "in the claimant's favor")]
    [InlineData(ActionEnd.Settled, null, Standing.Done, "or was settled")]
    [InlineData(ActionEnd.LostAtTrial, null, Standing.Lost, "against the claimant")]
    [InlineData(ActionEnd.Dismissed, false, Standing.Lost, "not without prejudice: the notice ceases")]
    [InlineData(ActionEnd.Dismissed, true, Standing.InDoubt, "a new action must be in time")]
    [InlineData(ActionEnd.Dismissed, null, Standing.InDoubt, "a new action must be in time")]
    [InlineData(ActionEnd.ReleaseOrdered, null, Standing.Kept, null)]
    [Proves("Civ. Code § 9510")]
    public void How_it_ended_decides_what_is_left_of_the_notice(ActionEnd how, bool? withoutPrejudice, Standing expected, string? words)
    {
        var last = Last(Given().ActionOn("2025-12-01", ActionOn.StopPaymentNotice, null, null, "city", "direct")
            .ActionEnded("2025-12-15", how, withoutPrejudice));
        Assert.Equal(expected, last.Standing);
        Assert.Equal(words is null ? [] : [6], last.HangsOn("Civ. Code § 9510"));
        Assert.True(words is null || last.Says(words));
        Assert.Equal(how == ActionEnd.Dismissed && withoutPrejudice is null ? [6] : [], last.Corrected("(action-ended.withoutPrejudice)"));
    }

    // Of two actions: one that is in doubt is not undone by another that was lost.
    [Theory]
    [InlineData("2025-11-10", true, Standing.InDoubt)]
    [InlineData("2025-11-10", false, Standing.InDoubt)]
    [InlineData(null, true, Standing.Lost)]
    [Proves("Civ. Code § 9510")]
    public void A_doubtful_action_is_left_where_another_was_lost(string? doubtful, bool lost, Standing expected)
    {
        var job = Given();
        if (doubtful is not null)
            job.ActionOn(doubtful, ActionOn.StopPaymentNotice, null, "a");
        job.ActionOn("2025-12-01", lost ? ActionOn.StopPaymentNotice : ActionOn.Debt, null, "b");
        Assert.Equal(expected, Last(lost ? job.ActionEnded("2025-12-15", ActionEnd.LostAtTrial, of: "b") : job).Standing);
    }

    // The owner's notice of 3 November and the lender's of 15 December are two: an action between them is one on the first alone.
    [Theory]
    [InlineData("pending", null, Standing.InDoubt)]
    [InlineData("pending", "pending", Standing.Kept)]
    [InlineData("settled", "pending", Standing.Kept)]
    [InlineData("pending", "settled", Standing.Kept)]
    [InlineData("settled", "settled", Standing.Done)]
    [InlineData(null, "pending", Standing.Kept)]
    [Proves("Civ. Code § 8550(b)")]
    public void Every_notice_is_to_be_sued_on(string? first, string? second, Standing expected)
    {
        var job = UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "owner")
            .StopPaymentGiven("2025-12-15", 6430m, false, "bank");
        if (first is not null)
            job.ActionOn("2025-12-01", ActionOn.StopPaymentNotice, null, "a");
        if (second is not null)
            job.ActionOn("2026-01-12", ActionOn.StopPaymentNotice, null, "b");
        if (first == "settled")
            job.ActionEnded("2026-01-20", ActionEnd.Settled, of: "a");
        if (second == "settled")
            job.ActionEnded("2026-01-20", ActionEnd.Settled, of: "b");
        Assert.Equal(expected, Last(job, "2026-02-02").Standing);
    }

    // Served through the architect the notice holds the owner's money: it is the owner who is sued.
    [Theory]
    [InlineData("owner", Standing.Kept)]
    [InlineData("architect", Standing.InDoubt)]
    [Proves("Civ. Code § 8550(b)")]
    public void On_private_work_the_owner_is_sued_and_not_its_architect(string against, Standing expected) =>
        Assert.Equal(expected,
            Last(UsualPrivate().Party("architect", PartyCapacity.Architect, "Plumb Line Studio")
                .StopPaymentGiven("2025-11-03", 6430m, false, "architect")
            .ActionOn("2025-12-01", ActionOn.StopPaymentNotice, null, null, against)).Standing);

    [Theory]
    [InlineData("bank", Standing.Kept)]
    [InlineData("owner", Standing.InDoubt)]
    [Proves("Civ. Code § 8550(b)")]
    public void The_lender_that_holds_is_sued_itself(string against, Standing expected) =>
        Assert.Equal(expected, Last(UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "bank")
            .ActionOn("2025-12-01", ActionOn.StopPaymentNotice, null, null, against)).Standing);

    [Fact]
    [Proves("Civ. Code § 9502(b)")]
    public void What_the_action_is_on_and_against_whom_is_asked()
    {
        var open = Last(Given().ActionFiled("2025-12-01"));
        Assert.Equal([5], open.Corrected("Is the action on the stop payment notice too?"));
        Assert.Equal([5], open.Corrected("Were the public entity and the direct contractor both sued?"));
        var told = Last(Given().ActionOn("2025-12-01", ActionOn.StopPaymentNotice, null, null, "city", "direct"));
        Assert.Empty(told.Questions);
        var onPrivate = Last(UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionFiled("2025-12-01"));
        Assert.Equal([4], onPrivate.Corrected("Was everyone sued who holds money on a stop payment notice?"));
        // An action on the debt alone is none on the notice, and nothing is told of any where no notice was given.
        var debt = Last(Given().ActionOn("2025-12-01", ActionOn.Debt));
        Assert.Equal([5], debt.EntriesOf("is not on a stop payment notice"));
        Assert.False(debt.Says("Action filed 2025-12-01"));
        Assert.False(Last(UsualPublic().ActionFiled("2025-12-01")).PassesOver("is not on a stop payment notice"));
    }

    // Given between the 3rd and the 5th: from the 14th at the earliest, surely from the 16th.
    [Theory]
    [InlineData("2025-11-13", Standing.NotYet)]
    [InlineData("2025-11-14", Standing.InDoubt)]
    [InlineData("2025-11-15", Standing.InDoubt)]
    [InlineData("2025-11-16", Standing.Open)]
    [Proves("Civ. Code § 9502(a)")]
    public void The_first_day_to_sue_is_sure_from_the_latest_giving(string asOf, Standing expected)
    {
        var first = Given("2025-11-03..2025-11-05").On(asOf).Get("stop-payment-notice.action-first-day");
        Assert.Equal(["2025-11-14 notice given on its earliest day", "2025-11-16 notice given on its latest day"], first.Lines());
        Assert.Equal((expected, "4"), (first.Standing, string.Join(',', first.HangsOn("Civ. Code § 9502(a)"))));
        Assert.Equal("Action on the stop payment notice: first day", first.Title);
    }

    // Given to owner and lender on one day, there is one first day; on two days two, in their order.
    [Fact]
    [Proves("Civ. Code § 8550(a)")]
    public void Each_day_of_giving_has_its_first_day_to_sue()
    {
        JobBuilder Both() => UsualPrivate("owner", "direct", "bank").Lender();
        var one = Both().StopPaymentGiven("2025-11-03", 6430m, false, "owner", "bank").On("2025-12-01");
        Assert.Equal(["2025-11-14"], one.Get("stop-payment-notice.action-first-day").DaysOf());
        Assert.True(one.Get("stop-payment-notice.action-first-day").Says("given to the owner, construction lender Quay Street Bank"));
        Assert.Null(one.Find("stop-payment-notice.action-first-day.2"));
        var two = Both().StopPaymentGiven("2025-11-10", 6430m, false, "owner").StopPaymentGiven("2025-11-03", 6430m, false, "bank")
            .On("2025-12-01");
        Assert.Equal(("2025-11-14", "2025-11-21"),
            (two.Get("stop-payment-notice.action-first-day").DaysOf().Single(), two.Get("stop-payment-notice.action-first-day.2").DaysOf()
                .Single()));
        Assert.Equal("Action on the stop payment notice to the owner: first day", two.Get("stop-payment-notice.action-first-day.2").Title);
    }

    // Without a notice there is nothing to sue on yet while one can be given, and nothing at all once it cannot.
    [Theory]
    [InlineData("2026-01-20", Standing.NotYet)]
    [InlineData("2026-01-21", Standing.Lost)]
    [Proves("Civ. Code § 9502(b)")]
    public void Without_a_notice_there_is_nothing_to_sue_on(string asOf, Standing expected)
    {
        var last = Last(UsualPublic(), asOf);
        Assert.Equal((expected, expected == Standing.Lost), (last.Standing, last.Says("there is none to sue on")));
        Assert.Equal(["2026-04-20"], last.DaysOf());
        Assert.NotNull(last.Band!.Latest);
        Assert.Empty(last.Questions);
    }

    // Nobody knows when the notice was given: more than ten days before the action, or not.
    [Theory]
    [InlineData("2025-12-01", "2025-12-22", Standing.InDoubt)]
    [InlineData("2025-12-01", "2026-06-01", Standing.InDoubt)]
    [InlineData("2026-04-21", "2026-06-01", Standing.Lost)]
    [InlineData(null, "2026-06-01", Standing.Lost)]
    [Proves("Civ. Code § 9502(a)")]
    [Proves("Civ. Code § 9502(b)")]
    public void An_action_in_time_on_a_notice_of_unknown_day_is_in_doubt(string? filed, string asOf, Standing expected)
    {
        var job = Given("?");
        Assert.Equal(expected, Last(filed is null ? job : job.ActionOn(filed, ActionOn.StopPaymentNotice), asOf).Standing);
    }

    // Sued on 19 September 2026, eleven days after the notice to the owner; the lender was given its own on a day that nobody knows.
    [Theory]
    [InlineData(null, Standing.Kept)]
    [InlineData("2026-09-08", Standing.Kept)]
    [InlineData("2026-09-12", Standing.InDoubt)]
    [InlineData("?", Standing.InDoubt)]
    [Proves("Civ. Code § 8550(a)")]
    public void A_holder_given_its_notice_on_an_unknown_day_leaves_the_action_in_doubt(string? lender, Standing expected)
    {
        var job = new JobBuilder().Lender().Furnished("2026-06-29", 5320m)
            .Notice("2026-07-02", Manner.CertifiedMail, "owner", "direct", "bank").StopPaymentGiven("2026-09-08", 5320m, false, "owner");
        if (lender is not null)
            job.StopPaymentGiven(lender, 5320m, false, "bank");
        Assert.Equal(expected, Last(job.ActionOn("2026-09-19", ActionOn.StopPaymentNotice), "2026-11-01").Standing);
    }

    // A designer has no stop payment notice before the work commences (Civ. Code § 8520(a)): an action on one given before is kept for
    // nobody.
    [Theory]
    [InlineData("2026-07-28", Standing.InDoubt)]
    [InlineData("2026-10-20", Standing.Kept)]
    [Proves("Civ. Code § 8520(a)")]
    public void An_action_on_a_notice_that_may_not_count_is_in_doubt(string given, Standing expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Lender()
            .Work(w => w with { Commenced = JobBuilder.Day("2026-10-05") }).Furnished("2026-06-19", 3340m)
            .Notice("2026-07-08", Manner.CertifiedMail, "owner", "direct", "bank").StopPaymentGiven(given, 3340m, false, "bank")
            .ActionOn("2026-11-05", ActionOn.StopPaymentNotice);
        Assert.Equal(expected, Last(job, "2026-12-01").Standing);
    }
}
