using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using static Stringline.Law.Tests.StopPaymentNotice.RemedyJobs;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.StopPaymentNotice;

/// <summary>
/// The rows of owner and lender on private work (Civ. Code §§ 8506-8542): who is reached, by which notice, and what stands beside it. The
/// last day is 20 January 2026.
/// </summary>
public sealed class HolderRowsTests
{
    private static JobBuilder WithLender(ClaimantRole role = ClaimantRole.Supplier) => Private(role, "direct").Lender()
        .Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank").Completed("2025-10-22");

    private static Finding Owner(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.owner");

    private static Finding Lender(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("stop-payment-notice.lender");

    [Fact]
    [Proves("Civ. Code § 8506(a)")]
    public void Each_party_that_can_be_served_has_its_row()
    {
        var job = UsualPrivate().Lender().Party("fund", PartyCapacity.ConstructionLender).Party("architect", PartyCapacity.Architect)
            .Party("surety", PartyCapacity.Surety).Build();
        string? Row(string id) => PrivateStopPayment.RowOf(job, job.Party(id)!);
        Assert.Equal(("stop-payment-notice.owner", "stop-payment-notice.owner"), (Row("owner"), Row("architect")));
        Assert.Equal(("stop-payment-notice.lender", "stop-payment-notice.lender.2"), (Row("bank"), Row("fund")));
        Assert.Equal((null, null), (Row("direct"), Row("surety")));
    }

    // The day to give is that of whichever holder can still be served best: kept before open, open before doubt, doubt before lost.
    [Theory]
    [InlineData("owner", "2025-12-01", Standing.Kept)]
    [InlineData("bank", "2025-12-01", Standing.Kept)]
    [InlineData(null, "2025-12-01", Standing.Open)]
    [InlineData(null, "2026-01-21", Standing.Lost)]
    [Proves("Civ. Code § 8508(b)")]
    public void What_is_done_for_one_holder_is_kept(string? to, string asOf, Standing expected)
    {
        var job = WithLender();
        var last = (to is null ? job : job.StopPaymentGiven("2025-11-03", 6430m, false, to)).On(asOf).Get("stop-payment-notice.last-day");
        Assert.Equal(expected, last.Standing);
        Assert.Equal(to is null ? [] : [3], last.EntriesOf("Stop payment notice given to the"));
    }

    // A direct contractor has the lender alone: open toward it, lost without one, and where the lender was never told: a notice given now
    // reaches nothing, for the whole work was complete more than 20 days before.
    [Theory]
    [InlineData(true, true, Standing.Open)]
    [InlineData(true, false, Standing.Lost)]
    [InlineData(false, false, Standing.Lost)]
    [Proves("Civ. Code § 8520(a)")]
    [Proves("Civ. Code § 8530")]
    public void A_direct_contractor_gives_it_to_the_lender_alone(bool lender, bool told, Standing expected)
    {
        var job = DirectContractor().Price(51_000m).Furnished("2025-08-05", 51_000m).Completed("2025-10-22");
        if (lender)
            job.Lender();
        if (told)
            job.Notice("2025-08-14", Manner.CertifiedMail, "bank");
        var on = job.On("2025-12-01");
        Assert.Equal((expected, Standing.Lost),
            (on.Get("stop-payment-notice.last-day").Standing, on.Get("stop-payment-notice.owner").Standing));
        Assert.Equal(told, on.Get("stop-payment-notice.amount").Amount > 0);
    }

    // Demanded by the owner, a direct contractor's notice is given for the lien's sake; it holds nothing (Civ. Code § 8520).
    [Fact]
    [Proves("Civ. Code § 8520(b)")]
    public void A_notice_given_on_the_owners_demand_holds_nothing_for_a_direct_contractor()
    {
        var on = DirectContractor().Price(51_000m).Furnished("2025-08-05", 51_000m).Completed("2025-10-22")
            .Add(i => new StopPaymentDemanded { Index = i, On = When("2025-11-03") })
            .StopPaymentGiven("2025-11-05", 51_000m).On("2025-12-01");
        Assert.Equal((Standing.InDoubt, Standing.Lost),
            (on.Get("stop-payment-notice.owner").Standing, on.Get("stop-payment-notice.last-day").Standing));
        Assert.Equal((0m, "Stop payment notice: amount it can hold"),
            (on.Get("stop-payment-notice.amount").Amount, on.Get("stop-payment-notice.amount").Title));
        Assert.False(on.Get("stop-payment-notice.last-day").Says("Stop payment notice given to the owner"));
        Assert.Equal(Standing.Kept, on.Get("stop-payment-notice.owner-demand").Standing);
    }

    // Where the preliminary notice is late and reaches nothing, or may not count, what was given to the owner follows it.
    [Theory]
    [InlineData("2025-08-14", false, Standing.Kept, Standing.Kept)]
    [InlineData("2025-10-01", false, Standing.Lost, Standing.Lost)]
    [InlineData("2025-10-01", true, Standing.Lost, Standing.Lost)]
    [Proves("Civ. Code § 8508(a)")]
    public void A_preliminary_notice_that_reaches_nothing_leaves_nothing_to_hold(string noticed, bool leftAndMailed, Standing row,
        Standing last)
    {
        var job = Private().PartyWith("owner", p => p with { NaturalPerson = true }).Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .Notice(noticed, leftAndMailed ? Manner.Substituted : Manner.CertifiedMail).Completed("2025-10-22")
            .StopPaymentGiven("2025-11-03", 6430m);
        Assert.Equal((row, last), (Owner(job).Standing, job.On("2025-12-01").Get("stop-payment-notice.last-day").Standing));
    }

    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 8520(b)")]
    public void What_hangs_on_the_preliminary_notice_is_told()
    {
        var none = Owner(Private().Furnished("2025-10-20", 6430m).Completed("2025-10-22"), "2025-10-27");
        Assert.True(none.Says("which the file does not show: give that first"));
        Assert.True(none.Says("If the owner demands a stop payment notice"));
        var good = Owner(UsualPrivate());
        Assert.False(good.Says("It is valid only with"));
        Assert.NotNull(good.Band!.Latest);
        var missed = Owner(UsualPrivate("owner", "direct").Lender());
        Assert.True(missed.Says("none reached the construction lender Quay Street Bank"));
        Assert.False(missed.Says("in time and form, is in doubt"));
        var doubtful = Owner(Private().PartyWith("owner", p => p with { NaturalPerson = true }).Furnished("2025-08-05", 6430m)
            .Notice("2025-08-14", Manner.Substituted).Completed("2025-10-22"));
        Assert.True(doubtful.Says("in time and form, is in doubt"));
        Assert.Equal(Standing.InDoubt, doubtful.Standing);
        Assert.Null(Owner(Private().Furnished("2025-08-05", 6430m).Notice("2025-08-14")
            .Completed("2025-10-22", contested: true)).Band!.Latest);
    }

    // Hired by the owner, notice is due to the lender only: one to the owner before it makes no difference.
    [Theory]
    [InlineData("2025-11-03", false)]
    [InlineData("2025-11-04", true)]
    [Proves("Civ. Code § 8508(a)")]
    public void For_one_hired_by_the_owner_the_notice_to_the_lender_comes_first(string given, bool counts)
    {
        var owner = Owner(Private(ClaimantRole.Supplier, "owner").Lender().Furnished("2025-10-20", 6430m)
            .Notice("2025-10-21", Manner.CertifiedMail, "owner").Notice("2025-11-04", Manner.CertifiedMail, "bank").Completed("2025-10-22")
            .StopPaymentGiven(given, 6430m));
        Assert.Equal(counts ? [] : [4], owner.EntriesOf("before the preliminary notice to the lender, to whom alone it is due"));
        Assert.Equal(counts ? Standing.Kept : Standing.InDoubt, owner.Standing);
        Assert.Equal(counts ? [4] : [], owner.EntriesOf("Stop payment notice given to the owner"));
    }

    // Never told, the lender is out of reach once no notice can reach any work: 20 days after the last, 25 August. Until then it is in
    // doubt.
    [Theory]
    [InlineData("2025-08-25", true, false, Standing.InDoubt)]
    [InlineData("2025-08-26", true, false, Standing.Lost)]
    [InlineData("2025-08-26", false, false, Standing.InDoubt)] // more may be furnished
    [InlineData("2025-08-26", true, true, Standing.InDoubt)] // another, reputed to be the lender, was told
    [Proves("Civ. Code § 8508(a)")]
    public void A_lender_that_was_never_told_is_out_of_reach_when_no_notice_reaches_any_work(string asOf, bool ended, bool reputedTold,
        Standing expected)
    {
        var job = Private().Furnished("2025-08-05", 6430m);
        if (ended)
            job.Ended("2025-08-05");
        if (reputedTold)
            job.Party("named", PartyCapacity.ConstructionLender, "Ridge Bank", reputed: true);
        job.Notice("2025-08-14", Manner.CertifiedMail, reputedTold ? ["owner", "direct", "named"] : ["owner", "direct"]).Lender();
        var lender = job.On(asOf).Get(reputedTold ? "stop-payment-notice.lender.2" : "stop-payment-notice.lender");
        Assert.Equal(expected, lender.Standing);
        Assert.True(lender.Says("No preliminary notice reached Quay Street Bank"));
    }

    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void Work_of_a_day_in_doubt_is_reached_while_its_latest_day_is() =>
        Assert.Equal(Standing.InDoubt, Lender(Private().Furnished("2025-08-05..2025-08-07", 6430m).Ended("2025-08-07").Notice("2025-08-14")
            .Lender(), "2025-08-27").Standing);

    // A lender that nothing named on the first day may be excused; one known before may not. Neither is reached once the time is over.
    [Theory]
    [InlineData("2025-09-10", "2025-12-01", Standing.InDoubt)]
    [InlineData("2025-08-05", "2025-12-01", Standing.Lost)]
    [InlineData("2025-09-10", "2026-01-21", Standing.Lost)]
    [Proves("Civ. Code § 8508(a)")]
    public void A_lender_that_became_known_later_may_be_excused(string known, string asOf, Standing expected)
    {
        var lender = Lender(Private().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: known)
            .Furnished("2025-08-05", 6430m).Ended("2025-08-05").Notice("2025-08-14").Completed("2025-10-22"), asOf);
        Assert.Equal(expected, lender.Standing);
        Assert.Equal(known == "2025-09-10", lender.Says("which nothing named on the first day of the work"));
        Assert.Null(Lender(Private().Lender().Notice("2025-08-14").Completed("2025-10-22"), "2025-09-01").Amount);
    }

    // Told on 5 October, after the owner: toward the lender the notice reaches back to 15 September.
    [Theory]
    [InlineData(true, false, Standing.Open, 1000)]
    [InlineData(false, true, Standing.Lost, 0)]
    [InlineData(false, false, Standing.Open, 0)]
    [Proves("Civ. Code § 8204(a)")]
    public void A_lender_told_late_holds_for_what_the_notice_reaches(bool later, bool ended, Standing expected, int amount)
    {
        var job = Private().Lender().Furnished("2025-08-05", 6430m).Notice("2025-08-14").Notice("2025-10-05", Manner.CertifiedMail, "bank");
        if (later)
            job.Furnished("2025-10-01", 1000m);
        if (ended)
            job.Ended("2025-10-10");
        var lender = Lender(job.Completed("2025-10-22"));
        Assert.Equal((expected, amount), (lender.Standing, lender.Amount));
        Assert.True(lender.Says("reaches back to 2025-09-15 (Mon) only"));
        if (later)
            Assert.Equal(1000m, job.StopPaymentGiven("2025-11-03", 7430m, false, "bank").On("2025-12-01")
                .Get("stop-payment-notice.amount").Amount);
        Assert.Null(Lender(WithLender()).Amount);
    }

    [Theory]
    [InlineData(ClaimantRole.Subcontractor, true)]
    [InlineData(ClaimantRole.Supplier, false)]
    [Proves("Civ. Code § 8542")]
    public void A_contractor_is_told_that_a_lender_owes_what_is_left(ClaimantRole role, bool told)
    {
        Assert.Equal(told, Lender(WithLender(role)).Says("only what is left after the stop payment notices of its own subcontractors"));
        Assert.True(Lender(DirectContractor().Lender().Furnished("2025-08-05", 1m).Notice("2025-08-14", Manner.CertifiedMail, "bank")
            .Completed("2025-10-22")).Says("only what is left after the stop payment notices"));
        Assert.False(Lender(WithLender(role)).Says("No preliminary notice reached"));
        Assert.False(Lender(WithLender(role)).Says("counts is in doubt"));
        Assert.False(Lender(WithLender(role)).Says("is a reputed lender"));
        Assert.NotNull(Lender(WithLender(role)).Band!.Latest);
    }

    // A laborer owes a lender no preliminary notice.
    [Fact]
    [Proves("Civ. Code § 8508(a)")]
    public void A_laborer_needs_no_preliminary_notice_to_a_lender()
    {
        var lender = Lender(Private(ClaimantRole.Laborer, "direct").Lender().Furnished("2025-08-05", 6430m).Completed("2025-10-22")
            .StopPaymentGiven("2025-11-03", 6430m, false, "bank"));
        Assert.Equal((Standing.Kept, false), (lender.Standing, lender.Says("No preliminary notice reached")));
    }

    // Whether the notice to the lender counts, or whether it is the lender, puts what was given to it in doubt too.
    [Theory]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    [Proves("Civ. Code § 8530")]
    public void What_is_in_doubt_of_the_lender_puts_its_row_in_doubt_whatever_was_given(bool naturalLender, bool reputed)
    {
        JobBuilder Job() => Private().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", reputed: reputed)
            .PartyWith("bank", p => p with { NaturalPerson = naturalLender })
            .Party("fund", PartyCapacity.ConstructionLender, "Slate Fund").Furnished("2025-08-05", 6430m)
            .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "fund")
            .Notice("2025-08-14", naturalLender ? Manner.Substituted : Manner.CertifiedMail, "bank").Completed("2025-10-22");
        var inDoubt = naturalLender || reputed;
        Assert.Equal(inDoubt ? Standing.InDoubt : Standing.Open, Lender(Job()).Standing);
        Assert.Equal(inDoubt
            ? Standing.InDoubt : Standing.Kept, Lender(Job().StopPaymentGiven("2025-11-03", 6430m, false, "bank")).Standing);
        Assert.Equal(Standing.Lost, Lender(Job(), "2026-01-21").Standing);
        Assert.Equal(naturalLender, Lender(Job()).Says("Whether the preliminary notice to Quay Street Bank counts is in doubt"));
        Assert.Equal(reputed, Lender(Job()).Says("Quay Street Bank is a reputed lender, and the file names another"));
    }

