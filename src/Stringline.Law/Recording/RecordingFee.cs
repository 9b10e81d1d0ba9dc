using Stringline.Law.Numbers;
using static Stringline.Law.Counting.LawText;
using static Stringline.Law.Recording.HighestPrinted;

namespace Stringline.Law.Recording;

/// <summary>
/// Recording fees of a paper that is recorded against real property (Gov. Code §§ 27361-27361.8, 27388-27388.2).
/// Where an office's price was not read, the highest that any county prints stands in: a short check turns a paper back.
/// </summary>
public static class RecordingFee
{
    /// <summary>Estimates the fee.</summary>
    /// <param name="office">Whose prices.</param>
    /// <param name="request">What is to be recorded; at least one page, title and parcel.</param>
    /// <exception cref="ArgumentOutOfRangeException">No page, title or parcel.</exception>
    public static FeeEstimate Of(RecorderOffice office, FeeRequest request)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Pages, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Titles, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Parcels, 1);
        request = request with { Parcels = Parcels(office, request) };
        IEnumerable<FeePart> parts =
        [
            FirstPage(office, request), ExtraPages(office, request), FraudFee(office, request), HomesFee(office, request),
            CovenantFee(office, request), NonstandardPages(office, request), PenaltyPages(office, request), ManyNames(office, request),
            ManyReferences(office, request), LienNotice(office, request), Conformed(office, request),
        ];
        IReadOnlyList<FeePart> all = [.. parts];
        var most = all.Sum(p => p.Most);
        var later = request.Until is { } until && office.On is { } on && until > on
            ? Of(office.OnDay(until), request with { Until = null }).AtMost : most;
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

    [Rule("Gov. Code § 27361(a)(1)")]
    [Rule("Gov. Code § 27361.1")]
    private static FeePart FirstPage(RecorderOffice office, FeeRequest request)
    {
        var price = Price.Capped(office, RecorderField.Base, Base, Base);
        return Part("base", "Recording, first page", price, request.Titles,
            request.Titles > 1 ? "Gov. Code §§ 27361, 27361.1, 27361.4" : "Gov. Code §§ 27361, 27361.4",
            Times(request.Titles, "title", price.Taken) + Made(office, price)
            + (request.Titles > 1 ? "; each additional title is charged as another paper" : "") + NotRead(price));
    }

    /// <summary>
    /// What the base is made of: $10 at most for the page, and the county's own additions of $1 (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    private static string Made(RecorderOffice office, Price price)
    {
        var own = price.Taken - price.UnderTheBill - office.ByLaw(Number.FirstPage).Value;
        return own > 0 ? $", {Money(own)} of it added by the county" : "";
    }

    [Rule("Gov. Code § 27361(a)(1)")]
    private static FeePart ExtraPages(RecorderOffice office, FeeRequest request)
    {
        var cap = office.ByLaw(Number.FurtherPage).Value;
        var price = Price.Capped(office, RecorderField.ExtraPage, cap, cap);
        return Part("extra-pages", "Additional pages", price, request.Pages - 1, "Gov. Code § 27361(a)(1)",
            $"{Times(request.Pages - 1, "page", price.Taken)}, beyond the first{NotRead(price)}");
    }

    [Rule("Gov. Code § 27388(a)(1)")]
    private static FeePart FraudFee(RecorderOffice office, FeeRequest request)
    {
        var onClaim = request.Paper == RecordedPaperKind.ClaimOfLien;
        var others = office.Dollars(RecorderField.FraudOnOthers) is not null;
        var cap = office.ByLaw(Number.FraudFee).Value;
        var price = Price.Of(office, onClaim || !others ? RecorderField.Fraud : RecorderField.FraudOnOthers, cap, cap);
        var doubt = onClaim ? "" : others ? "; ask whether the office charges it on this paper"
            : price.Read ? "; that is the price for a mechanics lien, ask for this paper’s" : "";
        return Part("fraud", "Real estate fraud fee", price, request.Titles, "Gov. Code § 27388(a)(1)",
            $"{Times(request.Titles, "title", price.Taken)}{doubt}{NotRead(price)}");
    }

    [Rule("Gov. Code § 27388.1(a)(1)")]
    private static FeePart HomesFee(RecorderOffice office, FeeRequest request)
    {
        var counted = office.ParcelsCounted ?? true;
        var (each, times) = (office.ByLaw(Number.HomesFee).Value, office.ByLaw(Number.MostHomesFees));
        var most = request.Exemption is not null ? 0 : Math.Min(times.Count, request.Titles * request.Parcels);
        var units = request.Exemption is not null ? 0 : counted ? most : Math.Min(times.Count, request.Titles);
        var ask = request.Parcels > 1 && office.Asks(RecorderField.ParcelsCounted);
        return new FeePart("homes", "Building Homes and Jobs Act fee", each * units, "Gov. Code § 27388.1(a)(1)",
            $"{Money(each)} for each {(counted ? "title and parcel" : "title")}, "
            + $"{(units == times.Count ? $"{times.Spelled} times, the most" : $"{units} of at most {times.Spelled}")}; no exemption fits"
            + (office.ParcelsCounted is null ? "; ask whether each parcel is counted" : ""))
        { Ask = ask, Most = each * (ask ? most : units) };
    }

    /// <summary>How many parcels are reckoned: where not all could be counted, so many as the fee is charged for at the most.</summary>
    [Rule("Gov. Code § 27388.1(a)(1)", Sure = Sure.OurReading)]
    private static int Parcels(RecorderOffice office, FeeRequest request) => request.ParcelsTold is { Unread: not null }
        ? Math.Max(office.ByLaw(Number.MostHomesFees).Count, request.Parcels) : request.Parcels;

    [Rule("Gov. Code § 27388.2")]
    private static FeePart CovenantFee(RecorderOffice office, FeeRequest request) =>
        Part("covenant", "Restrictive covenant fee", Price.Of(office, RecorderField.Covenant, 0, office.ByLaw(Number.CovenantFee).Value),
            request.Exemption is not null ? 0 : 1, "Gov. Code § 27388.2", "taken once, for the first page");

    [Rule("Gov. Code § 27361(a)(2)")]
    private static FeePart NonstandardPages(RecorderOffice office, FeeRequest request)
    {
        var each = office.ByLaw(Number.PageOfAnotherSize).Value;
        return new("nonstandard", "Page of another size", request.NonstandardPages > 0 ? each * request.Pages : 0,
            "Gov. Code § 27361(a)(2)", $"{Times(request.Pages, "page", each)}, because one is not 8½ by 11 inches");
    }

    [Rule("Gov. Code § 27361(a)(1)")]
    private static FeePart PenaltyPages(RecorderOffice office, FeeRequest request)
    {
        var each = office.ByLaw(Number.PenaltyPrint).Value;
        return new("penalty-print", "Penalty print", each * request.PenaltyPages, "Gov. Code § 27361(a)(1)",
            Times(request.PenaltyPages, "page", each));
    }

    [Rule("Gov. Code § 27361.8")]
    private static FeePart ManyNames(RecorderOffice office, FeeRequest request)
    {
        var group = office.ByLaw(Number.NamesInAGroup);
        var groups = Math.Max(0, (request.Names - 1) / group.Count);
        var price = Price.Of(office, RecorderField.NamesPerTen, office.ByLaw(Number.GroupOfNames).Value, Names);
        return Part("names", $"More than {group.Spelled} names", price, groups, "Gov. Code § 27361.8",
            $"{Times(groups, $"additional group of {group.Spelled}", price.Taken)}, for {request.Names} names");
    }

    [Rule("Gov. Code § 27361.2")]
    private static FeePart ManyReferences(RecorderOffice office, FeeRequest request)
    {
        var further = Math.Max(0, request.References - office.ByLaw(Number.FreeReferences).Count);
        var price = Price.Of(office, RecorderField.FurtherReference, office.ByLaw(Number.FurtherReference).Value, Reference);
        return Part("references", "References to recorded papers", price, further, "Gov. Code § 27361.2",
            Times(further, "additional reference", price.Taken));
    }

    [Rule("Gov. Code § 27297.5")]
    private static FeePart LienNotice(RecorderOffice office, FeeRequest request)
    {
        var groups = request.NamesAtEachAddress.Sum(n => (n + office.NoticeGroup - 1) / office.NoticeGroup);
        var first = Price.Of(office, RecorderField.NoticeFirst, 0, Notice);
        var next = office.Dollars(RecorderField.NoticeNext) is null ? first
            : Price.Of(office, RecorderField.NoticeNext, 0, Notice);
        return new FeePart("lien-notice", "Recorder’s notice of involuntary lien", OfGroups(groups, first.Taken, next.Taken),
            "Gov. Code §§ 27297.5, 27387",
            $"{Money(first.Taken)} for the first"
            + (groups == 2 ? $", {Money(next.Taken)} for the second"
                : groups > 2 ? $", {Money(next.Taken)} for each of {groups - 1} more" : "")
            + (request.ServedWithCertificateOfMailing ? ""
                : "; not charged if the office accepts the claim’s proof of service by registered or certified mail"))
        { Ask = first.Ask || next.Ask, Most = OfGroups(groups, first.Most, next.Most) };
    }

    private static decimal OfGroups(int groups, decimal first, decimal next) => groups == 0 ? 0 : first + (next * (groups - 1));

    private static FeePart Conformed(RecorderOffice office, FeeRequest request)
    {
        var each = office.Dollars(RecorderField.ConformedPerPage) is not null;
        var price = Price.Of(office, each ? RecorderField.ConformedPerPage : RecorderField.ConformedCopy, 0, Copy);
        return Part("conformed-copy", "Conformed copy", price, !request.ConformedCopy ? 0 : each ? request.Pages : 1, "county price",
            each ? Times(request.Pages, "page", price.Taken) : "for one copy");
    }

    private static FeePart Part(string id, string words, Price price, int count, string section, string why) =>
        new(id, words, price.Taken * count, section, why) { Ask = price.Ask, Most = price.Most * count };

    private static string Times(int count, string unit, decimal price) =>
        $"{count} {Several(count, unit)} at {Money(price)}";

    private static string Several(int count, string unit) => count == 1 ? unit
        : unit.Contains(" of ", StringComparison.Ordinal) ? unit.Replace(" of ", "s of ", StringComparison.Ordinal) : unit + "s";

    private static string NotRead(Price price) =>
        (price.Read ? "" : ". No fee found for this office; the highest fee of any county is used")
        + (price.UnderTheBill > 0 ? $"; {Money(price.Taken - price.UnderTheBill)} if a bill of 2026 (AB 2224) is not law" : "");
}
