using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.PublicWork;

/// <summary>The preliminary notice on public work (Civ. Code §§ 9300-9306).</summary>
public static class PublicNotice
{
    /// <summary>Who must be given notice; empty where none is due.</summary>
    [Rule("Civ. Code § 9300(a)")]
    [Rule("Civ. Code § 9300(b)")]
    public static IReadOnlyList<Recipient> RecipientsOf(FactsAsOf facts)
    {
        if (NoneDue(facts) is not null)
            return [];
        return
        [
            new Recipient(PartyCapacity.PublicEntity, facts.Job.In(PartyCapacity.PublicEntity), "Civ. Code § 9300(a)(1)"),
            new Recipient(PartyCapacity.DirectContractor, facts.Job.In(PartyCapacity.DirectContractor), "Civ. Code § 9300(a)(2)"),
        ];
    }

    /// <summary>Why no notice is due, or null where it is.</summary>
    [Rule("Civ. Code § 9300(b)")]
    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NoneDue(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return Reason.Of("Civ. Code § 9100(b)", $"A direct contractor gives neither a stop payment notice nor a claim on the bond, so it owes no preliminary notice.");
        if (facts.Job.Claimant.Role == ClaimantRole.Laborer)
            return Reason.Of("Civ. Code § 9300(b)", $"A laborer gives no preliminary notice.");
        return facts.Hirer is { Capacity: PartyCapacity.DirectContractor }
            ? Reason.Of("Civ. Code § 9300(b)", $"The claimant has a direct contract with the direct contractor, so no preliminary notice is due.")
            : null;
    }

    /// <summary>How far back the remedies reach: 20 days before the notice; there is no last day as such.</summary>
    [Rule("Civ. Code § 9304")]
    public static Reach ReachOf(FactsAsOf facts)
    {
        var recipients = RecipientsOf(facts);
        if (recipients.Count == 0)
            return new Reach(ReachKind.NoneDue, null, null, [], false);
        var notices = facts.PreliminaryNotices;
        var missing = new List<Recipient>();
        Days? given = null;
        foreach (var recipient in recipients)
        {
            if (Giving.FirstGiven(notices, recipient.AnyOf, out _) is { } day)
                given = given is { } so ? Days.Later(so, day) : day;
            else
                missing.Add(recipient);
        }

        if (missing.Count > 0 || given is not { } done)
        {
            var back = Period.LookBack(facts.AsOf, Reach.LookBackDays);
            return new Reach(ReachKind.NotGiven, new Days(back, back), null, missing, false);
        }

        var from = done.Plus(-Reach.LookBackDays);
        var whole = !facts.HasFurnished || (facts.FirstFurnished is { } first && from.Latest <= first.Earliest);
        return new Reach(whole ? ReachKind.Whole : ReachKind.Late, from, done, missing, false);
    }

    /// <summary>The finding <c>preliminary-notice.last-day</c>: the last day on which a notice still covers everything furnished.</summary>
    [Rule("Civ. Code § 9304")]
    public static Finding LastDay(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        if (NoneDue(facts) is { } none)
            return Deadline.Finding("preliminary-notice.last-day", "Preliminary notice", Standing.Kept, [], calendar, [none]);
        var readings = new List<Reading>();
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 9304", $"The notice covers work within 20 days before it and afterwards; it is never too late, but later it covers less."),
        };
        if (facts.FirstFurnished is { } first)
            readings.Add(Deadline.Own("20 days after first furnishing, to cover all of it", Period.LastDay(first.Earliest, Reach.NoticeDays), calendar));
        foreach (var recipient in RecipientsOf(facts))
        {
            why.Add(Giving.FirstGiven(facts.PreliminaryNotices, recipient.AnyOf, out var used) is { } day
                ? Reason.Of(recipient.Section, $"Given to the {recipient.Words}: {day}.", [used!])
                : Reason.Of(recipient.Section, $"Due to the {recipient.Words}; the file shows none given."));
        }

        why.AddRange(PreliminaryNoticeDays.WhatDoesNotCount(facts.PreliminaryNotices));

        var standing = reach.Kind switch
        {
            ReachKind.NoneDue or ReachKind.Whole => Standing.Kept,
            ReachKind.Late => PreliminaryNoticeDays.CoversAnything(facts, reach) ? Standing.Narrowed : Standing.Lost,
            ReachKind.NotGiven when !facts.HasFurnished => Standing.NotYet,
            ReachKind.NotGiven when readings.Count > 0 && facts.AsOf <= readings[0].Day => Standing.Open,
            ReachKind.NotGiven => PreliminaryNoticeDays.CoversAnything(facts, reach) ? Standing.Narrowed : Standing.Lost,
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
        return Deadline.Finding("preliminary-notice.last-day", "Preliminary notice", standing, readings, calendar, why,
            questions: [.. reach.Missing.Select(m => new Question($"Was notice given to the {m.Words}? The file shows none."))]);
    }

    /// <summary>The finding <c>preliminary-notice.reaches-back-to</c>; null where no notice is due.</summary>
    [Rule("Civ. Code § 9304")]
    public static Finding? ReachesBackTo(Reach reach, Finding notice)
    {
        if (reach is not { Kind: not ReachKind.NoneDue, From: { } from })
            return null;
        List<Reading> readings = reach.Kind == ReachKind.NotGiven
            ? [new Reading("if notice is given on the day of asking", from.Earliest)]
            : from.IsExact
                ? [new Reading("20 days before the notice was given", from.Earliest)]
                : [new Reading("20 days before the earliest day of notice", from.Earliest), new Reading("20 days before the latest day of notice", from.Latest)];
        return new Finding
        {
            Id = "preliminary-notice.reaches-back-to",
            Title = "The notice reaches back to",
            Standing = notice.Standing,
            Readings = readings,
            Band = Deadline.Band(readings),
            Why = [Reason.Of("Civ. Code § 9304", $"It covers work within 20 days before it is given, from {from.Latest} on, and afterwards; a look-back is never rolled.")],
        };
    }
}