    // A plain notice asks for no bond; a bonded one of which the file does not say how much does.
    [Theory]
    [InlineData(true, null, new[] { 3 })]
    [InlineData(true, 8037.50, new int[0])]
    [InlineData(false, null, new int[0])]
    [Proves("Civ. Code § 8532")]
    public void The_bond_of_a_bonded_notice_is_asked_for(bool bonded, double? bond, int[] corrects)
    {
        var lender =
            Lender(WithLender().StopPaymentGiven("2025-11-03", 6430m, bonded, "bank").Paper(p => p with { BondAmount = (decimal?)bond }));
        Assert.Equal(corrects, lender.Corrected("(stop-payment-given.bondAmount)"));
        Assert.Equal([3], lender.Corrected("at the office that holds the fund"));
        Assert.Equal(corrects.Length > 0, lender.Asks("It must be $8,037.50 at least"));
    }

    // Before the notice to the lender preliminary notice goes to the owner and the direct contractor as well (Civ. Code §§ 8200(a),
    // 8508(a)): without it, or with one of several contractors told, what the lender holds is in doubt.
    [Theory]
    [InlineData("owner,direct", "2025-08-14", false, Standing.Kept)]
    [InlineData("owner,direct", "2025-11-04", false, Standing.InDoubt)]
    [InlineData("owner", "2025-08-14", false, Standing.InDoubt)]
    [InlineData("owner,direct", "2025-08-14", true, Standing.InDoubt)]
    [Proves("Civ. Code § 8508(a)")]
    [Proves("Civ. Code § 8200(a)")]
    public void The_lender_holds_surely_only_after_owner_and_contractor_were_told_too(string told, string on, bool anotherContractor,
        Standing expected)
    {
        var job = Private().Lender().Furnished("2025-08-05", 6430m, until: "2025-10-20").Notice("2025-08-14", Manner.CertifiedMail, "bank")
            .Notice(on, Manner.CertifiedMail, told.Split(','))
            .StopPaymentGiven("2025-11-03", 6430m, false, "bank");
        if (anotherContractor)
            job.Party("other", PartyCapacity.DirectContractor, "Quoin & Daughters");
        Assert.Equal(expected, Lender(job).Standing);
    }
}
