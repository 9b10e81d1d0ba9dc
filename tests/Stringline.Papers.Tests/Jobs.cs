using NodaTime.Text;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Papers.Tests;

/// <summary>Invented jobs, and assessments set by hand: the papers are tested apart from the rules.</summary>
internal static class Jobs
{
    public static LocalDate Day(string iso) => LocalDatePattern.Iso.Parse(iso).Value;

    /// <summary>A supplier of stone on a job in Yolo County. Nothing is missing; the claim is not served yet.</summary>
    public static JobFile Demo() => new()
    {
        Name = "Alder Court, building 2",
        Work = new Work
        {
            Kind = WorkKind.Private,
            Use = WorkUse.Commercial,
            Site = new Site
            {
                Street = "418 Alder Court", City = "Woodland", Zip = "95695", County = "Yolo", Apn = "027-310-014-000",
                Legal = "Lot 14 of Alder Court Subdivision, as shown on the map filed in Book 19 of Maps, page 44, records of Yolo County.",
            },
            Permit = new Permit { Number = "B26-0413", Authority = "City of Woodland", OwnerAddress = "77 Cordage Way, Davis, CA 95616" },
        },
        Claimant = new Claimant
        {
            Name = "Quarrymen’s Supply Company, Inc.", Role = ClaimantRole.Supplier, HiredBy = "p2",
            Address = "2200 Plumb Street\nSacramento, CA 95811",
            Signer = new Signer("Maria Muñoz-Nguyễn", "President"),
        },
        Parties =
        [
            new Party { Id = "p1", Capacity = PartyCapacity.Owner, Reputed = true, Name = "Alder Court Partners, LLC",
                Address = "77 Cordage Way\nDavis, CA 95616" },
            new Party { Id = "p2", Capacity = PartyCapacity.Subcontractor, Name = "Łukasz Masonry, Inc.",
                Address = "9 Course Lane, Dixon, CA 95620" },
            new Party { Id = "p3", Capacity = PartyCapacity.DirectContractor, Name = "Çelik & Ōta Builders, Inc.",
                Address = "501 Trowel Avenue, Davis, CA 95618" },
        ],
        Contract = new Contract { On = Day("2026-02-02"), Written = true, Price = 84_250.00m,
            Work = "Cut limestone, sills, copings and mortar, delivered to the site." },
        Entries =
        [
            new Furnished { Index = 0, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-03-27")), Amount = 84_250.00m },
            new FurnishingEnded { Index = 1, On = DayFact.On(Day("2026-03-27")) },
        ],
    };

    /// <summary>The same with the claim served by certified mail.</summary>
    public static JobFile Served() => Demo().With(new ClaimServed
    {
        Index = 2, On = DayFact.On(Day("2026-05-04")), To = ["p1"], Manner = Manner.CertifiedMail, Article = "70121010000012345678",
    });

    public static JobFile With(this JobFile job, params Entry[] entries) => job with { Entries = [.. job.Entries, .. entries] };

    public static JobFile WithOwners(this JobFile job, params Party[] owners) =>
        job with { Parties = [.. owners, .. job.Parties.Where(p => p.Capacity != PartyCapacity.Owner)] };

    /// <summary>An assessment with the right open, one reading and a demand.</summary>
    public static Assessment Assessed(this JobFile job, decimal demand = 12_345.67m, params Finding[] instead) => new()
    {
        AsOf = Day("2026-05-06"),
        Name = job.Name,
        Findings =
        [
            instead.FirstOrDefault(f => f.Id == "lien-right") ?? Right(Standing.Open),
            instead.FirstOrDefault(f => f.Id == "claim-of-lien.first-day") ?? FirstDay(Standing.Open),
            instead.FirstOrDefault(f => f.Id == "claim-of-lien.last-day")
                ?? LastDay(Standing.Open,
                new Reading($"completion by actual finish on March 29, 2026", Day("2026-06-27"), Day("2026-06-29"))),
        ],
        Amount = new Waterfall(demand, [], 0),
    };

    public static Finding Right(Standing standing) => new()
    {
        Id = "lien-right", Title = "Right to a lien", Standing = standing,
        Why = [Reason.Of("Civ. Code § 8400", $"A material supplier who furnished authorized work has a lien right.")],
    };

    public static Finding FirstDay(Standing standing, params Reading[] readings) => new()
    {
        Id = "claim-of-lien.first-day", Title = "First day to record", Standing = standing, Readings = readings,
        Band = readings.Length == 0 ? null : new Band(readings[0], readings[^1]),
        Why = [Reason.Of("Civ. Code § 8414(a)", $"A claim is recorded after the claimant has ceased to provide work.")],
    };

    public static Finding LastDay(Standing standing, params Reading[] readings) => new()
    {
        Id = "claim-of-lien.last-day", Title = "Last day to record", Standing = standing, Readings = readings,
        ActBy = readings.Length == 0 ? null : Day("2026-06-26"), IsDeadline = true,
        Band = readings.Length == 0 ? null : new Band(readings[0], readings[^1]),
        Why = [Reason.Of("Civ. Code § 8414(b)(1)", $"The last day is 90 days after completion.")],
    };
}
