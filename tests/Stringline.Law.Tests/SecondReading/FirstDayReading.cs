using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The first days: to record a claim (Civ. Code §§ 8412, 8414, 8186), to sue on a stop payment notice (§§ 8550(a), 9502(a)) and on a
/// federal bond (40 U.S.C. § 3133(b)(1)).
/// </summary>
internal static class FirstDayReading
{
    public static Answer Claim(World w)
    {
        if (ClaimReading.IsElsewhere(w) || w.Matter.Of<ClaimRecorded>().Length > 0)
            return Answer.Free;
        // § 8200(a): no claim without the notice, once none can come.
        if (w.LicenseLost || PreliminaryNoticeReading.IsDead(w) || ClaimReading.HasNoAuthority(w)
            || w.Matter.IsSurelyLost(LienRightReading.Finding))
            return new Answer(May.Lost | May.Open);
        var complete = PrivateCompletion.Of(w);
        if (complete.DeemedCeased < w.AsOf)
            return Answer.Open();
        var ceased = FirstAndLast.Ceased(w) < w.AsOf;
        return new Answer(ceased ? May.Open : May.None);
    }

    public static Answer StopPaymentSuit(World w)
    {
        if (w.Matter.Kind == WorkKind.Private && PrivateStopPaymentReading.HasLaterLender(w))
            return Answer.Free;
        if (w.Matter.IsSurelyLost(w.Matter.Kind == WorkKind.Public ? PublicStopPaymentReading.LastDay : PrivateStopPaymentReading.LastDay))
            return new Answer(May.Lost | May.Open);
        LocalDate? first = null;
        foreach (var paper in w.Matter.Of<StopPaymentGiven>())
        {
            var told = paper.To.Select(w.Job.Party).FirstOrDefault(p => p?.Capacity is
                 PartyCapacity.Owner or PartyCapacity.ConstructionLender or PartyCapacity.PublicEntity or PartyCapacity.Architect
                 or PartyCapacity.OwnersAgent or PartyCapacity.Association);
            if (told is not null)
                first = World.Earlier(first, w.AtBest(x => Paper.Given(x, paper, told)));
        }

        return first is { } given && given.PlusDays(10) < w.AsOf ? Answer.Open() : Answer.Doubt;
    }

    public static Answer FederalSuit(World w)
    {
        if (FirstAndLast.Last(w) is not { } last)
            return Answer.Free;
        if (w.Matter.IsSurelyLost(FederalBondReading.Notice))
            return Answer.Lost;
        return last.PlusDays(90) < w.AsOf ? new Answer(May.Open) : new Answer(May.None);
    }
}
