using System.Globalization;
using Stringline.Law.Numbers;

namespace Stringline.Law.Recording;

/// <summary>
/// A county recorder's office and its published prices as they were read, on a day. Amounts are dollars and cents;
/// null means that no page read says.
/// </summary>
public sealed record RecorderOffice
{
    /// <summary>The county, such as <c>Yolo</c>.</summary>
    public required string County { get; init; }

    /// <summary>The day on which the facts hold; null where no day was asked for, and every price is to be asked.</summary>
    public LocalDate? On { get; init; }

    /// <summary>All that was read of it and holds on that day, in the order of the table.</summary>
    public IReadOnlyList<RecorderFact> Facts { get; init; } = [];

    /// <summary>The numbers of the law that every office goes by.</summary>
    public NumberTable Numbers { get; init; } = NumberTable.Shipped;

    /// <summary>The version of a number of the law on the office's day; the newest where no day was asked for.</summary>
    internal NumberRow ByLaw(Number number) => Numbers.On(number, On ?? LocalDate.MaxIsoValue);

    private IReadOnlyList<RecorderFact>? EveryDay { get; init; }

    private IReadOnlyList<RecorderFact> OfStatutes { get; init; } = [];

    /// <summary>An office on a day, of all that was read of it.</summary>
    /// <param name="county">The county.</param>
    /// <param name="facts">All that was read of it, for whatever day.</param>
    /// <param name="statutes">What the statutes set for every county, for whatever day.</param>
    /// <param name="on">The day.</param>
    public static RecorderOffice Of(
        string county, IReadOnlyList<RecorderFact> facts, IReadOnlyList<RecorderFact> statutes, LocalDate on) =>
        new RecorderOffice { County = county, EveryDay = facts, OfStatutes = statutes }.OnDay(on);

    /// <summary>The office of a job whose county was not told.</summary>
    /// <param name="statutes">What the statutes set for every county, for whatever day.</param>
    public static RecorderOffice Unnamed(IReadOnlyList<RecorderFact> statutes) =>
        new() { County = "(county not named)", OfStatutes = statutes };

    /// <summary>The same office on another day.</summary>
    public RecorderOffice OnDay(LocalDate day) =>
        this with { On = day, Facts = [.. (EveryDay ?? Facts).Where(f => f.HoldsOn(day))] };

    /// <summary>What the statutes set for a field, on every reading that is open on the office's day, the lowest first.</summary>
    internal IReadOnlyList<RecorderFact> StatuteOf(RecorderField field) =>
    [
        .. OfStatutes.Where(f => f.Field == field && (On is { } day ? f.HoldsOn(day) : f.From is null)).OrderBy(f => f.Dollars),
    ];

    /// <summary>What a bill that was not read as passed would set for a field from some day on; null where none was read.</summary>
    internal RecorderFact? ByBill(RecorderField field) => OfStatutes.FirstOrDefault(f => f.Field == field && f.From is not null);

    /// <summary>Where the counter is; the city alone, from memory, where no street was read.</summary>
    public string? Place => Words(RecorderField.Counter) ?? (Words(RecorderField.City) is { } city ? $"{city} (confirm the city)" : null);

    /// <summary>Recording and indexing the first page of one title (Gov. Code §§ 27361, 27361.4), without fraud and homes fees.</summary>
    public decimal? Base => Dollars(RecorderField.Base);

    /// <summary>Each further page (Gov. Code § 27361(a)(1)).</summary>
    public decimal? ExtraPage => Dollars(RecorderField.ExtraPage);

    /// <summary>Whether the homes fee (Gov. Code § 27388.1) is counted for each parcel.</summary>
    public bool? ParcelsCounted => Words(RecorderField.ParcelsCounted) is { } said ? said == "yes" : null;

    /// <summary>Names in a group for the notice of involuntary lien; 1 where every name is charged.</summary>
    public int NoticeGroup => Words(RecorderField.NoticeGroup) is { } group ? int.Parse(group, CultureInfo.InvariantCulture) : 1;

    /// <summary>Whether no page of the office was read, so that the person must call.</summary>
    public bool IsFromMemory => Facts.All(f => f.IsFromMemory);

