using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>A paper speaks for the one who signs it: its foot, its return address and the names to be indexed agree.</summary>
public sealed class WhoSpeaksTests
{
    private const string Claimant = "Quarrymen’s Supply Company, Inc.";
    private const string Owner = "Alder Court Partners, LLC";

    public static TheoryData<string> Recorded => [.. PaperCatalogue.All.Where(p => p.Use == PaperUse.Recorded).Select(p => p.Id)];

    /// <summary>
    /// Gov. Code § 27361.6: who asks that it be recorded stands at the head, and the paper goes back there. Civ. Code § 8182(a), (b): a
    /// notice of completion is the owner's.
    /// </summary>
    [Theory]
    [MemberData(nameof(Recorded))]
    public void A_recorded_paper_goes_back_to_the_one_whom_its_foot_names(string id)
    {
        var made = Make(id, options: o => id == "notice-of-pendency" ? o with { Draft = true } : o);
        var (giver, other) = id == "notice-of-completion" ? (Owner, Claimant) : (Claimant, Owner);
        var text = made.TextOf();
        var head = text[..text.IndexOf(made.Files[0].Title.ToUpperInvariant(), StringComparison.Ordinal)];
        Assert.Contains(giver, head, StringComparison.Ordinal);
        // The foot of a notice of credit has the claim's number behind the title.
        var more = id == "notice-of-credit" ? " on instrument no. 2026-0012345" : "";
        Assert.Contains($"{made.Files[0].Title}{more}, {giver}", Feet(made), StringComparison.Ordinal);
        Assert.DoesNotContain(other, Feet(made), StringComparison.Ordinal);
        Assert.Equal(giver == Claimant, made.SheetText().Contains("Claimant: ", StringComparison.Ordinal));
    }

    /// <summary>Civ. Code § 8482: the owner gives the demand for release.</summary>
    [Fact]
    public void A_demand_for_release_speaks_for_the_owner() =>
        Assert.Contains($"Demand for Release of Claim of Lien, {Owner}", Feet(Make("release-demand")), StringComparison.Ordinal);

    private static string Feet(PacketOutcome.Made made) => string.Join('\n', ReadBack.Of(made.Files[0].Bytes).Pages
        .Select(p => string.Join(' ', p.Lines[^1].Select(w => w.Text))));
}
