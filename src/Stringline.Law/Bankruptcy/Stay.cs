using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Bankruptcy;

/// <summary>A stay in the bankruptcy of a party: nothing may be begun or carried on against it while the stay lasts.</summary>
/// <param name="Debtor">The party.</param>
/// <param name="Since">The first day of the stay.</param>
/// <param name="Until">Its last day; null while it lasts.</param>
public sealed record Stay(Party Debtor, LocalDate Since, LocalDate? Until)
{
    /// <summary>
    /// How long after notice that the stay has ended an action that was stayed may still be brought (11 U.S.C. § 108(c)).
    /// </summary>
    public required NumberRow AfterTheStay { get; init; }

    /// <summary>
    /// The first party in a capacity that was in bankruptcy on some day of a span; null where none was, as far as the file says.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="capacity">The capacity, such as owner.</param>
    /// <param name="from">First day of the span.</param>
    /// <param name="to">Last day of the span.</param>
    [Rule("11 U.S.C. § 362(a)", Sure = Sure.FromMemory)]
    public static Stay? Of(FactsAsOf facts, PartyCapacity capacity, LocalDate from, LocalDate to)
    {
        foreach (var party in facts.Job.Parties)
        {
            if (party.Capacity == capacity && OfParty(facts, party, from, to) is { } stay)
                return stay;
        }

        return null;
    }

    /// <summary>
    /// The stay in the bankruptcy of one party on some day of a span; null where there was none, as far as the file says.
    /// </summary>
    public static Stay? OfParty(FactsAsOf facts, Party? party, LocalDate from, LocalDate to) =>
        party is { BankruptSince: { } since } && since <= facts.AsOf && since <= to && !(party.BankruptUntil < from)
            ? new Stay(party, since, party.BankruptUntil)
            {
                AfterTheStay = facts.Numbers.On(Number.SueAfterStay, party.BankruptUntil ?? facts.AsOf),
            }
            : null;

    /// <summary>Whether the stay lasts on a day.</summary>
    public bool IsOn(LocalDate day) => Since <= day && !(Until < day);

    /// <summary>Whether the stay may last on a day known only within a span.</summary>
    public bool MayHold(DaySpan day) => IsOn(day.Earliest) || IsOn(day.Latest);

    /// <summary>Whether a time that ended may have stood still so long that it runs on a day; always, while the stay lasts.</summary>
    public bool MayStillRun(LocalDate from, LocalDate lastDay, LocalDate on) => !(LastDay(from, lastDay) < on);

    /// <summary>
    /// The last day of a time in which the debtor could not be sued, if the time stood still in the stay (Code Civ. Proc. § 356; Pioneer
    /// Construction v. Global Investment (2011) 202 Cal.App.4th 161), and never before the thirtieth day after the stay; null while it
    /// lasts.
    /// </summary>
    /// <param name="from">The day from which the time runs.</param>
    /// <param name="lastDay">Its last day without the stay.</param>
    [Rule("Code Civ. Proc. § 356", Sure = Sure.Opinion)]
    [Rule("11 U.S.C. § 108(c)", Sure = Sure.FromMemory)]
    public LocalDate? LastDay(LocalDate from, LocalDate lastDay)
    {
        if (Until is not { } until)
            return null;
        var stood = LocalDate.Max(Since, from.PlusDays(1));
        var still = until < stood ? 0 : NodaTime.Period.DaysBetween(stood, until) + 1;
        return LocalDate.Max(lastDay.PlusDays(still), AfterTheStay.LastDay(until));
    }

    /// <summary>
    /// What to do instead of suing, and by when: whether the time for the notice stands still too is denied (In re 450 S. Western Ave. (9th
    /// Cir. BAP 2021) 633 B.R. 894), so it is given within the time in which the action would have been brought.
    /// </summary>
    [Rule("11 U.S.C. § 546(b)", Sure = Sure.Opinion)]
    public Reason InsteadOfSuit(LocalDate by) => Until is { } until
        ? Reason.Of("11 U.S.C. § 546(b)", $"{Debtor.Name} was in bankruptcy from {Since} to {until}. A suit filed in the stay is void; the "
            + $"time may have stood still in it (Pioneer Construction v. Global Investment (2011) 202 Cal.App.4th 161), but that of a "
            + $"notice under 11 U.S.C. § 546(b) was held not to (In re 450 S. Western Ave. (9th Cir. BAP 2021) 633 B.R. 894).")
        : Reason.Of("11 U.S.C. § 546(b)", $"Do not sue: {Debtor.Name} is in bankruptcy since {Since}, and a suit against a debtor or its "
            + $"land is void and breaks the stay (11 U.S.C. § 362(a), from memory). Give notice under 11 U.S.C. § 546(b) by {by}: that its "
            + $"time stands still was held of the suit (Pioneer Construction v. Global Investment (2011) 202 Cal.App.4th 161) and denied "
            + $"of the notice (In re 450 S. Western Ave. (9th Cir. BAP 2021) 633 B.R. 894).");
}
