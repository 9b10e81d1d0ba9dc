using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>The preliminary notice on private work: last day, whether it was given, and how far back it reaches.</summary>
public static class PreliminaryNoticeDays
{
    private const string InTime = "Civ. Code § 8204(a)";

    /// <summary>How far back a claim of lien reaches, on the notices of the file, and how far toward each to whom notice is due.</summary>
    [Rule("Civ. Code § 8204(a)")]
    [Rule("Civ. Code § 8200(c)")]
    public static Reach ReachOf(FactsAsOf facts, OpenDays calendar)
    {
        var recipients = Recipients.Of(facts);
        var time = NoticeTime.OnPrivateWork(facts, calendar);
        var later = LaterLender.Reaches(facts, time);
        if (recipients.Count == 0)
            return Reach.Everything with { Later = later };
        var each = new RecipientReach[recipients.Count];
        List<Recipient>? missing = null;
        for (var i = 0; i < each.Length; i++)
        {
            each[i] = NoticesGiven.To(facts, recipients[i], time);
            if (each[i].Kind == ReachKind.NotGiven)
                (missing ??= []).Add(recipients[i]);
        }

        var lien = recipients[0].Who == PartyCapacity.Owner ? OfOwnerAndContractor(each[0], each[1]) : OfTheLenderBestTold(each);
        return lien with
        {
            Missing = missing is null ? [] : missing, Each = each, Later = later,
            IsInDoubt = lien.IsInDoubt || IsNarrowerToward(each, lien),
            IfGivenToday = time.InTime(facts.AsOf),
        };
    }

    /// <summary>
    /// The owner's missing notice takes the lien away. A direct contractor left out puts it in doubt only: Industrial Asphalt v. Garrett
    /// (1986) 180 Cal.App.3d 1001. So does one that was told later than the owner: told late it must not stand worse than never told.
    /// </summary>
    [Rule("Civ. Code § 8200(c)", Sure = Sure.OurReading)]
    private static Reach OfOwnerAndContractor(RecipientReach owner, RecipientReach contractor)
    {
        if (owner.Kind == ReachKind.NotGiven || contractor.Kind == ReachKind.NotGiven)
            return Alone(owner);
        if (ReachesLessFar(contractor, owner.Kind, owner.From))
            return Alone(owner) with { IsInDoubt = true };
        // Of days in doubt the contractor's may be the later one, and takes no more than one that surely is.
        var mayBeLater = contractor.Kind == ReachKind.Late && contractor.From.Earliest > owner.From.Earliest;
        return new Reach(owner.Kind, owner.From, DaySpan.Later(owner.Given!.Value, contractor.Given!.Value), [],
            (owner.Doubt | contractor.Doubt).HasFlag(NoticeDoubt.ByRoll))
        {
            MayBeInTime = owner.MayBeInTime && (contractor.MayBeInTime || contractor.Kind == ReachKind.Whole),
            IsInDoubt = mayBeLater || (owner.Doubt | contractor.Doubt) != NoticeDoubt.None,
        };
    }

    /// <summary>
    /// Where notice is due to lenders only, the lien goes by the one told first; toward one that was told late or not at all it is in
    /// doubt, as it is for a subcontractor (our reading). Notice to a reputed lender will do, where the claimant reasonably took it for the
    /// lender: Force Framing v. Chinatrust Bank (2010) 187 Cal.App.4th 1368.
    /// </summary>
    [Rule("Civ. Code § 8200(e)(2)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8200(a)(3)", Sure = Sure.Opinion)]
    private static Reach OfTheLenderBestTold(RecipientReach[] lenders)
    {
        var best = lenders[0];
        foreach (var lender in lenders)
        {
            if (Rank(lender) < Rank(best) || (Rank(lender) == Rank(best) && lender.Given?.Latest < best.Given?.Latest))
                best = lender;
        }

        return Alone(best);
    }

    private static int Rank(RecipientReach reached) => (reached.Kind, reached.Doubt) switch
    {
        (ReachKind.Whole, NoticeDoubt.None) => 0,
        (ReachKind.Whole, _) => 1,
        (ReachKind.Late, _) => 2,
        _ => 3,
    };

    private static Reach Alone(RecipientReach reached) =>
        new(reached.Kind, reached.From, reached.Given, [], reached.Kind != ReachKind.NotGiven && reached.Doubt.HasFlag(NoticeDoubt.ByRoll))
        {
            MayBeInTime = reached.MayBeInTime,
            IsInDoubt = reached.Kind != ReachKind.NotGiven && reached.Doubt != NoticeDoubt.None,
        };

    // A lender told late must not stand better than one that was never told.
    private static bool IsNarrowerToward(RecipientReach[] each, Reach lien)
    {
        foreach (var reached in each)
        {
            if (reached.To.Who == PartyCapacity.ConstructionLender && reached.Kind != ReachKind.NotGiven && IsNarrower(reached, lien))
                return true;
        }

        return false;
    }

