using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Completion;

/// <summary>The owner's recorded notice of completion or cessation, and what it does to the claimant's time.</summary>
public sealed class OwnersNotice
{
    /// <summary>How long after completion a notice of completion may be recorded.</summary>
    [Rule("Civ. Code § 8182(a)")]
    [Rule("Civ. Code § 9204(a)")]
    internal static NumberRow TimeToRecord(FactsAsOf facts, LocalDate completed) =>
        facts.Numbers.On(facts.Job.Work.Kind == WorkKind.Public ? Number.RecordPublicCompletion : Number.RecordCompletion, completed);

    private readonly FactsAsOf facts;
    private readonly OpenDays calendar;
    private readonly Counted counted;

    private OwnersNotice(OwnerRecorded entry, DaySpan recorded, FactsAsOf facts, OpenDays calendar)
    {
        Entry = entry;
        Recorded = recorded;
        this.facts = facts;
        this.calendar = calendar;
        counted = ToClaimant();
        (ReachesClaimant, ReachWhy) = ApplyFormDefects((counted.Verdict, counted.Why));
    }

    /// <summary>The entry.</summary>
    public OwnerRecorded Entry { get; }

    /// <summary>The day it was recorded.</summary>
    public DaySpan Recorded { get; }

    /// <summary>Whether, if it is effective, it shortens this claimant's time (Civ. Code § 8190).</summary>
    public Verdict ReachesClaimant { get; }

    /// <summary>Why.</summary>
    public Reason ReachWhy { get; }

    /// <summary>What would settle whether it shortens this claimant's time; empty where nothing is open.</summary>
    internal IReadOnlyList<Question> Questions => counted.Questions;

    /// <summary>
    /// The owner's notices of the file, earliest first. A notice of acceptance is one of public work alone (Civ. Code § 9356(a)).
    /// </summary>
    public static IReadOnlyList<OwnersNotice> Of(FactsAsOf facts, OpenDays calendar)
    {
        var entries = facts.All<OwnerRecorded>();
        if (entries.Count == 0)
            return [];
        var notices = new List<OwnersNotice>(entries.Count);
        foreach (var entry in entries)
        {
            if (entry.Notice == OwnerNotice.Acceptance && facts.Job.Work.Kind == WorkKind.Private)
                continue;
            if (DaySpan.Of(entry.On) is { } recorded)
                notices.Add(new OwnersNotice(entry, recorded, facts, calendar));
        }

        return notices;
    }

    /// <summary>Whether it is for the whole work, and not for one of several direct contracts only (Civ. Code § 8186).</summary>
    public bool IsForWholeWork => Entry.ContractOf is null;

    /// <summary>
    /// Whether, though it names one contract, it may be for the whole work: where that contract may be the only one, § 8186 does not speak
    /// of it.
    /// </summary>
    internal bool MayBeForWholeWork => !IsForWholeWork && facts.Job.Work.SeveralDirectContracts != true;

    /// <summary>
    /// Whether it has what the Code asks of it: the owner's signature, verification and the names. One that lacks something has no effect;
    /// whether what it has will do all the same is for a court, so that both readings stand until that is settled.
    /// </summary>
    [Rule("Civ. Code § 8182(b)")]
    [Rule("Civ. Code § 8182(d)")]
    [Rule("Civ. Code § 8188")]
    [Rule("Civ. Code § 8102")]
    public Verdict HasForm => Entry switch
    {
        { HeldIneffective: true } => Verdict.No,
        { Lacks: null } => Verdict.Yes,
        _ => Verdict.Open,
    };

    /// <summary>Why it is passed over where it has no form: for the remedies that ask nothing else of it.</summary>
    internal Reason PassedOver(string section) =>
        Reason.NotApplied(section, $"It is settled that the {Words} recorded {Recorded} has no effect.", Entry);

