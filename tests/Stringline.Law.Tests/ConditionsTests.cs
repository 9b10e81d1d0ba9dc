using CsCheck;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Tests;

/// <summary>What hangs on a condition that is lost is never shown as alive.</summary>
public sealed class ConditionsTests
{
    private static readonly int Tries = Times.AtMost(3000);

    // What each remedy stands on, by section; written here a second time, from the statutes and not from the library's table.
    private static readonly (string Needed, string[] By, string Section)[] Needs =
    [
        ("licence", ["claim-of-lien.last-day", "enforcement.last-day", "stop-payment-notice.last-day", "stop-payment-notice.amount", "stop-payment-notice.action-last-day",
            "payment-bond.notice-last-day", "payment-bond.action-last-day", "payment-bond.amount", "prompt-payment.progress", "retention.due"], "Bus. & Prof. Code § 7031(a)"),
        ("preliminary-notice.last-day", ["claim-of-lien.last-day", "enforcement.last-day", "stop-payment-notice.last-day", "stop-payment-notice.action-last-day", "stop-payment-notice.amount"], "Civ. Code §§ 8200(c), 8508(a), 9300(c)"),
        ("claim-of-lien.last-day", ["enforcement.last-day", "credit.last-day", "credit.enforcement-last-day"], "Civ. Code §§ 8412, 8414, 8460"),
        ("stop-payment-notice.last-day", ["stop-payment-notice.amount", "stop-payment-notice.action-first-day", "stop-payment-notice.action-last-day"], "Civ. Code §§ 8508(b), 8550, 9356, 9502"),
        ("payment-bond.notice-last-day", ["payment-bond.action-last-day", "payment-bond.amount"], "Civ. Code §§ 8612, 9560"),
        ("federal-bond.notice-last-day", ["federal-bond.action-first-day", "federal-bond.action-last-day", "federal-bond.amount"], "40 U.S.C. § 3133(b)(2)"),
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
                        Assert.False(assessment.Find(id)?.Standing is Standing.Open or Standing.NotYet or Standing.Kept or Standing.Narrowed, $"{id} lives without {needed} ({section})");
                }
            },
            print: Print, iter: Tries);

    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void Without_a_license_neither_stop_payment_notice_nor_bond_is_alive()
    {
        var on = new JobBuilder().Role(ClaimantRole.Subcontractor).Price(6_430m).PaymentBond("2025-07-01").Licensed("2025-09-15..")
            .Furnished("2025-08-05", 6_430m).Ended("2025-10-10").Notice("2025-08-14").Completed("2025-10-22").On("2025-12-01");
        foreach (var id in (string[])["licence", "lien-right", "claim-of-lien.last-day", "stop-payment-notice.last-day", "stop-payment-notice.amount", "payment-bond.action-last-day"])
            Assert.Equal(Standing.Lost, on.Get(id).Standing);
        Assert.Contains(on.Get("stop-payment-notice.last-day").Why.Tree(), r => r.Section == "Bus. & Prof. Code § 7031(a)");
    }

    [Fact]
    public void A_file_on_which_nothing_is_lost_stays_as_its_rules_made_it()
    {
        var on = new JobBuilder().Furnished("2025-08-05", 6_430m).Notice("2025-08-14").Completed("2025-10-22").On("2025-12-01");
        Assert.Equal(Standing.Open, on.Get("claim-of-lien.last-day").Standing);
        Assert.DoesNotContain(on.Findings.SelectMany(f => f.Why).Tree(), r => r.Text.EndsWith("and this needs it.", StringComparison.Ordinal));
    }
}
