namespace Stringline.Law.Facts;

/// <summary>
/// Takes what an entry may not say beside what else it says. Each fault names the field and says what would be right in its place, with the
/// names that the fields have in the file; whoever shows it puts its own words for them.
/// </summary>
public interface IEntryFaults
{
    /// <summary>Of what kind the work is; null where that could not be read.</summary>
    public WorkKind? Work { get; }

    /// <summary>Whether the entry has a field, and it could be read.</summary>
    public bool HasRead(string field);

    /// <summary>Refuses an entry that does not have the field.</summary>
    public void Require(string field, string expected);

    /// <summary>Refuses what the field holds; it must be there.</summary>
    public void Refuse(string field, string expected);
}
