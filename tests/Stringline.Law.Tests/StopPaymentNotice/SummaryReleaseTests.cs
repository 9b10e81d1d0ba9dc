using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// Summary release of money withheld (Civ. Code §§ 9400-9414): without a counteraffidavit, with proof that a copy of it went to the direct
/// contractor, by the time stated, the money goes out without further notice.
/// </summary>
public sealed class SummaryReleaseTests
{
    private static JobBuilder Job() => new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct").StopPaymentGiven("2025-11-03", 6430m, false, "city");

    private static JobBuilder Served(string on = "2025-12-01", string? answerBy = "2025-12-12", Manner? manner = Manner.CertifiedMail) =>
        Job().Add(i => new ReleaseAffidavitServed
    {
        Index = i,
        On = When(on),
        Manner = manner,
        AnswerBy = answerBy is null ? null : Day(answerBy),
        Amount = 6430m,
        Ground = ReleaseGround.Excessive,
    });

    private static JobBuilder Answer(JobBuilder job, string on, bool? proof, Manner? manner, params string[] to) =>
        job.Add(i => new CounteraffidavitServed { Index = i, On = When(on), To = to, Manner = manner, Proof = proof });

    private static Finding Last(JobBuilder job, string asOf) => job.On(asOf).Get("summary-release.answer-last-day");

    [Theory]
    [InlineData("2025-12-01", Standing.Open)]
    [InlineData("2025-12-12", Standing.Open)]
    [InlineData("2025-12-13", Standing.Lost)]
    [Proves("Civ. Code § 9404")]
    [Proves("Civ. Code § 9406(b)")]
    public void The_day_stated_is_the_last(string asOf, Standing expected)
    {
        var last = Last(Served(), asOf);
        Assert.Equal(["2025-12-12"], last.DaysOf());
        Assert.Equal(("2025-12-12", expected, 6430m), (last.Plan(), last.Standing, last.Amount));
        Assert.Null(last.Readings[0].Rolled);
        Assert.True(last.Says("without further notice"));
        Assert.True(last.Says("the claim on the payment bond"));
        Assert.Null(Job().On(asOf).Find("summary-release.answer-last-day"));
    }

    private static (Standing, decimal?) Held(JobBuilder job, string asOf) =>
        job.On(asOf).Get("stop-payment-notice.amount") is var held ? (held.Standing, held.Amount) : default;

    // Unanswered the money demanded goes out at once; the bond does not fall with it (§ 9414).
    [Theory]
    [InlineData("2025-12-12", Standing.Kept, 6430)]
    [InlineData("2025-12-13", Standing.Lost, 0)]
    [Proves("Civ. Code § 9406(b)")]
    [Proves("Civ. Code § 9414")]
    public void Unanswered_nothing_is_held_any_more(string asOf, Standing expected, int amount)
    {
        Assert.Equal((expected, amount), Held(Served(), asOf));
        Assert.Equal(6430m, Served().On(asOf).Get("payment-bond.amount").Amount);
        Assert.Equal((Standing.Kept, 6430m), Held(Job(), asOf));
    }

