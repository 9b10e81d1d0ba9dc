using Stringline.Law.Facts;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>What makes a good job hard to print: each is put on the job that fits a paper.</summary>
internal static class HardJobs
{
    /// <summary>A name that fills three lines of any paper.</summary>
    private const string ThreeLines = "The Willow Slough and Putah Creek Reclamation, Masonry, Stone Setting, Waterproofing and Historic "
        + "Restoration Cooperative Association of Yolo, Solano and Sacramento Counties, a California Cooperative Corporation, Inc.";

    /// <summary>Half a page of a description by metes and bounds, pasted with a tab.</summary>
    private const string HalfPage = "All that certain real property situate in the County of Yolo, State of California, being a portion of "
        + "the northwest quarter of Section 14, Township 9 North, Range 2 East, Mount Diablo Base and Meridian, more particularly "
        + "described "
        + "as follows:\tBEGINNING at a ¾-inch iron pipe tagged L.S. 4417 at the northwest corner of said Section 14; thence along the "
        + "north "
        + "line of said Section North 89° 58′ 12″ East 412.66 feet; thence leaving said line South 0° 02′ 41″ East 618.30 feet to a point "
        + "in "
        + "the center line of the slough; thence along said center line the following seven courses: South 71° 14′ 05″ West 88.12 feet; "
        + "South "
        + "64° 50′ 33″ West 102.47 feet; South 58° 22′ 19″ West 61.09 feet; North 83° 41′ 57″ West 77.70 feet; North 75° 06′ 44″ West "
        + "54.88 "
        + "feet; South 88° 19′ 26″ West 40.15 feet; and North 62° 33′ 08″ West 35.91 feet; thence leaving said center line North 0° 04′ "
        + "55″ "
        + "West 691.77 feet to the POINT OF BEGINNING. EXCEPTING THEREFROM all oil, gas, minerals and other hydrocarbon substances below a "
        + "depth of 500 feet, without the right of surface entry, as reserved in the deed recorded March 2, 1961, in Book 633 of Official "
        + "Records, page 118. ALSO EXCEPTING the north 30 feet thereof for road purposes. Containing 6.41 acres, more or less.";

    /// <summary>Each hardship by its name.</summary>
    public static IReadOnlyDictionary<string, Func<JobFile, JobFile>> All { get; } = new SortedDictionary<string, Func<JobFile, JobFile>>
    {
        ["names of three lines"] = job => job with
        {
            Claimant = job.Claimant with { Name = ThreeLines },
            Parties = [.. job.Parties.Select(p => p with { Name = $"{ThreeLines} {p.Id}" })],
        },
        ["half a page of description"] = job => At(job, site => site with { Legal = HalfPage }),
        ["61 owners"] = job => Owned(job,
        [
            .. Enumerable.Range(1, 61).Select(i => new Party
            {
                Id = $"o{i}", Capacity =
                    PartyCapacity.Owner, Name = $"Owner of Unit {i}, LLC", Address = $"{i} Cordage Way\nDavis, CA 95616",
            }),
        ]),
        ["a trust named after its trustees"] = job => Owned(job, [Owner("Kenji Imada and Ruth Imada Family Trust") with
        {
            HoldsTitleAs = new TitleHolding
            {
                Form = TitleForm.Trust, Trust = "Kenji Imada and Ruth Imada Family Trust",
                Persons = [new TitleHolder { Surname = "Imada", Given = "Kenji" }, new TitleHolder { Surname = "Imada", Given = "Ruth" }],
            },
        }]),
        ["an estate"] = job => Owned(job, [Owner("Estate of Ambrosio Quintanilla-Oyelaran") with
        {
            HoldsTitleAs = new TitleHolding
            {
                Form = TitleForm.Estate, Decedent =
                    new TitleHolder { Surname = "Quintanilla-Oyelaran", Given = "Ambrosio", Suffix = "Sr." },
                Persons = [new TitleHolder { Surname = "Quintanilla-Oyelaran", Given = "Philomena" }],
            },
        }]),
        ["ranges of parcels"] = job => At(job, site => site with
        {
            Apn = "019-0042-101 through 019-0042-114; 019-0043-007/008/009; 020-110-001 to 020-110-006",
        }),
        ["accents, some of them apart"] = job => job with
        {
            Name = "Škoda Ōnuma Sélène",
            Claimant = job.Claimant with { Name =
                "Þórður Straußmann & Đặng Béton, Inc.", Signer = new Signer("Şükrü I\u0301n\u0303igo", "Président") },
            Parties = [.. job.Parties.Select(p => p with { Name = $"Łódź N\u0303andu\u0301 Ǻngström {p.Id}" })],
        },
        ["addresses of six lines"] = job => job with
        {
            Claimant = job.Claimant with
            {
                Address = "Accounts Receivable\nBuilding 14, Third Floor\nAttention: Credit Desk\n2200 Plumb Street\nSuite 1400-B\n"
                    + "Sacramento, CA 95811",
            },
            Parties =
            [
                .. job.Parties.Select(p => p with
                {
                    Address = "Attention: General Counsel\nThe Old Mill, East Wing\nFloor 2, Room 218\n77 Cordage Way\nUnit C\nDavis, CA "
                        + "95616",
                }),
            ],
        },
        // A designer's demand, given with a sum, covers no later invoice.
        ["ninety deliveries and large sums"] = job => job.Claimant.Role == ClaimantRole.DesignProfessional ? job : job with
        {
            Contract = job.Contract with { Price = 48_765_432.10m },
            Entries =
            [
                .. job.Entries,
                .. Enumerable.Range(0, 90).Select(i => new Furnished
                {
                    Index = job.Entries.Count + i, On = DayFact.On(Day("2026-02-16").PlusDays(i % 39)),
                    Until = DayFact.On(Day("2026-02-16").PlusDays(i % 39)), Amount = 401_234.57m + i, Ref = $"INV-{2000 + i}",
                }),
            ],
        },
        ["a long account of the work, and five lenders"] = job => job with
        {
            Contract = job.Contract with
            {
                Work = string.Join(" ",
                    Enumerable.Repeat("Cutting, dressing, delivering and setting of limestone sills, jambs and copings of the "
                    + "north and east walls, with anchors, flashing and mortar.", 9)),
            },
            Parties = job.Work.Kind == WorkKind.Public ? job.Parties :
            [
                .. job.Parties,
                .. Enumerable.Range(1, 5).Select(i => new Party
                {
                    Id = $"l{i}", Capacity = PartyCapacity.ConstructionLender, Name = $"Granger Slough Bank of District {i}",
                    Address = $"{i}00 Levee Street\nSacramento, CA 95814",
                }),
            ],
        },
    };

    private static JobFile At(JobFile job, Func<Site, Site> site) => job with { Work = job.Work with { Site = site(job.Work.Site) } };

    private static Party Owner(string name) => new()
    {
        Id = "p1", Capacity = PartyCapacity.Owner, Name = name, Address = "77 Cordage Way\nDavis, CA 95616",
    };

    // The first owner keeps its id, to which notices and mailings of the file went; a public entity stays what it is.
    private static JobFile Owned(JobFile job, IReadOnlyList<Party> owners) => job.Work.Kind == WorkKind.Public ? job : job with
    {
        Parties = [.. job.Parties.Where(p => p.Capacity != PartyCapacity.Owner),
            .. owners.Select((o, i) => i == 0 ? o with { Id = "p1" } : o)],
    };
}
