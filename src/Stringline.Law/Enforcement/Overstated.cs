using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Enforcement;

/// <summary>A recorded claim for more than was due on its day (Civ. Code § 8422).</summary>
internal static class Overstated
{
    /// <summary>
    /// The finding <c>claim-of-lien.overstated</c>; null where the claim is no greater than what the file supports. An honest error does
    /// not void it: B. J. Construction v. Spacious Homes (1962) 204 Cal.App.2d 210.
    /// </summary>
    [Rule("Civ. Code § 8422(a)")]
    [Rule("Civ. Code § 8422(b)")]
    [Rule("Civ. Code § 8422(c)")]
    public static Finding? Finding(FactsAsOf facts, ClaimSuits suits, Waterfall demand)
    {
        if (suits.Counts is not { Amount: { } claimed } claim || suits.Released == Verdict.Yes || demand.IsUnknown)
            return null;
        // Above the most that any reading of the facts makes it.
        var excess = claimed - DueWhenRecorded(facts, claim, demand) - Math.Max(demand.InDoubt, demand.AtMost - demand.Demand);
        return excess <= 0 ? null : Above(claim, claimed, excess);
    }

    private static Finding Above(ClaimRecorded claim, decimal claimed, decimal excess) =>
        new()
        {
            Id = "claim-of-lien.overstated",
            Title = "Claim for more than is due",
            Standing = Standing.Open,
            Amount = excess,
            Explain = () =>
            [
                Reason.Of("Civ. Code § 8422(a)", $"The claim states {claimed}, {excess} more than the file supports for its day. An honest "
                    + $"error does not make it invalid (B. J. Construction v. Spacious Homes (1962) 204 Cal.App.2d 210), and it is kept "
                    + $"for what is due.", [claim]),
                Reason.Of("Civ. Code § 8422(c)", $"One who willfully includes work that was not furnished for this property forfeits the "
                    + $"lien."),
                Reason.Of("Civ. Code § 8422(b)", $"A claim made with intent to defraud is invalid; so is one that an innocent buyer could "
                    + $"not see through."),
                Reason.Of("Civ. Code § 8416(a)(1)", $"Correct it by an amended claim for what is due. Until that is in suit the first "
                    + $"claim stays in force: sue in its time, and do not release it."),
            ],
        };

    /// <summary>What was due on the day the claim was recorded: what is due now, with all that was received or released since.</summary>
    [Rule("Civ. Code § 8416(a)(1)")]
    public static decimal DueWhenRecorded(FactsAsOf facts, ClaimRecorded claim, Waterfall demand)
    {
        var due = demand.Demand;
        foreach (var paid in facts.All<Paid>())
            due += IsAfter(paid, claim) ? paid.Amount : 0m;
        foreach (var credited in facts.All<Credited>())
            due += IsAfter(credited, claim) ? credited.Amount : 0m;
        foreach (var waiver in demand.Waivers)
            due += waiver.Binds && IsAfter(waiver.Waiver, claim) ? waiver.Released : 0m;
        return due;
    }

    private static bool IsAfter(Entry entry, ClaimRecorded claim) => !(entry.On.Latest <= claim.On.Earliest);
}
