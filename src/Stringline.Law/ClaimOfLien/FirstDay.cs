using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>The first day on which a claim of lien may be recorded (Civ. Code §§ 8412, 8414).</summary>
/// <param name="Day">The day after the claimant ceased to provide work; null where it has furnished nothing, or a day is unknown.</param>
/// <param name="Ceased">Whether the file shows that the claimant has ceased.</param>
/// <param name="Why">The reasons.</param>
public sealed record FirstDay(DaySpan? Day, Verdict Ceased, IReadOnlyList<Reason> Why)
{
    /// <summary>
    /// Works out the first day. A claim recorded while the claimant, or a lower tier working for it, still has work to do is void:
    /// Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th 457.
    /// </summary>
    [Rule("Civ. Code § 8412")]
    [Rule("Civ. Code § 8414(a)")]
    public static FirstDay Of(FactsAsOf facts, CompletionReadings completion, IReadOnlyList<OwnersNotice> notices)
    {
        var first = OnceCompleted(facts, completion, Plain(facts, completion));
        foreach (var notice in notices)
            first = OnceDeemed(facts, notice, first);
        return first;
    }

    private static FirstDay Plain(FactsAsOf facts, CompletionReadings completion)
    {
        var section = Section(facts);
        if (facts.LastFurnished is not { } last)
        {
            return new FirstDay(null, Verdict.Open,
                [Reason.Of(section, $"A claim may be recorded only after the claimant has ceased to provide work; the file does not show "
                    + $"when it last did.")]);
        }

        var complete = HasCeased.ByCompletion(facts, completion);
        if (HasCeased.End(facts) is { } ending)
        {
            var end = DaySpan.Of(ending.On) ?? last;
            var ceased = DaySpan.Later(end, last);
            var why = new List<Reason>
            {
                Reason.Of(section, $"The claimant ceased to provide work {ceased}; a claim may be recorded from the day after.", [ending]),
            };
            if (last.Latest > end.Latest)
                why.Add(Reason.Of(section, $"Work was furnished {last}, after the end that the file gives; the later day counts, a lower "
                    + $"tier's corrections too (Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th "
                    + $"457).", [facts.Furnished[^1]]));
            return WithRepairs(ceased, end, Verdict.Yes, completion, why, section, facts);
        }

        return complete is not null
            ? WithRepairs(last, null, Verdict.Yes, completion,
                [Reason.Of(section, $"The whole work is complete, so the claimant has ceased; last furnished {last}.",
                    [facts.Furnished[^1]], complete.Why)], section, facts) with { CompletedOn = LastCompletion(facts, completion) }
            : WithRepairs(last, null, Verdict.Open, completion,
                [Reason.Of(section, $"Last furnished {last}; the file does not say that the claimant will furnish no more. A claim "
                    + $"recorded too early is void (Precision Framing Systems v. Luzuriaga (2019) 39 Cal.App.5th "
                    + $"457).", [facts.Furnished[^1]])], section, facts);
    }

