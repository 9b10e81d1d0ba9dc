using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The stop payment notice on private work (Civ. Code §§ 8500-8550): to the owner or its architect, not from a direct contractor; to the
/// lender; after the preliminary notice and before the time to record a claim ends; then an action after ten days and within 90 days of
/// that end.
/// </summary>
internal static class PrivateStopPaymentReading
{
    private enum Holder
    {
        Owner,
        Lender,
    }

    public static Answer ToOwner(World w) => To(w, Holder.Owner);

    public static Answer ToLender(World w) => w.Matter.In(PartyCapacity.ConstructionLender).Count == 0
        ? new Answer(May.Lost)
        : HasLaterLender(w) ? Answer.Free : To(w, Holder.Lender);

    // What reaches a lender who came after the work began is not read a second time: Kodiak excuses the lien, § 8210 sets no days.
    internal static bool HasLaterLender(World w) =>
        w.Matter.In(PartyCapacity.ConstructionLender).Any(l => l.KnownSince > FirstAndLast.First(w));

    private static Answer To(World w, Holder holder)
    {
        if (w.Matter.Work.Length == 0)
            return Answer.Free;
        if (ClaimReading.IsDead(w) || ClaimReading.HasNoAuthority(w))
            return Answer.Lost;
        if (NoLienYet(w) is { } none)
            return none;
        if (holder == Holder.Owner && w.Matter.IsDirectContractor)
        {
            // § 8520(a); but subdivision (b) lets the owner demand one of anybody with a lien right.
            return w.Matter.Of<StopPaymentDemanded>().Length > 0 ? new Answer(May.Lost) : Answer.Lost;
        }

        var complete = PrivateCompletion.Of(w);

        if (complete.LastDay is { } ends && w.IsOver(ends, "time to record") && Given(w, holder, complete) is null)
            return Answer.Lost;

        // A lender who came later is excused for the lien; whether for a notice to that very lender is not settled (§§ 8200(a), 8210).
        if (holder == Holder.Lender && PreliminaryNoticeReading.Of(w).LenderMayBeExcused && !w.Either("the later lender need not be told"))
            return Answer.Doubt;
        if (Given(w, holder, complete) is not null)
            return Answer.Kept;
        if (holder == Holder.Lender && LenderNotTold(w))
            return PreliminaryNoticeReading.MayReach(w, w.AsOf) ? new Answer(May.Lost | May.Open) : new Answer(May.Lost);
        return complete.LastDay is { } last && w.IsOver(last, "time to record") ? Answer.Lost : Answer.Open(complete.LastDay);
    }

    // A designer whose work never commenced has the right of Chapter 3, and the stop payment notice asks for one of Chapter 4
    // (§§ 8520(a), 8530).
    private static Answer? NoLienYet(World w)
    {
        if (w.Matter.Role != ClaimantRole.DesignProfessional || w.Job.Work.Commenced <= w.AsOf || w.Matter.Of<Completed>().Length > 0)
            return null;
        if (w.Job.Work.Commenced is not null)
            return new Answer(May.Lost | May.Open);
        return w.Matter.Of<WorkWillNotCommence>().Length > 0 ? new Answer(May.Lost) : null;
    }

    private static bool LenderNotTold(World w)
    {
        var given = PreliminaryNoticeReading.Of(w);
        return !PreliminaryNoticeReading.CommencementUnknown(w) && given.Due && given.Lender is not null
            && (given.LenderDay is null || LenderToldOfNothing(w))
            && PreliminaryNoticeReading.LastDay(w) is { } last && w.IsOver(last, "time for the notice");
    }

    // The day of the first good notice to that holder.
    private static LocalDate? Given(World w, Holder holder, PrivateCompletion.Completion complete, bool late = false)
    {
        LocalDate? first = null;
        foreach (var paper in w.Matter.Of<StopPaymentGiven>())
        {
            if (Recipient(w, paper, holder) is not { } to || Paper.Given(w, paper, to) is not { } day)
                continue;
            // § 8520(a) gives it to one with a lien right under Chapter 4; a designer has none before the work commences (§ 8308(a)).
            if (w.Matter.Role == ClaimantRole.DesignProfessional && w.Job.Work.Commenced > day)
                continue;
            if (!late && complete.LastDay is { } last && !w.InTime(day, last, "stop payment notice in time", paper.Index))
                continue;
            if (!IsAfterNotice(w, holder, day, paper.Index) || IsReleased(w, paper, day)
                || (holder == Holder.Lender && LenderToldOfNothing(w)))
                continue;
            if (holder == Holder.Lender && paper is { Bonded: true, BondAmount: { } bond, Amount: { } amount }
                && bond * 100 < amount * 125 && !w.Either("the bond is enough", paper.Index))
                continue;
            first = World.Earlier(first, day);
        }

        return first;
    }

