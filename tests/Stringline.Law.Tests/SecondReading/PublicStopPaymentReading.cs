using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The stop payment notice on public work (Civ. Code §§ 9100, 9300, 9350-9364, 9500-9510).</summary>
internal static class PublicStopPaymentReading
{
    public static Answer LastDay(World w)
    {
        if (w.Matter.Work.Length == 0)
            return Answer.Free;
        if (IsDead(w))
            return Answer.Lost;
        var complete = PublicCompletion.Of(w);
        if (Given(w, complete) is not null)
            return Answer.Kept;
        return complete.LastDay is { } last && w.IsOver(last, "time to give") ? Answer.Lost : Answer.Open(complete.LastDay);
    }

    // § 9100(b), § 9300(c).
    private static bool IsDead(World w) =>
        w.LicenseLost || w.Matter.IsDirectContractor || ClaimReading.HasNoAuthority(w)
        || PreliminaryNoticeReading.IsDead(w);

    private static LocalDate? Given(World w, PublicCompletion.Completion complete, bool late = false)
    {
        LocalDate? first = null;
        foreach (var paper in w.Matter.Of<StopPaymentGiven>())
        {
            var to = w.Matter.In(PartyCapacity.PublicEntity).FirstOrDefault(p => paper.To.Contains(p.Id));
            if (to is null || Paper.Given(w, paper, to with { NaturalPerson = false }) is not { } day)
                continue;
            if (!late && complete.LastDay is { } last && !w.InTime(day, last, "stop payment notice in time", paper.Index))
                continue;
            if (PrivateStopPaymentReading.IsReleased(w, paper, day))
                continue;
            var notice = PreliminaryNoticeReading.Of(w);
            if (notice.Due && (notice.Day is not { } told
                || !World.Before(told, day)))
                continue;
            first = World.Earlier(first, day);
        }

        return first;
    }

    public static Answer Action(World w)
    {
        if (w.Matter.Work.Length == 0 || w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<StopPaymentReleased>().Length > 0)
            return Answer.Free;
        if (IsDead(w))
            return Answer.Lost;
        var complete = PublicCompletion.Of(w);
        var given = w.AtBest(x => Given(x, complete, late: true));
        if (w.Matter.IsSurelyLost(LastDay))
            return Answer.Lost;
        if (given is null && complete.LastDay is { } end && w.IsOver(end, "time to give"))
            return Answer.Lost;
        return StopPaymentSuit.Finding(w, given, given, complete.LastDay?.PlusDays(90));
    }
}
