using System.Text.RegularExpressions;
using Stringline.Law.Numbers;
using static Stringline.Law.Counting.LawText;

namespace Stringline.Law.Recording;

/// <summary>What could change a fee at the counter. The recorder decides; a short check turns a paper back.</summary>
internal static partial class FeeDoubts
{
    /// <summary>The doubts, those about this office first.</summary>
    public static IReadOnlyList<string> Of(RecorderOffice office, FeeRequest request) =>
    [
        .. Parcels(office, request), .. Notes(office, request), .. NotRead(office, request),
        .. Counting(office, request), .. Archive(office), .. Bill(office),
        $"A printed back counts as a page; a page of another size costs {office.ByLaw(Number.PageOfAnotherSize)} for every page "
        + "(Gov. Code § 27361(a)(2)).",
    ];

    // The dollar for archives or a trusted system is in the older text of § 27361.4(a) and not in the one since 2026 (both read in copies).
    private static IEnumerable<string> Archive(RecorderOffice office)
    {
        if (office.Fact(RecorderField.Base) is { } fact && office.Numbers.Ends(Number.ArchiveDollar) is { } last && !(fact.PageDay > last))
        {
            yield return $"The first page’s price comes from a page older than {last.PlusDays(1).Year} or without a date: "
                + $"{office.Numbers.On(Number.ArchiveDollar, last).Spelled} of it, for archives, may have ended "
                + $"on {LongDay(last.PlusDays(1))} "
                + "(Gov. Code § 27361.4(a)).";
        }
    }

    private static IEnumerable<string> Bill(RecorderOffice office)
    {
        if (office.ByBill(RecorderField.Base) is not { From: { } begins } first
            || office.ByBill(RecorderField.ExtraPage) is not { } further)
            yield break;
        var prices = $"By a bill of 2026 (AB 2224, not confirmed as law) ${first.Value} for the first page and ${further.Value} for each "
            + "additional page may apply";
        yield return "Prices change, often on January 1 or July 1. "
            + (office.StatuteOf(RecorderField.Base).Count > 1
                ? $"{prices} from {begins.Year}: they are figured in, and it may be less. "
                : $"Recorded in {begins.Year} or later: ask. {prices}. ")
            + $"The surcharges for page size, print, more than {office.ByLaw(Number.NamesInAGroup).Spelled} names and additional "
            + $"references "
            + "may be gone (Gov. Code § 27361).";
    }

    // What an office says of its notice of a lien has no place with a paper that brings none.
    private static IEnumerable<string> Notes(RecorderOffice office, FeeRequest request)
    {
        foreach (var note in office.Notes)
        {
            var said = request.NamesAtEachAddress.Count > 0 ? note : string.Join(' ', SentenceEnd().Split(note)
                .Where(s => !s.Contains("otice fee", StringComparison.Ordinal) && !s.Contains("involuntary", StringComparison.Ordinal)));
            if (said.Length > 0)
                yield return $"{office.County}: {said.Replace("each further", "each additional", StringComparison.Ordinal)}";
        }
    }

    [GeneratedRegex(@"(?<=\.) (?=\p{Lu})", RegexOptions.CultureInvariant)]
    private static partial Regex SentenceEnd();

    private static IEnumerable<string> Parcels(RecorderOffice office, FeeRequest request)
    {
        if (request.ParcelsTold is { Unread: { } unread })
        {
            yield return $"How many parcels “{unread.ReplaceLineEndings(", ")}” names is not clear: the homes fee is figured at its most, "
                + $"{office.ByLaw(Number.MostHomesFees).Count} times. Count them, or list each number (Gov. Code § 27388.1(a)(1)).";
        }
        else if (request.ParcelsTold is { Ranged: true })
        {
            yield return $"{request.Parcels} parcels are counted from the range given: count them on the assessor’s map "
                + "(Gov. Code § 27388.1(a)(1)).";
        }
    }

    private static IEnumerable<string> NotRead(RecorderOffice office, FeeRequest request)
    {
        if (office.ParcelsCounted is null && request.Parcels > 1)
        {
            yield return $"The homes fee, {Money(office.ByLaw(Number.HomesFee).Value)} for each parcel or once for the title: figured for "
                + $"each parcel "
                + "(Gov. Code § 27388.1(a)(1)).";
        }

        if (office.Fact(RecorderField.NoticeFirst) is null && request.NamesAtEachAddress.Count > 0)
        {
            yield return "A fee for the recorder’s notice of involuntary lien, at a price not found: up to "
                + $"{Money(HighestPrinted.Notice)} for each name in other counties (Gov. Code §§ 27297.5, 27387).";
        }

        if (request.Exemption is null)
        {
            yield return office.Dollars(RecorderField.Covenant) is { } covenant
                ? $"The restrictive covenant fee of {Money(covenant)}: ask whether it is still charged from 2027 (Gov. Code § 27388.2)."
                : $"A {office.ByLaw(Number.CovenantFee)} restrictive covenant fee where the county adopted it; ask whether it is still "
                    + $"charged "
                + "from 2027 (Gov. Code § 27388.2).";
        }
    }

    private static IEnumerable<string> Counting(RecorderOffice office, FeeRequest request)
    {
        var group = office.ByLaw(Number.NamesInAGroup).Spelled;
        yield return $"{(request.Names == 1 ? "1 name is" : $"{request.Names} names are")} counted; an aka or dba may count too, and each "
            + $"group of {group} after the first {group} costs more (Gov. Code § 27361.8).";
        if (request.References > 0)
            yield return "Each recorded paper referred to beyond the first costs more (Gov. Code § 27361.2).";
        if (request.Exemption is { } exemption)
        {
            yield return $"The exemption from the homes fee counts only if its reason is on the first page or a cover page; else "
                + $"{Money(office.ByLaw(Number.HomesFee).Value)} are charged and may not come back ({exemption.Section}).";
        }
    }
}
