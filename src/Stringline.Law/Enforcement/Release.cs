using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Enforcement;

/// <summary>When the claim must or should be released, and the owner's road to a release order (Civ. Code §§ 8480-8490).</summary>
public static class Release
{
    /// <summary>Days between the owner's demand and its petition.</summary>
    public const int DemandDays = 10;

    /// <summary>The findings <c>release.answer-by</c>, <c>release.petition-first-day</c> and <c>release.when-paid</c>, where they apply.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="counts">The recorded claim that counts.</param>
    /// <param name="timeToSue">The time to sue: <c>credit.enforcement-last-day</c> where credit is recorded, else <c>enforcement.last-day</c>.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="calendar">The calendar.</param>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ClaimRecorded? counts, Finding timeToSue, Waterfall demand, OpenDays calendar)
    {
        if (counts is not { } claim || RecordedClaim.IsReleased(facts, counts) == Verdict.Yes)
            yield break;
        foreach (var asked in facts.All<ReleaseDemanded>())
        {
            if (Days.Of(asked.On) is { } on)
            {
                yield return AnswerBy(facts, asked, on, calendar);
                break;
            }
        }

        if (timeToSue.Standing is Standing.Lost or Standing.InDoubt or Standing.Open && timeToSue.Band is { } band)
            yield return Petition(facts, band.Earliest.Day);
        if (demand.Demand == 0)
            yield return WhenPaid(claim);
        else if (claim.Amount is { } claimed && demand.Demand < claimed)
            yield return Partial(claim, claimed, demand.Demand);
    }

    /// <summary>The owner may petition ten days after demanding a release; a claim that has expired is better released at once, since fees follow the event.</summary>
    [Rule("Civ. Code § 8482")]
    [Rule("Civ. Code § 8488(c)")]
    private static Finding AnswerBy(FactsAsOf facts, ReleaseDemanded asked, Days on, OpenDays calendar)
    {
        List<Reading> readings = [Deadline.Own("ten days after the demand", Period.LastDay(on.Earliest, DemandDays), calendar)];
        return Deadline.Finding("release.answer-by", "Answer the owner's demand for release", Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false), readings, calendar,
            [Reason.Of("Civ. Code § 8482", $"Release demanded {on}; from the tenth day after it the owner may petition for a release order, and the prevailing party gets its attorney's fees (Civ. Code § 8488(c)).", [asked])]);
    }

    [Rule("Civ. Code § 8480")]
    [Rule("Civ. Code § 8486(a)")]
    private static Finding Petition(FactsAsOf facts, LocalDate lastDayToSue)
    {
        var first = lastDayToSue.PlusDays(1);
        return new Finding
        {
            Id = "release.petition-first-day",
            Title = "The owner's petition for release: first day",
            Standing = facts.AsOf < first ? Standing.NotYet : Standing.Open,
            Readings = [new Reading("the day after the time to sue", first)],
            Band = Deadline.Band([new Reading("the day after the time to sue", first)]),
            Why = [Reason.Of("Civ. Code § 8480", $"Without an action within its time the owner may petition from {first}, ten days after a demand; the hearing is held within 30 days of filing (Civ. Code § 8486(a)).")],
        };
    }

    /// <summary>A claim that is paid is released: the recorded claim no longer states a demand that is due. Our rule.</summary>
    [Rule("Civ. Code § 8416(a)(1)", Sure = Sure.OurReading)]
    private static Finding WhenPaid(ClaimRecorded claim) => new()
    {
        Id = "release.when-paid",
        Title = "Release the claim",
        Standing = Standing.Open,
        Why = [Reason.Of("Civ. Code § 8416(a)(1)", $"Nothing is left of the demand: record a release. It names the owners and the instrument number (Gov. Code §§ 27288.1, 27361.6) and is acknowledged before a notary.", [claim])],
    };

    [Rule("Civ. Code § 8416(a)(1)", Sure = Sure.OurReading)]
    private static Finding Partial(ClaimRecorded claim, decimal claimed, decimal left) => new()
    {
        Id = "release.partial",
        Title = "Reduce the claim",
        Standing = Standing.Open,
        Amount = claimed - left,
        Why = [Reason.Of("Civ. Code § 8416(a)(1)", $"{claimed} was claimed and {left} is left of the demand: a partial release of {claimed - left} keeps the record true.", [claim])],
    };
}
