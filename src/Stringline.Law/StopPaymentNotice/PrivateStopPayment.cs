using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The stop payment notice on private work, to the owner and to a construction lender (Civ. Code §§ 8500-8560).</summary>
public static class PrivateStopPayment
{
    private const string SameTime = "Civ. Code § 8508(b)";

    /// <summary>All findings of the remedy.</summary>
    public static IReadOnlyList<Finding> Findings(
        FactsAsOf facts, Reach reach, Outcome notice, LastDay lastDay, Amounts amounts, OpenDays calendar)
    {
        if (NothingCommenced(facts) is { } none)
            return [none];

        var time = new TimeOfGiving(lastDay.Readings, lastDay.EndKnown, lastDay.EndFirm);
        var owner = OwnersRow.Of(facts, reach, notice, time, calendar);
        var lenders = LendersRows.Of(facts, reach, notice, time, calendar);
        var last = LastDayToGive(facts, owner, lenders, time, calendar);
        List<HolderServed> served = [];
        if (owner.Holds)
            served.Add(owner.Served);
        foreach (var lender in lenders)
            served.Add(lender.Served);
        var action = StopPaymentAction.Of(facts, served, last, time, StopPaymentLaw.Private, calendar);
        var held = AmountHeld.Of(facts, reach, amounts, served, last, action.LastDay?.Standing, time, StopPaymentLaw.Private);
        var findings = new List<Finding>(12) { last.Finding(StopPaymentLaw.ToGiveId, StopPaymentLaw.ToGiveTitle), owner.Finding };
        foreach (var lender in lenders)
            findings.Add(lender.Finding);
        findings.Add(held.Finding);
        findings.AddRange(action.Findings(facts, StopPaymentLaw.Private, calendar));
        findings.AddRange(HoldersAnswers.Findings(facts, owner, lenders, time, calendar));
        return findings;
    }

    /// <summary>
    /// It is given by one with a lien right under Chapter 4; a design professional whose work never commenced has the right of Chapter 3
    /// only.
    /// </summary>
    [Rule("Civ. Code § 8520(a)")]
    [Rule("Civ. Code § 8530")]
    private static Finding? NothingCommenced(FactsAsOf facts)
    {
        if (facts.Job.Claimant.Role != ClaimantRole.DesignProfessional || facts.Job.Work.Commenced is not null
            || facts.All<WorkWillNotCommence>() is not { Count: > 0 } known)
            return null;
        return Row(StopPaymentLaw.ToGiveId, StopPaymentLaw.ToGiveTitle, Standing.Lost,
            () => [Reason.Of("Civ. Code § 8520(a)", $"A stop payment notice is given by one with a lien right under Chapter 4 (also Civ. "
                + $"Code § 8530). While nothing has commenced at the site a design professional has the lien of Civ. Code § 8302 only, and "
                + $"no stop payment notice; should the work commence, it has.", known)]);
    }

    /// <summary>It is given before the claimant's own time to record a claim of lien ends; it may be given before work ceases.</summary>
    [Rule("Civ. Code § 8508(b)")]
    private static Outcome LastDayToGive(FactsAsOf facts, HolderRow owner, IReadOnlyList<HolderRow> lenders, TimeOfGiving time,
        OpenDays calendar)
    {
        var best = owner.ToGive;
        foreach (var lender in lenders)
            best = Better(best, lender.ToGive);
        return new Outcome(Deadline.Of(best, time.Readings, calendar, endKnown: time.EndKnown), new Words(Why));

        List<Reason> Why()
        {
            var why = new List<Reason> { WithTheLien };
            why.AddRange(GivenReasons.NotAtAll(facts, [owner, .. lenders], StopPaymentLaw.Private));
            why.AddRange(GivenReasons.Given(facts, owner, StopPaymentLaw.Private));
            foreach (var lender in lenders)
                why.AddRange(GivenReasons.Given(facts, lender, StopPaymentLaw.Private));
            return why;
        }
    }

    // What is done for one holder is kept, though another may still be served: that one's own row says so.
    private static Standing Better(Standing a, Standing b) => Rank(a) < Rank(b) ? a : b;

    // A place in a list would make of one that is not in it the best of all.
    private static int Rank(Standing standing) => standing switch
    {
        Standing.Kept or Standing.Done => 0,
        Standing.Open or Standing.Narrowed => 1,
        Standing.InDoubt => 2,
        Standing.NotYet => 3,
        Standing.Lost => 4,
        _ => throw new InvalidOperationException($"No such standing: {standing}."),
    };

    private static readonly Reason WithTheLien =
        Reason.Of(SameTime, $"A stop payment notice is given before the claimant's time to record a claim of lien ends, on the same "
            + $"readings{new FindingId("claim-of-lien.last-day"):see}; it need not wait until work has ceased.");

    /// <summary>
    /// The finding of the row in which giving it to a party stands, such as <c>stop-payment-notice.owner</c>; null for one who holds
    /// nothing.
    /// </summary>
    public static string? RowOf(JobFile job, Party party)
    {
        if (OwnersRow.ReachesOwner(party.Capacity))
            return OwnersRow.Id;
        var lenders = job.In(PartyCapacity.ConstructionLender);
        for (var i = 0; i < lenders.Count; i++)
        {
            if (lenders[i].Id == party.Id)
                return LendersRows.IdOf(i);
        }

        return null;
    }

    internal static Finding Row(string id, string title, Standing standing, Func<IReadOnlyList<Reason>> explain) => new()
    {
        Id = id,
        Title = title,
        Standing = standing,
        Explain = explain,
    };
}

/// <summary>The row of one holder.</summary>
/// <param name="Served">What was given to it.</param>
/// <param name="Row">Where it stands, by which days and why.</param>
/// <param name="ToGive">Where giving it stands, for the day by which it is given.</param>
/// <param name="Holds">Whether this claimant may make it hold money.</param>
internal sealed record HolderRow(HolderServed Served, Outcome Row, Standing ToGive, bool Holds)
{
    /// <summary>What of the claim its notice reaches, dollars and cents, where that is less than toward the owner.</summary>
    public decimal? Amount { get; init; }

    /// <summary>The finding.</summary>
    public Finding Finding => Row.Finding(Served.Holder.Id, $"Stop payment notice to the {Served.Holder.Words}", Amount);
}
