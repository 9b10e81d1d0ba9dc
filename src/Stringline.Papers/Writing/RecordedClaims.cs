using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Indexing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>A claim of lien as recorded: what a later paper says to name it.</summary>
/// <param name="On">Day of recording; null on a draft without one.</param>
/// <param name="Instrument">Recorder's instrument number.</param>
/// <param name="Amount">The demand it states, dollars and cents.</param>
internal sealed record NamedClaim(LocalDate? On, string? Instrument, decimal? Amount);

/// <summary>
/// Finds the recorded claim that a paper is about. A paper that changes or releases it states its number (Gov. Code § 27361.6).
/// </summary>
internal static class RecordedClaims
{
    /// <summary>
    /// The claim recorded last, or the one whose instrument number was named; what is missing is a reason against the paper.
    /// </summary>
    public static NamedClaim Of(Matter matter, string section)
    {
        if (Chosen(matter) is not { } claim)
        {
            matter.NotEntered("claim-recorded", "no-claim-recorded",
                Sentence.Of(matter.Options.Number is null ? "No recorded claim of lien is entered."
                : "No recorded claim with that instrument number is entered."),
                $"Enter it as {new KindName("claim-recorded")} with its day, amount and instrument number.", section);
            return new NamedClaim(null, null, null);
        }

        return Of(matter, claim, section);
    }

    /// <summary>The claim recorded last, or the one whose instrument number was named; null where there is none.</summary>
    public static ClaimRecorded? Chosen(Matter matter) => matter.Options.Number is { } number
        ? matter.Known.All<ClaimRecorded>().LastOrDefault(c => Clean(c.Instrument) == Clean(number))
        : matter.Last<ClaimRecorded>();

    /// <summary>That claim; what is missing to name it is a reason against the paper.</summary>
    public static NamedClaim Of(Matter matter, ClaimRecorded claim, string section)
    {
        var day = claim.On is DayFact.Exact on ? on.Day : (LocalDate?)null;
        if (day is null)
        {
            matter.Refuse("recorded-day-missing", Place.Of(claim, "on"), $"The day of recording is not exact.",
                $"Enter the day on the recorder's stamp.", section);
        }

        var instrument = matter.Need(claim.Instrument, "instrument-missing", Place.Of(claim, "instrument"),
            $"Add the recorder's instrument number from the stamped copy: a paper that changes or releases a recorded one must state it.",
            "Gov. Code § 27361.6");
        return new NamedClaim(day, instrument, claim.Amount);
    }

    /// <summary>
    /// The claim in words: <c>recorded on June 1, 2026, as instrument no. 2026-0012345 in the Official Records of Yolo County,
    /// California</c>.
    /// </summary>
    public static string Words(NamedClaim claim, Matter matter) =>
        $"recorded on {(claim.On is { } day ? Day(day) : "______________")}, as instrument no. {claim.Instrument ?? "______________"} in "
            + $"the Official Records of {CountyWords(matter)}, California";

    /// <summary>The county in words.</summary>
    public static string CountyWords(Matter matter) => matter.Facts.County switch
    {
        null => "the county",
        "San Francisco" => "the City and County of San Francisco",
        var county => $"{county} County",
    };

    /// <summary>The names of the owners whose title the paper touches (Gov. Code § 27288.1); none is a reason against it.</summary>
    public static IReadOnlyList<string?> Owners(Matter matter)
    {
        if (matter.Facts.Owners.Count > 0)
            return [.. matter.Facts.Owners.Select(OwnerLines)];
        matter.Refuse("owner-missing", Place.Parties, $"No party with capacity {new FileWord(PartyCapacity.Owner)} is there.",
            $"Add the owner with the name on the deed, or as the recorded claim has it: the recorder indexes it.", "Gov. Code § 27288.1");
        return [null];
    }

    /// <summary>An owner's name, and how title is held where the name alone would leave out one to be indexed.</summary>
    public static string OwnerLines(Party owner) =>
        $"{OneLine(Clean(owner.Name) ?? "")}{(IndexNames.NeedsTitleWords(owner) ? $"\nTitle held by {IndexNames.TitleWords(owner)}" : "")}";

    /// <summary>The return block of the claimant; a missing name or address is a reason against the paper.</summary>
    public static Layout.ReturnBlock Return(Matter matter) => new(
        matter.Need(matter.Facts.Claimant, "claimant-name-missing", new Place.OfHead("claimant.name"), $"Add the claimant's full name.",
            "Gov. Code § 27361.6")
        ?? "",
        matter.Need(matter.Facts.Address, "claimant-address-missing", new Place.OfHead("claimant.address"),
            $"Add the claimant's address: the recorder sends the paper back there.", "Gov. Code § 27361.6") ?? "");
}
