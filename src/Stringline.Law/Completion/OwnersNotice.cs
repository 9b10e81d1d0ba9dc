using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Completion;

/// <summary>The owner's recorded notice of completion or cessation, and what it does to the claimant's time.</summary>
public sealed class OwnersNotice
{
    /// <summary>Days after completion within which the owner may record a notice of completion.</summary>
    public const int RecordingDays = 15;

    /// <summary>Days after recording within which the owner gives the copy.</summary>
    public const int CopyDays = 10;

    /// <summary>
    /// Days by which a copy put in the mail in time may still be under way: the five days which Code Civ. Proc. § 1013(a)
    /// allows for mail within California serve as a yardstick. Our rule, on the safer side.
    /// </summary>
    public const int MailDays = 5;

    private readonly FactsAsOf facts;
    private readonly OpenDays calendar;

    private OwnersNotice(OwnerRecorded entry, Days recorded, FactsAsOf facts, OpenDays calendar)
    {
        Entry = entry;
        Recorded = recorded;
        this.facts = facts;
        this.calendar = calendar;
        (ReachesClaimant, ReachWhy) = AsToForm(AppliesToContract() is { } other ? other : CopyGiven());
    }

    /// <summary>The entry.</summary>
    public OwnerRecorded Entry { get; }

    /// <summary>The day it was recorded.</summary>
    public Days Recorded { get; }

    /// <summary>Whether, if it is effective, it shortens this claimant's time (Civ. Code § 8190).</summary>
    public Verdict ReachesClaimant { get; }

    /// <summary>Why.</summary>
    public Reason ReachWhy { get; }

    /// <summary>The owner's notices of the file, earliest first.</summary>
    public static IReadOnlyList<OwnersNotice> Of(FactsAsOf facts, OpenDays calendar)
    {
        var notices = new List<OwnersNotice>();
        foreach (var entry in facts.All<OwnerRecorded>())
        {
            if (Days.Of(entry.On) is { } recorded)
                notices.Add(new OwnersNotice(entry, recorded, facts, calendar));
        }

        return notices;
    }

    /// <summary>Whether it is for the whole work, and not for one of several direct contracts only (Civ. Code § 8186).</summary>
    public bool IsForWholeWork => Entry.ContractOf is null;

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
    internal Reason PassedOver(string section) => Reason.NotApplied(section, $"It is settled that the {Words} recorded {Recorded} has no effect.", Entry);

    /// <summary>The completion within 15 days of which it is recorded: that of the whole work, or of the one contract, which only the notice itself states.</summary>
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
        completed <= recorded && recorded <= calendar.RollForwardOnAnyList(Period.LastDay(completed, RecordingDays));

    /// <summary>The first day of completion for which a notice of completion recorded on a day takes effect.</summary>
    public LocalDate FirstCompletionServed(LocalDate recorded)
    {
        var day = recorded.PlusDays(-RecordingDays);
        while (IsEffectiveIfCompletedOn(day.PlusDays(-1), recorded))
            day = day.PlusDays(-1);
        return day;
    }

    /// <summary>
    /// Whether a notice of cessation takes effect: labor had stopped for 30 continuous days before it was recorded, and was still
    /// stopped that day; and it is as the Code asks.
    /// </summary>
    public Verdict CessationIsEffective(IReadOnlyList<LaborStop> stops, out Reason why)
    {
        var stopped = LaborHadStopped(stops, out why);
        (stopped, why) = AsToForm((stopped, why));
        return stopped;
    }