    [Theory]
    [InlineData(true, Standing.Kept)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Civ. Code § 9406(b)")]
    public void What_is_held_hangs_on_the_counteraffidavit_and_its_proof(bool? proof, Standing expected) =>
        Assert.Equal((expected, expected == Standing.Lost ? 0m : 6430m),
            Held(Answer(Served(), "2025-12-11", proof, Manner.Personal, "city", "direct"), "2025-12-13"));

    // A part demanded leaves the rest; a demand without a sum takes all.
    [Theory]
    [InlineData(2000, Standing.Kept, 4430)]
    [InlineData(7000, Standing.Lost, 0)]
    [InlineData(null, Standing.Lost, 0)]
    [Proves("Civ. Code § 9406(b)")]
    public void Only_the_part_demanded_goes_out(int? demanded, Standing expected, int left) =>
        Assert.Equal((expected, left),
            Held(Job().Add(i => new ReleaseAffidavitServed { Index = i, On = When("2025-12-01"), AnswerBy = Day("2025-12-12"),
                Manner = Manner.CertifiedMail, Amount = demanded }), "2025-12-13"));

    // The notice claims 10,000 and 6,430 are due: the 3,570 claimed too much go out first.
    [Theory]
    [InlineData(3570, Standing.Kept, 6430)]
    [InlineData(4000, Standing.Kept, 6000)]
    [InlineData(10000, Standing.Lost, 0)]
    [Proves("Civ. Code § 9406(b)")]
    public void What_was_claimed_too_much_goes_out_first(int demanded, Standing expected, int left)
    {
        var job = new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "city", "direct")
            .StopPaymentGiven("2025-11-03", 10_000m, false, "city")
            .Add(i => new ReleaseAffidavitServed { Index = i, On = When("2025-12-01"), AnswerBy = Day("2025-12-12"),
                Manner = Manner.CertifiedMail, Amount = demanded });
        Assert.Equal((expected, left), Held(job, "2025-12-13"));
    }

    [Theory]
    [InlineData(ReleaseGround.NotSuchAClaim, "not of a kind")]
    [InlineData(ReleaseGround.NotSuchAClaimant, "not one who may give it")]
    [InlineData(ReleaseGround.Excessive, "the amount is excessive")]
    [InlineData(ReleaseGround.NoBasis, "no basis for the claim")]
    [Proves("Civ. Code § 9400")]
    public void The_ground_that_must_be_rebutted_is_told(ReleaseGround ground, string words) =>
        Assert.True(Last(Job()
            .Add(i => new ReleaseAffidavitServed { Index = i, On = When("2025-12-01"), AnswerBy = Day("2025-12-12"), Ground = ground }),
            "2025-12-02").Says(words));

    // The day is never rolled: Saturday 13 December is planned on the Friday.
    [Fact]
    [Proves("Civ. Code § 9404")]
    public void A_day_that_is_closed_is_planned_on_the_open_day_before()
    {
        var last = Last(Served(answerBy: "2025-12-13"), "2025-12-02");
        Assert.Equal(["2025-12-13"], last.DaysOf());
        Assert.Equal("2025-12-12", last.Plan());
        Assert.Equal(Standing.Lost, Last(Served(answerBy: "2025-12-13"), "2025-12-15").Standing);
    }

    [Theory]
    [InlineData(null, new[] { "2025-12-11" }, "2025-12-11", true)] // none stated: the tenth day
    [InlineData("2025-12-05", new[] { "2025-12-05", "2025-12-11" }, "2025-12-05", true)] // too short: the stated day is the earlier
    [InlineData("2025-12-10", new[] { "2025-12-10", "2025-12-11" }, "2025-12-10", true)]
    [InlineData("2025-12-11", new[] { "2025-12-11" }, "2025-12-11", false)]
    [InlineData("2025-12-21", new[] { "2025-12-21" }, "2025-12-19", false)] // a Sunday
    [InlineData("2025-12-22", new[] { "2025-12-21", "2025-12-22" }, "2025-12-19", true)] // more than twenty: the twentieth is planned on
    [Proves("Civ. Code § 9404")]
    public void Between_ten_and_twenty_days_after_service_it_is_as_the_section_asks(string? answerBy, string[] days, string plan, bool says)
    {
        var last = Last(Served(answerBy: answerBy), "2025-12-02");
        Assert.Equal(days, last.DaysOf());
        Assert.Equal(plan, last.Plan());
        Assert.Equal(says, last.Says("not as the section asks"));
        Assert.Equal(answerBy is null, last.Asks("(release-affidavit-served.answerBy)"));
    }

    [Theory]
    [InlineData(null, "2025-12-11", "2025-12-12")]
    [InlineData("2025-12-05", "2025-12-11", "2025-12-12")]
    [InlineData("2025-12-22", "2025-12-22", "2025-12-23")]
    [Proves("Civ. Code § 9404")]
    public void A_notice_that_is_not_as_the_section_asks_leaves_what_came_after_the_planned_day_in_doubt(string? answerBy, string inDoubt,
        string after)
    {
        Assert.NotEqual(Standing.Lost, Last(Served(answerBy: answerBy), inDoubt).Standing);
        Assert.Equal(answerBy == "2025-12-22" ? Standing.Lost : Standing.InDoubt, Last(Served(answerBy: answerBy), after).Standing);
    }