    /// <summary>Whether what was given to one covers less, or is less sure, than what the lien goes by.</summary>
    internal static bool IsNarrower(RecipientReach reached, Reach lien) => reached.Doubt != NoticeDoubt.None
        || ReachesLessFar(reached, lien.Kind, lien.From);

    /// <summary>Whether it was given later than what the lien goes by, so that it covers less.</summary>
    internal static bool ReachesLessFar(RecipientReach reached, ReachKind kind, DaySpan? from) =>
        reached.Kind == ReachKind.Late && (kind == ReachKind.Whole || reached.From.Latest > from?.Latest);

    private static Standing WhileNotGiven(FactsAsOf facts, Reach reach) => reach.Each[0].From.Earliest == LocalDate.MinIsoValue
        ? reach.Each[0].Doubt == NoticeDoubt.None && !reach.MayHaveBeenGiven ? Standing.Open : Standing.InDoubt
        : facts.FirstFurnished is null ? Standing.InDoubt : InReach(facts, reach);

    /// <summary>What the finding is called.</summary>
    internal const string Title = "Preliminary notice";

    /// <summary>The finding <c>preliminary-notice.last-day</c>; where notice is due, with how far one given late reaches back.</summary>
    internal static Finding Finding(FactsAsOf facts, Reach reach, Outcome notice) =>
        notice.Finding("preliminary-notice.last-day", Title) with
    {
        IfLate = reach.Kind == ReachKind.NoneDue ? null
            : (facts.Numbers.On(Number.NoticeAfterFurnishing, facts.FirstFurnished?.Earliest ?? facts.AsOf),
                Reach.LookBack(facts, facts.AsOf)),
    };

    /// <summary>The last day to give it, and whether it was given.</summary>
    [Rule("Civ. Code § 8204(a)")]
    public static Outcome LastDay(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        if (reach.Kind == ReachKind.NoneDue)
        {
            return new Outcome(
                Deadline.WithoutDay(Standing.Kept), new Words(() => NoticeReasons.NoneDue(facts), () => NoticeReasons.AskForLender(facts)));
        }

        var time = NoticeTime.OnPrivateWork(facts, calendar);
        var readings = new List<Reading>(1);
        if (time.Last is { } last)
        {
            var days = facts.FirstFurnished is { } first ? facts.Numbers.On(Number.NoticeAfterFurnishing, first.Earliest) : null;
            readings.Add(Deadline.Own(
                last != days?.LastDay(facts.FirstFurnished!.Value.Earliest)
                    ? $"{facts.Numbers.On(Number.NoticeAfterCommencement, facts.Job.Work.Commenced!.Value).Text} after the work commenced"
                    : facts.FirstFurnished!.Value.IsExact
                    ? (Sentence)$"{days.Text} after first furnishing" : $"first furnishing on its earliest day",
                last, calendar));
            if (facts.FirstFurnished is { IsExact: false, Latest: var latest }
                && facts.Numbers.LastDay(Number.NoticeAfterFurnishing, latest) is var atTheLatest && atTheLatest > last)
                readings.Add(Deadline.Own($"first furnishing on its latest day", atTheLatest, calendar));
        }

        return new Outcome(
            Deadline.Of(StandingOf(facts, reach), readings, calendar, endKnown: !time.CommencementUnknown),
            new Words(() => NoticeReasons.OnPrivateWork(facts, reach), () => NoticeReasons.Questions(facts, reach, time)));
    }

    /// <summary>The finding <c>preliminary-notice.reaches-back-to</c>; null where no notice is due.</summary>
    [Rule("Civ. Code § 8204(a)")]
    public static Finding? ReachesBackTo(FactsAsOf facts, Reach reach)
    {
        if (reach.Kind == ReachKind.NoneDue)
            return null;
        var given = reach.Kind != ReachKind.NotGiven;
        var from = Reach.ReachedBy(facts, given ? reach.Given!.Value : new DaySpan(facts.AsOf, facts.AsOf));
        var back = Reach.LookBack(facts, given ? reach.Given!.Value.Latest : facts.AsOf);
        var readings = new List<Reading>();
        if (given)
        {
            readings.Add(new Reading(from.IsExact
                ? (Sentence)$"{back.Text} before the notice was given" : $"{back.Text} before the earliest day of notice", from.Earliest));
            if (!from.IsExact)
                readings.Add(new Reading($"{back.Text} before the latest day of notice", from.Latest));
        }
        else
        {
            readings.Add(new Reading($"if notice is given on the day of asking", from.Earliest));
        }

        return new Finding
        {
            Id = "preliminary-notice.reaches-back-to",
            Title = "The notice reaches back to",
            Standing = StandingOf(facts, reach),
            Readings = readings,
            Band = Deadline.BandOver(readings),
            Explain = () =>
            [
                reach.Kind == ReachKind.Whole
                    ? Reason.Of(InTime, $"The notice was in time, so everything furnished is within reach, also before this day.")
                    : Reason.Of(InTime, $"A late notice covers work furnished within {back} before it, from {from.Latest} on; a look-back "
                        + $"is never rolled."),
            ],
        };
    }

