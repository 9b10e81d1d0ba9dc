using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>Something owed to the claimant: an item of work or a charge that is not for work.</summary>
internal sealed class Obligation
{
    /// <summary>The entry it comes from; null for a whole price that no entry divides.</summary>
    public Entry? Entry { get; init; }

    /// <summary>First and last day of the work, or the day of the charge; null where unknown.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last day it can have fallen due; the unknown day counts as the day of asking.</summary>
    public required LocalDate Due { get; init; }

    /// <summary>Reference by which payments may name it.</summary>
    public string? Ref { get; init; }

    /// <summary>Interest, a charge that is not for work, or work.</summary>
    public required bool IsWork { get; init; }

    /// <summary>Whether it is interest (Civ. Code § 1479, Three, 1).</summary>
    public bool IsInterest { get; init; }

    /// <summary>Whether it is work within reach of the claim of lien.</summary>
    public bool Secured { get; set; }

    /// <summary>Dollars and cents at first.</summary>
    public decimal Value { get; set; }

    /// <summary>Dollars and cents still unpaid.</summary>
    public decimal Unpaid { get; set; }
}

/// <summary>Applies what was received to what is owed (Civ. Code § 1479).</summary>
internal sealed class Application(List<Obligation> owed)
{
    /// <summary>Dollars and cents that went to work within reach.</summary>
    public decimal ToSecured { get; private set; }

    /// <summary>Dollars and cents that went to work out of reach, interest and charges.</summary>
    public decimal Elsewhere { get; private set; }

    /// <summary>Dollars and cents for which nothing was owed.</summary>
    public decimal Excess { get; private set; }

    /// <summary>First what the debtor directs; what is left over goes by the order of law.</summary>
    [Rule("Civ. Code § 1479", Since = "1872-01-01")]
    public void Pay(Paid payment)
    {
        var left = payment.Amount;
        if (payment.Toward is { } toward)
        {
            foreach (var obligation in owed)
            {
                if (obligation.Ref == toward)
                    left = PayTo(obligation, left);
            }
        }

        ByLaw(left, payment.On.Latest, workOnly: false);
    }

    /// <summary>A credit lowers the price of work; it never pays interest or charges.</summary>
    public void Credit(Credited credit) => ByLaw(credit.Amount, credit.On.Latest, workOnly: true);

    /// <summary>
    /// The order of law where nobody chose: what is due before what is not; of that, interest; then by earliest maturity
    /// (Jessup Farms v. Baldwin (1983) 33 Cal.3d 639); at equal maturity the unsecured before the secured. Inside one class the
    /// statute shares ratably; since its members stand on the same day and the same side of every line drawn here, paying
    /// them in turn gives the same totals.
    /// </summary>
    [Rule("Civ. Code § 1479", Since = "1872-01-01")]
    private void ByLaw(decimal left, LocalDate? day, bool workOnly)
    {
        bool IsDue(Obligation obligation) => day is not { } paid || obligation.Due <= paid;
        foreach (var obligation in owed
            .Where(o => o.Unpaid > 0 && (o.IsWork || !workOnly))
            .OrderBy(o => !IsDue(o))
            .ThenBy(o => !(o.IsInterest && IsDue(o)))
            .ThenBy(o => o.Due)
            .ThenBy(o => o.Secured))
        {
            if (left == 0)
                return;
            left = PayTo(obligation, left);
        }

        Excess += left;
    }

    private decimal PayTo(Obligation obligation, decimal money)
    {
        var part = Math.Min(money, obligation.Unpaid);
        obligation.Unpaid -= part;
        if (obligation.Secured)
            ToSecured += part;
        else
            Elsewhere += part;
        return money - part;
    }
}
