using Stringline.Law.Enforcement;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.StopPaymentNotice;

/// <summary>Whether a stop payment notice was given: to the right person, in a good manner, after what must come first.</summary>
internal static class ServingHolders
{
    /// <summary>What was given to a holder, and where that leaves it.</summary>
    public static HolderServed Of(FactsAsOf facts, Holder holder, TimeOfGiving time, OpenDays calendar)
    {
        List<GivenPaper>? services = null;
        foreach (var paper in facts.All<StopPaymentGiven>())
        {
            if (holder.IsReachedBy(paper.To))
                (services ??= []).Add(Of(facts, holder, paper, calendar));
        }

        return new HolderServed(holder, services ?? (IReadOnlyList<GivenPaper>)[], StandingOf(facts, services, time));
    }

    private static Standing StandingOf(FactsAsOf facts, List<GivenPaper>? services, TimeOfGiving time)
    {
        if (!facts.HasFurnished)
            return Standing.NotYet;
        var best = time.Readings.Count == 0 ? Standing.Open : Deadline.StandingOf(facts.AsOf, time.Readings, null, time.EndFirm);
        foreach (var service in services ?? (IReadOnlyList<GivenPaper>)[])
        {
            if (service.Counts == Verdict.No)
                continue;
            var standing = service.On is not { } on ? Standing.InDoubt
                : time.Readings.Count == 0 ? Standing.Kept
                : Deadline.StandingOf(facts.AsOf, time.Readings, on, time.EndFirm);
            if (standing == Standing.Kept && service.Counts == Verdict.Yes)
                return Standing.Kept;
            if (standing is Standing.Kept or Standing.InDoubt)
                best = Standing.InDoubt;
        }

        return best;
    }

    private static GivenPaper Of(FactsAsOf facts, Holder holder, StopPaymentGiven paper, OpenDays calendar)
    {
        var on = Giving.CompleteOn(facts.Numbers, paper.On, paper.Manner, paper.Mailed);
        return new GivenPaper(paper, on, FlawOf(facts, holder, paper, on, calendar));
    }

    [Rule("Civ. Code § 8502(a)")]
    [Rule("Civ. Code § 8506(c)")]
    [Rule("Civ. Code § 8508(a)")]
    [Rule("Civ. Code § 9300(c)")]
    [Rule("Civ. Code § 9352(a)")]
    [Rule("Civ. Code § 9354")]
    private static Flaw FlawOf(FactsAsOf facts, Holder holder, StopPaymentGiven paper, DaySpan? on, OpenDays calendar)
    {
        var released = StopPaymentReleases.IsReleased(facts, paper);
        if (released == Verdict.Yes)
            return Flaw.Released;
        if (paper.Manner is { } manner && !Giving.IsGood(manner))
            return Flaw.Manner;
        var tried = Tried(facts, holder, paper);
        if (tried == Verdict.No)
            return Flaw.NotTried;
        if (holder.NoticeIsDue && holder.EssentiallyNoticed is null && holder.Noticed is null)
            return WithoutNoticeBefore(holder);
        if (on is not { } given)
            return Flaw.UnknownDay;
        if (holder.NoticeIsDue && OrderOf(holder, given) is not Flaw.None and var order)
            return order;
        if (IsOnlyToAgent(facts, holder, paper))
            return Flaw.Agent;
        if (IsBeforeCommencement(facts, given))
            return Flaw.BeforeCommencement;
        if (released == Verdict.Open)
            return Flaw.MaybeReleased;
        if (paper.Lacks is not null)
            return Flaw.Lacks;
        if (tried == Verdict.Open)
            return Flaw.LeftAndMailed;
        return holder.IsLender && paper.Bonded ? BondFlaw(facts, holder, paper, given, calendar) : Flaw.None;
    }

    /// <summary>
    /// The section names the owner and its architect. An agent stands for the owner in what is within its authority, the association of a
    /// common interest development in any case for the common area.
    /// </summary>
    [Rule("Civ. Code § 8506(a)")]
    [Rule("Civ. Code § 8066")]
    [Rule("Civ. Code § 8119")]
    private static bool IsOnlyToAgent(FactsAsOf facts, Holder holder, StopPaymentGiven paper)
    {
        foreach (var party in holder.Through)
        {
            var isAgent = party.Capacity == PartyCapacity.OwnersAgent
                || (party.Capacity == PartyCapacity.Association && facts.Job.Work.CommonInterest != true);
            if (!isAgent && paper.To.Contains(party.Id))
                return false;
        }

        return true;
    }

