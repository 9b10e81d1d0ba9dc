using Stringline.Store;

namespace Stringline.Office.Customers;

/// <summary>A job of a customer, with what holds its money.</summary>
/// <param name="Job">Where the job is.</param>
/// <param name="County">The county of the site.</param>
/// <param name="Security">What is owed and by which rights it is held.</param>
/// <param name="ActBy">The nearest day to act; null where nothing is to be done.</param>
internal sealed record CustomerJob(JobTip Job, string? County, Security Security, LocalDate? ActBy);

/// <summary>A right that lapses if nothing is done.</summary>
/// <param name="Job">On which job.</param>
/// <param name="Right">The right.</param>
/// <param name="Lapses">The day to act by.</param>
/// <param name="Bares">Dollars and cents that no right holds or can secure any more once it has lapsed; 0 where another right is
/// left.</param>
internal sealed record Lapse(CustomerJob Job, SecuredRight Right, LocalDate Lapses, decimal Bares);

/// <summary>Everything about one customer, over all its jobs, as the last assessments found it.</summary>
internal sealed class CustomerBook
{
    /// <summary>At most so many jobs of one customer are looked at.</summary>
    public const int MostJobs = 5000;

    private CustomerBook(string name, IReadOnlyList<CustomerJob> jobs) => (Name, Jobs) = (name, jobs);

    /// <summary>The customer's name, as the job files say it.</summary>
    public string Name { get; }

    /// <summary>Its jobs, in the order of their ids.</summary>
    public IReadOnlyList<CustomerJob> Jobs { get; }

    /// <summary>Dollars and cents owed.</summary>
    public decimal Owed => Jobs.Sum(job => job.Security.Owed);

    /// <summary>Reads it from the store; null where no assessed job names the customer.</summary>
    public static CustomerBook? Of(IJournal journal, string name)
    {
        var lines = journal.AssessedOf(name, MostJobs);
        return lines.Count == 0
            ? null
            : new CustomerBook(name,
                [.. lines.Select(line =>
                    new CustomerJob(line.Job, line.Assessed.County, Security.Read(line.Assessed.Findings), line.Assessed.ActBy))]);
    }

    /// <summary>How the money stands on a day if nothing is done until then.</summary>
    public WeekTotals On(LocalDate day) => WeekTotals.Of(Jobs.Select(job => job.Security), day);

    /// <summary>
    /// Dollars and cents that a right of a kind holds, or can still secure, on a day. One job can count under several rights.
    /// </summary>
    public (decimal Held, decimal MaySecure) By(SecurityKind by, LocalDate day) => (
        Sum(right => right.IsHeld, by, day),
        Sum(right => !right.IsHeld, by, day));

    /// <summary>
    /// The rights that lapse from a day on if nothing is done, the nearest first; only on jobs where something may be claimed.
    /// </summary>
    public IReadOnlyList<Lapse> Lapses(LocalDate from) =>
    [
        .. Jobs.Where(job => job.Security.Claimable > 0)
            .SelectMany(job => job.Security.Rights.Where(right => right.Through >= from).Select(right => Lapsing(job, right)))
            .OrderBy(lapse => lapse.Lapses).ThenByDescending(lapse => lapse.Bares),
    ];

    /// <summary>Rights that live though their day to act is past: in doubt, not counted on, and to be acted on at once.</summary>
    public IReadOnlyList<Lapse> InDoubt(LocalDate today) =>
    [
        .. Jobs.Where(job => job.Security.Claimable > 0)
            .SelectMany(job => job.Security.Rights.Where(right => right.Through < today).Select(right => Lapsing(job, right)))
            .OrderBy(lapse => lapse.Lapses),
    ];

    private static Lapse Lapsing(CustomerJob job, SecuredRight right)
    {
        var after = right.Through!.Value.PlusDays(1);
        return new Lapse(job, right, right.Through.Value,
            Math.Max(0m, right.Dollars - job.Security.HeldOn(after) - job.Security.MaySecureOn(after)));
    }

    private decimal Sum(Func<SecuredRight, bool> which, SecurityKind by, LocalDate day) =>
        Jobs.Sum(job => job.Security.Rights.Where(right => right.By == by && which(right) && right.CountsOn(day))
            .Select(right => right.Dollars).DefaultIfEmpty(0m).Max());
}
