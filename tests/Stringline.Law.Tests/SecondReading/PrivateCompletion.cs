using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>
/// When private work was complete, and when the time to record a claim ends (Civ. Code §§ 8180-8190, 8412, 8414, 8448).
/// </summary>
internal static class PrivateCompletion
{
    /// <summary>What one world makes of it.</summary>
    /// <param name="Day">The day of completion; null while the work is not complete.</param>
    /// <param name="LastDay">The last day to record; null while no end is known.</param>
    /// <param name="DeemedCeased">The day from which a notice for the claimant's own contract takes it to have ceased
    /// (§ 8186(a)).</param>
    internal readonly record struct Completion(LocalDate? Day, LocalDate? LastDay, LocalDate? DeemedCeased);

    public static Completion Of(World w)
    {
        var m = w.Matter;
        var structure = StructureOf(w);
        var acceptedOnly = w.Job.Work.SubjectToAcceptanceBy is not null && w.Told(w.Job.Work.PublicTakesOver, "the public takes over");
        LocalDate? day = null;
        foreach (var e in m.Of<Completed>())
        {
            if (structure is not null && e.Structure is not null && e.Structure != structure)
                continue;
            // An authority that takes nothing over only approves (§ 8180(b)).
            if (e.By == CompletionTheory.Acceptance && w.Job.Work is { SubjectToAcceptanceBy: not null, PublicTakesOver: false })
                continue;
            if (e.By == CompletionTheory.Acceptance != acceptedOnly && !(e.By == CompletionTheory.Acceptance
                && w.Either("acceptance completes", e.Index)))
                continue;
            if (SeveralStructures(w) && e.Structure is null && !w.Either("completion of our structure", e.Index))
                continue;
            if (IsBeforeCommencement(w, e))
                continue;
            if (!e.Contested || w.Either("contested completion", e.Index))
                day = World.Earlier(day, e.By == CompletionTheory.Occupation ? WhenLaborStoppedToo(w, e) : w.On(e));
        }

        if (!acceptedOnly)
        {
            foreach (var e in m.Of<LaborCeased>())
                day = World.Earlier(day, SixtiethDay(w, e));
        }

        day = ByOwnersDay(w, day) ?? day;
        if (day is null && !acceptedOnly && m.Of<Completed>().All(e => IsBeforeCommencement(w, e))
            && !m.Of<OwnerRecorded>().Any(IsOwnersWord))
            day = Floor(w);
        if (!acceptedOnly)
        {
            foreach (var n in m.Of<OwnerRecorded>())
            {
                if (n.Notice == OwnerNotice.Cessation && IsOfWhole(w, n) && CessationIsGood(w, n))
                    day = World.Earlier(day, w.On(n));
            }
        }

        return WithTime(w, day, acceptedOnly);
    }

    /// <summary>The day by which the whole work was complete in every world; null where some world has it go on.</summary>
    public static LocalDate? Surely(World w)
    {
        LocalDate? day = null;
        var needsAcceptance = w.Job.Work is { SubjectToAcceptanceBy: not null, PublicTakesOver: not false };
        foreach (var e in w.Matter.Of<Completed>())
        {
            var good = e.By switch
            {
                CompletionTheory.Acceptance => needsAcceptance && w.Job.Work.PublicTakesOver == true,
                CompletionTheory.Occupation => !needsAcceptance && w.Matter.Of<LaborCeased>()
                    .Any(c => c.Until is null && !OthersTellOfLabor(w, c) && !OwnLaborIn(w, w.On(c), w.On(c).PlusDays(60))),
                _ => !needsAcceptance,
            };
            if (good && !e.Contested && !SeveralStructures(w))
                day = World.Earlier(day, e.By == CompletionTheory.Occupation ? WhenLaborStoppedToo(w, e) : w.On(e));
        }

        foreach (var e in needsAcceptance ? [] : w.Matter.Of<LaborCeased>())
        {
            var last = w.On(e);
            if (e.Until is null && w.AsOf >= last.PlusDays(60) && !OwnLaborIn(w, last, last.PlusDays(60)) && !OthersTellOfLabor(w, e))
                day = World.Earlier(day, last.PlusDays(60));
            foreach (var n in w.Matter.Of<OwnerRecorded>())
            {
                if (n is { Notice: OwnerNotice.Cessation, ContractOf: null, Lacks: null, HeldIneffective: false } && e.Until is null
                    && w.On(n) > last.PlusDays(30) && !OwnLaborIn(w, last, w.On(n)) && !OthersTellOfLabor(w, e))
                    day = World.Earlier(day, w.On(n));
            }
        }

        return day;
    }

