using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// The amount of the remedy: what a notice can claim, and, once one that counts was given, what it holds. Each notice is measured by the
/// demand of its own day: it may claim only what is due for work provided through it (Civ. Code §§ 8502(c), 9352(c)).
/// </summary>
/// <param name="Outcome">Where it stands and why.</param>
/// <param name="Dollars">What it holds, or can hold: dollars and cents.</param>
/// <param name="IsHeld">Whether a notice that counts was given, so that the money is held.</param>
internal sealed record AmountHeld(Outcome Outcome, decimal Dollars, bool IsHeld)
{
    /// <summary>The finding <c>stop-payment-notice.amount</c>.</summary>
    public Finding Finding => Outcome.Finding(
        "stop-payment-notice.amount", IsHeld ? "Stop payment notice: amount it holds" : "Stop payment notice: amount it can hold", Dollars);

    /// <summary>What the notices hold; where none that counts was given what one could.</summary>
    [Rule("Civ. Code § 8502(c)")]
    [Rule("Civ. Code § 9352(c)")]
    public static AmountHeld Of(
        FactsAsOf facts, Reach reach, Amounts amounts, IReadOnlyList<HolderServed> served, Outcome last, Standing? action,
            TimeOfGiving time, StopPaymentLaw law)
    {
        var demand = amounts.DemandOf(Remedy.StopPaymentNotice);
        decimal? held = null;
        foreach (var holder in served)
        {
            if (HeldBy(facts, reach, demand, holder, time) is { } sum)
                held = held is { } so ? Math.Max(so, sum.Held) : sum.Held;
        }

        var claimable = Claimable(facts, demand, served);
        var standing = held is null
            ? last.Standing == Standing.Lost ? Standing.Lost : claimable > 0 ? Standing.Open : Standing.NotYet
            : held <= 0 && SetFree.OfNoticesSince(facts, null) > 0 ? Standing.Lost
            : action is Standing.Lost or Standing.Done ? action.Value
            : demand <= 0 ? Standing.NotYet
            : last.Standing == Standing.Kept ? Standing.Kept : Standing.InDoubt;
        return new AmountHeld(
            new Outcome(standing, new Words(
                () => Why(facts, reach, amounts, served, last, held, claimable, time, law), () => Ask(facts, reach, served, time))),
            held ?? (standing == Standing.Lost ? 0m : claimable), held is not null);
    }

    // What a notice given today may claim.
    private static decimal Claimable(FactsAsOf facts, decimal demand, IReadOnlyList<HolderServed> served)
    {
        foreach (var holder in served)
        {
            if (!holder.Holder.IsLender)
                return demand;
        }

        var most = 0m;
        foreach (var lender in served)
            most = Math.Max(most, Net(facts, Toward(facts, demand, lender.Holder)));
        return most;
    }

    private sealed record Sum(decimal Held, decimal? Stated, decimal Due);

    /// <summary>
    /// What a holder holds on the notices that count: no more than they state, and no more than is due for work through the last of them.
    /// </summary>
    private static Sum? HeldBy(FactsAsOf facts, Reach reach, decimal demand, HolderServed holder, TimeOfGiving time)
    {
        var counting = holder.Counting(time);
        if (counting.Count == 0)
            return null;
        decimal? stated = 0m;
        LocalDate? first = null, through = null;
        foreach (var service in counting)
        {
            first ??= service.Paper.On.Earliest;
            stated = service.Paper.Amount is { } amount
                ? stated + Math.Max(0m, amount - StopPaymentReleases.ReducedBy(facts, service.Paper)) : null;
            through = service.Paper.On.Earliest ?? through;
        }

        if (stated is { } before)
            stated = before - Math.Min(before, SetFree.OfNoticesSince(facts, first));
        var within = Toward(facts, demand, holder.Holder);
        var due = through is { } end && LaterWork(facts, end)
            ? Math.Min(within, Demand.Of(facts.WithWorkThrough(end), holder.Holder.Reach ?? reach, Remedy.StopPaymentNotice).Demand)
            : within;
        if (holder.Holder.IsLender)
            due = Net(facts, due);
        return new Sum(stated is { } most ? Math.Min(most, due) : due, stated, due);
    }

    // Toward a lender told later than the owner the preliminary notice reaches less far back.
    private static decimal Toward(FactsAsOf facts, decimal demand, Holder holder) =>
        holder.Reach is { } reach ? Math.Min(demand, Demand.Of(facts, reach, Remedy.StopPaymentNotice).Demand) : demand;

