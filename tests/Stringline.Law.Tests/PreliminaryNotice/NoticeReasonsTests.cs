using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// What is told of a preliminary notice on private work, and what is asked: of each notice given, why it may not count and which sum hangs
/// on it. First furnished on Monday 2 March 2026; entry 0 is the furnishing, the notices follow.
/// </summary>
public sealed class NoticeReasonsTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier, string hiredBy = "direct") =>
        new JobBuilder().Role(role, hiredBy).Furnished("2026-03-02", 500m);

    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    private static JobBuilder NoticeWith(JobBuilder job, string on, Func<NoticeGiven, NoticeGiven> change, params string[] to) =>
        job.Notice(on, Manner.CertifiedMail, to).Which(e => change((NoticeGiven)e));

    [Theory]
    [InlineData(ClaimantRole.Laborer, "direct", "A laborer gives no preliminary notice", "has a direct contract with the owner")]
    [InlineData(ClaimantRole.Supplier, "owner", "has a direct contract with the owner", "A laborer gives no preliminary notice")]
    [Proves("Civ. Code § 8200(e)(1)")]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Why_none_is_due_is_told(ClaimantRole role, string hiredBy, string says, string not)
    {
        var notice = Notice(Job(role, hiredBy));
        Assert.Equal((Standing.Kept, true, false), (notice.Standing, notice.Says(says), notice.Says(not)));
    }

    // Nobody is to be told on the first day; a lender that came later is named, and what a contractor owes its laborers is said.
    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    [Proves("Civ. Code § 8104")]
    public void Where_none_is_due_the_lender_that_came_later_and_the_other_duties_are_told()
    {
        var notice =
            Notice(Job(ClaimantRole.DirectContractor, "owner")
                .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2026-03-05"));
        Assert.True(notice.PassesOver("Quay Street Bank was not of record, and not known, before 2026-03-05"));
        Assert.Contains("Civ. Code § 8104", notice.Sections);
        // It gave none because none was due: no discipline for that.
        Assert.DoesNotContain("Civ. Code § 8216", Notice(Job(ClaimantRole.Subcontractor, "owner").Price(9000m)).Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    public void The_first_day_and_what_a_late_notice_leaves_out_are_told()
    {
        var late = Notice(Job().Furnished("2026-04-06", 50m).Notice("2026-04-10"));
        Assert.Equal([0], late.EntriesOf("First furnished 2026-03-02"));
        Assert.True(late.Says("Later than the twentieth day: work furnished before 2026-03-21"));
        Assert.False(Notice(Job().Notice("2026-03-10")).Says("Later than the twentieth day"));
        Assert.False(Notice(Job()).Says("Later than the twentieth day"));
    }

    [Theory]
    [InlineData(ClaimantRole.DesignProfessional, null, true, false)]
    [InlineData(ClaimantRole.DesignProfessional, "2026-03-02", false, true)]
    [InlineData(ClaimantRole.Supplier, null, false, false)]
    [Proves("Civ. Code § 8204(b)")]
    public void A_designer_is_told_of_its_own_twenty_days(ClaimantRole role, string? commenced, bool unknown, bool known)
    {
        var notice =
            Notice(Job(role).Work(w => w with { Commenced = commenced is null ? null : JobBuilder.Day(commenced) }).Notice("2026-03-10"));
        Assert.Equal(unknown, notice.Says("and the file does not say when that was"));
        Assert.Equal(known, notice.Says("The work commenced 2026-03-02"));
        Assert.False(notice.Says("in time only if the work commenced no more than 20 days before it"));
    }

    [Fact]
    [Proves("Civ. Code § 8204(b)")]
    public void A_designers_notice_later_than_that_hangs_on_the_commencement()
    {
        var notice = Notice(Job(ClaimantRole.DesignProfessional).Notice("2026-05-04"));
        Assert.Equal([1], notice.EntriesOf("in time only if the work commenced no more than 20 days before it. $500.00 hangs on it"));
    }

    // The owner told in time, the lender on 8 April: it reaches back to the 19th of March. The 500.00 of 2 March and the delivery without a
    // price, and that of 18 to
    // 21 March of which nobody knows whether it was in reach, hang on it; the 70.00 of 19 March do not.
    [Fact]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8210")]
    public void What_a_notice_to_the_lender_leaves_out_is_told_with_its_sum()
    {
        JobBuilder Lender(string told, params string[] also) =>
            Job().Lender().Furnished("2026-03-04").Furnished("2026-03-18..2026-03-21", 30m).Furnished("2026-03-19", 70m)
            .Notice(also.Length == 0 ? "2026-03-10" : told).Notice(told, Manner.CertifiedMail, "bank");
        Assert.Equal([5], Notice(Lender("2026-04-08"))
            .EntriesOf("Toward Quay Street Bank the notice covers work furnished from 2026-03-19 (Thu) on only. $530.00 furnished before "
                + "that"));
        Assert.False(Notice(Lender("2026-03-12")).Says("Toward Quay Street Bank"));
        // Owner and contractor told as late as it: the lien reaches no farther, and the lender's row says nothing of its own.
        Assert.False(Notice(Lender("2026-04-08", "all")).Says("Toward Quay Street Bank"));
    }

    // Code Civ. Proc. § 415.20: the text of 2027 asks for three tries.
    [Theory]
    [InlineData("2026-03-10", "Code Civ. Proc. § 415.20(b)", "2 of them")]
    [InlineData("2027-03-10", "Code Civ. Proc. § 415.20(b)(2)", "3 of them")]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    [Proves("Code Civ. Proc. § 415.20(b)(2)")]
    public void A_notice_that_was_left_and_mailed_is_told_with_the_tries_the_law_of_its_day_asks(string on, string section, string tries)
    {
        JobBuilder Left(int? tried) =>
            NoticeWith(new JobBuilder().PartyWith("owner", p => p with { NaturalPerson = true })
                .PartyWith("direct", p => p with { NaturalPerson = false })
            .Furnished(on, 500m), on, n => n with { Manner = Manner.Substituted, Tries = tried }, "owner", "direct");
        var open = Notice(Left(1), "2027-06-01");
        Assert.Equal([1], open.EntriesOf("good only after tries to hand it over, " + tries));
        Assert.Contains(section, open.Sections);
        Assert.DoesNotContain(section == "Code Civ. Proc. § 415.20(b)"
            ? "Code Civ. Proc. § 415.20(b)(2)" : "Code Civ. Proc. § 415.20(b)", open.Sections);
        Assert.False(open.PassesOver("with no try to hand it over"));
        var none = Notice(Left(0), "2027-06-01");
        Assert.True(none.RuledOut(section));
        Assert.True(none.PassesOver("with no try to hand it over"));
        Assert.False(none.Says("good only after tries to hand it over"));
        Assert.False(Notice(Left(3), "2027-06-01").Says("good only after tries to hand it over"));
        // By certified mail nothing need be tried.
        Assert.False(Notice(NoticeWith(Job(), "2026-03-10", n => n with { Tries = 0 }, "owner", "direct"))
            .PassesOver("with no try to hand it over"));
    }

    // A private mailbox is the only address known: there the first try will do, whoever is to be told.
    [Theory]
    [InlineData(AddressKind.PostOfficeBox, Standing.InDoubt)]
    [InlineData(AddressKind.Residence, Standing.Narrowed)]
    [InlineData(null, Standing.Narrowed)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    public void One_of_whom_only_a_mailbox_is_known_may_be_told_without_a_try(AddressKind? kind, Standing expected) =>
        Assert.Equal(expected,
            Notice(NoticeWith(Job().PartyWith("owner", p => p with { NaturalPerson = true, AddressKind = kind }), "2026-03-10",
                n => n with { Manner = Manner.Substituted, Tries = 0 }, "owner")
            .Notice("2026-03-10", Manner.CertifiedMail, "direct")).Standing);

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    [Proves("Civ. Code § 8066")]
    public void To_whom_of_several_or_to_which_agent_it_went_is_told_with_its_sum()
    {
        var tenant = Notice(Job().Party("tenant", PartyCapacity.Owner, "Tern Cafe LLC").Work(w => w with { OrderedByTenant = true })
            .Notice("2026-03-10"));
        Assert.Equal([1], tenant.EntriesOf("landlord and tenant are two owners: one of them was told"));
        Assert.False(tenant.Says("The file names several direct contractors"));
        var two = Notice(new JobBuilder().Party("other", PartyCapacity.DirectContractor).Party("sub", PartyCapacity.Subcontractor)
            .Role(ClaimantRole.Supplier, "sub").Furnished("2026-03-02", 500m).Notice("2026-03-10"));
        Assert.Equal([1], two.EntriesOf("The file names several direct contractors"));
        Assert.False(two.Says("landlord and tenant"));
        Assert.Equal([1],
            Notice(Job().Party("agent", PartyCapacity.OwnersAgent, "Heron Management")
                .Notice("2026-03-10", Manner.CertifiedMail, "agent", "direct")).EntriesOf("Given to an agent of the owner"));
        Assert.False(two.Says("Given to an agent of the owner"));
    }

    [Theory]
    [InlineData(Manner.CertificateOfMailing, "by first-class mail with a certificate of mailing")]
    [InlineData(Manner.FirstClassMail, "sent by first-class mail counts")]
    [InlineData(Manner.Email, "by e-mail")]
    [InlineData(Manner.Fax, "by fax")]
    [InlineData(Manner.Other, "in another way")]
    [Proves("Civ. Code § 8110")]
    public void A_manner_that_is_none_is_named(Manner manner, string words)
    {
        var notice = Notice(Job().Notice("2026-03-10", manner));
        Assert.True(notice.PassesOver(words));
        // None was given that could be filed with the recorder.
        Assert.False(notice.Says("may be filed"));
    }

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void What_would_settle_it_is_asked()
    {
        var none = Notice(Job().Lender().NoParty("owner"));
        Assert.True(none.Asks("Who is the owner? The file names none, and notice is due to it."));
        Assert.True(none.Asks("Was notice given to the direct contractor Brushline Builders Inc.? The file shows none."));
        Assert.False(none.Asks("Who named"));
        Assert.False(none.Asks("On which day did the claimant first furnish work?"));
        Assert.False(none.Asks("Did the claimant work under contracts with more than one subcontractor?"));
        Assert.True(Notice(new JobBuilder().Furnished("?", 500m)).Asks("On which day did the claimant first furnish work?"));
        Assert.True(Notice(new JobBuilder().Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, "sub")
            .Furnished("2026-03-02", 500m)).Asks("Did the claimant work under contracts with more than one subcontractor?"));
    }

    // The reputed lender was told, and another that the file names was not.
    [Theory]
    [InlineData(true, true, true)]
    [InlineData(false, true, false)]
    [InlineData(true, false, false)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Who_named_a_reputed_lender_is_asked_where_another_was_left_out(bool reputed, bool another, bool asked)
    {
        var job = Job().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", reputed: reputed);
        if (another)
            job.Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co.");
        Assert.Equal(asked, Notice(job.Notice("2026-03-10", Manner.CertifiedMail, "owner", "direct", "bank"))
            .Asks("Who named Quay Street Bank as the construction lender"));
    }

    // The twentieth day is Sunday 22 March: until then it is the day by which a lender is to be told too.
    [Theory]
    [InlineData("2026-03-22", true)]
    [InlineData("2026-03-23", false)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_lender_is_asked_for_with_the_day_while_it_runs(string asOf, bool withDay)
    {
        var notice = Notice(Job().Notice("2026-03-10"), asOf);
        Assert.Equal(withDay, notice.Asks("Notice is due to it too, by 2026-03-22 (Sun)"));
        Assert.True(notice.Asks("Is there a construction lender?"));
    }
}
