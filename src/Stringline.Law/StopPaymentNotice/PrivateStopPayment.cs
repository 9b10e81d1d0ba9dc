using Stringline.Law.ClaimOfLien;
using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The stop payment notice on private work, to the owner and to a construction lender (Civ. Code §§ 8500-8560).</summary>
public static class PrivateStopPayment
{
    private const string SameTime = "Civ. Code § 8508(b)";

    /// <summary>All findings of the remedy.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, Reach reach, Finding notice, LastDay lastDay, Amounts amounts, OpenDays calendar)
    {
        var toOwner = ToOwner(facts, reach, notice, lastDay);
        var toLender = ToLender(facts, notice, lastDay);
        yield return LastDayToGive(facts, toOwner, toLender, lastDay, calendar);
        yield return toOwner;
        if (toLender is not null)
            yield return toLender;
        yield return Amount(facts, amounts.DemandOf(Remedy.StopPaymentNotice));
        foreach (var finding in StopPaymentDays.ActionWindow(facts, lastDay.Readings, lastDay.EndKnown, lastDay.EndFirm, StopPaymentDays.Private, calendar))
            yield return finding;
    }

    /// <summary>It is given before the claimant's own time to record a claim of lien ends; it may be given before work ceases.</summary>
    [Rule("Civ. Code § 8508(b)")]
    private static Finding LastDayToGive(FactsAsOf facts, Finding toOwner, Finding? toLender, LastDay lastDay, OpenDays calendar)
    {
        var given = StopPaymentDays.FirstGiven(facts, out var notice);
        Standing standing;
        if (toOwner.Standing == Standing.Lost && toLender is null or { Standing: Standing.Lost })
            standing = Standing.Lost;
        else if (!facts.HasFurnished)
            standing = Standing.NotYet;
        else if (lastDay.Readings.Count == 0)
            standing = given is null ? Standing.Open : Standing.Kept;
        else
            standing = Deadline.StandingOf(facts.AsOf, lastDay.Readings, given, lastDay.EndFirm);
        return Deadline.Finding("stop-payment-notice.last-day", "Stop payment notice: last day to give", standing, lastDay.Readings, calendar, Why, lastDay.EndKnown);

        List<Reason> Why()
        {
            var why = new List<Reason> { WithTheLien };
            if (notice is not null)
                why.Add(Reason.Of(SameTime, $"Stop payment notice given {given!.Value}.", [notice]));
            return why;
        }
    }

    private static readonly Reason WithTheLien = Reason.Of(SameTime, $"A stop payment notice is given before the claimant's time to record a claim of lien ends, on the same readings (see claim-of-lien.last-day); it need not wait until work has ceased.");

