using Stringline.Law.Facts;

namespace Stringline.Papers.Catalogue;

/// <summary>An entry that is made once a paper has gone its way.</summary>
/// <param name="Kind">The kind of entry, by its word in the job file.</param>
/// <param name="Words">What has happened then, and what is entered of it.</param>
public sealed record EntryAfter(string Kind, string Words)
{
    /// <summary>
    /// Those whom the law names for it; null where the entry names nobody. Where the law leaves a choice it names none. Those named with
    /// the request go before.
    /// </summary>
    internal Func<Occasion, IEnumerable<Party>>? To { get; init; }

    /// <summary>What else the paper says of the entry.</summary>
    internal Func<Occasion, IEnumerable<Filled>> Fill { get; init; } = _ => [];

    /// <summary>Whether the entry names to whom the paper went.</summary>
    public bool NamesPersons => To is not null;

    /// <summary>
    /// What the paper says of the entry: addressees, kind, sums, manner. The form shows it, and a person may change all of it.
    /// </summary>
    /// <param name="occasion">The job, with what was told to the paper.</param>
    public IEnumerable<Filled> FilledFrom(Occasion occasion)
    {
        IEnumerable<string> to = To is null ? []
            : occasion.Options.To.Count > 0 ? occasion.Options.To
            : To(occasion).Select(party => party.Id).Distinct();
        return [.. to.Select(id => new Filled.Person(id)), .. Fill(occasion)];
    }
}

/// <summary>One field of an entry as a paper fills it in.</summary>
/// <remarks>The cases are the only ones.</remarks>
public abstract record Filled
{
    private Filled()
    {
    }

    /// <summary>A person to whom the paper went.</summary>
    /// <param name="Party">Id of the party.</param>
    public sealed record Person(string Party) : Filled;

    /// <summary>The manner in which it went.</summary>
    /// <param name="Manner">The manner.</param>
    public sealed record By(Manner Manner) : Filled;

    /// <summary>Which notice it was.</summary>
    /// <param name="Kind">The kind.</param>
    public sealed record Notice(NoticeKind Kind) : Filled;

    /// <summary>Which waiver it was.</summary>
    /// <param name="Is">The form.</param>
    public sealed record Form(WaiverForm Is) : Filled;

    /// <summary>A sum.</summary>
    /// <param name="Field">The field.</param>
    /// <param name="Dollars">Dollars and cents.</param>
    public sealed record Sum(string Field, decimal Dollars) : Filled;

    /// <summary>A day.</summary>
    /// <param name="Field">The field.</param>
    /// <param name="On">The day.</param>
    public sealed record Day(string Field, LocalDate On) : Filled;

    /// <summary>A box that is ticked.</summary>
    /// <param name="Field">The field.</param>
    public sealed record Ticked(string Field) : Filled;
}
