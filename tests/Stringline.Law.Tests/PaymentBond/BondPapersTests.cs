using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Tests.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;

namespace Stringline.Law.Tests.PaymentBond;

/// <summary>
/// Which papers reach surety and principal, what is said of each, and whose bond it is (Civ. Code §§ 8606, 8608, 8612, 9560, 9562, 9566).
/// Day 75 after completion on 22 October 2025 is Monday 5 January 2026. Entries 0 to 2 of the public job are the search, the furnishing and
/// the acceptance; the papers follow.
/// </summary>
public sealed class BondPapersTests
{
    private static JobBuilder OnPublic() => Public().Furnished("2025-08-05", 6430m).Accepted();

    private static JobBuilder OnPrivate(string? principal = null) =>
        Private().PaymentBond("2025-07-01", principal).Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10");

    private static Finding Notice(JobBuilder job, string asOf = "2026-02-02") => job.On(asOf).Get("payment-bond.notice-last-day");

    // Of several papers to the same persons the one that surely counts, and of those the one first complete: left and mailed on 1 January
    // it is complete on the 6th.
    [Theory]
    [InlineData("?", Manner.Personal, "2025-11-10", Manner.Personal, Standing.Kept)]
    [InlineData("2026-01-01", Manner.Substituted, "2026-01-05", Manner.Personal, Standing.Kept)]
    [InlineData("2025-11-03", Manner.Personal, "2026-01-06", Manner.Personal, Standing.Kept)]
    [InlineData("2025-11-03..2026-01-08", Manner.Personal, "2026-01-02", Manner.Personal, Standing.Kept)]
    [InlineData("2025-11-03", Manner.Email, "2026-01-06", Manner.Personal, Standing.Lost)]
    [InlineData("2026-01-02", Manner.Personal, "2025-11-03..2026-01-08", Manner.Personal, Standing.Kept)]
    [InlineData("2025-12-01", Manner.Personal, "?", Manner.Personal, Standing.Kept)]
    [InlineData("?", Manner.Personal, "2026-01-06", Manner.Personal, Standing.InDoubt)] // the first may have been in time
    [InlineData("2025-11-03..2026-01-08", Manner.Personal, "2026-01-06", Manner.Personal, Standing.InDoubt)]
    [Proves("Civ. Code § 9562")]
    public void Of_several_papers_the_one_first_complete_counts(string first, Manner firstManner, string second, Manner secondManner,
        Standing expected) =>
        Assert.Equal(expected, Notice(OnPublic().PartyWith("direct", p => p with { NaturalPerson = false }).BondNoticeGiven(first)
            .BondPaper(p => p with { Manner = firstManner })
            .BondNoticeGiven(second).BondPaper(p => p with { Manner = secondManner })).Standing);

    [Theory]
    [InlineData(Manner.Substituted, Manner.Personal, Standing.Kept)]
    [InlineData(Manner.Personal, Manner.Substituted, Standing.Kept)]
    [InlineData(Manner.Substituted, Manner.Substituted, Standing.InDoubt)]
    [Proves("Civ. Code § 9562")]
    public void A_paper_in_doubt_is_cured_by_a_sure_one(Manner first, Manner second, Standing expected) =>
        Assert.Equal(expected, Notice(OnPublic().PartyWith("direct", p => p with { NaturalPerson = true }).BondNoticeGiven("2025-11-03")
            .BondPaper(p => p with { Manner = first })
            .BondNoticeGiven("2025-11-10").BondPaper(p => p with { Manner = second })).Standing);

    // Left and mailed on 30 December it is complete on 4 January, in time, if hand delivery had been tried before; by hand on 6 January it
    // is late. One in time is all that the section asks. Left and mailed on 2 January it is late on any view.
    [Theory]
    [InlineData("2025-12-30", null, Standing.InDoubt)]
    [InlineData("2025-12-30", "2026-01-06", Standing.InDoubt)]
    [InlineData("2026-01-02", null, Standing.Lost)]
    [InlineData("2026-01-02", "2026-01-06", Standing.Lost)]
    [Proves("Civ. Code § 9560(b)")]
    [Proves("Civ. Code § 8116")]
    public void A_late_paper_takes_nothing_from_one_that_may_have_been_in_time(string left, string? byHand, Standing expected)
    {
        var job = OnPublic().PartyWith("direct", p => p with { NaturalPerson = true }).BondNoticeGiven(left)
            .BondPaper(p => p with { Manner = Manner.Substituted });
        Assert.Equal(expected, Notice(byHand is null ? job : job.BondNoticeGiven(byHand)).Standing);
    }

    // Sureties are companies, as a rule; an individual may be one.
    [Fact]
    [Proves("Civ. Code § 9562")]
    public void Left_and_mailed_to_a_surety_that_is_a_natural_person_it_is_in_doubt()
    {
        JobBuilder Job(bool? natural) => OnPublic().PartyWith("direct", p => p with { NaturalPerson = false })
            .PartyWith("surety", p => p with { NaturalPerson = natural })
            .BondNoticeGiven("2025-11-03").BondPaper(p => p with { Manner = Manner.Substituted });
        Assert.Equal((Standing.InDoubt, Standing.Kept), (Notice(Job(true)).Standing, Notice(Job(null)).Standing));
    }

