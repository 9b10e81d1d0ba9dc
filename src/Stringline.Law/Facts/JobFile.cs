namespace Stringline.Law.Facts;

/// <summary>Everything known about one job for one claimant.</summary>
public sealed record JobFile
{
    /// <summary>Name of the job.</summary>
    public required string Name { get; init; }

    /// <summary>The work of improvement.</summary>
    public required Work Work { get; init; }

    /// <summary>The claimant.</summary>
    public required Claimant Claimant { get; init; }

    /// <summary>Everyone else; ids are unique.</summary>
    public IReadOnlyList<Party> Parties { get; init; } = [];

    /// <summary>The claimant's contract.</summary>
    public Contract Contract { get; init; } = new();

    /// <summary>The dated facts, in the file's order. Their order carries no meaning.</summary>
    public IReadOnlyList<Entry> Entries { get; init; } = [];

    /// <summary>The party with that id, or null.</summary>
    public Party? Party(string? id) => byId.Find(Parties, id);

    // Nothing that the file says, so that no two files differ by it.
    private readonly PartiesById byId = new();

    /// <summary>The parties in that capacity, in the file's order.</summary>
    public IReadOnlyList<Party> In(PartyCapacity capacity)
    {
        var count = 0;
        for (var i = 0; i < Parties.Count; i++)
            count += Parties[i].Capacity == capacity ? 1 : 0;
        if (count == 0)
            return [];
        var found = new Party[count];
        for (var i = Parties.Count - 1; count > 0; i--)
        {
            if (Parties[i].Capacity == capacity)
                found[--count] = Parties[i];
        }

        return found;
    }

    /// <summary>The entries of one kind, in the file's order.</summary>
    public IEnumerable<T> All<T>() where T : Entry => Entries.OfType<T>();
}
