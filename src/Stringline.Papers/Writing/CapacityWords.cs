using Stringline.Law.Facts;

namespace Stringline.Papers.Writing;

/// <summary>What a party is on the job, in the words of a paper.</summary>
internal static class CapacityWords
{
    /// <summary>Whether one party of the file is several persons who hold title together, such as a couple.</summary>
    public static bool IsSeveral(Party party) =>
        party.HoldsTitleAs is { Form: TitleForm.Individual or TitleForm.JointTenants, Persons.Count: > 1 };

    /// <summary>The capacity: <c>reputed owner</c>, <c>direct contractor</c>.</summary>
    public static string Of(Party party)
    {
        var words = party.Capacity switch
        {
            PartyCapacity.Owner => IsSeveral(party) ? "owners" : "owner",
            PartyCapacity.DirectContractor => "direct contractor",
            PartyCapacity.Subcontractor => "subcontractor",
            PartyCapacity.ConstructionLender => "construction lender",
            PartyCapacity.Surety => "surety",
            PartyCapacity.PublicEntity => "public entity",
            PartyCapacity.Supplier => "supplier",
            PartyCapacity.Architect => "owner’s architect",
            PartyCapacity.OwnersAgent => "owner’s agent",
            PartyCapacity.Association => "association",
            _ => throw new ArgumentOutOfRangeException(nameof(party), party.Capacity, "Not a capacity."),
        };
        return party.Reputed ? "reputed " + words : words;
    }
}
