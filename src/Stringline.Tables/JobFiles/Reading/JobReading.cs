using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

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
        var work = new WorkReading(source).Work(fields.RequiredObject("work"));
        var claimant = new ClaimantReading(source).Claimant(fields.RequiredObject("claimant"));
        var parties = new PartyReading(source).Parties(fields);
        var contract = Contract(fields.Raw("contract") is null ? null : fields.RequiredObject("contract"));
        var entries = new List<Entry>();
        var reading = new EntryReading(source);
        foreach (var (item, path) in fields.Items("entries"))
        {
            if (Fields.Of(source, item, path, "an entry: an object in braces { }") is { } entry
                && reading.Entry(entry, entries.Count) is { } read)
                entries.Add(read);
        }

        fields.Finish();
        Crossings.Check(source, parties, work);
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

    private static Contract Contract(Fields? fields)
    {
        var contract = new Contract
        {
            On = fields?.Day("on"),
            Written = fields?.Truth("written"),
            Price = fields?.Money("price", MoneyRange.ZeroOrMore),
            ReasonableValue = fields?.Money("reasonableValue", MoneyRange.ZeroOrMore),
            Work = fields?.Lines("work"),
            PaymentDueDays = fields?.Count("paymentDueDays", least: 0),
            BondNotBrought = fields?.Truth("bondNotBrought"),
        };
        fields?.Finish();
        return contract;
    }
}
