using Stringline.Desk.Entering.Forms;
using Stringline.Exchange;
using Stringline.Law.Facts;

namespace Stringline.Desk.Entering;

/// <summary>A part of the head of a job file that is filled in together.</summary>
/// <param name="Word">Its word in the address.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Fields">Its fields, each named by its path.</param>
internal sealed record HeadPart(string Word, string Title, params IReadOnlyList<Asked> Fields)
{
    /// <summary>A list that it holds; null where it holds none.</summary>
    public HeadList? List { get; init; }
}

/// <summary>A list in the head: each item has the same fields.</summary>
/// <param name="Path">Its path, such as <c>parties</c>.</param>
/// <param name="Item">What one item is called.</param>
/// <param name="Fields">The fields of an item, each named by its path within the item.</param>
internal sealed record HeadList(string Path, string Item, params IReadOnlyList<Asked> Fields)
{
    /// <summary>Whether a field is asked of an item: not where it belongs to another capacity than the one chosen, and nothing stands in it.</summary>
    public bool Asks(Asked asked, int item, Typed typed) => asked.OnlyOf is not { } only
        || typed[HeadDraft.Field(this, item, asked)].Length > 0
        || typed[$"{Path}[{item}].capacity"] is var capacity && (capacity.Length == 0 || capacity == JobFileWords.Word(only));
}

/// <summary>The forms of the head of a job file. A new field is one more row.</summary>
internal static class HeadForms
{
    private const string YesOrNoHint = "the answer decides which rule governs";

