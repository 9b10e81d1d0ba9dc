using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.ClaimOfLien;

/// <summary>The first day on which a claim of lien may be recorded (Civ. Code §§ 8412, 8414).</summary>
/// <param name="Day">The day after the claimant ceased to provide work; null where it has furnished nothing, or a day is unknown.</param>
/// <param name="Ceased">Whether the file shows that the claimant has ceased.</param>
/// <param name="Why">The reasons.</param>
public sealed record FirstDay(Days? Day, Verdict Ceased, IReadOnlyList<Reason> Why)
{
    /// <summary>
    /// Works out the first day. A claim recorded while the claimant, or a lower tier working for it, still has work to do is void:
    /// Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457.
    /// </summary>
    [Rule("Civ. Code § 8412")]
    [Rule("Civ. Code § 8414(a)")]
    public static FirstDay Of(FactsAsOf facts, Completion.CompletionReadings completion)
    {
        var section = Section(facts);
        var ended = facts.All<FurnishingEnded>();
        if (facts.LastFurnished is not { } last)
        {
            return new FirstDay(null, Verdict.Open,
                [Reason.Of(section, $"A claim may be recorded only after the claimant has ceased to provide work; the file does not show when it last did.")]);
        }

        var complete = Completion.HasCeased.ByCompletion(facts, completion);
        if (ended.Count > 0)
        {
            var end = Days.Of(ended[^1].On) ?? last;
            var ceased = Days.Later(end, last);
            var why = new List<Reason>
            {
                Reason.Of(section, $"The claimant ceased to provide work {ceased}; a claim may be recorded from the day after.", [ended[^1]]),
            };
            if (last.Latest > end.Latest)
                why.Add(Reason.Of(section, $"Work was furnished {last}, after the end that the file gives; the later day counts, a lower tier's corrections too (Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457).", [facts.Furnished[^1]]));
            return WithRepairs(ceased, Days.Later(end, UpTo(complete, facts, last)), Verdict.Yes, complete, why, section, facts);
        }

        return complete is not null
            ? WithRepairs(last, UpTo(complete, facts, last), Verdict.Yes, complete,
                [Reason.Of(section, $"The whole work is complete, so the claimant has ceased; last furnished {last}.", [facts.Furnished[^1]], complete.Why)], section, facts)
            : new FirstDay(last.Plus(1), Verdict.Open,
                [Reason.Of(section, $"Last furnished {last}; the file does not say that the claimant will furnish no more. A claim recorded too early is void (Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457).", [facts.Furnished[^1]])]);
    }

    /// <summary>Whether work was furnished after the whole was complete, so that the two ends of <see cref="Day"/> are two readings.</summary>
    public bool WorkAfterCompletion { get; private init; }

    // The last work that was not begun after completion; what runs past completion is cut to it.
    private static Days UpTo(Completion.CompletionReading? complete, FactsAsOf facts, Days last)
    {
        if (complete is not { On: var doubt })
            return last;
        // A later completion never leaves an earlier last work before it.
        return new Days(UpTo(doubt.Earliest, facts, last).Earliest, UpTo(doubt.Latest, facts, last).Latest);
    }

    private static Days UpTo(LocalDate completed, FactsAsOf facts, Days last)
    {
        Days? before = null;
        foreach (var furnished in facts.Furnished)
        {
            if (!(furnished.On.Earliest > completed) && Days.Of(furnished.Until) is { } until)
                before = before is { } so ? Days.Later(so, until) : until;
        }

        var counted = before ?? last;
        return new Days(LocalDate.Min(counted.Earliest, completed), LocalDate.Min(counted.Latest, completed));
    }

    /// <summary>
    /// What was done after the whole work was complete counts if it was still owed under the contract (Precision Framing), and does
    /// not if it only cured a defect (Hundley v. Marinkovich (1942) 53 Cal.App.2d 288; Mott v. Wright (1919) 43 Cal.App. 21): both
    /// readings stand. It never moves the last day.
    /// </summary>
    [Rule("Civ. Code § 8414(a)", Sure = Sure.Opinion)]
    private static FirstDay WithRepairs(
        Days ceased, Days ceasedWithout, Verdict verdict, Completion.CompletionReading? complete, List<Reason> why, string section, FactsAsOf facts)
    {
        if (complete is null || ceased == ceasedWithout)
            return new FirstDay(ceased.Plus(1), verdict, why);
        why.Add(Reason.Of(section, $"The whole work was complete {complete.On}. If what was furnished afterwards only cured a defect, it does not count and the claimant had ceased {ceasedWithout} (Hundley v. Marinkovich (1942) 53 Cal.App.2d 288); if it was still owed, it counts. To be safe record after it.", [facts.Furnished[^1]], complete.Why));
        return new FirstDay(new Days(ceasedWithout.Earliest.PlusDays(1), ceased.Latest.PlusDays(1)), verdict, why) { WorkAfterCompletion = true };
    }

    private static string Section(FactsAsOf facts) =>
        facts.Job.Claimant.Role == ClaimantRole.DirectContractor ? "Civ. Code § 8412" : "Civ. Code § 8414(a)";

    /// <summary>The finding <c>claim-of-lien.first-day</c>.</summary>
    public Finding Finding(FactsAsOf facts)
    {
        var readings = new List<Reading>();
        if (Day is { } day)
        {
            readings.Add(new Reading(
                WorkAfterCompletion ? "if the work after completion only cured a defect"
                : Ceased == Verdict.Yes ? "the day after work ceased"
                : "if nothing more is furnished", day.Earliest));
            if (!day.IsExact)
                readings.Add(new Reading(WorkAfterCompletion ? "if the work after completion was still owed" : "work ceased on its latest day", day.Latest));
        }

        return new Finding
        {
            Id = "claim-of-lien.first-day",
            Title = "Claim of lien: first day to record",
            Standing = StandingOn(facts.AsOf),
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.Band(readings, Ceased == Verdict.Yes),
            Why = Why,
            Questions = Ceased == Verdict.Yes || Day is null ? [] :
                [new Question("Has the claimant, with everyone working for it, furnished the last of its work? Add furnishing-ended.")],
        };
    }

    private Standing StandingOn(LocalDate asOf) => this switch
    {
        { Day: null } => Standing.NotYet,
        { Ceased: Verdict.Yes, Day: { } day } => asOf >= day.Latest ? Standing.Open : asOf >= day.Earliest ? Standing.InDoubt : Standing.NotYet,
        { Day: { } day } => asOf >= day.Earliest ? Standing.InDoubt : Standing.NotYet,
    };
}
