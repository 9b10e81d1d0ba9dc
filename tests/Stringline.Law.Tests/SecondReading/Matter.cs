using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>A job file as known on a day, read without any rule: what can have happened and was learned by then.</summary>
internal sealed class Matter
{
    public Matter(JobFile job, LocalDate asOf)
    {
        Job = job;
        AsOf = asOf;
        Known = [.. job.Entries.Where(e => !(e.On.Earliest > asOf) && !(e.Learned > asOf))];
        Work = Of<Furnished>();
    }

    public JobFile Job { get; }

    public LocalDate AsOf { get; }

    public Entry[] Known { get; }

    public Furnished[] Work { get; }

    private readonly Dictionary<Type, Entry[]> byKind = [];

    public T[] Of<T>() where T : Entry
    {
        if (byKind.TryGetValue(typeof(T), out var found))
            return (T[])found;
        T[] all = [.. Known.OfType<T>()];
        byKind[typeof(T)] = all;
        return all;
    }

    /// <summary>What is to be said of the license.</summary>
    public Reading License => license ??= new World(this).Everywhere(LicenseReading.Finding);

    private Reading? license;

    /// <summary>
    /// Whether the license is lost on every reading; a federal bond is a federal remedy, which the State's bar does not reach.
    /// </summary>
    public bool LicenseLost => Kind != WorkKind.Federal && License.SurelyLost;

    private readonly Dictionary<int, bool> surelyBad = [];

    /// <summary>Whether a recorded claim is bad on every reading.</summary>
    public bool IsSurelyBad(ClaimRecorded claim)
    {
        if (!surelyBad.TryGetValue(claim.Index, out var bad))
            surelyBad[claim.Index] = bad = ClaimReading.IsSurelyBad(this, claim);
        return bad;
    }

    private readonly Dictionary<Func<World, Answer>, bool> surelyLost = [];

    /// <summary>Whether another remedy, which this one needs, is lost on every reading.</summary>
    public bool IsSurelyLost(Func<World, Answer> needed)
    {
        if (!surelyLost.TryGetValue(needed, out var lost))
            surelyLost[needed] = lost = new World(this).Everywhere(needed).SurelyLost;
        return lost;
    }

    public ClaimantRole Role => Job.Claimant.Role;

    public WorkKind Kind => Job.Work.Kind;

    public Party? Hirer => Job.Party(Job.Claimant.HiredBy);

    public bool IsDirectContractor => Role == ClaimantRole.DirectContractor;

    public bool HiredByOwner => IsDirectContractor || Hirer is { Capacity: PartyCapacity.Owner };

    public bool HiredByContractor => Hirer is { Capacity: PartyCapacity.DirectContractor };

    public bool FurnishesLabor => Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor or ClaimantRole.Laborer;

    public IReadOnlyList<Party> In(PartyCapacity capacity) => Job.In(capacity);

    /// <summary>
    /// Whether what came in may cover everything provided so far: a stop payment notice then has nothing to claim (Civ. Code §§ 8502(c),
    /// 9352(c)).
    /// </summary>
    public bool IsPaidInFull
    {
        get
        {
            var received = Of<Paid>().Sum(paid => paid.Amount) + Of<Credited>().Sum(credited => credited.Amount);
            return received > 0
                && (received >= Work.Sum(work => work.Amount ?? 0m) || received >= Job.Contract.Price + Of<Change>()
                    .Sum(change => change.Amount));
        }
    }

    /// <summary>The claimant's preliminary notices.</summary>
    public NoticeGiven[] Notices => [.. Of<NoticeGiven>().Where(n => n.Notice == NoticeKind.Preliminary)];

    /// <summary>
    /// The direct contractors to whom the work may go, and whether it is known which (Civ. Code §§ 8200(a)(2), 9300(a)(2)).
    /// </summary>
    public (IReadOnlyList<Party> Contractors, bool Known) WorksFor()
    {
        var all = In(PartyCapacity.DirectContractor);
        if (HiredByContractor)
            return ([Hirer!], true);
        if (Hirer?.WorksUnder is { } under && Job.Party(under) is { Capacity: PartyCapacity.DirectContractor } above)
            return ([above], true);
        return (all, all.Count < 2);
    }
}
