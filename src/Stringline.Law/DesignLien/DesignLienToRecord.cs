using Stringline.Law.ClaimOfLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.DesignLien;

/// <summary>The last day to record the claim of a design professional's lien (Civ. Code § 8312).</summary>
internal static class DesignLienToRecord
{
    /// <summary>The finding <c>design-lien.last-day</c>.</summary>
    public static Finding Finding(Outcome lastDay) =>
        lastDay.Finding("design-lien.last-day", "Design professional's lien: last day to record");

    /// <summary>
    /// The readings of the last day; empty where the file does not say since when the claimant knows that the work will not be commenced.
    /// </summary>
    public static IReadOnlyList<Reading> Readings(FactsAsOf facts, OpenDays calendar)
    {
        foreach (var knew in facts.All<WorkWillNotCommence>())
        {
            if (DaySpan.Of(knew.On) is not { } on)
                continue;
            var days = facts.Numbers.On(Number.RecordDesignLien, on.Earliest);
            var first = Deadline.Own($"{days.Text} after knowing that work will not commence", days.LastDay(on.Earliest), calendar);
            if (on.IsExact)
                return [first];
            var atTheLatest = facts.Numbers.On(Number.RecordDesignLien, on.Latest);
            return [first, Deadline.Own($"{atTheLatest.Text} after knowing it, at the latest", atTheLatest.LastDay(on.Latest), calendar)];
        }

        return [];
    }

    /// <summary>
    /// The last day, and whether a claim keeps it. A claim keeps it only while it is alive, only if it is surely one of this lien and lacks
    /// nothing, and only if
    /// the notice of default came ten days before; one that expired leaves the time that is left to record again, and one that may have
    /// expired is in doubt so long.
    /// </summary>
    [Rule("Civ. Code § 8312")]
    public static Outcome LastDay(FactsAsOf facts, Waterfall fee, ClaimSuits? suits, OpenDays calendar)
    {
        var readings = Readings(facts, calendar);
        var (recorded, standing) = Kept(facts, fee, suits, readings);
        var days = facts.Numbers.On(Number.RecordDesignLien, readings.Count == 0
            ? facts.AsOf : facts.All<WorkWillNotCommence>()[^1].On.Earliest ?? facts.AsOf);
        if (readings.Count == 0)
        {
            return new Outcome(Deadline.WithoutDay(recorded is null ? Standing.NotYet : standing), new Words(
                () => [Reason.Of("Civ. Code § 8312", $"No later than {days} after the claimant knew or had reason to know that the work "
                    + $"will not be commenced; the file does not say since when."), .. About(facts, fee, recorded)],
                () => [new Question($"Since when do you know, or should you have known, that it will not be built: loan refused, permit "
                    + $"lapsed, owner's letter, land for sale?{WorkKinds.WorkWillNotCommence:aside}", days.Count)]));
        }

        standing = recorded is null ? Deadline.StandingOf(facts.AsOf, readings, null) : standing;
        return new Outcome(Deadline.Of(standing, readings, calendar), new Words(
            () =>
            [
                Reason.Of("Civ. Code § 8312", $"No later than {days} after the claimant knew or had reason to "
                    + $"know {DaySpan.Of(facts.All<WorkWillNotCommence>()[^1].On)} that the work will not be "
                    + $"commenced.", [.. facts.All<WorkWillNotCommence>()]),
                .. About(facts, fee, recorded),
            ]));
    }

    // The claim that keeps it best, of those that are alive.
    private static (ClaimSuit? Recorded, Standing Standing) Kept(FactsAsOf facts, Waterfall fee, ClaimSuits? suits,
        IReadOnlyList<Reading> readings)
    {
        ClaimSuit? best = null;
        var standing = Standing.Lost;
        if (suits is null)
            return (null, standing);
        foreach (var suit in suits.Chain)
        {
            if (suit.Standing == Standing.Lost)
                continue;
            var so = readings.Count == 0 ? Standing.Kept : Deadline.StandingOf(facts.AsOf, readings, suit.Recorded);
            if (so == Standing.Kept && !suit.IsSued && facts.AsOf > facts.Numbers.LastDay(Number.SueOnDesignLien, suit.Recorded.Earliest)
                && (readings.Count == 0 || !Deadline.IsPast(facts.AsOf, readings)))
                so = Standing.InDoubt;
            if (so == Standing.Kept
                && (WhichLien.Of(facts, suit.Claim) is null || suit.Claim.Lacks is not null
                    || DefaultNotice.Before(facts, suit.Claim, suit.Recorded, fee) != Verdict.Yes))
                so = Standing.InDoubt;
            if (best is not null && !(so == Standing.Kept && standing != Standing.Kept)
                && !(so == Standing.InDoubt && standing == Standing.Lost))
                continue;
            (best, standing) = (suit, so);
        }

        return (best, standing);
    }

    private static IEnumerable<Reason> About(FactsAsOf facts, Waterfall fee, ClaimSuit? recorded)
    {
        if (recorded is null)
            yield break;
        if (recorded.Claim.Lacks is { } lacks)
            yield return Reason.Of("Civ. Code § 8306(a)", $"The claim recorded {recorded.Recorded} lacks, as entered: {lacks}. Whether it "
                + $"makes the lien all the same is open: record a whole one anew while the time runs.", [recorded.Claim]);
        var ahead = facts.Numbers.On(Number.DefaultNotice, recorded.Recorded.Earliest);
        yield return DefaultNotice.Before(facts, recorded.Claim, recorded.Recorded, fee) == Verdict.Yes
            ? Reason.Of("Civ. Code § 8304(c)", $"Claim recorded {recorded.Recorded}, at least {ahead} after the notice of default.",
                [recorded.Claim])
            : Reason.Of("Civ. Code § 8304(c)", $"Claim recorded {recorded.Recorded}; the file does not show that a notice of demand and "
                + $"default for its amount was given to the landowner at least {ahead} before. Without it there is no lien: give the "
                + $"notice, and record anew while the time runs.", [recorded.Claim]);
    }
}
