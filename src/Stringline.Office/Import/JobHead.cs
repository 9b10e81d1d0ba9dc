using Stringline.Tables.Sheets;
using System.Globalization;
using Stringline.Tables;
using Stringline.Law.Facts;
using Stringline.Tables.Sheets.Columns;
using Stringline.Law.Reasoning;

namespace Stringline.Office.Import;

/// <summary>Makes the head of a job file (all but the entries) of what the tables and the request say.</summary>
internal sealed class JobHead(ImportRequest request)
{
    private static readonly PartyColumns Customer =
        new(Column.Customer, Column.CustomerAddress, Column.CustomerTelephone, Column.CustomerEmail);

    private static readonly (PartyColumns Columns, PartyCapacity Capacity, string Id)[] Others =
    [
        (new(Column.Owner, Column.OwnerAddress, Column.OwnerTelephone, Column.OwnerEmail), PartyCapacity.Owner, "owner"),
        (new(Column.DirectContractor, Column.DirectContractorAddress, Column.DirectContractorTelephone, Column.DirectContractorEmail),
            PartyCapacity.DirectContractor, "direct-contractor"),
        (new(Column.Lender, Column.LenderAddress, Column.LenderTelephone, Column.LenderEmail), PartyCapacity.ConstructionLender, "lender"),
    ];

    // One object, so that it is assumed once.
    private static readonly Sentence AllPrivate =
        $"New jobs are taken to be private works, since no column and no {ImportAsk.Work} says otherwise.";

    private const string CustomerId = "customer";

