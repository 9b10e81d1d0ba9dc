using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>The stop payment notice to the owner of a private work (Civ. Code §§ 8506(a), 8520, 8522).</summary>
internal static class OwnersRow
{
    /// <summary>The finding.</summary>
    public const string Id = "stop-payment-notice.owner";

    /// <summary>
    /// Whether one in that capacity is given it in the owner's place: the owner's architect; an agent, in what is within its authority; and
    /// the association, for the common area.
    /// </summary>
    [Rule("Civ. Code § 8506(a)")]
    [Rule("Civ. Code § 8066")]
    [Rule("Civ. Code § 8119")]
    public static bool ReachesOwner(PartyCapacity capacity) =>
        capacity is PartyCapacity.Owner or PartyCapacity.Architect or PartyCapacity.OwnersAgent or PartyCapacity.Association;

    /// <summary>The row: everyone with a lien right but a direct contractor.</summary>
    [Rule("Civ. Code § 8520(a)")]
    [Rule("Civ. Code § 8522")]
    [Rule("Civ. Code § 8508(a)")]
    public static HolderRow Of(FactsAsOf facts, Reach reach, Outcome notice, TimeOfGiving time, OpenDays calendar)
    {
        var owners = new List<Party>(1);
        for (var i = 0; i < facts.Job.Parties.Count; i++)
        {
            if (ReachesOwner(facts.Job.Parties[i].Capacity))
                owners.Add(facts.Job.Parties[i]);
        }

        var holder = new Holder(Id, "owner", owners)
        {
            NoticeIsDue = reach.Kind != ReachKind.NoneDue,
            MayBeNoticed = reach.MayHaveBeenGiven,
            Noticed = reach.Kind == ReachKind.NotGiven ? null : reach.Given,
            OnlyOthersAreDue = facts.HiredByOwner,
            EssentiallyNoticed = reach.Kind == ReachKind.NotGiven ? null
                : facts.HiredByOwner ? reach.Given
                : Giving.FirstGiven(facts.Numbers, facts.PreliminaryNotices, facts.Job.In(PartyCapacity.Owner), out _),
        };
        return facts.Job.Claimant.Role == ClaimantRole.DirectContractor
            ? OfDirectContractor(facts, holder, time, calendar)
            : Of(facts, reach, notice, holder, time, calendar);
    }

