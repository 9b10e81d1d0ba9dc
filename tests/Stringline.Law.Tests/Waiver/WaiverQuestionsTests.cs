using System.Globalization;
using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Waiver;

/// <summary>What is asked about a waiver and release: every question, the sum that hangs on each, and none besides.</summary>
public sealed partial class WaiverQuestionsTests
{
    [GeneratedRegex(@"\((?:waived\.)?([a-zA-Z.]+)\)$")]
    private static partial Regex Field();

    private static Finding Waiver(JobBuilder job, string id = "waiver.1") => job.On("2025-12-01").Get(id);

    private static string Asked(Finding waiver) => string.Join(" ", waiver.Questions.Select(q =>
        $"{(Field().Match(q.Text) is { Success: true } field
            ? field.Groups[1].Value : "after")}={q.Dollars?.ToString("0.##", CultureInfo.InvariantCulture)}"));

    private static JobBuilder Job(WorkKind kind = WorkKind.Private) =>
        new JobBuilder().Work(w => w with { Kind = kind }).Notice("2025-08-14");

    private static JobBuilder With(JobBuilder job, Func<Waived, Waived> change) => job.Which(e => change((Waived)e));

    // 2,400.00 over the 30 days from 11 September to 10 October 2025, 80.00 a day: the forms reach what was provided by the earlier of the
    // through date and the signing (Civ. Code §§ 8122, 8134; a final form has no through date, § 8138). There the entry may be split.
    [Theory]
    [InlineData(WaiverForm.UnconditionalProgress, "2025-10-20", "2025-09-25", "2025-09-25 (Thu)",
        "inStatutoryForm=2400 furnished.amount=1200 excepted=1200 retained=1200")]
    [InlineData(WaiverForm.UnconditionalProgress, "2025-09-25", "2025-10-05", "2025-09-25 (Thu)",
        "inStatutoryForm=2400 furnished.amount=1200 excepted=1200 retained=1200")]
    [InlineData(WaiverForm.UnconditionalProgress, "2025-09-25", null, "2025-09-25 (Thu)",
        "inStatutoryForm=2400 furnished.amount=1200 excepted=1200 retained=1200")]
    [InlineData(WaiverForm.UnconditionalProgress, "2025-09-20..2025-09-25", "2025-09-22", "2025-09-20 (Sat)",
        "inStatutoryForm=2400 furnished.amount=1600 excepted=800 retained=800")]
    [InlineData(WaiverForm.UnconditionalFinal, "2025-09-25", "2025-09-20", "2025-09-25 (Thu)",
        "inStatutoryForm=2400 furnished.amount=1200")]
    [InlineData(WaiverForm.UnconditionalProgress, "?", "2025-09-25", "2025-09-25 (Thu)",
        "inStatutoryForm=2400 on=2400 furnished.amount=2400")]
    [Proves("Civ. Code § 8134")]
    [Proves("Civ. Code § 8138")]
    public void Work_over_days_on_both_sides_is_asked_to_be_split_at_the_day_reached(WaiverForm form, string signedOn, string? through,
        string at, string asked)
    {
        var waiver = Waiver(Job().Furnished("2025-09-11", 2400m, until: "2025-10-10").Waived(signedOn, form, through));
        Assert.Equal(asked, Asked(waiver));
        Assert.True(waiver.Asks($"What was furnished by {at}"));
        // The answer corrects the paper's own entry, but that of the work is another.
        Assert.All(waiver.Questions, q => Assert.Equal(!q.Text.Contains("(furnished", StringComparison.Ordinal)
            && !q.Text.Contains("(retained", StringComparison.Ordinal), q.Corrects is Waived));
    }

    // Half a dollar is money.
    [Theory]
    [InlineData("2025-09-05", "2025-09-05", "2025-10-01", null, Standing.Done, "inStatutoryForm=0.5 excepted=0.5 retained=0.5")]
    [InlineData("2025-10-02", "2025-10-02", "2025-10-01", null, Standing.InDoubt, "inStatutoryForm=0.5 after=0.5")]
    [InlineData("2025-10-01", "2025-10-02", "2025-10-03", "2025-10-01", Standing.InDoubt,
        "inStatutoryForm=0.5 furnished.amount=0.25 excepted=0.25 retained=0.25")]
    [InlineData("2025-10-01", "2025-10-02", "2025-10-03", "2025-09-30", Standing.Done, "inStatutoryForm=0")]
    [Proves("Civ. Code § 8134")]
    public void Each_sum_asked_about_is_what_hangs_on_the_answer(string from, string until, string signedOn, string? through,
        Standing expected, string asked)
    {
        var waiver = Waiver(Job().Furnished(from, 0.50m, until: until).Waived(signedOn, WaiverForm.UnconditionalProgress, through));
        Assert.Equal((expected, asked), (waiver.Standing, Asked(waiver)));
        Assert.Equal(expected == Standing.InDoubt, waiver.Says(" more is in doubt"));
    }

    // Civ. Code § 8132, exception (3): 4,100.00 of work reached; an earlier paper of 5,000.00, or of half a dollar, that was not paid.
    [Theory]
    [InlineData("5000", "inStatutoryForm=4100 unpaidWaivers=4100")]
    [InlineData("0.50", "inStatutoryForm=4100 unpaidWaivers=0.5 excepted=4099.5 retained=4099.5")]
    [Proves("Civ. Code § 8132")]
    public void An_earlier_paper_that_was_not_paid_is_asked_about_as_far_as_the_later_one_reaches(string earlier, string asked)
    {
        var job = With(Job().Furnished("2025-08-05", 4100m).Waived("2025-08-29", WaiverForm.ConditionalProgress, "2025-08-29"),
            w => w with { Amount = decimal.Parse(earlier, CultureInfo.InvariantCulture) })
            .Waived("2025-09-30", WaiverForm.ConditionalProgress, "2025-09-30", cleared: "2025-10-07");
        Assert.Equal(asked, Asked(Waiver(job, "waiver.2")));
    }

