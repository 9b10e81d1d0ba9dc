using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.ClaimOfLien;

/// <summary>
/// A direct contract that the owner filed, and the direct contractor's payment bond for half its price that was recorded, both before the work
/// commenced (Civ. Code § 8600): the court then restricts the liens, where equitable, to what the owner still owes the direct contractor.
/// </summary>
internal static class BondBeforeWork
{
    private const string Section = "Civ. Code § 8600(b)";

    /// <summary>
    /// Whether the conditions are there; no where one surely is not. A direct contractor's own lien is for no more than the owner owes it. Good
    /// faith is not tested.
    /// </summary>
    [Rule("Civ. Code § 8600(a)")]
    internal static Verdict Of(JobFile job)
    {
        var work = job.Work;
        if (work.PaymentBond is not { Recorded: { } recorded } bond || job.Claimant.Role == ClaimantRole.DirectContractor)
            return Verdict.No;
        if (bond.Principal is { } principal && job.Party(principal) is { Capacity: not PartyCapacity.DirectContractor })
            return Verdict.No;
        var contract = work.DirectContract;
        if (recorded >= work.Commenced || contract?.Filed >= work.Commenced || bond.Amount < contract?.Price / 2)
            return Verdict.No;
        return work.Commenced is not null && contract is { Filed: not null, Price: not null } && bond.Amount is not null ? Verdict.Yes : Verdict.Open;
    }

    /// <summary>What it does to the lien; null where it does nothing.</summary>
    [Rule(Section)]
    internal static Reason? Why(JobFile job) => Of(job) switch
    {
        Verdict.No => null,
        Verdict.Yes => Reason.Of(Section, $"The direct contract was filed, and a payment bond for half its price or more recorded on {job.Work.PaymentBond!.Recorded!.Value}, before the work commenced. The court may restrict all liens to what the owner still owes the direct contractor, where that is equitable, and gives judgment for the rest against the contractor and the surety: claim on the bond as well."),
        Verdict.Open => Reason.Of(Section, $"A payment bond was recorded on {job.Work.PaymentBond!.Recorded!.Value}. If that was before the work commenced, the direct contract was filed before it too and the bond is for half its price at least, the court may restrict all liens to what the owner still owes the direct contractor: claim on the bond as well."),
        var other => throw new InvalidOperationException($"No such verdict: {other}."),
    };

    /// <summary>Adds what would settle it.</summary>
    internal static void AddQuestions(List<Question> questions, JobFile job)
    {
        if (Of(job) != Verdict.Open)
            return;
        if (job.Work.Commenced is null)
            questions.Add(new Question("On which day did the work commence at the site? A payment bond recorded before it may restrict the liens. (work.commenced)"));
        if (job.Work.DirectContract is not { Filed: not null, Price: not null } || job.Work.PaymentBond!.Amount is null)
            questions.Add(new Question("Was the direct contract filed with the county recorder before the work commenced, what is its price, and what is the amount of the bond? (work.directContract.filed, work.directContract.price, work.paymentBond.amount)"));
    }
}