    /// <summary>
    /// The completion in time after which it is recorded: that of the whole work, or of the one contract, which only the notice itself
    /// states.
    /// </summary>
    internal LocalDate CompletionToServe(LocalDate wholeCompleted) => IsForWholeWork ? wholeCompleted : Entry.States ?? wholeCompleted;

    /// <summary>In words.</summary>
    public string Words => Entry.Notice switch
    {
        OwnerNotice.Completion => "notice of completion",
        OwnerNotice.Cessation => "notice of cessation",
        OwnerNotice.Acceptance => "notice of acceptance",
        _ => throw new InvalidOperationException($"No such notice: {Entry.Notice}."),
    };

    /// <summary>
    /// Whether a notice of completion recorded on a day takes effect if the work was completed on another: on or within 15 days
    /// after completion, and not before it (Munger &amp; Munger v. McBratney (1955) 131 Cal.App.2d Supp. 866). The owner's
    /// last day gets the benefit of every roll, since the claimant's time is then the shorter.
    /// </summary>
    [Rule("Civ. Code § 8182(a)")]
    [Rule("Civ. Code § 8182(d)")]
    public bool IsEffectiveIfCompletedOn(LocalDate completed, LocalDate recorded) =>
        completed <= recorded && recorded <= LatestToRecord(facts, completed, calendar);

    /// <summary>
    /// The same, with how sure it is: the courts' list carries the fifteenth day (Code Civ. Proc. § 12a) of every act that a law provides
    /// for; where only the State's list carries it on (Civ. Code §§ 7, 10), a court may say that the notice came too late.
    /// </summary>
    [Rule("Civ. Code § 8182(a)")]
    [Rule("Civ. Code § 10", Sure = Sure.OurReading)]
    public Verdict EffectIfCompletedOn(LocalDate completed, LocalDate recorded) =>
        !IsEffectiveIfCompletedOn(completed, recorded) ? Verdict.No
        : recorded <= calendar.RollForward(LastDayToRecord(facts, completed)) ? Verdict.Yes
        : Verdict.Open;

    /// <summary>The statutory last day to record a notice of completion.</summary>
    public static LocalDate LastDayToRecord(FactsAsOf facts, LocalDate completed) => TimeToRecord(facts, completed).LastDay(completed);

    /// <summary>The day to which any list lets that last day roll: recorded later, the notice has no effect.</summary>
    public static LocalDate LatestToRecord(FactsAsOf facts, LocalDate completed, OpenDays calendar) =>
        calendar.RollForwardOnAnyList(LastDayToRecord(facts, completed));

    /// <summary>The owner's time to record a notice of completion: what its paper says.</summary>
    [Rule("Civ. Code § 8182(a)")]
    internal static TimeToRecord TimeFor(FactsAsOf facts, LocalDate completed, OpenDays calendar)
    {
        var last = LastDayToRecord(facts, completed);
        return new TimeToRecord(TimeToRecord(facts, completed), calendar.LastOpenDayOnOrBefore(last), last,
            calendar.RollForwardOnAnyList(last));
    }

    /// <summary>The first day of completion for which a notice of completion recorded on a day takes effect.</summary>
    public LocalDate EarliestCompletionCovered(LocalDate recorded)
    {
        var day = TimeToRecord(facts, recorded).LookBack(recorded);
        while (day < recorded && !IsEffectiveIfCompletedOn(day, recorded))
            day = day.PlusDays(1);
        while (IsEffectiveIfCompletedOn(day.PlusDays(-1), recorded))
            day = day.PlusDays(-1);
        return day;
    }

    /// <summary>
    /// Whether a notice of cessation takes effect: labor had stopped for so many continuous days before it was recorded, and was still
    /// stopped that day; and it is as the Code asks.
    /// </summary>
    public Verdict CessationIsEffective(IReadOnlyList<LaborStop> stops, out Reason why)
    {
        // Asked for every reading of completion, of which each stop of labor makes one.
        if (!ReferenceEquals(cessation?.By, stops))
            cessation = new CessationEffect(stops, IfLaborStopped(stops, out var found), found);
        why = cessation!.Why;
        return cessation.Verdict;
    }

