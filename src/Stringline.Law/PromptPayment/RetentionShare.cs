using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PromptPayment;

/// <summary>
/// The claimant's share of retention that its hirer received: never more, over all receipts, than was retained from the claimant.
/// </summary>
internal sealed class RetentionShare
{
    private decimal? left;

    private RetentionShare(decimal? retained) => left = retained;

    /// <summary>What was retained; not known where the file holds no retention.</summary>
    public static RetentionShare Of(FactsAsOf facts) =>
        new(facts.All<Retained>() is { Count: > 0 } held ? Total.Of(held, static r => r.Amount) : null);

    /// <summary>The claimant's part of what the hirer received, dollars and cents.</summary>
    public decimal Take(HirerPaid received)
    {
        if (received.Of != PaymentOf.Retention || left is not { } rest)
            return received.Amount;
        var part = Math.Min(rest, received.Amount);
        left = rest - part;
        return part;
    }

    /// <summary>What is owed, with a warning where the entry says more than the share can be.</summary>
    /// <param name="owed">Where the sum stands.</param>
    /// <param name="sum">The sum, made from a receipt.</param>
    /// <param name="section">The section that speaks of the share.</param>
    public static SumOwed Warn(SumOwed owed, SumDue sum, string section)
    {
        if (sum.Fact is not HirerPaid received || received.Amount <= sum.Whole)
            return owed;
        return owed with
        {
            Why = [.. owed.Why,
                Reason.Of(section, $"The hirer is entered to have received {received.Amount}, but only each subcontractor's share of what "
                    + $"was retained from it is passed on: {sum.Whole} here, by what the file shows as retained.", [received])],
            Questions = [.. owed.Questions,
                new Question($"How much of the retention received is the claimant's share? It can be no more than was retained from "
                    + $"it.{MoneyKinds.HirerPaid.At("amount"):aside}", Dollars: received.Amount - sum.Whole) { Corrects = received }],
        };
    }
}
