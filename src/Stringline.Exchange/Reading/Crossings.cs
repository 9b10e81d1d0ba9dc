using Stringline.Law.Facts;

namespace Stringline.Exchange.Reading;

/// <summary>Checks what one part of a file says of another, once all of it is read.</summary>
internal static class Crossings
{
    public static void Check(Source source, IReadOnlyList<Party> parties)
    {
        var ids = parties.Select(party => party.Id).Where(id => id.Length > 0).ToHashSet(StringComparer.Ordinal);
        foreach (var mention in source.PartyIds.Where(mention => !ids.Contains(mention.Name)))
            source.Faults.Add(mention.Piece, mention.Path, Choice("the id of a party in `parties`", mention.Name, ids));

        var refs = new HashSet<string>(StringComparer.Ordinal);
        foreach (var mention in source.Refs.Where(mention => !refs.Add(mention.Name)))
            source.Faults.Add(mention.Piece, mention.Path, "a ref that no other entry has");

        foreach (var mention in source.Towards.Where(mention => !refs.Contains(mention.Name)))
            source.Faults.Add(mention.Piece, mention.Path, Choice("the `ref` of an entry that was furnished or charged", mention.Name, refs));
    }

    private static string Choice(string meaning, string name, HashSet<string> known) => known.Count switch
    {
        0 => $"{meaning}; there is none yet",
        <= 12 => $"{meaning}: {string.Join(", ", known.Select(id => $"\"{id}\""))}",
        _ => meaning + Nearest.Clause(name, known),
    };
}
