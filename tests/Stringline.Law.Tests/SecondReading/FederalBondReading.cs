using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// The federal payment bond (40 U.S.C. § 3133(b)): one who dealt with a subcontractor only gives the contractor written notice within 90
/// days after it last
/// furnished; an action within one year after that day.
/// </summary>
internal static class FederalBondReading
{
    private static bool NeedsNotice(World w) => !w.Matter.HiredByContractor;

    public static Answer Notice(World w)
    {
        if (FirstAndLast.Last(w) is not { } last || w.Matter.IsDirectContractor || w.Matter.Hirer is null)
            return Answer.Free;
        if (!NeedsNotice(w))
            return Answer.Kept;
        if (OutsideTheBond(w))
            return Answer.Lost;
        foreach (var paper in w.Matter.Of<BondNoticeGiven>())
        {
            if (IsGiven(w, paper, last))
                return Answer.Kept;
        }

        return w.IsOver(last.PlusDays(90), "ninety days") ? Answer.Lost : Answer.Open(last.PlusDays(90));
    }

    // Clifford F. MacEvoy Co. v. United States (1944) 322 U.S. 102: who sells to a mere supplier is outside.
    private static bool OutsideTheBond(World w) =>
        (w.Matter.Hirer is { Capacity: PartyCapacity.Supplier } hirer && !w.Told(hirer.MadeToPlans, "made to the plans"))
        || (w.Matter.Hirer is { Capacity: PartyCapacity.PublicEntity or PartyCapacity.Owner or PartyCapacity.ConstructionLender
            or PartyCapacity.Surety }
            && !w.Either("who hired is a slip"))
        || (w.Matter.Hirer is { Capacity: PartyCapacity.Supplier, MadeToPlans: true } && !w.Either("the hirer dealt with the contractor"));

    private static bool IsGiven(World w, BondNoticeGiven paper, LocalDate last)
    {
        // "The contractor" is the one under whom the work was done; where it is told who that is, no other.
        IReadOnlyList<Party> contractors = w.Job.Party(w.Matter.Hirer?.WorksUnder) is { Capacity: PartyCapacity.DirectContractor } above
            ? [above] : w.Matter.In(PartyCapacity.DirectContractor);
        if (contractors.Count == 0 ? !w.Either("the contractor was told", paper.Index) : !contractors.Any(c => paper.To.Contains(c.Id)))
            return false;
        if (contractors.Count > 1 && !contractors.All(c => paper.To.Contains(c.Id)) && !w.Either("the right contractor", paper.Index))
            return false;
        var good = paper.Manner switch
        {
            null or Manner.Personal => true,
            Manner.CertifiedMail or Manner.RegisteredMail or Manner.ExpressMail or Manner.OvernightCarrier => true,
            Manner.CertificateOfMailing or Manner.Substituted => w.Either("a means that proves delivery", paper.Index),
            _ => false,
        };

        // Actual receipt may cure a means that proves nothing: said neither way.
        if (!good && !w.Either("received all the same", paper.Index))
            return false;
        if (!w.InTime(w.On(paper), last.PlusDays(90), "notice within ninety days", paper.Index))
            return false;

        // It states the amount claimed: one before the last delivery cannot (Blue Circle West v. Tucson Mechanical Contracting (9th Cir.
        // 1990) 921 F.2d 911).
        return w.On(paper) >= last || w.Either("an early notice holds", paper.Index);
    }

    public static Answer Action(World w)
    {
        if (FirstAndLast.Last(w) is not { } last || w.Matter.IsDirectContractor || w.Matter.Hirer is null
            || w.Matter.Of<ActionEnded>().Length > 0)
            return Answer.Free;
        if (w.Matter.IsSurelyLost(Notice))
            return Answer.Lost;
        var unsaid = May.None;
        var end = PlainCalendar.Years(last, 1);
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.PaymentBond))
                continue;
            if (action.Against.Count > 0 && !action.Against.Any(a => w.Job.Party(a) is { Capacity: PartyCapacity.Surety })
                && !w.Either("the right ones were sued", action.Index))
                continue;
            if (action.SmallClaims && !w.Either("small claims will do", action.Index))
                continue;
            if (w.On(action) <= last.PlusDays(90) && !w.Either("sued before the ninety days were over", action.Index))
                continue;
            if (w.InTime(w.On(action), end, "sued within the year", action.Index))
            {
                if (action.Enforces.Count > 0)
                    return Answer.Kept;
                unsaid = May.Kept;
            }
        }

        return w.IsOver(end, "one year") ? new Answer(May.Lost | unsaid) : new Answer(May.Open | unsaid, end);
    }
}
