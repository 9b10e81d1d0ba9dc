using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// A payment request on public work that the entity returned as not proper: its days run from the receipt of the corrected one, and are
/// fewer by as many as the return was late.
/// </summary>
/// <param name="Returned">The day of the return; null where it was not returned.</param>
/// <param name="Resubmitted">The day on which the corrected request was received; null while none was.</param>
/// <param name="LateBy">By how many days the return was late; none where the day of receipt is not told.</param>
/// <param name="InTime">How soon after receipt a request that is not proper goes back.</param>
internal readonly record struct ReturnedRequest(LocalDate? Returned, LocalDate? Resubmitted, int LateBy, NumberRow? InTime)
{
    /// <summary>Whether it was returned and no corrected one was received: no days run from a request that was not proper.</summary>
    public bool IsPending => Returned is not null && Resubmitted is null;

    /// <summary>What became of a request by the day of asking.</summary>
    public static ReturnedRequest Of(FactsAsOf facts, PaymentDemanded request)
    {
        if (request.Returned is not { } returned || returned > facts.AsOf)
            return default;
        // Where the receipt is not told the days are counted from the sending; the return may then have been in time.
        var days = facts.Numbers.On(EntitysPayment.Of(facts).ToReturn, request.Received ?? returned);
        var late = request.Received is { } received ? NodaTime.Period.DaysBetween(received, returned) - days.Count : 0;
        return new ReturnedRequest(returned, request.Resubmitted <= facts.AsOf ? request.Resubmitted : null, Math.Max(0, late), days);
    }

    /// <summary>The last day for the entity to pay without interest.</summary>
    /// <param name="received">The day on which the request was first received, or sent where that is not told.</param>
    /// <param name="days">How long the entity has.</param>
    [Rule("Pub. Contract Code § 20104.50(d)")]
    [Rule("Pub. Contract Code § 10261.5(b)")]
    [Rule("Pub. Contract Code § 10853(c)")]
    public LocalDate LastDay(LocalDate received, NumberRow days) =>
        (Resubmitted ?? received).PlusDays(Math.Max(0, days.Count - LateBy));

    /// <summary>What the return means; empty where the request was not returned.</summary>
    /// <param name="request">The request.</param>
    /// <param name="interest">What a request that was proper all the same would bear.</param>
    public IEnumerable<Reason> Why(PaymentDemanded request, decimal interest)
    {
        if (Returned is not { } returned)
            yield break;
        var section = InTime!.Section;
        yield return IsPending
            ? Reason.Of(section, $"Returned {returned} as not proper. It goes back within {InTime} of receipt with the reasons in writing, "
                + $"and no days run from a request that is not proper: correct it and hand it in again. If it was proper after all, it "
                + $"bears {interest}.", [request])
            : Reason.Of(section, $"Returned {returned} as not proper; the corrected request was received {Resubmitted!.Value}, and the "
                + $"days run from then.", [request]);
        if (LateBy > 0)
            yield return Reason.Of(section, $"The return was {LateBy} days later than the {InTime.Ordinal} day after receipt: the days for "
                + $"payment are fewer by so many.", [request]);
    }
}
