namespace Stringline.Law.Facts;

/// <summary>One dated fact of the job file. Its cases are the sealed records that derive from it.</summary>
public abstract record Entry
{
    private protected Entry()
    {
    }

    /// <summary>The description of its kind.</summary>
    internal abstract EntryKind Kind { get; }

    /// <summary>Place in the file's list of entries, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>When it happened; for a span of work, its first day.</summary>
    public required DayFact On { get; init; }

    /// <summary>Name by which a later entry may replace this one; unique in the file.</summary>
    public string? Id { get; init; }

    /// <summary>The <see cref="Id"/> of the entry that this one replaces; nothing is erased, the older one just counts no more.</summary>
    public string? Supersedes { get; init; }

    /// <summary>The day on which the claimant learned it; null: on the day it happened.</summary>
    public LocalDate? Learned { get; init; }

    /// <summary>The entry's JSON path in the file, such as <c>entries[3]</c>.</summary>
    public string Path => $"entries[{Index}]";
}

/// <summary>An entry made by mistake is taken back: it names it in <see cref="Entry.Supersedes"/> and says nothing else.</summary>
public sealed record Withdrawn : Entry
{
    internal override EntryKind Kind => JournalKinds.Withdrawn;
}
