using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Completion;

/// <summary>
/// Acceptance of a private work by a public entity (Civ. Code § 8180(b)). It is one for works in which the public takes an interest, such
/// as streets and sewers (A. J. Raisch Paving v. Mountain View Savings &amp; Loan (1972) 28 Cal.App.3d 832); an agency's right to approve
/// is none (In re El Dorado Improvement Corp. (9th Cir. 2003) 335 F.3d 835).
/// </summary>
/// <param name="By">Who is to accept; null where nobody is.</param>
/// <param name="TakesOver">Whether the public takes over what is built; null where the file does not say.</param>
internal sealed record Acceptance(string? By, bool? TakesOver)
{
    private const string Section = "Civ. Code § 8180(b)";

    private static readonly Sentence Words = $"completion by acceptance";

    /// <summary>What the file says of it.</summary>
    public static Acceptance Of(Work work) => new(work.SubjectToAcceptanceBy, work.PublicTakesOver);

    /// <summary>Whether the work may wait for it.</summary>
    public bool IsAsked => By is not null && TakesOver != false;

    /// <summary>Whether nothing else completes the work.</summary>
    public bool IsNeeded => By is not null && TakesOver == true;

    /// <summary>Whether the work may wait for it and it has not come.</summary>
    public bool HasNotCome(FactsAsOf facts)
    {
        if (!IsAsked)
            return false;
        foreach (var entry in facts.All<Completed>())
        {
            if (entry is { By: CompletionTheory.Acceptance, Contested: false } && DaySpan.Of(entry.On) is not null)
                return false;
        }

        return true;
    }

    /// <summary>Whether a reading is that of the acceptance itself.</summary>
    public static bool IsByAcceptance(CompletionReading reading) => ReferenceEquals(reading.Words, Words);

    /// <summary>Why a contention of completion is passed over; null where it counts.</summary>
    [Rule(Section)]
    public Reason? RulesOut(Completed entry) => (entry.By == CompletionTheory.Acceptance, By, TakesOver) switch
    {
        (false, not null, true) =>
            Reason.NotApplied(Section, $"Work that is subject to acceptance by a public authority, which takes over what is built, is "
                + $"completed by the acceptance, whatever was finished before (A. J. Raisch Paving v. Mountain View Savings & Loan (1972) "
                + $"28 Cal.App.3d 832).", entry),
        (true, not null, false) =>
            Reason.NotApplied(Section, $"{By} only approves the work, and an approval is no acceptance (In re El Dorado Improvement Corp. "
                + $"(9th Cir. 2003) 335 F.3d 835).", entry),
        _ => null,
    };

    /// <summary>
    /// The reading by acceptance. It completes work that is subject to it; a private owner's acceptance is no completion.
    /// </summary>
    [Rule(Section)]
    public CompletionReading Reading(Completed entry, DaySpan day) =>
        new(Words, day, entry.Contested ? Firmness.Contested : IsNeeded ? Firmness.Certain : Firmness.Asserted,
            By is not null
                ? Reason.Of(Section, $"The public authority accepted the work: {day}.", [entry])
                : Reason.Of(Section, $"The work was accepted {day}. Acceptance counts only where the work is subject to acceptance by a "
                    + $"public entity, which the file does not say; the day is kept as a reading.", [entry]));

    /// <summary>Whether the work was both accepted and certainly complete otherwise, and only which of the two counts is open.</summary>
    public bool IsCertainEitherWay(List<CompletionReading> readings) => IsAsked
        && readings.Exists(static r => IsByAcceptance(r) && r.Firmness == Firmness.Asserted)
        && readings.Exists(static r => r.Firmness == Firmness.Certain);

    /// <summary>
    /// Where the file does not say whether the public takes over what is built, whatever else completes the work is kept as the day to act
    /// on, and the acceptance as the later reading.
    /// </summary>
    [Rule(Section, Sure = Sure.Opinion)]
    public void MakeConditional(List<CompletionReading> readings)
    {
        if (!IsAsked)
            return;
        for (var i = 0; i < readings.Count; i++)
        {
            var reading = readings[i];
            if (IsByAcceptance(reading))
                continue;
            readings[i] = reading with
            {
                Words = $"{reading.Words}, should the approval be no acceptance",
                Firmness = reading.Firmness == Firmness.Certain ? Firmness.Asserted : reading.Firmness,
                Why = Reason.Of(Section, $"The work is subject to acceptance by {By}. If the public takes over what is built, such as "
                    + $"streets or sewers, only the acceptance completes it (A. J. Raisch Paving v. Mountain View Savings & Loan (1972) 28 "
                    + $"Cal.App.3d 832); if it only approves, that is no acceptance and the time runs as on any work (In re El Dorado "
                    + $"Improvement Corp. (9th Cir. 2003) 335 F.3d 835). Act on the latter.", reading.Why.Facts, reading.Why),
            };
        }
    }
}
