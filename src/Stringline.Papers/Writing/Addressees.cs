using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
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
            matter.Refuse("recipient-missing", Place.Parties, $"The file names no {recipient.Words}.",
                $"Add the party, or the one reasonably believed to be it with {new FieldSaid("reputed", "true")}. Ask the direct "
                    + $"contractor, who must make "
                + $"names and addresses available (Civ. Code § 8208).", recipient.Section);
        }

        return WithAddress(matter, [.. recipients.SelectMany(r => r.AnyOf).Distinct()], "Civ. Code § 8108");
    }

    /// <summary>The same parties; one without an address is a reason against the paper.</summary>
    public static IReadOnlyList<Party> WithAddress(Matter matter, IReadOnlyList<Party> parties, string section)
    {
        foreach (var party in parties.Where(p => matter.AddressOf(p) is null))
        {
            matter.Refuse("recipient-address-missing", Place.Of(matter.Job, party, "address"), $"{OneLine(party.Name)} has no address.",
                $"Add the residence or place of business, or the address on the contract, the building permit, the loan papers or the "
                    + $"bond.",
                section);
        }

        return parties;
    }

    private const int Named = 5;

    /// <summary>Their names for a sheet; of many their number.</summary>
    public static string Names(IReadOnlyList<Party> to) => to.Count > Named ? $"the {to.Count} named above"
        : string.Join("; ", to.Select(InSentence));

    /// <summary>The persons a notice is directed to, as its first lines.</summary>
    /// <param name="leaf">The notice.</param>
    /// <param name="matter">The matter.</param>
    /// <param name="to">The persons.</param>
    /// <param name="attention">The line to the officer who must receive it; null where none is named.</param>
    /// <param name="capacity">What they are to the notice; null takes the capacity on the job.</param>
    public static void Put(PaperBuilder leaf, Matter matter, IReadOnlyList<Party> to, Func<Party, string?>? attention = null,
        Func<Party, string>? capacity = null)
    {
        leaf.Line("To", [.. to.Select(p => Lines(matter, p, attention?.Invoke(p), capacity ?? CapacityWords.Of)).DefaultIfEmpty(null)]);
    }

    /// <summary>
    /// The trustees of a trust or the representatives of an estate, who are the ones to receive; null for any other, and where the name
    /// says as much.
    /// </summary>
    public static string? HeldBy(Party party) =>
        party.HoldsTitleAs is { Form: TitleForm.Trust or TitleForm.Estate, Persons.Count: > 0 } && IndexNames.NeedsTitleWords(party)
            ? IndexNames.TitleWords(party) : null;

    /// <summary>The name, and on a line of their own those who hold title for a trust or an estate.</summary>
    public static string NameLines(Party party) => WithHolders(party, OneLine(Clean(party.Name) ?? ""));

    /// <summary>The same behind a name that has its capacity with it.</summary>
    public static string WithHolders(Party party, string name) => HeldBy(party) is { } held ? $"{name}\n{held}" : name;

    /// <summary>
    /// The name within a sentence: of a trust or an estate the trustees or representatives, with what they hold title for.
    /// </summary>
    public static string InSentence(Party party) => HeldBy(party) ?? OneLine(Clean(party.Name) ?? "");

    private static string Lines(Matter matter, Party party, string? attention, Func<Party, string> capacity) =>
        WithHolders(party, $"{OneLine(Clean(party.Name) ?? "")}, {capacity(party)}")
        + (attention is null ? "" : $"\n{attention}")
        + (matter.AddressOf(party) is { } address ? "\n" + OneLine(address) : "");
}
