using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Licensing;

/// <summary>Days of the work without a license: what they bar, what may still save it, and what may be asked back.</summary>
public sealed class GapTests
{
    private static JobBuilder Job(params string[] spans) => new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed(spans)
        .Furnished("2025-08-05", 6_430m, until: "2025-10-20").Notice("2025-08-14").Completed("2025-10-22");

    private static JobBuilder With(JobBuilder job, Func<License, License> change) =>
        job.Claimant(c => c with { License = change(c.License!) });

    private static IEnumerable<string> Sections(Finding finding) => finding.Why.Select(w => w.Section);

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void One_never_licensed_before_the_work_recovers_nothing_by_any_road()
    {
        foreach (var job in (JobBuilder[])[Job("2025-09-15.."), With(Job(), l => l with { Never = true })])
        {
            var answer = job.Work(w => w with { PaymentBond = new Stringline.Law.Facts.PaymentBond() }).On("2025-12-01");
            Assert.Equal(Standing.Lost, answer.Get("license").Standing);
            foreach (var remedy in (Remedy[])[Remedy.Debt, Remedy.Lien, Remedy.StopPaymentNotice, Remedy.PaymentBond])
            {
                var amount = answer.AmountOf(remedy)!;
                Assert.Equal((0m, 0m, 0m), (amount.Demand, amount.AtLeast, amount.AtMost));
                Assert.Equal(-6_430m, amount.Step("barred"));
                Assert.Equal("Bus. & Prof. Code § 7031(a)", amount.Steps[^1].Why.Section);
            }

            Assert.Equal(0m, answer.Get("stop-payment-notice.amount").Amount);
            Assert.Equal(Standing.Lost, answer.Get("stop-payment-notice.owner").Standing);
            Assert.Empty(answer.Next);
            Assert.Null(answer.Find("amount"));
        }
    }

    // The bond of federal work is a federal remedy.
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void The_bar_takes_nothing_from_a_federal_bond() =>
        Assert.Equal(6_430m, new JobBuilder().PublicWork().Work(w => w with { Kind = WorkKind.Federal })
            .Role(ClaimantRole.Subcontractor, "direct").Licensed("2025-09-15..")
            .Furnished("2025-08-05", 6_430m).On("2025-12-01").AmountOf(Remedy.FederalBond)!.Demand);

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void A_lapse_of_one_licensed_before_is_in_doubt_with_three_questions()
    {
        foreach (var job in (JobBuilder[])[Job("2012-06-01..2025-08-31", "2025-09-19.."), Job("2012-06-01..2025-07-31", "2025-09-15..")])
        {
            var answer = job.On("2026-01-15");
            var license = answer.Get("license");
            Assert.Equal(Standing.InDoubt, license.Standing);
            Assert.Equal(Standing.InDoubt, answer.Get("lien-right").Standing);
            Assert.Equal(3, license.Questions.Count);
            Assert.All(license.Questions, q => Assert.Matches(@"\(claimant\.license\.(active|goodFaith)\)$", q.Text));
            Assert.Equal(6_430m, answer.Amount.Demand);
            Assert.Contains("Bus. & Prof. Code § 7031(e)", Sections(license));
        }
    }

    [Theory]
    [InlineData(true, Standing.InDoubt)]
    [InlineData(false, Standing.Lost)]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void Good_faith_leaves_it_to_the_court_and_the_want_of_it_ends_it(bool goodFaith, Standing expected)
    {
        var license = With(Job("2012-06-01..2025-08-31", "2025-09-19.."), l => l with { GoodFaith = goodFaith }).On("2026-01-15")
            .Get("license");
        Assert.Equal(expected, license.Standing);
        Assert.Empty(license.Questions);
        Assert.Equal(goodFaith, license.Why.Single(w => w.Section.EndsWith("7031(e)", StringComparison.Ordinal)).Applied);
    }

