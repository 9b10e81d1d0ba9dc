using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>A sum that the payer had to pay by a day, and what has come for it since.</summary>
/// <param name="fact">The entry that makes it due.</param>
/// <param name="from">The first day on which a payment can be for it.</param>
/// <param name="due">The last day on which payment was in time, rolled for the payer.</param>
/// <param name="amount">Dollars and cents.</param>
/// <param name="terms">The penalty by the month; null where it bears none.</param>
internal sealed class SumDue(Entry fact, LocalDate from, LocalDate due, decimal amount, LateTerms? terms = null)
{
    private readonly List<(LocalDate On, decimal Amount)> received = [];

    /// <summary>The entry that makes it due.</summary>
    public Entry Fact => fact;

    /// <summary>The penalty by the month.</summary>
    /// <exception cref="InvalidOperationException">It bears none.</exception>
    public LateTerms Terms => terms ?? throw new InvalidOperationException("This sum bears no penalty by the month.");

    /// <summary>The first day on which a payment can be for it.</summary>
    public LocalDate From => from;

    /// <summary>The last day on which payment was in time.</summary>
    public LocalDate Due => due;

    /// <summary>Dollars and cents of it in good-faith dispute; null where nobody shared out the disputes of the file.</summary>
    public decimal? Disputed { get; set; }

    /// <summary>What would change it.</summary>
    public List<Question> Questions { get; } = [];

    /// <summary>Dollars and cents still unpaid.</summary>
    public decimal Unpaid { get; private set; } = amount;

    /// <summary>
    /// Applies the payments: each dollar answers one sum only, the one that falls due earliest of those it can be for
    /// (Civ. Code § 1479). A payment on a day in doubt counts on its earliest day, which favors the payer.
    /// </summary>
    /// <param name="sums">The sums; those that fall due on one day are answered in their order here.</param>
    /// <param name="payments">What was received.</param>
    [Rule("Civ. Code § 1479")]
    public static void Receive(IReadOnlyList<SumDue> sums, IReadOnlyList<Paid> payments)
    {
        if (sums.Count == 0)
            return;
        var byDueDay = sums.OrderBy(static s => s.Due).ToList();
        foreach (var payment in payments)
        {
            var left = payment.Amount;
            foreach (var sum in byDueDay)
            {
                if (payment.On.Earliest is { } on && on >= sum.From)
                    left -= sum.Take(on, left);
            }
        }
    }

    private decimal Take(LocalDate on, decimal money)
    {
        var part = Math.Min(money, Unpaid);
        if (part > 0)
        {
            Unpaid -= part;
            received.Add((on, part));
        }

        return part;
    }

    /// <summary>Dollars and cents that fell due, paid since or not.</summary>
    public decimal Whole { get; } = amount;

    /// <summary>What is wrongly withheld on a day, and the penalty until then: a part that came late costs until it came.</summary>
    /// <param name="disputed">Dollars and cents in good-faith dispute; its terms say how much of it may be held.</param>
    /// <param name="asOf">The day of asking.</param>
    public (decimal Withheld, decimal ForMonths, decimal ByDays, int WholeMonths) Penalty(decimal disputed, LocalDate asOf) =>
        Penalty(disputed, asOf, due);

    /// <summary>The same, where the payer had until another day.</summary>
    public (decimal Withheld, decimal ForMonths, decimal ByDays, int WholeMonths) Penalty(decimal disputed, LocalDate asOf, LocalDate due)
    {
        var whole = Unpaid;
        foreach (var (_, part) in received)
            whole += part;
        // What comes in answers first what may not be held.
        var withheld = Late.WronglyWithheld(whole, disputed, Terms);
        var (forMonths, byDays) = (0m, 0m);
        foreach (var (on, part) in received)
        {
            var late = Math.Min(withheld, part);
            withheld -= late;
            var until = Late.Penalty(late, due, on, Terms);
            forMonths += until.ForMonths;
            byDays += until.ByDays;
        }

        var rest = Late.Penalty(withheld, due, asOf, Terms);
        return (withheld, forMonths + rest.ForMonths, byDays + rest.ByDays, rest.WholeMonths);
    }

    /// <summary>Simple interest by the year on what is or was late, until it came or until a day.</summary>
    /// <param name="rate">The rate by the year.</param>
    /// <param name="asOf">The day of asking.</param>
    public decimal Interest(NumberRow rate, LocalDate asOf)
    {
        var interest = Late.Interest(Unpaid, rate, due, asOf);
        foreach (var (on, part) in received)
            interest += Late.Interest(part, rate, due, on);
        return interest;
    }
}
