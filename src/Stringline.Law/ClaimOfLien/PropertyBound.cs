using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.ClaimOfLien;

/// <summary>What property a claim binds, and for how much of it it can be enforced (Civ. Code §§ 8434, 8440-8448, 8186, 8454).</summary>
public static class PropertyBound
{
    /// <summary>The finding <c>lien-right.property</c>.</summary>
    [Rule("Civ. Code § 8440")]
    [Rule("Civ. Code § 8442")]
    [Rule("Civ. Code § 8448")]
    [Rule("Civ. Code § 8446")]
    [Rule("Civ. Code § 8454")]
    [Rule("Civ. Code § 4615", Sure = Sure.FromMemory)]
    public static Finding Property(FactsAsOf facts, OpenDays calendar)
    {
        IReadOnlyList<Effect> landlord = facts.Job.Work.OrderedByTenant == true ? OnTheFee(facts, calendar) : [];
        return new Finding
        {
            Id = "lien-right.property",
            Title = "Property the lien reaches",
            Standing = MostForTheLandlord(landlord),
            Explain = () => WhyProperty(facts, landlord),
            Ask = () => AboutProperty(facts, landlord),
        };
    }

    private static List<Reason> WhyProperty(FactsAsOf facts, IReadOnlyList<Effect> landlord)
    {
        var work = facts.Job.Work;
        var why = new List<Reason> {
            Reason.Of("Civ. Code § 8440", $"The lien reaches the work of improvement, the land under it and the space needed to use it.") };
        if (work.OrderedByTenant == true)
            why.Add(Reason.Of("Civ. Code § 8442", $"A tenant contracted for the work: its leasehold is bound; the landlord's fee too if "
                + $"the work was done with the landlord's knowledge and no good notice of nonresponsibility was given."));
        foreach (var effect in landlord)
            why.Add(effect.Why);
        if (work.OrderedByTenant is null)
            why.Add(Reason.Of("Civ. Code § 8442(a)", $"Assumed: the owner in the file holds the fee and contracted for the work."));
        if (work.ResidentialStructures > 1)
            why.Add(Reason.Of("Civ. Code § 8448", $"Each of the {work.ResidentialStructures.Value} residential structures is a work of its "
                + $"own and completes alone; the completion in this file is taken to be that of the structure claimed on, and material "
                + $"that cannot be told apart is split under Civ. Code § 8446."));
        if (work.CommonInterest == true)
            why.Add(Reason.Of("Civ. Code § 4615", $"In a condominium or other common interest development an owner's unit is bound only "
                + $"for work that owner agreed to, or that the association authorized on common area; one owner may free a unit by paying "
                + $"its share. The association may be served (Civ. Code § 8119)."));
        if (work.SiteImprovement == true)
            why.Add(Reason.Of("Civ. Code § 8454", $"Site improvement under a direct contract of its own is a separate work of improvement; "
                + $"completion in this file is taken to be that of the site improvement."));
        if (work.SeveralDirectContracts == true)
            why.Add(Reason.Of("Civ. Code § 8186", $"With several direct contracts the owner may record a notice of completion for one of "
                + $"them; it shortens the time of those under that contract only. "
                + $"The {facts.Numbers.On(TimeToClaim.AfterCompletion(facts.Job.Claimant), facts.AsOf)} still run from completion of the "
                + $"whole work (our reading)."));
        return why;
    }

    private static List<Question> AboutProperty(FactsAsOf facts, IReadOnlyList<Effect> landlord)
    {
        var work = facts.Job.Work;
        var questions = new List<Question>();
        foreach (var effect in landlord)
        {
            if (effect.Ask is { } open)
                questions.Add(new Question(open));
        }

        if (work.OrderedByTenant is null)
            questions.Add(
                new Question($"Did a tenant or other holder of less than the fee contract for the "
                    + $"work?{HeadField.WorkOrderedByTenant:aside}"));
        var residential = work.Use is WorkUse.Residential or WorkUse.OwnerOccupiedOneToFour;
        if (residential && work.ResidentialStructures is null)
            questions.Add(
                new Question($"How many separate residential structures does the job have? Each completes "
                    + $"alone{HeadField.WorkResidentialStructures:aside}."));
        if (residential && work.CommonInterest is null)
            questions.Add(new Question($"Is it a condominium or other common interest development?{HeadField.WorkCommonInterest:aside}"));
        if (work.SeveralDirectContracts is null && facts.All<OwnerRecorded>().Count > 0)
            questions.Add(
                new Question($"Does the recorded notice speak of one direct contract "
                    + $"only?{new IPointer[] { OwnerKinds.OwnerRecorded.At("contractOf"), HeadField.WorkSeveralDirectContracts }:aside}"));
        return questions;
    }

