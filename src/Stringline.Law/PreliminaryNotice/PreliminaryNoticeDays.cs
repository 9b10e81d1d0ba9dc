using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>The preliminary notice on private work: last day, whether it was given, and how far back it reaches.</summary>
public static class PreliminaryNoticeDays
{
    private const string TwentyDays = "Civ. Code § 8204(a)";

    /// <summary>How far back a claim of lien reaches, on the notices of the file.</summary>
    [Rule("Civ. Code § 8204(a)")]
    [Rule("Civ. Code § 8200(c)")]
    public static Reach ReachOf(FactsAsOf facts, OpenDays calendar)
    {
        var recipients = Recipients.Of(facts);
        if (recipients.Count == 0)
            return new Reach(ReachKind.NoneDue, null, null, [], false);

        var notices = facts.PreliminaryNotices;
        var missing = new List<Recipient>();
        Days? given = null;
        var essentialMissing = false;
        var lendersOnly = recipients.All(static r => r.Who == PartyCapacity.ConstructionLender);
        foreach (var recipient in recipients)
        {
            var day = Giving.FirstGiven(notices, recipient.AnyOf, out _);
            if (day is not { } reached)
            {
                missing.Add(recipient);
                essentialMissing |= IsEssential(recipient, lendersOnly)
                    && !(recipient.Who == PartyCapacity.ConstructionLender && ReputedLendersTold(facts, notices).Any());
            }
            else if (IsEssential(recipient, lendersOnly) || recipient.Who == PartyCapacity.DirectContractor)
            {
                // One notice to several persons: the lien goes by the latest of owner and contractor, the safer count.
                given = given is { } so ? Days.Later(so, reached) : reached;
            }
        }

        if (essentialMissing || given is not { } done)
        {
            var fromToday = facts.AsOf.PlusDays(-Reach.LookBackDays);
            return StillInTime(facts, facts.AsOf)
                ? new Reach(ReachKind.NotGiven, new Days(LocalDate.MinIsoValue, LocalDate.MinIsoValue), null, missing, false)
                : new Reach(ReachKind.NotGiven, new Days(fromToday, fromToday), null, missing, false);
        }

        var from = done.Plus(-Reach.LookBackDays);
        if (StillInTime(facts, done.Latest) || DesignNoticeInTime(facts, done.Latest))
            return new Reach(ReachKind.Whole, from, done, missing, false);
        var byRoll = facts.FirstFurnished is { } first
            && done.Latest <= calendar.RollForward(Period.LastDay(first.Earliest, Reach.NoticeDays));
        return new Reach(ReachKind.Late, from, done, missing, byRoll);
    }

    /// <summary>
    /// Whose missing notice takes the lien away: the owner's; and the lender's where the lender is the only one to whom notice is due.
    /// A direct contractor left out puts the lien in doubt only: Industrial Asphalt v. Garrett (1986) 180 Cal.App.3d 1001.
    /// </summary>
    [Rule("Civ. Code § 8200(c)", Sure = Sure.OurReading)]
    private static bool IsEssential(Recipient recipient, bool lendersOnly) =>
        recipient.Who == PartyCapacity.Owner || (recipient.Who == PartyCapacity.ConstructionLender && lendersOnly);

    /// <summary>
    /// Notice to a reputed lender will do, where the claimant reasonably and in good faith took it for the lender. Whether it did is
    /// a question of fact, so the lien is in doubt and not lost: Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368.
    /// </summary>
    [Rule("Civ. Code § 8200(a)(3)", Sure = Sure.Opinion)]
    private static IEnumerable<Party> ReputedLendersTold(FactsAsOf facts, IReadOnlyList<NoticeGiven> notices) =>
        facts.Job.In(PartyCapacity.ConstructionLender).Where(l => l.Reputed && Giving.FirstGiven(notices, [l], out _) is not null);

    private static bool StillInTime(FactsAsOf facts, LocalDate day) => facts.HasFurnished
        ? facts.FirstFurnished is { } first && day <= Period.LastDay(first.Earliest, Reach.NoticeDays)
        : true;

    /// <summary>A design professional's notice within 20 days after the work commenced covers all its services.</summary>
    [Rule("Civ. Code § 8204(b)")]
    private static bool DesignNoticeInTime(FactsAsOf facts, LocalDate given) =>
        facts.Job.Claimant.Role == ClaimantRole.DesignProfessional
        && facts.Job.Work.Commenced is { } commenced
        && given <= Period.LastDay(commenced, Reach.NoticeDays);

