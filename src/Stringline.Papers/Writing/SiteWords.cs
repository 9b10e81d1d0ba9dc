using Stringline.Law.Facts;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>Where the work is and for whom, in the words of a paper.</summary>
internal static class SiteWords
{
    /// <summary>The site's lines; a null leaves a blank for what describes it.</summary>
    public static IEnumerable<string?> Of(PrintedFacts facts)
    {
        IEnumerable<string?> known = new[]
        {
            facts.Street,
            facts.OnStructure,
            facts.County is { } county ? (county == "San Francisco" ? "City and County of San Francisco" : $"County of {county}")
                + ", State of California" : null,
            facts.Apn is { } apn ? $"Assessor’s parcel {(facts.Parcels is { Count: > 1, Unread: null } ? "numbers" : "number")}: "
                + $"{OneLine(apn)}" : null,
            facts.Legal is { } legal ? $"Legal description: {legal}" : null,
        }.OfType<string>();

        // County and parcel number alone do not describe the site: they stand under a blank for what does.
        return facts.Street is null && facts.Legal is null ? [null, .. known] : known;
    }

    /// <summary>The one who hired the claimant, or to whom it furnished: name, capacity, address.</summary>
    public static string Hirer(Party hirer)
    {
        var name = Addressees.WithHolders(hirer, $"{OneLine(Clean(hirer.Name) ?? "")} ({CapacityWords.Of(hirer)})");
        return Clean(hirer.Address) is { } address ? $"{name}\n{OneLine(address)}" : name;
    }
}
