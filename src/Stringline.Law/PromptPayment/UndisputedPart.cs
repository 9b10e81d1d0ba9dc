using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// The part of a claim on private work that the owner does not dispute: paid soon after its statement, else with a charge by the month
/// (Civ. Code § 8850(d), (h)).
/// </summary>
internal static class UndisputedPart
{
    private const string Section = "Civ. Code § 8850(d)";

    /// <summary>
    /// The sum; null where the owner left nothing undisputed, or the claimant has no claim of its own against the owner under the
    /// procedure.
    /// </summary>
    [Rule(Section)]
    public static SumDue? Of(FactsAsOf facts, OpenDays calendar)
    {
        var (claims, answers) = (facts.All<DisputeClaimSent>(), facts.All<DisputeClaimAnswered>());
        if (claims.Count == 0 || answers.Count == 0 || answers[^1] is not { Undisputed: { } sum and > 0 } answer
            || DaySpan.Of(answer.On) is not { } on)
            return null;
        if (!facts.HiredByOwner || !PrivateClaim.Governs(facts, claims[^1]))
            return null;
        var due = calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.OwnerPays, on.Latest));
        return new SumDue(answer, on.Earliest, due, sum, LateLaw.UndisputedPart.On(facts, due)) { Disputed = 0m };
    }

    /// <summary>Whether it was paid, and in time.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="sum">The sum, with what was received for it.</param>
    public static bool IsPaid(FactsAsOf facts, SumDue sum) => sum.Unpaid == 0 && sum.Penalty(0m, facts.AsOf).ForMonths == 0;

    /// <summary>The finding <c>dispute-claim.undisputed-part</c>.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="sum">The sum, with what was received for it.</param>
    [Rule("Civ. Code § 8850(h)")]
    public static Finding Finding(FactsAsOf facts, SumDue sum)
    {
        var claim = facts.All<DisputeClaimSent>()[^1];
        var interest = sum.Penalty(0m, facts.AsOf);
        var late = facts.AsOf > sum.Due;
        var reading = new Reading($"last day for the payer", sum.Due);
        return new Finding
        {
            Id = "dispute-claim.undisputed-part",
            Title = "Claim under the 2026 procedure: the part not disputed",
            Standing = IsPaid(facts, sum) ? Standing.Done
                : !late ? Standing.NotYet
                : PrivateClaim.IsSure(facts, claim) ? Standing.Open : Standing.InDoubt,
            Readings = [reading],
            Band = new Band(reading, reading),
            Amount = interest.ForMonths,
            Why =
            [
                Reason.Of(Section,
                    $"{sum.Whole} is not disputed, and is paid within {facts.Numbers.On(Number.OwnerPays, sum.From)} after the owner's "
                        + $"statement: by {sum.Due}. {sum.Unpaid} is unpaid.", [sum.Fact]),
                .. late ? (Reason[])[
                    Reason.Of("Civ. Code § 8850(h)", $"What is late bears {sum.Terms.PerMonth} a month from the day "
                        + $"after {sum.Due}: {interest.ForMonths} for whole months, {interest.ByDays} day by day "
                        + $"at {sum.Terms.ByTheYear}.", [sum.Fact])] : [],
            ],
        };
    }
}
