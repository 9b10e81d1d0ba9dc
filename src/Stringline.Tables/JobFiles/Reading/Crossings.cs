using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Checks what one part of a file says of another, once all of it is read.</summary>
internal static class Crossings
{
    // Of more names than these the nearest is not sought: it would be sought again for every wrong one.
    private const int MostCompared = 1000;

    // Letters of a wrong name times known names: a thousand short ones, or a few hundred long ones.
    private const int MostLettersCompared = 20_000;

    public static void Check(Source source, IReadOnlyList<Party> parties, Work work)
    {
        Parties(source, parties);
        Structures(source, work);

        var refs = Refs(source);

        foreach (var mention in source.Towards.Where(mention => !refs.Contains(mention.Name)))
        {
            source.Faults.Add(
                mention.Piece, mention.Path, () => Choice("the `ref` of an entry that was furnished or charged", mention.Name, refs));
        }

        var entries = Unique(source, source.EntryIds, "an id that no other entry has");
        var circular = Circular(source.Replacements);
        foreach (var mention in source.Superseded)
        {
            if (!entries.Contains(mention.Name))
                source.Faults.Add(mention.Piece, mention.Path, () => Choice("the `id` of another entry", mention.Name, entries));
            else if (circular.Contains(mention.Name))
                source.Faults.Add(mention.Piece, mention.Path, "the `id` of an entry that does not, itself or through others, replace this "
                    + "one");
        }

        var ofKind = source.Kinds.ToLookup(kind => kind.Value, kind => kind.Key, StringComparer.Ordinal);
        foreach (var mention in source.Entries.Where(mention =>
            mention.Name == mention.Entry || source.Kinds.GetValueOrDefault(mention.Name) != mention.What))
        {
            // Of so many no choice is told, with or without the entry itself.
            source.Faults.Add(mention.Piece, mention.Path, () => Choice(
                $"the `id` of another entry that is \"{mention.What}\"", mention.Name,
                ofKind[mention.What].Take(MostCompared + 2).Where(id => id != mention.Entry).ToHashSet(StringComparer.Ordinal)));
        }
    }

    private static void Parties(Source source, IReadOnlyList<Party> parties)
    {
        var capacities = parties.Where(party => party.Id.Length > 0)
            .ToLookup(party => party.Id, party => party.Capacity, StringComparer.Ordinal);
        var ids = capacities.Select(party => party.Key).ToHashSet(StringComparer.Ordinal);
        var fitting = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        foreach (var mention in source.PartyIds)
        {
            if (!ids.Contains(mention.Name))
            {
                source.Faults.Add(mention.Piece, mention.Path, () => Choice("the id of a party in `parties`", mention.Name, ids));
            }
            else if (mention.Only.Length > 0 && !capacities[mention.Name].Any(mention.Only.Contains))
            {
                var wanted = Capacities(mention.Only);
                if (!fitting.TryGetValue(wanted, out var fit))
                    fitting.Add(wanted, fit = Fitting(parties, mention.Only));
                source.Faults.Add(
                    mention.Piece, mention.Path, () => Choice($"the id of a party whose capacity is {wanted}", mention.Name, fit));
            }
        }
    }

    private static string Capacities(PartyCapacity[] only) =>
        string.Join(" or ", only.Select(capacity => $"\"{JobFileWords.Word(capacity)}\""));

    private static HashSet<string> Fitting(IReadOnlyList<Party> parties, PartyCapacity[] only) =>
        parties.Where(party => only.Contains(party.Capacity)).Select(party => party.Id).ToHashSet(StringComparer.Ordinal);

    private static void Structures(Source source, Work work)
    {
        var ids = work.Structures.Select(structure => structure.Id).Where(id => id.Length > 0).ToHashSet(StringComparer.Ordinal);
        foreach (var mention in source.Structures.Where(mention => !ids.Contains(mention.Name)))
            source.Faults.Add(mention.Piece, mention.Path, () => Choice("the id of a structure in `work.structures`", mention.Name, ids));
    }

    private static HashSet<string> Unique(Source source, List<Mention> mentions, string expected)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var mention in mentions.Where(mention => !names.Add(mention.Name)))
            source.Faults.Add(mention.Piece, mention.Path, expected);
        return names;
    }

    /// <summary>A ref is unique, but an entry keeps the ref of the one it replaces.</summary>
    private static HashSet<string> Refs(Source source)
    {
        var lines = new Corrections(source.Replacements);
        var holders = new Dictionary<string, Corrections.Related>(StringComparer.Ordinal);
        foreach (var mention in source.Refs)
        {
            if (!holders.TryGetValue(mention.Name, out var holder))
                holders.Add(mention.Name, holder = new Corrections.Related(lines));
            if (!holder.AddsOne(mention.Entry))
                source.Faults.Add(mention.Piece, mention.Path, "a ref that no other entry has, unless it replaces that entry");
        }

        return [.. holders.Keys];
    }

    /// <summary>The entries that replace themselves through others; each entry is walked once, however long the chains are.</summary>
    private static HashSet<string> Circular(Dictionary<string, string> replacements)
    {
        var circular = new HashSet<string>(StringComparer.Ordinal);
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var start in replacements.Keys)
        {
            var walk = new List<string>();
            var places = new Dictionary<string, int>(StringComparer.Ordinal);
            string? at = start;
            while (at is not null && !done.Contains(at) && places.TryAdd(at, walk.Count))
            {
                walk.Add(at);
                at = replacements.GetValueOrDefault(at);
            }

            if (at is not null && places.TryGetValue(at, out var first))
                circular.UnionWith(walk[first..]);
            done.UnionWith(walk);
        }

        return circular;
    }

    private static string Choice(string meaning, string name, HashSet<string> known) => known.Count switch
    {
        0 => $"{meaning}; there is none yet",
        <= 12 => $"{meaning}: {string.Join(", ", known.Select(id => $"\"{Excerpt.Of(id)}\""))}",
        <= MostCompared when name.Length * known.Count <= MostLettersCompared => meaning + Nearest.Clause(name, known),
        _ => meaning,
    };
}
