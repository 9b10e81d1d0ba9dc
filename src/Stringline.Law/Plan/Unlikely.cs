using Stringline.Law.Reasoning;
using Stringline.Law.Facts;
using Stringline.Law.Counting;

namespace Stringline.Law.Plan;

/// <summary>
/// Something about an entry that can be so and seldom is: a person is asked whether it is right. Nothing is refused for it.
/// </summary>
/// <param name="Id">Which question of the table it is.</param>
/// <param name="Text">What is unlikely, in a sentence.</param>
public sealed record UnlikelyFact(string Id, string Text);

/// <summary>
/// The one table of questions about entries that are unlikely, for forms and for imports alike. It knows facts and days on which offices
/// are closed, and no rule of law hangs on it.
/// </summary>
public sealed class Unlikely
{
    private const int FarAheadDays = 366;
    private const int FarBackYears = 10;

    private static readonly (string Id, string What, Func<Unlikely, Entry, string?> Ask)[] Table =
    [
        ("closed-office", "recorded or filed on a day on which the office was closed", (about, entry) => about.ClosedOffice(entry)),
        ("closed-post-office", "mailed on a day without postal service", (_, entry) => ClosedPostOffice(entry)),
        ("learned-before", "learned before it happened", (_, entry) => LearnedBefore(entry)),
        ("paid-too-much", "payments greater than everything ever owed", (about, entry) => about.PaidTooMuch(entry)),
        ("same-delivery-twice", "the same delivery twice", (about, entry) => about.SameDelivery(entry)),
        ("first-after-last", "a delivery after the last one", (about, entry) => about.AfterTheLast(entry)),
        ("far-ahead", "a day far ahead", (about, entry) => about.FarAhead(entry)),
        ("far-back", "a day many years back", (about, entry) => about.FarBack(entry)),
    ];

    private readonly LocalDate today;
    private readonly OpenDays offices;
    private readonly Contract contract;
    private readonly IReadOnlyList<Entry> counting;
    private readonly Lazy<Dictionary<(LocalDate On, decimal Amount), List<Furnished>>> byDayAndAmount;
    private readonly Lazy<Dictionary<string, int>> byRef;
    private readonly Lazy<(decimal Owed, decimal Paid, bool Unpriced)> sums;
    private readonly Lazy<(LocalDate? Ended, LocalDate? LastDelivery)> ends;

    /// <summary>Makes ready for the entries of a job.</summary>
    /// <param name="job">The job file with the entries that are asked about.</param>
    /// <param name="today">Today.</param>
    /// <param name="offices">The days on which offices are closed in the county of the site.</param>
    public Unlikely(JobFile job, LocalDate today, OpenDays offices)
    {
        ArgumentNullException.ThrowIfNull(job);
        (this.today, this.offices, contract) = (today, offices, job.Contract);
        counting = new FactsAsOf(job, new LocalDate(9990, 1, 1)).Known;
        byDayAndAmount = new(() => Deliveries.Where(entry => entry is { On: DayFact.Exact, Amount: not null })
            .GroupBy(entry => (entry.On.Earliest!.Value, entry.Amount!.Value)).ToDictionary(group => group.Key, group => group.ToList()));
        byRef = new(() =>
            Deliveries.Where(entry => entry.Ref is not null).GroupBy(entry => entry.Ref!).ToDictionary(group => group.Key, group =>
            group.Count(), StringComparer.Ordinal));
        sums = new(Sums);
        ends = new(() =>
            (counting.OfType<FurnishingEnded>().Select(ended => ended.On.Latest).Max(),
            Deliveries.Select(furnished => furnished.Until.Earliest).Max()));
    }

    /// <summary>The ids of all questions.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Table.Select(row => row.Id)];

    /// <summary>What a question is about, in words, to follow a number of rows.</summary>
    public static string What(string id) => Table.First(row => row.Id == id).What;

