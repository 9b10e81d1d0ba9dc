using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Waiver;

/// <summary>What is wrong with a waiver and release, all of it and nothing more, by its days and sums.</summary>
public sealed class WaiverAlarmsTests
{
    private static readonly (string Key, string Words)[] Alarms =
    [
        ("before work", "Alarm: it was signed before any work was furnished"),
        ("ahead", "Alarm: its through date lies after its signing"),
        ("unpaid", "Alarm: an unconditional form was signed before its payment cleared"),
        ("beyond the money", "Alarm: its through date reaches further than the money"),
        ("no through date", "Alarm: the file gives no through date"),
        ("retention", "Alarm: a final form keeps no retention"),
        ("change", "Alarm: a written change order"),
    ];

    private static Finding Waiver(JobBuilder job) => job.On("2025-12-01").Get("waiver.1");

    private static string Raised(JobBuilder job) => string.Join(", ", Alarms.Where(a => Waiver(job).Says(a.Words)).Select(a => a.Key));

    // Civ. Code § 8122: no rights are given up in advance. The forms reach work through their date (§ 8134); the payment cleared long
    // before.
    [Theory]
    [InlineData("2025-08-20", "2025-08-19", null, "before work")]
    [InlineData("2025-08-20", "2025-08-19", "2025-08-25", "before work")]
    [InlineData("2025-08-20", "2025-08-20", "2025-08-20", "beyond the money")]
    [InlineData("2025-08-20", "2025-08-19..2025-08-20", "2025-08-20", "")]
    [InlineData("2025-08-19..2025-08-22", "2025-08-18", "2025-08-18", "before work")]
    [InlineData("2025-08-19..2025-08-22", "2025-08-20", "2025-08-20", "")]
    [InlineData("2025-08-05", "2025-09-05..2025-09-10", "2025-09-10", "beyond the money")]
    [InlineData("2025-08-05", "2025-09-05..2025-09-10", "2025-09-11", "ahead, beyond the money")]
    [InlineData("2025-08-05", "2025-09-05", null, "no through date")]
    [InlineData("2025-09-06", "2025-09-06", "2025-09-05", "")]
    [Proves("Civ. Code § 8122")]
    [Proves("Civ. Code § 8134")]
    public void A_form_that_reaches_ahead_of_its_signing_or_of_the_money_is_an_alarm(string furnished, string signedOn, string? through,
        string raised) =>
        Assert.Equal(raised,
            Raised(new JobBuilder().Notice("2025-08-14").Furnished(furnished, 0.50m)
                .Waived(signedOn, WaiverForm.UnconditionalProgress, through, cleared: "2025-08-01")));

    // Civ. Code §§ 8124, 8126: off the form it gives nothing up, so nothing is wrong with its days; federal work knows no form.
    [Theory]
    [InlineData(WorkKind.Private, null, "ahead, beyond the money")]
    [InlineData(WorkKind.Private, true, "ahead, beyond the money")]
    [InlineData(WorkKind.Private, false, "")]
    [InlineData(WorkKind.Public, false, "")]
    [InlineData(WorkKind.Federal, false, "ahead, beyond the money")]
    [Proves("Civ. Code § 8126")]
    [Proves("40 U.S.C. § 3133(c)")]
    public void A_paper_off_the_form_raises_no_alarm_but_on_federal_work(WorkKind kind, bool? inForm, string raised) =>
        Assert.Equal(raised, Raised(new JobBuilder().Work(w => w with { Kind = kind }).Notice("2025-08-14").Furnished("2025-08-05", 10m)
            .Waived("2025-09-05", WaiverForm.UnconditionalProgress, "2025-09-06", cleared: "2025-08-01", inForm: inForm)));