    /// <summary>The finding <c>preliminary-notice.last-day</c>.</summary>
    [Rule("Civ. Code § 8204(a)")]
    public static Finding LastDay(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        var readings = new List<Reading>();
        if (facts.FirstFurnished is { } first && reach.Kind != ReachKind.NoneDue)
        {
            var last = Period.LastDay(first.Earliest, Reach.NoticeDays);
            readings.Add(Deadline.Own(first.IsExact ? "20 days after first furnishing" : "first furnishing on its earliest day", last, calendar));
            if (!first.IsExact)
                readings.Add(Deadline.Own("first furnishing on its latest day", Period.LastDay(first.Latest, Reach.NoticeDays), calendar));
        }

        return Deadline.Finding("preliminary-notice.last-day", "Preliminary notice", StandingOf(facts, reach),
            readings, calendar, () => Why(facts, reach), endKnown: true, () => Questions(facts, reach));
    }

    /// <summary>The finding <c>preliminary-notice.reaches-back-to</c>; null where no notice is due.</summary>
    [Rule("Civ. Code § 8204(a)")]
    public static Finding? ReachesBackTo(FactsAsOf facts, Reach reach)
    {
        if (reach.Kind == ReachKind.NoneDue)
            return null;
        var given = reach.Kind != ReachKind.NotGiven;
        var from = (given ? reach.Given!.Value : new Days(facts.AsOf, facts.AsOf)).Plus(-Reach.LookBackDays);
        var readings = new List<Reading>();
        if (given)
        {
            readings.Add(new Reading(from.IsExact ? "20 days before the notice was given" : "20 days before the earliest day of notice", from.Earliest));
            if (!from.IsExact)
                readings.Add(new Reading("20 days before the latest day of notice", from.Latest));
        }
        else
        {
            readings.Add(new Reading("if notice is given on the day of asking", from.Earliest));
        }

        return new Finding
        {
            Id = "preliminary-notice.reaches-back-to",
            Title = "The notice reaches back to",
            Standing = StandingOf(facts, reach),
            Readings = readings,
            Band = Deadline.Band(readings),
            Explain = () =>
            [
                reach.Kind == ReachKind.Whole
                    ? Reason.Of(TwentyDays, $"The notice was in time, so everything furnished is within reach, also before this day.")
                    : Reason.Of(TwentyDays, $"A late notice covers work furnished within 20 days before it, from {from.Latest} on; a look-back is never rolled."),
            ],
        };
    }

    private static Standing StandingOf(FactsAsOf facts, Reach reach) => reach.Kind switch
    {
        ReachKind.NoneDue => Standing.Kept,
        ReachKind.Whole => reach.Missing.Count == 0 ? Standing.Kept : Standing.InDoubt,
        ReachKind.Late when !CoversAnything(facts, reach) => Standing.Lost,
        ReachKind.Late => Standing.Narrowed,
        ReachKind.NotGiven when !facts.HasFurnished => Standing.NotYet,
        ReachKind.NotGiven when facts.FirstFurnished is null => Standing.InDoubt,
        ReachKind.NotGiven when StillInTime(facts, facts.AsOf) => Standing.Open,
        ReachKind.NotGiven when !CoversAnything(facts, reach) => Standing.Lost,
        ReachKind.NotGiven => Standing.Narrowed,
        _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
    };

    /// <summary>Whether the reach holds any work of the claimant, past or to come.</summary>
    internal static bool CoversAnything(FactsAsOf facts, Reach reach)
    {
        if (facts.All<FurnishingEnded>().Count == 0)
            return true;
        foreach (var furnished in facts.Furnished)
        {
            if (reach.MayCover(furnished.Until.Latest))
                return true;
        }

        return facts.Furnished.Count == 0;
    }

