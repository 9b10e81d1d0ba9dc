using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The notice of pendency of the action: after it was filed, within 20 days (Civ. Code § 8461), mailed first and with proof (Code Civ.
/// Proc. §§ 405.22, 405.23).
/// </summary>
internal static class PendencyReading
{
    public static Answer LastDay(World w)
    {
        // A bond of enough frees the land from the action too (Civ. Code § 8424(c)); whether it is enough is told in its own row.
        if (w.Matter.Of<ReleaseBondRecorded>().Length > 0 || w.Matter.Work.Length == 0)
            return Answer.Free;
        if (w.Matter.Of<ActionEnded>().Length > 0 || w.Matter.Of<ReleaseRecorded>().Length > 0)
            return new Answer(May.Lost | May.Kept);
        LocalDate? last = null;
        var claims = w.Matter.Of<ClaimRecorded>();
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            // One against others than the owner may not be it at all; then nothing is said of its pendency.
            if (action.Against.Count > 0 || action.SmallClaims)
                return Answer.Free;
            foreach (var claim in claims)
            {
                if (!ClaimReading.IsDesignLien(w, claim) && w.On(action) >= w.On(claim) && EnforcementReading.IsOnLien(w, action, claim))
                    last = World.Earlier(last, w.On(action).PlusDays(20));
            }
        }

        if (last is not { } end)
            return Answer.Free;
        if (EnforcementReading.Finding(w).May == May.Lost || ClaimReading.LastDay(w).May == May.Lost)
            return Answer.Lost;
        foreach (var paper in w.Matter.Of<LisPendensRecorded>())
        {
            var day = w.On(paper);
            if (day < end.PlusDays(-20))
                continue;
            if (paper.MailedFirst == false || paper.ProofRecorded == false)
                continue;
            if (w.InTime(day, end, "pendency in time", paper.Index))
                return paper.MailedFirst == true && paper.ProofRecorded == true ? Answer.Kept : Answer.Doubt;
        }

        // Late, it still warns from its own day on.
        return w.IsOver(end, "twenty days") ? new Answer(May.Lost) : Answer.Open(end);
    }
}
