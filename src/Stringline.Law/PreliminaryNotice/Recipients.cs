using Stringline.Law.Reasoning;
using Stringline.Law.Facts;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>Those among whom one notice is due: reaching any one of them will do.</summary>
/// <param name="Who">Whom the statute names: owner, direct contractor or construction lender.</param>
/// <param name="AnyOf">The parties of the file who answer to it; empty where the file names none.</param>
/// <param name="Section">The section.</param>
public sealed record Recipient(PartyCapacity Who, IReadOnlyList<Party> AnyOf, string Section)
{
    /// <summary>Whether only all of them will surely do, since the file does not say which of them is meant.</summary>
    public bool AllNeeded { get; init; }

    /// <summary>Agents who may be told in their place (Civ. Code §§ 8066, 8119).</summary>
    public IReadOnlyList<Party> Agents { get; init; } = [];

    /// <summary>That it is due a notice and the file shows none.</summary>
    public string NoneGiven => $"Due to the {Words}; the file shows none given.";

    /// <summary>The question that the missing notice asks.</summary>
    public Question WasGiven => new($"Was notice given to the {Words}? The file shows none.");

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
        var recipients = new List<Recipient>(3)
        {
            Owner(facts),
            DirectContractor(facts, "Civ. Code § 8200(a)(2)"),
        };
        AddLenders(facts, "Civ. Code § 8200(a)(3)", recipients);
        return recipients;
    }

    /// <summary>
    /// One co-owner is told for all. Landlord and tenant own two interests, and nothing makes one the other's agent, so that where a
    /// tenant ordered the work both are told (our reading).
    /// </summary>
    [Rule("Civ. Code § 8200(a)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8066")]
    [Rule("Civ. Code § 8119")]
    private static Recipient Owner(FactsAsOf facts)
    {
        var owners = facts.Job.In(PartyCapacity.Owner);
        List<Party>? agents = null;
        for (var i = 0; i < facts.Job.Parties.Count; i++)
        {
            var party = facts.Job.Parties[i];
            if (party.Capacity == PartyCapacity.OwnersAgent
                || (party.Capacity == PartyCapacity.Association && facts.Job.Work.CommonInterest == true))
                (agents ??= []).Add(party);
        }

        return new Recipient(PartyCapacity.Owner, owners, "Civ. Code § 8200(a)(1)")
        {
            AllNeeded = owners.Count > 1 && facts.Job.Work.OrderedByTenant == true,
            Agents = agents is null ? [] : agents,
        };
    }

    /// <summary>
    /// The direct contractor to which the claimant provides work, directly or through subcontractors: the one that hired it, the one under
    /// whom its hirer works, or the only one there is. Of several any may be meant.
    /// </summary>
    [Rule("Civ. Code § 8200(a)")]
    [Rule("Civ. Code § 9300(a)")]
    public static Recipient DirectContractor(FactsAsOf facts, string section)
    {
        if (facts.Hirer is { Capacity: PartyCapacity.DirectContractor } hirer)
            return new Recipient(PartyCapacity.DirectContractor, [hirer], section);
        if (facts.Job.Party(facts.Hirer?.WorksUnder) is { Capacity: PartyCapacity.DirectContractor } above)
            return new Recipient(PartyCapacity.DirectContractor, [above], section);
        var all = facts.Job.In(PartyCapacity.DirectContractor);
        return new Recipient(PartyCapacity.DirectContractor, all, section) { AllNeeded = all.Count > 1 };
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

    /// <summary>Whether on some day that the first of the claimant's work may have been nothing named the lender yet.</summary>
    [Rule("Civ. Code § 8200(a)(3)", Sure = Sure.Opinion)]
    internal static bool MayNotBeKnown(FactsAsOf facts, Party lender) =>
        lender.KnownSince is { } since && facts.FirstFurnished is { } first && since > first.Earliest;

    /// <summary>The lenders whom nothing named on the first day of the claimant's work.</summary>
    public static IEnumerable<Party> NotYetKnown(FactsAsOf facts) => facts.Job.Claimant.Role == ClaimantRole.Laborer
        ? []
        : facts.Job.In(PartyCapacity.ConstructionLender).Where(lender => IsNotYetKnown(facts, lender));
}