    /// <summary>To the owner: everyone with a lien right except a direct contractor.</summary>
    [Rule("Civ. Code § 8520(a)")]
    [Rule("Civ. Code § 8522")]
    [Rule("Civ. Code § 8508(a)")]
    private static Finding ToOwner(FactsAsOf facts, Reach reach, Finding notice, LastDay lastDay)
    {
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
        {
            return To("stop-payment-notice.owner", "Stop payment notice to the owner", Standing.Lost,
                static () => [Reason.Of("Civ. Code § 8520(a)", $"A direct contractor gives no stop payment notice to the owner.")]);
        }

        var timely = Timely(facts, PartyCapacity.Owner, lastDay);
        var standing = reach.Kind switch
        {
            ReachKind.NotGiven or ReachKind.Late => timely is Standing.Lost ? timely : notice.Standing,
            ReachKind.NoneDue or ReachKind.Whole => timely,
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
        return To("stop-payment-notice.owner", "Stop payment notice to the owner", standing, () =>
        {
            var why = new List<Reason> { OwnerWithholds };
            if (facts.Job.Work.PaymentBond is { Recorded: not null })
                why.Add(Reason.Of("Civ. Code § 8522(b)", $"A payment bond is recorded: the owner may decline to withhold, and then says so within 30 days and sends the bond."));
            why.Add(OwnerDemands);
            if (reach.Kind == ReachKind.NotGiven)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"It is valid only with the preliminary notice, which the file does not show.", [.. notice.Why]));
            return why;
        });
    }

    private static readonly Reason OwnerWithholds = Reason.Of("Civ. Code § 8506(a)", $"Given to the owner or the owner's architect; the owner then withholds from the direct contractor enough to pay the claim as stated (Civ. Code § 8522(a)).");

    private static readonly Reason OwnerDemands = Reason.Of("Civ. Code § 8520(b)", $"If the owner demands a stop payment notice, give it at once: who does not loses the lien. The Code sets no number of days.");

    /// <summary>To a construction lender: everyone, a direct contractor too, if preliminary notice reached that lender.</summary>
    [Rule("Civ. Code § 8530")]
    [Rule("Civ. Code § 8532")]
    [Rule("Civ. Code § 8536")]
    [Rule("Civ. Code § 8508(a)")]
    private static Finding? ToLender(FactsAsOf facts, Finding notice, LastDay lastDay)
    {
        var lenders = facts.Job.In(PartyCapacity.ConstructionLender);
        if (lenders.Count == 0)
            return null;
        List<Party> unnoticed = [];
        foreach (var lender in facts.Job.Claimant.Role == ClaimantRole.Laborer ? [] : lenders)
        {
            if (!Recipients.IsNotYetKnown(facts, lender) && Giving.FirstGiven(facts.PreliminaryNotices, [lender], out _) is null)
                unnoticed.Add(lender);
        }

        Standing standing;
        if (unnoticed.Count == 0)
        {
            standing = Timely(facts, PartyCapacity.ConstructionLender, lastDay);
        }
        else
        {
            standing = facts.All<FurnishingEnded>().Count > 0 && facts.LastFurnished is { } last && facts.AsOf > last.Latest.PlusDays(Reach.LookBackDays)
                ? Standing.Lost
                : Standing.InDoubt;
            if (facts.PreliminaryNotices.Any(n => Reaches(facts, n, PartyCapacity.ConstructionLender)))
                standing = Standing.InDoubt;
        }

        return To("stop-payment-notice.lender", "Stop payment notice to the construction lender", standing, () =>
        {
            var why = new List<Reason>(LenderWithholds);
            if (facts.Job.Work.PaymentBond is { Recorded: not null } && facts.Job.Claimant.Role != ClaimantRole.DirectContractor)
                why.Add(Reason.Of("Civ. Code § 8536(b)", $"A payment bond is recorded: the lender may choose not to withhold even for a bonded notice, if the bond was recorded before it got any stop payment notice."));
            if (unnoticed.Count > 0)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"No preliminary notice reached {string.Join(", ", unnoticed.Select(l => l.Name))}; without it a stop payment notice to it fails (Romak Iron Works v. Prudential (1980) 104 Cal.App.3d 767; Brewer Corp. v. Point Center Financial (2014) 223 Cal.App.4th 831).", [.. notice.Why]));
            return why;
        });
    }

    private static readonly Reason[] LenderWithholds =
    [
        Reason.Of("Civ. Code § 8506(b)", $"Effective only if given to the manager or another responsible person at the office or branch that holds the fund."),
        Reason.Of("Civ. Code § 8532", $"With a bond of 125 percent of the claim the lender must withhold; without one it may choose not to (Civ. Code § 8536). Ask in writing for notice of its choice, with a stamped envelope (Civ. Code § 8538)."),
    ];

    private static bool Reaches(FactsAsOf facts, NoticeGiven notice, PartyCapacity capacity) =>
        notice.To.Any(id => facts.Job.Party(id) is { } party && party.Capacity == capacity);

    /// <summary>Whether it was given to that holder in time, or still can be.</summary>
    private static Standing Timely(FactsAsOf facts, PartyCapacity capacity, LastDay lastDay)
    {
        Days? given = null;
        var onAnUnknownDay = false;
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (!paper.To.Any(id => facts.Job.Party(id) is { } party && party.Capacity == capacity))
                continue;
            given ??= Days.Of(paper.On);
            onAnUnknownDay |= paper.On is DayFact.Unknown;
        }

        if (given is null && onAnUnknownDay)
            return Standing.InDoubt;
        return lastDay.Readings.Count == 0
            ? given is null ? Standing.Open : Standing.Kept
            : Deadline.StandingOf(facts.AsOf, lastDay.Readings, given, lastDay.EndFirm);
    }

    private static Finding To(string id, string title, Standing standing, Func<IReadOnlyList<Reason>> explain) => new()
    {
        Id = id,
        Title = title,
        Standing = standing,
        Explain = explain,
    };

    /// <summary>Only what is due for work provided through the day of the notice; a false notice, or one for work not provided, forfeits the fund and the lien.</summary>
    [Rule("Civ. Code § 8502(c)")]
    [Rule("Civ. Code § 8504")]
    [Rule("Civ. Code § 8510")]
    private static Finding Amount(FactsAsOf facts, decimal demand)
    {
        return new Finding
        {
            Id = "stop-payment-notice.amount",
            Title = "Stop payment notice: amount it can hold",
            Standing = demand > 0 ? Standing.Open : Standing.NotYet,
            Amount = demand,
            Explain = () => WhyAmount(facts, demand),
        };
    }

    private static List<Reason> WhyAmount(FactsAsOf facts, decimal demand)
    {
        var given = facts.All<StopPaymentGiven>();
        var amount = given.Count > 0 && given[^1].Amount is { } claimed ? claimed : demand;
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 8502(c)", $"The notice may claim only what is due for work provided through its day: {demand} as of {facts.AsOf}. Work to come is never included (Civ. Code § 8504).", [.. given]),
            Reason.Of("Civ. Code § 8510", $"The money may be freed by a bond of 125 percent of the amount claimed: {ReleaseBond.AmountFor(amount)}."),
        };
        if (given.Count > 0 && given[^1].Amount is { } stated && stated > demand)
            why.Add(Reason.Of("Civ. Code § 8504", $"The notice claims {stated}, more than the {demand} that the file supports: if that is wilful, the fund and the lien are forfeited.", [given[^1]]));
        return why;
    }
}