    // What one notice of nonresponsibility does to the lien on the fee.
    private sealed record Effect(Standing Standing, Reason Why, Sentence? Ask = null);

    /// <summary>
    /// Good only if both posted and recorded within 10 days of knowledge; it does not shield an owner whose lease makes the tenant build
    /// (Howard S. Wright Construction v. Superior Court (2003) 106 Cal.App.4th 314).
    /// </summary>
    [Rule("Civ. Code § 8444")]
    private static List<Effect> OnTheFee(FactsAsOf facts, OpenDays calendar)
    {
        var effects = new List<Effect>();
        foreach (var notice in facts.All<NonresponsibilityRecorded>())
            effects.Add(WhatItDoes(facts.Numbers, notice, facts.Job.Work.Commenced, calendar));
        if (effects.Count == 0 || facts.Job.In(PartyCapacity.Owner).Any(o => o.KnewOfWork is not null))
            effects.Add(Knowledge(facts));
        return effects;
    }

    /// <summary>The fee is bound only for work done with the knowledge of its owner.</summary>
    [Rule("Civ. Code § 8442(b)")]
    private static Effect Knowledge(FactsAsOf facts)
    {
        Party? knew = null, ignorant = null, unsaid = null;
        foreach (var owner in facts.Job.In(PartyCapacity.Owner))
        {
            if (owner.KnewOfWork is not { } told)
                unsaid = owner;
            else if (told)
                knew = owner;
            else
                ignorant = owner;
        }

        // The section speaks of the interest of the person who knew: each owner's is bound, or not, for itself.
        return (knew, ignorant) switch
        {
            (not null, not null) =>
                new Effect(Standing.Narrowed,
                    Reason.Of("Civ. Code § 8442(b)", $"{ignorant.Name} did not know of the work, and its interest in the fee is not bound; "
                        + $"that of {knew.Name}, who knew of it, is: keep the proof of that knowledge.")),
            (not null, null) =>
                new Effect(Standing.Open,
                    Reason.Of("Civ. Code § 8442(b)", $"The work was done with the knowledge of the owner of the fee: it is bound; keep the "
                        + $"proof of that knowledge.")),
            (null, not null) when unsaid is not null =>
                new Effect(Standing.Narrowed,
                    Reason.Of("Civ. Code § 8442(b)", $"{ignorant.Name} did not know of the work, and its interest in the fee is not bound; "
                        + $"that of {unsaid.Name} is, if it knew of the work or ordered "
                        + $"it."), $"Did {unsaid.Name} know of the work? Its interest is judged for "
                        + $"itself.{HeadField.PartiesKnewOfWork:aside}"),
            (null, not null) =>
                new Effect(Standing.Narrowed,
                    Reason.Of("Civ. Code § 8442(b)", $"The owner of the fee did not know of the work: the fee is not bound, the leasehold "
                        + $"is.")),
            (null, null) =>
                new Effect(Standing.InDoubt, Reason.Of("Civ. Code § 8442(b)", $"The fee is bound only if its owner knew of the work."),
                    $"Did the landlord know of the work? Keep what shows it.{HeadField.PartiesKnewOfWork:aside}"),
        };
    }

    private static Standing MostForTheLandlord(IReadOnlyList<Effect> effects)
    {
        var best = Standing.Open;
        foreach (var effect in effects)
        {
            if (effect.Standing == Standing.Narrowed || best == Standing.Open)
                best = effect.Standing;
        }

        return best;
    }

