using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Indexing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>To whom a notice goes: those the law names, or those named with the request.</summary>
internal static class Addressees
{
    /// <summary>How a notice of these parts is given.</summary>
    public const string Manner = Ways + " Mail counts from the day it is deposited (Civ. Code § 8116(b))." + Receipt;

    /// <summary>How a paper is served that must have arrived by its day: the day of deposit is no help.</summary>
    public const string MannerToArrive = Ways + " Allow for the mail: it must be there by the day." + Receipt;

    private const string Ways =
        "How: by hand; or by registered mail, certified mail, express mail, or overnight by an express service carrier; or left and mailed "
            + "as Code Civ. Proc. § 415.20 provides (Civ. Code §§ 8106, 8110). Not by ordinary first-class mail, e-mail or fax.";

    private const string Receipt =
        " Keep the postal or carrier’s receipt: without it the notice cannot be proved (Civ. Code § 8118(b)).";

    /// <summary>Those whom the law names.</summary>
    public static IReadOnlyList<Party> Of(Matter matter, IReadOnlyList<Recipient> recipients)
    {
        if (matter.Options.To.Count > 0)
            return WithAddress(matter, matter.Named(matter.Options.To), "Civ. Code § 8108");
        foreach (var recipient in recipients.Where(r => r.AnyOf.Count == 0))
        {
            matter.Refuse("recipient-missing", "parties", $"The file names no {recipient.Words}.",
                "Add the party, or the one reasonably believed to be it with \"reputed\": true. Ask the direct contractor, who must make "
                + "names and addresses available (Civ. Code § 8208).", recipient.Section);
        }

        return WithAddress(matter, [.. recipients.SelectMany(r => r.AnyOf).Distinct()], "Civ. Code § 8108");
    }

    /// <summary>The same parties; one without an address is a reason against the paper.</summary>
    public static IReadOnlyList<Party> WithAddress(Matter matter, IReadOnlyList<Party> parties, string section)
    {
        foreach (var party in parties.Where(p => matter.AddressOf(p) is null))
        {
            matter.Refuse("recipient-address-missing", $"{matter.PathOf(party)}.address", $"{OneLine(party.Name)} has no address.",
                "Add the residence or place of business, or the address on the contract, the building permit, the loan papers or the bond.",
                section);
        }

        return parties;
    }

    private const int Named = 5;

    /// <summary>Their names for a sheet; of many their number.</summary>
    public static string Names(IReadOnlyList<Party> to) => to.Count > Named ? $"the {to.Count} named above"
        : string.Join("; ", to.Select(p => OneLine(Clean(p.Name) ?? "")));

    /// <summary>The persons a notice is directed to, as its first lines.</summary>
    public static void Put(Leaf leaf, Matter matter, IReadOnlyList<Party> to, string? attention = null,
        Func<Party, string>? capacity = null)
    {
        leaf.Line("To", [.. to.Select(p => Lines(matter, p, attention, capacity ?? Service.CapacityOf)).DefaultIfEmpty(null)]);
    }

    /// <summary>The trustees of a trust or the representatives of an estate, who are the ones to receive; null for any other.</summary>
    public static string? HeldBy(Party party) =>
        party.HoldsTitleAs is { Form: TitleForm.Trust or TitleForm.Estate, Persons.Count: > 0 } ? IndexNames.TitleWords(party) : null;

    /// <summary>The line to the officer; null where the address has a line of its own.</summary>
    public static string? Attention(Matter matter, Party party, string? attention) =>
        matter.AddressOf(party) is { } address && (address.Contains("attention", StringComparison.OrdinalIgnoreCase)
            || address.Contains("attn", StringComparison.OrdinalIgnoreCase)) ? null : attention;

    private static string Lines(Matter matter, Party party, string? attention, Func<Party, string> capacity) =>
        $"{OneLine(Clean(party.Name) ?? "")}, {capacity(party)}{(HeldBy(party) is { } persons ? $"\n{persons}" : "")}"
        + (Attention(matter, party, attention) is { } line ? $"\n{line}" : "")
        + (matter.AddressOf(party) is { } address ? "\n" + OneLine(address) : "");
}