    // Civ. Code § 8134 is for a claimant who has in fact been paid: cleared by the day of the signing, or received by then and, as far as
    // the file says, cleared.
    [Theory]
    [InlineData("2025-09-05..2025-09-10", "2025-09-05", null, "")]
    [InlineData("2025-09-05..2025-09-10", "2025-09-06", null, "unpaid")]
    [InlineData("2025-09-05", "2025-09-06", "2025-09-02", "unpaid")]
    [InlineData("2025-09-05", null, "2025-09-05", "")]
    [InlineData("2025-09-05", null, "2025-09-05..2025-09-06", "unpaid")]
    [InlineData("2025-09-05..2025-09-10", null, "2025-09-06", "unpaid")]
    [InlineData("2025-09-05..2025-09-10", null, "2025-09-04..2025-09-05", "")]
    [InlineData("2025-09-05..2025-09-10", null, "?", "unpaid")]
    [Proves("Civ. Code § 8134")]
    public void An_unconditional_form_may_have_been_signed_before_its_payment(string signedOn, string? cleared, string? paid, string raised)
    {
        var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 100m);
        if (paid is not null)
            job.Paid(paid, 100m);
        job.Waived(signedOn, WaiverForm.UnconditionalProgress, "2025-08-04", cleared: cleared).Which(e => (Waived)e with { Amount = 100m });
        Assert.Equal(raised, Raised(job));
    }

    // All four forms release rights under a written change order executed before the signing, unless it is listed as an exception.
    [Theory]
    [InlineData("0.50", "2025-09-05", "2025-09-05", null, true)]
    [InlineData("0", "2025-09-05", "2025-09-05", null, false)]
    [InlineData("-50", "2025-09-05", "2025-09-05", null, false)]
    [InlineData("50", "2025-09-05", "2025-09-05", "0", true)]
    [InlineData("50", "2025-09-05", "2025-09-05", "0.50", false)]
    [InlineData("50", "2025-09-04..2025-09-08", "2025-09-05", null, true)]
    [InlineData("50", "2025-09-06..2025-09-08", "2025-09-05", null, false)]
    [InlineData("50", "2025-09-07", "2025-09-05..2025-09-07", null, true)]
    [InlineData("50", "2025-09-08", "2025-09-05..2025-09-07", null, false)]
    [Proves("Civ. Code § 8132")]
    [Proves("Civ. Code § 8136")]
    public void Only_an_addition_that_may_have_been_signed_before_is_released_with_it(string change, string changed, string signedOn,
        string? excepted, bool raised)
    {
        foreach (var form in (WaiverForm[])[WaiverForm.ConditionalProgress, WaiverForm.ConditionalFinal])
        {
            var job = new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 100m)
                .Changed(changed, decimal.Parse(change, System.Globalization.CultureInfo.InvariantCulture))
                .Waived(signedOn, form, "2025-08-04", excepted is null
                    ? null : decimal.Parse(excepted, System.Globalization.CultureInfo.InvariantCulture));
            Assert.Equal(raised ? "change" : "", Raised(job));
        }
    }

    // Civ. Code § 8138: no exception for retention; what is disputed and named is all it keeps. It has no through date.
    [Theory]
    [InlineData(null, "retention")]
    [InlineData(99, "retention")]
    [InlineData(100, "")]
    [InlineData(101, "")]
    [Proves("Civ. Code § 8138")]
    public void A_final_form_swallows_retention_and_has_no_through_date(int? excepted, string raised) =>
        Assert.Equal(raised, Raised(new JobBuilder().Notice("2025-08-14").Furnished("2025-08-05", 1000m).Retained("2025-08-31", 100m)
            .Waived("2025-09-05", WaiverForm.UnconditionalFinal, "2025-08-20", excepted, cleared: "2025-09-01")));

    // 40 U.S.C. § 3133(c): void unless executed after the claimant has furnished labor or material (here on 20 August); a conditional one
    // is void for that, too, paid or not. On private work it is the form and the payment alone (Civ. Code § 8124).
    [Theory]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalProgress, "2025-08-19", null, Standing.NotYet, "is void unless")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalProgress, "2025-08-20", null, Standing.Done, "binds on signing")]
    [InlineData(WorkKind.Federal, WaiverForm.UnconditionalFinal, "2025-08-19..2025-08-20", null, Standing.InDoubt, "is void unless")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, "2025-08-19", "2025-09-01", Standing.NotYet, "is void unless")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalFinal, "?", "2025-09-01", Standing.InDoubt, "is void unless")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, "2025-08-20", "2025-09-01", Standing.Done,
        "the payment cleared on 2025-09-01 (Mon)")]
    [InlineData(WorkKind.Federal, WaiverForm.ConditionalProgress, "2025-08-20", null, Standing.NotYet, "shows no cleared payment")]
    [InlineData(WorkKind.Private, WaiverForm.UnconditionalFinal, "2025-08-21", null, Standing.Done, "binds on signing")]
    [InlineData(WorkKind.Private, WaiverForm.ConditionalFinal, "2025-08-21", null, Standing.NotYet, "shows no cleared payment")]
    [Proves("40 U.S.C. § 3133(c)")]
    [Proves("Civ. Code § 8124")]
    public void Why_it_binds_or_not(WorkKind kind, WaiverForm form, string signedOn, string? cleared, Standing expected, string says)
    {
        var waiver = Waiver(new JobBuilder().Work(w => w with { Kind = kind }).Notice("2025-08-14").Furnished("2025-08-20", 10m)
            .Waived(signedOn, form, "2025-08-20", cleared: cleared));
        Assert.Equal(expected, waiver.Standing);
        Assert.Contains(says, waiver.Why[0].Text, StringComparison.Ordinal);
        Assert.DoesNotContain("more is in doubt", waiver.Why[0].Text, StringComparison.Ordinal);
    }

    // No form of the Civil Code is prescribed there: what the right on the bond needs is a waiver signed after the furnishing.
    [Theory]
    [InlineData("2025-08-04", false)]
    [InlineData("2025-08-21", true)]
    [Proves("40 U.S.C. § 3133(c)")]
    public void On_federal_work_a_waiver_that_binds_unpaid_is_an_alarm_and_a_void_one_none_that_it_binds(string day, bool binds)
    {
        var waiver = Waiver(new JobBuilder().Work(w => w with { Kind = WorkKind.Federal }).NoParty("owner").Furnished("2025-08-20", 6430m)
            .Waived(day, WaiverForm.UnconditionalProgress, "2025-11-30"));
        Assert.Equal(binds, waiver.Says("Where it binds, it binds unpaid"));
        Assert.False(waiver.Says("the form itself says that it binds"));
    }
}
