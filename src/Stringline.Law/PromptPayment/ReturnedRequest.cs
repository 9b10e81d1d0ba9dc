using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// A payment request on public work that the entity returned as not proper: its days run from the receipt of the corrected one, and are fewer by as
/// many as the return was later than the seventh day.
/// </summary>
/// <param name="Returned">The day of the return; null where it was not returned.</param>
/// <param name="Resubmitted">The day on which the corrected request was received; null while none was.</param>
/// <param name="LateBy">By how many days the return was later than the seventh; none where the day of receipt is not told.</param>
internal readonly record struct ReturnedRequest(LocalDate? Returned, LocalDate? Resubmitted, int LateBy)
{
    /// <summary>Days after receipt by which a request that is not proper goes back.</summary>
    public const int ReturnDays = 7;

    /// <summary>Whether it was returned and no corrected one was received: no days run from a request that was not proper.</summary>
    public bool IsPending => Returned is not null && Resubmitted is null;

    /// <summary>What became of a request by the day of asking.</summary>
    public static ReturnedRequest Of(FactsAsOf facts, PaymentDemanded request)
    {
        if (request.Returned is not { } returned || returned > facts.AsOf)
            return default;
        // Where the receipt is not told the days are counted from the sending; the return may then have been in time.
        var late = request.Received is { } received ? NodaTime.Period.DaysBetween(received, returned) - ReturnDays : 0;
        return new ReturnedRequest(returned, request.Resubmitted <= facts.AsOf ? request.Resubmitted : null, Math.Max(0, late));
    }

    /// <summary>The last day for the entity to pay without interest.</summary>
    /// <param name="received">The day on which the request was first received, or sent where that is not told.</param>
    /// <param name="days">Days that the entity has.</param>
    [Rule("Pub. Contract Code § 20104.50(d)", Since = "1993-01-01")]
    [Rule("Pub. Contract Code § 10261.5(b)", Since = "1991-01-01")]
    [Rule("Pub. Contract Code § 10853(c)", Since = "1993-01-01")]
    public LocalDate LastDay(LocalDate received, int days) => (Resubmitted ?? received).PlusDays(Math.Max(0, days - LateBy));

    /// <summary>What the return means; empty where the request was not returned.</summary>
    /// <param name="due">The section by which the body that contracted for the work pays.</param>
    /// <param name="request">The request.</param>
    /// <param name="interest">What a request that was proper all the same would bear.</param>
    public IEnumerable<Reason> Why(string due, PaymentDemanded request, decimal interest)
    {
        if (Returned is not { } returned)
            yield break;
        var section = due switch
        {
            "Pub. Contract Code § 10853(a)" => "Pub. Contract Code § 10853(c)",
            "Pub. Contract Code § 10261.5(a)" => "Pub. Contract Code § 10261.5(b)",
            _ => "Pub. Contract Code § 20104.50(d)",
        };
        yield return IsPending
            ? Reason.Of(section, $"Returned {returned} as not proper. It goes back within {ReturnDays} days of receipt with the reasons in writing, and no days run from a request that is not proper: correct it and hand it in again. If it was proper after all, it bears {interest}.", [request])
            : Reason.Of(section, $"Returned {returned} as not proper; the corrected request was received {Resubmitted!.Value}, and the days run from then.", [request]);
        if (LateBy > 0)
            yield return Reason.Of(section, $"The return was {LateBy} days later than the seventh day after receipt: the days for payment are fewer by so many.", [request]);
    }
}
