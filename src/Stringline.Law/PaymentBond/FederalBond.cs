using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PaymentBond;

/// <summary>
/// A pointer to the payment bond on federal work (40 U.S.C. §§ 3131-3134): the notice, and the first and last day to sue.
/// Not modeled: thresholds, tiers beyond the second, and everything else.
/// </summary>
public static class FederalBond
{
    /// <summary>The findings.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, Amounts amounts, OpenDays calendar)
    {
        if (NotForPrimeContractor(facts) is { } none)
        {
            yield return none;
            yield break;
        }

        if (facts.LastFurnished is not { } last)
            yield break;
        var isDirect = facts.Hirer is { Capacity: PartyCapacity.DirectContractor };
        var notice = isDirect ? null : FederalNotice.Of(facts, last, calendar);
        var noticed = notice is null ? NoNotice(calendar) : LastDayOfNotice(facts, last, notice, calendar);
        yield return noticed;
        yield return Amount(facts, amounts.DemandOf(Remedy.FederalBond), noticed.Standing == Standing.Kept ? null : notice?.Early);
        var wait = facts.Numbers.On(Number.NoActionOnFederalBond, last.Latest);
        var first = wait.FirstDayAfter(last.Latest);
        List<Reading> from = [new Reading($"{wait.Text} after last furnishing have passed", first)];
        yield return new Finding
        {
            Id = "federal-bond.action-first-day",
            Title = "Action on the federal payment bond: first day",
            Standing = facts.AsOf >= first ? Standing.Open : Standing.NotYet,
            Readings = from,
            Band = Deadline.BandOver(from),
            Why = [Reason.Of("40 U.S.C. § 3133(b)(1)", $"One not paid in full within {wait} after last furnishing, {last}, may sue on the "
                + $"bond from {first}.", [facts.Furnished[^1]])],
        };
        var year = facts.Numbers.On(Number.SueOnFederalBond, last.Earliest);
        var until = Readings(facts, last, $"{year.Spelled} after last furnishing", year.Id, calendar);
        var stay = ActionOnBond.StayOf(facts, until);
        var standing = ActionOnBond.StandingOf(facts, until, endFirm: true, new DaySpan(first, first), stay);
        stay?.AddTo(until, standing);
        var action = Deadline.Of(standing, until, calendar, endKnown: stay is not { HasNoEnd: true })
            .Finding("federal-bond.action-last-day", "Action on the federal payment bond: last day",
            [
                Reason.Of("40 U.S.C. § 3133(b)(4)", $"Not later than {year.Spelled} after last furnishing, {last}; in the federal district "
                    + $"court where the work was done (40 U.S.C. § 3133(b)(3), from memory).", [facts.Furnished[^1]]),
                .. Actions(facts, first, standing == Standing.Kept),
                .. ActionOnBond.WhyStayed(facts, stay, standing),
            ], [.. ActionOnBond.Questions(facts), .. ActionOnBond.AskStay(stay, standing)]);
        yield return action;
        if (stay?.Instead(facts, "federal-bond.stay-last-day", action.Deadline) is { } instead)
            yield return instead;
    }

    // What is said of the actions that can be on the bond. An early one is no matter where a later one keeps it.
    private static IEnumerable<Reason> Actions(FactsAsOf facts, LocalDate first, bool kept)
    {
        foreach (var action in facts.All<ActionFiled>())
        {
            if (!ActionOnBond.MayBeOnBond(action) || DaySpan.Of(action.On) is not { } brought)
                continue;
            if (brought.Earliest < first && kept)
                continue;
            if (brought.Earliest < first)
                yield return Reason.Of("40 U.S.C. § 3133(b)(1)",
                    $"The action filed {brought} came before {facts.Numbers.On(Number.NoActionOnFederalBond, first)} after last furnishing "
                        + $"had surely passed: it may be thrown out as brought too early. One brought after them removes the "
                        + $"doubt.", [action]);
            else if (!ActionOnBond.SuesSurety(facts, action))
                yield return Reason.Of("40 U.S.C. § 3131(b)", $"The action filed {brought} is not against the surety, which answers on the "
                    + $"bond: join it in time.", [action]);
            else if (ActionOnBond.IsInTheWrongCourt(facts, action))
                yield return Reason.Of("40 U.S.C. § 3133(b)(3)", $"The action filed {brought} is in a small claims court; one on this bond "
                    + $"is brought in the federal district court where the work was done (from memory).", [action]);
            else
                yield return Reason.Of("40 U.S.C. § 3133(b)(4)", $"Action filed {brought}; it counts here if it is on the bond.", [action]);
        }
    }

