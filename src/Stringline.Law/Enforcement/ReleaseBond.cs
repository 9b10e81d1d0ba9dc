using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>A bond that frees the land from a claim of lien (Civ. Code § 8424).</summary>
public static class ReleaseBond
{
    /// <summary>The amount of a bond for a claim: so many percent of it, up to the next cent.</summary>
    /// <param name="claim">Dollars and cents claimed.</param>
    /// <param name="percent">How many percent of it the bond is for.</param>
    public static decimal AmountFor(decimal claim, NumberRow percent) => Math.Ceiling(percent.PercentOf(claim) * 100m) / 100m;

    /// <summary>The percentage for a bond that frees the land, by the day on which it is recorded; today's where none is.</summary>
    [Rule("Civ. Code § 8424(b)")]
    private static NumberRow Percent(FactsAsOf facts, ReleaseBondRecorded? bond) =>
        facts.Numbers.On(Number.ReleaseBond, bond?.On.Earliest ?? facts.AsOf);

    /// <summary>The finding <c>release-bond.amount</c>; null where no claim counts.</summary>
    [Rule("Civ. Code § 8424(b)")]
    public static Finding? Amount(FactsAsOf facts, ClaimSuits suits, Waterfall demand)
    {
        return suits.Counts is { } claim ? ToFree(facts, suits, claim, demand) : null;
    }

    private static Finding ToFree(FactsAsOf facts, ClaimSuits suits, ClaimRecorded claim, Waterfall demand)
    {
        var claimed = claim.Amount ?? demand.Demand;
        var bond = Largest(facts);
        var percent = Percent(facts, bond);
        var amount = AmountFor(claimed, percent);
        var released = suits.Released == Verdict.Yes;
        var part = bond?.Amount is { } of ? PartFreed(facts, of, percent) : null;
        return new Finding
        {
            Id = "release-bond.amount",
            Title = "Bond that would free the land",
            Standing = released ? Standing.Done
                : bond is null ? Standing.Open
                : bond.Amount >= amount || part is not null ? Standing.Done : Standing.InDoubt,
            Amount = amount,
            Explain = () =>
            [
                Reason.Of("Civ. Code § 8424(b)", $"An owner or a contractor who disputes the claim may free the land by a bond "
                    + $"of {percent} of the {claimed} claimed: {amount}. One debt needs one bond, on however many parcels it was recorded "
                    + $"(T.O. IX v. Superior Court (2008) 165 Cal.App.4th 140).", [claim]),
                .. bond?.Amount is { } given && given < amount ? [TooSmall(bond, given, amount, percent, part)] : Array.Empty<Reason>(),
                .. released ? [
                    Reason.Of("Civ. Code § 8424(a)", $"The claim has been released: the land is free of it, and no bond is called for.")]
                        : Array.Empty<Reason>(),
            ],
            Ask = () => bond is { Amount: null } && !released
                ? [new Question($"For how much is the recorded release bond?{OwnerKinds.ReleaseBondRecorded.At("amount"):aside}",
                    Dollars: amount) { Corrects = bond }] : [],
        };
    }

    private static Reason TooSmall(ReleaseBondRecorded bond, decimal given, decimal amount, NumberRow percent,
        ResidentialStructure? part) => part is { } freed
        ? Reason.Of("Civ. Code § 8424(b)", $"The recorded bond of {given} is less than {percent} of the whole claim, but covers the part "
            + $"allocated to {freed.Text ?? freed.Id}: it frees that part alone.", [bond])
        : Reason.Of("Civ. Code § 8424(b)", $"The recorded bond of {given} is less than {percent} of the claim, {amount}: whether it frees "
            + $"the land is in doubt. Go on as if it did not, and sue on it too.", [bond]);

    // A bond for what the claim allocates to one of several parts need cover that part only.
    private static ResidentialStructure? PartFreed(FactsAsOf facts, decimal bond, NumberRow percent)
    {
        foreach (var structure in facts.Job.Work.Structures)
        {
            if (structure.Share is { } share && bond >= AmountFor(share, percent))
                return structure;
        }

        return null;
    }

    private static ReleaseBondRecorded? Largest(FactsAsOf facts)
    {
        ReleaseBondRecorded? largest = null;
        foreach (var bond in facts.All<ReleaseBondRecorded>())
        {
            if (largest?.Amount is null || bond.Amount >= largest.Amount)
                largest = bond;
        }

        return largest;
    }

    /// <summary>A release bond recorded for a claim, whatever its amount; null where there is none.</summary>
    internal static ReleaseBondRecorded? On(FactsAsOf facts, ClaimSuit suit)
    {
        ReleaseBondRecorded? last = null;
        foreach (var bond in facts.All<ReleaseBondRecorded>())
        {
            // One recorded before the claim freed the land of an earlier one.
            if (!(bond.On.Latest < suit.Recorded.Earliest))
                last = bond;
        }

        return last;
    }

    /// <summary>A bond that surely frees the land from a claim and from any action to enforce it; null where none does.</summary>
    [Rule("Civ. Code § 8424(c)")]
    internal static ReleaseBondRecorded? Freeing(FactsAsOf facts, ClaimSuit suit)
    {
        foreach (var bond in facts.All<ReleaseBondRecorded>())
        {
            if (!(bond.On.Latest < suit.Recorded.Earliest) && suit.Claim.Amount is { } claimed
                && bond.Amount >= AmountFor(claimed, Percent(facts, bond)))
                return bond;
        }

        return null;
    }

