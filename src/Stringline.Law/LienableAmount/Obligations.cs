using Stringline.Law.Facts;

namespace Stringline.Law.LienableAmount;

/// <summary>Something owed to the claimant: an item of work or a charge that is not for work.</summary>
internal sealed class Obligation
{
    /// <summary>The entry it comes from.</summary>
    public Entry? Entry { get; init; }

    /// <summary>The first day that the work can have begun; null where unknown, and for a charge.</summary>
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

    /// <summary>Whether it is out of reach only because its days are in doubt, or lie on both sides of the day reached.</summary>
    public bool Straddles { get; set; }

    /// <summary>Dollars and cents at first.</summary>
    public decimal Value { get; set; }

    /// <summary>Dollars and cents still unpaid.</summary>
    public decimal Unpaid { get; set; }

    /// <summary>Place in the order of the entries, so that equal ones stay in it.</summary>
    public required int Order { get; init; }

    /// <summary>The same, so that receipts can be applied another way.</summary>
    public Obligation Copy() => (Obligation)MemberwiseClone();

    /// <summary>By first day, an unknown one first; then in the order of the entries.</summary>
    public static int ByFirstDay(Obligation a, Obligation b) => (a.From, b.From) switch
    {
        ({ } x, { } y) when x != y => x.CompareTo(y),
        (null, { }) => -1,
        ({ }, null) => 1,
        _ => a.Order.CompareTo(b.Order),
    };

    /// <summary>By maturity; at equal maturity the unsecured first; then in the order of the entries.</summary>
    public static int ByMaturity(Obligation a, Obligation b)
    {
        if (a.Due != b.Due)
            return a.Due.CompareTo(b.Due);
        return a.Secured != b.Secured ? (a.Secured ? 1 : -1) : a.Order.CompareTo(b.Order);
    }
}

/// <summary>Applies what was received to what is owed (Civ. Code § 1479).</summary>
internal sealed class Application
{
    // Earliest maturity first; at equal maturity the unsecured before the secured.
    private readonly Obligation[] byMaturity;
    private readonly Obligation[] interest;
    private Dictionary<string, List<Obligation>>? byRef;
    private int firstUnpaid;

    /// <summary>Makes ready to apply payments and credits.</summary>
    /// <param name="owed">Everything owed.</param>
    public Application(List<Obligation> owed)
    {
        byMaturity = owed.ToArray();
        Array.Sort(byMaturity, Obligation.ByMaturity);
        interest = Array.FindAll(byMaturity, static o => o.IsInterest);
    }

    private Dictionary<string, List<Obligation>> ByRef()
    {
        var found = new Dictionary<string, List<Obligation>>(StringComparer.Ordinal);
        foreach (var obligation in byMaturity)
        {
            if (obligation.Ref is not { } name)
                continue;
            if (!found.TryGetValue(name, out var named))
                found[name] = named = [];
            named.Add(obligation);
        }

        return found;
    }

    /// <summary>Dollars and cents that went to work out of reach, interest and charges.</summary>
    public decimal Elsewhere { get; private set; }

    /// <summary>Dollars and cents for which nothing was owed.</summary>
    public decimal Excess { get; private set; }

    /// <summary>First what the debtor directs; what is left over goes by the order of law.</summary>
    [Rule("Civ. Code § 1479")]
    public void Pay(Paid payment)
    {
        var left = payment.Amount;
        if (Named(payment.Toward) is { } named)
        {
            foreach (var obligation in named)
                left = PayTo(obligation, left);
        }

        ByLaw(left, payment.On.Earliest, workOnly: false);
    }

    /// <summary>A credit lowers the price of the work it belongs to, else by the order of law; it never pays interest or charges.</summary>
    /// <param name="credit">The credit.</param>
    /// <param name="toSecured">Whether one of which nobody says what it is for lowers what is within reach first.</param>
    [Rule("Civ. Code § 8416(a)(1)")]
    public void Credit(Credited credit, bool toSecured)
    {
        var left = credit.Amount;
        if (Named(credit.Toward) is { } named)
        {
            foreach (var obligation in named)
                left = obligation.IsWork ? PayTo(obligation, left) : left;
        }
        else if (toSecured)
        {
            foreach (var obligation in byMaturity)
                left = obligation.Secured ? PayTo(obligation, left) : left;
        }

        ByLaw(left, null, workOnly: true);
    }

    private List<Obligation>? Named(string? toward) =>
        toward is not null && (byRef ??= ByRef()).TryGetValue(toward, out var named) ? named : null;

    /// <summary>
    /// The order of law where nobody chose: what is due before what is not; of that, interest; then by earliest maturity
    /// (Jessup Farms v. Baldwin (1983) 33 Cal.3d 639); at equal maturity the unsecured before the secured. Inside one class the
    /// statute shares ratably; since its members stand on the same day and the same side of every line drawn here, paying
    /// them in turn gives the same totals. What a payment on a day in doubt can have come before is not
    /// taken to be due, and on an unknown day no interest is, so that the demand is the lower.
    /// </summary>
    [Rule("Civ. Code § 1479")]
    private void ByLaw(decimal left, LocalDate? day, bool workOnly)
    {
        if (day is { } paid)
        {
            foreach (var due in interest)
            {
                if (due.Due > paid)
                    break;
                left = PayTo(due, left);
            }
        }

        // Whatever is due by a day stands before whatever is not, since all stand in the order of their maturity.
        while (firstUnpaid < byMaturity.Length && byMaturity[firstUnpaid].Unpaid == 0)
            firstUnpaid++;
        for (var i = firstUnpaid; i < byMaturity.Length && left > 0; i++)
        {
            if (byMaturity[i].IsWork || !workOnly)
                left = PayTo(byMaturity[i], left);
        }

        Excess += left;
    }

    private decimal PayTo(Obligation obligation, decimal money)
    {
        var part = Math.Min(money, obligation.Unpaid);
        obligation.Unpaid -= part;
        if (!obligation.Secured)
            Elsewhere += part;
        return money - part;
    }
}
