using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>The design professional's two papers. Contents and conditions as the Civil Code read as updated 10 July 2026, §§ 8300-8319.</summary>
public sealed class DesignLienPaperTests
{
    /// <summary>Civ. Code § 8304: what the recorded claim states.</summary>
    [Theory]
    [InlineData("Quarrymen’s Supply Company, Inc.")] // name of the design professional
    [InlineData("$84,250.00")] // amount
    [InlineData("Alder Court Partners, LLC")] // current owner of record
    [InlineData("Lot 14 of Alder Court Subdivision")] // legal description of the site
    [InlineData("No. B26-0413, City of Woodland")] // building permit or other approval
    [InlineData("April 20, 2026")] // the notice of demand and default
    [InlineData("has not commenced")]
    public void Section_8304_contents(string item) => Assert.Contains(item, Make("design-lien").TextOf(), StringComparison.Ordinal);

    /// <summary>Civ. Code § 8304: demand, default and amount stand in the notice that precedes it.</summary>
    [Fact]
    public void Section_8304_notice()
    {
        var text = Make("design-lien-demand", options: o => o with { Words = "The fee for the planting plans was due on March 31, 2026." }).TextOf();
        Assert.Contains("demands payment", text, StringComparison.Ordinal);
        Assert.Contains("$84,250.00", text, StringComparison.Ordinal);
        Assert.Contains("The fee for the planting plans was due", text, StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8308: § 8416 and its notice do not apply; Gov. Code § 27287 spares only a claim under § 8416 the notary.</summary>
    [Fact]
    public void It_is_no_claim_under_section_8416_and_goes_before_a_notary()
    {
        var made = Make("design-lien");
        Assert.DoesNotContain("NOTICE OF MECHANICS LIEN", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("notary", made.SheetText(), StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8304: at least 10 days lie between the notice and recording. April 20 and 10 days are April 30.</summary>
    [Theory]
    [InlineData("2026-04-29", true)]
    [InlineData("2026-04-30", false)]
    public void Ten_days_must_have_run(string asOf, bool early)
    {
        var outcome = Outcome("design-lien", Designed(), Day(asOf), Catalogue.PaperOptions.None);
        Assert.Equal(early, outcome is PacketOutcome.Refused refused && refused.Refusals.Any(r => r.Id == "too-early"));
        Assert.Equal(!early, outcome is PacketOutcome.Made);
    }

    [Fact]
    public void It_says_everything_that_stands_against_it()
    {
        Assert.Contains(Refusals("design-lien", j => j with { Entries = [.. j.Entries.Where(e => e is not PaymentDemanded)] }), r => r.Id == "no-demand");
        Assert.Contains(Refusals("design-lien", j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Supplier } }), r => r.Id == "not-a-design-professional");
        Assert.Contains(Refusals("design-lien", j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = true })] }), r => r.Id == "owner-not-of-record");
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Permit = null } }), r => r.Id == "permit-missing");
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Site = j.Work.Site with { Legal = null } } }), r => r.Id == "legal-missing");
        // Civ. Code § 8306(b): over once the work commences.
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Commenced = Day("2026-05-01") } }), r => r.Id == "right-lost");
        // Civ. Code § 8312: 90 days from April 15, 2026 end on July 14.
        Assert.Contains(Refusals("design-lien", asOf: Day("2026-07-15")), r => r.Id == "right-lost");
    }
}
