using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Catalogue;

/// <summary>
/// A paper that can be made from a job file, described once: what it is, for which work, what becomes of it, what it asks to be told, what
/// it does to rights, which step it serves, when it fits, and what is entered after it. Whoever shows, makes or follows it up asks here.
/// Each paper is one object; two are the same only where they are that.
/// </summary>
public sealed class Paper
{
    private readonly Func<Matter, Bundle> write;

    /// <summary>A paper.</summary>
    /// <param name="id">Stable id, such as <c>stop-payment-notice</c>; the word that names it on the command line.</param>
    /// <param name="title">Title.</param>
    /// <param name="write">Writes it with what its sheet says; every reason against it goes to the matter.</param>
    internal Paper(string id, string title, Func<Matter, Bundle> write) => (Id, Title, this.write) = (id, title, write);

    /// <summary>Stable id; the word that names it on the command line.</summary>
    public string Id { get; }

    /// <summary>Title.</summary>
    public string Title { get; }

    /// <summary>The sections that make it what it is, such as <c>Civ. Code § 8502</c>.</summary>
    public required string Sections { get; init; }

    /// <summary>What becomes of it.</summary>
    public required PaperUse Use { get; init; }

    /// <summary>The kinds of work it is for.</summary>
    public required IReadOnlyList<WorkKind> Works { get; init; }

    /// <summary>Who makes it and what for, in a sentence.</summary>
    public required Sentence Words { get; init; }

    /// <summary>What it may be told with the request; anything else is no option of it.</summary>
    public IReadOnlyList<PaperAsk> Asks { get; init; } = [];

    /// <summary>Id of the finding whose act-by day governs the paper; null where no day does.</summary>
    public string? Deadline { get; init; }

    /// <summary>Ids of the other findings that it serves: steps whose own day is another finding's than the paper's.</summary>
    public IReadOnlyList<string> AlsoServes { get; init; } = [];

    /// <summary>
    /// Whether a step asks for it; false for a paper that shares the day of another, as an amended claim does, but is made only once that
    /// one has gone its way.
    /// </summary>
    public bool IsAskedForByItsStep { get; init; } = true;

    /// <summary>As which kind of notice it is proved (Civ. Code § 8118); null where it is no such notice.</summary>
    public ProvedNotice? ProvedAs { get; init; }

    /// <summary>What it does to rights; null where it binds nobody, and for a paper that gives them up at once.</summary>
    public PaperEffect? Effect { get; init; }

    /// <summary>What it gives up the moment it is signed, paid or not; null for every other paper.</summary>
    public ImmediateRelease? GivesUpAtOnce { get; init; }

    /// <summary>Which of the four statutory forms of waiver it is; null where it is none.</summary>
    public WaiverForm? Waiver { get; init; }

    /// <summary>The entries that are made once it has gone its way, in the order in which things happen.</summary>
    public IReadOnlyList<EntryAfter> Entries { get; init; } = [];

    /// <summary>
    /// Why it fits now by what the file holds, for a paper that serves no step with a day; null where it does not.
    /// </summary>
    internal Func<Occasion, string?> Fits { get; init; } = _ => null;

    /// <summary>
    /// Whether the law's own obstacles say for which work it is not, so that nothing is said twice; else the paper says it.
    /// </summary>
    internal bool LawSaysForWhichWork { get; init; }

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

    /// <summary>Why it fits now by what the file holds; null where it does not.</summary>
    public string? WhyItFits(Occasion occasion) => Fits(occasion);

    /// <summary>Whether it serves a finding. A second finding of a kind is numbered: what serves the first serves it too.</summary>
    /// <param name="finding">Id of the finding.</param>
    public bool Serves(string finding) =>
        Deadline == finding || AlsoServes.Contains(finding) || (Unnumbered(finding) is { } first && Serves(first));

    /// <summary>Makes it with its sheet, or refuses.</summary>
    internal PacketOutcome Make(Matter matter)
    {
        if (!LawSaysForWhichWork)
            matter.OnlyOn(this);
        return Binding.Print(this, matter, write(matter));
    }

    private static string? Unnumbered(string finding) =>
        finding.LastIndexOf('.') is var dot && dot > 0 && char.IsAsciiDigit(finding[^1]) && finding[(dot + 1)..].All(char.IsAsciiDigit)
            ? finding[..dot]
            : null;
}
