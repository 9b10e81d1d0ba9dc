namespace Stringline.Law.Facts;

/// <summary>All kinds of entry.</summary>
public static class EntryKinds
{
    /// <summary>In the order in which they are offered to be entered, group by group.</summary>
    public static IReadOnlyList<EntryKind> InForms { get; } =
    [
        .. WorkKinds.All, .. MoneyKinds.All, .. NoticeKinds.All, .. OwnerKinds.All, .. CompletionKinds.All, .. ClaimKinds.All,
        .. DisputeKinds.All, .. PublicKinds.All, JournalKinds.Withdrawn,
    ];

    /// <summary>In the order of the format.</summary>
    public static IReadOnlyList<EntryKind> All { get; } = [.. InForms.OrderBy(kind => kind.InFormat)];

    private static readonly Dictionary<string, EntryKind> ByName = All.ToDictionary(kind => kind.Name, StringComparer.Ordinal);

    /// <summary>The notice that the owner recorded.</summary>
    public static EntryKind OwnerRecorded => OwnerKinds.OwnerRecorded;

    /// <summary>The kind that takes another entry back.</summary>
    public static EntryKind Withdrawn => JournalKinds.Withdrawn;

    /// <summary>The kind with that word in the job file; null where there is none.</summary>
    public static EntryKind? Find(string? name) => name is null ? null : ByName.GetValueOrDefault(name);

    /// <summary>The kind of the entries of a type.</summary>
    public static EntryKind Of<T>() where T : Entry => Kinds.ByType[typeof(T)];

    /// <summary>The kind of an entry.</summary>
    public static EntryKind Of(Entry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Kind;
    }

    // Made when a kind is first asked for by its type, and not at every start.
    private static class Kinds
    {
        public static Dictionary<Type, EntryKind> ByType { get; } =
            All.ToDictionary(kind => kind.Blank(0, new DayFact.Unknown()).GetType());
    }
}
