using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>The time to bring an action on a recorded claim of lien (Civ. Code § 8460(a)).</summary>
public static class ActionDays
{
    private const string Section = "Civ. Code § 8460(a)";
    internal const string Title = "Action to enforce the lien";

    /// <summary>
    /// The time to sue: 90 days after recording; where a notice of credit holds, its time instead. Without an action
    /// the claim expires.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="suits">The claims in force with their actions.</param>
    /// <param name="credit">The time to sue after credit; null where none is recorded.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 8460(a)")]
    public static Outcome Of(FactsAsOf facts, ClaimSuits suits, Outcome? credit, OpenDays calendar)
    {
        if (suits.Leading is not { } leading)
        {
            return new Outcome(Deadline.WithoutDay(Standing.NotYet), new Words(
                () => [Reason.Of(Section, $"An action must be brought within {facts.Numbers.On(Number.SueOnClaim, facts.AsOf)} after the "
                    + $"claim is recorded; none that counts is recorded yet.")]));
        }

        // Subdivision (a) does not apply where a notice of credit is recorded (Civ. Code § 8460(b)).
        if (credit is not null && suits.Released != Verdict.Yes)
            return credit;
        var standing = suits.Released switch
        {
            Verdict.Yes => Standing.Done,
            Verdict.Open => Standing.InDoubt,
            Verdict.No =>
                NoBetterThanItsClaim(facts, suits, leading,
                    Credit.UnlessOfEarlierClaim(facts, leading,
                        ReleaseBond.UnlessBonded(facts, leading, suits.StandingOn(facts.AsOf), calendar), calendar)),
            _ => throw new InvalidOperationException($"No such verdict: {suits.Released}."),
        };
        var readings = Readings(suits, standing);
        return new Outcome(
            Deadline.Of(standing, readings, calendar, endKnown: leading.Stay is not { Until: null }),
            new Words(() => WhyAction.Of(facts, suits, standing, calendar), () => WhyAction.Ask(facts, suits, standing, calendar)));
    }

    /// <summary>The finding <c>enforcement.last-day</c>.</summary>
    internal static Finding Finding(Outcome action) => action.Finding("enforcement.last-day", Title);

    /// <summary>
    /// An action on a claim is worth no more than the claim: one that may have come too early or too late, before the preliminary notice,
    /// in the wrong county or for another lien, that lacks what the section asks, or whose copy was served otherwise than by mail to the
    /// owner, may be void.
    /// </summary>
    [Rule("Civ. Code § 8416(e)")]
    [Rule("Civ. Code § 8410")]
    private static Standing NoBetterThanItsClaim(FactsAsOf facts, ClaimSuits suits, ClaimSuit leading, Standing standing) =>
        standing is Standing.Open or Standing.Kept && WhyDoubtful(facts, suits, leading.Claim) is not null ? Standing.InDoubt : standing;

    /// <summary>The same of a credit, which gives time to sue on the claim (Civ. Code § 8460(b)).</summary>
    internal static Outcome? NoBetterThanItsClaim(FactsAsOf facts, ClaimSuits suits, Outcome? credit) =>
        credit is { Standing: Standing.Open or Standing.Kept } && suits.Leading is { } leading
        && WhyDoubtful(facts, suits, leading.Claim) is { } why
            ? credit.Limited(Standing.InDoubt, [why, .. credit.Why]) : credit;

    private static Reason? WhyDoubtful(FactsAsOf facts, ClaimSuits suits, ClaimRecorded claim) =>
        WhichLien.Of(facts, claim) is null
        ? Reason.Of("Civ. Code § 8308(a)", $"The claim recorded {DaySpan.Of(claim.On)} does not say which lien it is for, and this goes "
            + $"with the mechanics lien.", [claim])
        : !NoticeBeforeClaim.Stood(facts, claim, out var why) ? why
        : suits.IsOnGoodClaim ? null
        : Reason.Of("Civ. Code § 8410", $"The claim recorded {DaySpan.Of(claim.On)} is itself in doubt, and this needs it; what it may "
            + $"lack stands under the time to record.", [claim]);

    // Kept by an action, it has the days of the claim that is sued on; else those of every claim that may be the one.
    internal static IReadOnlyList<Reading> Readings(ClaimSuits suits, Standing standing)
    {
        var leading = suits.Leading!;
        var stayed = leading.Stay?.LastDay(leading.Recorded.Latest, leading.Readings[^1].Day);
        if (stayed is null && (suits.Chain.Count == 1 || standing is Standing.Kept or Standing.Done))
            return leading.Readings;
        var readings = new List<Reading>();
        foreach (var suit in suits.Chain)
        {
            foreach (var reading in suit.Readings)
                readings.Add(suits.Chain.Count == 1
                    ? reading : reading with { Words = $"{reading.Words} of the claim of {suit.Recorded}" });
        }

        if (stayed is { } later && later > leading.LastEnd && standing is not (Standing.Kept or Standing.Done))
            readings.Add(new Reading($"if the time stood still in the bankruptcy", later));
        return readings;
    }
}
