using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>A request for one paper: the facts it draws on, what was said with it, and every reason against it.</summary>
internal sealed class Matter(JobFile job, Assessment assessment, PaperOptions options)
{
    private readonly List<Refusal> refusals = [];

    /// <summary>The job file.</summary>
    public JobFile Job => job;

    /// <summary>What the law makes of it.</summary>
    public Assessment Assessment => assessment;

    /// <summary>What was said with the request.</summary>
    public PaperOptions Options => options;

    /// <summary>The day of asking.</summary>
    public LocalDate AsOf => assessment.AsOf;

    /// <summary>A number of the law as it governs on that day.</summary>
    public NumberRow ByLaw(Number number) => assessment.Numbers.On(number, AsOf);

    /// <summary>The entries as known on that day.</summary>
    public FactsAsOf Known { get; } = new(job, assessment.AsOf);

    /// <summary>Names, addresses and site.</summary>
    public PrintedFacts Facts { get; } = PrintedFacts.Of(job, assessment);

    /// <summary>What a waiver gives away; null on any other paper, and while nothing says how far it reaches or what is paid.</summary>
    public WaiverOutlook? Outlook { get; set; }

    /// <summary>The reasons against the paper, in the order found.</summary>
    public IReadOnlyList<Refusal> Refusals => refusals;

    /// <summary>Whether nothing stands against it.</summary>
    public bool Clear => refusals.Count == 0;

    /// <summary>Adds a reason; the same reason at the same place is given once.</summary>
    public void Refuse(string id, Place where, Sentence there, Sentence right, string section) =>
        Refuse(new Refusal(id, where, there, right, section));

    /// <summary>The same.</summary>
    public void Refuse(Refusal refusal)
    {
        if (!refusals.Exists(r => r.Id == refusal.Id && r.Where == refusal.Where))
            refusals.Add(refusal);
    }

    /// <summary>Adds the reason that an entry is missing.</summary>
    /// <param name="kind">The kind of entry that would mend it, by its word in the job file.</param>
    /// <param name="id">Id of the refusal.</param>
    /// <param name="there">What is there.</param>
    /// <param name="right">What would be right.</param>
    /// <param name="section">The section that asks for it.</param>
    public void NotEntered(string kind, string id, Sentence there, Sentence right, string section) =>
        Refuse(id, new Place.OfJournal(kind), there, right, section);

    /// <summary>Adds reasons each of which is another, though several be about one place.</summary>
    public void RefuseEach(IEnumerable<Refusal> reasons) => refusals.AddRange(reasons);

    /// <summary>A text the paper cannot do without.</summary>
    public string? Need(string? value, string id, Place where, Sentence right, string section)
    {
        if (Clean(value) is { } clean)
            return clean;
        Refuse(id, where, $"Nothing is there.", right, section);
        return null;
    }

    /// <summary>A value the paper cannot do without.</summary>
    public T? Need<T>(T? value, string id, Place where, Sentence right, string section)
        where T : struct
    {
        if (value is null)
            Refuse(id, where, $"Nothing is there.", right, section);
        return value;
    }

    /// <summary>Refuses the paper where the finding says that the right is lost; a finding that is not there refuses nothing.</summary>
    public void NotIfLost(string finding, string words)
    {
        if (assessment.Find(finding) is { Standing: Standing.Lost } lost)
        {
            Refuse("right-lost", new Place.OfFinding(finding), $"{words} {LawSays(lost)}",
                $"See the reasons; the paper is made only while the right may stand.",
                string.Join("; ", lost.Sections));
        }
    }

    /// <summary>Refuses the paper on work of another kind.</summary>
    public void OnlyOn(Paper paper)
    {
        if (!paper.Works.Contains(job.Work.Kind))
        {
            Refuse("other-work", new Place.OfHead("work.kind"), $"The work is {KindWord(job.Work.Kind)}.",
                $"This paper is for work that is {paper.WorksWords}; see the list of papers for the one that fits.", paper.Sections);
        }
    }

    /// <summary>The parties in a capacity that have a name.</summary>
    public IReadOnlyList<Party> In(PartyCapacity capacity) => [.. job.In(capacity).Where(p => Clean(p.Name) is not null)];

    /// <summary>The first owner with a name; null where there is none.</summary>
    public Party? Owner => In(PartyCapacity.Owner) is [var first, ..] ? first : null;

    /// <summary>Owner, or owners where several own.</summary>
    public string OwnerWord => Facts.SeveralOwners ? "owners" : "owner";

    /// <summary>The owner, or one of the owners where several own.</summary>
    public string OneOwner => Facts.SeveralOwners ? "one of the owners" : "the owner";

    /// <summary>The last known entry of a kind; null where there is none.</summary>
    public T? Last<T>()
        where T : Entry => Known.All<T>() is [.., var last] ? last : null;

    /// <summary>Address of a party; an owner without one has that of the building permit (Civ. Code § 8108(a)).</summary>
    public string? AddressOf(Party party) =>
        Clean(party.Address) ?? (party.Capacity == PartyCapacity.Owner ? Clean(job.Work.Permit?.OwnerAddress) : null);

    /// <summary>The parties of that id list; an unknown id is a reason against the paper.</summary>
    public IReadOnlyList<Party> Named(IReadOnlyList<string> ids)
    {
        foreach (var id in ids.Where(i => job.Party(i) is null))
        {
            Refuse("party-unknown", Place.Of(PaperInput.To), $"'{id}' is no party of the job file.",
                $"Name ids that stand in {new FileWord("parties")}: {string.Join(", ", job.Parties.Select(p => p.Id))}.", "");
        }

        return [.. ids.Select(job.Party).OfType<Party>()];
    }

    /// <summary>The texts of the reasons that applied.</summary>
    public static string Reasons(Finding finding) => LawSays(finding).ToString();

    /// <summary>The same as a sentence of a refusal.</summary>
    public static Sentence LawSays(Finding finding) => $"{new ForReaders(Sentence.Join(" ", Applied(finding)))}";

    /// <summary>The same as a sheet says it.</summary>
    public static string Said(Finding finding) => RefusalInWords.Said(LawSays(finding));

    private static IEnumerable<Sentence> Applied(Finding finding) => finding.Why.Where(w => w.Applied).Select(w => w.Sentence);

    private static string KindWord(WorkKind kind) => kind switch
    {
        WorkKind.Private => "private",
        WorkKind.Public => "public",
        WorkKind.Federal => "federal",
        _ => throw new InvalidOperationException($"No such work: {kind}."),
    };
}
