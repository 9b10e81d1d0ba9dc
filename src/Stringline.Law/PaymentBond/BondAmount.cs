using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PaymentBond;

/// <summary>
/// What may be claimed on a payment bond: by the preliminary notice what it reaches, by the notice to surety and principal all unpaid work.
/// </summary>
internal static class BondAmount
{
    /// <summary>The finding <c>payment-bond.amount</c>.</summary>
    [Rule("Civ. Code § 8612(b)", Sure = Sure.Opinion)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.Opinion)]
    public static Finding Finding(FactsAsOf facts, Reach reach, Amounts amounts, Outcome notice, Outcome action, BondRight right,
        BondLaw law)
    {
        var hasLookBack = reach.Kind is ReachKind.Late or ReachKind.NotGiven;
        // By the road of the preliminary notice the bond has the limits of the stop payment notice, and by its own notice none.
        // What a court set free is taken from the stop payment notice alone (Civ. Code § 9414).
        var byPreliminary = facts.All<ReleaseOrdered>().Count > 0 && facts.Job.Work.Kind == WorkKind.Public
            ? amounts.WithinReach(Remedy.PaymentBond) : amounts.DemandOf(Remedy.StopPaymentNotice);
        var whole = hasLookBack ? amounts.DemandOf(Remedy.PaymentBond) : byPreliminary;
        var (standing, amount) = notice.Standing switch
        {
            _ when action.Standing is Standing.Lost => (Standing.Lost, 0m),
            Standing.Narrowed => (Standing.Narrowed, byPreliminary),
            var other => (whole > 0 ? other : Standing.NotYet, whole),
        };
        return new Finding
        {
            Id = "payment-bond.amount",
            Title = "Payment bond: amount that may be claimed",
            Standing = standing,
            Amount = amount,
            Explain = Why,
            Ask = () => right.Questions,
        };

        List<Reason> Why()
        {
            List<Reason> why = [.. right.Why];
            var today = reach.Kind == ReachKind.NotGiven ? " given today" : "";
            switch (standing)
            {
                case Standing.Lost:
                    why.Add(Reason.Of(law.Section, $"Nothing may be claimed on the bond any more; by its unpaid work the claim would have "
                        + $"been {whole}.", [.. (notice.Standing == Standing.Lost ? notice : action).Why]));
                    break;
                case Standing.Narrowed:
                    why.Add(Reason.Of(law.Preliminary, $"{byPreliminary} by preliminary notice{today}: only work within "
                        + $"its {Reach.LookBack(facts, reach.Given?.Latest ?? facts.AsOf)} and after. The time to give notice to surety "
                        + $"and principal is over, and {whole - byPreliminary} with it.", [.. notice.Why]));
                    break;
                default:
                    if (!hasLookBack)
                        why.Add(Reason.Of(law.Preliminary, $"All unpaid work: {whole}."));
                    else if (notice.Standing == Standing.Kept)
                        why.Add(Reason.Of(law.Section, $"{whole} by the notice to surety and principal, which has no look-back (American "
                            + $"Buildings v. Bay Commercial Construction (2002) 99 Cal.App.4th 1193); by preliminary "
                            + $"notice{today} alone it would be {byPreliminary}."));
                    else if (notice.Deadline.ActBy is { } actBy)
                        why.Add(Reason.Of(law.Section, $"{byPreliminary} by preliminary notice{today}; {whole} if the notice is given to "
                            + $"surety and principal by {actBy}: that notice has no look-back (American Buildings v. Bay Commercial "
                            + $"Construction (2002) 99 Cal.App.4th 1193)."));
                    else
                        why.Add(Reason.Of(law.Section, $"{byPreliminary} by preliminary notice{today}; {whole} if the notice is given to "
                            + $"surety and principal: that notice has no look-back (American Buildings v. Bay Commercial Construction "
                            + $"(2002) 99 Cal.App.4th 1193)."));
                    break;
            }

            foreach (var step in (standing == Standing.Narrowed
                ? Demand.Of(facts, reach, Remedy.PaymentBond) : amounts.Of(Remedy.PaymentBond)!).Steps)
                why.Add(step.Why);
            foreach (var paper in facts.All<BondNoticeGiven>())
            {
                if (paper.Amount is { } stated && stated != whole)
                    why.Add(Reason.Of(law.Manner, $"The notice states {stated}; the file supports {whole} as of {facts.AsOf}.", [paper]));
            }

            if (facts.Job.Work.PaymentBond?.Amount is { } bond)
                why.Add(Reason.Of(law.Section, $"The bond is for {bond} in all, for everybody who claims on it."));
            return why;
        }
    }
}
