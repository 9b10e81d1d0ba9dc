using Stringline.Law.Facts;

namespace Stringline.Testing;

/// <summary>A job file changed for a test, and written out for one that fails.</summary>
public static class JobFileChanges
{
    /// <summary>The file with one more entry.</summary>
    public static JobFile With(this JobFile job, Entry entry) =>
        job with { Entries = [.. job.Entries, entry with { Index = job.Entries.Count }] };

    /// <summary>The file with its entries in another order, each with the index of its new place.</summary>
    public static JobFile Reordered(this JobFile job, IEnumerable<Entry> order) =>
        job with { Entries = [.. order.Select((e, i) => e with { Index = i })] };

    /// <summary>The file in words that a person can enter again, for a failing test.</summary>
    public static string Print(this JobFile job) => string.Join(Environment.NewLine,
        [$"{job.Claimant.Role} hired by {job.Claimant.HiredBy}; {job.Work.Use}; accept {job.Work.SubjectToAcceptanceBy}; {job.Contract}",
            .. job.Entries.Select(e => e.ToString())]);
}