    /// <summary>What is unpaid; where only a notice before the last delivery was given, what had been furnished by then.</summary>
    [Rule("40 U.S.C. § 3133(b)(1)")]
    private static Finding Amount(FactsAsOf facts, decimal demand, DaySpan? early)
    {
        var after = 0m;
        foreach (var furnished in facts.Furnished)
            after += furnished.On.Earliest > early?.Latest ? furnished.Amount ?? 0m : 0m;

        var held = Math.Max(0m, demand - after);
        return new Finding
        {
            Id = "federal-bond.amount",
            Title = "Federal payment bond: amount",
            Standing = demand <= 0 ? Standing.NotYet : held < demand ? Standing.InDoubt : Standing.Open,
            Amount = held,
            Why =
            [
                Reason.Of("40 U.S.C. § 3133(b)(1)", $"The sum unpaid for what was furnished: {demand}."),
                .. held < demand
                    ? (Reason[])[
                        Reason.Of("40 U.S.C. § 3133(b)(2)", $"Only a notice before the last delivery was given: {held} had been furnished "
                            + $"by then and may be held by it, {demand - held} came after. Another notice in time covers the whole.")] : [],
            ],
        };
    }

    /// <summary>The bond protects those who furnish labor or material to the prime contractor, not the prime contractor itself.</summary>
    [Rule("40 U.S.C. § 3133(b)(1)")]
    private static Finding? NotForPrimeContractor(FactsAsOf facts) =>
        facts.Job.Claimant.Role != ClaimantRole.DirectContractor ? null : new Finding
    {
        Id = "federal-bond.action-last-day",
        Title = "Action on the federal payment bond",
        Standing = Standing.Lost,
        Why = [Reason.Of("40 U.S.C. § 3133(b)(1)", $"The bond is the prime contractor's own and no remedy for it; its claim is against the "
            + $"United States under the contract (41 U.S.C. § 7103, from memory).")],
    };

    private static List<Reading> Readings(FactsAsOf facts, DaySpan last, Sentence name, Number number, OpenDays calendar) => last.IsExact
        ? [Deadline.Own(name, facts.Numbers.LastDay(number, last.Earliest), calendar)]
        :
        [
            Deadline.Own($"{name} on its earliest day", facts.Numbers.LastDay(number, last.Earliest), calendar),
            Deadline.Own($"{name} on its latest day", facts.Numbers.LastDay(number, last.Latest), calendar),
        ];

    [Rule("40 U.S.C. § 3133(b)(2)", Sure = Sure.FromMemory)]
    private static Finding NoNotice(OpenDays calendar) => Deadline.WithoutDay(Standing.Kept)
        .Finding("federal-bond.notice-last-day", "Notice to the prime contractor",
        [Reason.Of("40 U.S.C. § 3133(b)(2)", $"The claimant has a contract with the prime contractor, so no notice to it is needed.")]);

    [Rule("40 U.S.C. § 3133(b)(2)", Sure = Sure.FromMemory)]
    [Rule("40 U.S.C. § 3133(b)(1)")]
    [Rule("40 U.S.C. § 3133(b)(4)")]
    private static Finding LastDayOfNotice(FactsAsOf facts, DaySpan last, FederalNotice notice, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.FederalBondNotice, last.Earliest);
        var readings = Readings(facts, last, $"{days.Text} after last furnishing", days.Id, calendar);
        return Deadline.Of(notice.StandingOn(facts.AsOf, readings), readings, calendar)
            .Finding("federal-bond.notice-last-day", "Notice to the prime contractor",
            [
                Reason.Of("40 U.S.C. § 3133(b)(2)", $"Written notice must reach the prime contractor within {days} after last "
                    + $"furnishing, {last}, with the amount and the one supplied, by a means that gives third-party proof of "
                    + $"delivery.", [facts.Furnished[^1]]),
                .. notice.Why,
            ],
            [
                .. facts.Hirer is { Capacity: PartyCapacity.Subcontractor, WorksUnder: null } sub
                    ? (Question[])[
                        new Question($"Does {sub.Name} work under the prime contractor itself? Who deals with one further down is outside "
                            + $"the bond.{HeadField.PartiesWorksUnder:aside}")] : [],
                .. notice.Questions,
            ]);
    }
}
