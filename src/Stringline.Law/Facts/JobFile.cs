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
    public Party? Party(string? id)
    {
        foreach (var party in Parties)
        {
            if (party.Id == id)
                return party;
        }

        return null;
    }

    /// <summary>The parties in that capacity, in the file's order.</summary>
    public IReadOnlyList<Party> In(PartyCapacity capacity)
    {
        List<Party>? found = null;
        foreach (var party in Parties)
        {
            if (party.Capacity == capacity)
                (found ??= new List<Party>(1)).Add(party);
        }

        return found is null ? [] : found;
    }

    /// <summary>The entries of one kind, in the file's order.</summary>
    public IEnumerable<T> All<T>() where T : Entry => Entries.OfType<T>();
}
