using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// A direct contract that the owner filed, and the direct contractor's payment bond for half its price that was recorded, both before the
/// work commenced (Civ. Code § 8600): the court then restricts the liens, where equitable, to what the owner still owes the direct
/// contractor.
/// </summary>
internal static class BondBeforeWork
{
    private const string Section = "Civ. Code § 8600(b)";

    /// <summary>
    /// Whether the conditions are there; no where one surely is not. A direct contractor's own lien is for no more than the owner owes it.
    /// Good faith is not tested.
    /// </summary>
    [Rule("Civ. Code § 8600(a)")]
    internal static Verdict Of(FactsAsOf facts)
    {
        var job = facts.Job;
        var work = job.Work;
        if (work.PaymentBond is not { Recorded: { } recorded } bond || job.Claimant.Role == ClaimantRole.DirectContractor)
            return Verdict.No;
        if (bond.Principal is { } principal && job.Party(principal) is { Capacity: not PartyCapacity.DirectContractor })
            return Verdict.No;
        var contract = work.DirectContract;
        if (recorded >= work.Commenced || contract?.Filed >= work.Commenced
            || bond.Amount < (contract?.Price is { } price ? Percent(facts, bond).PercentOf(price) : null))
            return Verdict.No;
        return work.Commenced is not null && contract is { Filed: not null, Price: not null } && bond.Amount is not null
            ? Verdict.Yes : Verdict.Open;
    }

    /// <summary>What it does to the lien; null where it does nothing.</summary>
    [Rule(Section)]
    internal static Reason? Why(FactsAsOf facts) => Of(facts) switch
    {
        Verdict.No => null,
        Verdict.Yes =>
            Reason.Of(Section, $"The direct contract was filed, and a payment bond for {Part(facts)} its price or more recorded "
                + $"on {facts.Job.Work.PaymentBond!.Recorded!.Value}, before the work commenced. The court may restrict all liens to what "
                + $"the owner still owes the direct contractor, where that is equitable, and gives judgment for the rest against the "
                + $"contractor and the surety: claim on the bond as well."),
        Verdict.Open =>
            Reason.Of(Section, $"A payment bond was recorded on {facts.Job.Work.PaymentBond!.Recorded!.Value}. If that was before the work "
                + $"commenced, the direct contract was filed before it too and the bond is for {Part(facts)} its price at least, the court "
                + $"may restrict all liens to what the owner still owes the direct contractor: claim on the bond as well."),
        var other => throw new InvalidOperationException($"No such verdict: {other}."),
    };

    /// <summary>How much of the price the bond is for, in words: <c>half</c>, <c>60 percent of</c>.</summary>
    internal static string Part(FactsAsOf facts)
    {
        var percent = Percent(facts, facts.Job.Work.PaymentBond);
        return percent.Value == Half ? "half" : percent.Text + " of";
    }

    // What the language, and no statute, calls half.
    private const decimal Half = 50m;

    private static NumberRow Percent(FactsAsOf facts, Facts.PaymentBond? bond) =>
        facts.Numbers.On(Number.BondBeforeWork, bond?.Recorded ?? facts.AsOf);

    /// <summary>Adds what would settle it.</summary>
    internal static void AddQuestions(List<Question> questions, FactsAsOf facts)
    {
        var job = facts.Job;
        if (Of(facts) != Verdict.Open)
            return;
        if (job.Work.Commenced is null)
            questions.Add(new Question($"On which day did the work commence at the site? A payment bond recorded before it may restrict "
                + $"the liens.{HeadField.WorkCommenced:aside}"));
        if (job.Work.DirectContract is not { Filed: not null, Price: not null } || job.Work.PaymentBond!.Amount is null)
            questions.Add(new Question($"Was the direct contract filed with the county recorder before the work commenced, what is its "
                + $"price, and what is the amount of the "
                + $"bond?{new IPointer[] { HeadField.WorkDirectContractFiled, HeadField.WorkDirectContractPrice,
                    HeadField.WorkPaymentBondAmount }:aside}"));
    }
}
