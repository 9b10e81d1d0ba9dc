using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

public sealed class RecipientsTests
{
    private static string[] To(JobBuilder job) => [.. Recipients.Of(job.FactsOn("2026-04-01")).Select(r => $"{r.Section}: {r.Words}")];

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void A_supplier_to_the_direct_contractor_gives_notice_to_owner_and_contractor() =>
        Assert.Equal(
            ["Civ. Code § 8200(a)(1): owner Alder Court LLC", "Civ. Code § 8200(a)(2): direct contractor Brushline Builders Inc."],
            To(new JobBuilder()));

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Every_construction_lender_is_owed_notice_of_its_own() =>
        Assert.Equal(
            ["Civ. Code § 8200(a)(3): construction lender Bank One Street", "Civ. Code § 8200(a)(3): construction lender Fund Control Co."],
            To(new JobBuilder().Party("bank", PartyCapacity.ConstructionLender, "Bank One Street")
                .Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co."))[2..]);

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void Of_several_contractors_only_the_one_that_hired_the_claimant_is_owed_notice() =>
        Assert.Equal(
            "Civ. Code § 8200(a)(2): direct contractor Brushline Builders Inc.",
            To(new JobBuilder().Party("other", PartyCapacity.DirectContractor, "Other Builders"))[1]);

    [Fact]
    [Proves("Civ. Code § 8200(a)")]
    public void A_claimant_hired_by_a_subcontractor_gives_notice_past_it_to_owner_and_direct_contractor() =>
        Assert.Equal(
            ["Civ. Code § 8200(a)(1): owner Alder Court LLC", "Civ. Code § 8200(a)(2): direct contractor Brushline Builders Inc."],
            To(new JobBuilder().Party("sub", PartyCapacity.Subcontractor).Role(ClaimantRole.Supplier, "sub")));

    [Fact]
    [Proves("Civ. Code § 8200(e)(1)")]
    public void A_laborer_gives_no_notice_even_where_there_is_a_lender()
    {
        var job = new JobBuilder().Role(ClaimantRole.Laborer).Party("bank", PartyCapacity.ConstructionLender).Furnished("2026-03-02", 500m)
            .Ended("2026-03-02");
        Assert.Empty(To(job));
        var assessment = job.On("2026-12-01");
        Assert.Equal(Standing.Kept, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Null(assessment.Get("preliminary-notice.last-day").ActBy);
        Assert.Null(assessment.Find("preliminary-notice.reaches-back-to"));
        Assert.Equal(["Civ. Code § 8200(e)(1)"], assessment.Get("preliminary-notice.last-day").Sections);
        Assert.Equal(500m, assessment.Amount.Demand);
    }

    [Theory]
    [InlineData(ClaimantRole.DirectContractor)]
    [InlineData(ClaimantRole.Supplier)]
    [InlineData(ClaimantRole.EquipmentLessor)]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void One_hired_by_the_owner_owes_notice_to_the_lender_only_and_nothing_where_there_is_none(ClaimantRole role)
    {
        Assert.Empty(To(new JobBuilder().Role(role, "owner")));
        Assert.Equal(["Civ. Code § 8200(e)(2): construction lender Somebody"],
            To(new JobBuilder().Role(role, "owner").Party("bank", PartyCapacity.ConstructionLender)));
    }

    [Fact]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Where_the_owner_hired_and_no_lender_is_named_the_file_is_asked_about_one()
    {
        var assessment = new JobBuilder().Role(ClaimantRole.Supplier, "owner").Furnished("2026-03-02", 500m).On("2026-06-01");
        Assert.Equal(Standing.Kept, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Contains(assessment.Get("preliminary-notice.last-day").Questions, q =>
            q.Text.Contains("construction lender", StringComparison.Ordinal));
        Assert.Contains("Civ. Code § 8200(e)(2)", assessment.Get("assumptions").Sections);
    }

    // Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75: the record is looked at on the first day of work.
    [Theory]
    [InlineData("2026-03-02", "2026-03-02", true)]
    [InlineData("2026-03-02", "2026-03-03", false)]
    [InlineData("2026-03-02", null, true)]
    [InlineData("2026-03-02..2026-03-06", "2026-03-06", true)] // on some day of the doubt it was known
    [InlineData("2026-03-02..2026-03-06", "2026-03-07", false)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_lender_that_nothing_named_on_the_first_day_of_work_need_not_be_told(string first, string? knownSince, bool due)
    {
        var job = new JobBuilder().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: knownSince)
            .Furnished(first, 1000m).Notice("2026-03-03");
        var facts = new FactsAsOf(job.Build(), JobBuilder.Day("2026-03-20"));
        Assert.Equal(due, Recipients.Of(facts).Any(r => r.Who == PartyCapacity.ConstructionLender));
        Assert.Equal(due ? [] : ["Quay Street Bank"], Recipients.NotYetKnown(facts).Select(l => l.Name));
        var found = job.On("2026-03-20").Get("preliminary-notice.last-day");
        Assert.Equal(due ? Standing.InDoubt : Standing.Kept, found.Standing);
        Assert.Equal(!due, found.RuledOut("Civ. Code § 8200(a)(3)"));
        // That excuses the lien; whether it excuses the notice before a stop payment notice is not settled.
        Assert.Equal(Standing.InDoubt, job.On("2026-03-20").Get("stop-payment-notice.lender").Standing);
    }

    [Fact]
    [Proves("Civ. Code § 8200(e)(2)")]
    public void Hired_by_the_owner_with_no_lender_known_on_the_first_day_there_is_nobody_to_tell()
    {
        var job = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2026-03-05").Furnished("2026-03-02", 1000m);
        Assert.Equal(Standing.Kept, job.On("2026-05-20").Get("preliminary-notice.last-day").Standing);
    }
}
