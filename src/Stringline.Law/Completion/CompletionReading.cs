using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>How firmly the facts carry a reading of completion; firmest first.</summary>
public enum Firmness
{
    /// <summary>The facts of the file, uncontested, make it so in law; a later reading cannot then be the first completion.</summary>
    Certain,

    /// <summary>The file asserts it and nobody disputes it, but a fact the law asks for besides is not in the file.</summary>
    Asserted,

    /// <summary>Somebody disputes it.</summary>
    Contested,

    /// <summary>It will be so if what is going on goes on.</summary>
    Projected,

    /// <summary>Nothing is known of completion; it can hardly have been earlier than this.</summary>
    Floor,
}

/// <summary>One way in which the work of improvement can be taken as complete (Civ. Code § 8180).</summary>
/// <param name="Name">The reading, such as <c>completion by occupation</c>.</param>
/// <param name="On">The day of completion under it.</param>
/// <param name="Firmness">How firmly the facts carry it.</param>
/// <param name="Why">Its reason.</param>
public sealed record CompletionReading(string Name, Days On, Firmness Firmness, Reason Why)
{
    /// <summary>The reading's name for one of the days it can be: the day is said only where there is a choice.</summary>
    public string NameOn(LocalDate completed) => On.IsExact ? Name : $"{Name} on {LawText.IsoDay(completed)}";
}

/// <summary>All readings of completion.</summary>
/// <param name="Open">Readings that are not ruled out, earliest first.</param>
/// <param name="RuledOut">Readings that are, each with the reason.</param>
/// <param name="AwaitsAcceptance">Whether completion waits for a public authority's acceptance (Civ. Code § 8180(b)).</param>
public sealed record CompletionReadings(
    IReadOnlyList<CompletionReading> Open, IReadOnlyList<Reason> RuledOut, bool AwaitsAcceptance)
{
    /// <summary>Whether some reading says that the work is complete or that it is said to be: else no end of any time is known.</summary>
    public bool EndKnown => Open.Any(r => r.Firmness is Firmness.Certain or Firmness.Asserted or Firmness.Contested);

    /// <summary>Whether an uncontested reading carries the latest end: then a time that has run under it has run.</summary>
    public bool EndFirm => Open.Any(r => r.Firmness is Firmness.Certain or Firmness.Asserted);
}