    private static List<Reason> Why(FactsAsOf facts, Reach reach)
    {
        var why = new List<Reason>();
        if (reach.Kind == ReachKind.NoneDue)
        {
            why.Add(facts.Job.Claimant.Role == ClaimantRole.Laborer
                ? Reason.Of("Civ. Code § 8200(e)(1)", $"A laborer gives no preliminary notice.")
                : Reason.Of("Civ. Code § 8200(e)(2)", $"The claimant has a direct contract with the owner, so notice is due to a construction lender only, and the file names none that was known on the first day of its work."));
            why.AddRange(NotYetKnown(facts));
            return why;
        }

        if (facts.FirstFurnished is { } first)
            why.Add(Reason.Of(TwentyDays, $"First furnished {first}; the notice is in time through the twentieth day after.", [facts.Furnished[0]]));
        var notices = facts.PreliminaryNotices;
        foreach (var recipient in Recipients.Of(facts))
        {
            if (Giving.FirstGiven(notices, recipient.AnyOf, out var used) is { } day)
                why.Add(Reason.Of(recipient.Section, $"Given to the {recipient.Words}: {day}.", [used!], Reason.Of("Civ. Code § 8116", $"Complete on delivery or deposit; five days after mailing where it was left and mailed.")));
            else
                why.Add(Reason.Of(recipient.Section, $"Due to the {recipient.Words}; the file shows none given."));
        }

        why.AddRange(NotYetKnown(facts));
        why.AddRange(WhatDoesNotCount(notices));
        why.AddRange(Proof.Alarms(facts, notices));
        if (reach.Kind == ReachKind.Late)
        {
            why.Add(Reason.Of(TwentyDays, $"Later than the twentieth day: work furnished before {reach.From!.Value.Latest} is out of reach."));
            if (reach.InTimeByRollOnly)
                why.Add(Reason.NotApplied("Code Civ. Proc. § 12a", $"It would be in time if the last day rolled past a weekend or holiday: an argument only; the claimant's own days are never rolled."));
        }

        return why;
    }

    private static IEnumerable<Reason> NotYetKnown(FactsAsOf facts) => Recipients.NotYetKnown(facts).Select(lender => Reason.NotApplied(
        "Civ. Code § 8200(a)(3)", $"{lender.Name} was not of record, and not known, before {lender.KnownSince!.Value}, later than the first day of the claimant's work: notice to it is no condition (Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75). Give it all the same: it costs little."));

    /// <summary>Why notices that were given count for nothing.</summary>
    internal static IEnumerable<Reason> WhatDoesNotCount(IEnumerable<NoticeGiven> notices)
    {
        foreach (var notice in notices)
        {
            if (!Giving.IsGood(notice.Manner))
                yield return Reason.NotApplied("Civ. Code § 8110", $"A notice sent by first-class mail with a certificate of mailing counts for nothing here: registered, certified or express mail or an overnight carrier is needed.", notice);
            else if (!Giving.Counts(notice))
                yield return Reason.NotApplied("Civ. Code § 8202(a)(2)", $"The estimate in the notice is a stock figure, worked out from nothing: such a notice is bad, and the claim with it (Rental Equipment v. McDaniel Builders (2001) 91 Cal.App.4th 445). Give a new one with an estimate that can be shown.", notice);
        }
    }

    private static List<Question> Questions(FactsAsOf facts, Reach reach)
    {
        var questions = new List<Question>();
        foreach (var recipient in reach.Missing)
        {
            questions.Add(recipient.AnyOf.Count == 0
                ? new Question($"Who is the {recipient.Words}? The file names none, and notice is due to it.")
                : new Question($"Was notice given to the {recipient.Words}? The file shows none."));
        }

        if (reach.Missing.Any(r => r.Who == PartyCapacity.ConstructionLender))
        {
            foreach (var lender in ReputedLendersTold(facts, facts.PreliminaryNotices))
                questions.Add(new Question($"Who named {lender.Name} as the construction lender, and in which paper? Keep it: notice to a reputed lender stands on it."));
        }

        if (facts.HasFurnished && facts.FirstFurnished is null)
            questions.Add(new Question("On which day did the claimant first furnish work?"));
        if (facts.Job.Claimant.Role == ClaimantRole.DesignProfessional && facts.Job.Work.Commenced is null && reach.Kind == ReachKind.Late)
            questions.Add(new Question("On which day did the work commence at the site? A design professional's notice within 20 days after it covers all services (add work.commenced)."));
        if (facts.Hirer is { Capacity: PartyCapacity.Subcontractor })
            questions.Add(new Question("Did the claimant work under contracts with more than one subcontractor? Each needs a notice of its own (Civ. Code § 8206(b)); keep a job file for each."));
        if (facts.HiredByOwner && facts.Job.In(PartyCapacity.ConstructionLender).Count == 0)
            questions.Add(new Question("Is there a construction lender? Notice would be due to it (look for a construction deed of trust and on the building permit)."));
        return questions;
    }
}