    /// <summary>Whether a price was read.</summary>
    public bool HasPrices => Facts.Any(f => f.Dollars is not null && RecorderFields.IsPrice(f.Field));

    /// <summary>The last day on which a page of the office was read; null where none was.</summary>
    public LocalDate? DateRead => Facts.Max(f => f.DateRead);

    /// <summary>The sites on which the prices were read, each with the dates its pages bear; empty where none was read.</summary>
    public IReadOnlyList<string> PriceSources =>
    [
        .. Enum.GetValues<RecorderField>().Where(RecorderFields.IsPrice).Select(Fact).OfType<RecorderFact>()
            .GroupBy(f => f.Site).Select(site => $"{site.Key}, {string.Join(" and ", site.Select(f => f.DateInWords).Distinct())}"),
    ];

    /// <summary>
    /// The office's own site, to ask there where no telephone was read: one that is the recorder's by its name, else the one on which most
    /// was read. A county's agenda is no office, nor is a page of a city.
    /// </summary>
    public string? OwnSite => Facts.Where(f => !f.IsFromMemory && !f.Site.EndsWith("legistar.com", StringComparison.Ordinal)
            && !f.Site.EndsWith("laquintaca.gov", StringComparison.Ordinal))
        .GroupBy(f => f.Site).OrderByDescending(g => g.Key.Contains("record", StringComparison.Ordinal)).ThenByDescending(g => g.Count())
        .FirstOrDefault()?.Key;

    /// <summary>What must be known beside the prices.</summary>
    public IEnumerable<string> Notes => Facts.Where(f => f.Field == RecorderField.Note).Select(f => f.Value);

    /// <summary>The office's name.</summary>
    public string Name => County == "San Francisco"
        ? "Recorder of the City and County of San Francisco"
        : $"County Recorder, {County} County";

    /// <summary>
    /// The fact that is acted on. Of prices the newest page has it, unless a page without a date says more: then the dearer, as a short
    /// check turns a paper back. Of anything else the one that stands first in the table.
    /// </summary>
    public RecorderFact? Fact(RecorderField field)
    {
        var standing = Standing(field);
        var taken = RecorderFields.Kind(field) switch
        {
            RecorderValue.Dollars => Dearest(standing),
            RecorderValue.YesNo => standing.Find(f => f.Value == "yes") ?? standing.FirstOrDefault(),
            RecorderValue.Count or RecorderValue.Words => standing.FirstOrDefault(),
            var other => throw new InvalidOperationException($"No such kind of value: {other}."),
        };
        return standing.Find(f => f.Value == taken?.Value && f.PageDay is not null) ?? taken;
    }

    private static RecorderFact? Dearest(List<RecorderFact> prices)
    {
        RecorderFact? dearest = null;
        foreach (var price in prices)
        {
            if (dearest is null || price.Dollars > dearest.Dollars)
                dearest = price;
        }

        return dearest;
    }

    /// <summary>The words of the fact that is acted on; null where none was read.</summary>
    public string? Words(RecorderField field) => Fact(field)?.Value;

    /// <summary>The dollars of the fact that is acted on; null where none was read.</summary>
    public decimal? Dollars(RecorderField field) => Fact(field)?.Dollars;

    /// <summary>All other words that pages have for the field.</summary>
    public IEnumerable<string> Otherwise(RecorderField field) =>
        Standing(field).Select(f => f.Value).Distinct(StringComparer.Ordinal).Where(v => v != Words(field));

    /// <summary>
    /// Whether the office must be asked: nothing was read, or only on pages that bear no date or one more than five years before the day,
    /// or two pages disagree and neither is the newer.
    /// </summary>
    public bool Asks(RecorderField field)
    {
        var standing = Standing(field);
        return On is not { } on || !standing.Exists(f => f.IsFresh(on))
            || (!RecorderFields.HasSeveral(field) && standing.Select(f => f.Value).Distinct(StringComparer.Ordinal).Count() > 1);
    }

    // Of dated pages the newest; one without a date may be newer than any.
    private List<RecorderFact> Standing(RecorderField field)
    {
        var read = Facts.Where(f => f.Field == field).ToList();
        var newest = read.Max(f => f.PageDay);
        return [.. read.Where(f => f.PageDay is null || f.PageDay == newest)];
    }
}
