using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Places;

/// <summary>Compares the county that a job file names with the site's ZIP and city. It suggests and asks; it fills nothing in.</summary>
public static class SiteCounty
{
    /// <summary>Id of the finding.</summary>
    public const string FindingId = "site.county";

    /// <summary>Compares.</summary>
    public static CountyAnswer Of(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        var city = site.City?.Trim();
        if (string.IsNullOrWhiteSpace(site.Zip))
            return string.IsNullOrEmpty(city)
                ? new CountyAnswer.NotCompared("The file holds neither ZIP nor city.") : OfCity(site.County, city);
        if (FiveDigits(site.Zip) is not { } zip)
            return new CountyAnswer.NotCompared($"\"{site.Zip.Trim()}\" is not written as a ZIP, such as 95695 or 95695-1234.");
        if (ZipTable.Find(zip) is not { } place)
            return new CountyAnswer.NotCompared($"ZIP {zip} is not in the table of California's ZIPs.");
        var by = $"ZIP {zip}";
        if (!place.Counties.Contains(site.County))
            return new CountyAnswer.DoesNotFit(by, place.Counties);
        if (place.Counties.Count > 1)
            return new CountyAnswer.Straddles(by, place.Counties);
        // The ZIP fits; a city that is known only in other counties says that one of the two is mistaken.
        return city is { Length: > 0 } && OfCity(site.County, city) is CountyAnswer.DoesNotFit clash ? clash : new CountyAnswer.Fits(by);
    }

    /// <summary>The question for a person, as a finding beside those of the law; null where the county fits.</summary>
    public static Finding? Question(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        const string where = "record where the land lies, and in both counties where it lies in both";
        return Of(site) switch
        {
            CountyAnswer.Fits => null,
            CountyAnswer.Straddles straddles => Asked(
                Reason.Of(Sections, $"{straddles.By} lies in {List(straddles.Counties, "and")} County by our tables; the file "
                    + $"says {site.County}."),
                $"Which county does the site lie in: {List(straddles.Counties, "or")}? Look at a map or the assessor's roll; {where}."),
            CountyAnswer.DoesNotFit other => Asked(
                Reason.Of(Sections, $"The file says {site.County} County, but {other.By} lies in {List(other.Counties, "and")} County by "
                    + $"our tables."),
                $"Which county does the site lie in: {site.County}, as the file says, "
                    + $"or {List(other.Counties, "or")}, as {other.By} suggests? Look at a map or the assessor's roll; {where}."),
            CountyAnswer.NotCompared not => Asked(
                Reason.Of(Sections, $"The county, {site.County}, could not be compared with the site's ZIP. {not.Why}"),
                $"What is the site's ZIP, and does the site lie in {site.County} County? Look at a map or the assessor's roll; {where}."),
            _ => throw new InvalidOperationException("Not a case of the answer."),
        };
    }

    /// <summary>Recorded in the county in which the land lies; the county recorder is that of the county where the site lies.</summary>
    private const string Sections = "Civ. Code §§ 1169, 8060";

    private static Finding Asked(Reason why, Sentence question) => new()
    {
        Id = FindingId,
        Title = "County of the site",
        Standing = Standing.InDoubt,
        Why = [why],
        Questions = [new Question(question)],
    };

    private static CountyAnswer OfCity(string county, string city)
    {
        var counties = ZipTable.CountiesOf(city);
        if (counties.Count == 0)
            return new CountyAnswer.NotCompared($"{city} is not a place by which the table calls a ZIP.");
        if (!counties.Contains(county))
            return new CountyAnswer.DoesNotFit(city, counties);
        return counties.Count == 1 ? new CountyAnswer.Fits(city) : new CountyAnswer.Straddles(city, counties);
    }

    private static string? FiveDigits(string written)
    {
        var zip = written.Trim();
        if (zip.StartsWith("CA ", StringComparison.OrdinalIgnoreCase))
            zip = zip[3..].TrimStart();
        var five = zip.Length >= 5 && zip[..5].All(char.IsAsciiDigit);
        var rest = five ? zip[5..] : "";
        return five && (rest.Length == 0 || (rest.Length == 5 && rest[0] == '-' && rest[1..].All(char.IsAsciiDigit))) ? zip[..5] : null;
    }

    private static string List(IReadOnlyList<string> counties, string word) => counties.Count switch
    {
        1 => counties[0],
        _ => $"{string.Join(", ", counties.Take(counties.Count - 1))} {word} {counties[^1]}",
    };
}
