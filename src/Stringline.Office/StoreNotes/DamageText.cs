using System.Globalization;
using Stringline.Office.Settings;
using Stringline.Store;

namespace Stringline.Office.StoreNotes;

/// <summary>What is said where something that is kept beside the journal was damaged.</summary>
internal static class DamageText
{
    /// <summary>That jobs were assessed anew.</summary>
    public static string Mended(long jobs) => string.Create(
        CultureInfo.InvariantCulture,
        $"What was kept of the {(jobs == 1 ? "assessment of one job" : $"assessments of {jobs:N0} jobs")} was damaged, and was made anew "
            + $"from the journal. `stringline store check` says whether anything else is damaged.");

    /// <summary>What was met while the portfolio was brought up to date, a line each.</summary>
    public static IEnumerable<string> Of(IJournal journal, Portfolio.Portfolio portfolio)
    {
        if (portfolio.Mended > 0)
            yield return Mended(portfolio.Mended);
        if (OfficeSettings.Of(journal).AreDamaged)
            yield return OfficeSettings.DamagedWords;
    }
}
