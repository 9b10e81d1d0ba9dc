using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>In which county a claim was recorded (Civ. Code § 8060).</summary>
internal static class WhereRecorded
{
    /// <summary>
    /// Whether it was recorded in a county in which the work "or part of it" lies; anywhere else a claim does nothing: Fontana Paving v.
    /// Hedley Brothers (1995) 38 Cal.App.4th 146. Open where it was recorded in another county than the site's and the file does not say
    /// whether the work reaches into others.
    /// </summary>
    [Rule("Civ. Code § 8060(b)")]
    public static Verdict WorkLiesThere(FactsAsOf facts, ClaimRecorded claim)
    {
        var site = facts.Job.Work.Site;
        if (claim.County is not { } county || county == site.County || site.AlsoIn.Contains(county))
            return Verdict.Yes;
        return site.AlsoIn.Count > 0 ? Verdict.No : Verdict.Open;
    }

    /// <summary>Why a claim recorded elsewhere does nothing, or may do nothing.</summary>
    public static Reason Why(FactsAsOf facts, ClaimRecorded claim) => WorkLiesThere(facts, claim) == Verdict.No
        ? Reason.NotApplied("Civ. Code § 8060(b)", $"A claim was recorded in {claim.County} County; no part of the work lies there, and a "
            + $"claim that is not recorded where some of it lies does nothing.", claim)
        : Reason.NotApplied("Civ. Code § 8060(b)", $"A claim was recorded in {claim.County} County; the site lies "
            + $"in {facts.Job.Work.Site.County} County. Unless part of the work lies in {claim.County} County too, that claim does "
            + $"nothing: record in {facts.Job.Work.Site.County} County inside the time.", claim);

    /// <summary>What is asked where that is open.</summary>
    public static Question Ask(ClaimRecorded claim) =>
        new($"Does part of the work lie in {claim.County} County?{HeadField.WorkSiteAlsoIn:aside}");
}