    private static LocalDate? LastCompletion(FactsAsOf facts, CompletionReadings completion)
    {
        LocalDate? last = null;
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness != Firmness.Floor && reading.On.Latest <= facts.AsOf && !(last >= reading.On.Latest))
                last = reading.On.Latest;
        }

        return last;
    }

    /// <summary>
    /// The last day on which the whole work may have become complete, where that alone shows that the claimant has ceased; null elsewhere.
    /// </summary>
    public LocalDate? CompletedOn { get; private init; }

    /// <summary>
    /// Whether work was furnished after the whole was complete, so that the two ends of <see cref="Day"/> are two readings.
    /// </summary>
    public bool WorkAfterCompletion { get; private init; }

    /// <summary>Whether a direct contractor's contract may not have been completed when it ceased, and nothing says when it was.</summary>
    public bool MayNotBeCompleted { get; private init; }

    // The last work that was not begun after completion; what runs past completion is cut to it, the end of furnishing too.
    private static DaySpan UpTo(DaySpan completed, DaySpan? end, FactsAsOf facts, DaySpan last) =>
        // A later completion never leaves an earlier last work before it.
        completed.IsExact
            ? UpTo(completed.Earliest, end, facts, last)
            : new(UpTo(completed.Earliest, end, facts, last).Earliest, UpTo(completed.Latest, end, facts, last).Latest);

    private static DaySpan UpTo(LocalDate completed, DaySpan? end, FactsAsOf facts, DaySpan last)
    {
        DaySpan? before = null;
        for (var i = 0; i < facts.Furnished.Count; i++)
        {
            var furnished = facts.Furnished[i];
            if (!(furnished.On.Earliest > completed) && DaySpan.Of(furnished.Until) is { } until)
                before = before is { } so ? DaySpan.Later(so, until) : until;
        }

        var counted = before ?? last;
        if (end is { } ended)
            counted = DaySpan.Later(counted, ended);
        return new DaySpan(LocalDate.Min(counted.Earliest, completed), LocalDate.Min(counted.Latest, completed));
    }

    /// <summary>
    /// What was done after the whole work was complete counts if it was still owed under the contract (Precision Framing), and does
    /// not if it only cured a defect (Hundley v. Marinkovich (1942) 53 Cal.App.2d 288; Mott v. Wright (1919) 43 Cal.App. 21): both
    /// readings stand, also where the completion is disputed. It never moves the last day.
    /// </summary>
    [Rule("Civ. Code § 8414(a)", Sure = Sure.Opinion)]
    private static FirstDay WithRepairs(DaySpan ceased, DaySpan? end, Verdict verdict, CompletionReadings completion, List<Reason> why,
        string section, FactsAsOf facts)
    {
        CompletionReading? complete = null;
        var without = ceased;
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness == Firmness.Floor || reading.On.Latest > facts.AsOf)
                continue;
            var cut = UpTo(reading.On, end, facts, facts.LastFurnished!.Value);
            if (cut == ceased || (complete is not null && cut.Earliest >= without.Earliest))
                continue;
            (complete, without) = (reading, cut);
        }

        if (complete is null)
            return new FirstDay(ceased.Plus(1), verdict, why);
        why.Add(Reason.Of(section, $"The whole work was complete {complete.On}, on the reading «{complete.Name}». If what was furnished "
            + $"afterwards only cured a defect, it does not count and the claimant had ceased {without} (Hundley v. Marinkovich (1942) 53 "
            + $"Cal.App.2d 288); if it was still owed, it counts. To be safe record after it.", [facts.Furnished[^1]], complete.Why));
        return new FirstDay(new DaySpan(without.Earliest.PlusDays(1), ceased.Latest.PlusDays(1)), verdict, why) { WorkAfterCompletion =
            true };
    }

    /// <summary>
    /// A direct contractor records after it completes the direct contract; only of others does the Code say that they cease. One that left
    /// with part of the price unearned, or whose contract ended otherwise than by performance, may be too early: that the contract is then
    /// as complete as it will be can be said, but no opinion was read. So record, and record again once the contract or the whole work is
    /// surely complete.
    /// </summary>
    [Rule("Civ. Code § 8412", Sure = Sure.OurReading)]
    private static FirstDay OnceCompleted(FactsAsOf facts, CompletionReadings completion, FirstDay first)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DirectContractor || first is not { Ceased: Verdict.Yes, Day: { } day }
            || HasCeased.Performed(facts) is not null)
            return first;
        var ended = facts.All<ContractEnded>();
        if (ended.Count == 0 && !LeftPartUndone(facts))
            return first;
        var complete = HasCeased.ByCompletion(facts, completion);
        List<Reason> why =
        [
            .. first.Why,
            Reason.Of("Civ. Code § 8412", $"A direct contractor records after it completes the direct contract, and the file does not show "
                + $"that it did. If the contract is as complete as it will be, a claim may be recorded now; to be safe record, and record "
                + $"again inside the time after the contract or the whole work is surely complete.", [.. ended]),
        ];
        return complete is null
            ? first with { Why = why, MayNotBeCompleted = true }
            : first with { Why = why,
                Day = new DaySpan(day.Earliest, LocalDate.Max(day.Latest, LatestCompletion(complete, completion).PlusDays(1))),
                    CompletedWithTheWhole = true };
    }

    // A later day that the owner's recorded notice states may be the true one.
    private static LocalDate LatestCompletion(CompletionReading certain, CompletionReadings completion)
    {
        var latest = certain.On.Latest;
        foreach (var reading in completion.Open)
        {
            if (reading.IsOwnersWord)
                latest = LocalDate.Max(latest, reading.On.Latest);
        }

        return latest;
    }

    /// <summary>Whether the second reading is that the contract was completed only with the whole work.</summary>
    public bool CompletedWithTheWhole { get; private init; }

    // By the file less was furnished than the price agreed, its changes included; what is not priced says nothing.
    private static bool LeftPartUndone(FactsAsOf facts)
    {
        if (facts.Job.Contract.Price is not { } price)
            return false;
        var furnished = 0m;
        foreach (var item in facts.Furnished)
        {
            if (item.Amount is not { } amount)
                return false;
            furnished += amount;
        }

        foreach (var change in facts.All<Change>())
            price += change.Agreed ? change.Amount : 0;
        return furnished < price;
    }

    // A notice of completion of the claimant's own part opens the time to record (Civ. Code § 8186(a)).
    private static FirstDay OnceDeemed(FactsAsOf facts, OwnersNotice notice, FirstDay first)
    {
        if (first.Day is not { } day)
            return first;
        if (OneContract.DeemedCeased(facts, notice) is var deemed && deemed == Verdict.No)
            return first;
        var from = notice.Recorded.Plus(1);
        if (from.Earliest >= day.Latest && first is { Ceased: Verdict.Yes, MayNotBeCompleted: false })
            return first;
        var earliest = LocalDate.Min(day.Earliest, from.Earliest);
        return deemed == Verdict.Yes
            ? new FirstDay(new DaySpan(earliest, first.MayNotBeCompleted ? from.Latest : LocalDate.Min(day.Latest, from.Latest)),
                Verdict.Yes,
                [.. first.Why,
                    Reason.Of("Civ. Code § 8186(a)", $"A notice of completion of the direct contract under which the claimant works was "
                        + $"recorded {notice.Recorded}: on its recording the claimant is taken to have completed or ceased, whatever it "
                        + $"furnishes afterwards.", [notice.Entry])]) { CompletedByNotice = first.MayNotBeCompleted
                        && earliest < from.Earliest }
            : first with
            {
                Day = new DaySpan(earliest, day.Latest),
                ByNotice = true,
                Why = [.. first.Why,
                    Reason.Of("Civ. Code § 8186(a)",
                        $"A notice of completion of one direct contract was recorded {notice.Recorded}. If it is good and the claimant's, "
                            + $"the claimant is taken to have ceased on its recording; that is open, so both days stand.", [notice.Entry])],
            };
    }

    /// <summary>Whether the second reading is that the contract was completed only by the recording of an owner's notice for it.</summary>
    public bool CompletedByNotice { get; private init; }

    /// <summary>Whether the earlier reading is that of an owner's notice for one contract.</summary>
    public bool ByNotice { get; private init; }

    private static string Section(FactsAsOf facts) =>
        facts.Job.Claimant.Role == ClaimantRole.DirectContractor ? "Civ. Code § 8412" : "Civ. Code § 8414(a)";

    /// <summary>The finding <c>claim-of-lien.first-day</c>.</summary>
    public Finding Finding(FactsAsOf facts)
    {
        var readings = new List<Reading>();
        if (Day is { } day)
        {
            readings.Add(new Reading(EarlyName, day.Earliest));
            if (!day.IsExact)
                readings.Add(new Reading(LateName, day.Latest));
        }

        return new Finding
        {
            Id = "claim-of-lien.first-day",
            Title = "Claim of lien: first day to record",
            Standing = StandingOn(facts.AsOf),
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.BandOver(readings, Ceased == Verdict.Yes && !MayNotBeCompleted),
            Why = Why,
            Questions = Questions(facts),
        };
    }

    private Sentence EarlyName => this switch
    {
        { ByNotice: true } => $"if the notice of completion of one contract is good",
        { WorkAfterCompletion: true } => $"if the work after completion only cured a defect",
        { MayNotBeCompleted: true } or { CompletedWithTheWhole: true } or { CompletedByNotice: true } =>
            $"if the direct contract is as complete as it will be",
        { Ceased: Verdict.Yes } => $"the day after work ceased",
        _ => $"if nothing more is furnished",
    };

    private Sentence LateName => this switch
    {
        { CompletedWithTheWhole: true } => $"if the direct contract was completed only with the whole work",
        { CompletedByNotice: true } => $"if the direct contract was completed only by the recording of its notice",
        { WorkAfterCompletion: true } => $"if the work after completion was still owed",
        { ByNotice: true } => $"if it is not",
        _ => $"work ceased on its latest day",
    };

    private List<Question> Questions(FactsAsOf facts)
    {
        List<Question> questions = [];
        if (Ceased != Verdict.Yes && Day is not null)
            questions.Add(
                new Question($"Has the claimant, with everyone working for it, furnished the last of its work? "
                    + $"Add {WorkKinds.FurnishingEnded}."));
        if ((MayNotBeCompleted || CompletedWithTheWhole) && facts.All<ContractEnded>().Count == 0)
            questions.Add(
                new Question($"Is the direct contract completed, or was it ended, by whom, and when?{WorkKinds.ContractEnded:aside}"));
        return questions;
    }

    private Standing StandingOn(LocalDate asOf) => this switch
    {
        { Day: null } => Standing.NotYet,
        { Ceased: Verdict.Yes, MayNotBeCompleted: false, Day: { } day } => asOf >= day.Latest
            ? Standing.Open : asOf >= day.Earliest ? Standing.InDoubt : Standing.NotYet,
        { Day: { } day } => asOf >= day.Earliest ? Standing.InDoubt : Standing.NotYet,
    };
}
