using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>
/// What is asked of a preliminary notice on private work, of each fact once, beside the entry that it would correct. First furnished on
/// Monday 2 March 2026; entry 0 is the furnishing, the notices follow.
/// </summary>
public sealed class NoticeQuestionsTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier, string hiredBy = "direct") =>
        new JobBuilder().Role(role, hiredBy).Furnished("2026-03-02", 500m);

    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    private static JobBuilder Left(JobBuilder job, string? mailed, params string[] to) =>
        job.Notice("2026-03-10", Manner.Substituted, to)
        .Which(e => (NoticeGiven)e with { Mailed = mailed is null ? null : JobBuilder.Day(mailed) });

    // A reputed lender that was told, and another left out; who named it is asked of lenders only, and only of one that was told.
    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Who_named_a_lender_is_asked_of_a_reputed_lender_that_was_told()
    {
        JobBuilder Two(string told) => Job().PartyWith("owner", p => p with { Reputed = true })
            .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", reputed: true)
            .Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co.")
            .Notice("2026-03-10", Manner.CertifiedMail, "owner", "direct", told);
        Assert.True(Notice(Two("bank")).Asks("Who named Quay Street Bank"));
        Assert.False(Notice(Two("fund")).Asks("Who named"));
    }

    [Fact]
    [Proves("Civ. Code § 8204(b)")]
    public void When_the_work_commenced_is_asked_of_a_designer_whose_notice_hangs_on_it()
    {
        bool Asked(JobBuilder job) => Notice(job).Asks("(work.commenced)");
        Assert.True(Asked(Job(ClaimantRole.DesignProfessional)));
        Assert.False(Asked(Job(ClaimantRole.DesignProfessional).Notice("2026-03-10"))); // in time by the first services
        Assert.False(Asked(Job()));
        Assert.False(Asked(new JobBuilder().Role(ClaimantRole.DesignProfessional)));
        // Given in those days and lacking something, the whole hangs on that and no sum on the commencement.
        var lacking =
            Notice(Job(ClaimantRole.DesignProfessional).Notice("2026-03-10").Which(e => (NoticeGiven)e with { Lacks = "the estimate" }));
        Assert.Null(lacking.Questions.Single(q => q.Text.Contains("(work.commenced)", StringComparison.Ordinal)).Dollars);
        Assert.False(Notice(new JobBuilder()).Asks("On which day did the claimant first furnish work?"));
    }

    // One notice to owner and contractor on a day that nobody knows: asked once, unless another was in time.
    [Theory]
    [InlineData(null, true)]
    [InlineData("2026-04-10", true)]
    [InlineData("2026-03-10", false)]
    [Proves("Civ. Code § 8204(a)")]
    public void The_day_of_a_notice_is_asked_once_while_it_may_save_something(string? another, bool asked)
    {
        var job = Job().Notice("?");
        Assert.Equal(asked ? [1] : [], Notice(another is null ? job : job.Notice(another)).Corrected("(notice-given.on)"));
    }

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void Whom_of_several_it_reached_is_asked_of_owners_and_of_contractors_apart()
    {
        var owners = Notice(Job().Party("tenant", PartyCapacity.Owner, "Tern Cafe LLC").Work(w => w with { OrderedByTenant = true })
            .Notice("2026-03-10"));
        Assert.True(owners.Asks("Was notice given to each of the owner Alder Court LLC and Tern Cafe LLC?"));
        Assert.False(owners.Asks("(parties.worksUnder)"));
        Assert.False(owners.Asks("Does the authority of the agent"));
        Assert.True(Notice(Job().Party("agent", PartyCapacity.OwnersAgent).Notice("2026-03-10", Manner.CertifiedMail, "agent", "direct"))
            .Asks("Does the authority of the agent"));
    }

    // Left and mailed to the owner: how often it was tried, when it was mailed, and what the owner is.
    [Theory]
    [InlineData(null, null, true, true, true)]
    [InlineData(null, "2026-03-10", true, false, true)]
    [InlineData(true, null, true, true, false)]
    [InlineData(false, null, false, true, false)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    [Proves("Civ. Code § 8116")]
    public void Of_one_left_and_mailed_the_tries_the_mailing_and_the_person_are_asked(bool? natural, string? mailed, bool tries,
        bool mailing, bool person)
    {
        var notice =
            Notice(Left(Job().PartyWith("owner", p => p with { NaturalPerson = natural })
                .PartyWith("direct", p => p with { NaturalPerson = false }), mailed, "owner", "direct"));
        Assert.Equal(tries ? [1] : [], notice.Corrected("(notice-given.tries)"));
        Assert.Equal(mailing ? [1] : [], notice.Corrected("(notice-given.mailed)")); // once, though it went to two
        Assert.Equal(person, notice.Asks("Is Alder Court LLC a natural person, or an entity? (parties.naturalPerson)"));
        Assert.False(notice.Asks("Is Brushline Builders Inc. a natural person"));
    }

    // Each of two that were left has a mailing of its own; of co-owners the one that was told is asked about.
    [Fact]
    [Proves("Civ. Code § 8116")]
    public void Each_that_was_left_is_asked_about_and_none_that_was_mailed()
    {
        Assert.Equal([1, 2], Notice(Left(Left(Job(), null, "owner"), null, "direct")).Corrected("(notice-given.mailed)").Order());
        Assert.False(Notice(Job().Notice("2026-03-10")).Asks("(notice-given.mailed)"));
        var second = Notice(Left(Job().Party("second", PartyCapacity.Owner, "Heron Holdings"), null, "second")
            .Notice("2026-03-10", Manner.CertifiedMail, "direct"));
        Assert.True(second.Asks("Is Heron Holdings a natural person"));
        Assert.False(second.Asks("Is Alder Court LLC a natural person"));
        Assert.False(Notice(Job().Party("tenant", PartyCapacity.Owner).Work(w => w with { OrderedByTenant = true }).Notice("2026-03-10"))
            .Asks("(parties.naturalPerson)"));
    }

    // First furnished between the 2nd and the 5th: the twentieth day after the 2nd.
    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void The_day_for_a_lender_is_counted_from_the_earliest_first_day() =>
        Assert.True(Notice(new JobBuilder().Furnished("2026-03-02..2026-03-05", 500m), "2026-03-10")
            .Asks("Notice is due to it too, by 2026-03-22 (Sun)"));
}
