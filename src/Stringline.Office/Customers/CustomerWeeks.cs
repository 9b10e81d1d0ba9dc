using Stringline.Store;

namespace Stringline.Office.Customers;

/// <summary>A customer's money week by week: behind today as it was known then, ahead as rights lapse if nothing is done.</summary>
/// <param name="Past">The weeks behind; empty where they were not assessed.</param>
/// <param name="Ahead">This week and those ahead.</param>
/// <param name="TooMany">Whether the customer has too many jobs for the weeks behind to be assessed for a page.</param>
internal sealed record CustomerWeeks(IReadOnlyList<WeekTotals> Past, IReadOnlyList<WeekTotals> Ahead, bool TooMany)
{
    /// <summary>Weeks behind today.</summary>
    public const int Behind = 12;

    /// <summary>Weeks ahead of today.</summary>
    public const int WeeksAhead = 26;

    // Each job is assessed once for each week behind: this many keep the page within about a second.
    private const int MostJobs = 60;

    /// <summary>The weeks of a customer.</summary>
    public static CustomerWeeks Of(CustomerBook book, Desk office)
    {
        var today = office.Today;
        List<WeekTotals> ahead = [.. Enumerable.Range(0, WeeksAhead + 1).Select(week => book.On(today.PlusWeeks(week)))];
        if (book.Jobs.Count > MostJobs)
            return new CustomerWeeks([], ahead, true);
        var plan = office.Settings.Plan;
        List<StoredJob> jobs = [.. book.Jobs.Select(job => office.Journal.Read(job.Job.Id)).OfType<StoredJob>()];
        var past = new List<WeekTotals>();
        for (var week = -Behind; week < 0; week++)
        {
            var day = today.PlusWeeks(week);
            past.Add(WeekTotals.Of(jobs.Select(job => Security.Of(UseCases.Assess(job.KnownOn(day), day, plan))), day));
        }

        return new CustomerWeeks(past, ahead, false);
    }
}
