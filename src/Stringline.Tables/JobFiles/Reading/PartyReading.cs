using System.Globalization;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads the parties.</summary>
internal sealed class PartyReading(Source source)
{
    /// <summary>Every party, as far as it can be read.</summary>
    public List<Party> Parties(Fields job)
    {
        var parties = new List<Party>();
        var lenders = 0;
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (item, path) in job.Items("parties"))
        {
            if (parties.Count == JobFileReader.MostParties && source.IsNew(item))
            {
                source.Faults.Add(item, path,
                    string.Create(CultureInfo.InvariantCulture,
                        $"at most {JobFileReader.MostParties:N0} parties: every paper is told toward each of them"));
                break;
            }

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
                AddressKind = (AddressKind?)fields.Word("addressKind", JobFileWords.AddressKind),
                Telephone = fields.Line("telephone"),
                Email = fields.Line("email"),
                NaturalPerson = fields.Truth("naturalPerson"),
                BankruptSince = fields.Day("bankruptSince"),
                BankruptUntil = fields.Day("bankruptUntil"),
                WorksUnder = fields.PartyId("worksUnder", PartyCapacity.DirectContractor),
                TookTitleBy = (TitleSource?)fields.Word("tookTitleBy", JobFileWords.TitleSource),
                SoldOn = fields.Day("soldOn"),
                KnewOfWork = fields.Truth("knewOfWork"),
                DeedRecorded = fields.Day("deedRecorded"),
            };
            if (party.Capacity == PartyCapacity.ConstructionLender && ++lenders > JobFileReader.MostLenders && source.IsNew(item))
                fields.Fault("capacity", fields.Raw("capacity")!,
                    string.Create(CultureInfo.InvariantCulture, $"at most {JobFileReader.MostLenders} construction lenders"));
            if (JobFileWords.Capacity.IndexOf(fields.Raw("capacity")?.Text) is not null)
                OfItsCapacity(fields, party);
            Bankruptcy(fields, party);
            fields.Finish();
            if (party.Id.Length > 0 && !ids.Add(party.Id))
                fields.Fault("id", fields.Raw("id")!, "an id that no other party has");
            parties.Add(party);
        }

        return parties;
    }

    /// <summary>Some things are asked of one capacity only; said of another they would be passed over.</summary>
    private static void OfItsCapacity(Fields fields, Party party)
    {
        var isOwner = party.Capacity == PartyCapacity.Owner;
        var isLender = party.Capacity == PartyCapacity.ConstructionLender;
        var isLower = party.Capacity is PartyCapacity.Subcontractor or PartyCapacity.Supplier;
        Only(fields, "knownSince", isLender, "only of a construction lender is it asked since when it was known");
        Only(fields, "madeToPlans", party.Capacity == PartyCapacity.Supplier,
            "only of a supplier is it asked whether it made its part to the plans");
        Only(fields, "worksUnder", isLower, "only of a subcontractor or supplier is it asked under which direct contractor it works");
        Only(fields, "tookTitleBy", isOwner, "only of an owner is it asked how it took title");
        Only(fields, "soldOn", isOwner, "only of an owner is it asked when it sold the land");
        Only(fields, "knewOfWork", isOwner, "only of an owner is it asked whether it knew of the work");
        Only(fields, "deedRecorded", isLender, "only of a construction lender is it asked when its deed of trust was recorded");
    }

    private static void Only(Fields fields, string name, bool isAsked, string why)
    {
        if (!isAsked && fields.Has(name))
            fields.Fault(name, fields.Raw(name)!, "nothing: " + why);
    }

    private static void Bankruptcy(Fields fields, Party party)
    {
        if (party.BankruptUntil is null)
            return;
        if (party.BankruptSince is not { } since)
            fields.Fault("bankruptUntil", fields.Raw("bankruptUntil")!, "`bankruptSince` beside it, the first day of the stay");
        else if (party.BankruptUntil < since)
            fields.Fault("bankruptUntil", fields.Raw("bankruptUntil")!,
                $"a day not before {DayText.Write(since)}, on which the stay begins");
    }
}
