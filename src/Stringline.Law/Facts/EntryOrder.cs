namespace Stringline.Law.Facts;

/// <summary>
/// The order in which entries are weighed: unknown days first, then by day, then by kind. Ties are broken by what an entry says and never
/// by its place in the file, so that the file's order carries no meaning: only entries that say the same are equal in it.
/// </summary>
public static class EntryOrder
{
    /// <summary>Below zero where the first is weighed before the other, above zero where after, zero where they say the same.</summary>
    public static int Compare(Entry a, Entry b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var (keyA, keyB) = (Key(a), Key(b));
        return keyA != keyB ? keyA.CompareTo(keyB) : ByContent(a, b);
    }

    /// <summary>The entries in that order.</summary>
    internal static Entry[] Sorted(List<Entry> entries)
    {
        if (entries.Count <= Few)
            return SortedOneByOne(entries);
        var keyed = new Keyed[entries.Count];
        for (var i = 0; i < keyed.Length; i++)
            keyed[i] = new Keyed(Key(entries[i]), entries[i]);
        Array.Sort(keyed, static (a, b) => a.Key != b.Key ? a.Key.CompareTo(b.Key) : ByContent(a.Entry, b.Entry));
        var sorted = new Entry[keyed.Length];
        for (var i = 0; i < sorted.Length; i++)
            sorted[i] = keyed[i].Entry;
        return sorted;
    }

    // Most files have a dozen entries: put in their places one after the other, with nothing kept beside them.
    private const int Few = 24;

    private static Entry[] SortedOneByOne(List<Entry> entries)
    {
        Span<long> keys = stackalloc long[Few];
        Span<int> places = stackalloc int[Few];
        for (var i = 0; i < entries.Count; i++)
        {
            var entry = entries[i];
            var key = Key(entry);
            var at = i;
            for (; at > 0 && (keys[at - 1] > key || (keys[at - 1] == key && ByContent(entries[places[at - 1]], entry) > 0)); at--)
                (keys[at], places[at]) = (keys[at - 1], places[at - 1]);
            (keys[at], places[at]) = (key, i);
        }

        var sorted = new Entry[entries.Count];
        for (var i = 0; i < sorted.Length; i++)
            sorted[i] = entries[places[i]];
        return sorted;
    }

    // A class and no struct: the framework's sort of references is compiled ahead, one of a new struct at every start.
    private sealed record Keyed(long Key, Entry Entry);

    private static int ByContent(Entry a, Entry b)
    {
        var kind = a.Kind;
        var order = kind.Ties?.Invoke(a, b) ?? 0;
        if (order == 0)
            order = string.CompareOrdinal(Line(kind.TieOrder, a), Line(kind.TieOrder, b));
        for (var i = 0; order == 0 && i < kind.Fields.Count; i++)
            order = string.CompareOrdinal(kind.Fields[i].Weighed(a), kind.Fields[i].Weighed(b));
        return order != 0 ? order : ByPlaceInJournal(a, b);
    }

    // How the day is known, where it is the same; then what says where the entry stands among the others.
    private static int ByPlaceInJournal(Entry a, Entry b)
    {
        var order = string.CompareOrdinal(Field.Spelled(a.On), Field.Spelled(b.On));
        if (order == 0)
            order = string.CompareOrdinal(a.Id, b.Id);
        if (order == 0)
            order = string.CompareOrdinal(a.Supersedes, b.Supersedes);
        return order != 0 ? order : ByDay(a.Learned, b.Learned);
    }

    private static string Line(IReadOnlyList<Field> fields, Entry entry) => fields.Count == 1
        ? fields[0].Weighed(entry) ?? ""
        : string.Join('|', fields.Select(field => field.Weighed(entry)));

    // Earliest day, latest day and kind in one number: 21, 21 and 8 bits.
    private static long Key(Entry entry)
    {
        var earliest = Packed(entry.On.Earliest);
        var latest = entry.On is DayFact.Exact ? earliest : Packed(entry.On.Latest);
        return ((long)earliest << 29) | ((long)latest << 8) | (long)entry.Kind.InJournal;
    }

    private static int Packed(LocalDate? day) => day is { } known ? (known.Year << 9) | (known.Month << 5) | known.Day : 0;

    /// <summary>An unknown day first, then by day.</summary>
    internal static int ByDay(LocalDate? a, LocalDate? b) => Packed(a).CompareTo(Packed(b));

    /// <summary>By a text first, then by a sum; nothing said is nothing.</summary>
    internal static int ByTextThenSum(string? textA, decimal? amountA, string? textB, decimal? amountB)
    {
        var byText = string.CompareOrdinal(textA, textB);
        return byText != 0 ? byText : decimal.Compare(amountA ?? 0, amountB ?? 0);
    }
}
