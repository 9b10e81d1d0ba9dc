using Stringline.Store;
using Stringline.Tables;

namespace Stringline.Office.DemoOffice;

/// <summary>The store of the demo office.</summary>
internal static class DemoStore
{
    /// <summary>Makes the store of the demo office for a day, where it is not there yet.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="today">The day to which its jobs are relative.</param>
    /// <param name="jobs">How many jobs.</param>
    /// <param name="clock">The clock.</param>
    /// <returns>The store's path.</returns>
    public static Outcome<string> Make(string folder, LocalDate today, int jobs, IClock clock)
    {
        try
        {
            OwnerOnly.Folder(folder);
            var path = Path.Combine(folder, $"office-{DayText.Write(today)}.stringline");
            using var journal = Journals.Open(path, clock, OpenStore.OrMake);
            if (journal.CountJobs() == 0)
            {
                var report = journal.PutMany(DemoJobs.Of(today, jobs), "demo");
                if (report.Faults.Count > 0)
                    throw new InvalidOperationException("The demo office is refused: " + report.Faults[0]);
            }

            return new Outcome<string>.Done(path);
        }
        catch (StoreException e)
        {
            return new Outcome<string>.Refused([e.Message]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new Outcome<string>.Refused(
                [$"{folder} cannot be written to: {e.Message}\n  Name a folder that this user may write to."]);
        }
    }
}
