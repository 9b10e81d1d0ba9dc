namespace Stringline.Law.Facts;

/// <summary>
/// Finds a party by its id: a few are looked through, many are put in order once. It says nothing of its own, so all are equal.
/// </summary>
internal sealed class PartiesById : IEquatable<PartiesById>
{
    private const int Few = 16;

    private Index? index;

    /// <summary>The first party with that id, or null.</summary>
    public Party? Find(IReadOnlyList<Party> parties, string? id)
    {
        if (id is null)
            return null;
        if (parties.Count > Few)
        {
            // A file made from another by a change may have other parties. Two threads that get here make the same index.
            if (index is not { } known || !ReferenceEquals(known.Of, parties))
                index = known = new Index(parties);
            return known.ById.GetValueOrDefault(id);
        }

        for (var i = 0; i < parties.Count; i++)
        {
            if (parties[i].Id == id)
                return parties[i];
        }

        return null;
    }

    /// <inheritdoc/>
    public bool Equals(PartiesById? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is PartiesById;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;

    private sealed class Index
    {
        public Index(IReadOnlyList<Party> of)
        {
            Of = of;
            ById = new Dictionary<string, Party>(of.Count, StringComparer.Ordinal);
            foreach (var party in of)
                ById.TryAdd(party.Id, party);
        }

        public IReadOnlyList<Party> Of { get; }

        public Dictionary<string, Party> ById { get; }
    }
}
