using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The notice of credit, and the action after it (Civ. Code § 8460(b)).</summary>
internal static class CreditReading
{
    /// <summary>The credit recorded within 90 days after recording of the claim.</summary>
    public static Answer LastDay(World w)
    {
        if (IsElsewhere(w))
            return Answer.Free;
        if (ClaimReading.IsDead(w))
            return Answer.Lost;
        var claims = Claims(w);
        LocalDate? next = null;
        foreach (var r in claims)
        {
            var last = EnforcementReading.Ninety(w, r, w.On(r));
            if (EnforcementReading.IsSued(w, r, w.On(r)))
                return Answer.Free;
            foreach (var credit in w.Matter.Of<CreditRecorded>())
            {
                if (w.On(credit) >= w.On(r) && w.InTime(w.On(credit), last, "credit in time", credit.Index))
                    return Answer.Kept;
                if (w.On(credit) > last)
                    return Answer.Doubt;
            }

            if (!w.IsOver(last, "time to sue", r.Index))
                next = World.Earlier(next, last);
        }

        // After the 90 days a credit still counts while no good-faith buyer or lender came in between (§ 8460(b)(2)).
        return next is not null ? Answer.Open(next) : claims.Count > 0 ? new Answer(May.Lost) : Answer.Free;
    }

    /// <summary>The action: within 90 days after the credit ends, never later than one year after completion.</summary>
    public static Answer Enforcement(World w)
    {
        if (IsElsewhere(w))
            return Answer.Free;
        if (ClaimReading.IsDead(w))
            return Answer.Lost;
        // Of several claims one that is sued on in its own time keeps the right (Coast Central (1989) 209 Cal.App.3d 703).
        if (Claims(w).Exists(c => EnforcementReading.IsSued(w, c, w.On(c))))
            return Answer.Kept;
        var answer = Answer.Free;
        foreach (var credit in w.Matter.Of<CreditRecorded>())
        {
            var claims = Claims(w).FindAll(r => w.On(credit) >= w.On(r));
            if (claims.Count != 1 || w.Matter.Of<CreditRecorded>().Length > 1)
                return Answer.Free;
            var (claim, day) = (claims[0], w.On(claims[0]));
            if (EnforcementReading.IsSued(w, claim, day))
                return Answer.Kept;
            var last = EnforcementReading.LastDay(w, claim, day);
            answer = !w.IsOver(last, "time to sue after the credit") ? Answer.Open(last)
                : EnforcementReading.IsStayed(w, day, last) ? Answer.Doubt : Answer.Lost;
        }

        return answer;
    }

    private static List<ClaimRecorded> Claims(World w) =>
        [.. w.Matter.Of<ClaimRecorded>().Where(c => !ClaimReading.IsDesignLien(w, c) && !w.Matter.IsSurelyBad(c))];

    private static bool IsElsewhere(World w) =>
        ClaimReading.IsElsewhere(w) || w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<ReleaseBondRecorded>().Length > 0
        || w.Matter.Of<ReleaseRecorded>().Length > 0 || w.Matter.Of<StopPaymentDemanded>().Length > 0;
}
