using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// Civ. Code § 8186; Scott, Blake &amp; Wynne v. Summit Ridge Estates (1967) 251 Cal.App.2d 347. The claimant has a contract of its own
/// with the owner; the notice of Wednesday 15 October 2025 names one direct contractor. The whole was completed on 12 November: 90 days end
/// on Tuesday 10 February 2026;
/// 60 from the recording on Sunday 14 December, 30 on Friday 14 November. Where the notice is the claimant's the 90 days stand beside: only
/// the notice itself says when that contract was complete.
/// </summary>
public sealed class NoticeOfAnotherContractTests
{
    private static JobBuilder Owners(ClaimantRole role, string name, string? contractOf = "second") =>
        new JobBuilder().Role(role, "owner").Licensed("2012-06-01..")
        .Claimant(c => c with { Name = "Marlpit Concrete Co." }).Party("second", PartyCapacity.DirectContractor, name)
        .Work(w => w with { SeveralDirectContracts = true })
        .Furnished("2025-08-05", 51000m, until: "2025-10-10").Ended("2025-10-10")
        .OwnerRecorded("2025-10-15", states: "2025-10-10", contractOf: contractOf).OwnerToldUs("2025-10-16")
        .Completed("2025-11-12");

    private static OwnersNotice Notice(JobBuilder job) =>
        Assert.Single(OwnersNotice.Of(job.FactsOn("2025-12-01"), Law.Counting.OpenDays.Statutory));

    private static Finding Last(JobBuilder job) => job.On("2025-12-01").Get("claim-of-lien.last-day");

    [Theory]
    [InlineData("Sorrel Grading Inc.", "2026-02-10")] // another company
    [InlineData("MARLPIT CONCRETE COMPANY", "2025-12-14 2026-02-10")] // its own contract
    [InlineData("Marlpit Concrete, Inc.", "2025-12-14 2026-02-10")]
    [InlineData("Marlpit Paving LLC", "2025-12-14 2026-02-10")] // close
    [InlineData("Marlpit", "2025-12-14 2026-02-10")]
    [Proves("Civ. Code § 8186")]
    public void A_contractor_of_the_owners_is_touched_by_the_notice_for_its_own_contract_only(string name, string days)
    {
        var last = Last(Owners(ClaimantRole.DirectContractor, name));
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(name is "Marlpit Paving LLC" or "Marlpit", last.Asks("(owner-recorded.contractOf)"));
        Assert.Equal(days.Length > 10, last.Asks("(owner-recorded.heldIneffective)"));
        Assert.Equal(name == "Sorrel Grading Inc.", last.RuledOut("Civ. Code § 8186"));
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier)]
    [InlineData(ClaimantRole.DesignProfessional)]
    [Proves("Civ. Code § 8186")]
    public void So_is_anyone_else_whom_the_owner_hired(ClaimantRole role) =>
        Assert.Equal(["2026-02-10"], Last(Owners(role, "Sorrel Grading Inc.")).DaysOf());

    // Of one hired by a subcontractor it turns on the direct contractor under whom that subcontractor works.
    [Theory]
    [InlineData("second", "2025-11-14 2026-02-10", false)]
    [InlineData("direct", "2026-02-10", false)]
    [InlineData(null, "2025-11-14 2026-02-10", true)]
    [Proves("Civ. Code § 8186")]
    public void One_hired_by_a_subcontractor_is_touched_where_it_works_under_that_contract(string? worksUnder, string days, bool asks)
    {
        var last = Last(Owners(ClaimantRole.Supplier, "Sorrel Grading Inc.")
            .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "second")
            .Party("sub", PartyCapacity.Subcontractor).PartyWith("sub", p => p with { WorksUnder = worksUnder })
            .Role(ClaimantRole.Supplier, "sub"));
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(asks, last.Asks("(parties.worksUnder)"));
    }

    // The owner's paper names the firm as the owner writes it. Case, marks and the form of the firm say nothing of which it is; another
    // first word does.
    [Theory]
    [InlineData("Marlpit Concrete", "Marlpit Concrete", Verdict.Yes)]
    [InlineData("Marlpit Concrete", "«MARLPIT» concrete", Verdict.Yes)]
    [InlineData("«Marlpit» Concrete", "Marlpit Concrete", Verdict.Yes)]
    [InlineData("The Marlpit Concrete Company", "Marlpit-Concrete, L.P.; LLP", Verdict.Open)] // L and P stand as words
    [InlineData("The Marlpit Concrete Company", "Marlpit-Concrete, LLP", Verdict.Yes)]
    [InlineData("Marlpit", "Marlpit Inc.", Verdict.Yes)]
    [InlineData("Marlpit Ltd", "Marlpit", Verdict.Yes)]
    [InlineData("Marlpit Concrete", "Marlpit Paving", Verdict.Open)]
    [InlineData("Marlpit Concrete", "Marlpit", Verdict.Open)]
    [InlineData("Marlpit Concrete", "Carlpit Concrete", Verdict.No)]
    [InlineData("Marlpit", "Sorrel", Verdict.No)]
    [InlineData("Marlpit Concrete", "Concrete Marlpit", Verdict.No)]
    // A name of nothing but a firm's form is none by which it could be told from another.
    [InlineData("Marlpit Concrete", "The Company", Verdict.Open)]
    [InlineData("The Company", "Marlpit Concrete", Verdict.Open)]
    [InlineData("The Company", "Inc.", Verdict.Open)]
    [Proves("Civ. Code § 8186")]
    public void Two_names_are_of_one_firm_but_for_case_marks_and_form(string claimant, string named, Verdict expected)
    {
        var notice = Notice(Owners(ClaimantRole.DirectContractor, named).Claimant(c => c with { Name = claimant }));
        Assert.Equal(expected, notice.ReachesClaimant);
        Assert.Equal(expected == Verdict.Yes ? "Civ. Code § 8190(a)" : "Civ. Code § 8186", notice.ReachWhy.Section);
    }

    // A notice that names nobody whom the file knows may be for the claimant's contract.
    [Fact]
    [Proves("Civ. Code § 8186")]
    public void One_that_names_nobody_whom_the_file_knows_is_open_and_asked_for_by_its_entry()
    {
        var job = Owners(ClaimantRole.DirectContractor, "Sorrel Grading Inc.", contractOf: "nobody");
        Assert.Equal(Verdict.Open, Notice(job).ReachesClaimant);
        Assert.True(Last(job).Asks("It names nobody whom the file knows. (owner-recorded.contractOf)"));
        Assert.Equal([Notice(job).Entry.Index], Last(job).Corrected("It names nobody whom the file knows"));
    }
}