    // A class, since its parts are read together, on whatever thread.
    private sealed record CessationEffect(IReadOnlyList<LaborStop> By, Verdict Verdict, Reason Why);

    private CessationEffect? cessation;

    private Verdict IfLaborStopped(IReadOnlyList<LaborStop> stops, out Reason why)
    {
        var (stopped, reason) = ApplyFormDefects(ByItsOwnWord(LaborHadStopped(stops)));
        // Civ. Code § 8186 knows a notice of completion of one contract only; the owner will say that the paper is good for the whole.
        if (!IsForWholeWork && stopped != Verdict.No)
        {
            why = Reason.Of("Civ. Code § 8186", $"The notice of cessation names one direct contract. The section knows no notice of "
                + $"cessation for one contract, and Civ. Code § 8188 speaks of labor on the work as a whole; the owner may say that it is "
                + $"good for the whole, so plan on it.", [Entry], reason);
            return Verdict.Open;
        }

        why = reason;
        return stopped;
    }

    [Rule("Civ. Code § 8188(a)")]
    private (Verdict Verdict, Reason Why) LaborHadStopped(IReadOnlyList<LaborStop> stops)
    {
        const string Section = "Civ. Code § 8188(a)";
        (Verdict, Reason)? belied = null;
        foreach (var stop in stops)
        {
            // Thirty days "prior to the recordation" have surely run on the day after the last of them; on the last that can be argued.
            var idle = facts.Numbers.On(LaborStop.ToRecordCessation(facts), stop.Last.Earliest);
            var needed = stop.Last.LastDay(facts.Numbers, idle.Id);
            // No recording finds them in a stop that ended on the last of them or before.
            if (stop.Resumed is { } resumed && (resumed < Recorded.Earliest || resumed <= needed.Earliest))
                continue;
            if (stop.Against is { } other)
            {
                belied ??= (Verdict.Open, Reason.Of(Section, $"Labor is said to have stopped {stop.Last}, but another entry tells of labor "
                    + $"afterwards.", [Entry, stop.Entry, other]));
                continue;
            }

            if (Recorded.Latest < needed.Earliest)
                return belied
                    ?? (Verdict.No, Reason.NotApplied(Section,
                        $"The notice of cessation was recorded {Recorded}, before {idle} without labor since {stop.Last} had run: no "
                            + $"effect.", Entry, stop.Entry));
            if (stop.OwnLaborBy(facts, Recorded.Latest) is { } own)
                return (Verdict.Open, Reason.Of(Section, $"Labor is said to have stopped {stop.Last}, but the claimant's own work "
                    + $"afterwards, before the notice of cessation was recorded {Recorded}, speaks against it.", [Entry, stop.Entry, own]));
            return Recorded.Earliest > needed.Latest && !(stop.Resumed <= Recorded.Latest)
                ? (Verdict.Yes, Reason.Of(Section, $"Labor had stopped on {stop.Last}, at least {idle} before the notice of cessation was "
                    + $"recorded, and was still stopped.", [Entry, stop.Entry]))
                : (Verdict.Open, Reason.Of(Section, $"Labor stopped {stop.Last}; whether {idle} had run before the notice of cessation was "
                    + $"recorded {Recorded}, and labor was still stopped, is open.", [Entry, stop.Entry]));
        }

        var days = facts.Numbers.On(LaborStop.ToRecordCessation(facts), Entry.States ?? Recorded.Earliest);
        if (stops.Count > 0)
            return belied
                ?? (Verdict.No, Reason.NotApplied(Section,
                    $"Labor had resumed before the notice of cessation was recorded, or before {days} had run: no effect.", Entry));
        return RefutesItself
            ? (Verdict.No, Reason.NotApplied(Section, $"The notice of cessation itself says that labor ceased "
                + $"on {Entry.States!.Value}, less than {days} before it was recorded: no effect.", Entry))
            : (Verdict.Open, Reason.Of(Section, $"The file does not show when labor stopped, so whether the notice of cessation takes "
                + $"effect is open.", [Entry]));
    }

