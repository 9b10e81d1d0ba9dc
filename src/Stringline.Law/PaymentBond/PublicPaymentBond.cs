using Stringline.Law.Bankruptcy;
using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.StopPaymentNotice;
using Stringline.Law.Counting;

namespace Stringline.Law.PaymentBond;

/// <summary>A claim on the payment bond of a public work (Civ. Code §§ 9550-9566).</summary>
public static class PublicPaymentBond
{
    /// <summary>
    /// The findings <c>payment-bond.notice-last-day</c>, <c>.amount</c>, <c>.action-first-day</c> and <c>.action-last-day</c>.
    /// </summary>
    public static IReadOnlyList<Finding> Findings(
        FactsAsOf facts, Reach reach, Amounts amounts, TimeOfGiving stopPayment, CompletionReadings completion,
            IReadOnlyList<OwnersNotice> owners, OpenDays calendar)
    {
        var right = BondRight.OnPublicWork(facts);
        var notice = BondNotice.Of(facts, BondNoticeNeed.Of(facts, reach, BondLaw.Public), BondServed.Of(facts), right, completion, owners,
            BondLaw.Public, calendar);
        var firstDay = FirstDay(facts, completion);
        var last = LastDayToSue(facts, notice, right, stopPayment, firstDay, calendar, out var stay);
        var findings = new List<Finding> { BondNotice.Finding(notice),
            BondAmount.Finding(facts, reach, amounts, notice, last, right, BondLaw.Public) };
        if (FirstDayToSue(facts, firstDay, right) is { } first)
            findings.Add(first);
        findings.Add(ActionOnBond.Finding(last));
        if (stay?.Instead(facts, "payment-bond.stay-last-day", last.Deadline) is { } instead)
            findings.Add(instead);
        return findings;
    }

    /// <summary>
    /// The action may be brought at any time after the claimant ceases to provide work; null while the file does not show that it has.
    /// </summary>
    [Rule("Civ. Code § 9558")]
    private static DaySpan? FirstDay(FactsAsOf facts, CompletionReadings completion)
    {
        if (facts.LastFurnished is not { } last || !HasCeased.Of(facts, completion))
            return null;
        return (HasCeased.End(facts) is { } end && DaySpan.Of(end.On) is { } told ? DaySpan.Later(last, told) : last).Plus(1);
    }

    [Rule("Civ. Code § 9558")]
    private static Finding? FirstDayToSue(FactsAsOf facts, DaySpan? firstDay, BondRight right)
    {
        if (!facts.HasFurnished)
            return null;
        var standing = firstDay is not { } first ? Standing.NotYet : facts.AsOf >= first.Latest
            ? Standing.Open : facts.AsOf >= first.Earliest ? Standing.InDoubt : Standing.NotYet;
        IReadOnlyList<Reading> readings = firstDay is not { } day ? []
            : day.IsExact ? [new Reading($"the day after the claimant ceased to provide work", day.Earliest)]
            : [new Reading($"ceased on the earliest day", day.Earliest), new Reading($"ceased on the latest day", day.Latest)];
        return new Finding
        {
            Id = "payment-bond.action-first-day",
            Title = "Action on the payment bond: first day",
            Standing = right.Limit(standing),
            Readings = readings,
            Band = readings.Count == 0 ? null : Deadline.BandOver(readings),
            Explain = () => firstDay is { } from
                ? [.. right.Why,
                    Reason.Of("Civ. Code § 9558", $"The action may be brought at any time after the claimant ceases to provide work: "
                        + $"from {from.Latest}.")]
                : [.. right.Why,
                    Reason.Of("Civ. Code § 9558", $"The action may be brought at any time after the claimant ceases to provide work; the "
                        + $"file does not say that it has.")],
            Ask = () => firstDay is null
                ? [new Question($"Has the claimant ceased to provide work?{WorkKinds.FurnishingEnded:aside}")] : [],
        };
    }

    /// <summary>Until six months after the end of the time to give a stop payment notice, whether one was given or not.</summary>
    [Rule("Civ. Code § 9558")]
    [Rule("Civ. Code § 9564")]
    private static Outcome LastDayToSue(FactsAsOf facts, Outcome notice, BondRight right, TimeOfGiving stopPayment, DaySpan? firstDay,
        OpenDays calendar, out StayedSuit? stay)
    {
        var readings = new List<Reading>();
        foreach (var reading in stopPayment.Readings)
            readings.AddRange(Deadline.Months(reading.Words, reading.Day, facts.Numbers.On(Number.SueOnPublicBond, reading.Day), calendar));
        // While the claimant still provides work any action is early; what was furnished last shows no end.
        var from = firstDay ?? facts.LastFurnished?.Plus(1);
        var stayed = stay = ActionOnBond.StayOf(facts, readings);
        var standing = notice.Standing == Standing.Lost ? Standing.Lost
            : readings.Count == 0 ? Standing.NotYet
            : ActionOnBond.StandingOf(facts, readings, stopPayment.EndFirm, from, stay);
        stay?.AddTo(readings, standing);
        return new Outcome(
            Deadline.Of(right.Limit(standing), readings, calendar, endKnown: stopPayment.EndKnown && stay is not { HasNoEnd: true }),
            new Words(Why, Ask));

        List<Reason> Why()
        {
            List<Reason> why = [.. right.Why];
            if (notice.Standing == Standing.Lost)
                why.Add(Reason.Of("Civ. Code § 9560(a)", $"The bond is enforced by one who gave preliminary notice or notice to surety and "
                    + $"principal, and neither was given in time.", [.. notice.Why]));
            foreach (var reading in stopPayment.Readings)
                why.Add(Reason.Of("Civ. Code § 9558", $"On the reading «{reading.Words}» the time to give a stop payment notice "
                    + $"ends {reading.Day}; the action is brought "
                    + $"within {facts.Numbers.On(Number.SueOnPublicBond, reading.Day).Spelled} after it."));
            if (readings.Count == 0)
                why.Add(Reason.Of("Civ. Code § 9558",
                    $"{LawText.Capital(facts.Numbers.On(Number.SueOnPublicBond, facts.AsOf).Spelled)} after the time to give a stop "
                        + $"payment notice ends; that time does not run yet."));
            why.AddRange(ActionOnBond.Why(facts, BondLaw.Public, from));
            why.AddRange(ActionOnBond.WhyStayed(facts, stayed, standing));
            why.Add(Fees);
            return why;
        }

        List<Question> Ask() => [.. right.Questions, .. ActionOnBond.Questions(facts), .. notice.Standing == Standing.Lost
            ? [] : ActionOnBond.AskStay(stayed, standing)];
    }

    private static readonly Reason Fees =
        Reason.Of("Civ. Code § 9564", $"It needs no stop payment notice and no action against the entity; whoever wins it is awarded a "
            + $"reasonable attorney's fee by the other side.");
}