    // Surety and principal by two papers: the later counts, and where the day of one is unknown, or its manner doubtful, so is the whole.
    [Theory]
    [InlineData("2025-11-03", "2026-01-05", Standing.Kept)]
    [InlineData("2026-01-05", "2025-11-03", Standing.Kept)]
    [InlineData("2026-01-06", "2025-11-03", Standing.Lost)]
    [InlineData("?", "2025-11-03", Standing.InDoubt)]
    [InlineData("2025-11-03", "?", Standing.InDoubt)]
    [InlineData("2025-11-03", null, Standing.Lost)]
    [InlineData(null, "2025-11-03", Standing.Lost)]
    [Proves("Civ. Code § 9560(b)")]
    public void Both_must_have_it_in_time(string? surety, string? principal, Standing expected)
    {
        var job = OnPublic().Ended("2025-08-05");
        if (surety is not null)
            job.BondNoticeGiven(surety, "surety");
        if (principal is not null)
            job.BondNoticeGiven(principal, "direct");
        Assert.Equal(expected, Notice(job).Standing);
    }

    // Of several contractors, nobody knowing whose bond it is, each must have it in time; where one had it, it may be the one.
    [Theory]
    [InlineData("2025-11-03", "2026-01-05", Standing.Kept)]
    [InlineData("2026-01-06", "2025-11-03", Standing.Lost)]
    [InlineData("2025-11-03", "2026-01-06", Standing.InDoubt)]
    [InlineData("2025-11-03", "?", Standing.InDoubt)]
    [InlineData("2025-11-03", null, Standing.InDoubt)]
    [Proves("Civ. Code § 9560(b)")]
    public void Of_several_contractors_the_last_to_have_it_counts(string direct, string? second, Standing expected)
    {
        var job = OnPublic().Ended("2025-08-05").Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
            .BondNoticeGiven(direct, "surety", "direct");
        Assert.Equal(expected, Notice(second is null ? job : job.BondNoticeGiven(second, "second")).Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8606")]
    public void Where_nobody_says_whose_private_bond_it_is_owner_or_subcontractor_may_be_the_principal()
    {
        Assert.Equal(Standing.InDoubt, Notice(OnPrivate().BondNoticeGiven("2025-11-03", "surety", "sub")).Standing);
        Assert.Equal(Standing.InDoubt, Notice(OnPrivate().BondNoticeGiven("2025-11-03", "surety", "owner")).Standing);
        Assert.Equal(Standing.Lost,
            Notice(OnPrivate("direct").Ended("2025-08-05").BondNoticeGiven("2025-11-03", "surety", "owner")).Standing);
        Assert.Equal(Standing.Lost, Notice(OnPublic().Ended("2025-08-05").BondNoticeGiven("2025-11-03", "surety", "sub")).Standing);
        // One to the direct contractor that came too late takes nothing from it: the bond may be the owner's.
        Assert.Equal(Standing.InDoubt,
            Notice(OnPrivate().BondNoticeGiven("2025-11-03", "surety", "owner")
                .BondNoticeGiven("2026-01-06", "surety", "direct")).Standing);
    }

    // Of two direct contractors the claimant's own customer is the principal, as far as the file knows.
    [Fact]
    [Proves("Civ. Code § 8606")]
    public void Of_two_direct_contractors_the_one_that_hired_the_claimant_is_the_principal()
    {
        JobBuilder Job(string to) => Private(hiredBy: "direct").Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
            .PaymentBond("2025-07-01").Furnished("2025-08-05", 6430m)
            .Ended("2025-08-05").Completed("2025-10-22").BondNoticeGiven("2025-11-03", "surety", to);
        Assert.Equal((Standing.Kept, Standing.Lost), (Notice(Job("direct")).Standing, Notice(Job("second")).Standing));
    }

    [Fact]
    [Proves("Civ. Code § 9560(b)")]
    public void What_each_paper_missed_is_told()
    {
        var both = Notice(OnPublic().BondNoticeGiven("2025-11-03"), "2025-12-01");
        Assert.Equal([3],
            both.EntriesOf("Notice given to surety and principal 2025-11-03 (Mon): Bollard Surety Co., Brushline Builders Inc."));
        Assert.False(both.Says("is not among them"));
        Assert.True(Notice(OnPublic().BondNoticeGiven("2025-11-03", "surety"), "2025-12-01")
            .Says("the principal Brushline Builders Inc. is not among them"));
        Assert.True(Notice(OnPublic().BondNoticeGiven("2025-11-03", "direct"), "2025-12-01")
            .Says("the surety Bollard Surety Co. is not among them"));
        Assert.True(Notice(OnPublic().BondNoticeGiven("2025-11-03", "city"), "2025-12-01")
            .Says("neither the surety Bollard Surety Co. nor the principal Brushline Builders Inc. is among them"));
        Assert.True(Notice(OnPublic().BondNoticeGiven("?", "nobody"), "2025-12-01").Says("Notice given on a day unknown to nobody"));
        Assert.Equal([3], Notice(OnPublic().BondNoticeGiven("2025-11-03").BondPaper(p => p with { Manner = Manner.Fax }), "2025-12-01")
            .EntriesOf("in a manner in which no notice is given"));
        Assert.True(Notice(OnPublic().NoParty("surety"), "2025-12-01").Says("The file names no surety"));
        Assert.True(Notice(OnPublic().NoParty("surety").BondNoticeGiven("2025-11-03", "direct"), "2025-12-01")
            .Says("the one and the other: the surety is not among them"));
        Assert.False(both.Says("The file names no surety"));
    }

    [Theory]
    [InlineData(null, null, "surety,direct", true, false, false)]
    [InlineData(Manner.Personal, null, "surety,direct", false, false, false)]
    [InlineData(Manner.Substituted, null, "surety,direct", false, true, true)]
    [InlineData(Manner.Substituted, "2025-11-05", "surety,direct", false, false, true)]
    [InlineData(Manner.Substituted, "2025-11-05", "surety", false, false, false)]
    [Proves("Civ. Code § 9562")]
    public void What_the_file_does_not_say_of_a_paper_is_asked(Manner? manner, string? mailed, string to, bool asksManner, bool asksMailed,
        bool asksNatural)
    {
        var notice =
            Notice(OnPublic().BondNoticeGiven("2025-11-03", to.Split(','))
                .BondPaper(p => p with { Manner = manner, Mailed = mailed is null ? null : JobBuilder.Day(mailed) }), "2025-12-01");
        Assert.Equal(asksManner ? [3] : [], notice.Corrected("(bond-notice-given.manner)"));
        Assert.Equal(asksMailed ? [3] : [], notice.Corrected("(bond-notice-given.mailed)"));
        Assert.Equal(asksNatural, notice.Asks("(parties.naturalPerson)"));
        // One of two contractors is asked about where only it was told.
        Assert.Equal(asksNatural,
            Notice(OnPublic().Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
                .BondNoticeGiven("2025-11-03", to.Split(',')).BondPaper(p => p with { Manner = manner }), "2025-12-01")
                .Asks("(parties.naturalPerson)"));
        Assert.False(notice.Asks("(paymentBond.surety)"));
        Assert.False(notice.Asks("(paymentBond.principal)"));
        Assert.True(Notice(OnPrivate(), "2025-12-01").Asks("(paymentBond.principal)"));
        Assert.False(Notice(OnPrivate("direct"), "2025-12-01").Asks("(paymentBond.principal)"));
    }

    // Civ. Code § 9566(a): no right unless the work went to the direct contractor. On a State entity's bond nothing is called lost.
    [Theory]
    [InlineData("city", null, true, Standing.Lost)]
    [InlineData("city", PublicBody.State, true, Standing.InDoubt)]
    [InlineData("city", null, false, Standing.Lost)]
    [InlineData("sub", null, true, Standing.Open)]
    [InlineData("sub", null, false, Standing.InDoubt)]
    [Proves("Civ. Code § 9566")]
    public void One_hired_by_the_entity_is_told_why_and_asked_who_hired_it(string hiredBy, PublicBody? body, bool bond, Standing expected)
    {
        var job = new JobBuilder().PublicWork().Role(ClaimantRole.Supplier, hiredBy).IndexSearched("2025-11-10")
            .Furnished("2025-08-05", 6430m).Accepted().Work(w => w with { Body = body });
        var notice = Notice(bond ? job.PaymentBond(null) : job, "2025-12-01");
        Assert.Equal(expected, notice.Standing);
        Assert.Equal((hiredBy == "city", !bond), (notice.Asks("(claimant.hiredBy)"), notice.Asks("(work.paymentBond)")));
        Assert.Equal(hiredBy == "city", notice.Says("City of Davis itself hired the claimant"));
    }

    [Fact]
    [Proves("Civ. Code § 8608(a)")]
    public void Why_a_private_bond_does_not_answer_for_the_claimant_is_told()
    {
        Finding Row(string? principal) => Private(hiredBy: "owner").PaymentBond("2025-07-01", principal).Furnished("2025-08-05", 6430m)
            .Completed("2025-10-22").IndexSearched("2025-11-10").On("2025-12-01").Get("payment-bond.notice-last-day");
        Assert.True(Row(null).Says("the owner, hired the claimant. On a direct contractor's bond it then has no claim"));
        Assert.True(Row("direct").Says("There is no claim on the bond of Brushline Builders Inc."));
        Assert.False(Row("owner").Says("hired the claimant"));
        var other = Private(hiredBy: "direct").Party("second", PartyCapacity.DirectContractor, "Second Prime Co.")
            .PaymentBond("2025-07-01", "second").Furnished("2025-08-05", 6430m).Completed("2025-10-22").IndexSearched("2025-11-10")
            .On("2025-12-01").Get("payment-bond.notice-last-day");
        Assert.True(other.Says("The claimant's work went to Brushline Builders Inc., and the bond is that of Second Prime Co."));
        Assert.True(other.Asks("Whose bond is it"));
    }
}
