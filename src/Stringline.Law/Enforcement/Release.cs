using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>When the claim must or should be released, and the owner's road to a release order (Civ. Code §§ 8480-8490).</summary>
public static class Release
{
    /// <summary>
    /// The findings <c>release.answer-by</c>, <c>release.petition-first-day</c>, <c>release.hearing</c>, <c>release.when-paid</c> and
    /// <c>release.partial</c>, where they apply.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="suits">The claims in force with their actions.</param>
    /// <param name="timeToSue">The time to sue.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="calendar">The calendar.</param>
    public static IEnumerable<Finding> Findings(FactsAsOf facts, ClaimSuits suits, Deadline timeToSue, Waterfall demand, OpenDays calendar)
    {
        // Most jobs have no claim on record yet.
        return suits.Leading is null && suits.Counts is null && facts.All<ReleasePetitionServed>().Count == 0
            ? [] : OfClaim(facts, suits, timeToSue, demand, calendar);
    }

    private static IEnumerable<Finding> OfClaim(FactsAsOf facts, ClaimSuits suits, Deadline timeToSue, Waterfall demand, OpenDays calendar)
    {
        foreach (var finding in OnDemand(facts, suits, timeToSue, calendar))
            yield return finding;
        if (ReleaseHearing.Finding(facts, calendar) is { } hearing)
            yield return hearing;
        if (suits.Counts is not { } claim || suits.Released == Verdict.Yes)
            yield break;
        if (demand.IsPaid)
            yield return WhenPaid(facts, suits, claim, timeToSue, calendar);
        else if (claim.Amount is { } claimed && Overstated.DueWhenRecorded(facts, claim, demand) is var due && demand.Demand > 0
            && demand.Demand < Math.Min(claimed, due))
            yield return Partial(claim, Math.Min(claimed, due), demand.Demand);
    }

    /// <summary>The owner's demand and its petition alone, for a claim of any lien.</summary>
    internal static IEnumerable<Finding> OnDemand(FactsAsOf facts, ClaimSuits suits, Deadline timeToSue, OpenDays calendar)
    {
        // On land that a bond has freed there is nothing for the owner to petition for.
        if (suits.Released == Verdict.Yes || suits.Leading is not { } leading || ReleaseBond.Freeing(facts, leading) is not null)
            yield break;
        var asked = Asked(facts, leading);
        if (asked is not null)
            yield return ReleasePetition.AnswerBy(facts, asked, timeToSue, calendar);
        if (timeToSue.Standing is Standing.Lost or Standing.InDoubt or Standing.Open && timeToSue.Band is { } band)
            yield return ReleasePetition.FirstDay(facts, asked, timeToSue.Standing, band.Earliest.Day);
    }

    // The first demand that concerns this claim: not one of before it, nor one that names another instrument.
    private static ReleaseDemanded? Asked(FactsAsOf facts, ClaimSuit suit)
    {
        foreach (var asked in facts.All<ReleaseDemanded>())
        {
            if (DaySpan.Of(asked.On) is { } on && on.Latest >= suit.Recorded.Earliest
                && (asked.Instrument is null || suit.Claim.Instrument is null || asked.Instrument == suit.Claim.Instrument))
            {
                return asked;
            }
        }

        return null;
    }

    /// <summary>
    /// A claim that is paid is released: the recorded claim no longer states a demand that is due. The Code sets no day; ours is the last
    /// on which the owner, who must first give ten days' notice, cannot have petitioned yet: counted from its notice, else from the
    /// payment.
    /// </summary>
    [Rule("Civ. Code § 8416(a)(1)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8482", Sure = Sure.OurReading)]
    private static Finding WhenPaid(FactsAsOf facts, ClaimSuits suits, ClaimRecorded claim, Deadline timeToSue, OpenDays calendar)
    {
        var paid = PaidOn(facts) ?? facts.AsOf;
        var asked = suits.Leading is { } leading ? Asked(facts, leading) : null;
        var from = asked?.On.Earliest ?? paid;
        var days = facts.Numbers.On(Number.PetitionAfterDemand, from);
        var beforePetition = LocalDate.Max(paid, days.LastDay(from).PlusDays(-1));
        var reading = Deadline.Own(
            asked is null
                ? (Sentence)$"our target: as if the owner gave its {days.Spelled}’ notice on the day it paid"
                : $"the day before the owner may petition, {days.Spelled} after its notice",
            beforePetition, calendar);
        return Deadline.Of(Deadline.StandingOf(facts.AsOf, [reading], null, endFirm: false), [reading], calendar)
            .Finding("release.when-paid", "Release the claim",
            () =>
            [
                Reason.Of("Civ. Code § 8416(a)(1)", $"Nothing is left of the demand: record a release. It names the owners and the "
                    + $"instrument number (Gov. Code §§ 27288.1, 27361.6) and is acknowledged before a notary.", [claim]),
                asked is null
                    ? Reason.Of("Civ. Code § 8482", $"The owner must give {days.Spelled}’ notice before it petitions for a release order, "
                        + $"and the prevailing party gets its attorney’s fees (Civ. Code § 8488(c)). No notice is in the file; the target "
                        + $"is reckoned as if it came on the day of payment, {paid}.")
                    : Reason.Of("Civ. Code § 8482", $"Release demanded {DaySpan.Of(asked.On)}: {days.Spelled} after its notice the owner "
                        + $"may petition for a release order where the time to sue is over, and the prevailing party gets its attorney’s "
                        + $"fees (Civ. Code § 8488(c)).", [asked]),
                timeToSue.Band is { } runs && timeToSue.Standing is not (Standing.Kept or Standing.Done)
                    ? Reason.Of("Civ. Code § 8480(a)", $"No petition lies before {runs.Earliest.Day.PlusDays(1)}, the day after the time "
                        + $"to sue. That is no reason to wait: nothing is due any more.")
                    : Reason.Of("Civ. Code § 8480(a)", $"A petition lies only where no action was brought in time; a paid claim is "
                        + $"released all the same, and an action on it is dismissed."),
            ]);
    }

    // The day on which the last of it was paid, credited or waived.
    private static LocalDate? PaidOn(FactsAsOf facts)
    {
        LocalDate? last = null;
        foreach (var entry in facts.Known)
        {
            var day = entry switch
            {
                Paid or Credited => entry.On.Earliest,
                Waived waived => waived.PaymentCleared ?? entry.On.Earliest,
                _ => null,
            };
            if (day is { } on && !(on < last))
                last = on;
        }

        return last;
    }

    [Rule("Civ. Code § 8416(a)(1)", Sure = Sure.OurReading)]
    private static Finding Partial(ClaimRecorded claim, decimal claimed, decimal left) => new()
    {
        Id = "release.partial",
        Title = "Reduce the claim",
        Standing = Standing.Open,
        Amount = claimed - left,
        Why = [Reason.Of("Civ. Code § 8416(a)(1)", $"{claimed} was due when the claim was recorded and {left} is left of it: a partial "
            + $"release of {claimed - left} keeps the record true.", [claim])],
    };
}
