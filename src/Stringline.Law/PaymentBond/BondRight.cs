using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.PaymentBond;

/// <summary>Whether the claimant has a claim on the bond at all, and whether there is such a bond.</summary>
/// <param name="Has">Whether it has.</param>
/// <param name="Why">Why not, or why it is open.</param>
/// <param name="Questions">What would settle it.</param>
/// <param name="NeverLost">Whether a day gone by takes nothing away for sure, since by their letter the sections do not govern the
/// bond.</param>
internal sealed record BondRight(Verdict Has, IReadOnlyList<Reason> Why, IReadOnlyList<Question> Questions, bool NeverLost = false)
{
    private static readonly BondRight Whole = new(Verdict.Yes, [], []);

    /// <summary>A standing no better than the right.</summary>
    public Standing Limit(Standing standing)
    {
        var limited = (Has, standing) switch
        {
            (_, Standing.Lost or Standing.Done) => standing,
            (Verdict.No, _) => Standing.Lost,
            (Verdict.Open, _) => Standing.InDoubt,
            _ => standing,
        };
        return limited == Standing.Lost && NeverLost ? Standing.InDoubt : limited;
    }

    /// <summary>On private works: a direct contractor's bond answers only for work that went to that contractor.</summary>
    [Rule("Civ. Code § 8606")]
    [Rule("Civ. Code § 8608(a)")]
    public static BondRight OnPrivateWork(FactsAsOf facts)
    {
        var principal = facts.Job.Party(facts.Job.Work.PaymentBond?.Principal);
        if (facts.Job.Claimant.Role == ClaimantRole.DirectContractor)
            return OfDirectContractor(principal);
        if (principal is { Capacity: not PartyCapacity.DirectContractor })
            return Whole;
        if (facts.Hirer is { Capacity: PartyCapacity.Owner } owner)
        {
            return principal is null
                ? new BondRight(Verdict.Open,
                    [Reason.Of("Civ. Code § 8608(a)", $"The file says that {owner.Name}, the owner, hired the claimant. On a direct "
                        + $"contractor's bond it then has no claim; on a bond of which the owner is the principal it has "
                        + $"(Civ. Code § 8606(b)).")],
                    [AskPrincipal, AskHirer])
                : new BondRight(Verdict.No,
                    [Reason.Of("Civ. Code § 8608(a)", $"The file says that {owner.Name}, the owner, hired the claimant. There is no claim "
                        + $"on the bond of {principal.Name} unless the work was provided to that direct contractor, straight or through "
                        + $"subcontractors.")],
                    [AskHirer]);
        }

        var under = facts.Hirer is { Capacity: PartyCapacity.DirectContractor } hirer ? hirer.Id : facts.Hirer?.WorksUnder;
        return principal is not null && under is not null && under != principal.Id
            ? new BondRight(Verdict.No,
                [Reason.Of("Civ. Code § 8608(a)", $"The claimant's work went to {facts.Job.Party(under)?.Name ?? under}, and the bond is "
                    + $"that of {principal.Name}: no claim on it.")],
                [AskPrincipal])
            : Whole;
    }

    private static BondRight OfDirectContractor(Party? principal) => principal?.Capacity switch
    {
        PartyCapacity.Owner => Whole,
        null or PartyCapacity.DirectContractor => new BondRight(Verdict.No,
            [Reason.Of("Civ. Code § 8608(a)", $"A direct contractor has no claim on a direct contractor's payment bond: it is the "
                + $"principal, and the bond answers for work provided to it (Civ. Code § 8606).")],
            principal is null ? [AskPrincipal] : []),
        _ => new BondRight(Verdict.Open,
            [Reason.Of("Civ. Code § 8606", $"The bond is that of {principal.Name}. It must be for the claims of all claimants; whether a "
                + $"direct contractor is one toward it is open.")], []),
    };

    /// <summary>
    /// On public works: no claim by one hired by the entity itself; and the bond must be one that Civ. Code § 9550 requires.
    /// </summary>
    [Rule("Civ. Code § 9566")]
    public static BondRight OnPublicWork(FactsAsOf facts)
    {
        var right = WhichBond(facts);
        return facts.Hirer is { Capacity: PartyCapacity.PublicEntity } entity
            ? right with
            {
                Has = Verdict.No,
                Why = [Reason.Of("Civ. Code § 9566", $"The file says that {entity.Name} itself hired the claimant. There is no claim on "
                    + $"the bond unless the work was provided to the direct contractor, straight or through subcontractors. A design "
                    + $"professional's stop payment notice is not touched by that."), .. right.Why],
                Questions = [AskHirer, .. right.Questions],
            }
            : right;
    }

    /// <summary>
    /// A bond is required above $25,000 only; a State entity's bond is that of Pub. Contract Code § 7103, which sets no notice and no time,
    /// while "payment bond" in this title means one that Civ. Code § 9550 requires.
    /// </summary>
    [Rule("Civ. Code § 9550(a)")]
    [Rule("Civ. Code § 9550(e)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9552")]
    [Rule("Pub. Contract Code § 7103")]
    private static BondRight WhichBond(FactsAsOf facts)
    {
        var work = facts.Job.Work;
        List<Reason>? why = null;
        var has = Verdict.Yes;
        var isState = work.StateContractAct == true || work.Body is PublicBody.State or PublicBody.GeneralServices
            or PublicBody.Transportation or PublicBody.StateUniversity;
        var noneKnown = work.PaymentBond is null && facts.Job.In(PartyCapacity.Surety).Count == 0;
        if (noneKnown)
        {
            var upTo = facts.Numbers.On(Number.NoBondUpTo, work.DirectContract?.On ?? facts.AsOf).Value;
            has = Verdict.Open;
            why = [work.DirectContract?.Price is { } price && price <= upTo
                ? Reason.Of("Civ. Code § 9550(a)", $"The file names no payment bond, and the direct contract "
                    + $"of {price} is not above {upTo}, so none is required. There may be one all the same.")
                : Reason.Of("Civ. Code § 9550(a)", $"The file names no payment bond. One is required where the direct contract is "
                    + $"above {upTo}; ask the public entity for a copy. Where a required bond was not given, the entity may not pay the "
                    + $"contractor, and the claim is paid through the stop payment notice (Civ. Code § 9552).")];
        }

        if (isState)
        {
            (why ??= []).Add(Reason.Of("Civ. Code § 9550(e)", $"The bond of a State entity is given under Pub. Contract Code § 7103, which "
                + $"sets no notice and no time, and in this title \"payment bond\" means one that Civ. Code § 9550 requires "
                + $"(Civ. Code § 8030(b)). Plan on the same days; by the letter nothing is lost by them."));
        }

        return why is null ? Whole : new BondRight(has, why, noneKnown ? [AskBond] : [], isState);
    }

    private static readonly Question AskPrincipal =
        new($"Whose bond is it: the owner's, a direct contractor's or a subcontractor's? Its principal must be given the "
            + $"notice.{HeadField.WorkPaymentBondPrincipal:aside}");

    private static readonly Question AskHirer =
        new($"Who hired the claimant? If it was a contractor and not the owner or public entity, the bond answers for its "
            + $"work.{HeadField.ClaimantHiredBy:aside}");

    private static readonly Question AskBond =
        new($"Is there a payment bond? Ask the public entity for a copy.{HeadField.WorkPaymentBond:aside}");
}