    /// <summary>The head of a job that the store does not have; null where something is missing.</summary>
    /// <param name="draft">What the tables say.</param>
    /// <param name="assumed">Takes what no table says and is taken to be so.</param>
    /// <param name="missing">What is missing, in words; null where nothing is.</param>
    public JobFile? New(JobDraft draft, ISet<Sentence> assumed, out Sentence? missing)
    {
        missing = null;
        var county = County(draft.Head(Column.County) ?? request.County);
        var kind = draft.Head(Column.WorkKind) is { } word ? Word(JobFileWords.Kind, word) : (int?)request.Work;
        if (draft.HeadRows.Find(row => row.Table.IsRefused(row.Line)) is { Table: { } table } refused)
            missing = $"job {draft.Key} is not in the store, and the row that describes it "
                + $"(line {refused.Line} of {table.Called}) is refused";
        else if (request.Claimant is null || request.Role is null)
            missing = $"job {draft.Key} is not in the store, and nothing says who claims; give {ImportAsk.Claimant}, or add the job first";
        else if (county is null)
            missing = $"job {draft.Key} is not in the store, and its county "
                + $"is {(draft.Head(Column.County) is { } text ? $"\"{text}\"" : "not said")}; it should be one of California's 58 "
                + $"counties under \"County\", or {ImportAsk.County}";
        else if (draft.Head(Column.WorkKind) is { } work && kind is null)
            missing = $"job {draft.Key} is a work of kind \"{work}\"; it should be {string.Join(", ", JobFileWords.Kind.Words)}";
        else if (Parties(draft, out var parties) is { } fault)
            missing = fault;
        else
        {
            if (kind is null)
                assumed.Add(AllPrivate);
            return new JobFile
            {
                Name = draft.Head(Column.JobName) ?? draft.Key,
                Work = new Work
                {
                    Kind = (WorkKind)(kind ?? 0),
                    Site = new Site { County = county, Street = draft.Head(Column.Street), City = draft.Head(Column.City),
                        Zip = draft.Head(Column.Zip), Apn = draft.Head(Column.Apn) },
                },
                Claimant = new Claimant { Name = request.Claimant, Role = request.Role.Value, HiredBy = draft.Head(Column.Customer) is null
                    ? null : HirerId(parties, draft) },
                Parties = parties,
                Contract = new Contract { Price = Price(draft), On = ContractDay(draft) },
            };
        }

        return null;
    }

    /// <summary>The head of a job that the store has, as a table of jobs says it now; what the table leaves empty stays as it is.</summary>
    public JobFile Revised(JobFile job, JobDraft draft, out Sentence? fault)
    {
        fault = null;
        var site = job.Work.Site;
        var county = draft.Head(Column.County) is { } said ? County(said) : site.County;
        if (county is null)
            fault = $"\"{draft.Head(Column.County)}\" under \"County\"; it should be one of California's 58 counties";
        var parties = job.Parties.ToList();
        var hiredBy = job.Claimant.HiredBy;
        if (draft.Head(Column.Customer) is not null)
        {
            if (hiredBy is not null)
                Rename(parties, parties.FindIndex(party => party.Id == hiredBy), Customer, draft);
            else if (CustomerCapacity(draft) is { } capacity)
                parties.Add(Customer.Party(hiredBy = Free(parties, CustomerId), capacity, draft));
            else
                fault ??= CapacityMissing(draft);
        }

        foreach (var other in Others)
        {
            if (draft.Head(other.Columns.Name) is null)
                continue;
            var place = parties.FindIndex(party => party.Capacity == other.Capacity);
            if (place < 0)
                parties.Add(other.Columns.Party(Free(parties, other.Id), other.Capacity, draft));
            else
                Rename(parties, place, other.Columns, draft);
        }

        return job with
        {
            Name = draft.Head(Column.JobName) ?? job.Name,
            Work = job.Work with
            {
                Site = site with
                {
                    County = county ?? site.County,
                    Street = draft.Head(Column.Street) ?? site.Street,
                    City = draft.Head(Column.City) ?? site.City,
                    Zip = draft.Head(Column.Zip) ?? site.Zip,
                    Apn = draft.Head(Column.Apn) ?? site.Apn,
                },
            },
            Claimant = job.Claimant with { HiredBy = hiredBy },
            Parties = parties,
            Contract = job.Contract with { Price = Price(draft) ?? job.Contract.Price, On = ContractDay(draft) ?? job.Contract.On },
        };
    }

    private Sentence? Parties(JobDraft draft, out List<Party> parties)
    {
        parties = [];
        if (draft.Head(Column.Customer) is not null)
        {
            if (CustomerCapacity(draft) is not { } capacity)
                return CapacityMissing(draft);
            parties.Add(Customer.Party(CustomerId, capacity, draft));
        }

        foreach (var other in Others)
        {
            if (draft.Head(other.Columns.Name) is not { } name)
                continue;

            // The customer named again as the owner or the direct contractor is one person, not two.
            if (parties.Exists(party => party.Capacity == other.Capacity && ColumnWords.Fold(party.Name) == ColumnWords.Fold(name)))
                continue;
            parties.Add(other.Columns.Party(other.Id, other.Capacity, draft));
        }

        return null;
    }

    private static string HirerId(List<Party> parties, JobDraft draft) =>
        parties.Find(party => party.Name == draft.Head(Column.Customer))?.Id ?? CustomerId;

    private PartyCapacity? CustomerCapacity(JobDraft draft) =>
        draft.Head(Column.CustomerIs) is { } word ? (PartyCapacity?)Word(JobFileWords.Capacity, word) : request.CustomerIs;

    private static Sentence CapacityMissing(JobDraft draft) => draft.Head(Column.CustomerIs) is { } word
        ? (Sentence)$"\"{word}\" as what the customer is on the work; it should be owner, direct-contractor, subcontractor or supplier"
        : (Sentence)($"job {draft.Key} has a customer, and nothing says what it is on the work; it should be owner, direct-contractor, "
            + $"subcontractor or supplier under \"Customer is\", or {ImportAsk.CustomerIs}");

    private static void Rename(List<Party> parties, int place, PartyColumns columns, JobDraft draft)
    {
        if (place < 0)
            return;
        var party = parties[place];
        parties[place] = party with
        {
            Name = draft.Head(columns.Name) ?? party.Name,
            Address = draft.Head(columns.Address) ?? party.Address,
            Telephone = draft.Head(columns.Telephone) ?? party.Telephone,
            Email = draft.Head(columns.Email) ?? party.Email,
        };
    }

    /// <summary>The columns that speak of one party.</summary>
    private sealed record PartyColumns(Column Name, Column Address, Column Telephone, Column Email)
    {
        public Party Party(string id, PartyCapacity capacity, JobDraft draft) => new()
        {
            Id = id,
            Capacity = capacity,
            Name = draft.Head(Name)!,
            Address = draft.Head(Address),
            Telephone = draft.Head(Telephone),
            Email = draft.Head(Email),
        };
    }

    private static string Free(List<Party> parties, string id)
    {
        var free = id;
        for (var i = 2; parties.Exists(party => party.Id == free); i++)
            free = id + "-" + i.ToString(CultureInfo.InvariantCulture);
        return free;
    }

    internal static string? County(string? name)
    {
        if (name is null)
            return null;
        var bare = ColumnWords.Fold(name).Split(' ').Where(word => word != "county").ToArray();
        return Counties.All.FirstOrDefault(county => ColumnWords.Fold(county).Split(' ').SequenceEqual(bare))
            ?? (name.Contains("San Francisco", StringComparison.OrdinalIgnoreCase) ? "San Francisco" : null);
    }

    private static decimal? Price(JobDraft draft) =>
        draft.Head(Column.ContractPrice) is { } text ? decimal.Parse(text, CultureInfo.InvariantCulture) : null;

    // A row that is refused once its whole file was read is refused for its days.
    private static LocalDate? ContractDay(JobDraft draft) => draft.FirstHead is { } first && first.Table.IsRefused(first.Line) ? null
        : draft.Head(Column.ContractDay) is { } text && DayText.Read(text, out var day) is null ? day : null;

    private static int? Word(WordTable table, string word) => table.IndexOf(ColumnWords.Fold(word).Replace(' ', '-'));
}
