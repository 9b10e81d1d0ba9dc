using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// What every notice of these parts of the Code says, to the extent known to the giver (Civ. Code § 8102(a)), in the order of its
/// paragraphs.
/// </summary>
internal static class NoticeContents
{
    private const string Section = "Civ. Code § 8102(a)";
    private const string GivesThis = "Claimant, who gives this notice";

    /// <summary>Puts paragraphs (1) to (5), and (6)(A) and (B), on a notice that the claimant gives.</summary>
    /// <param name="leaf">The paper.</param>
    /// <param name="matter">The matter.</param>
    /// <param name="work">The label of the statement of work.</param>
    /// <param name="giver">The label of the claimant's name and address.</param>
    public static void Put(PaperBuilder leaf, Matter matter, string work = "Work provided", string giver = GivesThis)
    {
        People(leaf, matter);
        Giver(leaf, matter, giver);
        leaf.Field(work, matter.Need(matter.Facts.Work, "work-missing", new Place.OfHead("contract.work"),
            $"Say in a few words what work is provided or to be provided.", $"{Section}(6)(A)"));
        leaf.Field("Provided to or for", Hirer(matter));
    }

    /// <summary>Paragraphs (1) to (4): owner, direct contractor, lender, site.</summary>
    public static void People(PaperBuilder leaf, Matter matter)
    {
        var isPublic = matter.Job.Work.Kind == WorkKind.Public;
        var owners = matter.In(isPublic ? PartyCapacity.PublicEntity : PartyCapacity.Owner);
        if (owners.Count == 0)
        {
            matter.Refuse("owner-missing", Place.Parties,
                $"No party with capacity {new FileWord(isPublic ? PartyCapacity.PublicEntity : PartyCapacity.Owner)} is there.",
                isPublic ? Sentence.Of("Add the public entity that contracted for the work.")
                : $"Add the owner. If the owner is not known, add the person reasonably believed to be the owner, "
                    + $"with {new FieldSaid("reputed", "true")}.",
                $"{Section}(1)");
        }

        leaf.Field((isPublic, owners.Count > 1 || owners.Any(CapacityWords.IsSeveral)) switch
        {
            (true, false) => "Public entity",
            (true, true) => "Public entities",
            (false, false) => "Owner or reputed owner",
            (false, true) => "Owners or reputed owners",
        }, [.. owners.Select(p => Person(matter, p)).DefaultIfEmpty(null)]);
        leaf.Field(ContractorLabel(matter), [.. Contractors(matter)]);
        if (!isPublic)
            leaf.Field(LenderLabel(matter), [.. Lenders(matter)]);
        leaf.Field("Site", [.. Site(matter)]);
    }

    /// <summary>The label of the construction lenders.</summary>
    public static string LenderLabel(Matter matter) =>
        matter.In(PartyCapacity.ConstructionLender).Count > 1 ? "Construction lenders" : "Construction lender";

    /// <summary>Name and address of each construction lender (paragraph (3)).</summary>
    public static IEnumerable<string?> Lenders(Matter matter) =>
        matter.In(PartyCapacity.ConstructionLender).Select(p => (string?)Person(matter, p)).DefaultIfEmpty("None known");

    /// <summary>Paragraph (5): name, address, and relationship of the claimant who gives the notice.</summary>
    /// <param name="leaf">The paper.</param>
    /// <param name="matter">The matter.</param>
    /// <param name="label">The label of name and address.</param>
    public static void Giver(PaperBuilder leaf, Matter matter, string label = GivesThis)
    {
        var name = matter.Need(matter.Facts.Claimant, "claimant-name-missing", new Place.OfHead("claimant.name"),
            $"Add the claimant's full name.",
            $"{Section}(5)");
        var address = matter.Need(matter.Facts.Address, "claimant-address-missing", new Place.OfHead("claimant.address"),
            $"Add the claimant's address.",
            $"{Section}(5)");
        leaf.Field(label, [
            name is null ? null : $"{name}{(address is null ? "" : "\n" + address)}",
            .. Reached(matter),
            .. matter.Facts.License is { } license ? [license] : Array.Empty<string?>()]);
        leaf.Field("Relationship", Relationship(matter));
    }

    /// <summary>Telephone and e-mail of the claimant, which whoever gets a notice looks for first; none where the file has none.</summary>
    public static IReadOnlyList<string> Reached(Matter matter) =>
        (Clean(matter.Job.Claimant.Telephone), Clean(matter.Job.Claimant.Email)) switch
        {
            (null, null) => [],
            ({ } telephone, null) => [$"Telephone {OneLine(telephone)}"],
            (null, { } email) => [$"E-mail {OneLine(email)}"],
            ({ } telephone, { } email) => [$"Telephone {OneLine(telephone)}, e-mail {OneLine(email)}"],
        };