    // Licensed from the very day of the first work: nobody can say that it was not licensed before it.
    [Theory]
    [InlineData("2025-08-05", Standing.InDoubt)]
    [InlineData("2025-08-06", Standing.Lost)]
    [Proves("Bus. & Prof. Code § 7031(e)")]
    public void Before_the_performance_is_by_its_first_day(string from, Standing expected) =>
        Assert.Equal(expected, Job($"{from}..2025-08-31").On("2026-01-15").Get("license").Standing);

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(b)")]
    public void What_was_paid_may_be_asked_back()
    {
        var license = Job("2025-09-15..").Paid("2025-09-20", 4_000m).On("2025-12-01").Get("license");
        var back = license.Why.Single(w => w.Section == "Bus. & Prof. Code § 7031(b)");
        Assert.Contains("$4,000.00", back.Text, StringComparison.Ordinal);
        Assert.Contains("Bus. & Prof. Code § 7031(b)",
            Sections(Job("2012-06-01..2025-08-31").Paid("2025-09-20", 4_000m).On("2025-12-01").Get("license")));
        Assert.DoesNotContain("Bus. & Prof. Code § 7031(b)", Sections(Job("2025-09-15..").On("2025-12-01").Get("license")));
        Assert.DoesNotContain("Bus. & Prof. Code § 7031(b)",
            Sections(Job("2012-06-01..").Paid("2025-09-20", 4_000m).On("2025-12-01").Get("license")));
    }