    /// <summary>Every part, in order.</summary>
    public static IReadOnlyList<HeadPart> All { get; } =
    [
        new("site", "The job and its site",
            new("name", "Name of the job", Answer.Line) { Required = true },
            new("work.kind", "Kind of work", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.Kind, "private", "public (the state, a county, a city, a school district)", "federal") },
            new("work.use", "Use of the site", Answer.OneOf) { Choices = Usual.Words(JobFileWords.Use, "commercial or mixed", "residential", "the owner's own dwelling, one to four units") },
            new("work.site.street", "Street of the site", Answer.Line),
            new("work.site.city", "City", Answer.Line),
            new("work.site.zip", "ZIP", Answer.Line),
            new("work.site.county", "County in which the site lies", Answer.County) { Required = true },
            new("work.site.apn", "Assessor's parcel number", Answer.Line) { Hint = "as written on the tax bill" },
            new("work.site.legal", "Legal description", Answer.Lines)),
        new("work", "The work, permit and bond",
            new("work.commenced", "The whole work commenced at the site on", Answer.Day),
            new("work.permit.number", "Number of the building permit", Answer.Line),
            new("work.permit.authority", "Who issued it", Answer.Line),
            new("work.permit.ownerAddress", "The owner's address as the permit shows it", Answer.Lines) { Hint = "a place to serve the claim (Civ. Code § 8416(c)(1))" },
            new("work.paymentBond.recorded", "The payment bond was recorded on", Answer.Day),
            new("work.paymentBond.surety", "Its surety", Answer.Party) { Among = PartyCapacity.Surety },
            new("work.subjectToAcceptanceBy", "The work waits for acceptance by", Answer.Line) { Hint = "a public entity (Civ. Code § 8180(b)), such as for the streets of a tract" },
            new("work.residentialStructures", "Number of separate residential structures", Answer.Count) { Hint = "each is a work of its own (Civ. Code § 8448)" },
            YesNo("work.severalDirectContracts", "Do two or more direct contracts, each for a portion, make up the work?", "Civ. Code § 8186"),
            YesNo("work.commonInterest", "Is it a condominium or other common interest development?", YesOrNoHint),
            YesNo("work.siteImprovement", "Is your work a site improvement under a direct contract of its own?", "Civ. Code § 8454"),
            YesNo("work.orderedByTenant", "Did a tenant, or another holder of less than the fee, contract for the work?", "Civ. Code § 8442"),
            YesNo("work.lowRiseResidential", "Is the building residential, not mixed-use and not over four stories?", "Civ. Code §§ 8811, 8850"),
            YesNo("work.stateContractAct", "Is a public work under the State Contract Act?", "Civ. Code § 9200(b)")),
        new("claimant", "Your firm, who signs, and the licence",
            new("claimant.name", "Your firm's full name", Answer.Line) { Required = true },
            new("claimant.role", "On this job you are", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.Role, "direct contractor", "subcontractor", "supplier", "lessor of equipment", "laborer", "design professional") },
            new("claimant.address", "Address", Answer.Lines),
            new("claimant.hiredBy", "Who ordered from you", Answer.Party),
            new("claimant.signer.name", "Who signs for you", Answer.Line),
            new("claimant.signer.title", "Title", Answer.Line),
            YesNo("claimant.license.required", "Does your part of the work need a contractor's licence?", "Bus. & Prof. Code § 7031"),
            new("claimant.license.number", "Licence number", Answer.Line),
            new("claimant.license.class", "Classification", Answer.Line))
        {
            List = new("claimant.license.active", "Span of the active licence",
                new("from", "Active from", Answer.Day),
                new("to", "to", Answer.Day) { Hint = "nothing while it goes on" },
                new("putBack", "if it was put back for this span: on which day", Answer.Day) { Hint = "the day the board took the certificate (Bus. & Prof. Code § 7125.2)" }),
        },
        new("contract", "Your contract",
            new("contract.on", "Day of the contract", Answer.Day),
            YesNo("contract.written", "Is it in writing?", ""),
            new("contract.price", "Agreed price", Answer.Money) { Hint = "nothing where only unit prices were agreed" },
            new("contract.reasonableValue", "Reasonable value, where you put it below the price", Answer.Money) { Hint = "Civ. Code § 8430(a)(1)" },
            new("contract.work", "General description of the work", Answer.Lines)),
        new("parties", "Parties")
        {
            List = new("parties", "Party",
                new("name", "Full name", Answer.Line),
                new("capacity", "Is the", Answer.OneOf) { Choices = Usual.Words(JobFileWords.Capacity, "owner", "direct contractor", "subcontractor", "construction lender", "surety", "public entity", "supplier") },
                new("address", "Address", Answer.Lines),
                new("reputed", "reputed: believed to be so, in good faith", Answer.Tick),
                new("holdsTitleAs.form", "Holds title as", Answer.OneOf) { OnlyOf = PartyCapacity.Owner, Choices = Usual.Words(JobFileWords.TitleForm, "individual", "joint tenants", "trust", "company", "estate", "public entity") },
                new("holdsTitleAs.trust", "Name of the trust", Answer.Line) { OnlyOf = PartyCapacity.Owner, Hint = "as the deed gives it; of a trust only" },
                new("holdsTitleAs.persons", "Persons who hold title", Answer.Lines) { OnlyOf = PartyCapacity.Owner, Hint = "one on a line, Surname, Given names, Suffix; an entity after a =" },
                new("holdsTitleAs.decedent", "Who died", Answer.Line) { OnlyOf = PartyCapacity.Owner, Hint = "Surname, Given names; of an estate only" },
                new("knownSince", "Of record, or known to you, since", Answer.Day) { OnlyOf = PartyCapacity.ConstructionLender, Hint = "of a construction lender only (Civ. Code § 8200(a)(3))" },
                new("madeToPlans", "Did it agree to make a definite, substantial part of the work to the plans?", Answer.YesOrNo) { OnlyOf = PartyCapacity.Supplier, Hint = "of a supplier only (Civ. Code § 8404(b))" }),
        },
    ];

    /// <summary>The part of a word; null where there is none.</summary>
    public static HeadPart? Find(string? word) => All.FirstOrDefault(part => part.Word == word);

    /// <summary>The part and the field that answer for a path, such as <c>work.orderedByTenant</c> or <c>claimant.license</c>; null where none does.</summary>
    public static (HeadPart Part, string Field)? PartOf(string path)
    {
        foreach (var part in All)
        {
            if (part.List is { } list && (path == list.Path || path.StartsWith(list.Path + ".", StringComparison.Ordinal)))
                return (part, list.Path);
            if (part.Fields.FirstOrDefault(asked => asked.Name == path || asked.Name.StartsWith(path + ".", StringComparison.Ordinal)) is { } found)
                return (part, found.Name);
        }

        return null;
    }

    /// <summary>What a form calls a path of the job file, such as <c>claimant.address</c> or <c>parties[1].address</c>; null where no form asks it.</summary>
    public static string? LabelOf(string path)
    {
        foreach (var part in All)
        {
            if (part.Fields.FirstOrDefault(asked => asked.Name == path) is { } field)
                return field.Label;
            if (part.List is { } list && path.StartsWith(list.Path + "[", StringComparison.Ordinal)
                && list.Fields.FirstOrDefault(asked => path.EndsWith("]." + asked.Name, StringComparison.Ordinal)) is { } item)
                return $"{list.Item}: {item.Label}";
        }

        return PartOf(path)?.Part.Title;
    }

    private static Asked YesNo(string path, string question, string hint) => new(path, question, Answer.YesOrNo) { Hint = hint };
}
