using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The right to a mechanics lien as a whole: who, the license, the notice, the claim and the action together (Civ. Code §§ 8400-8460).
/// </summary>
internal static class LienRightReading
{
    public static Answer Finding(World w)
    {
        // §§ 8160, 9000: public and federal land bears no lien.
        if (w.Matter.Kind != WorkKind.Private)
            return Answer.Lost;
        if (ClaimReading.IsElsewhere(w) || w.Matter.Of<ActionEnded>().Length > 0
            || w.Matter.Of<ReleaseBondRecorded>().Length > 0)
            return Answer.Free;
        if (ClaimReading.IsDead(w) || PreliminaryNoticeReading.IsDead(w) || ClaimReading.HasNoAuthority(w))
            return Answer.Lost;
        var complete = PrivateCompletion.Of(w);
        var answer = OfClaims(w, complete);
        if (answer.May == May.Lost)
            return answer;

        // § 8520(b): who gives none after the owner's demand forfeits the lien; no days are set, so that it can still be given. One given
        // in ten days is late by no measure.
        if (w.Matter.Of<StopPaymentDemanded>()
            .Any(demand => !w.Matter.Of<StopPaymentGiven>().Any(given => w.On(given) <= w.On(demand).PlusDays(10))))
            answer = answer with { May = answer.May & May.Open };
        return IsWhole(w) ? answer : answer with { May = May.None };
    }

    // Nothing that the lien needs is itself in doubt; a notice that came late leaves the right whole for what it covers.
    private static bool IsWhole(World w)
    {
        var license = LicenseReading.Finding(w);
        var given = PreliminaryNoticeReading.Of(w);
        var told = !given.Due || given.AllTold is not null
            || (PreliminaryNoticeReading.LastDay(w) is { } last && !w.IsOver(last, "time for the notice"));
        return (license.May & May.Kept) != 0 && told;
    }

    private static Answer OfClaims(World w, PrivateCompletion.Completion complete)
    {
        LocalDate? next = null;
        var open = false;
        var curable = false;
        var stayed = false;
        foreach (var r in ClaimReading.All(w, complete))
        {
            if (!r.Good)
            {
                curable |= r.Curable && EnforcementReading.IsSuedOrOpen(w, r.Claim, r.Day);
                continue;
            }

            if (EnforcementReading.IsSued(w, r.Claim, r.Day))
                return Answer.Kept;
            var last = EnforcementReading.LastDay(w, r.Claim, r.Day);
            stayed |= EnforcementReading.WasStayed(w, r.Day, last);
            open |= !w.IsOver(last, "time to sue", r.Claim.Index);
            next = World.Earlier(next, last);
        }

        if (!open && complete.LastDay is { } end && w.IsOver(end, "time to record"))
            return stayed || (curable && w.Either("a defect of the claim is cured")) ? Answer.Doubt : Answer.Lost;
        return Answer.Open(open ? next : complete.LastDay);
    }
}
