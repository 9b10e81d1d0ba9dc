using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>No paper concedes, or claims twice, or gives leave for, what the file does not.</summary>
public sealed class WhatAPaperConcedesTests
{
    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Charges that are no work are left out of the demand and not given up (common practice, no source).</summary>
    [Fact]
    public void A_demand_for_payment_waives_nothing_that_it_leaves_out()
    {
        var made = Make("payment-demand", j => j.With(
            new Charged { Index = 4, On = DayFact.On(Day("2026-04-30")), Amount = 412.87m, Of = ChargeKind.Finance }));
        Assert.True(made.Says("Finance charges of $412.87 are not included and not waived."));
        Assert.DoesNotContain("none of it is part", Flat(made.TextOf()), StringComparison.Ordinal);
    }

    /// <summary>Only who hired the claimant owes it the price (Civ. Code § 1550: no debt of contract without a party to it).</summary>
    [Fact]
    public void A_demand_for_payment_goes_to_no_stranger_to_the_contract() =>
        Assert.Contains(Refusals("payment-demand", options: o => o with { To = ["p1"] }), r => r.Id == "not-the-debtor");

    /// <summary>
    /// Civ. Code § 8834(a): notice of intent is posted at least five days before the notice; § 8832: 35 days after the due day.
    /// </summary>
    [Theory]
    [InlineData("2026-06-16", "Sunday, June 21, 2026")]
    [InlineData("2026-06-06", "Thursday, June 11, 2026")]
    public void A_stop_work_notice_waits_for_five_days_of_posting(string asOf, string first) =>
        Assert.Contains($"NOT BEFORE {first} If the notice of intent is posted today",
            Flat(Make("stop-work-notice", options: o => o with { Amount = 40_000m }, asOf: Day(asOf)).SheetText()),
                StringComparison.Ordinal);

    /// <summary>Civ. Code § 8800: 30 days after the demand are only taken for the day that a contract sets (§ 8832).</summary>
    [Fact]
    public void A_stop_work_notice_says_which_due_day_is_counted_where_the_contract_gives_none() =>
        Assert.Contains("Counted as 30 days after the demand it is May 1, 2026",
            Flat(Make("stop-work-notice", options: o => o with { Day = null }).SheetText()), StringComparison.Ordinal);

    /// <summary>
    /// A release ends the record of the claim, and neither the action nor its notice of pendency (Code Civ. Proc. § 405.50).
    /// </summary>
    [Fact]
    public void A_release_while_an_action_is_pending_says_what_else_must_be_ended()
    {
        var sheet = Flat(Make("release", j => j.With(Sued().Entries[^1]), asOf: Day("2026-08-05")).SheetText());
        Assert.Contains("case no. CV-2026-0419", sheet, StringComparison.Ordinal);
        Assert.Contains("request for dismissal", sheet, StringComparison.Ordinal);
        Assert.Contains("405.50", sheet, StringComparison.Ordinal);
        Assert.DoesNotContain("dismissal", Flat(Make("release").SheetText()), StringComparison.Ordinal);
        Assert.Contains("It goes on for the rest", Flat(Make("partial-release", j => j.With(Sued().Entries[^1]),
            asOf: Day("2026-08-05")).SheetText()), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code §§ 9562, 8102: the bond notice of public work says what every notice says; § 9303 asks it of another.</summary>
    [Fact]
    public void A_public_bond_notice_cites_only_what_it_follows() =>
        Assert.DoesNotContain("9303", Make("public-bond-notice").TextOf(), StringComparison.Ordinal);

    /// <summary>Civ. Code §§ 8550(a), (b), (e), 9502, 9504: after ten days, within 90 days, and five days to tell of it.</summary>
    [Theory]
    [InlineData("stop-payment-notice", "§ 8550(e)")]
    [InlineData("public-stop-payment-notice", "§ 9504")]
    public void The_sheet_of_a_stop_payment_notice_says_when_to_sue_and_to_tell_of_it(string id, string section)
    {
        var sheet = Flat(Make(id).SheetText());
        Assert.Contains("may begin after ten days and must begin within 90 days", sheet, StringComparison.Ordinal);
        Assert.Contains(section, sheet, StringComparison.Ordinal);
    }

    /// <summary>Each of several recipients gets a notice of its own (Civ. Code §§ 8506, 8520): one claim, paid once.</summary>
    [Fact]
    public void Notices_to_several_say_that_they_state_one_claim()
    {
        const string one = "state one and the same claim. It is to be paid once.";
        Assert.Contains(one, Flat(Make("stop-payment-notice").TextOf()), StringComparison.Ordinal);
        Assert.DoesNotContain(one, Flat(Make("stop-payment-notice", options: o => o with { To = ["p1"] }).TextOf()),
            StringComparison.Ordinal);
    }
}
