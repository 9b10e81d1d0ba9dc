using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Enforcement;

/// <summary>Extending the time to sue by credit (Civ. Code § 8460(b)).</summary>
public static class Credit
{
    /// <summary>
    /// The last day to record it: claimant and owner agree on credit, and notice of the fact and its terms is recorded within 90 days
    /// after the claim; or later, but then only before a purchaser or encumbrancer in good faith and for value. Credit may be given more
    /// than once (Richards v. Hillside Development (1960) 177 Cal.App.2d 776). None where the claim is sued on, or bonded.
    /// </summary>
    [Rule("Civ. Code § 8460(b)(1)")]
    [Rule("Civ. Code § 8460(b)(2)")]
    public static Outcome? ToRecord(FactsAsOf facts, ClaimSuits suits, OpenDays calendar)
    {
        if (suits.Leading is not { } leading || ReleaseBond.Freeing(facts, leading) is not null)
            return null;
        var days = facts.Numbers.On(Number.RecordCredit, leading.Recorded.Earliest);
        var readings = new List<Reading>(1)
        {
            Deadline.Own($"{days.Text} after the claim was recorded", days.LastDay(leading.Recorded.Earliest), calendar),
        };
        foreach (var earlier in suits.Chain)
        {
            if (ReferenceEquals(earlier, leading))
                break;
            readings.Add(OfEarlier(facts, earlier, calendar));
        }

        if (readings.Count > 1)
            readings = Deadline.Sorted(readings);
        var recorded = Recorded(facts, suits, leading, readings);
        return recorded is null && leading.Standing == Standing.Kept ? null : ToRecord(facts, suits, leading, readings, recorded, calendar);
    }

    private static Reading OfEarlier(FactsAsOf facts, ClaimSuit earlier, OpenDays calendar)
    {
        var days = facts.Numbers.On(Number.RecordCredit, earlier.Recorded.Earliest);
        return Deadline.Own(
            $"{days} after the claim of {earlier.Recorded} was recorded, if the later one is the same "
                + $"claim", days.LastDay(earlier.Recorded.Earliest), calendar);
    }

    private static Outcome ToRecord(
        FactsAsOf facts, ClaimSuits suits, ClaimSuit leading, List<Reading> readings, Standing? recorded, OpenDays calendar)
    {
        var lastDay = readings[0].Day;
        // Past that day a credit may still be good, but only the owner's consent makes it: until then the claim has expired.
        var standing = suits.Released switch
        {
            Verdict.Yes => Standing.Done,
            Verdict.Open => Standing.InDoubt,
            _ => recorded ?? (facts.AsOf <= lastDay ? Standing.Open
                : suits.StandingOn(facts.AsOf) == Standing.Lost ? Standing.Lost : Standing.InDoubt),
        };
        return new Outcome(
            Deadline.Of(standing, readings, calendar, endKnown: false), new Words(() => WhyToRecord(facts, leading, lastDay)));
    }

    /// <summary>The finding <c>credit.last-day</c>, where a claim is recorded.</summary>
    internal static Finding? Finding(Outcome? toRecord) => toRecord?.Finding("credit.last-day", "Notice of credit: last day to record");

    private static List<Reason> WhyToRecord(FactsAsOf facts, ClaimSuit leading, LocalDate lastDay)
    {
        var why = new List<Reason>
        {
            Reason.Of("Civ. Code § 8460(b)(1)", $"If the owner agrees to give or take credit, record notice of the fact and terms of it "
                + $"by {lastDay}; have the owner sign it.", [leading.Claim]),
            facts.AsOf <= lastDay
                ? Reason.Of("Civ. Code § 8460(b)(2)", $"Later it still counts, but only if nobody has bought or taken a security in good "
                    + $"faith and for value in between.")
                : Reason.Of("Civ. Code § 8460(b)(2)", $"After {lastDay} the claim is lost unless the owner agrees to credit and notice of "
                    + $"it is recorded before anyone buys or takes a security in good faith and for value."),
        };
        var days = facts.Numbers.On(Number.RecordCredit, leading.Recorded.Earliest);
        foreach (var credit in facts.All<CreditRecorded>())
        {
            if (DaySpan.Of(credit.On) is not { } on || IsOfEarlierClaim(credit, leading))
                continue;
            why.Add(on.Latest <= lastDay
                ? Reason.Of("Civ. Code § 8460(b)(1)", $"Notice of credit recorded {on}, within the {days}; the credit ends {credit.Until}.",
                    [credit])
                : Reason.Of("Civ. Code § 8460(b)(2)", $"Notice of credit recorded {on}, after the {days}: it holds only while nobody "
                    + $"bought or took a security in good faith before it; the credit ends {credit.Until}.", [credit]));
        }

        return why;
    }

    // Kept by a notice that was surely recorded after the claim and in time; in doubt by any other, and beside another claim if this one
    // may not count; null where none may be this claim's.
    private static Standing? Recorded(FactsAsOf facts, ClaimSuits suits, ClaimSuit leading, List<Reading> readings)
    {
        Standing? best = null;
        foreach (var credit in facts.All<CreditRecorded>())
        {
            if (IsOfEarlierClaim(credit, leading) || DaySpan.Of(credit.On) is not { } on)
                continue;
            if (on.Earliest >= leading.Recorded.Latest && !suits.IsUnsure(leading)
                && Deadline.StandingOf(facts.AsOf, readings, on, endFirm: false) == Standing.Kept)
                return Standing.Kept;
            best = Standing.InDoubt;
        }

        return best;
    }

    /// <summary>Whether a notice of credit was recorded before a claim: what counts is one recorded after it.</summary>
    [Rule("Civ. Code § 8460(b)(1)")]
    internal static bool IsOfEarlierClaim(CreditRecorded credit, ClaimSuit suit) => credit.On.Latest < suit.Recorded.Earliest;

    /// <summary>
    /// A credit recorded before the claim does not extend its time by the words of the section; while it would, a court may still be asked
    /// to hold that the owner's agreement, being of record, does.
    /// </summary>
    [Rule("Civ. Code § 8460(b)", Sure = Sure.OurReading)]
    internal static Standing UnlessOfEarlierClaim(FactsAsOf facts, ClaimSuit suit, Standing standing, OpenDays calendar)
    {
        if (standing != Standing.Lost || suit.End is not null)
            return standing;
        var by = suit.Action is { } action && DaySpan.Of(action.On) is { } filed ? filed.Earliest : facts.AsOf;
        foreach (var credit in facts.All<CreditRecorded>())
        {
            if (IsOfEarlierClaim(credit, suit)
                && by <= calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.SueAfterCredit, credit.Until)))
                return Standing.InDoubt;
        }

        return standing;
    }

    /// <summary>The time to sue after it, once a notice of credit that concerns the claim is recorded; null before.</summary>
    public static Outcome? ToSue(FactsAsOf facts, ClaimSuits suits, CompletionReadings completion, OpenDays calendar)
    {
        if (suits.Leading is not { } leading)
            return null;
        List<CreditRecorded>? credits = null;
        foreach (var credit in facts.All<CreditRecorded>())
        {
            if (!IsOfEarlierClaim(credit, leading))
                (credits ??= []).Add(credit);
        }

        return credits is null ? null : CreditToSue.Of(facts, suits, leading, credits, completion, calendar);
    }
}
