using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Fees;

/// <summary>
/// Recording fees of a paper that is recorded against real property (Gov. Code §§ 27361-27361.8, 27388-27388.2).
/// Where an office's price was not read, the highest that any county prints stands in: a short check turns a paper back.
/// </summary>
public static class RecordingFee
{
    /// <summary>
    /// Highest base that any county was read to print: $10 (§ 27361(a)) and six dollars of the county's own, though only five additions of
    /// $1 were read (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    public const decimal HighestBase = 16;

    /// <summary>The page alone, of any county: not more than $10 (Gov. Code § 27361(a)(1)).</summary>
    private const decimal RecordingAlone = 10;

    /// <summary>Each further page: not more than $3 (Gov. Code § 27361(a)(1)).</summary>
    public const decimal HighestExtraPage = 3;

    /// <summary>Fraud fee: not more than $10 (Gov. Code § 27388(a)(1)).</summary>
    public const decimal HighestFraud = 10;

    /// <summary>Restrictive covenant fee, where the county took it up (Gov. Code § 27388.2).</summary>
    public const decimal HighestCovenant = 2;

    /// <summary>Each further ten names: the highest that any county was read to print.</summary>
    public const decimal HighestNames = 10;

    /// <summary>Each further reference: the same.</summary>
    public const decimal HighestReference = 4;

    /// <summary>Each notice of involuntary lien: the same.</summary>
    public const decimal HighestNotice = 20;

    /// <summary>A conformed copy, for the whole or each page: the same.</summary>
    public const decimal HighestCopy = 6;

    /// <summary>Homes fee (Gov. Code § 27388.1(a)(1)).</summary>
    public const decimal Homes = 75;

    /// <summary>The homes fee is charged three times at most: $225 (Gov. Code § 27388.1(a)(1)).</summary>
    public const int MostHomes = 3;

    /// <summary>Each page of a document with a page of another size (Gov. Code § 27361(a)(2)).</summary>
    public const decimal Nonstandard = 3;

