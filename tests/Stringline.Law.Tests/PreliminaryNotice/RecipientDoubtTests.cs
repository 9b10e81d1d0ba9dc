using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>Where the file names several who may be meant: which contractor, which owner, which lender (Civ. Code §§ 8200, 9300).</summary>
public sealed class RecipientDoubtTests
{
    private static JobBuilder TwoContractors(string? worksUnder = null) => new JobBuilder()
        .Party("other", PartyCapacity.DirectContractor, "Other Builders").Party("sub", PartyCapacity.Subcontractor, "Bracken Framing")
        .PartyWith("sub", p => p with { WorksUnder = worksUnder }).Role(ClaimantRole.Supplier, "sub").Furnished("2026-03-02", 500m);

    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    [Theory]
    [InlineData(null, "direct", Standing.InDoubt)]
    [InlineData(null, "other", Standing.InDoubt)]
    [InlineData(null, "direct other", Standing.Kept)]
    [InlineData("direct", "direct", Standing.Kept)]
    [InlineData("other", "direct", Standing.InDoubt)]
    [InlineData("other", "other", Standing.Kept)]
    [Proves("Civ. Code § 8200(a)")]
    public void Of_several_direct_contractors_only_the_one_the_work_goes_to_will_do(string? worksUnder, string told, Standing expected)
    {
        var notice = Notice(TwoContractors(worksUnder).Notice("2026-03-10", Manner.CertifiedMail, ["owner", .. told.Split(' ')]));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(worksUnder is null && expected == Standing.InDoubt, notice.Asks("(parties.worksUnder)"));
        Assert.Equal(500m, TwoContractors(worksUnder).Notice("2026-03-10", Manner.CertifiedMail, ["owner", .. told.Split(' ')])
            .On("2026-06-01").Amount.Demand);
    }

    [Theory]
    [InlineData("direct", "direct", Standing.Kept)]
    [InlineData(null, "direct", Standing.InDoubt)]
    [InlineData(null, "other", Standing.InDoubt)]
    [InlineData(null, "direct other", Standing.Kept)]
    [InlineData("other", "direct", Standing.Narrowed)]
    [Proves("Civ. Code § 9300(a)")]
    public void On_public_work_too(string? worksUnder, string told, Standing expected)
    {
        var job = new JobBuilder().Role(ClaimantRole.Supplier).PublicWork().Party("other", PartyCapacity.DirectContractor, "Other Builders")
            .PartyWith("sub", p => p with { WorksUnder = worksUnder }).Furnished("2026-03-02", 500m)
            .Notice("2026-03-10", Manner.CertifiedMail, ["city", .. told.Split(' ')]);
        Assert.Equal(expected, Notice(job).Standing);
        Assert.Equal(expected == Standing.InDoubt, Notice(job).Asks("(parties.worksUnder)"));
        Assert.Equal(expected == Standing.Narrowed ? 0m : 500m, job.On("2026-06-01").Amount.Demand);
    }

    // Each of two contractors by a notice of its own: both must count, in time and in a good manner, whichever was told last.
    [Theory]
    [InlineData("2026-03-10", Manner.CertifiedMail, "2026-03-20", Manner.CertifiedMail, Standing.Kept)]
    [InlineData("2026-03-20", Manner.CertifiedMail, "2026-03-10", Manner.CertifiedMail, Standing.Kept)]
    [InlineData("2026-03-10", Manner.CertifiedMail, "2026-04-20", Manner.CertifiedMail, Standing.InDoubt)]
    [InlineData("2026-04-20", Manner.CertifiedMail, "2026-03-10", Manner.CertifiedMail, Standing.InDoubt)]
    [InlineData("2026-03-10", Manner.CertifiedMail, "2026-03-10", Manner.Email, Standing.InDoubt)]
    [InlineData("2026-03-10", Manner.CertifiedMail, "2026-03-10", Manner.Substituted, Standing.InDoubt)]
    [Proves("Civ. Code § 8200(a)")]
    public void Told_apart_each_of_two_contractors_must_have_been_told(string direct, Manner first, string other, Manner second,
        Standing expected) =>
        Assert.Equal(expected, Notice(TwoContractors().Notice("2026-03-10", Manner.CertifiedMail, "owner").Notice(direct, first, "direct")
            .Notice(other, second, "other")).Standing);

    // One co-owner is told for all: left with the one of whom nobody says what it is, and with the company, it is good by the company,
    // whichever is named first.
    [Theory]
    [InlineData(null, false)]
    [InlineData(false, null)]
    [Proves("Civ. Code § 8066")]
    public void Of_two_co_owners_told_together_the_one_that_surely_was_is_enough(bool? one, bool? other) =>
        Assert.Equal(Standing.Kept,
            Notice(new JobBuilder().PartyWith("owner", p => p with { NaturalPerson = one })
                .Party("second", PartyCapacity.Owner, "Heron Holdings").PartyWith("second", p => p with { NaturalPerson = other })
            .Furnished("2026-03-02", 500m).Notice("2026-03-10", Manner.Substituted, "owner", "second")
            .Notice("2026-03-10", Manner.CertifiedMail, "direct")).Standing);

