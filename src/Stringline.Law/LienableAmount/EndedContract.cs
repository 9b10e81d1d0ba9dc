using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.LienableAmount;

/// <summary>What the end of the contract does to its price (Civ. Code § 8430(c)).</summary>
/// <param name="Entry">How it ended; null where the file does not say that it has.</param>
internal readonly record struct EndedContract(ContractEnded? Entry)
{
    /// <summary>The last word of the file on it.</summary>
    public static EndedContract Of(FactsAsOf facts)
    {
        var ends = facts.All<ContractEnded>();
        return new EndedContract(ends.Count == 0 ? null : ends[^1]);
    }

    /// <summary>Whether it ended before it was performed.</summary>
    public bool Unperformed => Entry is { How: not ContractEnd.Performed };

    /// <summary>
    /// Whether the reasonable value counts, above the price too: a rescission leaves no price, whoever asked for it; of a breach or an
    /// abandonment the payer's does. The section does not say whose breach it means; nobody gains by his own.
    /// </summary>
    [Rule("Civ. Code § 8430(c)")]
    public bool ValueCounts => Entry switch
    {
        { How: ContractEnd.Rescinded } => true,
        { How: ContractEnd.Breached or ContractEnd.Abandoned, ByPayer: true } => true,
        _ => false,
    };

    /// <summary>What would let the reasonable value count above the price; null where nothing would.</summary>
    public Question? Question(decimal value, FactsAsOf facts)
    {
        var reasonable = facts.Job.Contract.ReasonableValue;
        if (ValueCounts)
        {
            return reasonable is null
                ? new Question($"What was the reasonable value of the work? As the contract ended, it counts above the price "
                    + $"too.{HeadField.ContractReasonableValue:aside}")
                : null;
        }

        return Entry is { How: ContractEnd.Breached or ContractEnd.Abandoned, ByPayer: null } && !(reasonable <= value)
            ? new Question($"Who broke or abandoned the contract? If it was the payer, the reasonable value of the work counts above the "
                + $"price too.{WorkKinds.ContractEnded.At("byPayer"):aside}", Dollars: reasonable - value) { Corrects = Entry }
            : null;
    }

    /// <summary>Why the value counts.</summary>
    public Reason Why(RemedyLaw law, decimal value, decimal price) =>
        Reason.Of(law.Changes, $"The contract ended by {Words(Entry!.How)}: the reasonable value of the work counts, {value}, where its "
            + $"price was {price}.", [Entry!]);

    private static string Words(ContractEnd how) => how switch
    {
        ContractEnd.Breached => "breach",
        ContractEnd.Abandoned => "abandonment",
        ContractEnd.Rescinded => "rescission",
        _ => throw new InvalidOperationException($"No such end: {how}."),
    };
}
