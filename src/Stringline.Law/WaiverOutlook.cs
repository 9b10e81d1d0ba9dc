using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;

namespace Stringline.Law;

/// <summary>What a waiver and release would do to the demand, before anybody signs it.</summary>
/// <param name="Now">Dollars and cents that may be claimed now.</param>
/// <param name="Then">Dollars and cents that are left once it binds.</param>
/// <param name="Payment">Dollars and cents of the payment; null where none is told.</param>
public sealed record WaiverOutlook(decimal Now, decimal Then, decimal? Payment)
{
    /// <summary>Dollars and cents that it releases.</summary>
    public decimal Released => Now - Then;

    /// <summary>
    /// The last day of priced work that <see cref="Now"/> counts whole, though it goes on after the day of asking; null where it has
    /// none.
    /// </summary>
    public LocalDate? CountsThrough { get; init; }

    /// <summary>Dollars and cents of <see cref="Now"/> that are for work that had ended by the day of asking.</summary>
    public decimal Ended { get; init; } = Now;

    /// <summary>Dollars and cents that it may release besides, where its words or its exceptions are in doubt.</summary>
    public decimal InDoubt { get; init; }

    /// <summary>Why that is in doubt, each reason in the words of a clause; empty where nothing is in doubt.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];

    /// <summary>Whether the journal holds a payment of that sum, received or cleared, that answers no earlier paper.</summary>
    public bool InJournal { get; init; }

    /// <summary>Whether <see cref="Now"/> is already lower by the payment, since the journal holds it as received.</summary>
    public bool TakenOff { get; init; }

    /// <summary>
    /// Dollars and cents released less those paid for it; a payment that is taken off already pays for nothing of what is left. Null where
    /// no payment is told.
    /// </summary>
    public decimal? Difference => Payment is { } payment ? Released - (TakenOff ? 0m : payment) : null;

    /// <summary>Dollars and cents that it releases beyond the payment; null where it releases no more than is paid.</summary>
    public decimal? BeyondPayment => Difference > 0 ? Difference : null;

    /// <summary>Whether it may release more than is paid for it: on the reading that releases most.</summary>
    public bool MayGoBeyond => Released + InDoubt > (TakenOff ? 0m : Payment ?? 0m);

    /// <summary>The outlook of a paper that would bind.</summary>
    /// <param name="assessment">What the law makes of the job without it.</param>
    /// <param name="paper">The paper as signed and bound.</param>
    public static WaiverOutlook Of(Assessment assessment, Waived paper)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        ArgumentNullException.ThrowIfNull(paper);
        var after = assessment.Supposing(paper).Amount;
        var (received, cleared) = assessment.Facts is { } facts ? Payments(facts, paper) : (false, false);
        var (through, ended) = Ahead(assessment);
        return new WaiverOutlook(assessment.Amount.Demand, after.Demand, paper.Amount)
        {
            CountsThrough = through,
            Ended = ended,
            InDoubt = Doubt(after, paper),
            Doubts = [.. after.Waivers.Where(w => w.Waiver.Index == paper.Index).SelectMany(Reasons)],
            InJournal = received || cleared,
            TakenOff = received,
        };
    }

    // Nobody says how the price of work that goes on is split, so the demand counts it whole.
    private static (LocalDate? Through, decimal Ended) Ahead(Assessment assessment)
    {
        var now = assessment.Amount.Demand;
        if (assessment.Facts is not { } facts)
            return (null, now);
        List<Furnished> ahead = [.. facts.Furnished.Where(f => f is { Amount: > 0 } && f.Until.Latest > facts.AsOf)];
        if (ahead.Count == 0)
            return (null, now);
        var ended = assessment.Supposing(job => job with
        {
            Entries = [.. job.Entries.Select(e => e is Furnished f && ahead.Contains(f) ? f with { Amount = 0m } : e)],
        }).Amount.Demand;
        return ended == now ? (null, now) : (ahead.Max(f => f.Until.Latest), ended);
    }

    // Of several that bind, the one that releases most counts: only what this one may release beyond that is its own doubt.
    private static decimal Doubt(Waterfall after, Waived paper)
    {
        var surely = after.Waivers.Where(w => w.Binds).Select(w => w.Released).DefaultIfEmpty().Max();
        var most = after.Waivers.Where(w => w.Waiver.Index == paper.Index).Select(w => w.AtMost).DefaultIfEmpty().Max();
        return Math.Clamp(most - surely, 0m, after.Demand);
    }

    // The law's own measures of the doubt, one clause for each that is open.
    private static IEnumerable<string> Reasons(WaiverEffect effect)
    {
        if (effect.Reach.AcrossALine > 0)
        {
            yield return "some of the work was provided over days on both sides of the last day that the form reaches, and the file does "
                + "not split its price";
        }

        if (effect.Reach.AfterSigning > 0)
            yield return "its words reach work provided after it is signed, which may not be given up in advance (Civ. Code § 8122)";
        if (effect.Exceptions.Retention > 0)
            yield return "some of the retention may be held from work that the form does not reach";
        if (effect.Exceptions.Extras > 0)
            yield return "one sentence of the form keeps extras and another releases written change orders that it does not list";
        if (effect.Exceptions.Earlier > 0)
            yield return "the file does not say whether the form lists the earlier conditional waivers that are not paid";
    }

    // A conditional form comes before its payment: one of the same sum in the journal is another's. Each payment answers one paper.
    private static (bool Received, bool Cleared) Payments(FactsAsOf facts, Waived paper)
    {
        if (IsConditional(paper.Form) || paper.Amount is not { } sum)
            return (false, false);
        int answered = 0, cleared = 0;
        foreach (var earlier in facts.All<Waived>().Where(w => w.Amount == sum))
        {
            if (!IsConditional(earlier.Form))
                answered++;
            else if (earlier.PaymentCleared <= facts.AsOf)
                cleared++;
        }

        return (facts.All<Paid>().Count(p => p.Amount == sum) > answered, cleared > answered);
    }

    private static bool IsConditional(WaiverForm form) => form switch
    {
        WaiverForm.ConditionalProgress or WaiverForm.ConditionalFinal => true,
        WaiverForm.UnconditionalProgress or WaiverForm.UnconditionalFinal => false,
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Not a form."),
    };
}
