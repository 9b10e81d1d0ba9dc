using System.Collections.Concurrent;

namespace Stringline.Store.Sql;

/// <summary>The jobs of which a derived row was met that is not as it was written, until they are assessed anew.</summary>
internal sealed class DamagedJobs
{
    private readonly ConcurrentDictionary<long, bool> met = new();

    /// <summary>Those that were met, by id.</summary>
    public IReadOnlyList<long> Met => met.IsEmpty ? [] : [.. met.Keys.Order()];

    /// <summary>One was met.</summary>
    public void Add(long job) => met[job] = true;

    /// <summary>They were written anew.</summary>
    public void Remove(IEnumerable<long> jobs)
    {
        foreach (var job in jobs)
            met.TryRemove(job, out _);
    }
}
