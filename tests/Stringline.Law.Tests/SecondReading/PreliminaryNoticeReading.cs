using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// Preliminary notice (Civ. Code §§ 8200-8206, 9300-9304): to the owner or public entity, the direct contractor to which the work goes, and
/// on private work the lender; within 20 days, or later for less.
/// </summary>
internal static class PreliminaryNoticeReading
{
    private static readonly Standing0 NotDue = new(false, false, null, null, false, null, false);

    /// <summary>What was given in one world.</summary>
    /// <param name="Due">Whether any notice is due.</param>
    /// <param name="ToOwnerAndContractor">Whether owner or entity, and contractor, are to be told.</param>
    /// <param name="Day">The day on which the last of owner and contractor was told; null where one was not.</param>
    /// <param name="Lender">The lender to be told; null where none is.</param>
    /// <param name="LenderMayBeExcused">Whether a lender who was not known when the work began has not been told.</param>
    /// <param name="LenderDay">The day on which every such lender was told; null where one was not.</param>
    /// <param name="SomeTold">Where only one of owner and contractor was told: that day.</param>
    /// <param name="LenderTold">Whether some lender was told in time though not each.</param>
    internal readonly record struct Standing0(
        bool Due, bool ToOwnerAndContractor, LocalDate? Day, Party? Lender, bool LenderMayBeExcused, LocalDate? LenderDay, bool LenderTold,
        LocalDate? SomeTold = null)
    {
        /// <summary>The day by which all had been told; null where one was not.</summary>
        public LocalDate? AllTold => !Due ? null
            : ToOwnerAndContractor && Day is null ? null
            : Lender is not null && LenderDay is null ? null
            : World.Later(Day, LenderDay);
    }

    public static Standing0 Of(World w)
    {
        var m = w.Matter;
        if (m.Role == ClaimantRole.Laborer || m.Kind == WorkKind.Federal)
            return NotDue;
        if (m.Kind == WorkKind.Public)
        {
            // § 9300(b)(2); a direct contractor is no claimant (§ 9100(b)).
            return m.IsDirectContractor
                || m.HiredByContractor
                    ? NotDue : new(true, true, OwnerAndContractor(w, PartyCapacity.PublicEntity), null, false, null, false,
                        SomeTold(w, PartyCapacity.PublicEntity));
        }

        Party? lender = null;
        var excused = false;
        LocalDate? lenderDay = null;
        var first = FirstAndLast.First(w);
        var missed = false;
        var told = false;
        foreach (var one in m.In(PartyCapacity.ConstructionLender))
        {
            var later = one.KnownSince is { } since && first is { } f && since > f;
            if (later)
            {
                // Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75: the lender is to be known as of the first day of work.
                excused |= Earliest(w, one) is null;
                continue;
            }

            lender = one;
            var day = Earliest(w, one);
            missed |= day is null;
            told |= day is not null;
            lenderDay = World.Later(lenderDay, day);
        }

        lenderDay = missed ? null : lenderDay;
        if (m.HiredByOwner)
            return lender is null ? NotDue with { LenderMayBeExcused = excused } : new(true, false, null, lender, excused, lenderDay, told);
        return new(true, true, OwnerAndContractor(w, PartyCapacity.Owner), lender, excused, lenderDay, told,
            SomeTold(w, PartyCapacity.Owner));
    }

    private static LocalDate? SomeTold(World w, PartyCapacity owner)
    {
        LocalDate? day = null;
        foreach (var party in w.Matter.In(owner))
            day = World.Earlier(day, Earliest(w, party));
        foreach (var party in w.Matter.WorksFor().Contractors)
            day = World.Earlier(day, Earliest(w, party));
        return day;
    }

    private static LocalDate? OwnerAndContractor(World w, PartyCapacity owner)
    {
        var m = w.Matter;
        if (Any(w, m.In(owner), m.Job.Work.OrderedByTenant == true) is not { } toOwner)
            return null;
        var (contractors, known) = m.WorksFor();
        if (Any(w, contractors, !known) is not { } toContractor)
            return null;
        // Private work: a lien stood whose claimant had told the owner and not the contractor (Industrial Asphalt v. Garrett (1986) 180
        // Cal.App.3d 1001), so that one told late may do as little harm.
        return owner == PartyCapacity.Owner && toContractor > toOwner && w.Either("telling the contractor late does no harm")
            ? toOwner : World.Later(toOwner, toContractor);
    }

    // Where several may be the right one, each told or only some: either way.
    private static LocalDate? Any(World w, IReadOnlyList<Party> those, bool mustBeAll)
    {
        LocalDate? day = null;
        var missed = false;
        LocalDate? all = null;
        foreach (var one in those)
        {
            var told = Earliest(w, one);
            day = World.Earlier(day, told);
            all = World.Later(all, told);
            missed |= told is null;
        }

        if (those.Count == 0)
            return w.Either("somebody of that capacity was told") ? FirstAndLast.First(w) : null;
        if (!mustBeAll || those.Count == 1 || day is null)
            return day;
        if (missed)
            return w.Either("the right one was told") ? day : null;
        return w.Either("the right one was told first") ? day : all;
    }

    private static LocalDate? Earliest(World w, Party to)
    {
        LocalDate? day = null;
        foreach (var notice in w.Matter.Notices)
        {
            if (IsTo(w, notice.To, to, notice.Index))
                day = World.Earlier(day, Paper.Given(w, notice, to));
        }

        return day;
    }

