using Stringline.Store.Sql;

namespace Stringline.Store.Upkeep;

/// <summary>
/// What restores, and programs that were killed, left beside a store: whole copies of it among them, which somebody should know of.
/// </summary>
public static class Leftovers
{
    /// <summary>All of them.</summary>
    /// <param name="journal">The store.</param>
    /// <exception cref="StoreException">They cannot be looked for.</exception>
    public static IReadOnlyList<Leftover> Of(IJournal journal)
    {
        try
        {
            return [.. ((SqlJournal)journal).Database.Leftovers()];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(
                StoreFault.NotAllowed, journal.Name, $"a folder that cannot be looked through ({e.Message})",
                "a folder whose files this user may list", e);
        }
    }
}

/// <summary>Something that was left beside a store.</summary>
/// <param name="Place">The file, folder or schema.</param>
/// <param name="Kind">What it is.</param>
public sealed record Leftover(string Place, LeftoverKind Kind);

/// <summary>Kinds of what is left beside a store.</summary>
public enum LeftoverKind
{
    /// <summary>A whole store that was at the address before a restore, or that a restore was killed over while it set it aside.</summary>
    Older,

    /// <summary>A second name of the store itself, which a killed restore left.</summary>
    SecondName,

    /// <summary>Something that was not finished; it may hold a part of the data.</summary>
    Unfinished,
}