    // Left and mailed, service is complete five days later, and so are the ten days.
    [Fact]
    [Proves("Civ. Code § 9404")]
    public void The_days_run_from_the_service_on_the_claimant_when_it_is_complete() =>
        Assert.Equal(["2025-12-16"], Last(Served(answerBy: "2025-12-16", manner: Manner.Substituted), "2025-12-08").DaysOf());

    [Fact]
    [Proves("Civ. Code § 9406(a)")]
    public void Only_the_paper_to_the_entity_a_copy_to_the_contractor_and_its_proof_together_keep_the_money_held()
    {
        Standing After(JobBuilder job) => Last(job, "2025-12-15").Standing;
        Assert.Equal(Standing.Kept, After(Answer(Served(), "2025-12-12", true, Manner.Personal, "city", "direct")));
        Assert.Equal(Standing.Kept,
            After(Answer(Answer(Served(), "2025-12-11", null, Manner.CertifiedMail, "direct"), "2025-12-12", true, Manner.Personal,
                "city")));
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-13", true, Manner.Personal, "city", "direct")));
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-12", true, Manner.Personal, "city")));
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-12", true, Manner.Personal, "direct")));
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-12", false, Manner.Personal, "city", "direct")));
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-12", true, Manner.FirstClassMail, "city", "direct")));
        // complete on the 14th
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-12-09", true, Manner.Substituted, "city", "direct")));
        Assert.Equal(Standing.Kept, After(Answer(Served(), "2025-12-05", true, Manner.Substituted, "city", "direct")));
        // One made before the affidavit came answers nothing.
        Assert.Equal(Standing.Lost, After(Answer(Served(), "2025-11-28", true, Manner.Personal, "city", "direct")));
    }

    [Fact]
    [Proves("Civ. Code § 9406(a)")]
    public void What_the_file_does_not_say_of_the_answer_is_asked()
    {
        var proof = Last(Answer(Served(), "2025-12-10", null, Manner.Personal, "city", "direct"), "2025-12-15");
        Assert.Equal(Standing.InDoubt, proof.Standing);
        Assert.True(proof.Asks("(counteraffidavit-served.proof)"));
        Assert.True(proof.Says("unless the proof of service went with it"));
        var manner = Last(Answer(Served(), "2025-12-10", true, null, "city", "direct"), "2025-12-15");
        Assert.Equal(Standing.InDoubt, manner.Standing);
        Assert.True(manner.Asks("(counteraffidavit-served.manner)"));
        // What is missing can still be put right until the day.
        Assert.Equal(Standing.Open, Last(Answer(Served(), "2025-12-10", true, Manner.Personal, "city"), "2025-12-11").Standing);
        Assert.True(Last(Answer(Served(), "2025-12-10", true, Manner.Personal, "city"), "2025-12-11")
            .Says("no copy to the direct contractor"));
    }

    [Theory]
    [InlineData(Manner.Personal, "2026-01-09", Standing.Kept)]
    [InlineData(Manner.Personal, "2026-01-10", Standing.InDoubt)]
    [InlineData(Manner.CertifiedMail, "2026-01-04", Standing.Kept)]
    [InlineData(Manner.CertifiedMail, "2026-01-05", Standing.InDoubt)]
    [InlineData(null, "2026-01-04", Standing.Kept)]
    [InlineData(null, "2026-01-09", Standing.InDoubt)]
    [Proves("Civ. Code § 9408(b)")]
    [Proves("Civ. Code § 9408(c)")]
    public void Notice_of_the_hearing_is_given_five_days_before_it_and_ten_by_mail(Manner? manner, string noticed, Standing expected)
    {
        var job = Answer(Served(), "2025-12-10", true, Manner.Personal, "city", "direct")
            .Add(i => new RightsActionFiled { Index = i, On = When("2025-12-22") })
            .Add(i => new HearingNoticed { Index = i, On = When(noticed), Manner = manner, Hearing = Day("2026-01-14") });
        var notice = job.On("2026-01-12").Get("summary-release.hearing-notice");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(["2026-01-14"], notice.DaysOf());
        Assert.Equal(manner is null && expected == Standing.InDoubt, notice.Asks("(hearing-noticed.manner)"));
    }

