using System.Runtime.CompilerServices;
using Stringline.Law.Counting;
using Stringline.Law.Numbers;

namespace Stringline.Law.Facts;

/// <summary>
/// A job file as it was known on a day: the entries that can have happened and were learned by then, sorted by kind and day so that the
/// order in which the file lists them carries no meaning.
/// </summary>
public sealed class FactsAsOf
{
    /// <summary>Sorts a job file's entries.</summary>
    /// <param name="job">The file.</param>
    /// <param name="asOf">The day on which the question is asked; entries that begin after it are left out.</param>
    /// <param name="numbers">The numbers of the law under which they are judged; null for those that the program was built with.</param>
    public FactsAsOf(JobFile job, LocalDate asOf, NumberTable? numbers = null)
        : this(job, asOf, numbers ?? NumberTable.Shipped, KnownBy(job, asOf, out var leftOut), leftOut)
    {
    }

    private FactsAsOf(JobFile job, LocalDate asOf, NumberTable numbers, Entry[] known, IReadOnlyList<Entry> leftOut)
    {
        Numbers = numbers;
        Job = job;
        AsOf = asOf;
        this.known = known;
        count = known.Length;
        this.leftOut = leftOut;
        places = new byte[known.Length];
        for (var i = 0; i < known.Length; i++)
        {
            var kind = known[i].GetType();
            var place = PlaceOf(kind);
            if (place < 0)
            {
                if (kindCount == kinds.Length)
                    Array.Resize(ref kinds, 2 * kindCount);
                place = kindCount++;
                kinds[place] = kind;
            }

            places[i] = (byte)place;
        }

        byKind = new Entry[]?[kindCount];
        Furnished = All<Furnished>();
        FirstFurnished = Ends(first: true);
        LastFurnished = Ends(first: false);
    }

    // The first so many entries of other facts: a file of thousands of papers is asked what had happened by the day of each.
    private FactsAsOf(FactsAsOf whole, LocalDate day)
    {
        this.whole = whole;
        Numbers = whole.Numbers;
        Job = whole.Job;
        AsOf = day;
        known = whole.known;
        count = HeldBy(day, whole.known, whole.count);
        (kinds, kindCount, places) = (whole.kinds, whole.kindCount, whole.places);
        byKind = new Entry[]?[kindCount];
        Furnished = All<Furnished>();
        FirstFurnished = Ends(first: true);
        LastFurnished = Ends(first: false);
    }

    private static Entry[] KnownBy(JobFile job, LocalDate asOf, out IReadOnlyList<Entry> leftOut)
    {
        List<Entry>? left = null;
        var known = new List<Entry>(job.Entries.Count);
        for (var i = 0; i < job.Entries.Count; i++)
        {
            var entry = job.Entries[i];
            if (entry.On.Earliest > asOf || entry.Learned > asOf)
                (left ??= []).Add(entry);
            else
                known.Add(entry);
        }

        leftOut = left is null ? [] : left;
        Supersession.Apply(known);
        return EntryOrder.Sorted(known);
    }

    /// <summary>
    /// What had happened by an earlier day, as it is known on the day of asking: a payment that was learned of later counts from the day it
    /// came. What was furnished over days on both sides of that day counts whole.
    /// </summary>
    /// <param name="day">The day, such as that on which a paper was given.</param>
    public FactsAsOf Through(LocalDate day) =>
        day >= AsOf ? this : new FactsAsOf(this, day);

    // How many begin by a day: the entries stand in the order of their earliest days, those of unknown day before all.
    private static int HeldBy(LocalDate day, Entry[] entries, int count) =>
        Bisection.First(count, place => entries[place].On.Earliest > day);

    // The kinds of entry that the file holds: a dozen at most, sooner looked through than hashed.
    private readonly Type[] kinds = new Type[12];
    private readonly int kindCount;
    private readonly byte[] places;
    private readonly Entry[]?[] byKind;
    private readonly FactsAsOf? whole;
    private readonly Entry[] known;
    private readonly int count;
    private IReadOnlyList<Entry>? leftOut;
    private NoticeGiven[]? preliminary;
    private object[] workedOut = [];

    /// <summary>
    /// What a rule has worked out from these facts alone, made when it is first asked for: half a dozen rules may ask for it.
    /// </summary>
    /// <typeparam name="T">Its type, by which it is kept: one such thing for all facts.</typeparam>
    /// <param name="make">Makes it.</param>
    internal T Once<T>(Func<FactsAsOf, T> make) where T : class
    {
        foreach (var known in workedOut)
        {
            if (known is T found)
                return found;
        }

        var made = make(this);
        // Two threads may both make it, and it is the same; what one of them loses is made again.
        workedOut = [.. workedOut, made];
        return made;
    }