    /// <summary>
    /// Whether the 90 days bind one whose lien was bonded before suit the Code does not say, so past them the claim is in doubt until the
    /// time to sue on the bond is over.
    /// </summary>
    [Rule("Civ. Code § 8424(d)", Sure = Sure.OurReading)]
    internal static Standing UnlessBonded(FactsAsOf facts, ClaimSuit suit, Standing standing, OpenDays calendar) =>
        standing == Standing.Lost && suit is { Action: null, End: null } && On(facts, suit) is { } bond
        && !(bond.NoticeGiven is { } told
            && facts.AsOf > calendar.RollForwardOnAnyList(facts.Numbers.On(Number.SueOnReleaseBond, told).LastDayAtTheLatest(told)))
            ? Standing.InDoubt
            : standing;

    /// <summary>The finding <c>release-bond.action-last-day</c>; null where no bond is recorded or no claim counts.</summary>
    public static Finding? LastDay(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        var bonds = facts.All<ReleaseBondRecorded>();
        return bonds.Count == 0 || suits.Counts is null ? null : LastDayOnBond(facts, suits, bonds[^1], calendar);
    }

    /// <summary>
    /// Six months after notice of the recording was given; an action that enforces the bonded claim, or the bond itself, is one on it.
    /// </summary>
    [Rule("Civ. Code § 8424(d)")]
    private static Finding LastDayOnBond(FactsAsOf facts, ClaimSuits suits, ReleaseBondRecorded bond, OpenDays calendar)
    {
        var readings = new List<Reading>();
        var months = facts.Numbers.On(Number.SueOnReleaseBond, bond.NoticeGiven ?? bond.On.Earliest ?? facts.AsOf);
        if (bond.NoticeGiven is { } told)
            readings.AddRange(Deadline.Months($"{months.Spelled} after notice of the bond was given", told, months, calendar));
        else if (DaySpan.Of(bond.On) is { } recorded)
            readings.AddRange(Deadline.Months($"{months.Spelled}, if notice was given when the bond was recorded", recorded.Earliest,
                months, calendar));
        var toSue = facts.Numbers.On(Number.SueOnClaim, suits.Counts!.On.Earliest ?? facts.AsOf);
        var standing = readings.Count == 0 ? Standing.InDoubt : StandingOf(facts, suits, readings, endFirm: bond.NoticeGiven is not null);
        return Deadline.Of(standing, readings, calendar, endKnown: bond.NoticeGiven is not null)
            .Finding("release-bond.action-last-day", "Action on the release bond",
            () =>
            [
                bond.NoticeGiven is { } given
                    ? Reason.Of("Civ. Code § 8424(d)", $"The action on the bond is brought within {months.Spelled} after notice of it was "
                        + $"given to the claimant on {given}.", [bond])
                    : Reason.Of("Civ. Code § 8424(d)", $"The action on the bond is brought within {months.Spelled} after notice of it is "
                        + $"given to the claimant; counted here from the recording, the earliest day.", [bond]),
                Reason.Of("Civ. Code § 8424(c)", $"A bond of the full amount frees the land from the claim and from the action: no notice "
                    + $"of pendency is recorded after it, and its principal and surety are named in the action."),
                Reason.Of("Civ. Code § 8424(d)", $"Whether the {toSue} of Civ. Code § 8460 still bind a claimant whose lien was bonded "
                    + $"before suit is not said: sue by the earlier."),
            ],
            bond.NoticeGiven is null
                ? () => [new Question($"On which day was notice of the release bond, with a copy, given to the "
                    + $"claimant?{OwnerKinds.ReleaseBondRecorded.At("noticeGiven"):aside}") { Corrects = bond }] : null);
    }

    private static Standing StandingOf(FactsAsOf facts, ClaimSuits suits, IReadOnlyList<Reading> readings, bool endFirm)
    {
        var standing = Deadline.StandingOf(facts.AsOf, readings, null, endFirm);
        foreach (var action in facts.All<ActionFiled>())
        {
            if (DaySpan.Of(action.On) is not { } filed)
                continue;
            var enforces = Enforces(facts, suits, action, filed);
            if (enforces == Verdict.No)
                continue;
            var with = Deadline.StandingOf(facts.AsOf, readings, filed, endFirm);
            if (with == Standing.Kept && enforces == Verdict.Yes)
                return Standing.Kept;
            if (with != Standing.Lost)
                standing = Standing.InDoubt;
        }

        return standing;
    }

    private static Verdict Enforces(FactsAsOf facts, ClaimSuits suits, ActionFiled action, DaySpan filed)
    {
        if (ClaimAction.IsOn(action, ActionOn.ReleaseBond))
            return action.SmallClaims ? Verdict.Open : Verdict.Yes;
        var best = Verdict.No;
        foreach (var suit in suits.Chain)
        {
            var so = ClaimAction.Enforces(facts, action, filed, suit.Claim, suit.Recorded, suits.Unsure);
            if (so == Verdict.Yes)
                return so;
            best = so == Verdict.Open ? so : best;
        }

        return best;
    }
}
