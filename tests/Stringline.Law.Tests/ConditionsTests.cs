using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests;

/// <summary>What hangs on a condition that is lost is never shown as alive.</summary>
public sealed class ConditionsTests
{
    private static readonly int Tries = Times.AtMost(3000);

    // What each remedy stands on, by section; written here a second time, from the statutes and not from the library's table.
    private static readonly (string Needed, string[] By, string Section)[] Needs =
    [
        ("license", ["claim-of-lien.last-day", "enforcement.last-day", "stop-payment-notice.last-day", "stop-payment-notice.amount",
            "stop-payment-notice.action-last-day",
            "payment-bond.notice-last-day", "payment-bond.action-last-day", "payment-bond.amount", "prompt-payment.progress",
                "retention.due",
            "retention.disputed-work-payment", "dispute-claim.undisputed-part"], "Bus. & Prof. Code § 7031(a)"),
        ("preliminary-notice.last-day", ["claim-of-lien.last-day", "enforcement.last-day", "stop-payment-notice.last-day",
            "stop-payment-notice.action-last-day", "stop-payment-notice.amount"], "Civ. Code §§ 8200(c), 8508(a), 9300(c)"),
        ("claim-of-lien.last-day", ["enforcement.last-day", "credit.last-day", "credit.enforcement-last-day"], "Civ. Code §§ 8412, 8414, "
            + "8460"),
        ("stop-payment-notice.last-day", ["stop-payment-notice.amount", "stop-payment-notice.action-first-day",
            "stop-payment-notice.action-last-day"], "Civ. Code §§ 8508(b), 8550, 9356, 9502"),
        ("payment-bond.notice-last-day", ["payment-bond.action-last-day", "payment-bond.amount"], "Civ. Code §§ 8612, 9560"),
        ("federal-bond.notice-last-day", ["federal-bond.action-first-day", "federal-bond.action-last-day", "federal-bond.amount"],
            "40 U.S.C. § 3133(b)(2)"),
        ("design-lien.demand-last-day", ["design-lien.right", "design-lien.last-day", "design-lien.enforcement-last-day"], ""
            + "Civ. Code § 8304(c)"),
        ("lien-right", ["lien-right.property", "lien-right.rank", "claim-of-lien.enforceable"], "Civ. Code § 8400"),
    ];

    private static readonly Gen<(JobFile Job, LocalDate AsOf)> Asked = Gen.Select(LienJobGen.HalfAYear.AnyWork, LienJobGen.HalfAYear.AsOf);

    private static string Print((JobFile Job, LocalDate AsOf) asked) => $"{asked.AsOf}: {asked.Job.Work.Kind} {asked.Job.Print()}";

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    [Proves("Civ. Code § 8508(a)")]
    public void If_a_needed_finding_is_lost_none_that_needs_it_is_open_not_yet_or_kept() =>
        Asked.Sample(
            asked =>
            {
                var assessment = Assessment.Of(asked.Job, asked.AsOf, OpenDays.Statutory);
                foreach (var (needed, by, section) in Needs)
                {
                    if (assessment.Find(needed)?.Standing != Standing.Lost)
                        continue;
                    foreach (var id in by)
                        Assert.False(assessment.Find(id)?.Standing is Standing.Open or Standing.NotYet or Standing.Kept
                            or Standing.Narrowed, $"{id} lives without {needed} ({section})");
                }
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Civ. Code § 10")]
    public void Nothing_that_is_open_or_not_yet_had_to_be_done_before_the_day_asked_about() =>
        Asked.Sample(
            asked => Assert.All(Assessment.Of(asked.Job, asked.AsOf, OpenDays.Statutory).Findings, finding =>
                Assert.False(finding is { Standing: Standing.Open or Standing.NotYet, ActBy: { } actBy } && actBy < asked.AsOf,
                    $"{finding.Id}: {finding.Standing}, act by {finding.ActBy}")),
            print: Print, iter: Tries);

    /// <summary>
    /// Day 20 after 2026-05-11 is Sunday 2026-05-31, day 90 after 2026-09-27 Saturday 2026-12-26: on the Saturday the open day before is
    /// past.
    /// </summary>
    [Theory]
    [InlineData("2026-05-29", Standing.Open)]
    [InlineData("2026-05-30", Standing.InDoubt)]
    [InlineData("2026-05-31", Standing.InDoubt)]
    [Proves("Civ. Code § 10")]
    public void Between_the_day_to_plan_on_and_the_last_day_nothing_is_simply_open(string asOf, Standing expected)
    {
        var notice = new JobBuilder().Furnished("2026-05-11", 6_430m).On(asOf).Get("preliminary-notice.last-day");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2026-05-29", notice.Plan());
        Assert.Equal(expected == Standing.InDoubt,
            notice.Why.Any(r => r.Section == "Civ. Code § 10"
                && r.Text.StartsWith("The day to plan on, 2026-05-29 (Fri), is past.", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("2026-12-24", Standing.Open)]
    [InlineData("2026-12-26", Standing.InDoubt)]
    [Proves("Civ. Code § 10")]
    public void So_with_the_time_to_record(string asOf, Standing expected) =>
        Assert.Equal(expected, new JobBuilder().Furnished("2026-09-21", 6_430m).Ended("2026-09-21").Notice("2026-09-25")
            .Completed("2026-09-27").On(asOf).Get("claim-of-lien.last-day").Standing);

    /// <summary>
    /// No notice was given and nothing can be reached any more: a bond that took the land's place answers for no judgment on such a lien.
    /// </summary>
    [Fact]
    [Proves("Civ. Code § 8424(b)")]
    public void A_release_bond_answers_for_no_lien_that_is_dead()
    {
        var on = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2012-06-01..").Price(6_430m).Furnished("2026-10-17", 6_430m)
            .Ended("2026-10-17").Completed("2026-11-09")
            .ClaimRecorded("2027-01-01", 6_430m).ReleaseBond("2027-02-13", 8_037.50m, "2027-02-18").On("2027-05-06");
        Assert.Equal(Standing.Lost, on.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(Standing.Lost, on.Get("release-bond.action-last-day").Standing);
    }

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Without_a_license_neither_stop_payment_notice_nor_bond_is_alive()
    {
        var on = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).PaymentBond("2025-07-01").Licensed("2025-09-15..")
            .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22").On("2025-12-01");
        foreach (var id in (string[])["license", "lien-right", "claim-of-lien.last-day", "stop-payment-notice.last-day",
            "stop-payment-notice.amount", "payment-bond.action-last-day"])
            Assert.Equal(Standing.Lost, on.Get(id).Standing);
        Assert.Contains(on.Get("stop-payment-notice.last-day").Why.Tree(), r => r.Section == "Bus. & Prof. Code § 7031(a)");
    }

    [Fact]
    public void A_file_on_which_nothing_is_lost_stays_as_its_rules_made_it()
    {
        var on = new JobBuilder().Furnished("2025-08-05", 6_430m).Notice("2025-08-14").Completed("2025-10-22").On("2025-12-01");
        Assert.Equal(Standing.Open, on.Get("claim-of-lien.last-day").Standing);
        Assert.DoesNotContain(on.Findings.SelectMany(f => f.Why).Tree(), r =>
            r.Text.EndsWith("and this needs it.", StringComparison.Ordinal));
    }
}