    // Performance ends with the end that the file gives: 10 October; the license ended before it.
    [Theory]
    [InlineData("2025-10-10", Standing.Kept)]
    [InlineData("2025-10-09", Standing.InDoubt)]
    [InlineData("2025-09-15", Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void The_license_must_last_until_the_claimant_has_ceased(string ends, Standing expected)
    {
        var license = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).Licensed($"2012-06-01..{ends}")
            .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").On("2025-12-01").Get("license");
        Assert.Equal(expected, license.Standing);
        if (expected == Standing.InDoubt)
            Assert.Contains($"after {ends}", license.Questions[0].Text, StringComparison.Ordinal);
    }

    private static Finding PutBack(string from, string putBack, LapseCause? cause, string? sent = null, bool? beyondControl = null,
        bool? goodFaith = null) => With(
        new JobBuilder().Role(ClaimantRole.Subcontractor).Furnished("2025-08-05", 100m).Furnished("2025-10-20", 100m)
            .Licensed($"2012-06-01..{LawText.IsoDay(Day(from).PlusDays(-1))}"),
        l => l with
        {
            GoodFaith = goodFaith,
            Active = [.. l.Active, new LicenseSpan(Day(from), null, Day(putBack)) { Cause = cause, Sent = sent is null
                ? null : Day(sent), BeyondControl = beyondControl }],
        }).On("2026-01-15").Get("license");

    // Expired on 27 August: the ninetieth day is 25 November. A certificate effective on 28 August: 26 November. What a license was
    // suspended for otherwise, or the file does not say, is judged by neither.
    [Theory]
    [InlineData("2025-11-25", LapseCause.Renewal, null, null, Standing.Kept)]
    [InlineData("2025-11-26", LapseCause.Renewal, "2025-11-26", null, Standing.Lost)]
    [InlineData("2025-11-26", LapseCause.Insurance, null, false, Standing.Kept)]
    [InlineData("2025-11-27", LapseCause.Insurance, null, false, Standing.Lost)]
    [InlineData("2025-11-25", null, null, null, Standing.InDoubt)]
    [InlineData("2025-12-27", null, "2025-12-26", false, Standing.InDoubt)]
    [InlineData("2025-11-01", LapseCause.Other, null, null, Standing.InDoubt)]
    [Proves("Bus. & Prof. Code § 7141.5")]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void The_ninety_days_have_two_starts(string putBack, LapseCause? cause, string? sent, bool? beyondControl, Standing expected)
    {
        var license = PutBack("2025-08-28", putBack, cause, sent, beyondControl, goodFaith: false);
        Assert.Equal(expected, license.Standing);
        Assert.Equal(expected == Standing.Lost, license.Says("the days do not count"));
        Assert.Equal(expected == Standing.Kept, license.Says("the days count"));
        if (expected == Standing.InDoubt)
            Assert.Contains(license.Questions, q => q.Text.EndsWith("(claimant.license.active.cause)", StringComparison.Ordinal));
        // Where it was not in bad faith, a court may still hear it.
        Assert.Equal(expected == Standing.Lost
            ? Standing.InDoubt : expected, PutBack("2025-08-28", putBack, cause, sent, beyondControl).Standing);
    }

    // A renewal that the board had late may have been postmarked in time; one said to be sent after it came contradicts itself.
    [Theory]
    [InlineData("2025-12-01", "2025-11-25", LapseCause.Renewal, Standing.Kept)]
    [InlineData("2025-12-01", "2025-11-26", LapseCause.Renewal, Standing.Lost)]
    [InlineData("2025-12-01", null, LapseCause.Renewal, Standing.InDoubt)]
    [InlineData("2025-11-25", "2025-11-26", LapseCause.Renewal, Standing.InDoubt)]
    [InlineData("2025-12-01", "2025-11-25", null, Standing.InDoubt)]
    [InlineData("2025-12-01", "2025-11-25", LapseCause.Insurance, Standing.Lost)]
    [Proves("Bus. & Prof. Code § 7141.5")]
    public void A_renewal_counts_by_its_postmark_and_a_certificate_by_its_receipt(string putBack, string? sent, LapseCause? cause,
        Standing expected) =>
        Assert.Equal(expected, PutBack("2025-08-28", putBack, cause, sent, cause == LapseCause.Renewal
            ? null : false, goodFaith: false).Standing);

    [Theory]
    [InlineData(true, Standing.Kept, "7125.1(b)")]
    [InlineData(null, Standing.InDoubt, "7125.1(b)")]
    [InlineData(false, Standing.Lost, "7125.1(a)")]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void A_late_certificate_counts_where_it_was_shown_to_be_late_for_circumstances_beyond_control(bool? shown, Standing expected,
        string section)
    {
        var license = PutBack("2025-08-28", "2025-12-01", LapseCause.Insurance, beyondControl: shown, goodFaith: false);
        Assert.Equal(expected, license.Standing);
        Assert.Contains("Bus. & Prof. Code § " + section, Sections(license));
        Assert.Equal(shown is null, license.Asks("(claimant.license.active.beyondControl)"));
    }

    // Ninety days from Thursday 17 July 2025 end on Wednesday 15 October. From Tuesday 15 July on Monday 13 October, a holiday of the
    // State's list alone; from Sunday 13 July on Saturday 11 October, which by the courts' list rolls to Monday 13, and by both to Tuesday
    // 14.
    [Theory]
    [InlineData("2025-07-18", "2025-10-16", Standing.Lost)]
    [InlineData("2025-07-16", "2025-10-14", Standing.InDoubt)]
    [InlineData("2025-07-16", "2025-10-15", Standing.Lost)]
    [InlineData("2025-07-14", "2025-10-11", Standing.Kept)]
    [InlineData("2025-07-14", "2025-10-13", Standing.InDoubt)]
    [InlineData("2025-07-14", "2025-10-14", Standing.InDoubt)]
    [InlineData("2025-07-14", "2025-10-15", Standing.Lost)]
    [Proves("Code Civ. Proc. § 12a")]
    public void Where_the_last_of_the_ninety_days_is_closed_the_next_is_in_doubt(string from, string day, Standing expected)
    {
        Assert.Equal(expected, PutBack(from, day, LapseCause.Renewal, sent: day, goodFaith: false).Standing);
        Assert.Equal(expected,
            PutBack(LawText.IsoDay(Day(from).PlusDays(-1)), day, LapseCause.Insurance, beyondControl: false, goodFaith: false).Standing);
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7125.1")]
    public void What_may_still_bring_a_late_one_in_time_is_asked()
    {
        Assert.Contains(PutBack("2025-08-28", "2025-12-01", LapseCause.Renewal).Questions, q =>
            q.Text.Contains("By 2025-11-25 it is in time", StringComparison.Ordinal));
        Assert.DoesNotContain(PutBack("2025-08-28", "2025-12-01", LapseCause.Renewal).Questions, q =>
            q.Text.Contains("7125.1(b)", StringComparison.Ordinal));
        Assert.Contains(PutBack("2025-08-28", "2025-12-01", LapseCause.Insurance).Questions, q =>
            q.Text.Contains("7125.1(b)", StringComparison.Ordinal));
        Assert.DoesNotContain(PutBack("2025-08-28", "2025-12-01", LapseCause.Insurance).Questions, q =>
            q.Text.Contains("postmarked", StringComparison.Ordinal));
        Assert.DoesNotContain(PutBack("2025-08-28", "2025-12-01", LapseCause.Renewal, "2025-11-26").Questions, q =>
            q.Text.Contains("postmarked", StringComparison.Ordinal));
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(d)")]
    [Proves("Bus. & Prof. Code § 7125.2")]
    public void A_license_on_every_day_is_kept_with_the_questions_of_proof()
    {
        var kept = Job("2012-06-01..").On("2025-12-01").Get("license");
        Assert.Equal(Standing.Kept, kept.Standing);
        Assert.Equal(["(claimant.license.sameEntity)", "(claimant.license.fitsWork)", "(claimant.license.insuranceOnFile)"],
            kept.Questions.Select(q => q.Text[q.Text.LastIndexOf('(')..]));
        Assert.True(kept.Says("verified certificate"));
        var settled = With(Job("2012-06-01.."), l => l with { SameEntity = true, FitsWork = true, InsuranceOnFile = true }).On("2025-12-01")
            .Get("license");
        Assert.Equal(Standing.Kept, settled.Standing);
        Assert.Empty(settled.Questions);
        foreach (var change in (Func<License, License>[])[l => l with { SameEntity = false }, l => l with { FitsWork = false },
            l => l with { InsuranceOnFile = false }])
        {
            var doubt = With(Job("2012-06-01.."), change).On("2025-12-01").Get("license");
            Assert.Equal(Standing.InDoubt, doubt.Standing);
            Assert.Equal(2, doubt.Questions.Count);
            Assert.Equal(3, doubt.Why.Count);
        }
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier, null, Standing.Kept, "Bus. & Prof. Code § 7052", 1)]
    [InlineData(ClaimantRole.Supplier, false, Standing.Kept, "Bus. & Prof. Code § 7052", 0)]
    [InlineData(ClaimantRole.Supplier, true, Standing.InDoubt, "Bus. & Prof. Code § 7031(a)", 1)]
    [InlineData(ClaimantRole.EquipmentLessor, true, Standing.InDoubt, "Bus. & Prof. Code § 7031(a)", 1)]
    [InlineData(ClaimantRole.EquipmentLessor, null, Standing.Kept, "Bus. & Prof. Code § 7052", 1)]
    [InlineData(ClaimantRole.DesignProfessional, null, Standing.Kept, "Bus. & Prof. Code § 7051", 1)]
    [InlineData(ClaimantRole.Laborer, null, Standing.Kept, "Bus. & Prof. Code § 7053", 1)]
    [Proves("Bus. & Prof. Code § 7045")]
    [Proves("Bus. & Prof. Code § 7051")]
    [Proves("Bus. & Prof. Code § 7053")]
    public void Each_who_needs_no_license_has_an_exemption_of_its_own(ClaimantRole role, bool? installs, Standing expected, string section,
        int asked)
    {
        var license = new JobBuilder().Role(role).Claimant(c => c with { Installs = installs }).Furnished("2025-08-05", 100m)
            .On("2025-12-01").Get("license");
        Assert.Equal(expected, license.Standing);
        Assert.Equal([section], Sections(license));
        Assert.Equal(asked, license.Questions.Count);
        Assert.Equal(role == ClaimantRole.DesignProfessional, license.Asks("licensed as an architect")
            && license.Says("licensed architect"));
        var said = new JobBuilder().Role(role).Claimant(c => c with { Installs = installs, License = new License { Required = false } })
            .Furnished("2025-08-05", 100m).On("2025-12-01").Get("license");
        Assert.Equal(expected, said.Standing);
        Assert.Equal([section], Sections(said));
    }
}
