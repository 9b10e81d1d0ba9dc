using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// Whom the federal bond reaches: those who deal with the prime contractor or with a subcontractor of the prime, and nobody beyond
/// (Clifford F. MacEvoy Co. v. United States (1944) 322 U.S. 102).
/// </summary>
internal static class FederalTier
{
    private const string Section = "40 U.S.C. § 3133(b)(2)";
    private const string MacEvoy = "Clifford F. MacEvoy Co. v. United States (1944) 322 U.S. 102";

    /// <summary>Whether one within the reach of the bond ordered the work; null where nobody doubts it.</summary>
    public static Outcome? Of(FactsAsOf facts, decimal owed) => OutsideTheContract(facts, owed)
        ?? (facts.Hirer is { Capacity: PartyCapacity.Supplier } supplier ? OfSupplier(facts, supplier, owed) : null);

    /// <summary>Whether the work was ordered by one in charge, where a supplier ordered the claimant's work.</summary>
    /// <param name="facts">The facts.</param>
    /// <param name="supplier">The supplier.</param>
    /// <param name="owed">What hangs on it, dollars and cents.</param>
    [Rule("40 U.S.C. § 3133(b)(2)", Sure = Sure.Opinion)]
    private static Outcome OfSupplier(FactsAsOf facts, Party supplier, decimal owed)
    {
        var dealsWithPrime = facts.Job.Party(supplier.WorksUnder) is { Capacity: PartyCapacity.DirectContractor };
        return (supplier.MadeToPlans, dealsWithPrime) switch
        {
            (false, _) =>
                Answer(Standing.Lost,
                    Reason.Of(Section, $"{supplier.Name} only sells. The bond reaches those who deal with the prime contractor or with a "
                        + $"subcontractor of the prime, and a mere material supplier is no subcontractor: who sells to it is outside "
                        + $"({MacEvoy}).")),
            (true, true) =>
                Answer(Standing.Kept,
                    Reason.Of(Section, $"{supplier.Name} took a specific part of the work from the prime contractor, so it counts as its "
                        + $"subcontractor, and who deals with it is within the bond ({MacEvoy}).")),
            (true, false) =>
                Answer(Standing.InDoubt,
                    Reason.Of(Section, $"{supplier.Name} took a specific part of the work. That makes it a subcontractor only if it took "
                        + $"it from the prime contractor itself: who deals with one further down is outside the bond ({MacEvoy})."),
                new Question($"Did {supplier.Name} take its part of the work from the prime contractor "
                    + $"itself?{HeadField.PartiesWorksUnder:aside}", Dollars: owed)),
            (null, _) =>
                Answer(Standing.InDoubt,
                    Reason.Of(Section, $"{supplier.Name} is a supplier. The bond reaches those who deal with the prime contractor or with "
                        + $"a subcontractor of the prime, that is, with one who took from the prime a specific part of the work; who sells "
                        + $"to a mere supplier is outside ({MacEvoy})."),
                new Question($"Did {supplier.Name} agree with the prime contractor to make a definite, substantial part of the work to the "
                    + $"plans?{HeadField.PartiesMadeToPlans:aside}", Dollars: owed)),
        };
    }

    /// <summary>
    /// Whether the work was ordered by one in charge, where the United States itself, or one who is neither contractor nor supplier, hired
    /// a claimant that is no prime contractor; null elsewhere. Who contracts with the United States furnishes the bond and does not claim
    /// on it.
    /// </summary>
    [Rule("40 U.S.C. § 3131(b)")]
    [Rule("40 U.S.C. § 3133(b)(1)")]
    private static Outcome? OutsideTheContract(FactsAsOf facts, decimal owed)
    {
        if (facts.Hirer is not { Capacity: PartyCapacity.PublicEntity or PartyCapacity.Owner or PartyCapacity.ConstructionLender
            or PartyCapacity.Surety } hirer
            || facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return null;
        return Answer(Standing.InDoubt,
            Reason.Of("40 U.S.C. § 3133(b)(1)", $"The file says that {hirer.Name} hired the claimant. The bond protects those who furnish "
                + $"to the prime contractor or its subcontractors; one who contracts with the United States itself furnishes such a bond "
                + $"and has no claim on it."),
            new Question($"Who hired the claimant: the prime contractor, a subcontractor, "
                + $"or {hirer.Name} itself?{HeadField.ClaimantHiredBy:aside}", Dollars: owed));
    }

    private static Outcome Answer(Standing standing, Reason why, Question? question = null) =>
        new(standing, new Words([why], question is null ? [] : [question]));
}