    private static Standing StandingOf(FactsAsOf facts, Reach reach) => reach.Kind switch
    {
        ReachKind.NoneDue => Standing.Kept,
        ReachKind.Whole => reach.GivenToAll ? Standing.Kept : Standing.InDoubt,
        // Left and mailed, it is complete some days later; one given by hand on the day of asking may still cover everything.
        ReachKind.Late when reach.IfGivenToday == NoticeDoubt.None => Standing.Open,
        ReachKind.Late when InReach(facts, reach) is var late => late == Standing.Lost
            ? reach.IfGivenToday is null ? late : Standing.InDoubt : reach.GivenToAll ? late : Standing.InDoubt,
        ReachKind.NotGiven when !facts.HasFurnished => Standing.NotYet,
        ReachKind.NotGiven => WhileNotGiven(facts, reach),
        _ => throw new InvalidOperationException($"No such reach: {reach.Kind}."),
    };

    /// <summary>
    /// Of a notice that is late or not given: narrowed to what it reaches; in doubt where it may reach nothing, by days in doubt; else
    /// lost.
    /// </summary>
    internal static Standing InReach(FactsAsOf facts, Reach reach) => InReach(facts, reach, Covers(facts, reach));

    /// <summary>
    /// The same of what was furnished already: for what is still to come another notice can be given, which saves nothing of what there is.
    /// </summary>
    internal static Standing InReachSoFar(FactsAsOf facts, Reach reach) => InReach(facts, reach, CoversFurnished(facts, reach));

    private static Standing InReach(FactsAsOf facts, Reach reach, Verdict covers) => covers switch
    {
        Verdict.Yes => Standing.Narrowed,
        Verdict.Open => Standing.InDoubt,
        Verdict.No => WithNothingInReach(facts, reach),
        var other => throw new InvalidOperationException($"No such verdict: {other}."),
    };

    // Where a notice holds no work: lost, unless one given on a day that nobody knows may have been in time, or none may have been due.
    private static Standing WithNothingInReach(FactsAsOf facts, Reach reach)
    {
        if (MayBeExcused(facts, reach) || ReachesFurtherToday(facts, reach))
            return Standing.InDoubt;
        if (!reach.MayHaveBeenGiven)
            return Standing.Lost;
        foreach (var each in reach.Each)
        {
            // One that was surely told too late for all of it takes the right away, whenever another was told.
            if (each is { Kind: ReachKind.Late, OnUnknownDay: null } && reach.IsCondition(each) && facts.Furnished.Count > 0
                && !Covers(facts, each))
                return Standing.Lost;
        }

        return Standing.InDoubt;
    }

    // Left and mailed, it is complete only some days from now: one given by hand today reaches further back.
    private static bool ReachesFurtherToday(FactsAsOf facts, Reach reach)
    {
        if (!(reach.Given?.Earliest > facts.AsOf))
            return false;
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Until.Latest >= Reach.LookBack(facts, facts.AsOf).LookBack(facts.AsOf))
                return true;
        }

        return false;
    }

    // Notice is due to lenders alone, and each came to be known on a day that may have been after the first of the work.
    private static bool MayBeExcused(FactsAsOf facts, Reach reach)
    {
        foreach (var each in reach.Each)
        {
            if (each.To.Who != PartyCapacity.ConstructionLender || !Recipients.MayNotBeKnown(facts, each.To.AnyOf[0]))
                return false;
        }

        return reach.Each.Count > 0;
    }

    private static bool Covers(FactsAsOf facts, RecipientReach each)
    {
        foreach (var furnished in facts.Furnished)
        {
            if (furnished.Until.Latest is not { } day || day >= each.From.Earliest)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Whether the reach holds any work of the claimant, past or to come. None comes once the furnishing or the contract has ended, or
    /// where the whole work was complete before the first day within reach; until then a delivery may be missing from the file.
    /// </summary>
    internal static Verdict Covers(FactsAsOf facts, Reach reach)
    {
        var told = facts.All<FurnishingEnded>().Count > 0 || facts.All<ContractEnded>().Count > 0;
        if (facts.Furnished.Count == 0 || !(told || reach.From?.Latest > reach.Complete))
            return Verdict.Yes;
        var covers = CoversFurnished(facts, reach);
        return covers == Verdict.No && !told && !(reach.From?.Earliest > reach.Complete) ? Verdict.Open : covers;
    }

    private static Verdict CoversFurnished(FactsAsOf facts, Reach reach)
    {
        var may = reach.MayBeInTime && facts.Furnished.Count > 0;
        foreach (var furnished in facts.Furnished)
        {
            if (reach.CertainlyCovers(furnished.Until.Earliest))
                return Verdict.Yes;
            may |= reach.PossiblyCovers(furnished.Until.Latest);
        }

        return may ? Verdict.Open : Verdict.No;
    }
}
