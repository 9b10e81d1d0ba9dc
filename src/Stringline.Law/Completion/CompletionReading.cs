using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>How firmly the facts carry a reading of completion; firmest first.</summary>
public enum Firmness
{
    /// <summary>The facts of the file, uncontested, make it so in law; a later reading cannot then be the first completion.</summary>
    Certain,

    /// <summary>
    /// The file asserts it and nobody disputes it, but a fact the law asks for besides is not in the file: a day to plan on, by which no
    /// right is surely lost.
    /// </summary>
    Asserted,

    /// <summary>Somebody disputes it.</summary>
    Contested,

    /// <summary>It will be so if what is going on goes on.</summary>
    Projected,

    /// <summary>Nothing is known of completion; it can hardly have been earlier than this.</summary>
    Floor,
}

/// <summary>One way in which the work of improvement can be taken as complete (Civ. Code § 8180).</summary>
/// <param name="Words">The reading, such as <c>completion by occupation</c>.</param>
/// <param name="On">The day of completion under it.</param>
/// <param name="Firmness">How firmly the facts carry it.</param>
/// <param name="Why">Its reason.</param>
public sealed record CompletionReading(Sentence Words, DaySpan On, Firmness Firmness, Reason Why)
{
    /// <summary>The reading, in the words of the job file.</summary>
    public string Name => Words.ToString();

    /// <summary>
    /// Whether it is what a recorded notice of the owner's says: another day than ours is then in dispute and rules it out no more.
    /// </summary>
    public bool IsOwnersWord { get; init; }

    /// <summary>
    /// The notice that it is read from where that states no day of its own: then it is taken to be one for which it is in time.
    /// </summary>
    internal OwnersNotice? ServedBy { get; init; }

    /// <summary>
    /// Whether the reading may be the true one with that notice recorded on that day: a day that it does not state lies in its time.
    /// </summary>
    internal bool GoesWith(OwnersNotice notice, LocalDate completed, LocalDate recorded) =>
        !ReferenceEquals(ServedBy, notice) || notice.IsEffectiveIfCompletedOn(completed, recorded);

    /// <summary>
    /// Whether the notice may state another day than a completion that is known, since on some day of the doubt it was not in time for
    /// that.
    /// </summary>
    internal bool MayContradict(DaySpan completed) =>
        ServedBy is { } notice && notice.EarliestCompletionCovered(notice.Recorded.Latest) > completed.Earliest;

    /// <summary>
    /// Whether it is only that labor has stopped for so long, by the file or by a notice of cessation beside it: the work may then have
    /// been finished on the day on which labor stopped.
    /// </summary>
    public bool IsIdleness { get; init; }

    /// <summary>Whether labor was resumed after it: complete in law, the work went on, and the claimant may have furnished more.</summary>
    public bool LaborResumed { get; init; }

    /// <summary>
    /// Where it was complete in law and went on: the day by which it was surely finished all the same, by a later completion; null where
    /// none is.
    /// </summary>
    public LocalDate? WentOnUntil { get; init; }

    /// <summary>The day after which nobody worked any more.</summary>
    public LocalDate OverBy => WentOnUntil ?? On.Latest;

    /// <summary>
    /// Of a work of several residential structures: which one was completed, or a name of its own where that is not known; null for the
    /// whole work.
    /// </summary>
    public string? Structure { get; init; }

    /// <summary>What the reading is called for one of the days it can be: the day is said only where there is a choice.</summary>
    public Sentence WordsOn(LocalDate completed) => On.IsExact ? Words : $"{Words} on {completed:iso}";
}

/// <summary>All readings of completion.</summary>
/// <param name="Open">Readings that are not ruled out, earliest first.</param>
/// <param name="RuledOut">Readings that are, each with the reason.</param>
/// <param name="AwaitsAcceptance">Whether completion waits for a public authority's acceptance (Civ. Code § 8180(b)).</param>
public sealed record CompletionReadings(
    IReadOnlyList<CompletionReading> Open, IReadOnlyList<Reason> RuledOut, bool AwaitsAcceptance)
{
    /// <summary>Whether the work may wait for an acceptance that has not come, so that on some reading no time runs yet.</summary>
    public bool MayStillWait { get; init; }

    /// <summary>Whether a completion is entered that would be before the work began.</summary>
    public bool BeforeCommencement { get; init; }

    /// <summary>Whether, though it is open which of two readings is the one, the work is certainly complete on either.</summary>
    public bool IsCertainEitherWay { get; init; }

    /// <summary>Whether some reading says that the work is complete, or is said to be.</summary>
    public bool SaidComplete => Open.Any(static r => r.Firmness is Firmness.Certain or Firmness.Asserted or Firmness.Contested);

    /// <summary>Whether every open reading has an end: else the latest end of a time that counts from completion is not known.</summary>
    public bool EndKnown => EndFirm;

    /// <summary>
    /// Whether a certain reading carries the latest end: then a time that has run under it has run. A completion that somebody disputes may
    /// fail, and then nothing is known of it: Hammond Lumber v. Barth Investment (1927) 202 Cal. 606. So may one that is only asserted: use
    /// completes nothing unless labor ceased, and a notice of the owner's takes effect only if the work was complete
    /// (Civ. Code §§ 8180(a)(2), 8182(d), 9204(d)).
    /// </summary>
    public bool EndFirm => !MayStillWait && (IsCertainEitherWay || Open.Any(static r => r.Firmness == Firmness.Certain));
}
