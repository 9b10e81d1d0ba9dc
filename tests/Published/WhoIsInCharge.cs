namespace Stringline.Published;

/// <summary>Decisions on whose order makes the work authorized.</summary>
public sealed class WhoIsInCharge
{
    [Fact]
    [Proves("Civ. Code § 8404(b)")]
    public void P_16_who_makes_a_definite_part_to_the_plans_is_a_subcontractor_and_its_suppliers_have_rights() => new CaseNote
    {
        Number = "P-16",
        Citation = "Theisen v. County of Los Angeles (1960) 54 Cal.2d 170",
        Read = "excerpt of the opinion; that a supplier's supplier has no right is from memory",
        Law = "Code Civ. Proc. § 1181 → Civ. Code § 8404(b)",
        Facts = "The days and sums are ours; only the rule is the court's. A maker agreed to fabricate a definite, substantial part of the "
            + "work to the plans and never came to the site.",
        Question = "Is it a subcontractor, so that who furnishes to it has rights?",
        Held = "Yes.",
        Then = "Who furnished to it had rights.",
        Now = "The same. Who furnishes to one that only sells has none, and while nobody says which it is, the right is in doubt.",
        Takes =
        [
            new("as held: made to the plans", ToMaker(true), "2026-04-01",
                Is("authorized-work", Standing.Kept),
                Is("lien-right", Standing.Open)),

            new("a mere seller", ToMaker(false), "2026-04-01",
                Is("authorized-work", Standing.Lost),
                Is("lien-right", Standing.Lost),
                Is("stop-payment-notice.owner", Standing.Lost),
                Obstacle("Civ. Code § 8400")),

            new("while nobody says which", ToMaker(null), "2026-04-01",
                Is("authorized-work", Standing.InDoubt),
                Is("lien-right", Standing.InDoubt),
                Is("stop-payment-notice.owner", Standing.InDoubt),
                Asks("authorized-work", "to the plans")),
        ],
    }.Holds();

    private static JobBuilder ToMaker(bool? madeToPlans) => Begin(ClaimantRole.Supplier, "maker")
        .Party("maker", PartyCapacity.Supplier, "Sallow Millwork, Inc.", madeToPlans: madeToPlans)
        .Furnished("2026-01-05", 8000.00m, until: "2026-03-31")
        .Ended("2026-03-31")
        .Notice("2026-01-08");
}
