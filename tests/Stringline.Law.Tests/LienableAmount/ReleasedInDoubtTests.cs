using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.LienableAmount;

/// <summary>
/// What a waiver and release may take from a claim beyond what it surely takes (Civ. Code §§ 8124-8138; on federal work
/// 40 U.S.C. § 3133(c)).
/// </summary>
public sealed class ReleasedInDoubtTests
{
    private static JobBuilder Job() =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 100m).Furnished("2026-03-31", 200m).Furnished("2026-04-06", 400m);

    private static JobBuilder With(JobBuilder job, Func<Waived, Waived> change) => job.Which(e => change((Waived)e));

    private static Waterfall Amount(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Amount;

    private static Reason WhyOf(JobBuilder job) =>
        Assert.Single(job.On("2026-06-01").Amount.Steps.Single(s => s.Id == "waived").Why.Children);

    // One form surely releases 100; another, off the form, would release 300 if it settles a dispute (Civ. Code § 8130): 200 hang on that.
    [Fact]
    [Proves("Civ. Code § 8130")]
    [Proves("Civ. Code § 8134")]
    public void What_is_in_doubt_is_counted_beyond_what_is_surely_released()
    {
        var amount = Amount(Job().Waived("2026-03-05", WaiverForm.UnconditionalProgress, "2026-03-02")
            .Waived("2026-04-10", WaiverForm.UnconditionalProgress, "2026-03-31", inForm: false));
        Assert.Equal((600m, 400m, 600m), (amount.Demand, amount.AtLeast, amount.AtMost));
        Assert.Equal(200m,
            Assert.Single(amount.Questions, q => q.Text.StartsWith("How far does the waiver", StringComparison.Ordinal)).Dollars);
    }

    // A credit that may lower the claim by 100 and a release that may take all of it: the least is nothing, and never less.
    [Fact]
    [Proves("Civ. Code § 8130")]
    [Proves("Civ. Code § 8416(a)(1)")]
    public void Two_doubts_never_bring_the_least_below_nothing()
    {
        var amount = Amount(new JobBuilder().Notice("2026-04-20").Furnished("2026-03-02", 300m).Furnished("2026-04-06", 300m)
            .Credited("2026-05-04", 100m)
            .Waived("2026-04-21", WaiverForm.UnconditionalFinal, inForm: false));
        Assert.Equal((300m, 0m, 300m), (amount.Demand, amount.AtLeast, amount.AtMost));
    }

    // 30 days, 2,400.00 or 15.00: one of them lies after the through date.
    [Theory]
    [InlineData(2_400.00, 2_320.00, "Whether it releases $80.00 more is in doubt")]
    [InlineData(15.00, 14.50, "Whether it releases $0.50 more is in doubt")]
    [InlineData(0.00, 0.00, null)]
    [Proves("Civ. Code § 8134")]
    public void A_form_that_binds_says_what_it_surely_releases_and_what_more_it_may(double value, double released, string? doubt)
    {
        var why = WhyOf(new JobBuilder().Notice("2025-09-15").Furnished("2025-09-11", (decimal)value, until: "2025-10-10")
            .Waived("2025-10-20", WaiverForm.UnconditionalProgress, "2025-10-09"));
        Assert.Equal((true, "Civ. Code § 8134"), (why.Applied, why.Section));
        Assert.Contains($"{LawText.Money((decimal)released)} is released", why.Text, StringComparison.Ordinal);
        Assert.Equal(doubt is not null, why.Text.Contains("in doubt", StringComparison.Ordinal));
        Assert.True(doubt is null || why.Text.Contains(doubt, StringComparison.Ordinal));
    }

    // §§ 8132, 8134 release work through the date of the form: an extra agreed on after that date was never within it, so its exception
    // keeps nothing of what the form reaches; one agreed on before may (the form's second exception).
    [Theory]
    [InlineData("2026-03-20", 300.00, 0.00)]
    [InlineData("2026-03-03", 250.00, 50.00)]
    [Proves("Civ. Code § 8134")]
    public void An_extra_agreed_on_after_the_through_date_takes_nothing_off_what_is_released(string agreed, double released, double inDoubt)
    {
        var amount =
            Amount(new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 300m).Changed(agreed, 50m).Furnished("2026-04-06", 50m)
            .Waived("2026-03-30", WaiverForm.UnconditionalProgress, "2026-03-10"));
        var effect = Assert.Single(amount.Waivers);
        Assert.Equal(((decimal)released, (decimal)inDoubt), (effect.Released, effect.InDoubt));
    }

    // The state's form is no matter of federal work: 40 U.S.C. § 3133(c) asks for a writing, signedOn, after the furnishing.
    [Theory]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalProgress, false, null, "Civ. Code § 8124(a)",
        "unless it settles a dispute and names the claim (Civ. Code § 8130); $250.00 hangs on that")]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalProgress, false, false, "Civ. Code § 8124(a)",
        "does not follow the statutory form and releases nothing.")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalProgress, null, null, "Civ. Code § 8132", "is in doubt; $250.00 hangs on it")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, true, null, "Civ. Code § 8136", "is in doubt; $650.00 hangs on it")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, false, null, "40 U.S.C. § 3133(c)", "is in doubt; $250.00 hangs on it")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, null, false, "40 U.S.C. § 3133(c)", "is in doubt; $250.00 hangs on it")]
    [Proves("Civ. Code § 8124")]
    [Proves("40 U.S.C. § 3133(c)")]
    public void A_paper_that_may_bind_says_what_hangs_on_it(WorkKind kind, WaiverForm form, bool? inForm, bool? settlement, string section,
        string says)
    {
        // Whatever comes in after a conditional form that names no sum may be the payment it describes; here 50 of the 300 through its
        // date.
        var why = WhyOf(With(Job().Work(w => w with { Kind = kind }).Waived("2026-04-10", form, "2026-03-31", inForm: inForm),
            w => w with { Settlement = settlement }).Paid("2026-05-04", 50m));
        Assert.Equal((false, section), (why.Applied, why.Section));
        Assert.Contains(says, why.Text, StringComparison.Ordinal);
    }

    // Signed on 10 April for a payment of 50, or with no sum named; the claim is 700 less what came in.
    [Theory]
    [InlineData("2026-04-10", 50.00, 50.00, null, Standing.InDoubt)]
    [InlineData("2026-04-09", 50.00, 50.00, null, Standing.NotYet)]
    [InlineData("2026-04-01..2026-04-10", 50.00, 50.00, null, Standing.InDoubt)] // it may have come on the day of the form
    [InlineData("2026-04-01..2026-04-09", 50.00, 50.00, null, Standing.NotYet)]
    [InlineData("?", 50.00, 50.00, null, Standing.InDoubt)]
    [InlineData("2026-04-10", 49.99, 50.00, null, Standing.NotYet)]
    [InlineData("2026-04-10", 0.50, null, null, Standing.InDoubt)]
    [InlineData("2026-04-10", 0.00, null, null, Standing.NotYet)]
    [InlineData("2026-04-10", 50.00, 50.00, "2026-06-02", Standing.NotYet)] // the check clears tomorrow: no evidence of payment yet
    [InlineData("2026-04-10", 50.00, 50.00, "2026-06-01", Standing.Done)]
    [Proves("Civ. Code § 8124(b)")]
    public void A_conditional_form_may_bind_once_the_sum_it_names_has_come_in(string paid, double sum, double? named, string? cleared,
        Standing expected)
    {
        var job = With(Job().Waived("2026-04-10", WaiverForm.ConditionalProgress, "2026-03-31", cleared: cleared),
            w => w with { Amount = (decimal?)named }).Paid(paid, (decimal)sum);
        Assert.Equal(expected, job.On("2026-06-01").Get("waiver.1").Standing);
    }

    // Signed on some day from 10 to 20 April: what came in on the 15th may have come after it.
    [Theory]
    [InlineData("2026-04-09", Standing.NotYet)]
    [InlineData("2026-04-10", Standing.InDoubt)]
    [InlineData("2026-04-15", Standing.InDoubt)]
    [Proves("Civ. Code § 8124(b)")]
    public void A_payment_inside_the_doubt_of_the_signing_may_be_the_one_described(string paid, Standing expected) =>
        Assert.Equal(expected, Job().Waived("2026-04-10..2026-04-20", WaiverForm.ConditionalProgress, "2026-03-31").Paid(paid, 50m)
            .On("2026-06-01").Get("waiver.1").Standing);

    // 40 U.S.C. § 3133(c): "executed after the person whose right is waived has furnished labor or material". First furnished on some day
    // from 20 to 22 August.
    [Theory]
    [InlineData("2025-08-20..2025-08-22", "2025-08-19", Standing.NotYet)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-20", Standing.InDoubt)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-21", Standing.InDoubt)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-22", Standing.Done)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-18..2025-08-19", Standing.NotYet)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-19..2025-08-20", Standing.InDoubt)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-21..2025-08-23", Standing.InDoubt)]
    [InlineData("2025-08-20..2025-08-22", "2025-08-22..2025-08-23", Standing.Done)]
    [InlineData("?", "2025-08-22", Standing.InDoubt)]
    [InlineData("2025-08-20", "?", Standing.InDoubt)]
    [InlineData(null, "2025-08-22", Standing.NotYet)]
    [Proves("40 U.S.C. § 3133(c)")]
    public void A_federal_waiver_binds_only_where_it_surely_came_after_the_first_furnishing(string? first, string signedOn,
        Standing expected)
    {
        var job = new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Waived(signedOn, WaiverForm.UnconditionalFinal);
        if (first is not null)
            job.Furnished(first, 6_430m);
        var waiver = job.On("2025-10-06").Get("waiver.1");
        // One whose days leave it open how much it releases is in doubt for that too, so that the binding is read from the claim.
        Assert.Equal(expected == Standing.NotYet, waiver.Standing == Standing.NotYet);
        Assert.Equal(expected == Standing.Done, job.On("2025-10-06").Amount.Waivers[0].Binds);
    }

    // Signed on 8 April, through 31 March; 100 of retention held on a later day. Where work went on, some of it may be of that.
    [Theory]
    [InlineData("2026-03-31", "2026-04-06", false)] // nothing was furnished after the through date
    [InlineData("2026-04-01", "2026-04-06", true)]
    [InlineData("2026-04-01", "2026-03-31", false)]
    [InlineData("2026-04-01", "2026-03-30..2026-03-31", false)]
    [InlineData("2026-04-01", "2026-03-31..2026-04-06", true)]
    [Proves("Civ. Code § 8134")]
    public void Retention_held_after_the_through_date_may_be_of_work_after_it(string last, string retained, bool asks)
    {
        var job = new JobBuilder().Notice("2026-03-02").Furnished("2026-03-05", 400m).Furnished(last, 500m)
            .Waived("2026-04-08", WaiverForm.UnconditionalProgress, "2026-03-31").Retained(retained, 100m);
        Assert.Equal(asks, job.On("2026-06-01").Get("waiver.1").Asks("From which work"));
        Assert.Equal(asks ? 100m : 0m, job.On("2026-06-01").Amount.Demand - job.On("2026-06-01").Amount.AtLeast);
    }

    // "Progress payments for which the claimant has previously given a conditional waiver and release but has not received payment" (Civ.
    // Code § 8132, the third exception): a progress form, in its form, given before, and unpaid. 4,100 through 29 August, 1,900 in
    // September; the second form covers both.
    [Theory]
    [InlineData(WaiverForm.ConditionalProgress, "2025-08-29", null, null, null, "2025-09-30", 4_100)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-08-29", true, null, null, "2025-09-30", 4_100)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-08-29", null, null, 4_000, "2025-09-30", 4_000)]
    [InlineData(WaiverForm.ConditionalFinal, "2025-08-29", null, null, null, "2025-09-30", 0)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-08-29", false, null, null, "2025-09-30", 0)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-08-29", null, "2025-09-05", null, "2025-09-30", 0)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-09-29..2025-09-30", null, null, null, "2025-09-30", 0)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-09-28..2025-09-29", null, null, null, "2025-09-30", 4_100)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-10-01", null, null, null, "2025-09-30..2025-10-05", 0)]
    [Proves("Civ. Code § 8132")]
    public void The_third_exception_is_of_earlier_unpaid_progress_forms(WaiverForm form, string earlier, bool? inForm, string? cleared,
        int? named, string signedOn, int demand)
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 4_100m).Furnished("2025-09-08", 1_900m);
        job = With(job.Waived(earlier, form, "2025-08-29", cleared: cleared, inForm: inForm), w =>
            w with { Amount = named, Settlement = inForm == false ? false : null });
        Assert.Equal(demand,
            Amount(job.Waived(signedOn, WaiverForm.ConditionalProgress, "2025-09-30", cleared: "2025-10-07"), "2025-10-08").Demand);
    }

    // Listed by the day of the earlier form, which here is in doubt.
    [Theory]
    [InlineData("2025-08-27", 0)]
    [InlineData("2025-08-28", 4_100)]
    [InlineData("2025-08-29", 4_100)]
    [InlineData("2025-08-30", 4_100)]
    [InlineData("2025-08-31", 0)]
    [Proves("Civ. Code § 8132")]
    public void An_earlier_form_is_listed_by_a_day_on_which_it_may_have_been_signed(string listed, int demand)
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 4_100m).Furnished("2025-09-08", 1_900m)
            .Waived("2025-08-28..2025-08-30", WaiverForm.ConditionalProgress, "2025-08-20");
        Assert.Equal(demand,
            Amount(With(job.Waived("2025-09-30", WaiverForm.ConditionalProgress, "2025-09-30", cleared: "2025-10-07"),
                w => w with { UnpaidWaivers = [Day(listed)] }), "2025-10-08").Demand);
    }

    // An extra of 10 beside 1 that the form excepts: what is listed as an exception settles what of the extras is kept.
    [Theory]
    [InlineData(null, 10)]
    [InlineData(1, 1)]
    [Proves("Civ. Code § 8134")]
    public void A_sum_among_the_exceptions_settles_which_extras_are_kept(int? excepted, int demand) =>
        Assert.Equal(demand, Amount(new JobBuilder().Notice("2026-03-02").Price(1_000m).Furnished("2026-03-02", 900m)
            .Changed("2026-03-03", 10m).Which(e => (Change)e with { InDirectContract = true })
            .Waived("2026-04-08", WaiverForm.UnconditionalProgress, "2026-03-31", excepted)).Demand);

    // The forms keep "extras for which the claimant has not received payment": agreed ones, and a deduction is none.
    [Theory]
    [InlineData(0.50, true, 0.50)]
    [InlineData(2_000.00, false, 0.00)]
    [InlineData(-50.00, true, 0.00)]
    [Proves("Civ. Code § 8134")]
    public void Only_an_agreed_extra_may_be_kept(double extra, bool agreed, double kept)
    {
        var amount = Amount(new JobBuilder().Notice("2026-03-02").Price(1_000m).Furnished("2026-03-02", 900m)
            .Changed("2026-03-03", (decimal)extra, agreed).Which(e => (Change)e with { InDirectContract = true })
            .Waived("2026-04-08", WaiverForm.UnconditionalProgress, "2026-03-31"));
        Assert.Equal((decimal)kept, amount.Demand);
        Assert.Equal(0m, amount.AtLeast);
    }
}