    // Civ. Code § 8134: written extras, which one sentence releases and exception (2) keeps; retention, exception (1).
    [Theory]
    [InlineData("0.50", null, "inStatutoryForm=1000 excepted=0.5 retained=999.5", "Is part of it an unpaid extra?")]
    [InlineData("1500", null, "inStatutoryForm=1000 excepted=1000", "Is part of it an unpaid extra?")]
    [InlineData(null, null, "inStatutoryForm=1000 excepted=1000 retained=1000", "Is part of the released amount an unpaid extra?")]
    [InlineData(null, "0.50", "inStatutoryForm=1000 excepted=999.5 retained=0.5", "From which work was the retention held")]
    [InlineData(null, "1500", "inStatutoryForm=1000 retained=1000", "From which work was the retention held")]
    [Proves("Civ. Code § 8134")]
    public void Extras_and_retention_are_asked_about_as_far_as_the_form_reaches(string? extra, string? retained, string asked, string words)
    {
        var job = Job().Furnished("2025-08-05", 1000m).Furnished("2025-10-02", 500m)
            .Waived("2025-10-08", WaiverForm.UnconditionalProgress, "2025-09-30");
        if (extra is not null)
            job.Changed("2025-08-10", decimal.Parse(extra, CultureInfo.InvariantCulture));
        if (retained is not null)
            job.Retained("2025-10-06", decimal.Parse(retained, CultureInfo.InvariantCulture));
        Assert.Equal(asked, Asked(Waiver(job)));
        Assert.True(Waiver(job).Asks(words));
    }

    // Civ. Code §§ 8124, 8126, 8130: off the form it binds only as a settlement, and what its form would keep does not matter where it is
    // none. On federal work no form is asked for (40 U.S.C. § 3133(c)), and what was signed before the work (5 August) is void.
    [Theory]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalProgress, "2025-09-05", false, false, "")]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalProgress, "2025-09-05", false, false, "")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, "2025-09-05", false, null, "settlement=700")]
    [InlineData(WorkKind.Public, WaiverForm.UnconditionalFinal, "2025-09-05", false, null, "settlement=700")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalProgress, "2025-09-05", true, null, "excepted=700 retained=700")]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalFinal, "2025-09-05", true, null, "")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalFinal, "2025-09-05", null, null, "")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalFinal, "2025-09-05", false, null, "")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalProgress, "2025-09-05", null, null, "excepted=700 retained=700")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, "2025-09-05", false, null, "excepted=700 retained=700")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalProgress, "2025-08-04", null, null, "")]
    [Proves("Civ. Code § 8130")]
    [Proves("40 U.S.C. § 3133(c)")]
    public void What_is_asked_hangs_on_whether_the_form_matters(WorkKind kind, WaiverForm form, string signedOn, bool? inForm,
        bool? settlement, string asked) =>
        Assert.Equal(asked,
            Asked(Waiver(With(Job(kind).Furnished("2025-08-05", 700m).Waived(signedOn, form, "2025-08-31", inForm: inForm),
                w => w with { Settlement = settlement }))));

    // Civ. Code § 8124(b): 300.00 came in after a conditional form; whether the check was paid is asked, not of a paper off the form, which
    // no payment makes binding, but of any paper on federal work, and not again of one whose payment is known to have cleared.
    [Theory]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, true, "2025-09-05", null, "paymentCleared=400")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, false, "2025-09-05", null, "settlement=400")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, true, "2025-09-05", "2025-09-12", "")]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalFinal, true, "2025-09-05", null, "")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalFinal, null, "2025-09-05", null, "paymentCleared=400")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalFinal, false, "2025-09-05", null, "paymentCleared=400")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalFinal, false, "2025-08-04..2025-08-06", "2025-09-12", "after=400")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalFinal, false, "2025-08-04..2025-08-06", null, "after=400")]
    [Proves("Civ. Code § 8124(b)")]
    [Proves("40 U.S.C. § 3133(c)")]
    public void Whether_the_payment_cleared_is_asked_where_it_decides(WorkKind kind, WaiverForm form, bool? inForm, string signedOn,
        string? cleared, string asked)
    {
        var job = With(Job(kind).Furnished("2025-08-05", 700m).Paid("2025-09-10", 300m)
            .Waived(signedOn, form, cleared: cleared, inForm: inForm), w => w with { Amount = 300m });
        Assert.Equal(asked, Asked(Waiver(job)));
    }

    // Paid by the signing of an unconditional form: whether it had cleared, on which its statement rests (Civ. Code § 8134).
    [Theory]
    [InlineData(WaiverForm.UnconditionalFinal, null, "paymentCleared=400")]
    [InlineData(WaiverForm.UnconditionalFinal, "2025-09-04", "")]
    [InlineData(WaiverForm.ConditionalFinal, null, "")]
    [Proves("Civ. Code § 8138")]
    public void Whether_the_payment_had_cleared_is_asked_of_an_unconditional_form(WaiverForm form, string? cleared, string asked) =>
        Assert.Equal(asked,
            Asked(Waiver(With(Job().Furnished("2025-08-05", 700m).Paid("2025-09-04", 300m)
                .Waived("2025-09-05", form, cleared: cleared, inForm: true), w => w with { Amount = 300m }))));
}