    // Hired by the owner the lien goes by the lender best told: surely in time, in time with a doubt, late, never.
    [Theory]
    [InlineData("sure", "doubt", "2026-03-10")]
    [InlineData("sure", "late", "2026-03-10")]
    [InlineData("sure", "none", "2026-03-10")]
    [InlineData("doubt", "late", "2026-03-09")]
    [InlineData("doubt", "none", "2026-03-09")]
    [InlineData("late", "none", "2026-04-10")]
    [InlineData("late", "later", "2026-04-10")]
    [InlineData("none", "none", null)]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Of_two_lenders_the_one_best_told_counts_for_the_lien(string one, string other, string? given)
    {
        Reach Of(string bank, string fund)
        {
            var job = new JobBuilder().Role(ClaimantRole.Supplier, "owner").Lender()
                .Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co.").Furnished("2026-03-02", 500m);
            foreach (var (how, to) in ((string, string)[])[(bank, "bank"), (fund, "fund")])
            {
                if (how != "none")
                {
                    job.Notice(how switch { "sure" => "2026-03-10", "doubt" => "2026-03-09", "late" => "2026-04-10", _ => "2026-04-20" },
                        Manner.CertifiedMail, to)
                        .Which(e => (NoticeGiven)e with { Lacks = how == "doubt" ? "the estimate" : null });
                }
            }

            return PreliminaryNoticeDays.ReachOf(job.FactsOn("2026-06-01"), OpenDays.Statutory);
        }

        Assert.Equal((given, given), (Given(Of(one, other)), Given(Of(other, one))));

        static string? Given(Reach reach) => reach.Given is { } day ? LawText.IsoDay(day.Latest) : null;
    }

    // Landlord and tenant are two owners of two interests; one co-owner of one interest is told for all (our reading).
    [Theory]
    [InlineData(true, "owner", Standing.InDoubt)]
    [InlineData(true, "tenant", Standing.InDoubt)]
    [InlineData(true, "owner tenant", Standing.Kept)]
    [InlineData(false, "tenant", Standing.Kept)]
    [InlineData(null, "tenant", Standing.Kept)]
    [Proves("Civ. Code § 8200(a)")]
    public void Where_a_tenant_ordered_the_work_one_of_two_owners_told_leaves_the_other_in_doubt(bool? tenant, string told,
        Standing expected)
    {
        var job = new JobBuilder().Party("tenant", PartyCapacity.Owner, "Tern Cafe LLC").Work(w => w with { OrderedByTenant = tenant })
            .Furnished("2026-03-02", 500m).Notice("2026-03-10", Manner.CertifiedMail, ["direct", .. told.Split(' ')]);
        Assert.Equal(expected, Notice(job).Standing);
        Assert.Equal(expected == Standing.InDoubt, Notice(job).Says("landlord and tenant"));
        Assert.Equal(500m, job.On("2026-06-01").Amount.Demand);
    }

    // Two lenders of one hired by the owner: lost toward the one that was not told, and for the lien a doubt.
    [Theory]
    [InlineData("bank", Standing.InDoubt, 500)]
    [InlineData("bank fund", Standing.Kept, 500)]
    [InlineData("owner", Standing.Lost, 0)]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Of_two_lenders_of_one_hired_by_the_owner_the_one_left_out_is_a_doubt(string told, Standing expected, int demand)
    {
        var job = new JobBuilder().Role(ClaimantRole.Supplier, "owner").Lender()
            .Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co.")
            .Furnished("2026-03-02", 500m).Ended("2026-03-02").Notice("2026-03-10", Manner.CertifiedMail, told.Split(' '));
        Assert.Equal(expected, Notice(job).Standing);
        Assert.Equal(demand, job.On("2026-06-01").Amount.Demand);
    }

    [Theory]
    [InlineData(PartyCapacity.Association, true, Standing.InDoubt, "common area")]
    [InlineData(PartyCapacity.Association, false, Standing.Narrowed, null)]
    [InlineData(PartyCapacity.OwnersAgent, null, Standing.InDoubt, "authority")]
    [InlineData(PartyCapacity.Architect, null, Standing.Narrowed, null)]
    [Proves("Civ. Code § 8119")]
    [Proves("Civ. Code § 8066")]
    public void A_notice_to_an_agent_reaches_the_owner_as_far_as_the_agency_goes(PartyCapacity capacity, bool? common, Standing expected,
        string? asks)
    {
        var notice = Notice(new JobBuilder().Party("agent", capacity, "Heron Management").Work(w => w with { CommonInterest = common })
            .Furnished("2026-03-02", 500m).Notice("2026-03-10", Manner.CertifiedMail, "agent", "direct"));
        Assert.Equal(expected, notice.Standing);
        Assert.True(asks is null || notice.Asks(asks));
    }
}
