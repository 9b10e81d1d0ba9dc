namespace Stringline.Papers.Catalogue;

/// <summary>What becomes of a finished paper.</summary>
public enum PaperUse
{
    /// <summary>It is recorded with the county recorder.</summary>
    Recorded,

    /// <summary>It is given to persons whom the statute names, in a manner that the statute names.</summary>
    Given,

    /// <summary>It is signed and handed or sent to someone; no statute says how.</summary>
    Sent,

    /// <summary>It stays with the one who made it, as proof or as a list to work from.</summary>
    Kept,
}
