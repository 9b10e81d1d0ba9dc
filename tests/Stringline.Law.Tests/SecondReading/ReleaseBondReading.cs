using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The bond that frees the land from a claim (Civ. Code § 8424): 125 percent, and six months to sue on it after notice.
/// </summary>
internal static class ReleaseBondReading
{
    public static Answer Action(World w)
    {
        var bonds = w.Matter.Of<ReleaseBondRecorded>();
        if (bonds.Length != 1 || w.Matter.Work.Length == 0 || w.Matter.Of<ActionEnded>().Length > 0
            || w.Matter.Of<ReleaseRecorded>().Length > 0)
            return Answer.Free;
        if (ClaimReading.IsDead(w))
            return Answer.Lost;
        var bond = bonds[0];
        var claims = w.Matter.Of<ClaimRecorded>();

        // § 8424(b): the bond is conditioned on a judgment on the lien, which a claim that is surely bad never gets.
        if (claims.Length > 0 && Array.TrueForAll(claims, w.Matter.IsSurelyBad))
            return Answer.Lost;
        var (kept, unsaid, doubtful) = (false, false, false);
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (action.SmallClaims || !Array.Exists(claims, c => w.On(c) <= w.On(action)))
                continue;
            var onBond = action.Enforces.Contains(ActionOn.ReleaseBond);
            if (!onBond && action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.Lien))
                continue;
            var inTime = bond.NoticeGiven is not { } told
                || w.InTime(w.On(action), PlainCalendar.SixMonthsAtLeast(told), "sued on the bond in time", action.Index);
            kept |= onBond && inTime;
            unsaid |= !onBond
                && (inTime || w.InTime(w.On(action), PlainCalendar.SixMonthsAtMost(bond.NoticeGiven!.Value), "sued by the calendar",
                    action.Index));
            doubtful |= !inTime
                && w.InTime(w.On(action), PlainCalendar.SixMonthsAtMost(bond.NoticeGiven!.Value), "sued by the calendar", action.Index);
        }

        if (kept)
            return new Answer(May.Kept);

        // An action on the lien before the bond may be carried on against it: said neither way here.
        if (unsaid || claims.Length == 0)
            return Answer.Free;
        if (doubtful)
            return Answer.Doubt;
        if (bond.NoticeGiven is not { } notice || notice > w.AsOf)
            return new Answer(May.Open);
        if (!w.IsOver(PlainCalendar.SixMonthsAtLeast(notice), "six months on the bond"))
            return Answer.Open(PlainCalendar.SixMonthsAtLeast(notice));
        return w.IsOver(PlainCalendar.SixMonthsAtMost(notice), "six months on the bond by the calendar") ? Answer.Lost : Answer.Doubt;
    }

    /// <summary>The bond itself: done only where it is at least 125 percent of the claim.</summary>
    public static Answer Amount(World w)
    {
        var bonds = w.Matter.Of<ReleaseBondRecorded>();
        if (w.Matter.Of<ReleaseRecorded>().Length > 0)
            return Answer.Free;
        if (bonds.Length == 0)
            return new Answer(May.Open | May.Lost);
        var claims = w.Matter.Of<ClaimRecorded>();
        if (bonds.Length > 1 || claims.Length != 1 || bonds[0].Amount is not { } amount || claims[0].Amount is not { } claimed)
            return Answer.Free;
        return amount * 100 >= claimed * 125 ? Answer.Free : Answer.Doubt;
    }
}
