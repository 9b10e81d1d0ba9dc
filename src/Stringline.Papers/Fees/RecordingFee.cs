using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Fees;

/// <summary>
/// Recording fees of a paper that is recorded against real property (Gov. Code §§ 27361-27361.8, 27388-27388.2).
/// Where an office's price was not read, the highest the statutes allow stands in: a short cheque turns a paper back.
/// </summary>
public static class RecordingFee
{
    /// <summary>Highest base: $10 (§ 27361(a)) and five county additions of $1 (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).</summary>
    public const decimal HighestBase = 15;

    /// <summary>The page alone, of any county: not more than $10 (Gov. Code § 27361(a)(1)).</summary>
    private const decimal RecordingAlone = 10;

    /// <summary>Each further page: not more than $3 (Gov. Code § 27361(a)(1)).</summary>
    public const decimal HighestExtraPage = 3;

    /// <summary>Fraud fee: not more than $10 (Gov. Code § 27388(a)(1)).</summary>
    public const decimal HighestFraud = 10;

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
        return new FeeEstimate(office, [.. parts.Where(p => p.Amount > 0)]) { Exemption = request.Exemption,
            WhatCouldChangeIt = FeeDoubts.Of(office, request) };
    }

    private static FeePart FirstPage(RecorderOffice office, FeeRequest request)
    {
        var price = office.Base ?? HighestBase;
        return new FeePart("base", "Recording, first page", price * request.Titles,
            request.Titles > 1 ? "Gov. Code §§ 27361, 27361.1, 27361.4" : "Gov. Code §§ 27361, 27361.4",
            Times(request.Titles, "title", price) + Made(price)
            + (request.Titles > 1 ? "; a further title is charged as a further paper" : "") + NotRead(office.Base));
    }

    /// <summary>
    /// What the base is made of: $10 at most for the page, and the county's own additions of $1 (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    private static string Made(decimal price) => price > RecordingAlone
        ? $", {Dollars(price - RecordingAlone)} of it the county’s"
        : "";

    private static FeePart ExtraPages(RecorderOffice office, FeeRequest request)
    {
        var price = office.ExtraPage ?? HighestExtraPage;
        return new FeePart("extra-pages", "Further pages", price * (request.Pages - 1), "Gov. Code § 27361(a)(1)",
            $"{Times(request.Pages - 1, "page", price)}, beyond the first{NotRead(office.ExtraPage)}");
    }

    private static FeePart FraudFee(RecorderOffice office, FeeRequest request)
    {
        var onClaim = request.Paper == RecordedPaperKind.ClaimOfLien;
        var price = (onClaim ? office.Fraud : office.FraudOnOthers ?? office.Fraud) ?? HighestFraud;
        var doubt = onClaim ? "" : office.FraudOnOthers is not null ? "; whether the office’s list names this paper was not read"
            : office.Fraud is not null ? "; the price read is that on a mechanics lien" : "";
        return new FeePart("fraud", "Real estate fraud fee", price * request.Titles, "Gov. Code § 27388(a)(1)",
            $"{Times(request.Titles, "title", price)}{doubt}{NotRead(office.Fraud)}");
    }

    private static FeePart HomesFee(RecorderOffice office, FeeRequest request)
    {
        var counted = office.ParcelsCounted ?? true;
        var units = request.Exemption is not null ? 0 : Math.Min(MostHomes, request.Titles * (counted ? request.Parcels : 1));
        return new FeePart("homes", "Building Homes and Jobs Act fee", Homes * units, "Gov. Code § 27388.1(a)(1)",
            $"{Times(units, counted ? "title and parcel" : "title", Homes)}, at most three; no exemption "
            + $"fits{(office.ParcelsCounted is null ? "; whether parcels are counted was not read" : "")}");
    }

    private static FeePart CovenantFee(RecorderOffice office, FeeRequest request) =>
        new("covenant", "Restrictive covenant fee", request.Exemption is not null ? 0 : office.Covenant ?? 0, "Gov. Code § 27388.2",
            "taken once, for the first page");

    private static FeePart NonstandardPages(FeeRequest request) =>
        new("nonstandard", "Page of another size", request.NonstandardPages > 0 ? Nonstandard * request.Pages : 0,
            "Gov. Code § 27361(a)(2)",
            $"{Times(request.Pages, "page", Nonstandard)}, because one is not 8½ by 11 inches");

    private static FeePart PenaltyPrint(FeeRequest request) =>
        new("penalty-print", "Penalty print", request.PenaltyPages, "Gov. Code § 27361(a)(1)", Times(request.PenaltyPages, "page", 1));

    private static FeePart ManyNames(RecorderOffice office, FeeRequest request)
    {
        var groups = request.Names > 10 ? (request.Names - 10 + 9) / 10 : 0;
        var price = office.NamesPerTen ?? 1;
        return new FeePart("names", "More than ten names", price * groups, "Gov. Code § 27361.8",
            $"{Times(groups, "further ten names", price)}, for {request.Names} names");
    }

    private static FeePart ManyReferences(RecorderOffice office, FeeRequest request)
    {
        var further = Math.Max(0, request.References - 1);
        var price = office.FurtherReference ?? 1;
        return new FeePart("references", "References to recorded papers", price * further, "Gov. Code § 27361.2",
            Times(further, "further reference", price));
    }

    private static FeePart LienNotice(RecorderOffice office, FeeRequest request)
    {
        var groups = request.NamesAtEachAddress.Sum(n => (n + office.NoticeGroup - 1) / office.NoticeGroup);
        var first = office.NoticeFirst ?? 0;
        var next = office.NoticeNext ?? first;
        var amount = groups == 0 ? 0 : first + (next * (groups - 1));
        return new FeePart("lien-notice", "Recorder's notice of involuntary lien", amount, "Gov. Code §§ 27297.5, 27387",
            $"{Dollars(first)} for the first"
            + (groups > 1 ? $", {Dollars(next)} for each of {groups - 1} more" : "")
            + (request.ServedWithCertificateOfMailing ? ""
                : "; falls away if the office takes the proof of service by registered or certified mail in the claim instead"));
    }

    private static FeePart Conformed(RecorderOffice office, FeeRequest request)
    {
        var amount = request.ConformedCopy ? (office.ConformedCopy ?? 0) + ((office.ConformedPerPage ?? 0) * request.Pages) : 0;
        return new FeePart("conformed-copy", "Conformed copy", amount, "county price",
            office.ConformedPerPage is { } each ? Times(request.Pages, "page", each) : "for one copy");
    }

    private static string Times(int count, string unit, decimal price) =>
        $"{count} {unit}{(count == 1 || unit.EndsWith('s') ? "" : "s")} at {Dollars(price)}";

    private static string NotRead(decimal? price) =>
        price is null ? "; the office's price was not read, this is the most the statute allows" : "";
}
