using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.DesignLien;

/// <summary>
/// The notice to the landowner of demand, default and amount, some days before the claim is recorded (Civ. Code § 8304(c)).
/// </summary>
internal static class DefaultNotice
{
    private const string Section = "Civ. Code § 8304(c)";

    /// <summary>
    /// Whether a demand for payment is that notice for a claim of an amount: given to the landowner, stating that a default has occurred
    /// and its amount. A bill is none; one for less covers no more than it states.
    /// </summary>
    [Rule("Civ. Code § 8304(c)")]
    public static Verdict Covers(FactsAsOf facts, PaymentDemanded asked, decimal amount)
    {
        if (asked.OfDefault == false || (asked.To.Count > 0 && !ReachesAnOwner(facts, asked)))
            return Verdict.No;
        return asked.OfDefault is null || asked.Amount < amount ? Verdict.Open : Verdict.Yes;
    }

    /// <summary>Whether a notice was given long enough before a claim was recorded.</summary>
    public static Verdict Before(FactsAsOf facts, ClaimRecorded claim, DaySpan recorded, Waterfall fee)
    {
        var best = Verdict.No;
        foreach (var asked in facts.All<PaymentDemanded>())
        {
            if (DaySpan.Of(asked.On) is not { } on || recorded.Latest < facts.Numbers.LastDay(Number.DefaultNotice, on.Earliest))
                continue;
            var covers = Covers(facts, asked, claim.Amount ?? fee.Demand);
            if (covers == Verdict.No)
                continue;
            if (covers == Verdict.Yes && recorded.Earliest >= facts.Numbers.LastDay(Number.DefaultNotice, on.Latest))
                return Verdict.Yes;
            best = Verdict.Open;
        }

        return best;
    }

    /// <summary>The finding <c>design-lien.first-day</c>; null where no demand is entered.</summary>
    public static Finding? FirstDay(FactsAsOf facts, Waterfall fee)
    {
        var (asked, verdict) = Best(facts, fee);
        return asked is not null && DaySpan.Of(asked.On) is { } on ? FirstDay(facts, asked, on, verdict, fee) : null;
    }

    /// <summary>The finding <c>design-lien.demand-last-day</c>, where the last day to record is known.</summary>
    public static Finding? Finding(Outcome? notice) =>
        notice?.Finding("design-lien.demand-last-day", "Notice of demand and default to the landowner");

    // The first that is surely one, else that may be, else the first demand at all.
    private static (PaymentDemanded? Asked, Verdict Verdict) Best(FactsAsOf facts, Waterfall fee)
    {
        PaymentDemanded? best = null;
        var verdict = Verdict.No;
        foreach (var asked in facts.All<PaymentDemanded>())
        {
            if (DaySpan.Of(asked.On) is null)
                continue;
            var covers = Covers(facts, asked, fee.Demand);
            if (best is not null && (covers == Verdict.No || verdict == Verdict.Yes || verdict == covers))
                continue;
            (best, verdict) = (asked, covers);
        }

        return (best, verdict);
    }

    [Rule("Civ. Code § 8304(c)")]
    private static Finding FirstDay(FactsAsOf facts, PaymentDemanded asked, DaySpan on, Verdict verdict, Waterfall fee)
    {
        var days = facts.Numbers.On(Number.DefaultNotice, on.Latest);
        var first = on.LastDay(facts.Numbers, Number.DefaultNotice);
        Reading[] readings = verdict == Verdict.No ? [] : [new Reading($"{days.Spelled} after the notice of default", first.Latest)];
        return new Finding
        {
            Id = "design-lien.first-day",
            Title = "Design professional's lien: first day to record",
            Standing = verdict == Verdict.No || facts.AsOf < first.Latest
                ? Standing.NotYet : verdict == Verdict.Yes ? Standing.Open : Standing.InDoubt,
            Readings = readings,
            Band = readings.Length == 0 ? null : Deadline.BandOver(readings),
            Explain = () =>
            [
                verdict switch
                {
                    Verdict.Yes =>
                        Reason.Of(Section, $"Notice of the demand, the default and the amount was given {on}, and must precede recording "
                            + $"by at least {days}.", [asked]),
                    Verdict.Open =>
                        Reason.Of(Section, $"{asked.Amount} was demanded {on}. A claim for {fee.Demand} needs a notice to the landowner "
                            + $"that demands payment, says that a default has occurred and states its amount, at "
                            + $"least {days} before recording: a bill is none, and one for less covers no more.", [asked]),
                    Verdict.No =>
                        Reason.NotApplied(Section, $"The demand of {on} is no notice of default to the landowner and does not count: give "
                            + $"one, at least {days} before recording.", asked),
                    _ => throw new InvalidOperationException($"No such verdict: {verdict}."),
                },
            ],
            Ask = () => verdict == Verdict.Open && asked.OfDefault is null ? [AskDefault(asked)] : [],
        };
    }

    /// <summary>
    /// The last day for the notice: ten days before the last day on which the recorder is open to take the claim; later only as far as a
    /// roll of that last day would carry it. Null where that is not known.
    /// </summary>
    [Rule("Civ. Code § 8304(c)")]
    public static Outcome? LastDay(FactsAsOf facts, Waterfall fee, OpenDays calendar)
    {
        if (DesignLienToRecord.Readings(facts, calendar) is not { Count: > 0 } record)
            return null;
        var readings = new List<Reading>(record.Count);
        foreach (var reading in record)
        {
            var recording = calendar.LastOpenDayOnOrBefore(reading.Day);
            var ahead = facts.Numbers.On(Number.DefaultNotice, recording);
            readings.Add(new Reading($"{ahead.Spelled} before recording, {reading.Words}", ahead.LookBack(recording),
                reading.Rolled is { } rolled ? ahead.LookBack(rolled) : null));
        }

        var (given, verdict) = Best(facts, fee);
        var standing = Deadline.StandingOf(facts.AsOf, readings, verdict == Verdict.Yes ? DaySpan.Of(given!.On) : null);
        var mayBeKept = verdict == Verdict.Open && DaySpan.Of(given!.On) is { } on && !Deadline.IsPast(on.Earliest, readings);
        return new Outcome(Deadline.Of(mayBeKept ? Standing.InDoubt : standing, readings, calendar), new Words(
            () =>
            [
                Reason.Of(Section, $"Not less than {facts.Numbers.On(Number.DefaultNotice, record[0].Day)} before the claim is recorded "
                    + $"the landowner is given notice that demands payment, says that a default has occurred under the contract and states "
                    + $"its amount, now {fee.Demand}. The last day to record is {record[0].Day}."),
                given is not null
                    ? Reason.Of(Section, $"{given.Amount} was demanded {DaySpan.Of(given.On)}.", [given])
                    : Reason.Of(Section, $"The file shows no demand."),
            ],
            () => verdict == Verdict.Open && given is { OfDefault: null } ? [AskDefault(given)] : []));
    }

    private static Question AskDefault(PaymentDemanded asked) =>
        new($"Does the demand say that a default has occurred under the contract, and its amount? A bill does "
            + $"not.{MoneyKinds.PaymentDemanded.At("ofDefault"):aside}") { Corrects = asked };

    private static bool ReachesAnOwner(FactsAsOf facts, PaymentDemanded asked)
    {
        foreach (var id in asked.To)
        {
            if (facts.Job.Party(id) is { Capacity: PartyCapacity.Owner or PartyCapacity.OwnersAgent })
                return true;
        }

        return false;
    }
}
