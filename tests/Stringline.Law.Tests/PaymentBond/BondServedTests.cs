using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>Notice of a bond claim: to surety and principal, the one and the other, in a good manner, in time.</summary>
public sealed class BondServedTests
{
    private static JobBuilder OnPublic() => Public().Furnished("2025-08-05", 6430m).Accepted();

    private static JobBuilder OnPrivate(string? principal = null) =>
        Private().PaymentBond("2025-07-01", principal).Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10");

    private static Finding Notice(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("payment-bond.notice-last-day");

    [Theory]
    [InlineData("surety", Standing.Open)]
    [InlineData("direct", Standing.Open)]
    [InlineData("city", Standing.Open)]
    [InlineData("surety,city", Standing.Open)]
    [InlineData("surety,direct", Standing.Kept)]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 9560(c)")]
    public void On_public_work_surety_and_direct_contractor_must_both_have_it(string to, Standing expected)
    {
        var notice = Notice(OnPublic().BondNoticeGiven("2025-11-03", to.Split(',')));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2026-01-05", notice.Plan());
        Assert.Equal(expected == Standing.Open, notice.Says("alone it does not count"));
    }

    [Theory]
    [InlineData(null, "surety", Standing.Open)]
    [InlineData(null, "surety,direct", Standing.Kept)]
    [InlineData(null, "surety,owner", Standing.InDoubt)]
    [InlineData(null, "surety,sub", Standing.InDoubt)]
    [InlineData("direct", "surety,owner", Standing.Open)]
    [InlineData("sub", "surety,direct", Standing.Open)]
    [InlineData("sub", "surety,sub", Standing.Kept)]
    [InlineData("owner", "surety,direct", Standing.Open)]
    [InlineData("owner", "surety,owner", Standing.Kept)]
    [Proves("Civ. Code § 8606")]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Civ. Code § 8612(c)")]
    public void On_private_work_the_principal_is_whoever_the_bond_names(string? principal, string to, Standing expected)
    {
        var notice = Notice(OnPrivate(principal).BondNoticeGiven("2025-11-03", to.Split(',')));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal("2026-01-05", notice.Plan());
        Assert.Equal(principal is null, notice.Asks("send the notice to the surety and to each of them. (paymentBond.principal)"));
    }

    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    public void Two_papers_may_reach_them_and_the_later_counts()
    {
        JobBuilder Job(string second) => OnPrivate("direct").BondNoticeGiven("2025-11-03", "surety").BondNoticeGiven(second, "direct");
        Assert.Equal(Standing.Kept, Notice(Job("2026-01-05"), "2026-02-02").Standing);
        Assert.Equal(Standing.Lost, Notice(Job("2026-01-06"), "2026-02-02").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Another_surety_of_the_file_is_not_the_surety_of_the_bond()
    {
        JobBuilder Job(string to) => OnPublic().Party("other", PartyCapacity.Surety, "Fender Surety")
            .Work(w => w with { PaymentBond = w.PaymentBond! with { Surety = "surety" } }).BondNoticeGiven("2025-11-03", to, "direct");
        Assert.Equal(Standing.Open, Notice(Job("other")).Standing);
        Assert.Equal(Standing.Kept, Notice(Job("surety")).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Of_two_direct_contractors_the_one_above_the_claimant_is_the_principal()
    {
        JobBuilder Job(string? under, params string[] to) => OnPublic().Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
            .PartyWith("sub", p => p with { WorksUnder = under }).BondNoticeGiven("2025-11-03", to);
        Assert.Equal(Standing.InDoubt, Notice(Job(null, "surety", "second")).Standing);
        Assert.Equal(Standing.Kept, Notice(Job(null, "surety", "second", "direct")).Standing);
        Assert.Equal(Standing.Open, Notice(Job("direct", "surety", "second")).Standing);
        Assert.Equal(Standing.Kept, Notice(Job("second", "surety", "second")).Standing);
    }

    [Theory]
    [InlineData(Manner.CertifiedMail, Standing.Kept)]
    [InlineData(Manner.Email, Standing.Open)]
    [InlineData(Manner.FirstClassMail, Standing.Open)]
    [InlineData(null, Standing.Kept)]
    [Proves("Civ. Code § 8614")]
    [Proves("Civ. Code § 9562")]
    public void Only_a_manner_of_giving_notice_counts(Manner? manner, Standing expected)
    {
        foreach (var (job, section) in ((JobBuilder, string)[])[(OnPublic(), "Civ. Code § 9562"),
            (OnPrivate("direct"), "Civ. Code § 8614")])
        {
            var notice = Notice(job.BondNoticeGiven("2025-11-03").BondPaper(p => p with { Manner = manner }));
            Assert.Equal(expected, notice.Standing);
            Assert.Equal(expected == Standing.Open, notice.RuledOut(section));
            Assert.Equal(manner is null, notice.Asks("(bond-notice-given.manner)"));
        }
    }

    // Day 75 is 5 January: left and mailed on 31 December it is complete that day.
    [Theory]
    [InlineData("2025-12-20", "2025-12-31", Standing.Kept)]
    [InlineData("2025-12-20", "2026-01-01", Standing.Lost)]
    [InlineData("2025-12-31", null, Standing.Kept)]
    [InlineData("2026-01-01", null, Standing.Lost)]
    [Proves("Civ. Code § 8116")]
    public void Left_and_mailed_it_is_complete_five_days_after_the_mailing(string on, string? mailed, Standing expected)
    {
        var notice = Notice(OnPublic().PartyWith("direct", p => p with { NaturalPerson = false }).BondNoticeGiven(on)
            .BondPaper(p => p with { Manner = Manner.Substituted, Mailed = mailed is null ? null : JobBuilder.Day(mailed) }), "2026-02-02");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(mailed is null, notice.Asks("(bond-notice-given.mailed)"));
    }

    [Theory]
    [InlineData(false, Standing.Kept)]
    [InlineData(true, Standing.InDoubt)]
    [InlineData(null, Standing.InDoubt)]
    [Proves("Civ. Code § 9562")]
    public void Left_and_mailed_to_a_principal_that_may_be_a_natural_person_it_is_in_doubt(bool? natural, Standing expected)
    {
        var notice = Notice(OnPublic().PartyWith("direct", p => p with { NaturalPerson = natural }).BondNoticeGiven("2025-11-03")
            .BondPaper(p => p with { Manner = Manner.Substituted }));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Asks("(bond-notice-given.tries)"));
        Assert.Equal(natural is null, notice.Asks("(parties.naturalPerson)"));
    }

    // Two tries until the year 2027, three from then on; none at all, and it counts for nothing.
    [Theory]
    [InlineData(true, 2, Standing.Kept)]
    [InlineData(true, 1, Standing.InDoubt)]
    [InlineData(true, 0, Standing.Lost)]
    [InlineData(null, 2, Standing.Kept)]
    [InlineData(null, 0, Standing.InDoubt)]
    [InlineData(false, 0, Standing.Kept)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    public void Left_and_mailed_to_a_principal_it_counts_by_the_tries_to_hand_it_over(bool? natural, int tries, Standing expected)
    {
        var notice = Notice(OnPublic().PartyWith("direct", p => p with { NaturalPerson = natural }).BondNoticeGiven("2025-11-03")
            .BondPaper(p => p with { Manner = Manner.Substituted, Tries = tries }), "2026-02-02");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Asks("(bond-notice-given.tries)"));
        Assert.Equal(expected == Standing.Lost, notice.RuledOut("Code Civ. Proc. § 415.20(b)"));
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void Given_on_a_day_unknown_or_with_no_surety_named_it_is_not_kept()
    {
        Assert.Equal(Standing.InDoubt, Notice(OnPublic().BondNoticeGiven("?")).Standing);
        var nobody = Notice(OnPublic().NoParty("surety").BondNoticeGiven("2025-11-03", "direct"));
        Assert.Equal(Standing.Open, nobody.Standing);
        Assert.True(nobody.Asks("(paymentBond.surety)"));
    }

    // Nothing is known of acceptance: the section sets an end and no beginning.
    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8612(b)")]
    public void It_may_be_given_at_once_though_no_completion_is_known()
    {
        var open = Notice(new JobBuilder().PublicWork().PaymentBond(null).Furnished("2025-08-05", 6430m), "2025-08-20");
        Assert.NotEqual(Standing.NotYet, open.Standing);
        Assert.NotEqual(Standing.Lost, open.Standing);
        Assert.Equal(Standing.NotYet, Notice(new JobBuilder().PublicWork().PaymentBond(null), "2025-08-20").Standing);
    }

    // Completed 22 October. (a) recorded early, the 20th: 15 days end on 4 November; (b) on the sixteenth day, 7 November: on Saturday the
    // 22nd.
    [Theory]
    [InlineData("2025-10-20", "2025-11-04", Standing.InDoubt)]
    [InlineData("2025-11-07", "2025-11-21", Standing.Open)]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8612(b)")]
    public void A_notice_of_completion_recorded_early_or_late_leaves_both_readings(string recorded, string actBy, Standing expected)
    {
        foreach (var job in (JobBuilder[])[OnPrivate(), OnPublic()])
        {
            var notice = Notice(job.OwnerRecorded(recorded), "2025-11-10");
            Assert.Equal(actBy, notice.Plan());
            Assert.Contains("2026-01-05", notice.DaysOf());
            Assert.Equal(expected, notice.Standing);
        }

        Assert.DoesNotContain(actBy, Notice(OnPrivate().OwnerRecorded(recorded, heldIneffective: true), "2025-11-10").DaysOf());
    }

    [Fact]
    [Proves("Civ. Code § 8612(a)")]
    public void A_preliminary_notice_that_missed_the_lender_is_made_good_by_it_and_its_day_stays_on_the_list()
    {
        JobBuilder Job() => OnPrivate().Lender().Notice("2025-08-14");
        var notice = Notice(Job());
        Assert.Equal(Standing.Open, notice.Standing);
        Assert.Equal("2026-01-05", notice.Plan());
        Assert.True(notice.Says("missed the construction lender Quay Street Bank"));
        Assert.Equal(Standing.InDoubt, Notice(Job(), "2026-01-06").Standing);
        Assert.Equal(Standing.Kept, Notice(Job().BondNoticeGiven("2025-11-03")).Standing);
    }

    // The late road is closed for one without a direct contract with the contractor only.
    [Theory]
    [InlineData("sub", true)]
    [InlineData("direct", false)]
    [Proves("Civ. Code § 8612(d)")]
    [Proves("Civ. Code § 9560(d)")]
    public void Whether_the_late_road_is_closed_is_asked_of_those_without_a_contract_with_the_contractor(string hiredBy, bool asked)
    {
        var notice = Notice(OnPrivate().Role(ClaimantRole.Supplier, hiredBy));
        Assert.Equal(asked, notice.Asks("undisputed progress payments"));
        Assert.Equal(asked, notice.Sections.Contains("Civ. Code § 8612(d)"));
        Assert.Equal(asked, notice.Says("does not fit a customer that works under another subcontractor"));
        Assert.True(Notice(OnPublic()).Asks("undisputed progress payments"));
    }
}
