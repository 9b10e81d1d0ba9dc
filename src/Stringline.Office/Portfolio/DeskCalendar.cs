using Stringline.Tables.Calendar;
using Stringline.Store;

namespace Stringline.Office.Portfolio;

/// <summary>The days to act of the jobs of a store as a calendar; for the command and for a feed of the desk.</summary>
internal static class DeskCalendar
{
    /// <summary>An iCalendar file of every step that is no watch, as the last assessment found it.</summary>
    /// <param name="journal">The store.</param>
    /// <param name="filter">Which jobs and remedies.</param>
    /// <param name="asked">The day on which the question is asked.</param>
    /// <param name="alarms">Days before on which alarms sound.</param>
    public static byte[] Of(IJournal journal, StepFilter filter, LocalDate asked, IReadOnlyList<int> alarms)
    {
        var revisions = new Dictionary<long, long>();
        return CalendarText.Write(
            DeskSheet.All(journal, filter).Where(line => !line.Step.Watch).OrderBy(line => line.Step.ActBy).ThenBy(line => line.Job)
                .Select(line =>
                new CalendarDay(line.Key, line.Step.What, line.Step.ActBy, line.Step.Do, line.Name, Revision(line.Job))
                {
                    Stakes = line.Step.Stakes,
                    Outlook = line.Step.Outlook,
                    Remedy = line.Step.Remedy,
                    County = line.County,
                    Section = line.Step.Section,
                    Reading = line.Step.Reading,
                }),
            asked,
            alarms);

        long Revision(long job) =>
            revisions.TryGetValue(job, out var known) ? known : revisions[job] = journal.ReadAssessed(job)?.Sequence ?? 0;
    }
}