    // "Completion of a work of improvement" (§ 8180(a)): of one that had not commenced there is none.
    private static bool IsBeforeCommencement(World w, Completed e) => w.On(e) < w.Job.Work.Commenced;

    // Nothing is known of completion: it may have been on any day since the last sign of work, or not yet (§ 8180).
    private static LocalDate? Floor(World w)
    {
        if (FirstAndLast.Ceased(w) is not { } floor)
            return null;
        if (w.Job.Work.Commenced is { } commenced)
            floor = World.Later(floor, commenced);
        foreach (var e in w.Matter.Of<LaborCeased>())
            floor = World.Later(floor, World.Later(w.On(e), e.Until ?? w.On(e)));
        // Left unfinished, it was complete no sooner than the days without labor make it.
        if (w.Matter.Of<LaborCeased>() is { Length: > 0 } stops && Array.TrueForAll(stops, e => e.Unfinished == true))
            return null;
        return floor <= w.AsOf && w.Either("complete when our work ended") ? floor : null;
    }

    private static bool SeveralStructures(World w) => w.Job.Work.ResidentialStructures > 1 || w.Job.Work.Structures.Count > 1;

    // § 8448: each residential structure is a work of its own; the one the claim is on where the work says it, else any.
    private static string? StructureOf(World w)
    {
        string? named = null;
        foreach (var work in w.Matter.Work)
            named ??= work.Structure;
        var ids = w.Matter.Of<Completed>().Where(c => c.Structure is not null).Select(c => c.Structure!).Distinct().ToArray();
        if (named is not null && Array.TrueForAll(w.Matter.Work, f => f.Structure == named))
            return named;
        return ids.Length == 0 ? null : ids[w.Choose("structure", -1, ids.Length)];
    }

    // § 8180(a)(2): use alone completes nothing; cessation of labor goes with it.
    private static LocalDate? WhenLaborStoppedToo(World w, Completed e)
    {
        var day = w.On(e);
        var ceased = false;
        foreach (var stop in w.Matter.Of<LaborCeased>())
        {
            if (stop.Until <= day)
                continue;
            ceased |= stop.Until is null && !OthersTellOfLabor(w, stop) && !OwnLaborIn(w, w.On(stop), w.On(stop).PlusDays(60));
            day = World.Later(day, w.On(stop));
        }

        return ceased || w.Either("labor had ceased", e.Index) ? day : null;
    }

    /// <summary>
    /// Whether another stop of the file tells of labor in the sixty days of this one: labor ceased again in them, or was resumed in them.
    /// </summary>
    public static bool OthersTellOfLabor(World w, LaborCeased stop)
    {
        var last = w.On(stop);
        return w.Matter.Of<LaborCeased>().Any(other => other != stop
            && ((w.On(other) > last && w.On(other) <= last.PlusDays(60) && !(w.On(other) >= stop.Until))
                || (other.Until > last && other.Until <= last.PlusDays(60) && !(other.Until >= stop.Until))));
    }

    private static LocalDate? SixtiethDay(World w, LaborCeased e)
    {
        var last = w.On(e);
        var sixtieth = last.PlusDays(60);
        if (e.Until <= sixtieth || w.AsOf < sixtieth)
            return null;
        if (OthersTellOfLabor(w, e) && !w.Either("labor had stopped all the same", e.Index))
            return null;
        return OwnLaborIn(w, last, sixtieth) && !w.Either("our own labor broke no stop", e.Index) ? null : sixtieth;
    }

    private static bool OwnLaborIn(World w, LocalDate after, LocalDate through)
    {
        if (!w.Matter.FurnishesLabor)
            return false;
        foreach (var work in w.Matter.Work)
        {
            if (w.Until(work) > after && w.On(work) <= through)
                return true;
        }

        return false;
    }

    /// <summary>Whether a notice of the owner's is for the whole work, and not for one contract only.</summary>
    private static bool IsOfWhole(World w, OwnerRecorded n) =>
        n.ContractOf is null || (n.Notice == OwnerNotice.Cessation && w.Either("speaks of the whole work", n.Index));

    private static bool HasForm(World w, OwnerRecorded n) => !n.HeldIneffective && (n.Lacks is null || w.Either("form is good", n.Index));

    private static bool IsOwnersDay(OwnerRecorded n) => n is { Notice: OwnerNotice.Completion, ContractOf: null, HeldIneffective: false };

