using Stringline.Law.Facts;

namespace Stringline.Law.PromptPayment;

/// <summary>The judgment that ends a charge by the month.</summary>
internal static class Judgment
{
    /// <summary>The first day on which the claimant won a judgment; null while it has none.</summary>
    public static LocalDate? Of(FactsAsOf facts)
    {
        foreach (var ended in facts.All<ActionEnded>())
        {
            if (ended.How == ActionEnd.Won && ended.On.Earliest is { } day)
                return day;
        }

        return null;
    }
}
