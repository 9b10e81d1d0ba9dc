using System.Collections.Concurrent;
using Stringline.Store;

namespace Stringline.Office.Portfolio;

/// <summary>The sums of the desk's page.</summary>
/// <param name="Totals">How much lies in each section.</param>
/// <param name="Watches">Searches due, by county.</param>
/// <param name="Choices">What can be filtered by.</param>
internal sealed record DeskSums(IReadOnlyList<StepTotal> Totals, IReadOnlyList<WatchTotal> Watches, StepChoices Choices);

/// <summary>
/// Keeps the sums over all steps for as long as no step is written, by this program or another: they need every step to be looked at,
/// the rows that the page shows do not.
/// </summary>
internal sealed class DeskFigures(IJournal journal)
{
    private const int MostChoices = 300;
    private const int MostKept = 200;

    private readonly ConcurrentDictionary<(StepFilter Filter, LocalDate Today), (long Written, DeskSums Sums)> kept = new();

    /// <summary>The sums.</summary>
    /// <param name="filter">Over which steps.</param>
    /// <param name="ends">The last day of each section but the last; the first is today, the second the last day of this week.</param>
    public DeskSums Of(StepFilter filter, IReadOnlyList<LocalDate> ends)
    {
        // Read before the sums: what is written in between makes them be made again, never be kept too long.
        var written = journal.StepsWritten();
        var key = (filter, ends[0]);
        if (kept.TryGetValue(key, out var last) && last.Written == written)
            return last.Sums;
        var sums = new DeskSums(journal.StepTotals(filter, ends), journal.Watches(filter, ends[1]), journal.Choices(MostChoices));
        if (kept.Count >= MostKept)
            kept.Clear();
        kept[key] = (written, sums);
        return sums;
    }
}
