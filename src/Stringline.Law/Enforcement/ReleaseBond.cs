using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>A bond that frees the land from a claim of lien (Civ. Code § 8424).</summary>
public static class ReleaseBond
{
    private const string Section = "Civ. Code § 8424";

    /// <summary>The amount of a bond for a claim: 125 percent of it, up to the next cent.</summary>
    /// <param name="claim">Dollars and cents claimed.</param>
    [Rule("Civ. Code § 8424(b)")]
    public static decimal AmountFor(decimal claim) => Math.Ceiling(claim * 1.25m * 100m) / 100m;

    /// <summary>The findings <c>release-bond.amount</c> and, once a bond is recorded, <c>release-bond.action-last-day</c>.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ClaimRecorded? counts, Waterfall demand, OpenDays calendar)
    {
        if (counts is not { } claim)
            yield break;
        var claimed = claim.Amount ?? demand.Demand;
        var amount = AmountFor(claimed);
        var bonds = facts.All<ReleaseBondRecorded>();
        var released = RecordedClaim.IsReleased(facts, claim) == Verdict.Yes;
        yield return new Finding
        {
            Id = "release-bond.amount",
            Title = "Bond that would free the land",
            Standing = bonds.Count > 0 || released ? Standing.Done : Standing.Open,
            Amount = amount,
            Why =
            [
                Reason.Of("Civ. Code § 8424(b)", $"An owner or a contractor who disputes the claim may free the land by a bond of 125 percent of the {claimed} claimed: {amount}. One debt needs one bond, on however many parcels it was recorded (T.O. IX v. Superior Court (2008) 165 Cal.App.4th 140).", [claim]),
                .. Short(bonds, amount),
                .. released ? [Reason.Of(Section, $"The claim has been released: the land is free of it, and no bond is called for.")] : Array.Empty<Reason>(),
            ],
        };
        if (bonds.Count > 0)
            yield return LastDayOnBond(facts, bonds[^1], calendar);
    }

    private static IEnumerable<Reason> Short(IReadOnlyList<ReleaseBondRecorded> bonds, decimal amount) =>
        bonds.Where(b => b.Amount < amount)
            .Select(b => Reason.Of("Civ. Code § 8424(b)", $"The recorded bond of {b.Amount!.Value} is less than 125 percent of the claim.", [b]));

    /// <summary>Six months after notice of the recording was given; the 90 days of § 8460 are kept besides, since the Code does not say that they fall away.</summary>
    [Rule("Civ. Code § 8424(d)")]
    private static Finding LastDayOnBond(FactsAsOf facts, ReleaseBondRecorded bond, OpenDays calendar)
    {
        var readings = new List<Reading>();
        if (bond.NoticeGiven is { } told)
            readings.AddRange(Deadline.SixMonths("six months after notice of the bond was given", told, calendar));
        else if (Days.Of(bond.On) is { } recorded)
            readings.AddRange(Deadline.SixMonths("six months, if notice was given when the bond was recorded", recorded.Earliest, calendar));
        var filed = facts.FirstDayOf<ActionFiled>();
        return Deadline.Finding("release-bond.action-last-day", "Action on the release bond",
            readings.Count == 0 ? Standing.InDoubt : Deadline.StandingOf(facts.AsOf, readings, filed, endFirm: bond.NoticeGiven is not null), readings, calendar,
            [
                bond.NoticeGiven is { } given
                    ? Reason.Of("Civ. Code § 8424(d)", $"The action on the bond is brought within six months after notice of it was given to the claimant on {given}.", [bond])
                    : Reason.Of("Civ. Code § 8424(d)", $"The action on the bond is brought within six months after notice of it is given to the claimant; counted here from the recording, the earliest day.", [bond]),
                Reason.Of(Section, $"Whether the 90 days of Civ. Code § 8460 still bind a claimant whose lien was bonded before suit is not said: sue by the earlier."),
            ],
            endKnown: bond.NoticeGiven is not null,
            bond.NoticeGiven is null ? [new Question("On which day was notice of the release bond, with a copy, given to the claimant? (release-bond-recorded.noticeGiven)")] : []);
    }
}
