using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Waiver;

/// <summary>
/// A waiver reaches exactly as far as its words; what is in doubt is claimed with the doubt shown (Civ. Code §§ 8122-8138).
/// </summary>
public sealed class WaiverReachTests
{
    private static JobBuilder Job() => new JobBuilder().Notice("2025-08-14");

    private static JobBuilder With(JobBuilder job, Func<Waived, Waived> change) => job.Which(e => change((Waived)e));

    private static Finding First(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("waiver.1");

    private static Question? Asking(Finding waiver, string field) =>
        waiver.Questions.FirstOrDefault(q => q.Text.EndsWith(field, StringComparison.Ordinal));

    // 30 days, 2,400.00: 15 of them through 25 September.
    [Theory]
    [InlineData("2025-09-10", 2400, 0)]
    [InlineData("2025-09-11", 2320, 2320)]
    [InlineData("2025-09-25", 1200, 1200)]
    [InlineData("2025-10-09", 80, 80)]
    [InlineData("2025-10-10", 0, 0)]
    [Proves("Civ. Code § 8134")]
    public void A_span_across_the_through_date_is_released_by_days_and_the_rest_is_claimed_with_a_doubt(string through, int demand,
        int doubt)
    {
        var job = Job().Notice("2025-09-15").Furnished("2025-09-11", 2400m, until: "2025-10-10")
            .Waived("2025-10-20", WaiverForm.UnconditionalProgress, through);
        var assessment = job.On("2025-12-01");
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal(demand - doubt, assessment.Amount.AtLeast);
        Assert.Equal(doubt > 0 ? Standing.InDoubt : Standing.Done, First(job).Standing);
        Assert.Equal(doubt > 0 ? (decimal?)doubt : null, Asking(First(job), "(furnished.amount)")?.Dollars);
    }

    // What was paid for a span went to its earliest days.
    [Fact]
    [Proves("Civ. Code § 8134")]
    public void A_payment_for_a_span_went_to_its_earliest_days() =>
        Assert.Equal(1200m, Job().Furnished("2025-09-11", 2400m, until: "2025-10-10").Paid("2025-10-02", 1200m)
            .Waived("2025-10-03", WaiverForm.UnconditionalProgress, "2025-09-25").On("2025-12-01").Amount.Demand);

    [Theory]
    [InlineData("2025-10-06", 0)]
    [InlineData("2025-10-07", 865)]
    [InlineData("2025-10-27", 865)]
    [Proves("Civ. Code § 8136")]
    public void Work_after_the_signing_of_a_final_release_is_claimed_and_asked_about(string furnished, int demand)
    {
        var job = Job().Furnished("2025-08-05", 6430m).Paid("2025-10-08", 6430m).Furnished(furnished, 865m)
            .Waived("2025-10-06", WaiverForm.ConditionalFinal, cleared: "2025-10-14");
        Assert.Equal(demand, job.On("2025-12-01").Amount.Demand);
        Assert.Equal(0m, job.On("2025-12-01").Amount.AtLeast);
        Assert.Equal(demand > 0, First(job).Asks("after the signing"));
        Assert.Equal(demand > 0 ? Standing.InDoubt : Standing.Done, First(job).Standing);
        Assert.Equal(865m - demand, First(job).Amount);
    }

    [Theory]
    [InlineData(null, 4100, 0, true)]
    [InlineData("", 0, 0, false)]
    [InlineData("2025-08-29", 4100, 4100, false)]
    [InlineData("2025-08-30", 0, 0, false)]
    [Proves("Civ. Code § 8132")]
    public void The_third_exception_keeps_the_unpaid_payments_that_it_lists(string? listed, int demand, int least, bool asks)
    {
        var job = With(Job().Furnished("2025-08-05", 4100m, "a").Waived("2025-08-29", WaiverForm.ConditionalProgress, "2025-08-29"),
            w => w with { Amount = 4100m })
            .Furnished("2025-09-08", 1900m, "b").Paid("2025-10-02", 1900m, "b");
        job = With(job.Waived("2025-09-30", WaiverForm.ConditionalProgress, "2025-09-30", cleared: "2025-10-07"),
            w => w with { Amount = 1900m, UnpaidWaivers = listed is null ? null : listed.Length == 0 ? [] : [Day(listed)] });
        var assessment = job.On("2025-10-08");
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal(least, assessment.Amount.AtLeast);
        Assert.Equal(asks ? (decimal?)4100m : null, Asking(assessment.Get("waiver.2"), "(waived.unpaidWaivers)")?.Dollars);
        Assert.Equal(asks ? Standing.InDoubt : Standing.Done, assessment.Get("waiver.2").Standing);
    }

    // An unconditional form has no such exception; nor does a waiver that was paid, is off the form, or came on the same day.
    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, null, null, "2025-08-29", 0)]
    [InlineData(WaiverForm.ConditionalProgress, "2025-09-05", null, "2025-08-29", 0)]
    [InlineData(WaiverForm.ConditionalProgress, null, false, "2025-08-29", 0)]
    [InlineData(WaiverForm.ConditionalProgress, null, null, "2025-09-30", 0)]
    [InlineData(WaiverForm.ConditionalProgress, null, null, "2025-09-29", 4100)]
    [Proves("Civ. Code § 8132")]
    public void Only_an_earlier_unpaid_conditional_form_can_be_listed(WaiverForm form, string? earlierCleared, bool? inForm, string earlier,
        int demand)
    {
        var job = Job().Furnished("2025-08-05", 4100m)
            .Waived(earlier, WaiverForm.ConditionalProgress, "2025-08-29", cleared: earlierCleared, inForm: inForm)
            .Waived("2025-09-30", form, "2025-09-30", cleared: "2025-10-07");
        Assert.Equal(demand, job.On("2025-10-08").Amount.Demand);
    }

    [Theory]
    [InlineData("2025-09-02", 6430, false, true)]
    [InlineData("2025-09-05", 6430, false, true)]
    [InlineData("2025-09-06", 6430, true, false)]
    [InlineData("2025-09-02", 6429, true, false)]
    [Proves("Civ. Code § 8134")]
    public void A_receipt_of_the_sum_by_the_signing_is_no_alarm_and_the_clearing_is_asked(string paid, int sum, bool alarm, bool asks)
    {
        var waiver =
            First(With(Job().Furnished("2025-08-05", 6430m, "a").Paid(paid, sum, "a")
                .Waived("2025-09-05", WaiverForm.UnconditionalProgress, "2025-08-31"), w => w with { Amount = 6430m }));
        Assert.Equal(alarm, waiver.Says("signed before its payment cleared"));
        Assert.Equal(asks, Asking(waiver, "(waived.paymentCleared)") is not null);
    }

    [Theory]
    [InlineData("2025-10-06", 5000, 3000, 0, Standing.InDoubt)]
    [InlineData("2025-10-01", 5000, 3000, 0, Standing.InDoubt)]
    [InlineData("2025-09-30", 5000, 3000, 3000, Standing.NotYet)]
    [InlineData("2025-10-06", 4999, 3001, 3001, Standing.NotYet)]
    [Proves("Civ. Code § 8124(b)")]
    public void Money_that_came_in_after_a_conditional_form_makes_it_doubtful_whether_it_binds(string paid, int sum, int demand, int least,
        Standing expected)
    {
        var job = With(Job().Furnished("2025-09-05", 8000m, "a").Paid(paid, sum, "a")
            .Waived("2025-10-01", WaiverForm.ConditionalProgress, "2025-09-30"), w => w with { Amount = 5000m });
        Assert.Equal(demand, job.On("2025-12-01").Amount.Demand);
        Assert.Equal(least, job.On("2025-12-01").Amount.AtLeast);
        Assert.Equal(expected, First(job).Standing);
        Assert.Equal(expected == Standing.InDoubt ? (decimal?)3000m : null, Asking(First(job), "(waived.paymentCleared)")?.Dollars);
    }

    [Theory]
    [InlineData(null, Standing.InDoubt, 700, 0, true)]
    [InlineData(true, Standing.InDoubt, 700, 0, false)]
    [InlineData(false, Standing.NotYet, 700, 700, false)]
    [Proves("Civ. Code § 8130")]
    [Proves("Civ. Code § 8126")]
    public void A_paper_off_the_form_may_be_an_accord_or_a_settlement(bool? settlement, Standing expected, int demand, int least, bool asks)
    {
        var job = With(Job().Furnished("2025-08-05", 700m)
            .Waived("2025-10-01", WaiverForm.UnconditionalProgress, "2025-09-30", inForm: false), w => w with { Settlement = settlement });
        var assessment = job.On("2025-12-01");
        Assert.Equal(expected, First(job).Standing);
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal(least, assessment.Amount.AtLeast);
        Assert.Equal(asks ? (decimal?)700m : null, Asking(First(job), "(waived.settlement)")?.Dollars);
        Assert.Equal(settlement != false, First(job).Sections.Contains("Civ. Code § 8130"));
    }

    // Extras: one sentence of the form gives written change orders up, another keeps what is unpaid of extras.
    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, null, 3000, 1000)]
    [InlineData(WaiverForm.UnconditionalProgress, 500, 1500, 1500)]
    [InlineData(WaiverForm.UnconditionalFinal, null, 0, 0)]
    [Proves("Civ. Code § 8134")]
    public void A_written_extra_is_in_doubt_under_a_progress_form_and_asked_beside_retention(WaiverForm form, int? excepted, int demand,
        int least)
    {
        var job = Job().Price(10_000m).Furnished("2025-08-05", 10_000m, "a").Furnished("2025-09-10", 2000m, "x")
            .Changed("2025-09-08", 2000m).Which(e => (Change)e with { InDirectContract = true })
            .Waived("2025-10-08", form, "2025-09-30", excepted).Paid("2025-10-06", 9000m, "a").Retained("2025-09-30", 1000m);
        var assessment = job.On("2025-12-01");
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal(least, assessment.Amount.AtLeast);
        Assert.Equal(demand == 3000
            ? (decimal?)2000m : form == WaiverForm.UnconditionalProgress ? 1500m : null, Asking(First(job), "(waived.excepted)")?.Dollars);
    }

    [Theory]
    [InlineData("2025-09-30")]
    [InlineData("2025-10-06")]
    [InlineData("?")]
    [Proves("Civ. Code § 8134")]
    public void Retention_is_kept_whatever_the_day_it_was_held(string retained)
    {
        var assessment = Job().Furnished("2025-09-05", 10_000m, "a")
            .Waived("2025-10-08", WaiverForm.UnconditionalProgress, "2025-09-30", cleared: "2025-10-07")
            .Paid("2025-10-06", 9000m).Retained(retained, 1000m).On("2025-12-01");
        Assert.Equal(1000m, assessment.Amount.Demand);
        Assert.Equal(1000m, assessment.Amount.AtLeast);
        Assert.Equal(0m, assessment.Get("waiver.1").Amount);
    }

    // With later work some of what was held after the through date may be of that.
    [Theory]
    [InlineData("2025-09-30", 600, 600, false)]
    [InlineData("2025-10-06", 600, 500, true)]
    [Proves("Civ. Code § 8132")]
    public void Of_retention_held_later_it_is_asked_from_which_work_where_work_went_on(string retained, int demand, int least, bool asks)
    {
        var job = Job().Furnished("2025-09-05", 400m).Furnished("2025-10-02", 500m)
            .Waived("2025-10-08", WaiverForm.UnconditionalProgress, "2025-09-30").Retained(retained, 100m);
        Assert.Equal(demand, job.On("2025-12-01").Amount.Demand);
        Assert.Equal(least, job.On("2025-12-01").Amount.AtLeast);
        Assert.Equal(asks, First(job).Questions.Any(q => q.Text.StartsWith("From which work", StringComparison.Ordinal)
            && q.Dollars == 100m));
    }

    // Signed on 4 August 2025, the work on the 20th; the same paper on private, public and federal work.
    [Theory]
    [InlineData(WorkKind.Private, 6430, 0, Standing.InDoubt, "Civ. Code § 8122")]
    [InlineData(WorkKind.Public, 6430, 0, Standing.InDoubt, "Civ. Code § 8122")]
    [InlineData(WorkKind.Federal, 6430, 6430, Standing.NotYet, "40 U.S.C. § 3133(c)")]
    [Proves("Civ. Code § 8122")]
    [Proves("40 U.S.C. § 3133(c)")]
    public void A_waiver_signed_before_any_work_gives_up_nothing_as_a_fact(WorkKind kind, int demand, int least, Standing expected,
        string section)
    {
        var job = new JobBuilder().Role(ClaimantRole.Laborer).Work(w => w with { Kind = kind }).Furnished("2025-08-20", 6430m)
            .Waived("2025-08-04", WaiverForm.UnconditionalProgress, "2025-11-30");
        var assessment = job.On("2025-10-06");
        Assert.Equal(demand, assessment.Amount.Demand);
        Assert.Equal(least, assessment.Amount.AtLeast);
        var waiver = assessment.Get("waiver.1");
        Assert.Equal(expected, waiver.Standing);
        Assert.Contains(section, waiver.Sections);
        Assert.True(waiver.Says("signed before any work"));
        Assert.Equal(kind == WorkKind.Federal, waiver.Why.Tree().All(r => r.Section.StartsWith("40 U.S.C.", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("2025-08-19", 6430)]
    [InlineData("2025-08-20", 0)]
    [InlineData("2025-08-19..2025-08-20", 6430)]
    [InlineData("?", 6430)]
    [Proves("40 U.S.C. § 3133(c)")]
    public void On_federal_work_a_waiver_counts_only_after_the_first_furnishing(string waivedOn, int demand)
    {
        var job = new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).Furnished("2025-08-20", 6430m)
            .Waived(waivedOn, WaiverForm.UnconditionalProgress, "2025-08-31", inForm: false);
        Assert.Equal(demand, job.On("2025-10-06").Amount.Demand);
        Assert.Equal(waivedOn == "2025-08-19" ? 6430m : 0m, job.On("2025-10-06").Amount.AtLeast);
        Assert.DoesNotContain(job.On("2025-10-06").Get("waiver.1").Why.Tree(), r => r.Section.StartsWith("Civ.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2025-09-05", false)]
    [InlineData("2025-09-06", true)]
    [Proves("Civ. Code § 8122")]
    public void A_through_date_after_the_signing_is_an_alarm(string through, bool alarm) =>
        Assert.Equal(alarm, First(Job().Furnished("2025-08-05", 10m).Waived("2025-09-05", WaiverForm.UnconditionalProgress, through))
            .Says("through date lies after its signing"));

    // The public twin of the private findings (Civ. Code § 8120).
    [Fact]
    [Proves("Civ. Code § 8134")]
    public void Public_work_has_the_same_findings()
    {
        var job = With(new JobBuilder().PublicWork().Furnished("2025-08-05", 6430m, "a")
            .Notice("2025-08-14", Manner.CertifiedMail, "city", "direct")
            .Waived("2025-08-29", WaiverForm.UnconditionalProgress, "2025-08-31"), w => w with { Amount = 1000m });
        var waiver = First(job);
        Assert.Equal(6430m, waiver.Amount);
        Assert.True(waiver.Says("signed before its payment cleared"));
        Assert.True(waiver.Says("reaches further than the money"));
        Assert.NotNull(Asking(waiver, "(waived.inStatutoryForm)"));
        Assert.NotNull(Asking(waiver, "(waived.excepted)"));
    }

    [Fact]
    [Proves("Civ. Code § 8134")]
    public void A_form_of_an_unknown_day_releases_nothing_as_a_fact_and_its_day_is_asked()
    {
        var job = Job().Furnished("2025-08-05", 10m).Waived("?", WaiverForm.UnconditionalProgress, "2025-08-31");
        Assert.Equal(10m, job.On("2025-12-01").Amount.Demand);
        Assert.Equal(0m, job.On("2025-12-01").Amount.AtLeast);
        Assert.Equal(0m, job.On("2025-12-01").Amount.Waivers[0].Reached);
        Assert.Equal(10m, Asking(First(job), "(waived.on)")?.Dollars);
    }
}