    private static HolderRow Of(FactsAsOf facts, Reach reach, Outcome notice, Holder holder, TimeOfGiving time, OpenDays calendar)
    {
        var served = ServingHolders.Of(facts, holder, time, calendar);
        var (standing, toGive) = (served.Standing, reach.Kind) switch
        {
            (Standing.Lost, _) => (Standing.Lost, Standing.Lost),
            (var own, ReachKind.NoneDue) => (own, own),
            (var own, ReachKind.Whole) when reach.GivenToAll => (own, own),
            (Standing.NotYet, ReachKind.Whole) => (Standing.NotYet, Standing.NotYet),
            (_, ReachKind.Whole) => (Standing.InDoubt, Standing.InDoubt),
            // One was given before the preliminary notice, which may still be given.
            (Standing.InDoubt, ReachKind.Late or ReachKind.NotGiven) when notice.Standing == Standing.Open =>
                (Standing.InDoubt, Standing.InDoubt),
            (var own, ReachKind.Late or ReachKind.NotGiven) => (notice.Standing, WithNotice(own, notice.Standing)),
            _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
        };
        var row = new Outcome(Deadline.Of(standing, time.Readings, calendar, endKnown: time.EndKnown), new Words(Why, Ask));
        return new HolderRow(served, row, toGive, Holds: true);

        List<Reason> Why()
        {
            var why = new List<Reason> { OwnerWithholds };
            why.AddRange(GivenReasons.Of(facts, served, StopPaymentLaw.Private));
            if (facts.Job.Work.PaymentBond is { Recorded: { } recorded })
                why.Add(MayDecline(facts, recorded, served, time));
            why.Add(OwnerDemands);
            if (reach.Kind == ReachKind.NotGiven)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"It is valid only with the preliminary notice, which the file does not show: "
                    + $"give that first.", [.. notice.Why]));
            else if (reach.Missing.Count > 0)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"It is valid only with preliminary notice to the extent required, and none "
                    + $"reached the {string.Join(", the ", reach.Missing.Select(m => m.Words))}. Whether that undoes what the owner holds "
                    + $"is open, as with the lien.", [.. notice.Why]));
            else if (!reach.GivenToAll)
                why.Add(Reason.Of("Civ. Code § 8508(a)", $"It is valid only with preliminary notice to the extent required, and whether "
                    + $"that was given to all, in time and form, is in doubt.", [.. notice.Why]));
            return why;
        }

        List<Question> Ask() => GivenReasons.Questions(facts, served);
    }

    private static Standing WithNotice(Standing own, Standing notice) => notice switch
    {
        Standing.Lost => Standing.Lost,
        Standing.InDoubt => Standing.InDoubt,
        _ => own,
    };

    /// <summary>
    /// A direct contractor gives the owner none for the sake of the fund; one that the owner demands it gives for the sake of the lien.
    /// </summary>
    [Rule("Civ. Code § 8520(a)")]
    [Rule("Civ. Code § 8520(b)", Sure = Sure.OurReading)]
    private static HolderRow OfDirectContractor(FactsAsOf facts, Holder holder, TimeOfGiving time, OpenDays calendar)
    {
        var demanded = facts.All<StopPaymentDemanded>();
        var served = new HolderServed(holder, [], Standing.Lost);
        if (demanded.Count == 0)
        {
            return new HolderRow(served, new Outcome(Standing.Lost, new Words(
                static () => [Reason.Of("Civ. Code § 8520(a)", $"A direct contractor gives no stop payment notice to the owner.")])),
                    Standing.Lost, Holds: false);
        }

        return new HolderRow(ServingHolders.Of(facts, holder, time, calendar), new Outcome(Standing.InDoubt, new Words(() =>
        [
            Reason.Of("Civ. Code § 8520(a)", $"A direct contractor gives the owner no stop payment notice, and makes the owner hold "
                + $"nothing by one."),
            Reason.Of("Civ. Code § 8520(b)", $"But the owner demanded one, and the demand reaches every person that has a lien right: the "
                + $"words \"other than a direct contractor\" are not repeated. Give one in answer, for the lien's sake; that it had no "
                + $"such notice to give is the argument on the other side.", demanded),
        ])), Standing.Lost, Holds: false);
    }

    /// <summary>
    /// The owner may decline only for a bond recorded before the notice, and of the kind that is recorded before work commences.
    /// </summary>
    [Rule("Civ. Code § 8522(b)")]
    private static Reason MayDecline(FactsAsOf facts, LocalDate recorded, HolderServed served, TimeOfGiving time)
    {
        var given = served.Counting(time) is [{ On: { } on, Paper: var paper }, ..] ? (on, paper) : ((DaySpan, StopPaymentGiven)?)null;
        if (given is { } first && recorded > first.Item1.Latest)
            return Reason.NotApplied("Civ. Code § 8522(b)", $"The payment bond was recorded on {recorded}, after the notice was "
                + $"given {first.Item1}: the owner may not decline to withhold for its sake.", first.Item2);
        var days = facts.Numbers.On(Number.OwnerDeclines, given?.Item1.Latest ?? facts.AsOf);
        return Reason.Of("Civ. Code § 8522(b)", $"A payment bond was recorded on {recorded}. If it is one of Civ. Code § 8600 (filed with "
            + $"the direct contract before work commenced, for {BondBeforeWork.Part(facts)} the price at least), the owner may decline to "
            + $"withhold from a notice that comes after it, and then says so within {days} and sends the bond.");
    }

    private static readonly Reason OwnerWithholds =
        Reason.Of("Civ. Code § 8506(a)", $"Given to the owner or the owner's architect; the owner then withholds from the direct "
            + $"contractor enough to pay the claim as stated (Civ. Code § 8522(a)).");

    private static readonly Reason OwnerDemands =
        Reason.Of("Civ. Code § 8520(b)", $"If the owner demands a stop payment notice, give it at once: a claimant that does not give it "
            + $"loses the lien. The Code sets no number of days.");
}
