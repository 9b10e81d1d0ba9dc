using Stringline.Law.Facts;

namespace Stringline.Law.Completion;

/// <summary>
/// Whether the claimant has ceased to provide work: the file says so, its contract ended, or the whole work is complete. The one home of
/// it.
/// </summary>
public static class HasCeased
{
    /// <summary>
    /// The reading under which the whole work is surely complete by the day of asking, and did not go on; null where none is. Sixty days
    /// without labor complete it in law, but labor that is resumed afterwards may be the claimant's too.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">All readings of completion.</param>
    public static CompletionReading? ByCompletion(FactsAsOf facts, CompletionReadings completion)
    {
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness == Firmness.Certain && (!reading.LaborResumed || reading.WentOnUntil is not null)
                && reading.OverBy <= facts.AsOf)
                return reading;
        }

        return null;
    }

    /// <summary>Whether it has.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">All readings of completion, worked out only where the file does not say it itself.</param>
    public static bool Of(FactsAsOf facts, Func<FactsAsOf, CompletionReadings> completion) =>
        End(facts) is not null || ByCompletion(facts, completion(facts)) is not null;

    /// <summary>Whether it has.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">All readings of completion.</param>
    public static bool Of(FactsAsOf facts, CompletionReadings completion) =>
        End(facts) is not null || ByCompletion(facts, completion) is not null;

    /// <summary>
    /// The entry by which the claimant furnishes no more: its contract was performed, the file says that the furnishing ended, or the
    /// contract ended otherwise.
    /// </summary>
    internal static Entry? End(FactsAsOf facts) =>
        (Entry?)Performed(facts) ?? Last(facts.All<FurnishingEnded>()) ?? Last(facts.All<ContractEnded>());

    private static Entry? Last(IReadOnlyList<Entry> entries) => entries.Count == 0 ? null : entries[^1];

    /// <summary>The entry by which the contract was performed; null where none says so.</summary>
    internal static ContractEnded? Performed(FactsAsOf facts)
    {
        foreach (var ended in facts.All<ContractEnded>())
        {
            if (ended.How == ContractEnd.Performed)
                return ended;
        }

        return null;
    }
}
