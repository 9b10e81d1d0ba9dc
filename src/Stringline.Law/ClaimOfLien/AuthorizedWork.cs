using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// Whether the work was ordered by one in charge of the work of improvement. A supplier is not, unless it made its part to the plans.
/// </summary>
public static class AuthorizedWork
{
    private const string Theisen = "Theisen v. County of Los Angeles (1960) 54 Cal.2d 170";

    /// <summary>
    /// Whether one in charge ordered it, on other work than federal; null where no supplier ordered the claimant's work. One who agrees to
    /// make a definite, substantial
    /// part of the work to the plans is a subcontractor, though it never comes to the site; one who only sells is not in charge of
    /// anything, and nobody who furnishes to it has a right.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="owed">What hangs on it, dollars and cents.</param>
    [Rule("Civ. Code § 8404(b)", Sure = Sure.Opinion)]
    [Rule("Civ. Code § 9100", Sure = Sure.FromMemory)]
    public static Outcome? Of(FactsAsOf facts, decimal owed)
    {
        if (facts.Hirer is not { Capacity: PartyCapacity.Supplier } supplier)
            return null;
        var section = facts.Job.Work.Kind switch
        {
            WorkKind.Private => "Civ. Code § 8404(b)",
            WorkKind.Public => "Civ. Code § 9100",
            _ => throw new InvalidOperationException($"No such kind of work: {facts.Job.Work.Kind}."),
        };
        return supplier.MadeToPlans switch
        {
            true => Answer(Standing.Kept,
                Reason.Of(section, $"{supplier.Name} agreed to make a definite, substantial part of the work to the plans, so it counts as "
                    + $"a subcontractor, and who furnishes to it has rights ({Theisen}).")),
            false => Answer(Standing.Lost,
                Reason.Of(section, $"{supplier.Name} only sells. It is in charge of no part of the work, so who furnishes to it has no "
                    + $"lien, stop payment notice or bond claim ({Theisen}; that a supplier's supplier has none is from memory).")),
            null => Answer(Standing.InDoubt,
                Reason.Of(section, $"{supplier.Name} is a supplier. Who furnishes to one that only sells has no lien, stop payment notice "
                    + $"or bond claim; who furnishes to one that agreed to make a definite, substantial part of the work to the plans has "
                    + $"({Theisen})."),
                new Question($"Did {supplier.Name} agree to make a definite, substantial part of the work to the "
                    + $"plans?{HeadField.PartiesMadeToPlans:aside}", Dollars: owed)),
        };
    }

    private static Outcome Answer(Standing standing, Reason why, Question? question = null) =>
        new(standing, new Words([why], question is null ? [] : [question]));

    /// <summary>What the finding is called.</summary>
    internal const string Title = "Work ordered by one in charge";

    /// <summary>The finding <c>authorized-work</c>, where somebody doubts it.</summary>
    internal static Finding? Finding(Outcome? authorized) => authorized?.Finding("authorized-work", Title);
}
