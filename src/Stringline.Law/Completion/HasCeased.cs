using Stringline.Law.Facts;

namespace Stringline.Law.Completion;

/// <summary>Whether the claimant has ceased to provide work: the file says so, its contract ended, or the whole work is complete. The one home of it.</summary>
public static class HasCeased
{
    /// <summary>
    /// The reading under which the whole work is surely complete by the day of asking, and did not go on; null where none is. Sixty days without
    /// labor complete it in law, but labor that is resumed afterwards may be the claimant's too.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">All readings of completion.</param>
    public static CompletionReading? ByCompletion(FactsAsOf facts, CompletionReadings completion)
    {
        foreach (var reading in completion.Open)
        {
            if (reading.Firmness == Firmness.Certain && (!reading.LaborResumed || reading.WentOnUntil is not null) && reading.OverBy <= facts.AsOf)
                return reading;
        }

        return null;
    }

    /// <summary>Whether it has.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="completion">All readings of completion, worked out only where the file does not say it itself.</param>
    public static bool Of(FactsAsOf facts, Func<FactsAsOf, CompletionReadings> completion) =>
        facts.All<FurnishingEnded>().Count > 0 || facts.All<ContractEnded>().Count > 0 || ByCompletion(facts, completion(facts)) is not null;
}