    /// <summary>What is unlikely about an entry of the job.</summary>
    public IEnumerable<UnlikelyFact> Of(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry is Withdrawn)
            yield break;
        foreach (var (id, _, ask) in Table)
        {
            if (ask(this, entry) is { } text)
                yield return new UnlikelyFact(id, text);
        }
    }

    private IEnumerable<Furnished> Deliveries => counting.OfType<Furnished>();

    private string? ClosedOffice(Entry entry)
    {
        var office = entry switch
        {
            ClaimRecorded or CreditRecorded or LisPendensRecorded or ReleaseRecorded or ReleaseBondRecorded => "county recorder",
            OwnerRecorded or NonresponsibilityRecorded or NoticeFiled => "county recorder",
            ActionFiled or ReleaseOrdered => "court",
            _ => null,
        };
        return office is not null && entry.On is DayFact.Exact { Day: var day } && offices.WhyClosed(day) is { } why
            ? Write($"The {office} is closed on {day}: {why}.")
            : null;
    }

    private static string? ClosedPostOffice(Entry entry)
    {
        Manner? manner = entry switch
        {
            NoticeGiven given => given.Manner,
            ClaimServed served => served.Manner,
            StopPaymentGiven given => given.Manner,
            BondNoticeGiven given => given.Manner,
            PaymentDemanded demanded => demanded.Manner,
            ActionTold told => told.Manner,
            _ => null,
        };
        var words = manner switch
        {
            Manner.CertifiedMail => "Certified mail",
            Manner.RegisteredMail => "Registered mail",
            Manner.ExpressMail => "Express mail",
            Manner.CertificateOfMailing => "A certificate of mailing",
            _ => null,
        };
        return words is not null && entry.On is DayFact.Exact { Day: var day } && HasNoPost(day)
            ? Write($"{words} on {day}, a day on which post offices are closed.") : null;
    }

    private static bool HasNoPost(LocalDate day) =>
        day.DayOfWeek == IsoDayOfWeek.Sunday || (day.Month, day.Day) is (1, 1) or (7, 4) or (12, 25);

    private static string? LearnedBefore(Entry entry) => entry.Learned < entry.On.Earliest
        ? Write($"It is said to have been learned on {entry.Learned}, before it happened on {entry.On.Earliest}.")
        : null;

    // Where something was furnished without a price nobody can say what was ever owed.
    private string? PaidTooMuch(Entry entry) => entry is Paid && sums.Value is { Unpriced: false } all && all.Paid > all.Owed
        ? Write($"With it {all.Paid} was paid, more than the {all.Owed} ever owed on this job.")
        : null;

    private (decimal Owed, decimal Paid, bool Unpriced) Sums()
    {
        var owed = Math.Max(
            Deliveries.Sum(furnished => furnished.Amount ?? 0m) + counting.OfType<Charged>().Sum(charged => charged.Amount),
            (contract.Price ?? 0m) + counting.OfType<Change>().Sum(change => change.Amount));
        return (owed, counting.OfType<Paid>().Sum(payment => payment.Amount), Deliveries.Any(furnished => furnished.Amount is null));
    }

    private string? SameDelivery(Entry entry)
    {
        if (entry is not Furnished furnished)
            return null;
        if (furnished.Ref is { } name && byRef.Value.GetValueOrDefault(name) > 1)
            return $"“{name}” is entered already.";
        return furnished is { On: DayFact.Exact { Day: var day }, Amount: { } amount }
            && byDayAndAmount.Value.GetValueOrDefault((day, amount)) is { Count: > 1 } alike
            && alike.Any(other => !ReferenceEquals(other, furnished) && other != furnished && (other.Ref is null || furnished.Ref is null))
            ? Write($"A delivery of {day} for {amount} is entered already.")
            : null;
    }

    private string? AfterTheLast(Entry entry) => entry switch
    {
        Furnished furnished when ends.Value.Ended < furnished.On.Earliest =>
            Write($"The last delivery is said to have been on {ends.Value.Ended}; this one is of {furnished.On.Earliest}."),
        FurnishingEnded ended when ends.Value.LastDelivery > ended.On.Latest =>
            Write($"The last delivery is said to have been on {ended.On.Latest}, but one of {ends.Value.LastDelivery} is entered."),
        _ => null,
    };

    private string? FarAhead(Entry entry) => entry.On.Latest is { } day && day > today.PlusDays(FarAheadDays)
        ? Write($"{day} is more than a year ahead.")
        : null;

    private string? FarBack(Entry entry) => entry.On.Earliest is { } day && day < today.PlusYears(-FarBackYears)
        ? Write($"{day} is more than {FarBackYears} years back.")
        : null;

    private static string Write(Sentence text) => text.ToString();
}