    // The owner says under oath when the work was complete, or that it stopped: then it is not taken to have been complete at some other
    // day.
    private static bool IsOwnersWord(OwnerRecorded n) => n is { Notice: OwnerNotice.Completion or OwnerNotice.Cessation,
        ContractOf: null, HeldIneffective: false };

    // The owner's notice is the owner's side of a question of fact: the day that it states may be the true one.
    private static LocalDate? ByOwnersDay(World w, LocalDate? day)
    {
        LocalDate? owners = null;
        foreach (var n in w.Matter.Of<OwnerRecorded>())
        {
            if (!IsOwnersDay(n) || n.States < w.Job.Work.Commenced)
                continue;
            // One that states our day, or no day while ours would make it timely, contradicts nothing; though it may state an earlier one.
            if (day is { } ours && (n.States ?? (IsServed(w.On(n), ours) ? ours : null)) == ours)
            {
                if (n.States is null && !w.Either("the notice states our day", n.Index))
                    owners = World.Earlier(owners, World.Later(FirstServed(w.On(n)), w.Job.Work.Commenced));
                continue;
            }

            // Of a day that it does not state, one that is sure by the file is the latest: the first completion counts.
            var word = n.States ?? (Surely(w) is { } sure && IsServed(w.On(n), sure) ? sure : w.On(n));

            if (w.Either("the owner's day is the true one", n.Index))
                owners = World.Earlier(owners, word);
        }

        return owners;
    }

    private static bool IsServed(LocalDate recorded, LocalDate complete) =>
        recorded >= complete && recorded <= PlainCalendar.RolledOnAnyList(complete.PlusDays(15));

    private static LocalDate FirstServed(LocalDate recorded)
    {
        var day = recorded;
        while (recorded <= PlainCalendar.RolledOnAnyList(day.PlusDays(14)))
            day = day.PlusDays(-1);
        return day;
    }

    // § 8188(a): at least 30 days of no labor prior to the recording, going on through it.
    private static bool CessationIsGood(World w, OwnerRecorded n)
    {
        if (!HasForm(w, n))
            return false;
        var recorded = w.On(n);
        var entered = false;
        foreach (var e in w.Matter.Of<LaborCeased>())
        {
            var last = w.On(e);
            entered = true;
            if (last > recorded || (e.Until is { } until && until < recorded))
                continue;
            if (recorded > last.PlusDays(30) && e.Until != recorded && !OwnLaborIn(w, last, recorded) && !OthersTellOfLabor(w, e))
                return true;
            if (recorded >= last.PlusDays(30) && w.Either("labor had stopped", n.Index))
                return true;
        }

        var stated = n.States is not { } states || states.PlusDays(30) <= recorded;
        return stated && (!entered || n.States is not null) && w.Either("labor had stopped as the owner says", n.Index);
    }

    private static Completion WithTime(World w, LocalDate? day, bool acceptedOnly)
    {
        var m = w.Matter;
        var days = m.IsDirectContractor ? 60 : 30;
        var last = day?.PlusDays(90);
        LocalDate? deemed = null;
        foreach (var n in m.Of<OwnerRecorded>())
        {
            if (n.Notice == OwnerNotice.Acceptance || !HasForm(w, n))
                continue;

            // §§ 8412(b) and 8414(b)(2) count from the recording whatever completes the work, and § 8180(b) speaks of completion alone;
            // that a notice of cessation does nothing while only an acceptance completes the work can be said all the same.
            if (n.Notice == OwnerNotice.Cessation && acceptedOnly && !w.Either("a notice of cessation ends the time before acceptance"))
                continue;
            var recorded = w.On(n);
            bool good;
            if (n.ContractOf is null || (n.Notice == OwnerNotice.Cessation && IsOfWhole(w, n)))
                good = n.Notice == OwnerNotice.Cessation ? CessationIsGood(w, n) : IsTimely(w, n, recorded, day);
            else
                good = n.Notice == OwnerNotice.Completion && IsForOurContract(w, n)
                    && ((IsTimelyByItsWord(w, n, recorded) && w.Either("that contract was complete then", n.Index))
                    || (w.Job.Work.SeveralDirectContracts != true && IsTimely(w, n, recorded, day)));
            if (!good)
                continue;
            if (n.ContractOf is not null && n.Notice == OwnerNotice.Completion && w.Job.Work.SeveralDirectContracts != false
                && IsTimelyByItsWord(w, n, recorded))
                deemed = World.Earlier(deemed, recorded);
            if (CopyShortens(w, n, recorded))
                last = World.Earlier(last, recorded.PlusDays(days));
        }

        return new Completion(day, last, deemed);
    }

