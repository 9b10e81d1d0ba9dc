using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

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
    /// <summary>
    /// Whether a field is asked of an item: not where it belongs to another capacity than the one chosen, and nothing stands in it.
    /// </summary>
    public bool Asks(Asked asked, int item, Typed typed) => asked.OnlyOf.Count == 0
        || typed[HeadDraft.Field(this, item, asked)].Length > 0
        || typed[$"{Path}[{item}].capacity"] is var capacity
        && (capacity.Length == 0 || asked.OnlyOf.Any(only => capacity == JobFileWords.Word(only)));

    /// <summary>The letter with which the program names a new item; null where items have no names.</summary>
    public char? IdLetter => Path switch
    {
        "parties" => 'p',
        "work.structures" => 'b',
        _ => null,
    };
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
            new("work.kind", "Kind of work", Answer.OneOf)
            {
                Required = true,
                Choices = Choice.Of(JobFileWords.Kind, "private", "public (the state, a county, a city, a school district)", "federal"),
            },
            new("work.use", "Use of the site", Answer.OneOf)
            {
                Choices = Choice.Of(JobFileWords.Use, "commercial or mixed", "residential",
                    "the owner's own dwelling, one to four units"),
            },
            new("work.site.street", "Street of the site", Answer.Line),
            new("work.site.city", "City", Answer.Line),
            new("work.site.zip", "ZIP", Answer.Line),
            new("work.site.county", "County in which the site lies", Answer.County) { Required = true },
            new("work.site.alsoIn", "Other counties in which part of the work lies", Answer.Counties) { Hint =
                "one on a line (Civ. Code § 8060(b))" },
            new("work.site.apn", "Assessor's parcel number", Answer.Line) { Hint = "as written on the tax bill" },
            new("work.site.legal", "Legal description", Answer.Lines)),
        new("work", "The work, permit and bond",
            new("work.commenced", "The whole work commenced at the site on", Answer.Day),
            new("work.permit.number", "Number of the building permit", Answer.Line),
            new("work.permit.authority", "Who issued it", Answer.Line),
            new("work.permit.ownerAddress", "The owner's address as the permit shows it", Answer.Lines) { Hint =
                "a place to serve the claim (Civ. Code § 8416(c)(1))" },
            new("work.paymentBond.recorded", "The payment bond was recorded on", Answer.Day),
            new("work.paymentBond.surety", "Its surety", Answer.Party) { Among = PartyCapacity.Surety },
            new("work.paymentBond.amount", "Amount of the payment bond", Answer.Money),
            new("work.paymentBond.principal", "Its principal: who gave the bond", Answer.Party) { Hint =
                "an owner, a direct contractor or a subcontractor (Civ. Code § 8606(b))" },
            new("work.subjectToAcceptanceBy", "The work waits for acceptance by", Answer.Line) { Hint =
                "a public entity (Civ. Code § 8180(b)), such as for the streets of a tract" },
            YesNo("work.publicTakesOver", "Does the public take over an interest in what is built, so that it accepts and does not only "
                + "approve it?", "of a private work only (Civ. Code § 8180(b))"),
            new("work.residentialStructures", "Number of separate residential structures", Answer.Count) { Hint =
                "each is a work of its own (Civ. Code § 8448)" },
            new("work.units", "Number of dwelling units on the site", Answer.Count),
            new("work.expectedCost", "What the whole work was expected to cost", Answer.Money) { Hint = "Civ. Code § 8318" },
            YesNo("work.severalDirectContracts", "Do two or more direct contracts, each for a portion, make up the work?",
                "Civ. Code § 8186"),
            YesNo("work.commonInterest", "Is it a condominium or other common interest development?", YesOrNoHint),
            YesNo("work.siteImprovement", "Is your work a site improvement under a direct contract of its own?", "Civ. Code § 8454"),
            YesNo("work.orderedByTenant", "Did a tenant, or another holder of less than the fee, contract for the work?",
                "Civ. Code § 8442"),
            YesNo("work.lowRiseResidential", "Is the building residential, not mixed-use and not over four stories?",
                "Civ. Code §§ 8811, 8850"),
            YesNo("work.publicUtility", "Is the owner a public utility?", "of a private work only (Civ. Code § 8802)"),
            YesNo("work.securityExempt", "Is the owner of a large project free from giving security?",
                "of a private work only (Civ. Code §§ 8702, 8704, 8710)"),
            new("work.body", "Which public body contracted for the work", Answer.OneOf)
            {
                Hint = "of a public work only",
                Choices = Choice.Of(JobFileWords.PublicBody, "a city, county, district or other local agency",
                    "a State agency other than those below", "the Department of General Services", "the Department of Transportation",
                    "the California State University", "the University of California, a court or the Legislature"),
            },
            YesNo("work.substantiallyComplex", "Did the public body find before bids that the work is substantially complex?",
                "of a public work only (Pub. Contract Code § 7201(b)(4))"),
            YesNo("work.stateContractAct", "Is a public work under the State Contract Act?", "Civ. Code § 9200(b)")),
        new("direct-contract", "The contract between owner and direct contractor",
            new("work.directContract.on", "Day of the contract between owner and direct contractor", Answer.Day) { Hint =
                "as far as you know it" },
            new("work.directContract.price", "Its price", Answer.Money),
            new("work.directContract.retentionPercent", "Retention it allows, in percent", Answer.Percent) { Hint = "Civ. Code § 8811" },
            new("work.directContract.filed", "Filed with the county recorder on", Answer.Day) { Hint =
                "nothing where it was not, as far as you know (Civ. Code §§ 8432(b), 8600)" }),
        new("structures", "Residential structures")
        {
            List = new("work.structures", "Residential structure",
                new("text", "Which one", Answer.Line) { Hint = "such as its street number" },
                new("share", "Its share of what is due", Answer.Money) { Hint = "Civ. Code § 8446(b)" }),
        },
        new("claimant", "Your firm, who signs, and the license",
            new("claimant.name", "Your firm's full name", Answer.Line) { Required = true },
            new("claimant.role", "On this job you are", Answer.OneOf)
            {
                Required = true,
                Choices = Choice.Of(JobFileWords.Role, "direct contractor", "subcontractor", "supplier", "lessor of equipment",
                    "laborer", "design professional"),
            },
            new("claimant.address", "Address", Answer.Lines),
            new("claimant.telephone", "Telephone", Answer.Line),
            new("claimant.email", "E-mail", Answer.Line),
            new("claimant.hiredBy", "Who ordered from you", Answer.Party),
            new("claimant.signer.name", "Who signs for you", Answer.Line),
            new("claimant.signer.title", "Title", Answer.Line),
            YesNo("claimant.installs", "Do you install what you furnish, contract for its installation, or send an operator with "
                + "equipment?", "of a supplier or lessor only (Bus. & Prof. Code §§ 7026.1, 7045)"),
            YesNo("claimant.dumpTrucks", "Are you an authorized motor carrier that hauls in dump trucks?",
                "its charges have a day of their own (Bus. & Prof. Code § 7108.6)"),
            YesNo("claimant.license.required", "Does your part of the work need a contractor's license?", "Bus. & Prof. Code § 7031"),
            new("claimant.license.number", "License number", Answer.Line),
            new("claimant.license.class", "Classification", Answer.Line),
            new("claimant.license.never", "you were never licensed", Answer.Tick),
            YesNo("claimant.license.sameEntity", "Does the one who made the contract and would sue hold the license?",
                "Bus. & Prof. Code § 7031(d)"),
            YesNo("claimant.license.fitsWork", "Is its classification proper for the work?", "Bus. & Prof. Code § 7031(d)"),
            YesNo("claimant.license.insuranceOnFile", "Was a workers' compensation certificate, or a true exemption, on file on every day "
                + "of the work?", "Bus. & Prof. Code § 7125.2"),
            YesNo("claimant.license.goodFaith", "Did you act in good faith to keep the license, and cure a lapse at once on learning of "
                + "it?", "Bus. & Prof. Code § 7031(e)"))
        {
            List = new("claimant.license.active", "Span of the active license",
                new("from", "Active from", Answer.Day),
                new("to", "to", Answer.Day) { Hint = "nothing while it goes on" },
                new("putBack", "if it was put back for this span: on which day", Answer.Day) { Hint =
                    "the day the board took the certificate (Bus. & Prof. Code § 7125.2)" },
                new("cause", "Why it had lapsed before", Answer.OneOf)
                {
                    Choices = Choice.Of(JobFileWords.LapseCause, "not renewed in time", "no workers' compensation certificate on file",
                        "another cause"),
                },
                new("sent", "The renewal or certificate was delivered or postmarked on", Answer.Day) { Hint =
                    "Bus. & Prof. Code § 7141.5" },
                YesNo("beyondControl", "Was the registrar shown that the certificate was late for circumstances beyond your control?",
                    "of a certificate only; no, where there were none (Bus. & Prof. Code § 7125.1(b))")),
        },
        new("contract", "Your contract",
            new("contract.on", "Day of the contract", Answer.Day),
            YesNo("contract.written", "Is it in writing?", ""),
            new("contract.price", "Agreed price", Answer.Money) { Hint = "nothing where only unit prices were agreed" },
            new("contract.reasonableValue", "Reasonable value, where you put it below the price", Answer.Money) { Hint =
                "Civ. Code § 8430(a)(1)" },
            new("contract.work", "General description of the work", Answer.Lines),
            new("contract.paymentDueDays", "Days after your bill on which payment is due", Answer.Count) { Least = 0,
                Hint = "as the contract says" },
            YesNo("contract.bondNotBrought", "Were you told before bids that payment and performance bonds are required, and brought none?",
                "Civ. Code § 8811(b)(2); Pub. Contract Code § 7201(b)(2)")),
        new("parties", "Parties")
        {
            List = new("parties", "Party",
                new("name", "Full name", Answer.Line),
                new("capacity", "Is the", Answer.OneOf)
                {
                    Choices = Choice.Of(JobFileWords.Capacity, "owner", "direct contractor", "subcontractor", "construction lender",
                        "surety", "public entity", "supplier", "owner's architect", "owner's agent", "owners' association"),
                },
                new("address", "Address", Answer.Lines),
                new("addressKind", "What kind of address it is", Answer.OneOf)
                {
                    Choices = Choice.Of(JobFileWords.AddressKind, "residence", "place of business", "from the building permit",
                        "from a recorded construction trust deed", "post-office box or private mailbox"),
                },
                new("telephone", "Telephone", Answer.Line),
                new("email", "E-mail", Answer.Line),
                new("naturalPerson", "Is it a natural person, and no company?", Answer.YesOrNo),
                new("bankruptSince", "In bankruptcy since", Answer.Day) { Hint = "the first day of the stay (11 U.S.C. § 362)" },
                new("bankruptUntil", "The stay ended on", Answer.Day) { Hint = "its last day; nothing while it lasts" },
                new("reputed", "reputed: believed to be so, in good faith", Answer.Tick),
                new("holdsTitleAs.form", "Holds title as", Answer.OneOf)
                {
                    OnlyOf = [PartyCapacity.Owner],
                    Choices = Choice.Of(JobFileWords.TitleForm, "individual", "joint tenants", "trust", "company", "estate",
                        "public entity"),
                },
                new("holdsTitleAs.trust", "Name of the trust", Answer.Line) { OnlyOf = [PartyCapacity.Owner], Hint =
                    "as the deed gives it; of a trust only" },
                new("holdsTitleAs.persons", "Persons who hold title", Answer.Lines) { OnlyOf = [PartyCapacity.Owner],
                    Hint = "one on a line, Surname, Given names, Suffix; an entity after a =" },
                new("holdsTitleAs.decedent", "Who died", Answer.Line) { OnlyOf = [PartyCapacity.Owner], Hint =
                    "Surname, Given names; of an estate only" },
                new("knownSince", "Of record, or known to you, since", Answer.Day) { OnlyOf = [PartyCapacity.ConstructionLender],
                    Hint = "of a construction lender only (Civ. Code § 8200(a)(3))" },
                new("madeToPlans", "Did it agree to make a definite, substantial part of the work to the plans?",
                    Answer.YesOrNo) { OnlyOf = [PartyCapacity.Supplier], Hint = "of a supplier only (Civ. Code § 8404(b))" },
                new("worksUnder", "Under which direct contractor it works", Answer.Party) { OnlyOf =
                    [PartyCapacity.Subcontractor, PartyCapacity.Supplier], Among = PartyCapacity.DirectContractor },
                new("tookTitleBy", "How it came by the land", Answer.OneOf)
                {
                    OnlyOf = [PartyCapacity.Owner],
                    Choices = Choice.Of(JobFileWords.TitleSource, "by sale or in any other ordinary way",
                        "by foreclosure, or a deed in its place", "by order of a court", "from an estate or trust being administered"),
                },
                new("soldOn", "It sold the land on", Answer.Day) { OnlyOf = [PartyCapacity.Owner] },
                new("knewOfWork", "Where it did not order the work: did it know of it?", Answer.YesOrNo) { OnlyOf = [PartyCapacity.Owner],
                    Hint = "Civ. Code § 8442(b)" },
                new("deedRecorded", "Its deed of trust was recorded on", Answer.Day) { OnlyOf = [PartyCapacity.ConstructionLender],
                    Hint = "Civ. Code § 8450" }),
        },
    ];

    /// <summary>The part of a word; null where there is none.</summary>
    public static HeadPart? Find(string? word) => All.FirstOrDefault(part => part.Word == word);

    /// <summary>
    /// The part and the field that answer for a path, such as <c>work.orderedByTenant</c> or <c>claimant.license</c>; null where none does.
    /// </summary>
    public static (HeadPart Part, string Field)? PartOf(string path)
    {
        foreach (var part in All)
        {
            if (part.List is { } list && (path == list.Path || path.StartsWith(list.Path + ".", StringComparison.Ordinal)))
                return (part, list.Path);
            if (part.Fields.FirstOrDefault(asked =>
                asked.Name == path || asked.Name.StartsWith(path + ".", StringComparison.Ordinal)) is { } found)
                return (part, found.Name);
        }

        return null;
    }

    /// <summary>
    /// What a form calls a path of the job file, such as <c>claimant.address</c> or <c>parties[1].address</c>; null where no form asks it.
    /// </summary>
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
