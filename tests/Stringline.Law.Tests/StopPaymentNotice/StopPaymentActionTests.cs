using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>The action on a stop payment notice: each notice has its own first day; telling of it; trial; how it ends.</summary>
public sealed class StopPaymentActionTests
{
    // To the owner on 3 November, to the lender on 1 December: the eleventh days are 14 November and 12 December.
    private static JobBuilder Two() => UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m)
        .StopPaymentGiven("2025-12-01", 6430m, true, "bank").Paper(p => p with { BondAmount = 8037.50m });

    [Fact]
    [Proves("Civ. Code § 8550(a)")]
    public void Two_notices_have_two_first_days()
    {
        var assessment = Two().On("2025-12-05");
        Assert.Equal(["2025-11-14"], assessment.Get("stop-payment-notice.action-first-day").DaysOf());
        Assert.Equal(["2025-12-12"], assessment.Get("stop-payment-notice.action-first-day.2").DaysOf());
        Assert.Equal("Action on the stop payment notice to the construction lender Quay Street Bank: first day",
            assessment.Get("stop-payment-notice.action-first-day.2").Title);
        Assert.Equal(Standing.Open, assessment.Get("stop-payment-notice.action-first-day").Standing);
        Assert.Equal(Standing.NotYet, assessment.Get("stop-payment-notice.action-first-day.2").Standing);
        // Given to both on one day there is one.
        Assert.Null(UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m, false, "owner", "bank")
            .On("2025-12-05").Find("stop-payment-notice.action-first-day.2"));
    }

    [Theory]
    [InlineData("2025-12-05", Standing.InDoubt)]
    [InlineData("2025-12-11", Standing.InDoubt)]
    [InlineData("2025-12-12", Standing.Kept)]
    [Proves("Civ. Code § 8550(a)")]
    [Proves("Civ. Code § 8550(b)")]
    public void One_suit_on_both_waits_for_the_later_of_them(string filed, Standing expected)
    {
        var last = Two().ActionFiled(filed).On("2025-12-20").Get("stop-payment-notice.action-last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal("2026-04-20", last.Plan());
        Assert.Equal(expected == Standing.InDoubt,
            last.Says("ten days from giving the notice to the construction lender Quay Street Bank had not surely passed"));
    }

    // A suit of 20 November on the lien is none on the notice of 10 December; that of 21 January is, and is told by Monday the 26th.
    [Fact]
    [Proves("Civ. Code § 8550(e)")]
    public void The_five_days_run_from_the_suit_on_the_notice_and_from_no_other()
    {
        var tell = UsualPrivate().ClaimRecorded("2025-11-03", 6430m).ActionFiled("2025-11-20").StopPaymentGiven("2025-12-10", 6430m)
            .ActionFiled("2026-01-21").On("2026-01-24").Get("stop-payment-notice.tell-of-action");
        Assert.Equal(["2026-01-26"], tell.DaysOf());
        Assert.Equal(Standing.Open, tell.Standing);
    }

    [Theory]
    [InlineData(new[] { ActionOn.Lien }, false)]
    [InlineData(new[] { ActionOn.Lien, ActionOn.StopPaymentNotice }, true)]
    [InlineData(new ActionOn[0], true)]
    [Proves("Civ. Code § 8550(b)")]
    [Proves("Civ. Code § 8550(e)")]
    public void An_action_counts_if_it_is_on_the_notice_or_nobody_says_what_it_is_on(ActionOn[] on, bool counts)
    {
        var assessment = UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionFiled("2026-01-05")
            .Action(a => a with { Enforces = on }).On("2026-01-06");
        Assert.Equal(counts ? Standing.Kept : Standing.Open, assessment.Get("stop-payment-notice.action-last-day").Standing);
        Assert.Equal(counts, assessment.Find("stop-payment-notice.tell-of-action") is not null);
        Assert.Equal(on.Length == 0, assessment.Get("stop-payment-notice.action-last-day").Asks("(action-filed.enforces)"));
        Assert.Equal(!counts, assessment.Get("stop-payment-notice.action-last-day").RuledOut("Civ. Code § 8550(b)"));
    }

    [Theory]
    [InlineData("city,direct", Standing.Kept)]
    [InlineData("city", Standing.InDoubt)]
    [InlineData("direct", Standing.InDoubt)]
    [InlineData("", Standing.Kept)]
    [Proves("Civ. Code § 9502(b)")]
    public void On_public_work_entity_and_contractor_are_sued_both(string against, Standing expected)
    {
        var last = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").ActionFiled("2026-01-05")
            .Action(a => a with { Against = against.Length == 0 ? [] : against.Split(',') }).On("2026-01-06")
            .Get("stop-payment-notice.action-last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(against.Length == 0, last.Asks("Were the public entity and the direct contractor both sued? (action-filed.against)"));
    }

    [Theory]
    [InlineData("owner", Standing.InDoubt)]
    [InlineData("bank", Standing.InDoubt)]
    [InlineData("owner,bank", Standing.Kept)]
    [Proves("Civ. Code § 8550(b)")]
    public void On_private_work_each_who_holds_is_sued(string against, Standing expected) =>
        Assert.Equal(expected, UsualPrivate("owner", "direct", "bank").Lender()
            .StopPaymentGiven("2025-11-03", 6430m, false, "owner", "bank").ActionFiled("2026-01-05")
            .Action(a => a with { Against = against.Split(',') }).On("2026-01-06").Get("stop-payment-notice.action-last-day").Standing);

    [Fact]
    [Proves("Civ. Code § 9500")]
    [Proves("Civ. Code § 9502(d)")]
    public void Against_whom_and_that_no_claim_is_filed_first_is_said()
    {
        var last = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").On("2025-12-01")
            .Get("stop-payment-notice.action-last-day");
        Assert.True(last.Says("against the public entity and the direct contractor"));
        Assert.True(last.Says("No claim need be filed with the entity before (Civ. Code § 9500(b))"));
    }

    // Filed Monday 5 January 2026: told by Saturday the 10th.
    [Theory]
    [InlineData("2026-01-09", Manner.CertifiedMail, "city", Standing.Kept)]
    [InlineData("2026-01-10", null, "city", Standing.Kept)]
    [InlineData("2026-01-12", Manner.CertifiedMail, "city", Standing.InDoubt)]
    [InlineData("2026-01-05", Manner.Substituted, "city", Standing.Kept)]
    [InlineData("2026-01-06", Manner.Substituted, "city", Standing.InDoubt)]
    [InlineData("2026-01-09", Manner.Email, "city", Standing.InDoubt)]
    [InlineData("2026-01-09", Manner.CertifiedMail, "direct", Standing.InDoubt)]
    [InlineData("2026-01-02", Manner.CertifiedMail, "city", Standing.InDoubt)]
    [Proves("Civ. Code § 9504")]
    public void Told_in_time_and_in_the_manner_of_the_notice_it_is_kept(string on, Manner? manner, string to, Standing expected)
    {
        var tell = UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").ActionFiled("2026-01-05")
            .Add(i => new ActionTold { Index = i, On = JobBuilder.When(on), To = [to], Manner = manner }).On("2026-06-15")
            .Get("stop-payment-notice.tell-of-action");
        Assert.Equal(["2026-01-10"], tell.DaysOf());
        Assert.Equal(expected, tell.Standing);
        Assert.Equal(manner is null, tell.Asks("(action-told.manner)"));
    }

    [Fact]
    [Proves("Civ. Code § 8550(e)")]
    public void Everyone_who_got_the_notice_is_told()
    {
        JobBuilder Job(params string[] told) => UsualPrivate("owner", "direct", "bank").Lender()
            .StopPaymentGiven("2025-11-03", 6430m, false, "owner", "bank").ActionFiled("2026-01-05")
            .Add(i => new ActionTold { Index = i, On = JobBuilder.When("2026-01-06"), To = told });
        Assert.Equal(Standing.Kept, Job("owner", "bank").On("2026-06-15").Get("stop-payment-notice.tell-of-action").Standing);
        var one = Job("owner").On("2026-06-15").Get("stop-payment-notice.tell-of-action");
        Assert.Equal(Standing.InDoubt, one.Standing);
        Assert.True(one.Says("does not show that the construction lender Quay Street Bank was told"));
    }

    // Filed 5 January 2026: two years end on 5 January 2028.
    [Theory]
    [InlineData("2028-01-05", Standing.Open)]
    [InlineData("2028-06-01", Standing.InDoubt)]
    [Proves("Civ. Code § 9508")]
    public void It_is_brought_to_trial_within_two_years(string asOf, Standing expected)
    {
        JobBuilder Job() => UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city").ActionFiled("2026-01-05");
        var trial = Job().On(asOf).Get("stop-payment-notice.prosecution-last-day");
        Assert.Equal(["2028-01-05"], trial.DaysOf());
        Assert.Equal(expected, trial.Standing);
        Assert.Equal(["Civ. Code § 9508"], trial.Sections);
        Assert.Equal(Standing.Kept, Job().Add(i => new TrialBegun { Index = i, On = JobBuilder.When("2027-12-01") }).On(asOf)
            .Get("stop-payment-notice.prosecution-last-day").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8554")]
    public void On_private_work_the_two_years_stand_in_their_own_row_once_the_action_is_said_to_be_on_the_notice()
    {
        JobBuilder Job() => UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionFiled("2026-01-05");
        Assert.Null(Job().On("2026-02-02").Find("stop-payment-notice.prosecution-last-day"));
        var trial = Job().Action(a => a with { Enforces = [ActionOn.StopPaymentNotice] }).On("2026-02-02")
            .Get("stop-payment-notice.prosecution-last-day");
        Assert.Equal(["Civ. Code § 8554"], trial.Sections);
        Assert.Equal("2028-01-05", trial.Plan());
    }

    [Theory]
    [InlineData(ActionEnd.Dismissed, false, Standing.Lost)]
    [InlineData(ActionEnd.Dismissed, null, Standing.InDoubt)]
    [InlineData(ActionEnd.Dismissed, true, Standing.InDoubt)]
    [InlineData(ActionEnd.LostAtTrial, null, Standing.Lost)]
    [InlineData(ActionEnd.Won, null, Standing.Done)]
    [InlineData(ActionEnd.Settled, null, Standing.Done)]
    [InlineData(ActionEnd.ReleaseOrdered, null, Standing.Kept)]
    [Proves("Civ. Code § 8556")]
    [Proves("Civ. Code § 9510")]
    public void How_the_action_ended_decides_what_the_notice_still_holds(ActionEnd how, bool? withoutPrejudice, Standing expected)
    {
        foreach (var job in (JobBuilder[])[UsualPublic().StopPaymentGiven("2025-11-03", 6430m, false, "city"), UsualPrivate()
            .StopPaymentGiven("2025-11-03", 6430m)])
        {
            var assessment = job.ActionFiled("2026-01-05")
                .Add(i => new ActionEnded { Index = i, On = JobBuilder.When("2027-03-01"), How = how, WithoutPrejudice = withoutPrejudice })
                .On("2028-01-04");
            var last = assessment.Get("stop-payment-notice.action-last-day");
            Assert.Equal(expected, last.Standing);
            Assert.Equal(how == ActionEnd.Dismissed && withoutPrejudice is null, last.Asks("(action-ended.withoutPrejudice)"));
            Assert.Equal(expected switch { Standing.Lost or Standing.Done => expected, _ => Standing.Kept },
                assessment.Get("stop-payment-notice.amount").Standing);
        }
    }

    [Fact]
    [Proves("Civ. Code § 8556")]
    public void The_end_of_another_action_ends_nothing()
    {
        JobBuilder Job(string of) => UsualPrivate().StopPaymentGiven("2025-11-03", 6430m).ActionFiled("2026-01-05")
            .Action(a => a with { Id = "on-notice" }).ActionFiled("2026-01-06")
            .Action(a => a with { Id = "on-debt", Enforces = [ActionOn.Debt] })
            .Add(i => new ActionEnded { Index = i, On = JobBuilder.When("2026-03-02"), How = ActionEnd.LostAtTrial, Of = of });
        Assert.Equal(Standing.Kept, Job("on-debt").On("2026-05-04").Get("stop-payment-notice.action-last-day").Standing);
        Assert.Equal(Standing.Lost, Job("on-notice").On("2026-05-04").Get("stop-payment-notice.action-last-day").Standing);
    }

    // Long after both days are over "not yet" would name a day that is past.
    [Fact]
    [Proves("Civ. Code § 8550(b)")]
    public void With_completion_contested_and_all_days_past_an_action_never_possible_is_in_doubt_and_not_to_come()
    {
        var job = Private().Furnished("2025-10-20", 6430m).Notice("2025-10-20").Furnished("2025-10-22", 1m).Ended("2025-10-22")
            .Completed("2025-10-22", contested: true);
        Assert.Equal(Standing.NotYet, job.On("2026-04-20").Get("stop-payment-notice.action-last-day").Standing);
        Assert.Equal(Standing.InDoubt, job.On("2026-04-21").Get("stop-payment-notice.action-last-day").Standing);
    }
}