    [Rule("Civ. Code § 8188(a)")]
    private Verdict LaborHadStopped(IReadOnlyList<LaborStop> stops, out Reason why)
    {
        foreach (var stop in stops)
        {
            var needed = stop.Last.Plus(LaborStop.IdleDaysBeforeNotice);
            // No recording finds thirty days in a stop that ended on the thirtieth or before.
            if (stop.Resumed is { } resumed && (resumed <= Recorded.Earliest || resumed <= needed.Earliest))
                continue;
            if (Recorded.Earliest >= needed.Latest && !(stop.Resumed <= Recorded.Latest))
            {
                why = Reason.Of("Civ. Code § 8188(a)", $"Labor had stopped on {stop.Last}, at least 30 days before the notice of cessation was recorded, and was still stopped.", [Entry, stop.Entry]);
                return Verdict.Yes;
            }

            if (Recorded.Latest >= needed.Earliest)
            {
                why = Reason.Of("Civ. Code § 8188(a)", $"Labor stopped {stop.Last}; whether 30 days had run, and labor was still stopped, when the notice of cessation was recorded {Recorded} is open.", [Entry, stop.Entry]);
                return Verdict.Open;
            }

            why = Reason.NotApplied("Civ. Code § 8188(a)", $"The notice of cessation was recorded {Recorded}, before 30 days without labor since {stop.Last} had run: no effect.", Entry, stop.Entry);
            return Verdict.No;
        }

        if (stops.Count > 0)
        {
            why = Reason.NotApplied("Civ. Code § 8188(a)", $"Labor had resumed before the notice of cessation was recorded, or before 30 days had run: no effect.", Entry);
            return Verdict.No;
        }

        if (Entry.States is { } states && Recorded.Latest < states.PlusDays(LaborStop.IdleDaysBeforeNotice))
        {
            why = Reason.NotApplied("Civ. Code § 8188(a)", $"The notice of cessation itself says that labor ceased on {states}, less than 30 days before it was recorded: no effect.", Entry);
            return Verdict.No;
        }

        why = Reason.Of("Civ. Code § 8188(a)", $"The file does not show when labor stopped, so whether the notice of cessation takes effect is open.", [Entry]);
        return Verdict.Open;
    }

    private (Verdict Verdict, Reason Why) AsToForm((Verdict Verdict, Reason Why) reach)
    {
        if (reach.Verdict == Verdict.No)
            return reach;
        var section = Entry.Notice == OwnerNotice.Completion ? "Civ. Code § 8182(d)" : "Civ. Code § 8188";
        var lacks = Entry.Lacks is { } what ? $" It lacks, as entered: {what}." : "";
        return HasForm switch
        {
            Verdict.Yes => reach,
            Verdict.No => (Verdict.No, Reason.NotApplied(section, $"A court has held, or the owner has granted, that the {Words} has no effect.{lacks}", Entry)),
            Verdict.Open => (Verdict.Open, Reason.Of(section, $"A {Words} that is not as the Code asks has no effect (Howell v. Gunderson (1967) 250 Cal.App.2d Supp. 961).{lacks} The owner may say that it will do all the same, so plan on the shorter time.", [Entry], reach.Why)),
            _ => throw new InvalidOperationException($"No such verdict: {HasForm}."),
        };
    }

    /// <summary>
    /// A notice for one of several direct contracts shortens the time of those under that contract only. Null where it may count
    /// against this claimant and the copy decides.
    /// </summary>
    [Rule("Civ. Code § 8186", Sure = Sure.OurReading)]
    private (Verdict Verdict, Reason Why)? AppliesToContract()
    {
        if (IsForWholeWork || facts.Job.Claimant.HiredBy == Entry.ContractOf)
            return null;
        if (facts.Hirer is { Capacity: PartyCapacity.DirectContractor })
            return (Verdict.No, Reason.NotApplied("Civ. Code § 8186", $"The {Words} is for one direct contract only, and the claimant works under another: it does not shorten this claimant's time.", Entry));
        return (Verdict.Open, Reason.Of("Civ. Code § 8186", $"The {Words} is for one direct contract only; whether the claimant works under it is open.", [Entry]));
    }