    /// <summary>Name, capacity and address of a person.</summary>
    public static string Person(Matter matter, Party party) =>
        Addressees.WithHolders(party, $"{OneLine(Clean(party.Name) ?? "")}{(party.Reputed ? $" ({CapacityWords.Of(party)})" : "")}") + "\n"
        + (matter.AddressOf(party) ?? "(address not known to the giver of this notice)");

    /// <summary>The site's lines; a missing site is a reason against the paper.</summary>
    public static IReadOnlyList<string?> Site(Matter matter)
    {
        if (matter.Facts.Street is null && matter.Facts.Legal is null)
        {
            matter.Refuse("site-missing", new Place.OfHead("work.site"), $"Nothing is there.",
                $"Add the street address or the legal description.",
                $"{Section}(4)");
        }

        if (matter.Facts.County is null)
        {
            matter.Refuse("county-missing", new Place.OfHead("work.site.county"),
                Sentence.Of(string.IsNullOrWhiteSpace(matter.Job.Work.Site.County) ? "Nothing is there."
                : $"'{matter.Job.Work.Site.County}' is no county of California."), $"Name one of the 58 counties.", "Civ. Code § 8060");
        }

        return [.. SiteWords.Of(matter.Facts)];
    }

    /// <summary>To or for whom the work is (paragraph (6)(B)).</summary>
    public static string? Hirer(Matter matter)
    {
        if (matter.Facts.HiredBy is { } hirer && Clean(hirer.Name) is not null)
            return SiteWords.Hirer(hirer);
        matter.Refuse("hirer-missing", new Place.OfHead("claimant.hiredBy"), $"Nothing is there.",
            $"Name the party id of the one who contracted with the claimant.", $"{Section}(6)(B)");
        return null;
    }

    /// <summary>The claimant's role in words, with its article.</summary>
    public static string ARole(ClaimantRole role) => $"{(role == ClaimantRole.EquipmentLessor ? "an" : "a")} {RoleWord(role)}";

    /// <summary>The claimant's role in words.</summary>
    public static string RoleWord(ClaimantRole role) => role switch
    {
        ClaimantRole.DirectContractor => "direct contractor",
        ClaimantRole.Subcontractor => "subcontractor",
        ClaimantRole.Supplier => "material supplier",
        ClaimantRole.EquipmentLessor => "equipment lessor",
        ClaimantRole.Laborer => "laborer",
        ClaimantRole.DesignProfessional => "design professional",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No such role."),
    };

    /// <summary>The demand (paragraph (6)(C)); none above zero is a reason against the paper.</summary>
    /// <param name="matter">The matter.</param>
    /// <param name="demand">Dollars and cents.</param>
    /// <param name="section">The section that asks for it.</param>
    /// <param name="due">For what it is due, with a space before and a comma after; or nothing.</param>
    public static IReadOnlyList<string?> Demand(Matter matter, decimal demand, string section, string due = "")
    {
        if (demand > 0)
            return [Dollars(demand), $"({InWords(demand)}),{due} after deducting all just credits and offsets."];
        matter.Refuse("demand-not-positive", Place.Demand, $"The demand after all just credits and offsets is {Dollars(demand)}.",
            $"Nothing is left to claim; see the steps of the amount.", section);
        return [null];
    }

    /// <summary>The label of the direct contractors.</summary>
    public static string ContractorLabel(Matter matter) => matter.Job.Claimant.Role != ClaimantRole.DirectContractor
        && matter.In(PartyCapacity.DirectContractor).Count > 1 ? "Direct contractors" : "Direct contractor";

    /// <summary>Name and address of each direct contractor (paragraph (2)).</summary>
    public static IEnumerable<string?> Contractors(Matter matter)
    {
        if (matter.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return [GiverLines(matter)];
        return matter.In(PartyCapacity.DirectContractor).Select(p => (string?)Person(matter, p))
            .DefaultIfEmpty("Not known to the giver of this notice");
    }

    // Paragraph (2) asks for name and address, whoever gives the notice.
    private static string GiverLines(Matter matter) =>
        OneLine(string.Join(", ", new[] { matter.Facts.Claimant, matter.Facts.Address }.OfType<string>().DefaultIfEmpty("The claimant")));

    private static string Relationship(Matter matter)
    {
        var role = RoleWord(matter.Job.Claimant.Role);
        return matter.Facts.HiredBy is { } hirer && Clean(hirer.Name) is not null
            ? $"{char.ToUpperInvariant(role[0])}{role[1..]} under contract "
                + $"with {Addressees.InSentence(hirer)}, the {CapacityWords.Of(hirer)}"
            : $"{char.ToUpperInvariant(role[0])}{role[1..]}";
    }
}
