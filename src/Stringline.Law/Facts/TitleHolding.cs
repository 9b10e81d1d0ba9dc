namespace Stringline.Law.Facts;

/// <summary>How someone holds title to the site, as far as it changes the names under which a paper is indexed.</summary>
public enum TitleForm
{
    /// <summary>One or several natural persons, each in his or her own name.</summary>
    Individual,

    /// <summary>Two or more natural persons as joint tenants, such as a couple.</summary>
    JointTenants,

    /// <summary>Trustees of a trust.</summary>
    Trust,

    /// <summary>A limited liability company, corporation or partnership.</summary>
    Company,

    /// <summary>The estate of someone who has died.</summary>
    Estate,

    /// <summary>A public entity.</summary>
    PublicEntity,
}

/// <summary>
/// How a party holds title, with the persons behind its name (Gov. Code § 27288.1(a): the names in which the interest appears of record).
/// </summary>
public sealed record TitleHolding
{
    /// <summary>The form.</summary>
    public required TitleForm Form { get; init; }

    /// <summary>The owners, the trustees, or the representatives of an estate; none for a company or a public entity.</summary>
    public IReadOnlyList<TitleHolder> Persons { get; init; } = [];

    /// <summary>The trust's name as the deed gives it; only of a trust.</summary>
    public string? Trust { get; init; }

    /// <summary>Who died; only of an estate.</summary>
    public TitleHolder? Decedent { get; init; }
}

/// <summary>
/// A natural person, or an entity such as a bank that is trustee. Surname and given names are never guessed from a whole name.
/// </summary>
public sealed record TitleHolder
{
    /// <summary>Surname of a natural person.</summary>
    public string? Surname { get; init; }

    /// <summary>Given names of a natural person.</summary>
    public string? Given { get; init; }

    /// <summary>What follows the name, such as <c>Jr.</c></summary>
    public string? Suffix { get; init; }

    /// <summary>An entity's whole name; then none of the others is there.</summary>
    public string? Entity { get; init; }
}
