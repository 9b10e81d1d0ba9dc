using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Papers.Catalogue;

namespace Stringline.Papers.Mailing;

/// <summary>A notice that the job file tells of, whatever its kind.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Entry">The entry.</param>
/// <param name="To">Party ids to whom it was given; empty where the file does not say.</param>
/// <param name="Manner">How; null where the file does not say.</param>
/// <param name="Article">Article number of the mailing.</param>
internal sealed record GivenNotice(ProvedNotice Kind, Entry Entry, IReadOnlyList<string> To, Manner? Manner, string? Article)
{
    /// <summary>The day on which it was given; null where that is not exactly known.</summary>
    public LocalDate? Day => Entry.On is DayFact.Exact on ? on.Day : null;

    /// <summary>Whether day and manner can be sworn to: an exact day, and no manner in which no notice is given.</summary>
    public bool CanBeProved => Day is not null && (Manner is not { } manner || Giving.IsGood(manner));

    /// <summary>The notices known, earliest first, and of one day in the order in which the file names the parties.</summary>
    public static IReadOnlyList<GivenNotice> In(FactsAsOf facts) =>
        [.. facts.Known.Select(Of).OfType<GivenNotice>().OrderBy(n => Order(facts, n.Entry, n.To))];

    /// <summary>Where a mailing stands among others.</summary>
    public static (LocalDate Day, int Party) Order(FactsAsOf facts, Entry entry, IReadOnlyList<string> to) =>
        (entry.On.Earliest ?? LocalDate.MinIsoValue, facts.Job.Parties.TakeWhile(p => to.Count > 0 && p.Id != to[0]).Count());

    private static GivenNotice? Of(Entry entry) => ProvedNotices.Of(entry) is { } kind ? entry switch
    {
        NoticeGiven e => new(kind, e, e.To, e.Manner, e.Article),
        StopPaymentGiven e => new(kind, e, e.To, e.Manner, e.Article),
        BondNoticeGiven e => new(kind, e, e.To, e.Manner, e.Article),
        PaymentDemanded e => new(kind, e, e.To, e.Manner, e.Article),
        StopWorkNoticeGiven e => new(kind, e, e.To, null, null),
        ActionTold e => new(kind, e, e.To, e.Manner, null),
        CounteraffidavitServed e => new(kind, e, e.To, e.Manner, null),
        HearingNoticed e => new(kind, e, e.To, e.Manner, null),
        SecurityDemanded e => new(kind, e, [], e.Manner, null),
        DisputeClaimSent e => new(kind, e, [], e.Manner, null),
        ConferenceDemanded e => new(kind, e, [], e.Manner, null),
        SuspensionNoticeSent e => new(kind, e, [], e.Manner, null),
        StopPaymentReleased or DisputedWorkDone => new(kind, entry, [], null, null),
        _ => throw new InvalidOperationException($"No such notice: {entry.GetType().Name}."),
    } : null;
}
