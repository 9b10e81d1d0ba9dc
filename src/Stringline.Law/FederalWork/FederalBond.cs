using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.FederalWork;

/// <summary>
/// A pointer to the payment bond on federal work (40 U.S.C. §§ 3131-3134): the notice, and the first and last day to sue.
/// Not modelled: thresholds, tiers beyond the second, and everything else.
/// </summary>
public static class FederalBond
{
    /// <summary>Days after last furnishing: the notice must be given by then, and suit may be brought after it.</summary>
    public const int NoticeDays = 90;

    /// <summary>The findings.</summary>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, OpenDays calendar)
    {
        if (NotForPrimeContractor(facts) is { } none)
        {
            yield return none;
            yield break;
        }

        if (facts.LastFurnished is not { } last)
            yield break;
        yield return LastDayOfNotice(facts, last, calendar);
        var first = Period.FirstDayAfter(last.Latest, NoticeDays);
        List<Reading> from = [new Reading("90 days after last furnishing have passed", first)];
        yield return new Finding
        {
            Id = "federal-bond.action-first-day",
            Title = "Action on the federal payment bond: first day",
            Standing = facts.AsOf >= first ? Standing.Open : Standing.NotYet,
            Readings = from,
            Band = Deadline.Band(from),
            Why = [Reason.Of("40 U.S.C. § 3133(b)(1)", $"One not paid in full within 90 days after last furnishing, {last}, may sue on the bond from {first}.", [facts.Furnished[^1]])],
        };
        var until = Readings(last, "one year after last furnishing", day => Period.AddYears(day, 1), calendar);
        var filed = facts.FirstDayOf<ActionFiled>();
        yield return Deadline.Finding("federal-bond.action-last-day", "Action on the federal payment bond: last day",
            Deadline.StandingOf(facts.AsOf, until, filed), until, calendar,
            [Reason.Of("40 U.S.C. § 3133(b)(4)", $"Not later than one year after last furnishing, {last}; in the federal district court where the work was done (text from memory).", [facts.Furnished[^1]])]);
    }

    /// <summary>The bond protects those who furnish labor or material to the prime contractor, not the prime contractor itself.</summary>
    [Rule("40 U.S.C. § 3133(b)(1)", Since = "2002-08-21", Sure = Sure.FromMemory)]
    private static Finding? NotForPrimeContractor(FactsAsOf facts) => facts.Job.Claimant.Role != ClaimantRole.DirectContractor ? null : new Finding
    {
        Id = "federal-bond.action-last-day",
        Title = "Action on the federal payment bond",
        Standing = Standing.Lost,
        Why = [Reason.Of("40 U.S.C. § 3133(b)(1)", $"The bond is the prime contractor's own and no remedy for it; its claim is against the United States under the contract (41 U.S.C. § 7103, from memory).")],
    };

    private static List<Reading> Readings(Days last, string name, Func<LocalDate, LocalDate> count, OpenDays calendar) => last.IsExact
        ? [Deadline.Own(name, count(last.Earliest), calendar)]
        : [Deadline.Own($"{name} on its earliest day", count(last.Earliest), calendar), Deadline.Own($"{name} on its latest day", count(last.Latest), calendar)];

    [Rule("40 U.S.C. § 3133(b)(2)", Since = "2002-08-21", Sure = Sure.FromMemory)]
    [Rule("40 U.S.C. § 3133(b)(1)", Since = "2002-08-21", Sure = Sure.FromMemory)]
    [Rule("40 U.S.C. § 3133(b)(4)", Since = "2002-08-21", Sure = Sure.FromMemory)]
    private static Finding LastDayOfNotice(FactsAsOf facts, Days last, OpenDays calendar)
    {
        if (facts.Hirer is { Capacity: PartyCapacity.DirectContractor })
        {
            return Deadline.Finding("federal-bond.notice-last-day", "Notice to the prime contractor", Standing.Kept, [], calendar,
                [Reason.Of("40 U.S.C. § 3133(b)(2)", $"The claimant has a contract with the prime contractor, so no notice to it is needed.")]);
        }

        var readings = Readings(last, "90 days after last furnishing", day => Period.LastDay(day, NoticeDays), calendar);
        var why = new List<Reason>
        {
            Reason.Of("40 U.S.C. § 3133(b)(2)", $"Written notice must reach the prime contractor within 90 days after last furnishing, {last}, with the amount and the one supplied, by a means that gives third-party proof of delivery.", [facts.Furnished[^1]]),
        };
        var given = facts.FirstDayOf<BondNoticeGiven>();
        foreach (var notice in facts.All<BondNoticeGiven>())
            why.Add(Reason.Of("40 U.S.C. § 3133(b)(2)", $"Notice given {Days.Of(notice.On)}.", [notice]));

        return Deadline.Finding("federal-bond.notice-last-day", "Notice to the prime contractor", Deadline.StandingOf(facts.AsOf, readings, given), readings, calendar, why);
    }
}