    [Fact]
    [Proves("Civ. Code § 9408(a)")]
    [Proves("Civ. Code § 9408(d)")]
    public void Once_the_papers_are_served_either_side_may_ask_the_court()
    {
        var kept = Answer(Served(), "2025-12-10", true, Manner.Personal, "city", "direct");
        var action = kept.On("2025-12-15").Get("summary-release.rights-action");
        Assert.Equal(Standing.Open, action.Standing);
        Assert.True(action.Says("no action on the stop payment notice"));
        Assert.Equal(Standing.Done, kept.Add(i => new RightsActionFiled { Index = i, On = When("2025-12-22") }).On("2026-01-05")
            .Get("summary-release.rights-action").Standing);
        Assert.Null(Served().On("2025-12-15").Find("summary-release.rights-action"));
    }

    [Theory]
    [InlineData(2400, Standing.Done)]
    [InlineData(null, Standing.Done)]
    [Proves("Civ. Code § 9412(c)")]
    [Proves("Civ. Code § 9414")]
    public void The_order_settles_what_is_withheld_and_leaves_bond_and_debt_alone(int? freed, Standing expected)
    {
        var order = Answer(Served(), "2025-12-10", true, Manner.Personal, "city", "direct")
            .Add(i => new ReleaseOrdered { Index = i, On = When("2026-01-20"), Amount = freed }).On("2026-02-02");
        Assert.Equal((expected, freed ?? 0m), (order.Get("summary-release.order").Standing, order.Get("summary-release.order").Amount));
        Assert.Equal(freed is null, order.Get("summary-release.order").Says("denied"));
        Assert.True(order.Get("summary-release.order").Says("the claim on the payment bond"));
        Assert.Null(order.Find("summary-release.rights-action"));
    }

    // Served on a day that nobody knows: the ten to twenty days may be over, and nothing of it is sure.
    [Theory]
    [InlineData("2025-12-12", "2025-12-12", "2025-12-02")]
    [InlineData("2025-12-12", "2025-12-12", "2026-02-02")]
    [InlineData(null, "2025-12-02", "2025-12-02")]
    [Proves("Civ. Code § 9404")]
    public void An_affidavit_of_an_unknown_day_is_in_doubt_with_the_question(string? answerBy, string plan, string asOf)
    {
        var last = Last(Served("?", answerBy), asOf);
        Assert.Equal((Standing.InDoubt, plan, (decimal?)6430m), (last.Standing, last.Plan(), last.Amount));
        Assert.True(last.Asks("(release-affidavit-served.on)"));
        Assert.Contains(Served("?", answerBy).On(asOf).Next, n => n.Finding == "summary-release.answer-last-day");
        Assert.Equal(Standing.InDoubt,
            Last(Answer(Served("?", answerBy), "2025-12-01", true, Manner.Personal, "city", "direct"), asOf).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9404")]
    public void Each_affidavit_has_an_answer_of_its_own_and_it_stands_first_among_what_is_to_be_done()
    {
        var second = Served()
            .Add(i => new ReleaseAffidavitServed { Index =
                i, On = When("2025-12-03"), Manner = Manner.Personal, AnswerBy = Day("2025-12-17") }).On("2025-12-04");
        Assert.Equal("2025-12-17", second.Get("summary-release.answer-last-day.2").Plan());
        Assert.Contains(Served().On("2025-12-04").Next, s => s.Finding == "summary-release.answer-last-day"
            && s.Do.Contains("counteraffidavit", StringComparison.Ordinal));
    }
}
