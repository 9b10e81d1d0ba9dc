using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PaymentBond;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Plan;

/// <summary>How often the county index is searched, so that a recorded notice of completion never eats the window unseen.</summary>
public static class IndexWatch
{
    /// <summary>Id of the finding.</summary>
    public const string Id = "index-watch.next-day";

    // Search the index, settle the amount, sign, mail the copy, go to the counter.
    private const int OpenDaysToRecord = 5;

    /// <summary>
    /// The finding <c>index-watch.next-day</c>: for the claim of lien and the stop payment
    /// notice while one of them can still be recorded or given, and for the bond notice where only that is left. None where no act is left
    /// or nothing has been furnished. Two searches lie no further apart than the window that a recorded notice leaves, less the index's lag
    /// and the days it takes to act.
    /// </summary>
    /// <param name="facts">The facts.</param>
    /// <param name="main">Whether the claim of lien or the stop payment notice is left.</param>
    /// <param name="bond">Whether the bond notice is left.</param>
    /// <param name="settings">What to reckon with.</param>
    /// <param name="calendar">The calendar.</param>
    [Rule("Civ. Code § 8414(b)(2)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 8612(b)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9356(a)", Sure = Sure.OurReading)]
    [Rule("Civ. Code § 9560(b)", Sure = Sure.OurReading)]
    public static Finding? Finding(FactsAsOf facts, bool main, bool bond, PlanSettings settings, OpenDays calendar) =>
        facts.HasFurnished && (main || bond) ? Watch(facts, main ? ToClaim(facts) : ToTellTheSurety(facts), settings, calendar) : null;

    /// <summary>Whether an act that stands so is left to do.</summary>
    internal static bool IsLeft(Standing act) => act is not (Standing.Kept or Standing.Done or Standing.Lost);

    /// <summary>The same of the bond notice: in doubt without a day it is one that is not needed, on a bond that may not be.</summary>
    internal static bool IsNoticeLeft(Standing notice, LocalDate? actBy) =>
        IsLeft(notice) && (actBy is not null || notice != Standing.InDoubt);

    /// <summary>The days that a recorded notice of completion leaves.</summary>
    /// <param name="Section">The section that says so.</param>
    /// <param name="Days">How long.</param>
    private readonly record struct Window(string Section, NumberRow Days);

    private static Window ToClaim(FactsAsOf facts) => facts.Job.Work.Kind == WorkKind.Public
        ? new("Civ. Code § 9356(a)", facts.Numbers.On(Number.GiveNoticeAfterRecording, facts.AsOf))
        : new("Civ. Code § 8414(b)(2)", facts.Numbers.On(TimeToClaim.AfterNotice(facts.Job.Claimant), facts.AsOf));

    private static Window ToTellTheSurety(FactsAsOf facts)
    {
        var law = facts.Job.Work.Kind == WorkKind.Public ? BondLaw.Public : BondLaw.Private;
        return new(law.Section, facts.Numbers.On(law.FromNotice, facts.AsOf));
    }

    private static Finding Watch(FactsAsOf facts, Window window, PlanSettings settings, OpenDays calendar)
    {
        var search = IndexSearches.LeastLate(facts);
        var next = search?.On.Earliest is { } searched
            ? NextSearch(searched, window.Days, settings, calendar) : FirstOpenDayFrom(facts.AsOf, calendar);
        var reading = new Reading(search is null ? (Sentence)$"no search yet" : $"after the last search", next);
        return new Finding
        {
            Id = Id,
            Title = "Search the county index",
            Standing = facts.AsOf <= next ? Standing.Open : Standing.InDoubt,
            IsDeadline = true,
            ActBy = next,
            Readings = [reading],
            Band = new Band(reading, reading),
            Explain = () => Why(facts, search, window, settings, calendar),
            Ask = () => IndexSearches.Ask(facts),
        };
    }

    private static List<Reason> Why(FactsAsOf facts, IndexSearched? search, Window window, PlanSettings settings, OpenDays calendar)
    {
        var why = new List<Reason>
        {
            Reason.Of(window.Section, $"A notice of completion leaves {window.Days} from its recording. The index "
                + $"lags {settings.IndexLagDays} open days (common practice, no source), "
                + $"and {OpenDaysToRecord + settings.ReserveDays} open days are needed from the search to the act-by day, both among "
                + $"them."),
        };
        if (settings.MailBacklogDays >= window.Days.Count)
            why.Add(Reason.Of(window.Section, $"By mail with a backlog of {settings.MailBacklogDays} days a notice of completion cannot be "
                + $"answered at all: plan for the counter or a courier."));
        var counties = facts.Job.Work.Site.AlsoIn;
        if (counties.Count > 0)
            why.Add(Reason.Of("Civ. Code § 8060",
                $"The site lies in {facts.Job.Work.Site.County} and {string.Join(" and ", counties)}: a notice may be recorded in each, so "
                    + $"each index is searched, and the one searched least lately sets the day."));
        if (search?.On.Earliest is not { } searched)
        {
            why.Add(IndexSearches.NotSearched(facts).ToArray() is { Length: > 0 } unsearched
                ? Reason.Of("", $"The file shows no search yet of the index of {string.Join(" and ", unsearched)}: search it at once.",
                    facts.All<IndexSearched>())
                : Reason.Of("", $"The file shows no search yet: search at once.", facts.All<IndexSearched>()));
            return why;
        }

        why.Add(Reason.Of("", $"Searched {searched}.", [search]));
        var (unseen, actBy, next) = Answerable(searched, window.Days, settings, calendar);
        why.Add(Reason.Of(window.Section, $"A notice recorded on {unseen} would not have shown in the search of {searched}; it would have "
            + $"to be answered by {actBy}, so the next search is due by {next}."));
        if (next <= searched)
            why.Add(Reason.Of("", $"With these settings no search comes soon enough: search every open day."));
        return why;
    }

    private static LocalDate NextSearch(LocalDate searched, NumberRow window, PlanSettings settings, OpenDays calendar) =>
        Answerable(searched, window, settings, calendar).Next is var next && next > searched
        ? next : FirstOpenDayFrom(searched.PlusDays(1), calendar);

    // Against the calendar itself: the earliest notice that the last search could not show yet must still be answered in time.
    private static (LocalDate Unseen, LocalDate ActBy, LocalDate Next) Answerable(LocalDate searched, NumberRow window,
        PlanSettings settings, OpenDays calendar)
    {
        var unseen = settings.IndexLagDays == 0 ? searched : BackPlan.OpenDaysBefore(searched, settings.IndexLagDays - 1, calendar);
        var actBy = calendar.LastOpenDayOnOrBefore(window.LastDay(unseen));
        return (unseen, actBy, BackPlan.OpenDaysBefore(actBy, settings.ReserveDays + OpenDaysToRecord - 1, calendar));
    }

    private static LocalDate FirstOpenDayFrom(LocalDate day, OpenDays calendar)
    {
        while (!calendar.IsOpen(day))
            day = day.PlusDays(1);
        return day;
    }
}