    // § 8204(a): a notice to the lender that came late covers the work of the 20 days before it and no other.
    private static bool LenderToldOfNothing(World w)
    {
        var given = PreliminaryNoticeReading.Of(w);
        return given is { Due: true, Lender: not null, LenderDay: { } told } && !PreliminaryNoticeReading.CommencementUnknown(w)
            && PreliminaryNoticeReading.LastDay(w) is { } last && !PreliminaryNoticeReading.InTime(w, told, last)
            && !PreliminaryNoticeReading.MayReach(w, told);
    }

    private static Party? Recipient(World w, StopPaymentGiven paper, Holder holder)
    {
        foreach (var id in paper.To)
        {
            var party = w.Job.Party(id);
            if (holder == Holder.Lender
                ? party?.Capacity == PartyCapacity.ConstructionLender : party?.Capacity is PartyCapacity.Owner or PartyCapacity.Architect)
                return party;
            if (holder == Holder.Owner && party?.Capacity is PartyCapacity.OwnersAgent or PartyCapacity.Association
                && w.Either("the agent stands for the owner", paper.Index))
                return party;
        }

        return null;
    }

    // §§ 8200(a), 8508(a): preliminary notice to the extent required, before the stop payment notice.
    private static bool IsAfterNotice(World w, Holder holder, LocalDate day, int index)
    {
        var given = PreliminaryNoticeReading.Of(w);
        if (!given.Due)
            return true;
        if (holder == Holder.Lender && given.Lender is not null && !(given.LenderDay <= day))
            return false;
        if (given.AllTold is not { } told)
            return (!given.ToOwnerAndContractor || given.Day is { } some && some <= day)
                && w.Either("a missed recipient does no harm", index);
        return World.Before(told, day)
            || (given.Day is { } others && others <= day && w.Either("a late recipient does no harm", index));
    }

    public static bool IsReleased(World w, StopPaymentGiven paper, LocalDate day) =>
        w.Matter.Of<StopPaymentReleased>().Any(r => r.Amount is null && w.On(r) >= day && (r.Of is null || r.Of == paper.Id));

    /// <summary>The row for both holders together: kept only if one of them holds, lost only if neither can be made to hold.</summary>
    public static Answer LastDay(World w)
    {
        if (w.Matter.Work.Length == 0)
            return Answer.Free;
        var owner = w.Matter.In(PartyCapacity.Owner).Count == 0 ? Answer.Free : ToOwner(w);
        if (w.Matter.In(PartyCapacity.ConstructionLender).Count == 0)
            return owner;
        var lender = ToLender(w);
        if (owner.May == May.Lost)
            return lender;
        return lender.May == May.Lost ? owner : Both(owner, lender);
    }

    private static Answer Both(Answer owner, Answer lender)
    {
        if (owner.May == May.None && lender.May == May.None)
            return Answer.Doubt;
        return new Answer((owner.May | lender.May) & ~May.Lost, World.Earlier(owner.Last, lender.Last));
    }

    public static Answer Action(World w)
    {
        if (w.Matter.Work.Length == 0 || w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<StopPaymentReleased>().Length > 0)
            return Answer.Free;
        if (ClaimReading.IsDead(w) || ClaimReading.HasNoAuthority(w))
            return Answer.Lost;
        if (NoLienYet(w) is { } none)
            return none;
        if (HasLaterLender(w))
            return Answer.Free;
        var complete = PrivateCompletion.Of(w);
        var owner = w.Matter.IsSurelyLost(ToOwner) ? null : w.AtBest(x => Given(x, Holder.Owner, complete, late: true));
        var lender = w.Matter.IsSurelyLost(ToLender) ? null : w.AtBest(x => Given(x, Holder.Lender, complete, late: true));
        var given = World.Earlier(owner, lender);
        var over = complete.LastDay is { } end && w.IsOver(end, "time to record");
        if (given is null && over)
            return Answer.Lost;
        if (given is null && w.Matter.IsDirectContractor && w.Matter.In(PartyCapacity.ConstructionLender).Count == 0)
            return Answer.Lost;
        if (w.Matter.IsSurelyLost(LastDay))
            return given is null && !over ? new Answer(May.Lost | May.Open) : Answer.Lost;
        return StopPaymentSuit.Finding(w, given, World.Later(owner, lender), complete.LastDay?.PlusDays(90));
    }
}