    /// <summary>Estimates the fee.</summary>
    /// <param name="office">Whose prices.</param>
    /// <param name="request">What is to be recorded; at least one page, title and parcel.</param>
    /// <exception cref="ArgumentOutOfRangeException">No page, title or parcel.</exception>
    public static FeeEstimate Of(RecorderOffice office, FeeRequest request)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Pages, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Titles, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Parcels, 1);
        IEnumerable<FeePart> parts =
        [
            FirstPage(office, request), ExtraPages(office, request), FraudFee(office, request), HomesFee(office, request),
            CovenantFee(office, request), NonstandardPages(request), PenaltyPrint(request), ManyNames(office, request),
            ManyReferences(office, request), LienNotice(office, request), Conformed(office, request),
        ];
        IReadOnlyList<FeePart> all = [.. parts];
        var most = all.Sum(p => p.Most);
        var later = request.Until is { } until && office.On is { } on && until > on
            ? Of(RecorderTable.For(office.County, until), request with { Until = null }).AtMost : most;
        return new FeeEstimate(office, [.. all.Where(p => p.Amount > 0)])
        {
            Exemption = request.Exemption,
            ProofSparesNotice = !request.ServedWithCertificateOfMailing,
            Unpriced = [.. all.Where(p => p.Amount == 0 && p.Most > 0)],
            WhatCouldChangeIt = FeeDoubts.Of(office, request),
            AtMost = Math.Max(most, later),
            DearerOn = later > most ? request.Until : null,
        };
    }

    private static FeePart FirstPage(RecorderOffice office, FeeRequest request)
    {
        var price = Price.Capped(office, RecorderField.Base, HighestBase, HighestBase);
        return Part("base", "Recording, first page", price, request.Titles,
            request.Titles > 1 ? "Gov. Code §§ 27361, 27361.1, 27361.4" : "Gov. Code §§ 27361, 27361.4",
            Times(request.Titles, "title", price.Taken) + Made(price)
            + (request.Titles > 1 ? "; each additional title is charged as another paper" : "") + NotRead(price));
    }

    /// <summary>
    /// What the base is made of: $10 at most for the page, and the county's own additions of $1 (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    private static string Made(Price price)
    {
        var own = price.Taken - price.UnderTheBill - RecordingAlone;
        return own > 0 ? $", {Dollars(own)} of it added by the county" : "";
    }

    private static FeePart ExtraPages(RecorderOffice office, FeeRequest request)
    {
        var price = Price.Capped(office, RecorderField.ExtraPage, HighestExtraPage, HighestExtraPage);
        return Part("extra-pages", "Additional pages", price, request.Pages - 1, "Gov. Code § 27361(a)(1)",
            $"{Times(request.Pages - 1, "page", price.Taken)}, beyond the first{NotRead(price)}");
    }

    private static FeePart FraudFee(RecorderOffice office, FeeRequest request)
    {
        var onClaim = request.Paper == RecordedPaperKind.ClaimOfLien;
        var others = office.Dollars(RecorderField.FraudOnOthers) is not null;
        var price = Price.Of(office, onClaim || !others ? RecorderField.Fraud : RecorderField.FraudOnOthers, HighestFraud, HighestFraud);
        var doubt = onClaim ? "" : others ? "; ask whether the office charges it on this paper"
            : price.Read ? "; that is the price for a mechanics lien, ask for this paper’s" : "";
        return Part("fraud", "Real estate fraud fee", price, request.Titles, "Gov. Code § 27388(a)(1)",
            $"{Times(request.Titles, "title", price.Taken)}{doubt}{NotRead(price)}");
    }

    private static FeePart HomesFee(RecorderOffice office, FeeRequest request)
    {
        var counted = office.ParcelsCounted ?? true;
        var most = request.Exemption is not null ? 0 : Math.Min(MostHomes, request.Titles * request.Parcels);
        var units = request.Exemption is not null ? 0 : counted ? most : Math.Min(MostHomes, request.Titles);
        var ask = request.Parcels > 1 && office.Asks(RecorderField.ParcelsCounted);
        return new FeePart("homes", "Building Homes and Jobs Act fee", Homes * units, "Gov. Code § 27388.1(a)(1)",
            $"{Dollars(Homes)} for each {(counted ? "title and parcel" : "title")}, {(units == MostHomes ? "three times, the most" : $"{units} of at most three")}; no exemption "
            + $"fits{(office.ParcelsCounted is null ? "; ask whether each parcel is counted" : "")}")
        { Ask = ask, Most = Homes * (ask ? most : units) };
    }

    private static FeePart CovenantFee(RecorderOffice office, FeeRequest request) =>
        Part("covenant", "Restrictive covenant fee", Price.Of(office, RecorderField.Covenant, 0, HighestCovenant),
            request.Exemption is not null ? 0 : 1, "Gov. Code § 27388.2", "taken once, for the first page");

    private static FeePart NonstandardPages(FeeRequest request) =>
        new("nonstandard", "Page of another size", request.NonstandardPages > 0 ? Nonstandard * request.Pages : 0,
            "Gov. Code § 27361(a)(2)",
            $"{Times(request.Pages, "page", Nonstandard)}, because one is not 8½ by 11 inches");

    private static FeePart PenaltyPrint(FeeRequest request) =>
        new("penalty-print", "Penalty print", request.PenaltyPages, "Gov. Code § 27361(a)(1)", Times(request.PenaltyPages, "page", 1));

    private static FeePart ManyNames(RecorderOffice office, FeeRequest request)
    {
        var groups = request.Names > 10 ? (request.Names - 10 + 9) / 10 : 0;
        var price = Price.Of(office, RecorderField.NamesPerTen, 1, HighestNames);
        return Part("names", "More than ten names", price, groups, "Gov. Code § 27361.8",
            $"{Times(groups, "additional group of ten", price.Taken)}, for {request.Names} names");
    }

    private static FeePart ManyReferences(RecorderOffice office, FeeRequest request)
    {
        var further = Math.Max(0, request.References - 1);
        var price = Price.Of(office, RecorderField.FurtherReference, 1, HighestReference);
        return Part("references", "References to recorded papers", price, further, "Gov. Code § 27361.2",
            Times(further, "additional reference", price.Taken));
    }

    private static FeePart LienNotice(RecorderOffice office, FeeRequest request)
    {
        var groups = request.NamesAtEachAddress.Sum(n => (n + office.NoticeGroup - 1) / office.NoticeGroup);
        var first = Price.Of(office, RecorderField.NoticeFirst, 0, HighestNotice);
        var next = office.Dollars(RecorderField.NoticeNext) is null ? first
            : Price.Of(office, RecorderField.NoticeNext, 0, HighestNotice);
        return new FeePart("lien-notice", "Recorder’s notice of involuntary lien", OfGroups(groups, first.Taken, next.Taken),
            "Gov. Code §§ 27297.5, 27387",
            $"{Dollars(first.Taken)} for the first"
            + (groups == 2 ? $", {Dollars(next.Taken)} for the second"
                : groups > 2 ? $", {Dollars(next.Taken)} for each of {groups - 1} more" : "")
            + (request.ServedWithCertificateOfMailing ? ""
                : "; not charged if the office accepts the claim’s proof of service by registered or certified mail"))
        { Ask = first.Ask || next.Ask, Most = OfGroups(groups, first.Most, next.Most) };
    }

    private static decimal OfGroups(int groups, decimal first, decimal next) => groups == 0 ? 0 : first + (next * (groups - 1));

    private static FeePart Conformed(RecorderOffice office, FeeRequest request)
    {
        var each = office.Dollars(RecorderField.ConformedPerPage) is not null;
        var price = Price.Of(office, each ? RecorderField.ConformedPerPage : RecorderField.ConformedCopy, 0, HighestCopy);
        return Part("conformed-copy", "Conformed copy", price, !request.ConformedCopy ? 0 : each ? request.Pages : 1, "county price",
            each ? Times(request.Pages, "page", price.Taken) : "for one copy");
    }

    private static FeePart Part(string id, string words, Price price, int count, string section, string why) =>
        new(id, words, price.Taken * count, section, why) { Ask = price.Ask, Most = price.Most * count };

    private static string Times(int count, string unit, decimal price) =>
        $"{count} {Several(count, unit)} at {Dollars(price)}";

    private static string Several(int count, string unit) => count == 1 ? unit
        : unit.Contains(" of ", StringComparison.Ordinal) ? unit.Replace(" of ", "s of ", StringComparison.Ordinal) : unit + "s";

    private static string NotRead(Price price) =>
        (price.Read ? "" : ". No fee found for this office; the highest fee of any county is used")
        + (price.UnderTheBill > 0 ? $"; {Dollars(price.Taken - price.UnderTheBill)} if a bill of 2026 (AB 2224) is not law" : "");
}
