using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>Those among whom one notice is due: reaching any one of them will do.</summary>
/// <param name="Who">Whom the statute names: owner, direct contractor or construction lender.</param>
/// <param name="AnyOf">The parties of the file who answer to it; empty where the file names none.</param>
/// <param name="Section">The section.</param>
public sealed record Recipient(PartyCapacity Who, IReadOnlyList<Party> AnyOf, string Section)
{
    /// <summary>In words, with the names.</summary>
    public string Words => Who switch
    {
        PartyCapacity.Owner => "owner",
        PartyCapacity.DirectContractor => "direct contractor",
        PartyCapacity.ConstructionLender => "construction lender",
        PartyCapacity.PublicEntity => "public entity",
        PartyCapacity.Subcontractor => "subcontractor",
        PartyCapacity.Surety => "surety",
        PartyCapacity.Supplier => "supplier",
        PartyCapacity.Architect => "owner's architect",
        PartyCapacity.OwnersAgent => "owner's agent",
        PartyCapacity.Association => "association",
        _ => throw new InvalidOperationException($"No words for {Who}."),
    } + (AnyOf.Count == 0 ? "" : " " + string.Join(" or ", AnyOf.Select(p => p.Name)));
}

/// <summary>Who must be given preliminary notice on private work (Civ. Code § 8200).</summary>
public static class Recipients
{
    /// <summary>The persons to whom notice is due; empty where none is due.</summary>
    public static IReadOnlyList<Recipient> Of(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.Laborer)
            return LaborerGivesNone();
        return facts.HiredByOwner ? ToLenderOnly(facts) : ToOwnerContractorAndLender(facts);
    }

    [Rule("Civ. Code § 8200(e)(1)")]
    private static IReadOnlyList<Recipient> LaborerGivesNone() => [];

    [Rule("Civ. Code § 8200(e)(2)")]
    private static List<Recipient> ToLenderOnly(FactsAsOf facts)
    {
        var recipients = new List<Recipient>();
        AddLenders(facts, "Civ. Code § 8200(e)(2)", recipients);
        return recipients;
    }

    [Rule("Civ. Code § 8200(a)")]
    private static List<Recipient> ToOwnerContractorAndLender(FactsAsOf facts)
    {
        // One co-owner is told for all; which contractor the work goes to is known only where the claimant was hired by it.
        IReadOnlyList<Party> contractors = facts.Hirer is { Capacity: PartyCapacity.DirectContractor } hirer
            ? [hirer]
            : facts.Job.In(PartyCapacity.DirectContractor);
        var recipients = new List<Recipient>(3)
        {
            new(PartyCapacity.Owner, facts.Job.In(PartyCapacity.Owner), "Civ. Code § 8200(a)(1)"),
            new(PartyCapacity.DirectContractor, contractors, "Civ. Code § 8200(a)(2)"),
        };
        AddLenders(facts, "Civ. Code § 8200(a)(3)", recipients);
        return recipients;
    }

    [Rule("Civ. Code § 8200(a)(3)")]
    private static void AddLenders(FactsAsOf facts, string section, List<Recipient> recipients)
    {
        foreach (var lender in facts.Job.In(PartyCapacity.ConstructionLender))
        {
            if (!IsNotYetKnown(facts, lender))
                recipients.Add(new Recipient(PartyCapacity.ConstructionLender, [lender], section));
        }
    }

    /// <summary>
    /// Whether nothing named the lender on the first day of the claimant's work: then notice to it is no condition, though it came to be of
    /// record within the 20 days (Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75).
    /// </summary>
    [Rule("Civ. Code § 8200(a)(3)", Sure = Sure.Opinion)]
    public static bool IsNotYetKnown(FactsAsOf facts, Party lender) =>
        lender.KnownSince is { } since && facts.FirstFurnished is { } first && since > first.Latest;

    /// <summary>The lenders whom nothing named on the first day of the claimant's work.</summary>
    public static IEnumerable<Party> NotYetKnown(FactsAsOf facts) => facts.Job.Claimant.Role == ClaimantRole.Laborer
        ? []
        : facts.Job.In(PartyCapacity.ConstructionLender).Where(lender => IsNotYetKnown(facts, lender));
}
