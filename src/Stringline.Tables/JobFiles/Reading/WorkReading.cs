using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads the work of improvement.</summary>
internal sealed class WorkReading(Source source)
{
    /// <summary>The work, as far as it can be read.</summary>
    public Work Work(Fields? fields)
    {
        var work = new Work
        {
            Kind = (WorkKind)(fields?.RequiredWord("kind", JobFileWords.Kind) ?? 0),
            Use = (WorkUse?)fields?.Word("use", JobFileWords.Use),
            Site = Site(fields?.RequiredObject("site")),
            Permit = Permit(fields?.Object("permit")),
            PaymentBond = Bond(fields?.Object("paymentBond")),
            SubjectToAcceptanceBy = fields?.Line("subjectToAcceptanceBy"),
            Commenced = fields?.Day("commenced"),
            SeveralDirectContracts = fields?.Truth("severalDirectContracts"),
            ResidentialStructures = fields?.Count("residentialStructures"),
            CommonInterest = fields?.Truth("commonInterest"),
            SiteImprovement = fields?.Truth("siteImprovement"),
            OrderedByTenant = fields?.Truth("orderedByTenant"),
            LowRiseResidential = fields?.Truth("lowRiseResidential"),
            StateContractAct = fields?.Truth("stateContractAct"),
            PublicTakesOver = fields?.Truth("publicTakesOver"),
            Body = (PublicBody?)fields?.Word("body", JobFileWords.PublicBody),
            SubstantiallyComplex = fields?.Truth("substantiallyComplex"),
            PublicUtility = fields?.Truth("publicUtility"),
            Units = fields?.Count("units"),
            ExpectedCost = fields?.Money("expectedCost", MoneyRange.ZeroOrMore),
            SecurityExempt = fields?.Truth("securityExempt"),
            DirectContract = DirectContract(fields?.Object("directContract")),
            Structures = fields is null ? [] : Structures(fields),
        };
        if (fields is null)
            return work;
        fields.Finish();
        if (JobFileWords.Kind.IndexOf(fields.Raw("kind")?.Text) is not null)
        {
            source.Work = work.Kind;
            OnlyOf(fields, work.Kind, WorkKind.Public, "body", "substantiallyComplex");
            OnlyOf(fields, work.Kind, WorkKind.Private, "publicTakesOver", "publicUtility", "securityExempt");
        }

        if (work.ResidentialStructures < work.Structures.Count)
            fields.Fault("structures", fields.Raw("structures")!,
                $"no more structures than `residentialStructures` says: {work.ResidentialStructures}");
        return work;
    }

    private Site Site(Fields? fields)
    {
        var site = new Site
        {
            Street = fields?.Line("street"),
            City = fields?.Line("city"),
            Zip = fields?.Line("zip"),
            County = fields is null ? "" : CountyNames.Required(fields),
            Apn = fields?.Line("apn"),
            Legal = fields?.Lines("legal"),
        };
        if (fields is not null)
            site = site with { AlsoIn = CountyNames.Others(source, fields, "alsoIn", site.County) };
        fields?.Finish();
        return site;
    }

    private static Permit? Permit(Fields? fields)
    {
        if (fields is null)
            return null;
        var permit = new Permit
        {
            Number = fields.Line("number"),
            Authority = fields.Line("authority"),
            OwnerAddress = fields.Lines("ownerAddress"),
        };
        fields.Finish();
        return permit;
    }

    private static PaymentBond? Bond(Fields? fields)
    {
        if (fields is null)
            return null;
        var bond = new PaymentBond
        {
            Recorded = fields.Day("recorded"),
            Surety = fields.PartyId("surety"),
            Amount = fields.Money("amount", MoneyRange.AboveZero),
            Principal = fields.PartyId("principal", PartyCapacity.Owner, PartyCapacity.DirectContractor, PartyCapacity.Subcontractor),
        };
        fields.Finish();
        return bond;
    }

    private static DirectContract? DirectContract(Fields? fields)
    {
        if (fields is null)
            return null;
        var contract = new DirectContract
        {
            On = fields.Day("on"),
            Price = fields.Money("price", MoneyRange.ZeroOrMore),
            RetentionPercent = fields.Percent("retentionPercent"),
            Filed = fields.Day("filed"),
        };
        fields.Finish();
        if (contract.Filed < contract.On)
            fields.Fault("filed", fields.Raw("filed")!, $"a day not before {DayText.Write(contract.On.Value)}, the day of the contract");
        return contract;
    }

    private List<ResidentialStructure> Structures(Fields work)
    {
        var structures = new List<ResidentialStructure>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (item, path) in work.Listed("structures"))
        {
            if (Fields.Of(source, item, path, "a residential structure: an object in braces { }") is not { } fields)
                continue;
            var structure = new ResidentialStructure
            {
                Id = fields.RequiredLine("id", "a short id for the structure, such as \"b1\""),
                Text = fields.Line("text"),
                Share = fields.Money("share", MoneyRange.ZeroOrMore),
            };
            fields.Finish();
            if (structure.Id.Length > 0 && !ids.Add(structure.Id))
                fields.Fault("id", fields.Raw("id")!, "an id that no other structure has");
            structures.Add(structure);
        }

        return structures;
    }

    private static void OnlyOf(Fields fields, WorkKind kind, WorkKind needed, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (kind != needed && fields.Has(name))
                fields.Fault(name, fields.Raw(name)!, $"nothing: it is asked of a {JobFileWords.Word(needed)} work only, and `kind` is "
                    + $"\"{JobFileWords.Word(kind)}\"");
        }
    }
}
