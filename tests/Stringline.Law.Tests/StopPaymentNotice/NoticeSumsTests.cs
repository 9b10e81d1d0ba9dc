using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// What a notice may claim and what it holds, to the cent (Civ. Code §§ 8502(c), 8542, 9352(c)): 6,430.00 of 5 August 2025, given on 3
/// November.
/// </summary>
public sealed class NoticeSumsTests
{
    private static Finding Amount(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.amount");

    private static JobBuilder Given(decimal? amount = 6430m, string on = "2025-11-03") =>
        UsualPublic().StopPaymentGiven(on, amount, false, "city");

    // Where all is paid nothing is held, whatever was given; where a cent is left, that.
    [Theory]
    [InlineData(6430, true, Standing.NotYet, 0)]
    [InlineData(6429.99, true, Standing.Kept, 0.01)]
    [InlineData(6430, false, Standing.NotYet, 0)]
    [InlineData(6429.99, false, Standing.Open, 0.01)]
    [Proves("Civ. Code § 9352(c)")]
    public void Only_what_is_due_is_claimed_or_held(decimal paid, bool given, Standing expected, decimal amount)
    {
        var found = Amount((given ? Given() : UsualPublic()).Paid("2025-11-10", paid));
        Assert.Equal((expected, amount), (found.Standing, found.Amount));
        Assert.Equal(given ? "Stop payment notice: amount it holds" : "Stop payment notice: amount it can hold", found.Title);
        Assert.True(found.Says("may claim only what is due for work provided through its day"));
    }

    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    public void A_notice_that_may_not_count_holds_in_doubt() =>
        Assert.Equal((Standing.InDoubt, 6430m),
            (Amount(Given().Paper(p => p with { Lacks = "its verification" })).Standing,
                Amount(Given().Paper(p => p with { Lacks = "its verification" })).Amount));

    // A release of a part lessens what the notice states, never below nothing (Civ. Code § 8128).
    [Theory]
    [InlineData(430, 6000, true)]
    [InlineData(6430, 0, true)]
    [InlineData(7000, 0, true)]
    [InlineData(null, 6430, false)]
    [Proves("Civ. Code § 8128")]
    public void A_notice_that_was_reduced_holds_so_much_less(int? by, int held, bool told)
    {
        var job = by is null ? Given() : Given().Add(i => new StopPaymentReleased { Index = i, On = When("2025-11-10"), Amount = by });
        var amount = Amount(job);
        Assert.Equal(held, amount.Amount);
        Assert.Equal(told ? [4] : [], amount.EntriesOf("The notice was reduced by"));
    }

    // A released notice holds nothing, and is measured by nothing any more.
    [Theory]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [Proves("Civ. Code § 9454")]
    public void A_released_notice_raises_no_alarm(bool released, bool alarm)
    {
        var job = released ? Given(9100m).Add(i => new StopPaymentReleased { Index = i, On = When("2025-11-10") }) : Given(9100m);
        Assert.Equal(alarm, Amount(job).Says("more than the $6,430.00"));
    }

    // 1,000.00 more on 10 November: a notice that states no amount holds what was due through its day, and through the earliest where that
    // is in doubt.
    [Theory]
    [InlineData("2025-11-03", 6430)]
    [InlineData("2025-11-03..2025-11-12", 6430)]
    [InlineData("2025-11-10", 7430)]
    [InlineData("2025-11-11", 7430)]
    [Proves("Civ. Code § 9352(c)")]
    public void What_came_after_the_notice_is_not_held_by_it(string on, int held)
    {
        var amount = Amount(UsualPublic().Furnished("2025-11-10", 1000m).StopPaymentGiven(on, null, false, "city"));
        Assert.Equal(held, amount.Amount);
        Assert.Equal([5], amount.Corrected("(stop-payment-given.amount)"));
        Assert.True(amount.Says("at most; the file does not say what the notice states"));
        Assert.Equal(held == 6430, amount.Says("$1,000.00 is not held by it"));
        Assert.True(amount.Says(held == 6430 ? "$8,037.50" : "$9,287.50")); // 125 percent of it
    }

    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    public void A_second_notice_holds_what_was_due_through_the_later_and_one_before_any_work_nothing()
    {
        Assert.Equal(7430m, Amount(UsualPublic().Furnished("2025-11-10", 1000m).StopPaymentGiven("2025-11-03", null, false, "city")
            .StopPaymentGiven("2025-11-12", null, false, "city")).Amount);
        Assert.Equal(0m, Amount(Public().NoticedPublic("2025-11-01").StopPaymentGiven("2025-11-03", null, false, "city")
            .Furnished("2025-11-10", 1000m)).Amount);
    }

    // Preliminary notice of 5 October, back to 15 September: the bond would reach all of it, the notice 1,000.00 and what came later.
    [Fact]
    [Proves("Civ. Code § 9304")]
    public void A_late_preliminary_notice_limits_what_is_held()
    {
        var late = Public().Furnished("2025-08-05", 6430m).Furnished("2025-10-01", 1000m).NoticedPublic("2025-10-05")
            .StopPaymentGiven("2025-11-03", null, false, "city").Furnished("2025-11-10", 500m);
        Assert.Equal(1000m, Amount(late).Amount);
        Assert.True(Amount(late).Says("$500.00 is not held by it"));
    }

    // The day on which a further notice can still be given: 20 January 2026 is the last.
    [Theory]
    [InlineData("2026-01-20", true)]
    [InlineData("2026-01-21", false)]
    [Proves("Civ. Code § 9356(b)")]
    public void A_further_notice_is_asked_for_while_it_can_be_given(string asOf, bool by)
    {
        var amount = Amount(Given(6429.50m), asOf);
        Assert.True(amount.Says("$0.50 is not held by it"));
        Assert.Equal((by, !by), (amount.Says("Give a further notice by"), amount.Says("Give a further notice at once")));
    }

    // Work of 1 to 10 November, and a notice of the 3rd: how much was done by then is asked.
    [Theory]
    [InlineData("2025-11-01", "2025-11-10", true)]
    [InlineData("2025-11-03", "2025-11-04", true)]
    [InlineData("2025-11-01", "2025-11-03", false)]
    [InlineData("2025-11-04", "2025-11-10", false)]
    [Proves("Civ. Code § 9352(c)")]
    public void Work_that_went_on_over_the_day_of_the_notice_is_to_be_split(string first, string last, bool asks)
    {
        var amount = Amount(Given().Furnished(first, 1000m, until: last));
        Assert.Equal(asks ? [5] : [], amount.Corrected("Split the entry at that day"));
        Assert.Equal(asks
            ? 1000m : null, amount.Questions.SingleOrDefault(q => q.Text.Contains("Split the entry", StringComparison.Ordinal))?.Dollars);
    }

    [Fact]
    [Proves("Civ. Code § 9352(c)")]
    public void What_is_not_priced_is_asked_and_raises_no_alarm()
    {
        var unpriced =
            Amount(Public().Furnished("2025-08-05").NoticedPublic().Accepted().StopPaymentGiven("2025-11-03", 6430m, false, "city"));
        Assert.True(unpriced.Asks("What was due on the day of the stop payment notice?"));
        Assert.False(unpriced.Says("the share of the money withheld is forfeited"));
        Assert.False(Amount(Given()).Asks("What was due on the day of the stop payment notice?"));
    }

    // From a lender a contractor recovers only what is left after the notices of those under it (Civ. Code § 8542); a supplier has nobody
    // under it.
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, 20_000, 31_000)]
    [InlineData(ClaimantRole.DirectContractor, 51_000, 0)]
    [InlineData(ClaimantRole.DirectContractor, 60_000, 0)]
    [Proves("Civ. Code § 8542")]
    public void A_lender_owes_a_contractor_what_is_left_after_those_under_it(ClaimantRole role, int lower, int left)
    {
        JobBuilder Job() => DirectContractor().Role(role, "owner").Price(51_000m).Lender().Furnished("2025-08-05", 51_000m)
            .Notice("2025-08-14", Manner.CertifiedMail, "bank").Completed("2025-10-22")
            .LowerTier("2025-10-01", lower).Which(e => (LowerTierClaim)e with { StopPaymentNotice = true });
        Assert.Equal(left, Amount(Job()).Amount);
        Assert.Equal([3], Amount(Job()).EntriesOf("From a lender at most"));
        Assert.Equal(left, Amount(Job().StopPaymentGiven("2025-11-03", 51_000m, false, "bank")).Amount);
        Assert.False(Amount(Job().StopPaymentGiven("2025-11-03", 51_000m, false, "bank")).Says("is not held by it"));
    }

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, 4430)]
    [InlineData(ClaimantRole.Supplier, 6430)]
    [Proves("Civ. Code § 8542")]
    public void A_lower_tiers_notice_comes_off_what_the_lender_owes_and_not_what_the_owner_does(ClaimantRole role, int fromLender)
    {
        JobBuilder Job(string to) => Private(role, "direct").Lender().Price(6430m).Furnished("2025-08-05", 6430m)
            .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank").Completed("2025-10-22")
            .LowerTier("2025-10-01", 2000m).Which(e => (LowerTierClaim)e with { StopPaymentNotice = true })
            .StopPaymentGiven("2025-11-03", 6430m, false, to);
        Assert.Equal(fromLender, Amount(Job("bank")).Amount);
        Assert.Equal(6430m, Amount(Job("owner")).Amount);
    }

    // Whether a lower tier's claim is on the lender too is asked of a contractor who has a lender.
    [Theory]
    [InlineData(ClaimantRole.Subcontractor, true, false, true)]
    [InlineData(ClaimantRole.Subcontractor, true, true, false)]
    [InlineData(ClaimantRole.Subcontractor, false, false, false)]
    [InlineData(ClaimantRole.Supplier, true, false, false)]
    [Proves("Civ. Code § 8542")]
    public void Whether_a_lower_tiers_claim_is_on_the_lender_is_asked(ClaimantRole role, bool lender, bool onNotice, bool asks)
    {
        var job = Private(role, "direct").Price(6430m).Furnished("2025-08-05", 6430m).Notice("2025-08-14").Completed("2025-10-22")
            .LowerTier("2025-10-01", 2000m).Which(e => (LowerTierClaim)e with { StopPaymentNotice = onNotice });
        Assert.Equal(asks ? [3] : [], Amount(lender ? job.Lender() : job).Corrected("(lower-tier-claim.stopPaymentNotice)"));
    }

    [Fact]
    [Proves("Civ. Code § 9364")]
    [Proves("Civ. Code § 8510")]
    public void The_bond_that_frees_the_money_is_told_as_its_title_has_it_and_asked_while_its_amount_is_not_known()
    {
        Assert.True(Amount(UsualPublic()).Says("The entity may let the direct contractor free the money"));
        Assert.False(Amount(UsualPrivate()).Says("The entity may let"));
        Assert.True(Amount(UsualPrivate()).Says("The money may be freed by a bond of 125 percent"));
        Assert.Equal([5], Amount(Given().Add(i => new StopPaymentBondGiven { Index = i, On = When("2025-11-10") }))
            .Corrected("(stop-payment-bond-given.amount)"));
        Assert.Empty(Amount(UsualPublic().Add(i => new StopPaymentBondGiven { Index = i, On = When("2025-11-10") }))
            .Corrected("(stop-payment-bond-given.amount)"));
        Assert.Empty(Amount(Given().Add(i => new StopPaymentBondGiven { Index = i, On = When("2025-11-10"), Amount = 8037.50m }))
            .Corrected("(stop-payment-bond-given.amount)"));
        // Owner and lender may hold, and one of them does.
        Assert.Equal([4], Amount(UsualPrivate("owner", "direct", "bank").Lender().StopPaymentGiven("2025-11-03", 6430m)
            .Add(i => new StopPaymentBondGiven { Index = i, On = When("2025-11-10") })).Corrected("(stop-payment-bond-given.amount)"));
    }

    // A notice too late holds nothing; where completion is in dispute nobody can say that it is too late.
    [Theory]
    [InlineData("2026-01-20", false, 6430, Standing.Kept)]
    [InlineData("2026-01-21", false, 0, Standing.Lost)]
    [InlineData("2026-01-19..2026-01-22", false, 6430, Standing.InDoubt)]
    [InlineData("2026-01-21", true, 6430, Standing.InDoubt)]
    [Proves("Civ. Code § 9356(b)")]
    public void A_notice_that_is_surely_late_holds_nothing(string given, bool contested, int held, Standing expected)
    {
        var amount =
            Amount(Public().Furnished("2025-08-05", 6430m).NoticedPublic().Completed("2025-10-22", CompletionTheory.Acceptance, contested)
                .StopPaymentGiven(given, 6430m, false, "city"), "2026-02-02");
        Assert.Equal((expected, held), (amount.Standing, amount.Amount));
    }
}