    /// <summary>
    /// A design professional has no lien right under Chapter 4, and so no stop payment notice, before the work commences.
    /// </summary>
    [Rule("Civ. Code § 8520(a)", Sure = Sure.OurReading)]
    private static bool IsBeforeCommencement(FactsAsOf facts, DaySpan given) => facts.Job.Work.Kind == WorkKind.Private
        && facts.Job.Claimant.Role == ClaimantRole.DesignProfessional && given.Earliest < facts.Job.Work.Commenced;

    /// <summary>
    /// Left and mailed, it is good toward a natural person only after tries to deliver it by hand; it is enough that it is good toward one
    /// of those it went to.
    /// </summary>
    [Rule("Civ. Code § 8106", Sure = Sure.OurReading)]
    private static Verdict Tried(FactsAsOf facts, Holder holder, StopPaymentGiven paper)
    {
        if (paper.Manner != Manner.Substituted)
            return Verdict.Yes;
        var best = Verdict.No;
        foreach (var party in holder.Through)
        {
            if (!paper.To.Contains(party.Id))
                continue;
            switch (LeftAndMailed.IsGood(facts.Numbers, paper.On, paper.Tries, party))
            {
                case Verdict.Yes:
                    return Verdict.Yes;
                case Verdict.Open:
                    best = Verdict.Open;
                    break;
                default:
                    break;
            }
        }

        return best;
    }

    // Both may go on one day, the preliminary notice first: a file knows days, and no hours.
    private static Flaw OrderOf(Holder holder, DaySpan given)
    {
        if (holder.Noticed is { } noticed && noticed.Latest <= given.Earliest)
            return Flaw.None;
        var essential = holder.EssentiallyNoticed ?? holder.Noticed;
        return essential is not null && essential.Value.Earliest <= given.Latest ? Flaw.OrderInDoubt
            : WithoutNoticeBefore(holder);
    }

    private static Flaw WithoutNoticeBefore(Holder holder) =>
        holder.MayBeNoticed
        ? Flaw.OrderInDoubt : holder.OnlyOthersAreDue ? Flaw.OthersUntold : holder.MayBeExcused ? Flaw.MaybeExcused : Flaw.NoNoticeBefore;

    /// <summary>
    /// 125 percent of what the notice states; and where the lender objected to the sureties in time, another bond within ten days.
    /// </summary>
    [Rule("Civ. Code § 8532")]
    [Rule("Civ. Code § 8534")]
    private static Flaw BondFlaw(FactsAsOf facts, Holder holder, StopPaymentGiven paper, DaySpan given, OpenDays calendar)
    {
        if (paper is { BondAmount: { } bond, Amount: { } claim } && bond < AmountOfBond(facts, claim, given.Earliest))
            return Flaw.SmallBond;
        foreach (var objected in facts.All<BondObjected>())
        {
            if (Concerns(objected, holder) && LastDayForNewBond(facts, objected, given, calendar) is { } last
                && facts.AsOf > last && !(objected.NewBond <= last))
                return Flaw.BondNotReplaced;
        }

        return Flaw.None;
    }

    /// <summary>The amount of the bond of a notice for a claim, by the day on which it is given.</summary>
    [Rule("Civ. Code § 8532")]
    public static decimal AmountOfBond(FactsAsOf facts, decimal claim, LocalDate given) =>
        ReleaseBond.AmountFor(claim, facts.Numbers.On(Number.BondOfNotice, given));

    /// <summary>Whether an objection came from that lender.</summary>
    public static bool Concerns(BondObjected objected, Holder holder) =>
        objected.By is null || holder.Through.Any(p => p.Id == objected.By);

    /// <summary>The last day to bring another bond; null where the objection came too late, or before the notice.</summary>
    [Rule("Civ. Code § 8534")]
    public static LocalDate? LastDayForNewBond(FactsAsOf facts, BondObjected objected, DaySpan given, OpenDays calendar)
    {
        if (DaySpan.Of(objected.On) is not { } day || day.Latest < given.Earliest)
            return null;
        return day.Earliest > calendar.RollForwardOnAnyList(facts.Numbers.LastDay(Number.ObjectToSureties, given.Latest))
            ? null : facts.Numbers.LastDay(Number.ReplaceBond, day.Earliest);
    }
}
