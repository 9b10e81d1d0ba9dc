using Stringline.Law.Facts;
using Stringline.Papers.Mailing;

namespace Stringline.Office.DemoOffice;

/// <summary>Puts an invented job together, its days counted from today.</summary>
/// <param name="today">Today.</param>
/// <param name="place">Where it is and for whom.</param>
/// <param name="dollars">The size of the job: dollars of one delivery.</param>
internal sealed class DemoJob(LocalDate today, DemoPlace place, decimal dollars)
{
    private readonly List<Entry> entries = [];
    private int deliveries;

    /// <summary>What kind of work.</summary>
    public WorkKind Kind { get; init; }

    /// <summary>What the claimant is.</summary>
    public ClaimantRole Role { get; init; } = ClaimantRole.Supplier;

    /// <summary>Whether the owner hired the claimant itself.</summary>
    public bool ForOwner { get; init; }

    /// <summary>Whether there is a construction lender.</summary>
    public bool Lender { get; init; }

    /// <summary>Days from today to the recording of a payment bond; null where there is none.</summary>
    public int? Bond { get; init; }

    /// <summary>The size of the job.</summary>
    public decimal Dollars => dollars;

    /// <summary>A day so many days from today, never on a weekend: a Saturday or Sunday becomes the Friday before.</summary>
    public LocalDate Day(int days)
    {
        var day = today.PlusDays(days);
        return day.DayOfWeek switch
        {
            IsoDayOfWeek.Saturday => day.PlusDays(-1),
            IsoDayOfWeek.Sunday => day.PlusDays(-2),
            _ => day,
        };
    }

    /// <summary>Adds deliveries, of the job's size each.</summary>
    public DemoJob Delivered(params ReadOnlySpan<int> days)
    {
        foreach (var day in days)
        {
            deliveries++;
            var price = dollars + (deliveries * 110.25m);
            var (reference, goods) =
                ($"INV-{2000 + (place.Number * 10) + deliveries}", DemoPlaces.Goods[(place.Number + deliveries) % DemoPlaces.Goods.Count]);
            With(at => new Furnished { Index = at, On = On(day), Until = On(day), Amount = price, Ref = reference, Text = goods });
        }

        return this;
    }

    /// <summary>Adds that no more will be furnished.</summary>
    public DemoJob Ended(int day) => With(at => new FurnishingEnded { Index = at, On = On(day) });

    /// <summary>Adds a preliminary notice to everybody to whom one is due.</summary>
    public DemoJob Noticed(int day)
    {
        foreach (var party in Parties().Where(party => party.Id != (ForOwner ? "p1" : "p3") && party.Capacity != PartyCapacity.Surety))
            With(at => new NoticeGiven { Index = at, On = On(day), Notice = NoticeKind.Preliminary, To = [party.Id],
                Manner = Manner.CertifiedMail, Article = ArticleNumber.Completed($"940711189876543{place.Number:0000}{at:00}") });
        return this;
    }

    /// <summary>Adds money received.</summary>
    public DemoJob Paid(int day, decimal amount) => With(at => new Paid { Index = at, On = On(day), Amount = amount, From = Hirer().Name });

    /// <summary>Adds an owner's recorded notice of completion.</summary>
    public DemoJob OwnersNotice(int day, int states) => With(at => new OwnerRecorded
    {
        Index = at, On = On(day), Notice = OwnerNotice.Completion, Instrument = $"{today.Year}-00{31000 + place.Number}",
            States = Day(states),
    });

    /// <summary>Adds a recorded claim of lien, and its service before.</summary>
    public DemoJob Claimed(int day, decimal amount)
    {
        With(at => new ClaimServed { Index = at, On = On(day - 1), To = ["p1"], Manner =
            Manner.CertifiedMail, Article = ArticleNumber.Completed($"940711189876544{place.Number:0000}{at:00}") });
        return With(at =>
            new ClaimRecorded { Index = at, On = On(day), Amount = amount, Instrument = $"{today.Year}-00{47000 + place.Number}" });
    }

    /// <summary>Adds any other entry.</summary>
    /// <param name="entry">Makes it for its place in the list.</param>
    public DemoJob With(Func<int, Entry> entry)
    {
        entries.Add(entry(entries.Count) with { Id = $"e{entries.Count + 1}" });
        return this;
    }

    /// <summary>A day as a fact.</summary>
    public DayFact On(int day) => DayFact.On(Day(day));

    /// <summary>The job file.</summary>
    public JobFile File() => new()
    {
        Name = place.Name,
        Work = new Work
        {
            Kind = Kind,
            Use = Kind == WorkKind.Private ? WorkUse.Commercial : null,
            Site = new Site { Street = place.Street, City =
                place.City, Zip = place.Zip, County = place.County, Apn = $"0{20 + place.Number}-{180 + place.Number}-007-000" },
            Permit = new Permit { Number = $"BLD-{place.Number:0000}", Authority = "City of " + place.City },
            PaymentBond = Bond is { } bond ? new PaymentBond { Recorded = Day(bond), Surety = "p5" } : null,
        },
        Claimant = new Claimant
        {
            Name = "Quillback Lumber & Truss, Inc.",
            Role = Role,
            Address = "875 Millrace Road\nWest Sacramento, CA 95691",
            Telephone = "(916) 555-0142",
            HiredBy = ForOwner ? "p1" : "p3",
            Signer = DemoPlaces.Signers[place.Number % DemoPlaces.Signers.Count],
            License = Role is ClaimantRole.Supplier or ClaimantRole.EquipmentLessor
                ? new License { Required = false }
                : new License { Required =
                    true, Number = "0000417", Class = "C-5", Active = [new LicenseSpan(today.PlusYears(-6), today.PlusYears(1))] },
        },
        Parties = Parties(),
        Contract = new Contract { On = Day(-190), Written = true, Price = decimal.Round(dollars * Math.Max(deliveries, 3) * 1.1m, 2),
            Work = "Framing lumber, sheathing and roof trusses, delivered to the site" },
        Entries = entries,
    };

    private Party Hirer() => Parties().First(party => party.Id == (ForOwner ? "p1" : "p3"));

    private List<Party> Parties()
    {
        var parties = new List<Party>
        {
            new() { Id = "p1", Capacity = Kind == WorkKind.Private
                ? PartyCapacity.Owner
                : PartyCapacity.PublicEntity, Name = place.Owner, Address = $"{place.Street}\n{place.City}, CA {place.Zip}" },
        };
        if (!ForOwner)
        {
            parties.Add(new() { Id = "p2", Capacity =
                PartyCapacity.DirectContractor, Name = place.Builder, Address = "318 Plumb Street\nSacramento, CA 95818" });
            parties.Add(new() { Id =
                "p3", Capacity = PartyCapacity.Subcontractor, Name = place.Customer, Address = "27 Sawyer Lane\nDixon, CA 95620" });
        }

        if (Lender)
            parties.Add(new() { Id = "p4", Capacity = PartyCapacity.ConstructionLender, Name = "Granger Slough Bank",
                Address = "600 Levee Street\nSacramento, CA 95814" });
        if (Bond is not null)
            parties.Add(new() { Id = "p5", Capacity =
                PartyCapacity.Surety, Name = "Stave & Hoop Surety Company", Address = "12 Cooper's Row\nSacramento, CA 95814" });
        return parties;
    }
}