    /// <summary>The numbers of the law under which the facts are judged.</summary>
    public NumberTable Numbers { get; }

    /// <summary>The file.</summary>
    public JobFile Job { get; }

    /// <summary>The day on which the question is asked.</summary>
    public LocalDate AsOf { get; }

    /// <summary>The entries that can have happened by then, earliest first.</summary>
    public IReadOnlyList<Entry> Known => whole is null ? known : new ArraySegment<Entry>(known, 0, count);

    /// <summary>The entries left out because they begin after that day.</summary>
    public IReadOnlyList<Entry> LeftOut => leftOut ??= [.. whole!.LeftOut, .. whole.Known.Skip(count)];

    /// <summary>What was furnished, earliest first.</summary>
    public IReadOnlyList<Furnished> Furnished { get; }

    /// <summary>The day the claimant first furnished work; null where nothing is entered or a day is unknown.</summary>
    public DaySpan? FirstFurnished { get; }

    /// <summary>The day the claimant last furnished work; null where nothing is entered or a day is unknown.</summary>
    public DaySpan? LastFurnished { get; }

    /// <summary>Whether the claimant has furnished anything by then.</summary>
    public bool HasFurnished => Furnished.Count > 0;

    /// <summary>The entries of one kind, earliest first.</summary>
    public IReadOnlyList<T> All<T>() where T : Entry
    {
        var place = PlaceOf(typeof(T));
        if (place < 0)
            return [];
        // What stands in that place is of that kind, which asking again at every call would be a good part of an assessment.
        if (byKind[place] is { } sorted)
            return Unsafe.As<T[]>(sorted);
        T[] all;
        if (whole is not null)
        {
            var ofWhole = Unsafe.As<T[]>(whole.All<T>());
            all = ofWhole[..HeldBy(AsOf, ofWhole, ofWhole.Length)];
        }
        else
        {
            var left = 0;
            foreach (var so in places)
                left += so == place ? 1 : 0;
            all = new T[left];
            for (var i = known.Length - 1; left > 0; i--)
            {
                if (places[i] == place)
                    all[--left] = (T)known[i];
            }
        }

        // Reasons are put together when first read, which may be on any thread: two that get here make the same array.
        byKind[place] = all;
        return all;
    }

    private int PlaceOf(Type kind)
    {
        var held = kinds.AsSpan(0, kindCount);
        for (var i = 0; i < held.Length; i++)
        {
            if (ReferenceEquals(held[i], kind))
                return i;
        }

        return -1;
    }

    /// <summary>The known day of the first entry of one kind that has one; null where none does.</summary>
    public DaySpan? FirstDayOf<T>() where T : Entry
    {
        foreach (var entry in All<T>())
        {
            if (DaySpan.Of(entry.On) is { } day)
                return day;
        }

        return null;
    }

    /// <summary>The preliminary notices, earliest first.</summary>
    public IReadOnlyList<NoticeGiven> PreliminaryNotices =>
        preliminary ??= [.. All<NoticeGiven>().Where(n => n.Notice == NoticeKind.Preliminary)];

    /// <summary>The party who contracted with the claimant, or null.</summary>
    public Party? Hirer => Job.Party(Job.Claimant.HiredBy);

    /// <summary>Whether the claimant has a direct contract with an owner (Civ. Code § 8200(e)(2)).</summary>
    public bool HiredByOwner =>
        Job.Claimant.Role == ClaimantRole.DirectContractor || Hirer is { Capacity: PartyCapacity.Owner };

    /// <summary>
    /// Whether preliminary notice may be due to a construction lender, of whom the file names none and shows no search
    /// (Civ. Code § 8200(a)(3)).
    /// </summary>
    public bool LenderUnknown => Job.Work.Kind == WorkKind.Private && Job.Claimant.Role != ClaimantRole.Laborer
        && Job.In(PartyCapacity.ConstructionLender).Count == 0 && All<LenderSought>().Count == 0;

    /// <summary>Whether what the claimant furnishes is labor at the site, so that its days show that labor had not ceased.</summary>
    public bool FurnishesLabor => Job.Claimant.Role is
        ClaimantRole.DirectContractor or ClaimantRole.Subcontractor or ClaimantRole.Laborer;

    private DaySpan? Ends(bool first)
    {
        DaySpan? found = null;
        for (var i = 0; i < Furnished.Count; i++)
        {
            var entry = Furnished[i];
            if (DaySpan.Of(first ? entry.On : entry.Until) is not { } days)
                return null;
            if (found is not { } so)
                found = days;
            else if (first)
                found = new DaySpan(LocalDate.Min(so.Earliest, days.Earliest), LocalDate.Min(so.Latest, days.Latest));
            else
                found = DaySpan.Later(so, days);
        }

        return found;
    }
}