    private static Effect WhatItDoes(NumberTable numbers, NonresponsibilityRecorded notice, LocalDate? commenced, OpenDays calendar)
    {
        if (DaySpan.Of(notice.On) is not { } recorded || notice.Knew is not { } knew || notice.Posted is not { } posted)
        {
            return new Effect(Standing.InDoubt,
                Reason.Of("Civ. Code § 8444", $"A notice of nonresponsibility was recorded; whether it was posted and recorded "
                    + $"within {numbers.On(Number.Nonresponsibility, notice.Knew ?? notice.On.Earliest
                        ?? LocalDate.MaxIsoValue)} of knowledge is open.", [notice]),
                $"When did the landlord learn of the work, and when was the notice posted?");
        }

        var first = commenced is { } began ? LocalDate.Min(began, knew) : knew;
        if (posted < first || recorded.Latest < first)
            return new Effect(Standing.Open,
                Reason.NotApplied("Civ. Code § 8444",
                    $"The notice of nonresponsibility was posted {posted} and recorded {recorded}, before any work was under way "
                        + $"on {first}: it must follow knowledge of actual work, so it has no effect (Hayward Lumber & Investment v. Ross "
                        + $"(1939) 32 Cal.App.2d 455).", notice));
        if (posted < commenced || recorded.Earliest < first || recorded.Earliest < commenced)
            return new Effect(Standing.InDoubt,
                Reason.Of("Civ. Code § 8444", $"The notice of nonresponsibility may have come before the work: talk of a project is no "
                    + $"knowledge of work (Jay Bailey Construction v. Berry Hotel (1963) 221 Cal.App.2d 135), and a notice before it has "
                    + $"no effect (Hayward Lumber & Investment v. Ross (1939) 32 Cal.App.2d 455).", [notice]));

        var last = calendar.RollForwardOnAnyList(numbers.LastDay(Number.Nonresponsibility, knew));
        if (posted > last || recorded.Earliest > last)
            return new Effect(Standing.Open,
                Reason.NotApplied("Civ. Code § 8444",
                    $"The notice of nonresponsibility was posted {posted} and recorded {recorded}, not both "
                        + $"by {last}: no effect.", notice));

        if (notice.Lacks is { } lacks)
            return new Effect(Standing.InDoubt,
                Reason.Of("Civ. Code § 8444", $"Posted and recorded in time; but the notice of nonresponsibility lacks {lacks}, which the "
                    + $"section asks: whether it frees the fee all the same is open.", [notice]));

        if (notice.LeaseRequiresWork != false)
        {
            return new Effect(Standing.InDoubt,
                Reason.Of("Civ. Code § 8444", $"Posted and recorded in time; but it does not shield an owner whose lease in effect makes "
                    + $"the tenant do the work (Howard S. Wright Construction v. Superior Court (2003) 106 Cal.App.4th 314).", [notice]),
                notice.LeaseRequiresWork is null ? (Sentence)$"Does the lease require the tenant to do this work?" : null);
        }

        return new Effect(Standing.Narrowed,
            Reason.Of("Civ. Code § 8444", $"A good notice of nonresponsibility was posted and recorded by {last}: the fee is not bound, "
                + $"the leasehold is.", [notice]));
    }

    /// <summary>
    /// The finding <c>claim-of-lien.enforceable</c>; null for others than contractors. A contractor enforces only what is due less the lien
    /// claims of those under its own contract; the recorded figure may
    /// be higher.
    /// </summary>
    [Rule("Civ. Code § 8434")]
    public static Finding? Enforceable(FactsAsOf facts, Waterfall demand)
    {
        if (facts.Job.Claimant.Role is not (ClaimantRole.DirectContractor or ClaimantRole.Subcontractor))
            return null;
        var lower = facts.All<LowerTierClaim>();
        var claims = Total.Of(lower, c => c.Amount);
        return new Finding
        {
            Id = "claim-of-lien.enforceable",
            Title = "Of the demand, enforceable net of lower tiers",
            Standing = Standing.Open,
            Amount = Math.Max(0, demand.Demand - claims),
            Why = [Reason.Of("Civ. Code § 8434", $"The demand of {demand.Demand} less lien claims of {claims} within the claimant's own "
                + $"contract.", [.. lower])],
            Questions = lower.Count == 0
                ? [new Question($"Has anyone under the claimant's own contract claimed a lien?{ClaimKinds.LowerTierClaim:aside}")] : [],
        };
    }
}
