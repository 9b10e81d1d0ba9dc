using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads the claimant.</summary>
internal sealed class ClaimantReading(Source source)
{
    /// <summary>The claimant, as far as it can be read.</summary>
    public Claimant Claimant(Fields? fields)
    {
        var claimant = new Claimant
        {
            Name = fields?.RequiredLine("name", "the claimant's full name") ?? "",
            Role = (ClaimantRole)(fields?.RequiredWord("role", JobFileWords.Role) ?? 0),
            Address = fields?.Lines("address"),
            HiredBy = fields?.PartyId("hiredBy"),
            Signer = Signer(fields?.Object("signer")),
            License = License(fields?.Object("license")),
            Telephone = fields?.Line("telephone"),
            Email = fields?.Line("email"),
            Installs = fields?.Truth("installs"),
            DumpTrucks = fields?.Truth("dumpTrucks"),
        };
        if (claimant is { Installs: not null, Role: not (ClaimantRole.Supplier or ClaimantRole.EquipmentLessor) })
            fields!.Fault("installs", fields.Raw("installs")!, "nothing: only of a supplier or an equipment lessor is it asked whether it "
                + "installs");
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
            Never = fields.Flag("never"),
            SameEntity = fields.Truth("sameEntity"),
            FitsWork = fields.Truth("fitsWork"),
            InsuranceOnFile = fields.Truth("insuranceOnFile"),
            GoodFaith = fields.Truth("goodFaith"),
        };
        fields.Finish();
        if (license is { Never: true, Active.Count: > 0 })
            fields.Fault("active", fields.Raw("active")!, "no span: `never` says that the claimant was never licensed");
        if (license is { Never: true, Number: not null })
            fields.Fault("number", fields.Raw("number")!, "no number: `never` says that the claimant was never licensed");
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
            var cause = (LapseCause?)fields.Word("cause", JobFileWords.LapseCause);
            var sent = fields.Day("sent");
            var beyondControl = fields.Truth("beyondControl");
            fields.Finish();
            if (from == default)
                continue;
            if (to < from)
                fields.Fault("to", fields.Raw("to")!, $"a day not before {DayText.Write(from)}, on which the span begins");
            if (putBack < from)
                fields.Fault("putBack", fields.Raw("putBack")!, $"a day not before {DayText.Write(from)}, on which the span begins");
            if (cause == LapseCause.Renewal && beyondControl is not null)
                fields.Fault("beyondControl", fields.Raw("beyondControl")!, "nothing: only a certificate of insurance may come late for "
                    + "that, and no renewal (Bus. & Prof. Code §§ 7125.1(b), 7141.5)");
            if (before is { To: null })
                fields.Fault("a span after one without an end", "the span that goes on as the last of the list");
            else if (before is not null && from <= before.To)
                fields.Fault("from", fields.Raw("from")!, $"a day after {DayText.Write(before.To.Value)}, on which the span before it "
                    + $"ends");
            before = new LicenseSpan(from, to, putBack) { Cause = cause, Sent = sent, BeyondControl = beyondControl };
            spans.Add(before);
        }

        return spans;
    }
}