    // What a notice of cessation says of itself: that labor ceased on a day too few days before it was recorded.
    private bool RefutesItself =>
        Entry.States is { } states && Recorded.Latest < facts.Numbers.LastDay(LaborStop.ToRecordCessation(facts), states);

    /// <summary>
    /// A signed and verified notice is the owner's side of a question of fact. Where the file says otherwise, and the notice by its own
    /// word is good or its word is not entered, both stand until a court has held, or the owner has granted, that it has no effect.
    /// </summary>
    [Rule("Civ. Code § 8188(a)", Sure = Sure.OurReading)]
    private (Verdict Verdict, Reason Why) ByItsOwnWord((Verdict Verdict, Reason Why) byTheFile) =>
        byTheFile.Verdict != Verdict.No || RefutesItself
        ? byTheFile
        : (Verdict.Open, Entry.States is { } states
            ? Reason.Of("Civ. Code § 8188(a)", $"The notice of cessation says that labor ceased on {states}; by that day it is good, by "
                + $"the file it is not. The notice is itself the dispute: plan on the shorter time.", [Entry], byTheFile.Why)
            : Reason.Of("Civ. Code § 8188(a)", $"The file does not say on which day, by the notice of cessation, labor ceased; by the file "
                + $"it is not good. The notice is itself the dispute: plan on the shorter time.", [Entry], byTheFile.Why));

    private (Verdict Verdict, Reason Why) ApplyFormDefects((Verdict Verdict, Reason Why) reach)
    {
        if (reach.Verdict == Verdict.No)
            return reach;
        var section = Entry.Notice == OwnerNotice.Completion ? "Civ. Code § 8182(d)" : "Civ. Code § 8188";
        var lacks = Entry.Lacks is { } what ? $" It lacks, as entered: {what}." : "";
        return HasForm switch
        {
            Verdict.Yes => reach,
            Verdict.No =>
                (Verdict.No, Reason.NotApplied(section,
                    $"A court has held, or the owner has granted, that the {Words} has no effect.{lacks}", Entry)),
            Verdict.Open =>
                (Verdict.Open, Reason.Of(section, $"A {Words} that is not as the Code asks has no effect (Howell v. Gunderson (1967) 250 "
                    + $"Cal.App.2d Supp. 961).{lacks} The owner may say that it will do all the same, so plan on the shorter "
                    + $"time.", [Entry], reach.Why)),
            _ => throw new InvalidOperationException($"No such verdict: {HasForm}."),
        };
    }

    // A notice of completion of one contract counts for those under it; every notice by the copy.
    private Counted ToClaimant()
    {
        if (IsForWholeWork || Entry.Notice == OwnerNotice.Cessation)
            return OwnersCopy.Given(facts, this, calendar);
        var claimants = OneContract.IsClaimants(facts, Entry, Words);
        if (claimants.Verdict == Verdict.No)
            return claimants;
        var copy = OwnersCopy.Given(facts, this, calendar);
        return claimants.Verdict == Verdict.Yes || copy.Verdict == Verdict.No ? copy
            : Counted.Open(claimants.Why, [.. claimants.Questions, .. copy.Questions]);
    }
}

/// <summary>An owner's time to record a notice of completion (Civ. Code § 8182(a)).</summary>
/// <param name="Within">How long after completion it may be recorded.</param>
/// <param name="PlanOn">The day to plan on: the recorder is open, and nothing hangs on a roll.</param>
/// <param name="Last">The last day, not rolled.</param>
/// <param name="Latest">The day to which any list lets it roll: recorded later it has no effect.</param>
public sealed record TimeToRecord(NumberRow Within, LocalDate PlanOn, LocalDate Last, LocalDate Latest);
