using System.Globalization;
using Stringline.Law.Reasoning;

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
    public FactsAsOf(JobFile job, LocalDate asOf)
    {
        Job = job;
        AsOf = asOf;
        var known = new List<Entry>(job.Entries.Count);
        foreach (var entry in job.Entries)
        {
            if (entry.On.Earliest > asOf || entry.Learned > asOf)
                leftOut.Add(entry);
            else
                known.Add(entry);
        }

        DropSuperseded(known);

        known.Sort(ByDay);
        Known = known;
        Furnished = All<Furnished>();
        FirstFurnished = Ends(first: true);
        LastFurnished = Ends(first: false);
    }

    // An entry replaced by one that was known by then counts no more; the replacement says all that is left of it.
    private static void DropSuperseded(List<Entry> known)
    {
        HashSet<string>? replaced = null;
        foreach (var entry in known)
        {
            if (entry.Supersedes is { } id)
                (replaced ??= []).Add(id);
        }

        if (replaced is not null)
            known.RemoveAll(e => e is Withdrawn || (e.Id is { } id && replaced.Contains(id)));
    }

    private readonly List<Entry> leftOut = [];
    private readonly Dictionary<Type, Entry[]> byKind = [];
    private NoticeGiven[]? preliminary;

    /// <summary>The file.</summary>
    public JobFile Job { get; }

    /// <summary>The day on which the question is asked.</summary>
    public LocalDate AsOf { get; }

    /// <summary>The entries that can have happened by then, earliest first.</summary>
    public IReadOnlyList<Entry> Known { get; }

    /// <summary>The entries left out because they begin after that day.</summary>
    public IReadOnlyList<Entry> LeftOut => leftOut;

    /// <summary>What was furnished, earliest first.</summary>
    public IReadOnlyList<Furnished> Furnished { get; }

    /// <summary>The day the claimant first furnished work; null where nothing is entered or a day is unknown.</summary>
    public Days? FirstFurnished { get; }

    /// <summary>The day the claimant last furnished work; null where nothing is entered or a day is unknown.</summary>
    public Days? LastFurnished { get; }

    /// <summary>Whether the claimant has furnished anything by then.</summary>
    public bool HasFurnished => Furnished.Count > 0;

    /// <summary>The entries of one kind, earliest first.</summary>
    public IReadOnlyList<T> All<T>() where T : Entry
    {
        if (byKind.TryGetValue(typeof(T), out var sorted))
            return (T[])sorted;
        List<T>? found = null;
        foreach (var entry in Known)
        {
            if (entry is T wanted)
                (found ??= []).Add(wanted);
        }

        T[] all = found is null ? [] : [.. found];
        byKind.Add(typeof(T), all);
        return all;
    }

    /// <summary>The preliminary notices, earliest first.</summary>
    public IReadOnlyList<NoticeGiven> PreliminaryNotices =>
        preliminary ??= [.. All<NoticeGiven>().Where(n => n.Notice == NoticeKind.Preliminary)];

    /// <summary>The party who contracted with the claimant, or null.</summary>
    public Party? Hirer => Job.Party(Job.Claimant.HiredBy);

    /// <summary>Whether the claimant has a direct contract with an owner (Civ. Code § 8200(e)(2)).</summary>
    public bool HiredByOwner =>
        Job.Claimant.Role == ClaimantRole.DirectContractor || Hirer is { Capacity: PartyCapacity.Owner };

    /// <summary>Whether what the claimant furnishes is labor at the site, so that its days show that labor had not ceased.</summary>
    public bool FurnishesLabor => Job.Claimant.Role is
        ClaimantRole.DirectContractor or ClaimantRole.Subcontractor or ClaimantRole.Laborer;

    private Days? Ends(bool first)
    {
        Days? found = null;
        foreach (var entry in Furnished)
        {
            if (Days.Of(first ? entry.On : entry.Until) is not { } days)
                return null;
            if (found is not { } so)
                found = days;
            else if (first)
                found = new Days(LocalDate.Min(so.Earliest, days.Earliest), LocalDate.Min(so.Latest, days.Latest));
            else
                found = Days.Later(so, days);
        }

        return found;
    }

    // Unknown days first; then by day. Ties are broken by what the entry says, never by its place in the file.
    private static int ByDay(Entry a, Entry b)
    {
        var byEarliest = Compare(a.On.Earliest, b.On.Earliest);
        if (byEarliest != 0)
            return byEarliest;
        var byLatest = Compare(a.On.Latest, b.On.Latest);
        if (byLatest != 0)
            return byLatest;
        var byKind = string.CompareOrdinal(a.GetType().Name, b.GetType().Name);
        if (byKind != 0)
            return byKind;
        var byContent = ByContent(a, b);
        return byContent != 0 ? byContent : string.CompareOrdinal(TheRest(a), TheRest(b));
    }

    // All that an entry says besides its day, its sum and its reference, for entries that tie in those.
    private static string TheRest(Entry entry) => entry switch
    {
        Furnished e => Line(e.Until.Earliest, e.Until.Latest, e.Ref, e.Text),
        Change e => Line(e.Amount, e.Agreed, e.Text),
        Paid e => Line(e.From),
        Charged e => Line(e.Of),
        NoticeGiven e => Line(e.Notice, e.Manner, To(e.To), e.Article),
        Completed e => Line(e.By, e.Contested),
        LaborCeased e => Line(e.Until),
        OwnerRecorded e => Line(e.Notice, e.States, e.ContractOf, e.Instrument),
        OwnerToldUs e => Line(e.Notice, e.Mailed),
        Waived e => Line(e.PaymentCleared, e.InStatutoryForm),
        ClaimServed e => Line(e.Manner, To(e.To), e.Article),
        ClaimRecorded e => Line(e.Amount, e.Instrument),
        CreditRecorded e => Line(e.Until, e.Instrument),
        ActionFiled e => Line(e.Court, e.Case),
        LisPendensRecorded e => Line(e.Instrument),
        ReleaseRecorded e => Line(e.Instrument),
        ReleaseBondRecorded e => Line(e.Amount, e.Instrument),
        ReleaseDemanded e => Line(e.Instrument),
        StopPaymentGiven e => Line(To(e.To), e.Amount, e.Bonded),
        BondNoticeGiven e => Line(To(e.To)),
        Retained e => Line(e.Amount),
        PaymentDemanded e => Line(e.Amount),
        HirerPaid e => Line(e.Amount, e.Of),
        Disputed e => Line(e.Amount, e.Text),
        LowerTierClaim e => Line(e.Amount, e.By),
        NonresponsibilityRecorded e => Line(e.Posted, e.Knew, e.LeaseRequiresWork),
        DisputeClaimSent e => Line(e.Amount, e.Received),
        FurnishingEnded or IndexSearched or WorkWillNotCommence or Withdrawn or Credited => "",
        _ => throw new InvalidOperationException($"No such entry: {entry.GetType().Name}."),
    };

    private static string Line(params object?[] parts) =>
        string.Join('|', parts.Select(p => p is IFormattable f ? f.ToString(null, CultureInfo.InvariantCulture) : p?.ToString()));

    private static string To(IReadOnlyList<string> ids) => string.Join(',', ids);

    private static int ByContent(Entry a, Entry b) => (a, b) switch
    {
        (Furnished x, Furnished y) => ByAmountThenText(x.Amount, x.Ref ?? x.Text, y.Amount, y.Ref ?? y.Text),
        (Paid x, Paid y) => ByAmountThenText(x.Amount, x.Toward, y.Amount, y.Toward),
        (Charged x, Charged y) => ByAmountThenText(x.Amount, x.Ref, y.Amount, y.Ref),
        (Credited x, Credited y) => ByAmountThenText(x.Amount, x.Text, y.Amount, y.Text),
        (Waived x, Waived y) => (x.Form, x.Through, x.Amount ?? 0, x.Excepted ?? 0)
            .CompareTo((y.Form, y.Through, y.Amount ?? 0, y.Excepted ?? 0)),
        _ => 0,
    };

    private static int ByAmountThenText(decimal? amountA, string? textA, decimal? amountB, string? textB)
    {
        var byText = string.CompareOrdinal(textA, textB);
        return byText != 0 ? byText : decimal.Compare(amountA ?? 0, amountB ?? 0);
    }

    private static int Compare(LocalDate? a, LocalDate? b) => (a, b) switch
    {
        (null, null) => 0,
        (null, _) => -1,
        (_, null) => 1,
        ({ } x, { } y) => x.CompareTo(y),
    };
}
