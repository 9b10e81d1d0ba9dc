using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>
/// What follows the papers of a summary release: the action for a declaration of rights, the hearing, and the order
/// (Civ. Code §§ 9408-9414).
/// </summary>
internal static class SummaryReleaseInCourt
{
    /// <summary>The findings <c>summary-release.rights-action</c>, <c>.hearing-notice</c> and <c>.order</c>.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="kept">Whether a counteraffidavit may hold the money.</param>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, bool kept)
    {
        var orders = facts.All<ReleaseOrdered>();
        if (orders.Count > 0)
            yield return Order(orders[^1]);
        else if (kept || facts.All<RightsActionFiled>().Count > 0)
            yield return RightsAction(facts);
        if (orders.Count == 0 && Hearing(facts) is { } hearing)
            yield return hearing;
    }

    // The first notice that is as the section asks, else the last: one may be given again.
    private static Finding? Hearing(FactsAsOf facts)
    {
        Finding? last = null;
        foreach (var noticed in facts.All<HearingNoticed>())
        {
            if (DaySpan.Of(noticed.On) is not { } on)
                continue;
            last = HearingNotice(facts, noticed, on);
            if (last.Standing == Standing.Kept)
                break;
        }

        return last;
    }

    /// <summary>Either side may bring an action for a declaration of rights and move for a determination; no day is set.</summary>
    [Rule("Civ. Code § 9408(a)")]
    [Rule("Civ. Code § 9408(d)")]
    private static Finding RightsAction(FactsAsOf facts)
    {
        var filed = facts.All<RightsActionFiled>();
        return new Finding
        {
            Id = "summary-release.rights-action",
            Title = "Action for a declaration of rights to the withheld money",
            Standing = filed.Count > 0 ? Standing.Done : Standing.Open,
            Why = [Reason.Of("Civ. Code § 9408(a)", $"With the counteraffidavit and its proof served, the direct contractor or the "
                + $"claimant may bring an action for a declaration of rights, and then move for a determination; the motion is heard "
                + $"within {facts.Numbers.On(Number.HearMotion, facts.AsOf)}. The direct contractor bears the burden of proof "
                + $"(Civ. Code § 9410(b)). It is no action on the stop payment notice, whose own time runs on, unless it asks for that "
                + $"too.", [.. filed])],
        };
    }

    /// <summary>
    /// Notice of the hearing is given not less than five days before it; by mail it is complete only on the fifth day after deposit, in
    /// spite of Civ. Code § 8116.
    /// </summary>
    [Rule("Civ. Code § 9408(b)")]
    [Rule("Civ. Code § 9408(c)")]
    private static Finding HearingNotice(FactsAsOf facts, HearingNoticed noticed, DaySpan on)
    {
        var ahead = facts.Numbers.On(Number.NoticeOfHearing, noticed.Hearing);
        var mail = facts.Numbers.On(Number.HearingByMail, on.Latest);
        var last = ahead.LookBack(noticed.Hearing);
        var byHand = on.Latest <= last;
        var byMail = mail.LastDay(on.Latest) <= last;
        var isNotice = noticed.Manner is not { } manner || Giving.IsGood(manner);
        var untold = Untold(facts, noticed);
        var isGood = isNotice && untold.Count == 0 && (noticed.Manner is Manner.Personal ? byHand : byMail);
        var hearing = new Reading($"the day of the hearing", noticed.Hearing);
        return new Finding
        {
            Id = "summary-release.hearing-notice",
            Title = "Notice of the hearing on the withheld money",
            Standing = isGood ? Standing.Kept : Standing.InDoubt,
            Readings = [hearing],
            Band = new Band(hearing, hearing),
            Why =
            [
                Reason.Of("Civ. Code § 9408(b)", $"Not less than {ahead.Spelled}' notice of the hearing is given to the public entity and "
                    + $"to the other party, by {last}; by mail it is complete on the {mail.Ordinal} day after deposit "
                    + $"(Civ. Code § 9408(c)), so it is mailed by {mail.LookBack(last)}. Given {on}.", [noticed]),
                .. isNotice ? (Reason[])[]
                    : [Reason.Of("Civ. Code § 9408(c)", $"The notice was given in no manner of Civ. Code §§ 8106 and 8110: give it again.",
                        [noticed])],
                .. untold.Select(party =>
                    Reason.Of("Civ. Code § 9408(b)", $"No notice to {party.Name} is shown: it goes to the public entity and to the other "
                        + $"party.", [noticed])),
            ],
            Questions =
            [
                .. noticed.Manner is null && byHand && !byMail
                    ? (Question[])[
                        new Question($"How was notice of the hearing given? By hand it is in time, by mail it is "
                            + $"not.{PublicKinds.HearingNoticed.At("manner"):aside}") { Corrects = noticed }] : [],
                .. noticed.To.Count == 0
                    ? (Question[])[
                        new Question($"To whom was notice of the hearing given? It goes to the public entity and to the other "
                            + $"party.{PublicKinds.HearingNoticed.At("to"):aside}") { Corrects = noticed }] : [],
                .. noticed.By is null && untold.Any(static party => party.Capacity == PartyCapacity.DirectContractor)
                    ? (Question[])[
                        new Question($"Did the direct contractor itself move for the hearing and give the notice? Then the other party is "
                            + $"the claimant.{PublicKinds.HearingNoticed.At("by"):aside}") { Corrects = noticed }] : [],
            ],
        };
    }

    // Whom the notice did not reach, where the file says whom it did: the public entity, and the direct contractor unless that one gave it.
    [Rule("Civ. Code § 9408(b)")]
    private static List<Party> Untold(FactsAsOf facts, HearingNoticed noticed)
    {
        if (noticed.To.Count == 0)
            return [];
        var untold = new List<Party>();
        foreach (var party in facts.Job.Parties)
        {
            if ((party.Capacity == PartyCapacity.PublicEntity || (party.Capacity == PartyCapacity.DirectContractor && noticed.By is null))
                && !noticed.To.Contains(party.Id))
                untold.Add(party);
        }

        return untold;
    }

    /// <summary>The order settles whether the entity withholds further; it binds nobody as to the payment bond or the debt.</summary>
    [Rule("Civ. Code § 9412(c)")]
    [Rule("Civ. Code § 9414")]
    private static Finding Order(ReleaseOrdered order) => new()
    {
        Id = "summary-release.order",
        Title = "Order on the withheld money",
        Standing = Standing.Done,
        Amount = order.Amount ?? 0m,
        Why =
        [
            order.Amount is { } freed
                ? Reason.Of("Civ. Code § 9412(c)", $"The court set {freed} free {DaySpan.Of(order.On)}: the stop payment notice holds so "
                    + $"much less.", [order])
                : Reason.Of("Civ. Code § 9412(c)", $"The release was denied {DaySpan.Of(order.On)}: the money stays withheld.", [order]),
            Reason.Of("Civ. Code § 9414", $"The order settles nothing toward the claim on the payment bond, nor toward one who owes the "
                + $"debt."),
        ],
    };
}
