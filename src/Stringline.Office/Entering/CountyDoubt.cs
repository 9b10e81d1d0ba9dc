using Stringline.Law.Facts;
using Stringline.Places;

namespace Stringline.Office.Entering;

/// <summary>
/// What is asked beside the county of a form where the site's ZIP or city speaks of another: a question that a person confirms, no refusal.
/// </summary>
/// <param name="Question">What is asked.</param>
/// <param name="Site">The site about which it is asked: what was confirmed of one site is no answer for another.</param>
internal sealed record CountyDoubt(string Question, string Site)
{
    /// <summary>The field in which the answer comes.</summary>
    public const string Field = "county-confirmed";

    /// <summary>The doubt; null where they do not disagree: a ZIP that lies in several counties is asked about on the job's page.</summary>
    public static CountyDoubt? Of(Site site) => SiteCounty.Of(site) switch
    {
        CountyAnswer.DoesNotFit other => Asked(
            site,
            $"{other.By} is in {Or(other.Counties)} County by our tables, not in {site.County}. The county decides the recorder."),
        _ => null,
    };

    /// <summary>Whether a person said of this very site that the county is right.</summary>
    /// <param name="answer">What came in the field.</param>
    public bool IsConfirmedBy(string? answer) => answer == Site;

    /// <summary>Whether another site says the same of county, ZIP and city.</summary>
    public bool IsAlso(Site other) => Named(other) == Site;

    /// <summary>What a person confirms.</summary>
    public string Confirmation => $"Yes, the site is in {Site.Split('|')[0]} County";

    private static CountyDoubt Asked(Site site, string question) => new(question + " Is that right?", Named(site));

    private static string Named(Site site) => string.Join('|', site.County, site.Zip?.Trim(), site.City?.Trim());

    private static string Or(IReadOnlyList<string> counties) =>
        counties.Count == 1 ? counties[0] : $"{string.Join(", ", counties.Take(counties.Count - 1))} or {counties[^1]}";
}
