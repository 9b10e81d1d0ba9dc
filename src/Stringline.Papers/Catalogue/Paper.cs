using Stringline.Law.Facts;

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

/// <summary>Something a paper may be told with the request; see <see cref="PaperOptions"/>.</summary>
public enum Told
{
    /// <summary><see cref="PaperOptions.To"/>.</summary>
    To,

    /// <summary><see cref="PaperOptions.Through"/>.</summary>
    Through,

    /// <summary><see cref="PaperOptions.Amount"/>.</summary>
    Amount,

    /// <summary><see cref="PaperOptions.Maker"/>.</summary>
    Maker,

    /// <summary><see cref="PaperOptions.Payee"/>.</summary>
    Payee,

    /// <summary><see cref="PaperOptions.Disputed"/>.</summary>
    Disputed,

    /// <summary><see cref="PaperOptions.PaymentCleared"/>.</summary>
    PaymentCleared,

    /// <summary><see cref="PaperOptions.Releases"/>.</summary>
    Releases,

    /// <summary><see cref="PaperOptions.ThroughAgain"/>.</summary>
    ThroughAgain,

    /// <summary><see cref="PaperOptions.Bonded"/>.</summary>
    Bonded,

    /// <summary><see cref="PaperOptions.Until"/>.</summary>
    Until,

    /// <summary><see cref="PaperOptions.Words"/>.</summary>
    Words,

    /// <summary><see cref="PaperOptions.Day"/>.</summary>
    Day,

    /// <summary><see cref="PaperOptions.Number"/>.</summary>
    Number,

    /// <summary><see cref="PaperOptions.Grounds"/>.</summary>
    Grounds,

    /// <summary><see cref="PaperOptions.ExtensionDays"/>.</summary>
    ExtensionDays,

    /// <summary><see cref="PaperOptions.Documents"/>.</summary>
    Documents,

    /// <summary><see cref="PaperOptions.Structure"/>.</summary>
    Structure,

    /// <summary><see cref="PaperOptions.FormerOwner"/>.</summary>
    FormerOwner,

    /// <summary><see cref="PaperOptions.WholeWork"/>.</summary>
    WholeWork,

    /// <summary><see cref="PaperOptions.Notice"/>.</summary>
    Notice,
}

/// <summary>A paper that can be made from a job file.</summary>
/// <param name="Id">Stable id, such as <c>stop-payment-notice</c>; the word that names it on the command line.</param>
/// <param name="Title">Title.</param>
/// <param name="Sections">The sections that make it what it is, such as <c>Civ. Code § 8502</c>.</param>
/// <param name="Use">What becomes of it.</param>
/// <param name="Works">The kinds of work it is for.</param>
/// <param name="Words">Who makes it and what for, in a sentence.</param>
public sealed record Paper(string Id, string Title, string Sections, PaperUse Use, IReadOnlyList<WorkKind> Works, string Words)
{
    /// <summary>What it may be told with the request; anything else is no option of it.</summary>
    public IReadOnlyList<Told> Takes { get; init; } = [];

    /// <summary>Id of the finding whose act-by day governs the paper; null where no day does.</summary>
    public string? Deadline { get; init; }

    /// <summary>As which kind of notice it is proved (Civ. Code § 8118); null where it is no such notice.</summary>
    public ProvedNotice? ProvedAs { get; init; }

    /// <summary>The word for what becomes of it.</summary>
    public string UseWord => Use switch
    {
        PaperUse.Recorded => "recorded",
        PaperUse.Given => "given",
        PaperUse.Sent => "sent",
        PaperUse.Kept => "kept",
        _ => throw new InvalidOperationException($"No such use: {Use}."),
    };

    /// <summary>The words for the kinds of work.</summary>
    public string WorksWords => Works.Count == Enum.GetValues<WorkKind>().Length ? "any" : string.Join(", ", Works.Select(w => w switch
    {
        WorkKind.Private => "private",
        WorkKind.Public => "public",
        WorkKind.Federal => "federal",
        _ => throw new InvalidOperationException($"No such work: {w}."),
    }));
}
