using Stringline.Law.Facts;

namespace Stringline.Law.Tests.SecondReading;

/// <summary>When public work was complete, and when the time to give a stop payment notice ends (Civ. Code §§ 9200-9208, 9356).</summary>
internal static class PublicCompletion
{
    internal readonly record struct Completion(LocalDate? Day, LocalDate? LastDay);

    public static Completion Of(World w)
    {
        var m = w.Matter;
        LocalDate? day = null;
        var accepted = false;
        foreach (var e in m.Of<Completed>())
        {
            if (e.By == CompletionTheory.Acceptance && (!e.Contested || w.Either("contested completion", e.Index)))
            {
                day = World.Earlier(day, w.On(e));
                accepted = true;
            }

            // § 9200(b): only sixty idle days, and not under the State Contract Act.
            if (e.By == CompletionTheory.Cessation && IdlenessCompletes(w) && w.Either("completed by cessation", e.Index))
                day = World.Earlier(day, w.On(e));
        }

        foreach (var e in m.Of<LaborCeased>())
        {
            if (!IdlenessCompletes(w))
                continue;
            var last = w.On(e);
            var sixtieth = last.PlusDays(60);
            if (e.Until <= sixtieth || w.AsOf < sixtieth)
                continue;
            var own = m.FurnishesLabor && m.Work.Any(f => w.Until(f) > last && w.On(f) <= sixtieth);
            if (PrivateCompletion.OthersTellOfLabor(w, e) && !w.Either("labor had stopped all the same", e.Index))
                continue;
            if (!own || w.Either("our own labor broke no stop", e.Index))
                day = World.Earlier(day, sixtieth);
        }

        day = ByEntitysDay(w, day) ?? day;
        var known = day is not null;
        if (day is null && m.Of<Completed>().All(e => e.By != CompletionTheory.Acceptance) && !m.Of<OwnerRecorded>().Any(IsEntitysWord))
            day = Floor(w);
        var lastDay = day?.PlusDays(90);
        var recorded = false;
        foreach (var n in m.Of<OwnerRecorded>())
        {
            recorded = true;
            if (n.HeldIneffective || (n.Lacks is not null && !w.Either("form is good", n.Index)))
                continue;
            if (EndsTheTime(w, n, day, known, accepted))
                lastDay = World.Earlier(lastDay, w.On(n).PlusDays(30));
        }

        if (known && !recorded && Unseen(w, day!.Value))
            lastDay = day.Value.PlusDays(30);
        return new Completion(day, lastDay);
    }

    // A notice of completion states a day, on which the entity may have accepted the work; when it did is a question of fact (§ 9204(c)). A
    // day after an acceptance that is told, or after the sixty days, undoes neither: the earliest counts (§ 9200).
    private static LocalDate? ByEntitysDay(World w, LocalDate? day)
    {
        LocalDate? entitys = null;
        foreach (var n in w.Matter.Of<OwnerRecorded>())
        {
            if (n is { Notice: OwnerNotice.Completion or OwnerNotice.Acceptance, ContractOf: null, HeldIneffective: false,
                States: { } states }
                && !(states >= day) && w.Either("the entity's day is the true one", n.Index))
                entitys = World.Earlier(entitys, states);
        }

        return entitys;
    }

    /// <summary>The day by which the work was complete in every world; null where some world has it go on.</summary>
    public static LocalDate? Surely(World w)
    {
        LocalDate? day = null;
        foreach (var e in w.Matter.Of<Completed>())
        {
            if (e is { By: CompletionTheory.Acceptance, Contested: false })
                day = World.Earlier(day, w.On(e));
        }

        foreach (var e in w.Matter.Of<LaborCeased>())
        {
            var sixtieth = w.On(e).PlusDays(60);
            if (w.Job.Work.StateContractAct == false && e.Until is null && w.AsOf >= sixtieth && !PrivateCompletion.OthersTellOfLabor(w, e)
                && !(w.Matter.FurnishesLabor && w.Matter.Work.Any(f => w.Until(f) > w.On(e) && w.On(f) <= sixtieth)))
                day = World.Earlier(day, sixtieth);
        }

        return day;
    }

    private static bool IdlenessCompletes(World w) => w.Job.Work.StateContractAct != true
        && (w.Job.Work.StateContractAct is not null || w.Either("not under the State Contract Act"));

    // A notice of completion may be recorded on or within 15 days after completion, and nobody sends a copy: until a search after them,
    // either way.
    private static bool Unseen(World w, LocalDate day) =>
        !w.Matter.Of<IndexSearched>().Any(s => w.On(s) > day.PlusDays(15)) && w.Either("a notice was recorded unseen");

    private static bool EndsTheTime(World w, OwnerRecorded n, LocalDate? day, bool known, bool accepted)
    {
        var recorded = w.On(n);

        // The title knows no notice for one contract: its notices are of the work of improvement (§§ 9200-9204, 9356(a)).
        if (n.ContractOf is not null)
            return w.Either("a notice for one contract counts", n.Index);
        switch (n.Notice)
        {
            case OwnerNotice.Acceptance:
                // The words of § 9204(a) on the 15 days name a notice of completion; that they hold for one of acceptance too can be said.
                return (accepted && day is { } when && when <= recorded && recorded <= PlainCalendar.RolledForCourts(when.PlusDays(15)))
                    || w.Either("the notice of acceptance counts", n.Index);
            case OwnerNotice.Cessation:
                foreach (var e in w.Matter.Of<LaborCeased>())
                {
                    var last = w.On(e);
                    var own = w.Matter.FurnishesLabor && w.Matter.Work.Any(f => w.Until(f) > last && w.On(f) <= recorded);
                    if (!own && !PrivateCompletion.OthersTellOfLabor(w, e) && recorded > last.PlusDays(30)
                        && (e.Until is null || e.Until > recorded))
                        return true;
                }

                return w.Either("labor had stopped as the entity says", n.Index);
            case OwnerNotice.Completion:
                return (known && day is { } done && done <= recorded && recorded <= PlainCalendar.RolledForCourts(done.PlusDays(15)))
                    || w.Either("the recorded notice counts", n.Index);
            default:
                throw new ArgumentOutOfRangeException(nameof(n));
        }
    }

    // The entity has said when it was complete, or that work had stopped: then it is not taken to have been so at some other day.
    private static bool IsEntitysWord(OwnerRecorded n) => n is { ContractOf: null, HeldIneffective: false };

    // The entity's acceptance is sent to nobody: it may have come on any day since the last sign of work.
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
        return floor <= w.AsOf && w.Either("accepted when our work ended") ? floor : null;
    }
}
