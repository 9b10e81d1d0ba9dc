namespace Stringline.Papers.Indexing;

/// <summary>What a name is to a recorded paper.</summary>
public enum IndexSide
{
    /// <summary>Whose interest the paper burdens: the owner (grantor index).</summary>
    Owner,

    /// <summary>Who claims by the paper (grantee index).</summary>
    Claimant,
}

/// <summary>A name under which the recorder is expected to index a paper. Which names are taken up is the recorder's to decide.</summary>
/// <param name="Side">Owner or claimant.</param>
/// <param name="Indexed">As it stands in an index: a person surname first, an entity as written.</param>
/// <param name="Written">As it stands on the paper.</param>
public sealed record IndexName(IndexSide Side, string Indexed, string Written);
