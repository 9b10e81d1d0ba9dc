using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PreliminaryNotice;

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
            Recipients.DirectContractor(facts, "Civ. Code § 9300(a)(2)"),
        ];
    }

    /// <summary>Why no notice is due, or null where it is.</summary>
    [Rule("Civ. Code § 9300(b)")]
    [Rule("Civ. Code § 9100(b)")]
    private static Reason? NoneDue(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return Reason.Of("Civ. Code § 9100(b)", $"A direct contractor gives neither a stop payment notice nor a claim on the bond, so "
                + $"it owes no preliminary notice.");
        if (facts.Job.Claimant.Role == ClaimantRole.Laborer)
            return Reason.Of("Civ. Code § 9300(b)", $"A laborer gives no preliminary notice.");
        return facts.Hirer is { Capacity: PartyCapacity.DirectContractor }
            ? Reason.Of("Civ. Code § 9300(b)", $"The claimant has a direct contract with the direct contractor, so no preliminary notice "
                + $"is due.")
            : null;
    }

    /// <summary>How far back the remedies reach: 20 days before the notice; there is no last day as such.</summary>
    [Rule("Civ. Code § 9304")]
    public static Reach ReachOf(FactsAsOf facts)
    {
        var recipients = RecipientsOf(facts);
        if (recipients.Count == 0)
            return Reach.Everything;
        var time = NoticeTime.OnPublicWork(facts);
        var each = new RecipientReach[recipients.Count];
        List<Recipient>? missing = null;
        var inDoubt = false;
        var kind = ReachKind.Whole;
        DaySpan? from = null, given = null;
        for (var i = 0; i < each.Length; i++)
        {
            var to = each[i] = NoticesGiven.To(facts, recipients[i], time);
            if (to.Given is not { } day)
            {
                (missing ??= []).Add(to.To);
                continue;
            }

            // Of the days on which the two were told the later counts.
            given = given is { } so ? DaySpan.Later(so, day) : day;
            from = from is { } back ? DaySpan.Later(back, to.From) : to.From;
            kind = to.Kind == ReachKind.Late ? ReachKind.Late : kind;
            inDoubt |= to.Doubt != NoticeDoubt.None;
        }

        if (missing is null)
            return new Reach(kind, from, given, [], false) { Each = each, IsInDoubt = inDoubt };
        var today = Reach.LookBack(facts, facts.AsOf).LookBack(facts.AsOf);
        return new Reach(ReachKind.NotGiven, new DaySpan(today, today), null, missing, false) { Each = each };
    }

    /// <summary>The finding <c>preliminary-notice.last-day</c>; where notice is due, with how far one given late reaches back.</summary>
    internal static Finding Finding(FactsAsOf facts, Reach reach, Outcome notice) =>
        notice.Finding("preliminary-notice.last-day", PreliminaryNoticeDays.Title) with
        {
            IfLate = reach.Kind == ReachKind.NoneDue ? null
                : (facts.Numbers.On(Number.PublicNoticeLookBack, facts.FirstFurnished?.Earliest ?? facts.AsOf), Reach.LookBack(facts,
                    facts.AsOf)),
        };

    /// <summary>The last day on which a notice still covers everything furnished.</summary>
    [Rule("Civ. Code § 9304")]
    public static Outcome LastDay(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        if (NoneDue(facts) is { } none)
            return new Outcome(Deadline.WithoutDay(Standing.Kept), new Words([none], []));
        var readings = new List<Reading>();
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 9304", $"The notice covers work within {Reach.LookBack(facts, facts.AsOf)} before it and afterwards; it "
                + $"is never too late, but later it covers less."),
        };
        if (facts.FirstFurnished is { } first)
        {
            var days = facts.Numbers.On(Number.PublicNoticeLookBack, first.Earliest);
            readings.Add(Deadline.Own($"{days.Text} after first furnishing, to cover all of it", days.LastDay(first.Earliest), calendar));
        }

        why.AddRange(NoticeReasons.Given(facts, reach));
        why.AddRange(NoticeReasons.WhatDoesNotCount(facts));
        why.AddRange(Duties.OnPublicWork(facts, noneGiven: reach.Kind == ReachKind.NotGiven));

        var standing = reach.Kind switch
        {
            ReachKind.Whole => reach.GivenToAll ? Standing.Kept : Standing.InDoubt,
            // Left and mailed, it is complete some days later; one given by hand on the day of asking still covers everything.
            ReachKind.Late when readings.Count > 0 && facts.AsOf <= readings[0].Day => Standing.Open,
            ReachKind.Late when PreliminaryNoticeDays.InReach(facts, reach) is var late => late == Standing.Lost || reach.GivenToAll
                ? late : Standing.InDoubt,
            ReachKind.NotGiven when !facts.HasFurnished => Standing.NotYet,
            ReachKind.NotGiven when readings.Count > 0 && facts.AsOf <= readings[0].Day => reach.MayHaveBeenGiven
                ? Standing.InDoubt : Standing.Open,
            ReachKind.NotGiven => PreliminaryNoticeDays.InReach(facts, reach),
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
        return new Outcome(Deadline.Of(standing, readings, calendar), new Words(why, NoticeReasons.AboutGiving(facts, reach)));
    }

    /// <summary>The finding <c>preliminary-notice.reaches-back-to</c>; null where no notice is due.</summary>
    [Rule("Civ. Code § 9304")]
    public static Finding? ReachesBackTo(FactsAsOf facts, Reach reach, Standing notice)
    {
        if (reach.From is not { } from)
            return null;
        var back = Reach.LookBack(facts, reach.Given?.Latest ?? facts.AsOf);
        List<Reading> readings = reach.Kind == ReachKind.NotGiven
            ? [new Reading($"if notice is given on the day of asking", from.Earliest)]
            : from.IsExact
                ? [new Reading($"{back.Text} before the notice was given", from.Earliest)]
                : [new Reading($"{back.Text} before the earliest day of notice", from.Earliest),
                    new Reading($"{back.Text} before the latest day of notice", from.Latest)];
        return new Finding
        {
            Id = "preliminary-notice.reaches-back-to",
            Title = "The notice reaches back to",
            Standing = notice,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Why = [Reason.Of("Civ. Code § 9304", $"It covers work within {back} before it is given, from {from.Latest} on, and afterwards; "
                + $"a look-back is never rolled.")],
        };
    }
}
