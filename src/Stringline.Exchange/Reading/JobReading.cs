using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Reads the outermost object and everything in it but the entries.</summary>
internal sealed class JobReading(Source source)
{
    /// <summary>Reads the job; null where the outermost piece is no object.</summary>
    public JobFile? Job(JsonPiece root)
    {
        if (Fields.Of(source, root, "", "a job file: an object in braces { }") is not { } fields)
            return null;
        Format(fields);
        var name = fields.RequiredLine("name", "the name of the job");
        var work = Work(fields.RequiredObject("work"));
        var claimant = Claimant(fields.RequiredObject("claimant"));
        var parties = Parties(fields);
        var contract = Contract(fields.Raw("contract") is null ? null : fields.RequiredObject("contract"));
        var entries = new List<Entry>();
        var reading = new EntryReading(source);
        foreach (var (item, path) in fields.Items("entries"))
        {
            if (Fields.Of(source, item, path, "an entry: an object in braces { }") is { } entry && reading.Entry(entry, entries.Count) is { } read)
                entries.Add(read);
        }

        fields.Finish();
        Crossings.Check(source, parties);
        return new JobFile
        {
            Name = name,
            Work = work,
            Claimant = claimant,
            Parties = parties,
            Contract = contract,
            Entries = entries,
        };
    }

    private static void Format(Fields fields)
    {
        const string Expected = $"the format's name, \"{JobFileReader.Format}\"";
        var format = fields.RequiredLine("format", Expected);
        if (format.Length > 0 && format != JobFileReader.Format)
            fields.Fault("format", fields.Raw("format")!, Expected);
    }

    private static Work Work(Fields? fields)
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
        };
        fields?.Finish();
        return work;
    }

    private static Site Site(Fields? fields)
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
        var bond = new PaymentBond { Recorded = fields.Day("recorded"), Surety = fields.PartyId("surety") };
        fields.Finish();
        return bond;
    }

    private Claimant Claimant(Fields? fields)
    {
        var claimant = new Claimant
        {
            Name = fields?.RequiredLine("name", "the claimant's full name") ?? "",
            Role = (ClaimantRole)(fields?.RequiredWord("role", JobFileWords.Role) ?? 0),
            Address = fields?.Lines("address"),
            HiredBy = fields?.PartyId("hiredBy"),
            Signer = Signer(fields?.Object("signer")),
            License = License(fields?.Object("license")),
        };
        fields?.Finish();
        return claimant;
    }

    /// <summary>An object with nothing filled in counts as no signer.</summary>
    private static Signer? Signer(Fields? fields)
    {
        if (fields is null)
            return null;
        var name = fields.Line("name");
        var title = fields.Line("title");
        if (name is null && title is not null)
            fields.Fault("a title without a name", "the signer's `name` beside the title");
        fields.Finish();
        return name is null ? null : new Signer(name, title);
    }

    private License? License(Fields? fields)
    {
        if (fields is null)
            return null;
        var license = new License
        {
            Required = fields.RequiredTruth("required"),
            Number = fields.Line("number"),
            Class = fields.Line("class"),
            Active = Spans(fields),
        };
        fields.Finish();
        return license;
    }

    private List<LicenseSpan> Spans(Fields license)
    {
        var spans = new List<LicenseSpan>();
        LicenseSpan? before = null;
        foreach (var (item, path) in license.Items("active"))
        {
            if (Fields.Of(source, item, path, "a span: { \"from\": day, \"to\": day or null }") is not { } fields)
                continue;
            var from = fields.RequiredDay("from");
            var to = fields.Day("to");
            var putBack = fields.Day("putBack");
            fields.Finish();
            if (from == default)
                continue;
            if (to < from)
                fields.Fault("to", fields.Raw("to")!, $"a day not before {DayText.Write(from)}, on which the span begins");
            if (putBack < from)
                fields.Fault("putBack", fields.Raw("putBack")!, $"a day not before {DayText.Write(from)}, on which the span begins");
            if (before is { To: null })
                fields.Fault("a span after one without an end", "the span that goes on as the last of the list");
            else if (before is not null && from <= before.To)
                fields.Fault("from", fields.Raw("from")!, $"a day after {DayText.Write(before.To.Value)}, on which the span before it ends");
            before = new LicenseSpan(from, to, putBack);
            spans.Add(before);
        }

        return spans;
    }

    private List<Party> Parties(Fields job)
    {
        var parties = new List<Party>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (item, path) in job.Items("parties"))
        {
            if (Fields.Of(source, item, path, "a party: an object in braces { }") is not { } fields)
                continue;
            var party = new Party
            {
                Id = fields.RequiredLine("id", "a short id for the party, such as \"p1\""),
                Capacity = (PartyCapacity)fields.RequiredWord("capacity", JobFileWords.Capacity),
                Reputed = fields.Flag("reputed"),
                Name = fields.RequiredLine("name", "the party's full name"),
                Address = fields.Lines("address"),
                HoldsTitleAs = new TitleReading(source).Holding(fields.Object("holdsTitleAs")),
                KnownSince = fields.Day("knownSince"),
                MadeToPlans = fields.Truth("madeToPlans"),
            };
            if (party is { KnownSince: not null, Capacity: not PartyCapacity.ConstructionLender })
                fields.Fault("knownSince", fields.Raw("knownSince")!, "nothing: only of a construction lender is it asked since when it was known");
            if (party is { MadeToPlans: not null, Capacity: not PartyCapacity.Supplier })
                fields.Fault("madeToPlans", fields.Raw("madeToPlans")!, "nothing: only of a supplier is it asked whether it made its part to the plans");
            fields.Finish();
            if (party.Id.Length > 0 && !ids.Add(party.Id))
                fields.Fault("id", fields.Raw("id")!, "an id that no other party has");
            parties.Add(party);
        }

        return parties;
    }

    private static Contract Contract(Fields? fields)
    {
        var contract = new Contract
        {
            On = fields?.Day("on"),
            Written = fields?.Truth("written"),
            Price = fields?.Money("price", MoneyRange.ZeroOrMore),
            ReasonableValue = fields?.Money("reasonableValue", MoneyRange.ZeroOrMore),
            Work = fields?.Lines("work"),
        };
        fields?.Finish();
        return contract;
    }
}