    private static bool LaterWork(FactsAsOf facts, LocalDate day)
    {
        foreach (var furnished in facts.Furnished)
        {
            if (!(furnished.Until.Latest <= day))
                return true;
        }

        return false;
    }

    /// <summary>A lender owes a contractor only what is left after the stop payment notices of those under it.</summary>
    [Rule("Civ. Code § 8542")]
    private static decimal Net(FactsAsOf facts, decimal due)
    {
        if (facts.Job.Claimant.Role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor))
            return due;
        foreach (var lower in facts.All<LowerTierClaim>())
        {
            if (lower.StopPaymentNotice)
                due -= lower.Amount;
        }

        return Math.Max(0m, due);
    }

    private static List<Reason> Why(
        FactsAsOf facts, Reach reach, Amounts amounts, IReadOnlyList<HolderServed> served, Outcome last, decimal? held, decimal claimable,
            TimeOfGiving time, StopPaymentLaw law)
    {
        var given = facts.All<StopPaymentGiven>();
        var waterfall = amounts.Of(Remedy.StopPaymentNotice)!;
        var demand = waterfall.Demand;
        var why = new List<Reason>();
        if (held is null && last.Standing == Standing.Lost)
        {
            why.Add(Reason.Of(law.Recipients, $"No stop payment notice that counts was given, and none can be given any more: it holds "
                + $"nothing.", [.. last.Why]));
        }
        else
        {
            why.Add(Reason.Of(law.DueOnly, $"The notice may claim only what is due for work provided through its "
                + $"day: {demand} as of {facts.AsOf}. Work to come is never included ({law.Falsehood}).", [.. given]));
            foreach (var step in waterfall.Steps)
                why.Add(step.Why);
        }

        if (held is null && claimable < demand && served.Count > 0)
            why.Add(Reason.Of("Civ. Code § 8542", $"From a lender at most {claimable}, after the stop payment notices of those under the "
                + $"claimant's own contract.", facts.All<LowerTierClaim>()));
        foreach (var holder in served)
        {
            if (HeldBy(facts, reach, demand, holder, time) is { } sum)
                AddHeld(facts, demand, holder, sum, last, law, why);
        }

        foreach (var paper in given)
        {
            if (paper.Amount is { } stated && StopPaymentReleases.IsReleased(facts, paper) != Verdict.Yes && paper.On.Latest is { } day)
                AddTooMuch(facts, reach, paper, stated, day, law, why);
            if (StopPaymentReleases.ReducedBy(facts, paper) is > 0 and var off)
                why.Add(Reason.Of("Civ. Code § 8128", $"The notice was reduced by {off}: to that extent nothing can be enforced on it, and "
                    + $"nothing need be held.", [paper]));
        }

        var basis = given.Count > 0 && given[^1].Amount is { } claimed ? claimed : held ?? claimable;
        why.Add(FreedByBond(facts, basis, law));
        if (ReferenceEquals(law, StopPaymentLaw.Public))
            why.Add(ProRata);
        return why;
    }

    private static void AddHeld(FactsAsOf facts, decimal demand, HolderServed holder, Sum sum, Outcome last, StopPaymentLaw law,
        List<Reason> why)
    {
        why.Add(Reason.Of(law.DueOnly, sum.Stated is { } stated
            ? (Sentence)($"Held by the {holder.Holder.Words}: {sum.Held}. The notice states {stated}, and {sum.Due} of what was due "
                + $"through "
                + $"its day is still due.")
            : $"Held by the {holder.Holder.Words}: {sum.Held} at most; the file does not say what the notice states."));
        var within = Toward(facts, demand, holder.Holder);
        var missing = (holder.Holder.IsLender ? Net(facts, within) : within) - sum.Held;
        if (missing <= 0)
            return;
        why.Add(last.Deadline.ActBy is { } actBy && facts.AsOf <= last.Deadline.Band!.Earliest.Day
            ? Reason.Of(law.DueOnly, $"{missing} is not held by it: it was furnished after the notice, or the notice states less. Give a "
                + $"further notice by {actBy}.")
            : Reason.Of(law.DueOnly, $"{missing} is not held by it: it was furnished after the notice, or the notice states less. Give a "
                + $"further notice at once, if the time still runs."));
    }

    /// <summary>More than was due on the day of the notice is an alarm, whatever was furnished since.</summary>
    [Rule("Civ. Code § 8504")]
    [Rule("Civ. Code § 9454")]
    private static void AddTooMuch(FactsAsOf facts, Reach reach, StopPaymentGiven paper, decimal stated, LocalDate day, StopPaymentLaw law,
        List<Reason> why)
    {
        var then = Demand.Of(facts.Through(day), reach, Remedy.StopPaymentNotice);
        var due = then.Demand;
        if (stated > due && !then.IsUnknown)
            why.Add(Reason.Of(law.Falsehood, $"The notice claims {stated}, {stated - due} more than the {due} that the file supports as "
                + $"due for work through {day}: if that is wilful, {law.Forfeit}.", [paper]));
    }

    /// <summary>A bond of 125 percent of the claim takes the place of the money.</summary>
    [Rule("Civ. Code § 8510")]
    [Rule("Civ. Code § 9364")]
    private static Reason FreedByBond(FactsAsOf facts, decimal claimed, StopPaymentLaw law)
    {
        var given = facts.All<StopPaymentBondGiven>();
        var percent = facts.Numbers.On(law.BondPercent, given.Count > 0 ? given[^1].On.Earliest ?? facts.AsOf : facts.AsOf);
        var needed = ReleaseBond.AmountFor(claimed, percent);
        if (given is [.., var bond])
        {
            return bond.Amount is { } amount && amount < needed
                ? Reason.Of(law.ReleaseBond, $"A bond of {amount} was given to free the money; {percent} of the claim "
                    + $"is {needed}, so the money should still be held. Tell the holder at once.", [bond])
                : Reason.Of(law.ReleaseBond, $"A bond was given that frees the money: the claim lives on against the bond. Sue in the same "
                    + $"time, the surety on the bond too.", [bond]);
        }

        return ReferenceEquals(law, StopPaymentLaw.Public)
            ? Reason.Of(law.ReleaseBond,
                $"The entity may let the direct contractor free the money by a bond of {percent} of the claim: {needed}.")
            : Reason.Of(law.ReleaseBond, $"The money may be freed by a bond of {percent} of the amount claimed: {needed}.");
    }

    [Rule("Civ. Code § 9450")]
    [Rule("Civ. Code § 9452")]
    private static Reason ProRata { get; } =
    Reason.Of("Civ. Code § 9450", $"Where the money withheld does not pay all notices, it is shared in the ratio of the claims; the rest "
        + $"may be claimed on the payment bond (Civ. Code § 9452).");

    private static List<Question> Ask(FactsAsOf facts, Reach reach, IReadOnlyList<HolderServed> served, TimeOfGiving time)
    {
        var questions = new List<Question>();
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (paper.Amount is null)
                questions.Add(
                    new Question($"Which amount does the stop payment notice state?{NoticeKinds.StopPaymentGiven.At("amount"):aside}") {
                        Corrects = paper });
            if (paper.On.Latest is not { } day)
                continue;
            if (Demand.Of(facts.Through(day), reach, Remedy.StopPaymentNotice).IsUnknown)
                questions.Add(
                    new Question($"What was due on the day of the stop payment notice? Price what was furnished by "
                        + $"then.{WorkKinds.Furnished.At("amount"):aside}", Dollars: paper.Amount));
            foreach (var furnished in facts.Furnished)
            {
                if (furnished.On.Earliest <= day && furnished.Until.Latest > day)
                    questions.Add(new Question($"How much of the work that was going on when the stop payment notice was given had been "
                        + $"provided by then? Split the entry at that "
                        + $"day.{WorkKinds.Furnished.At("amount"):aside}", Dollars: furnished.Amount) { Corrects = furnished });
            }
        }

        if (served.Any(h => h.Holder.IsLender) && facts.Job.Claimant.Role is ClaimantRole.DirectContractor or ClaimantRole.Subcontractor)
        {
            foreach (var lower in facts.All<LowerTierClaim>())
            {
                if (!lower.StopPaymentNotice)
                    questions.Add(new Question($"Did the one under the claimant's contract give the lender a stop payment notice too? It "
                        + $"comes off what the lender owes the claimant.{ClaimKinds.LowerTierClaim.At("stopPaymentNotice"):aside}",
                        Dollars: lower.Amount) { Corrects = lower });
            }
        }

        if (facts.All<StopPaymentBondGiven>() is [.., { Amount: null } bond] && served.Any(h => h.Counting(time).Count > 0))
            questions.Add(
                new Question($"What is the amount of the bond that frees the money?{OwnerKinds.StopPaymentBondGiven.At("amount"):aside}") {
                    Corrects = bond });
        return questions;
    }
}