    /// <summary>
    /// Whether the owner did what makes the notice count against this claimant: gave it a copy within 10 days of recording, by a
    /// means good for notices, where a copy was due to it.
    /// </summary>
    [Rule("Civ. Code § 8190(a)")]
    [Rule("Civ. Code § 8190(c)")]
    private (Verdict Verdict, Reason Why) CopyGiven()
    {
        if (OwnerNeedNotTell() is { } exempt)
            return exempt;
        if (NoCopyDue() is { } none)
            return none;

        var lastToGive = calendar.RollForwardOnAnyList(Period.LastDay(Recorded.Latest, CopyDays));
        var lastInMail = lastToGive.PlusDays(MailDays);
        foreach (var told in facts.All<OwnerToldUs>())
        {
            if (told.Notice != Entry.Notice || Days.Of(told.On) is not { } received || received.Latest < Recorded.Earliest)
                continue;
            if (told.Mailed is { } mailed)
            {
                return mailed <= lastToGive
                    ? (Verdict.Yes, Reason.Of("Civ. Code § 8190(a)", $"The owner's copy was put in the mail on {mailed}, within 10 days of recording ({lastToGive}).", [told]))
                    : (Verdict.No, Reason.NotApplied("Civ. Code § 8190(c)", $"The owner's copy was put in the mail on {mailed}, later than 10 days after recording ({lastToGive}): the {Words} does not shorten this claimant's time.", told));
            }

            if (received.Latest <= lastToGive)
                return (Verdict.Yes, Reason.Of("Civ. Code § 8190(a)", $"The owner's copy reached us {received}, within 10 days of recording ({lastToGive}).", [told]));
            return received.Earliest > lastInMail
                ? (Verdict.No, Reason.NotApplied("Civ. Code § 8190(c)", $"The owner's copy reached us {received}, later than 10 days after recording ({lastToGive}) and five days for the mail: the {Words} does not shorten this claimant's time.", told))
                : (Verdict.Open, Reason.Of("Civ. Code § 8190(a)", $"The owner's copy reached us {received}; it may have been mailed by {lastToGive}, and mail is given on deposit (Civ. Code § 8116(b)).", [told]));
        }

        return (Verdict.Open, Reason.Of("Civ. Code § 8190(a)", $"The file does not show whether the owner gave us a copy by {lastToGive}; without one the {Words} does not shorten this claimant's time (Civ. Code § 8190(c)).", [Entry]));
    }

    [Rule("Civ. Code § 8190(d)(1)")]
    private (Verdict, Reason)? OwnerNeedNotTell() => facts.Job.Work.Use switch
    {
        WorkUse.OwnerOccupiedOneToFour => (Verdict.Yes, Reason.Of("Civ. Code § 8190(d)(1)", $"The owner lives there, with four or fewer units, and need not send a copy: the {Words} shortens the time unseen.", [Entry])),
        WorkUse.Commercial or WorkUse.Residential or null => null,
        _ => throw new InvalidOperationException($"No such use: {facts.Job.Work.Use}."),
    };

    /// <summary>A copy is due to the direct contractor and to claimants who gave the owner preliminary notice; to nobody else.</summary>
    [Rule("Civ. Code § 8190(a)(1)")]
    [Rule("Civ. Code § 8190(a)(2)")]
    private (Verdict, Reason)? NoCopyDue()
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return null;
        var owners = facts.Job.In(PartyCapacity.Owner);
        if (Giving.FirstGiven(facts.PreliminaryNotices, owners, out var used) is not { } given)
            return (Verdict.Yes, Reason.Of("Civ. Code § 8190(a)(2)", $"The claimant gave the owner no preliminary notice, so no copy was due to it: the {Words} shortens its time unseen.", [Entry]));
        if (given.Latest <= Recorded.Earliest)
            return null;
        // The owner can owe a copy only to one who had given it notice while the copy could still be given in time. Whether
        // that holds for a notice between the recording and the tenth day the Code does not say.
        return given.Earliest > calendar.RollForwardOnAnyList(Period.LastDay(Recorded.Latest, CopyDays))
            ? (Verdict.Yes, Reason.Of("Civ. Code § 8190(a)(2)", $"The claimant gave the owner preliminary notice {given}, when the time to give copies was over, so none was due to it: the {Words} shortens its time unseen.", [Entry, used!]))
            : (Verdict.Open, Reason.Of("Civ. Code § 8190(a)(2)", $"The claimant gave the owner preliminary notice {given}, after the {Words} was recorded; whether a copy was due to it is open.", [Entry, used!]));
    }
}
