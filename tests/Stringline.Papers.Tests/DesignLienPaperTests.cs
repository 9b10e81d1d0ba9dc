using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The design professional's two papers. Contents and conditions as the Civil Code read as updated 10 July 2026, §§ 8300-8319.
/// </summary>
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
        var text = Make("design-lien-demand", options: o => o with { Words = "The fee for the planting plans was due on March 31, 2026." })
            .TextOf();
        Assert.Contains("demands payment", text, StringComparison.Ordinal);
        Assert.Contains("$84,250.00", text, StringComparison.Ordinal);
        Assert.Contains("The fee for the planting plans was due", text, StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8308: § 8416 and its notice do not apply; Gov. Code § 27287 spares only a claim under § 8416 the notary.
    /// </summary>
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

    /// <summary>Civ. Code § 8304(c): a bill is no notice of default, and one for less covers no more; the claim is sworn to.</summary>
    [Theory]
    [InlineData(null, 84_250)]
    [InlineData(false, 84_250)]
    [InlineData(true, 84_249)]
    public void Section_8304_c_only_a_notice_of_default_for_the_amount_goes_before_a_claim(bool? ofDefault, int amount) =>
        Assert.Contains(
            Refusals("design-lien",
                j => j with { Entries =
                [.. j.Entries.Select(e => e is PaymentDemanded d ? d with { OfDefault = ofDefault, Amount = amount } : e)] }),
            r => r.Id == "no-notice-of-default" && r.Section == "Civ. Code § 8304(c)");

    /// <summary>A progress bill of before does not stand in the claim as the notice.</summary>
    [Fact]
    public void Section_8304_c_the_day_of_the_notice_of_default_and_not_of_a_bill_stands_in_the_claim()
    {
        var text = Make("design-lien",
            j => j with { Entries =
            [j.Entries[0], new PaymentDemanded { Index = 3, On = DayFact.On(Day("2026-03-02")), Amount = 4_000m, OfDefault = false },
            .. j.Entries.Skip(1)] }).TextOf();
        Assert.Contains("Given to the owner on April 20, 2026", text, StringComparison.Ordinal);
        Assert.DoesNotContain("March 2, 2026", text, StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code §§ 8304(c), 8312: knowing since April 15, 2026, the last day to record is July 14, a Tuesday; ten days before it is July
    /// 4. With the demand of that day the claim can be recorded on July 14; a demand of July 5 is too late.
    /// </summary>
    [Theory]
    [InlineData("2026-07-04", true)]
    [InlineData("2026-07-05", false)]
    public void Section_8304_c_ten_days_must_fit_before_the_last_day(string asOf, bool fits)
    {
        var job = Designed() with { Entries = [.. Designed().Entries.Where(e => e is not PaymentDemanded)] };
        var outcome = Outcome("design-lien-demand", job, Day(asOf), Catalogue.PaperOptions.None);
        Assert.Equal(fits, outcome is PacketOutcome.Made);
        if (outcome is PacketOutcome.Made made)
            Assert.Contains("Last day: Saturday, July 4, 2026", made.SheetText(), StringComparison.Ordinal);
        else
        {
            Assert.Contains("Ten days no longer fit", string.Join(" ", Assert.IsType<PacketOutcome.Refused>(outcome).Refusals),
                StringComparison.Ordinal);
        }
    }

    /// <summary>Civ. Code §§ 8302(b), 8308(a): a lender that had no preliminary notice takes nothing off this lien.</summary>
    [Fact]
    public void Section_8308_a_the_amount_needs_no_preliminary_notice()
    {
        var lender = new Party { Id = "p4", Capacity = PartyCapacity.ConstructionLender, Name = "Granger Slough Bank",
            Address = "600 Levee Street\nSacramento, CA 95814" };
        Assert.Contains("$84,250.00", Make("design-lien", j => j with { Parties = [.. j.Parties, lender] }).TextOf(),
            StringComparison.Ordinal);
        Assert.Contains("$84,250.00", Make("design-lien-demand", j => j with { Parties = [.. j.Parties, lender] }).TextOf(),
            StringComparison.Ordinal);
    }

    /// <summary>Civ. Code § 8306(c): "a document that evidences a partial or full satisfaction and release of the lien".</summary>
    [Fact]
    public void Section_8306_c_full_satisfaction_and_release()
    {
        var made = Make("design-lien-release");
        Assert.Contains("FULL SATISFACTION AND RELEASE OF LIEN", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Design professional’s lien. California Civil Code section 8306, subdivision (c)", made.TextOf(),
            StringComparison.Ordinal);
        Assert.Contains("The landowner has fully satisfied the lien", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("instrument no. 2026-0012345", made.TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain("mechanics lien", made.TextOf(), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("8416", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Enter a fact, “Release recorded”: its day and instrument number, and that the debt is satisfied.",
            made.SheetText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Section_8306_c_partial_satisfaction_and_release()
    {
        static JobFile Paid(JobFile job, decimal amount) =>
            DesignRecorded().With(new Paid { Index = 4, On = DayFact.On(Day("2026-06-01")), Amount = amount });
        var made = Make("design-lien-release", j => Paid(j, 50_000m));
        Assert.Contains("PARTIAL SATISFACTION AND RELEASE OF LIEN", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("$50,000.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("$34,250.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("Do not enter “Release recorded”", made.SheetText(), StringComparison.Ordinal);
        Assert.Contains(Refusals("design-lien-release", _ => DesignRecorded()), r => r.Id == "nothing-paid");
        // A claim for 90,000.00 where 84,250.00 was due: what was never due was not paid, and does not remain.
        static JobFile Above(JobFile job) =>
            job with { Entries = [.. job.Entries.Select(e => e is ClaimRecorded claim ? claim with { Amount = 90_000m } : e)] };
        var above = Make("design-lien-release", j => Above(Paid(j, 50_000m))).TextOf();
        Assert.Contains("$50,000.00", above, StringComparison.Ordinal);
        Assert.Contains("$34,250.00", above, StringComparison.Ordinal);
        Assert.DoesNotContain("$55,750.00", above, StringComparison.Ordinal);
        static JobFile Unpriced(JobFile job) => job with
        {
            Contract = job.Contract with { Price = null },
            Entries = [.. job.Entries.Select(e => e is Furnished work ? work with { Amount = null } : e)],
        };
        Assert.Contains(Refusals("design-lien-release", j => Unpriced(Paid(j, 50_000m))), r => r.Id == "nothing-paid");
        Assert.Contains(Refusals("design-lien-release", options: o => o with { Amount = 84_250.01m }), r => r.Id == "reduction-too-large");
    }

    /// <summary>The release of a mechanics lien is not the paper for a design lien, nor the other way round.</summary>
    [Fact]
    public void Each_lien_has_its_own_release()
    {
        Assert.Contains(Refusals("release", _ => DesignRecorded()), r => r.Id == "design-lien");
        Assert.Contains(Refusals("partial-release", _ => DesignRecorded()), r => r.Id == "design-lien");
        Assert.Contains(Refusals("design-lien-release",
            j => j with { Entries = [.. j.Entries.Select(e => e is ClaimRecorded c ? c with { Lien = LienKind.Mechanics } : e)] }),
            r => r.Id == "no-design-lien");
    }

    [Fact]
    public void It_says_everything_that_stands_against_it()
    {
        Assert.Contains(Refusals("design-lien", j => j with { Entries = [.. j.Entries.Where(e => e is not PaymentDemanded)] }),
            r => r.Id == "no-demand");
        Assert.Contains(Refusals("design-lien", j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Supplier } }),
            r => r.Id == "not-a-design-professional");
        Assert.Contains(Refusals("design-lien", j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = true })] }),
            r => r.Id == "owner-not-of-record");
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Permit = null } }), r => r.Id == "permit-missing");
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Site = j.Work.Site with { Legal = null } } }),
            r => r.Id == "legal-missing");
        // Civ. Code § 8306(b): over once the work commences.
        Assert.Contains(Refusals("design-lien", j => j with { Work = j.Work with { Commenced = Day("2026-05-01") } }),
            r => r.Id == "right-lost");
        // Civ. Code § 8312: 90 days from April 15, 2026 end on July 14.
        Assert.Contains(Refusals("design-lien", asOf: Day("2026-07-15")), r => r.Id == "right-lost");
    }

    /// <summary>Code Civ. Proc. § 446(a): a draft keeps that the owner is only reputed, and swears that part on belief.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_reputed_owner_is_not_sworn_to_of_own_knowledge(bool reputed)
    {
        var made = Make("design-lien", j => j with { Parties = [.. j.Parties.Select(p => p with { Reputed = reputed })] },
            o => o with { Draft = true });
        Assert.Equal(reputed, made.Says("(reputed owner)"));
        Assert.Equal(reputed, made.Says("except as to who is named as reputed"));
    }
}
