using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// The direct contractor's affidavit for summary release, item by item as Civ. Code § 9402 lists them, and what it refuses.
/// </summary>
public sealed class ReleaseAffidavitTests
{
    private const string Id = "release-affidavit";

    /// <summary>Civ. Code § 9400(a)-(d), the grounds, letter for letter but for the subdivision after them.</summary>
    [Theory]
    [InlineData(ReleaseGround.NotSuchAClaim, "(a)",
        "The claim on which the notice is based is not a type for which a stop payment notice is authorized under this chapter")]
    [InlineData(ReleaseGround.NotSuchAClaimant, "(b)",
        "The claimant is not a person authorized under Section 9100 to give a stop payment notice")]
    [InlineData(ReleaseGround.Excessive, "(c)", "The amount of the claim stated in the stop payment notice is excessive")]
    [InlineData(ReleaseGround.NoBasis, "(d)", "There is no basis for the claim stated in the stop payment notice")]
    public void Section_9400(ReleaseGround ground, string subdivision, string words)
    {
        var made = Make(Id, options: o => o with { Grounds = [ground] });
        Assert.True(made.Says($"{words} (section 9400, subdivision {subdivision})."));
        Assert.Equal(1, Enum.GetValues<ReleaseGround>().Count(g => made.Says(StopPaymentNotice.ReleaseGrounds.Words(g))));
    }

    /// <summary>
    /// Civ. Code § 9402(a): "an allegation of the grounds for release of the funds and a statement of the facts supporting the allegation".
    /// </summary>
    [Fact]
    public void Section_9402_a()
    {
        Assert.True(Make(Id)
            .Says("The subcontractor set 31 of the 62 sills that the invoice lists; the other 31 were never delivered to the site."));
        var both = Make(Id, options: o =>
            o with { Grounds = [ReleaseGround.NoBasis, ReleaseGround.Excessive, ReleaseGround.NoBasis], Amount = null });
        Assert.True(both.Says(StopPaymentNotice.ReleaseGrounds.Words(ReleaseGround.Excessive)));
        Assert.True(both.Says(StopPaymentNotice.ReleaseGrounds.Words(ReleaseGround.NoBasis)));
        Assert.Contains(Refusals(Id, options: o => o with { Words = " " }),
            r => r is { Id: "facts-missing", Section: "Civ. Code § 9402(a)" });
        Assert.Contains(Refusals(Id, options: o => o with { Grounds = [] }), r =>
            r is { Id: "grounds-missing", Where: Place.OfInput { Input: PaperInput.Grounds } });
    }

    /// <summary>Civ. Code § 9402(b): "a demand for the release of all or the portion of the funds".</summary>
    [Fact]
    public void Section_9402_b()
    {
        Assert.Contains("$12,400.00", Make(Id).TextOf(), StringComparison.Ordinal);
        Assert.True(Make(Id).Says("a portion of the funds withheld under the stop payment notice."));
        Assert.True(Make(Id, options: o => o with { Grounds = [ReleaseGround.NoBasis], Amount = null }).TextOf()
            .Contains("All of the funds", StringComparison.Ordinal));
        Assert.Contains(Refusals(Id, options: o => o with { Amount = null }), r =>
            r is { Id: "portion-missing", Where: Place.OfInput { Input: PaperInput.Amount } });
    }

    /// <summary>Civ. Code § 9402(c): "a statement of the address of the contractor within the state".</summary>
    [Theory]
    [InlineData("2200 Plumb Street\nSacramento, CA 95811", null)]
    [InlineData("2200 Plumb Street, Sacramento, California 95811", null)]
    [InlineData("14 Level Road\nReno, NV 89501", "address-not-in-state")]
    [InlineData("14 Level Road, Cape Cady", "address-not-in-state")]
    [InlineData(null, "claimant-address-missing")]
    public void Section_9402_c(string? address, string? refusal)
    {
        JobFile At(JobFile job) => job with { Claimant = job.Claimant with { Address = address } };
        if (refusal is null)
            Assert.True(Make(Id, At).Says(address!.Split('\n', ',')[0]));
        else
            Assert.Contains(Refusals(Id, At), r => r.Id == refusal && r.Section == "Civ. Code § 9402(c)");
    }

    /// <summary>
    /// Civ. Code §§ 9402, 8102(a): entity, contractor, site, work; an affidavit is sworn; and its service, with a copy, is proved (§ 8118).
    /// </summary>
    [Theory]
    [InlineData("City of Woodland", 0)]
    [InlineData("300 First Street, Woodland, CA 95695", 0)]
    [InlineData("Quarrymen’s Supply Company, Inc.", 0)]
    [InlineData("Łukasz Masonry, Inc.", 0)]
    [InlineData("9 Course Lane, Dixon, CA 95620", 0)]
    [InlineData("May 7, 2026", 0)]
    [InlineData("418 Alder Court, Woodland, California 95695", 0)]
    [InlineData("Construction of the Alder Court library", 0)]
    [InlineData("I am President of Quarrymen’s Supply Company, Inc., the direct contractor named in the foregoing affidavit", 0)]
    [InlineData("under penalty of perjury under the laws of the State of California", 0)]
    [InlineData("Affidavit for release of funds, with a copy of it", 1)]
    [InlineData("City of Woodland", 1)]
    public void Sections_9402_and_8102(string item, int file) => Assert.True(Make(Id).Says(item, file), item);

    /// <summary>Civ. Code § 9402: with a copy, which the entity serves on the claimant with a notice of 10 to 20 days (§ 9404).</summary>
    [Fact]
    public void Sections_9402_and_9404_a_copy_goes_with_it()
    {
        var sheet = string.Join(' ', Make(Id).SheetText().Split('\n', ' '));
        Assert.Contains("together with a copy", sheet, StringComparison.Ordinal);
        Assert.Contains("10 to 20 days", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Section_9400_only_a_direct_contractor_on_public_work()
    {
        Assert.Contains(Refusals(Id, j => j with { Claimant = j.Claimant with { Role = ClaimantRole.Subcontractor } }),
            r => r.Id == "not-direct-contractor");
        Assert.Contains(Refusals(Id, j => j with { Work = j.Work with { Kind = WorkKind.Private } }), r => r.Id == "other-work");
        Assert.Contains(Refusals(Id, j => j with { Parties = [.. j.Parties.Where(p => p.Id != "c1")] }), r => r.Id == "entity-missing");
    }

    /// <summary>Civ. Code § 9404: the copy is served on the claimant, so that one is named, and one only.</summary>
    [Fact]
    public void Section_9404_who_gave_the_notice()
    {
        PaperOptions To(PaperOptions options, params string[] to) => options with { To = to };
        Assert.Contains(Refusals(Id, options: o => To(o)), r => r.Id == "notice-giver-missing");
        Assert.Contains(Refusals(Id, options: o => To(o, "p2", "p5")), r => r.Id == "notice-giver-missing");
        Assert.Contains(Refusals(Id, options: o => To(o, "c1")), r => r.Id == "notice-giver-is-entity");
        Assert.Contains(Refusals(Id, options: o => To(o, "p9")), r => r.Id == "party-unknown");
        Assert.Contains(Refusals(Id, j => j with { Parties = [.. j.Parties.Select(p => p.Id == "p2" ? p with { Address = null } : p)] }),
            r => r.Id == "recipient-address-missing");
        Assert.Contains(Refusals(Id, options: o => o with { Day = Day("2026-05-21") }), r => r.Id == "notice-in-the-future");
        Assert.Contains("Stop payment notice given on", Make(Id, options: o => o with { Day = null }).SheetText(),
            StringComparison.Ordinal);
    }
}
