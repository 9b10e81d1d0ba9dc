using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.PreliminaryNotice;

/// <summary>A construction lender that came to be known only after the claimant's first day of work.</summary>
public static class LaterLender
{
    /// <summary>Days from when the lender was known by which to give it notice: our own target, for no section sets a day.</summary>
    internal const int TargetDays = 20;

    /// <summary>What was given to such lenders; empty where there are none.</summary>
    internal static IReadOnlyList<RecipientReach> Reaches(FactsAsOf facts, NoticeTime time)
    {
        List<RecipientReach>? reaches = null;
        foreach (var lender in facts.Job.In(PartyCapacity.ConstructionLender))
        {
            if (facts.Job.Claimant.Role != ClaimantRole.Laborer && Recipients.IsNotYetKnown(facts, lender))
                (reaches ??= [])
                    .Add(NoticesGiven.To(facts, new Recipient(PartyCapacity.ConstructionLender, [lender], "Civ. Code § 8210"), time));
        }

        return reaches is null ? [] : reaches;
    }

    /// <summary>
    /// The finding <c>preliminary-notice.later-lender</c>; null where there is no such lender. Notice to it is no condition of the lien,
    /// but comes before a stop payment notice to it, and covers work from 20 days before it on. Twenty days from when it was known are our
    /// own target: no section sets a day.
    /// </summary>
    [Rule("Civ. Code § 8210", Sure = Sure.OurReading)]
    public static Finding? Finding(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        return reach.Later.Count == 0 ? null : ToGive(facts, reach, calendar);
    }

    private static Finding ToGive(FactsAsOf facts, Reach reach, OpenDays calendar)
    {
        var readings = new List<Reading>(reach.Later.Count);
        var standing = Standing.Kept;
        foreach (var lender in reach.Later)
        {
            var last = TimeLimit.LastDay(lender.To.AnyOf[0].KnownSince!.Value, TargetDays);
            var one = StandingOf(facts.AsOf, lender, last);
            // While another waits for its notice the day of one that was told is no day to act by.
            if (IsToBeTold(one) && !IsToBeTold(standing))
                readings.Clear();
            if (IsToBeTold(one) || !IsToBeTold(standing))
                readings.Add(Deadline.Own($"{TargetDays} days after {lender.To.AnyOf[0].Name} was known", last, calendar));
            standing = MoreUrgent(standing, one);
        }

        return Deadline.Of(standing, readings, calendar)
            .Finding("preliminary-notice.later-lender", "Preliminary notice to a lender that came later", () => Why(reach));
    }

    // What a later notice leaves out may be excused, since the lien is (Kodiak): never lost.
    private static Standing StandingOf(LocalDate asOf, RecipientReach lender, LocalDate last) => lender switch
    {
        { Given: null } => asOf <= last ? Standing.Open : Standing.InDoubt,
        { Doubt: not (NoticeDoubt.None or NoticeDoubt.ByRoll or NoticeDoubt.Commencement) } => Standing.InDoubt,
        { Given: { Latest: var given } } => given <= last ? Standing.Kept : Standing.Narrowed,
    };

    private static bool IsToBeTold(Standing standing) => standing is Standing.Open or Standing.InDoubt;

    private static Standing MoreUrgent(Standing a, Standing b) => Urgency(b) > Urgency(a) ? b : a;

    private static int Urgency(Standing standing) => standing switch
    {
        Standing.InDoubt => 3,
        Standing.Open => 2,
        Standing.Narrowed => 1,
        Standing.Kept => 0,
        _ => throw new InvalidOperationException($"Not a standing of this notice: {standing}."),
    };

    private static List<Reason> Why(Reach reach)
    {
        var why = new List<Reason>();
        foreach (var lender in reach.Later)
        {
            var party = lender.To.AnyOf[0];
            why.Add(Reason.Of("Civ. Code § 8210", $"{party.Name} came to be known {party.KnownSince!.Value}, after the claimant's first "
                + $"day of work, so that the lien does not hang on notice to it (Kodiak Industries v. Ellis (1986) 185 Cal.App.3d 75). "
                + $"Before a stop payment notice to it preliminary notice comes first all the same (Civ. Code § 8200(a)): each day later "
                + $"it covers a day less toward that lender. {LawText.Capital(NumberWords.Cardinal(TargetDays))} days are our target; the "
                + $"Code sets none."));
            why.Add(lender.Given is { } given
                ? Reason.Of("Civ. Code § 8204(a)", $"Given to {party.Name}: {given}; toward it work furnished "
                    + $"from {lender.From.Latest} on is surely covered.", [lender.Notice!])
                : Reason.Of("Civ. Code § 8200(a)(3)", $"The file shows none given to {party.Name}."));
        }

        return why;
    }
}