    // § 8182(a), (d): on or within 15 days after completion; every roll helps the owner here.
    private static bool IsTimely(World w, OwnerRecorded n, LocalDate recorded, LocalDate? day)
    {
        if (day is not { } complete || recorded < complete)
            return false;
        var last = complete.PlusDays(15);
        return recorded <= PlainCalendar.RolledForCourts(last)
            || (recorded <= PlainCalendar.RolledOnAnyList(last) && w.Either("fifteenth day rolled", n.Index));
    }

    // Its fifteen days run from the completion of that contract, which only the notice itself states: against the claimant that may be
    // wrong, and the notice void (§ 8182(d)).
    private static bool IsTimelyByItsWord(World w, OwnerRecorded n, LocalDate recorded) =>
        n.States is { } states ? IsTimely(w, n, recorded, states) : w.Either("in time for the one contract", n.Index);

    private static bool IsForOurContract(World w, OwnerRecorded n)
    {
        var m = w.Matter;
        var several = w.Job.Work.SeveralDirectContracts;

        // § 8186 is for two or more direct contracts; a notice for the only one may be taken for one of the whole, or for none.
        if (several == false)
            return w.Either("notice for one contract", n.Index);

        // A direct contractor of another name has a contract of its own. Who furnishes to the owner and is no contractor has no direct
        // contract (§§ 8016,
        // 8018): there may be one only.
        if (m.HiredByOwner)
            return !m.IsDirectContractor && several is null && w.Either("notice for one contract", n.Index);
        var (contractors, known) = m.WorksFor();
        var ours = contractors.Any(c => c.Id == n.ContractOf);
        if (!ours)
            return false;
        return (known && w.Job.Work.SeveralDirectContracts == true) || w.Either("notice for one contract", n.Index);
    }

    // The day on which the claimant gave the owner preliminary notice, in a manner of §§ 8106 and 8110: who never did, or only once the ten
    // days for the copy were over, "has" given none, and no copy is due to it (§ 8190(a)(2)).
    private static LocalDate? ToldOwner(World w)
    {
        LocalDate? first = null;
        foreach (var notice in w.Matter.Notices)
        {
            foreach (var id in notice.To)
            {
                if (w.Job.Party(id) is { Capacity: PartyCapacity.Owner or PartyCapacity.OwnersAgent or PartyCapacity.Association } owner)
                    first = World.Earlier(first, Paper.Given(w, notice, owner));
            }
        }

        return first;
    }

    // Given by mail when deposited (§ 8116(b)); five days are those that Code Civ. Proc. § 1013(a) takes a letter to be under way within
    // California. § 8190: the copy, within ten days, in a manner of Chapter 2, to the direct contractor and to who gave the owner
    // preliminary notice.
    private static bool CopyShortens(World w, OwnerRecorded n, LocalDate recorded)
    {
        var m = w.Matter;
        var owners = m.In(PartyCapacity.Owner);
        if (w.Job.Work.Use == WorkUse.OwnerOccupiedOneToFour)
            return true;
        if (w.Job.Work.Use is null && w.Either("the owner lives there"))
            return true;
        if (owners.Any(o => o.TookTitleBy is TitleSource.Foreclosure or TitleSource.Court or TitleSource.Fiduciary))
            return true;
        var last = recorded.PlusDays(10);
        if (!m.IsDirectContractor && (ToldOwner(w) is not { } toldOwner || toldOwner > PlainCalendar.RolledOnAnyList(last)
            || (toldOwner > recorded && w.Either("notice to the owner came after the recording"))))
            return true;
        foreach (var told in m.Of<OwnerToldUs>())
        {
            if (told.Notice != n.Notice)
                continue;
            var given = told.Mailed ?? w.On(told);
            if (told.Mailed is null
                ? w.On(told) < recorded : told.Mailed < recorded && !w.Either("a copy of what was recorded already", told.Index))
                continue;
            var inTime = given <= PlainCalendar.RolledForCourts(last)
                || (told.Mailed is null && given <= PlainCalendar.RolledOnAnyList(last).PlusDays(told.Manner == Manner.Personal ? 0 : 5)
                    && w.Either("mailed earlier than it came", told.Index))
                || (given <= PlainCalendar.RolledOnAnyList(last) && w.Either("tenth day rolled", told.Index));
            if (!inTime)
                continue;
            if (told.Manner is Manner.Personal or Manner.CertifiedMail or Manner.RegisteredMail
                or Manner.ExpressMail or Manner.OvernightCarrier)
                return true;
            if (w.Either("manner of the copy is good", told.Index))
                return true;
        }

        return false;
    }
}