    // An agent of the owner, or the association for the common area, may stand for the owner (Civ. Code §§ 8066, 8119).
    private static bool IsTo(World w, IReadOnlyList<string> to, Party party, int index)
    {
        if (to.Contains(party.Id))
            return true;
        if (party.Capacity != PartyCapacity.Owner)
            return false;
        foreach (var id in to)
        {
            if (w.Job.Party(id) is { Capacity: PartyCapacity.OwnersAgent or PartyCapacity.Association }
                && w.Either("the agent stands for the owner", index))
                return true;
        }

        return false;
    }

    /// <summary>The last day on which a notice covers everything.</summary>
    public static LocalDate? LastDay(World w)
    {
        if (FirstAndLast.First(w) is not { } first)
            return null;
        var last = first.PlusDays(20);

        // § 8204(b): a designer's services are covered by a notice within 20 days after the work commenced.
        if (w.Matter.Role == ClaimantRole.DesignProfessional && w.Matter.Kind == WorkKind.Private && w.Job.Work.Commenced is { } commenced)
            last = World.Later(last, commenced.PlusDays(20));
        return last;
    }

    /// <summary>§ 9304 sets no last day for public work, only how far a notice reaches back: nothing rolls.</summary>
    public static bool InTime(World w, LocalDate day, LocalDate last) =>
        w.Matter.Kind == WorkKind.Public ? day <= last : w.InTime(day, last, "notice in time");

    private static bool IsOver(World w, LocalDate last) =>
        w.Matter.Kind == WorkKind.Public ? w.AsOf > last : w.IsOver(last, "time for the notice");

    /// <summary>Whether a designer's notice is still in time because nobody told when the work commenced.</summary>
    public static bool CommencementUnknown(World w) =>
        w.Matter.Role == ClaimantRole.DesignProfessional && w.Matter.Kind == WorkKind.Private && w.Job.Work.Commenced is null;

    /// <summary>Whether a notice of that day reaches any of the work (§§ 8204(a), 9304).</summary>
    public static bool Reaches(World w, LocalDate day) => FirstAndLast.Last(w) is { } last && last >= day.PlusDays(-20);

    /// <summary>
    /// Whether nothing can be covered any more: not given to owner or contractor, all work more than 20 days back, and no more to come.
    /// </summary>
    public static bool IsDead(World w) => w.AtBest(static world => IsDead(world, Of(world)));

    /// <summary>Whether it is dead for all that was furnished so far, but more may come: no end of the work is told.</summary>
    public static bool MoreMayCome(World w) => !FirstAndLast.HasEnded(w) && w.Matter.Of<Completed>().Length == 0;

    /// <summary>
    /// Whether one of owner and contractor was told and the other not: the words of § 8200(c) make the right void, a court may still ask
    /// who was hurt.
    /// </summary>
    public static bool OneWasTold(World w) => w.AtBest(Of) is { Due: true, ToOwnerAndContractor: true, Day: null, SomeTold: not null };

    private static bool IsDead(World w, Standing0 given)
    {
        if (!given.Due || w.Matter.Work.Length == 0 || CommencementUnknown(w))
            return false;
        var day = given.ToOwnerAndContractor ? given.Day : given.LenderDay;

        // While the time runs another can still be given, though one left and mailed will be complete too late.
        if (LastDay(w) is { } last && ((day is { } d && InTime(w, d, last)) || !IsOver(w, last)))
            return false;

        // § 8200(c), (e)(2): hired by the owner, the lender is the only one to be told; where one of several was, the lien may live.
        if (!given.ToOwnerAndContractor && given.LenderTold && given.LenderDay is null)
            return false;
        
        // One given by hand today reaches further back than one that is complete only some days from now.
        return !MayReach(w, World.Earlier(day, w.AsOf)!.Value);
    }

    /// <summary>Whether a notice of that day reaches some work that was furnished, or may have been.</summary>
    public static bool MayReach(World w, LocalDate day) => Reaches(w, day) || MayBeMissing(w, day.PlusDays(-20));

    // A delivery may be missing from a file that tells no end of the furnishing, on any day until the whole work was complete.
    private static bool MayBeMissing(World w, LocalDate from)
    {
        if (FirstAndLast.HasEnded(w) || w.Matter.Of<ContractEnded>().Length > 0)
            return false;
        var complete = w.Matter.Kind == WorkKind.Public ? PublicCompletion.Surely(w) : PrivateCompletion.Surely(w);
        return complete is not { } day || day >= from;
    }

    private static bool MayBeLate(World w, LocalDate last) =>
        w.Matter.Notices.Any(n => n.On is DayFact.Between between && between.Last.PlusDays(n.Manner == Manner.Substituted ? 5 : 0) > last);

    public static Answer LastDayFinding(World w)
    {
        if (w.Matter.Work.Length == 0)
            return Answer.Free;
        var given = Of(w);
        if (!given.Due)
            return given.LenderMayBeExcused ? new Answer(May.Kept | May.Open) : Answer.Kept;
        var last = LastDay(w)!.Value;
        // While the time runs, one of which it is not known whether it came in time is given again: that is still open.
        if (given.AllTold is { } day && InTime(w, day, last))
            return given.LenderMayBeExcused || (!IsOver(w, last) && MayBeLate(w, last)) ? new Answer(May.Kept | May.Open) : Answer.Kept;
        if (CommencementUnknown(w))
            return given.AllTold is null ? new Answer(May.Open) : Answer.Doubt;
        if (!IsOver(w, last))
            return Answer.Open(last);

        return IsDead(w, given) ? Answer.Lost : Answer.Doubt;
    }
}
