using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>What the holders demand or answer on private work, and by when: each only where its facts are there.</summary>
internal static class HoldersAnswers
{
    /// <summary>Days by which to answer the owner's demand. The Code sets none: our target, no source.</summary>
    public const int TargetForDemand = 10;

    /// <summary>
    /// The findings <c>stop-payment-notice.owner-demand</c>, <c>stop-payment-notice.owner-answer</c> and
    /// <c>stop-payment-notice.new-bond</c>.
    /// </summary>
    public static IEnumerable<Finding> Findings(
        FactsAsOf facts, HolderRow owner, IReadOnlyList<HolderRow> lenders, TimeOfGiving time, OpenDays calendar)
    {
        if (facts.All<StopPaymentDemanded>() is { Count: > 0 } demands)
            yield return Demand(facts, demands, owner.Served, calendar);
        if (Answer(facts, owner, time, calendar) is { } answer)
            yield return answer;
        if (NewBond(facts, lenders, calendar) is { } bond)
            yield return bond;
    }

    /// <summary>
    /// Who is given the owner's demand and gives no stop payment notice forfeits the lien. No number of days is set, so nothing is lost by
    /// a day; after our target the lien is in doubt until the notice stands in the file.
    /// </summary>
    [Rule("Civ. Code § 8520(b)")]
    private static Finding Demand(FactsAsOf facts, IReadOnlyList<StopPaymentDemanded> demands, HolderServed owner, OpenDays calendar)
    {
        var readings = new List<Reading>();
        foreach (var demand in demands)
        {
            if (demand.On.Earliest is { } day)
                readings.Add(Deadline.Own($"our target: {NumberWords.Cardinal(TargetForDemand)} days after the owner's demand",
                    TimeLimit.LastDay(day, TargetForDemand), calendar));
        }

        var standing = readings.Count == 0 ? Standing.InDoubt : Deadline.StandingOf(facts.AsOf, readings, null, endFirm: false);
        foreach (var service in owner.Services)
        {
            // Given after our target it answers the demand, but whether at once enough is open.
            if (service.Counts == Verdict.Yes || service.Flaw is Flaw.NoNoticeBefore or Flaw.OthersUntold or Flaw.OrderInDoubt)
                standing = standing != Standing.Kept && readings.Count > 0 && service.On is { } on
                    ? Deadline.StandingOf(facts.AsOf, readings, on, endFirm: false) : standing;
        }

        return Deadline.Of(standing, readings, calendar)
            .Finding("stop-payment-notice.owner-demand", "Answer the owner's demand for a stop payment notice", () =>
        [
            Reason.Of("Civ. Code § 8520(b)", $"The owner demanded a stop payment notice. Who does not give one, bonded or not, forfeits "
                + $"the lien. The Code sets no number of days: give it at once; the day shown is our target.", demands),
            .. GivenReasons.Of(facts, owner, StopPaymentLaw.Private),
        ]);
    }

    /// <summary>The owner's last day to say that it relies on a bond; after it silence means that it must withhold.</summary>
    [Rule("Civ. Code § 8522(b)")]
    private static Finding? Answer(FactsAsOf facts, HolderRow owner, TimeOfGiving time, OpenDays calendar)
    {
        if (!owner.Holds || facts.Job.Work.PaymentBond is not { Recorded: { } recorded }
            || owner.Served.Counting(time) is not [{ On: { } given } first, ..]
            || recorded > given.Latest)
        {
            return null;
        }

        var days = facts.Numbers.On(Number.OwnerDeclines, given.Latest);
        var last = calendar.RollForwardOnAnyList(days.LastDay(given.Latest));
        List<Reading> readings = [new Reading($"{days.Text} after the owner received the notice", last)];
        return new Finding
        {
            Id = "stop-payment-notice.owner-answer",
            Title = "The owner says whether it relies on the payment bond",
            Standing = facts.AsOf <= last ? Standing.Open : Standing.Done,
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Explain = () =>
                [Reason.Of("Civ. Code § 8522(b)", $"An owner that does not withhold for the sake of a bond recorded before gives notice of "
                    + $"it, with a copy of the bond, within {days} after receiving the notice: by {last}. If it says nothing by then it "
                    + $"must withhold.", [first.Paper])],
        };
    }

    /// <summary>
    /// Another bond, by an admitted surety, within ten days after the lender's objection; else it may disregard the bonded notice.
    /// </summary>
    [Rule("Civ. Code § 8534")]
    private static Finding? NewBond(FactsAsOf facts, IReadOnlyList<HolderRow> lenders, OpenDays calendar)
    {
        var objections = facts.All<BondObjected>();
        return objections.Count == 0 ? null : NewBond(facts, objections, lenders, calendar);
    }

    private static Finding? NewBond(FactsAsOf facts, IReadOnlyList<BondObjected> objections, IReadOnlyList<HolderRow> lenders,
        OpenDays calendar)
    {
        var readings = new List<Reading>();
        DaySpan? brought = null;
        var undated = false;
        List<Reason> why = [];
        foreach (var objected in objections)
        {
            foreach (var lender in lenders)
            {
                if (!ServingHolders.Concerns(objected, lender.Served.Holder) || Bonded(lender.Served) is not { On: { } given } paper)
                    continue;
                if (objected.On.Earliest is null)
                {
                    undated = true;
                    why.Add(Reason.Of("Civ. Code § 8534", $"The lender objected to the sureties of the bond on a day that the file does "
                        + $"not give. The {facts.Numbers.On(Number.ReplaceBond, facts.AsOf).Spelled} for another bond run from it: bring "
                        + $"one at once.", [objected, paper.Paper]));
                    continue;
                }

                if (ServingHolders.LastDayForNewBond(facts, objected, given, calendar) is not { } last)
                {
                    why.Add(Reason.Of("Civ. Code § 8534", $"The lender's objection of {DaySpan.Of(objected.On)} came later "
                        + $"than {facts.Numbers.On(Number.ObjectToSureties, given.Latest)} after the bonded notice was given, or before "
                        + $"it: it asks for nothing.", [objected, paper.Paper]));
                    continue;
                }

                var toReplace = facts.Numbers.On(Number.ReplaceBond, objected.On.Earliest!.Value);
                readings.Add(Deadline.Own($"{toReplace.Spelled} after the lender's objection of {objected.On.Earliest!.Value:iso}", last,
                    calendar));
                brought = objected.NewBond is { } on ? new DaySpan(on, on) : null;
                why.Add(Reason.Of("Civ. Code § 8534", $"The lender objected to the sureties of the bond. Bring a bond of an admitted "
                    + $"surety insurer within {toReplace.Spelled}, by {last}; else it may disregard the bonded notice and release what it "
                    + $"held.", [objected, paper.Paper]));
            }
        }

        if (why.Count == 0)
            return null;
        return readings.Count == 0
            ? PrivateStopPayment.Row("stop-payment-notice.new-bond", "Another bond for the stop payment notice", undated
                ? Standing.InDoubt : Standing.Kept, () => why)
            : Deadline.Of(Deadline.StandingOf(facts.AsOf, readings, brought), readings, calendar)
                .Finding("stop-payment-notice.new-bond", "Another bond for the stop payment notice", why);
    }

    private static GivenPaper? Bonded(HolderServed lender)
    {
        foreach (var service in lender.Services)
        {
            if (service.Paper.Bonded)
                return service;
        }

        return null;
    }
}
