using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>The notice that makes good a missing preliminary notice for a payment bond (Civ. Code §§ 8612, 8614, 9560, 9562).</summary>
internal static class BondNoticeReading
{
    /// <summary>The row for the notice, the work being complete on that day in this world.</summary>
    public static Answer Finding(World w, LocalDate? completed)
    {
        var given = PreliminaryNoticeReading.Of(w);
        if (!given.Due)
            return w.Matter.HiredByOwner ? new Answer(May.Kept | May.Open) : Answer.Kept;

        // Preliminary notice to all, in time: nothing else is needed; a bond notice may still be shown as open, it costs two envelopes.
        var lastForAll = PreliminaryNoticeReading.LastDay(w)!.Value;
        var designer = PreliminaryNoticeReading.CommencementUnknown(w);
        if (given.AllTold is { } told
            && (PreliminaryNoticeReading.InTime(w, told, lastForAll) || (designer && w.Either("designer in time"))))
            return new Answer(May.Kept | May.Open);

        var limit = Limit(w, completed);
        if (IsGiven(w, limit))
            return Answer.Kept;
        if (limit is { } last && w.IsOver(last, "time for the bond notice"))
        {
            // A late preliminary notice still carries what it reaches; one not told may do no harm; and a preliminary notice may still
            // be given.
            var partly = given.Day is { } day && PreliminaryNoticeReading.Reaches(w, day);
            var lenderOnly = given.ToOwnerAndContractor && given.Day is { } some && given.AllTold is null
                && (PreliminaryNoticeReading.InTime(w, some, lastForAll) || PreliminaryNoticeReading.Reaches(w, some));
            var stillOpen = designer || !w.IsOver(lastForAll, "time for the notice") || (given.Day is null
                && PreliminaryNoticeReading.Reaches(w, w.AsOf));
            return partly || lenderOnly || stillOpen || LenderToldForSome(w, given) ? Answer.Doubt : Answer.Lost;
        }

        return Answer.Open(limit);
    }

    private static bool LenderToldForSome(World w, PreliminaryNoticeReading.Standing0 given) =>
        !given.ToOwnerAndContractor && given.LenderTold && (given.LenderDay is not { } day || PreliminaryNoticeReading.Reaches(w, day));

    // 15 days after a notice of completion was recorded, else 75 after completion; one recorded early or late, and on public work one of
    // cessation or acceptance: either way. § 8612(b) knows the notice of completion alone.
    private static LocalDate? Limit(World w, LocalDate? completed)
    {
        LocalDate? last = completed?.PlusDays(75);
        foreach (var n in w.Matter.Of<OwnerRecorded>())
        {
            if (n.HeldIneffective)
                continue;
            var recorded = w.On(n);
            var surely = n is { Notice: OwnerNotice.Completion, Lacks: null, ContractOf: null }
                && completed is { } day && day <= recorded && recorded <= PlainCalendar.RolledForCourts(day.PlusDays(15));
            if (n.Notice != OwnerNotice.Completion && w.Matter.Kind == WorkKind.Private)
                continue;
            if (surely || w.Either("the recorded notice starts the fifteen days", n.Index))
                last = World.Earlier(last, recorded.PlusDays(15));
        }

        return last;
    }

    private static bool IsGiven(World w, LocalDate? limit)
    {
        foreach (var paper in w.Matter.Of<BondNoticeGiven>())
        {
            if (Paper.Given(w, paper, null) is not { } day)
                continue;
            if (limit is { } last && !w.InTime(day, last, "bond notice in time", paper.Index))
                continue;
            if (ToSuretyAndPrincipal(w, paper))
                return true;
        }

        // One to the surety, another to the principal.
        return w.Matter.Of<BondNoticeGiven>().Length > 1 && w.Either("several bond notices together");
    }

    private static bool ToSuretyAndPrincipal(World w, BondNoticeGiven paper)
    {
        var bond = w.Job.Work.PaymentBond;
        bool surety;
        if (bond?.Surety is { } named)
        {
            surety = paper.To.Contains(named);
        }
        else
        {
            var sureties = w.Matter.In(PartyCapacity.Surety);
            surety = sureties.Count == 0 ? w.Either("the surety was told", paper.Index) : sureties.Any(s => paper.To.Contains(s.Id));
        }

        if (!surety)
            return false;
        if (bond?.Principal is { } principal)
            return paper.To.Contains(principal);
        var contractors = w.Matter.In(PartyCapacity.DirectContractor);
        var (ours, known) = w.Matter.WorksFor();
        if (contractors.Count < 2)
            return contractors.Count == 0 ? w.Either("the principal was told", paper.Index) : paper.To.Contains(contractors[0].Id);
        return known && paper.To.Contains(ours[0].Id) || (paper.To.Any(id => contractors.Any(c => c.Id == id))
            && w.Either("the principal was told", paper.Index));
    }

    /// <summary>
    /// Whether an action on the bond was filed in time: kept; one that does not say what it enforces: kept or not; none: neither.
    /// </summary>
    public static May Suit(World w, LocalDate? last)
    {
        var unsaid = false;
        foreach (var action in w.Matter.Of<ActionFiled>())
        {
            if (action.Enforces.Count > 0 && !action.Enforces.Contains(ActionOn.PaymentBond))
                continue;
            var day = w.On(action);
            if (last is { } end && !w.InTime(day, end, "sued on the bond in time", action.Index))
                continue;
            if (FirstAndLast.First(w) is { } first && day <= first)
                continue;
            if (action.Against.Count > 0 && !w.Either("the right ones were sued", action.Index))
                continue;
            if (w.Matter.Kind == WorkKind.Public && FirstAndLast.Ceased(w) is { } ceased && day <= ceased
                && !w.Either("sued before the work ended", action.Index))
                continue;
            if (action.Enforces.Count > 0)
                return May.Kept;
            unsaid = true;
        }

        return unsaid ? May.Kept | May.Open : May.Open;
    }
}
