using Stringline.Law.Recording;
using Stringline.Papers.Counter;
using Stringline.Papers.Writing;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>The steps with a claim in their order, from signing to what comes back from the counter (Civ. Code § 8416).</summary>
internal static class ClaimSteps
{
    /// <summary>
    /// The steps: with the mailing where the file shows none; one that amends an earlier claim gives no later day to sue.
    /// </summary>
    public static IReadOnlyList<string> Of(StillToServe serve, RecorderOffice office, int pages, Amendment? amends) =>
    [
        .. serve.Head is null ? Served(serve) : serve.Steps,
        $"Hand in two originals, {pages} page{(pages == 1 ? "" : "s")} each, signed in ink, one side, 8½ by 11 inches "
            + "(Gov. Code § 27201(b)(1)): one to be recorded, one to be stamped. No notary, no acknowledgment page (Civ. Code § 8416(b)). "
            + "Anyone may "
            + "carry them.",
        $"Bring back the stamped copy, the instrument number with the date, and the receipt. {OfficeBlocks.CopyToBringBack(office)} "
            + $"{EntryName.Enter("claim-recorded")}number, date and amount. "
            + (amends is null ? "The time to sue runs from that date."
                : $"Plan to sue by {(amends.SueBy is { } day ? $"{PaperText.DayOfWeek(day)}, " : "")}the day of the first claim."),
    ];

    private static string[] Served(StillToServe serve) =>
    [
        "See that claim and verification are signed in ink on both originals, with date and place. If the claim was not signed before the "
            + "copy was mailed, sign it, mail a copy again, and enter that mailing.",
        "See that the affidavit’s blanks (who mailed, where) are filled in and the person who mailed has signed it, on both originals."
            + (serve.ByCertificate ? " Keep the stamped certificate of mailing with the file." : ""),
    ];
}
