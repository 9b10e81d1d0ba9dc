using Stringline.Law.ClaimOfLien;
using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Time;

namespace Stringline.Law.Plan;

/// <summary>How often the county index is searched, so that a recorded notice of completion never eats the window unseen.</summary>
public static class IndexWatch
{
    // Search the index, settle the amount, sign, mail the copy, go to the counter.
    private const int OpenDaysToRecord = 5;

    /// <summary>
    /// The finding <c>index-watch.next-day</c>; none where a claim is recorded or nothing has been furnished. Two searches lie no
    /// further apart than the window the notice leaves, less the index's lag and the days it takes to record.
    /// </summary>
    [Rule("Civ. Code § 8414(b)(2)", Sure = Sure.OurReading)]
    public static Finding? Finding(FactsAsOf facts, Finding claim, PlanSettings settings, OpenDays calendar) =>
        facts.HasFurnished && !IsOver(claim) ? Watch(facts, new Window("Civ. Code § 8414(b)(2)", LastDay.DaysAfterNotice(facts.Job.Claimant)), settings, calendar) : null;

    /// <summary>The days that a recorded notice of completion leaves.</summary>
    /// <param name="Section">The section that says so.</param>
    /// <param name="Days">The days.</param>
    internal readonly record struct Window(string Section, int Days);

    /// <summary>Whether nothing is left of an act for which the watch is kept.</summary>
    internal static bool IsOver(Finding act) => act.Standing is Standing.Kept or Standing.Done or Standing.Lost;

    /// <summary>Takes the watch out where nothing it is kept for is left, whether by its own clock or because a condition of it is lost, such as the license.</summary>
    internal static void EndWith(List<Finding> findings)
    {
        var watch = -1;
        for (var i = 0; i < findings.Count; i++)
        {
            if (findings[i].Id == "index-watch.next-day")
                watch = i;
            else if (findings[i].Id is "claim-of-lien.last-day" or "stop-payment-notice.last-day" or "payment-bond.notice-last-day" && !IsOver(findings[i]))
                return;
        }

        if (watch >= 0)
            findings.RemoveAt(watch);
    }

    /// <summary>The finding, for a window.</summary>
    internal static Finding Watch(FactsAsOf facts, Window window, PlanSettings settings, OpenDays calendar)
    {
        var search = IndexSearches.LeastLate(facts);
        var next = search?.On.Earliest is { } searched ? NextSearch(searched, window.Days, settings, calendar) : FirstOpenDayFrom(facts.AsOf, calendar);
        var reading = new Reading(search is null ? "no search yet" : "after the last search", next);
        return new Finding
        {
            Id = "index-watch.next-day",
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
            Reason.Of(window.Section, $"A notice of completion leaves {window.Days} days from its recording. The index lags {settings.IndexLagDays} open days (common practice, no source), and {OpenDaysToRecord + settings.ReserveDays} open days are needed from the search to the act-by day, both among them."),
        };
        if (settings.MailBacklogDays >= window.Days)
            why.Add(Reason.Of(window.Section, $"By mail with a backlog of {settings.MailBacklogDays} days a notice of completion cannot be answered at all: plan for the counter or a courier."));
        var counties = facts.Job.Work.Site.AlsoIn;
        if (counties.Count > 0)
            why.Add(Reason.Of("Civ. Code § 8060", $"The site lies in {facts.Job.Work.Site.County} and {string.Join(" and ", counties)}: a notice may be recorded in each, so each index is searched, and the one searched least lately sets the day."));
        if (search?.On.Earliest is not { } searched)
        {
            why.Add(IndexSearches.NotSearched(facts).ToArray() is { Length: > 0 } unsearched
                ? Reason.Of("", $"The file shows no search yet of the index of {string.Join(" and ", unsearched)}: search it at once.", facts.All<IndexSearched>())
                : Reason.Of("", $"The file shows no search yet: search at once.", facts.All<IndexSearched>()));
            return why;
        }

        why.Add(Reason.Of("", $"Searched {searched}.", [search]));
        var (unseen, actBy, next) = Answerable(searched, window.Days, settings, calendar);
        why.Add(Reason.Of(window.Section, $"A notice recorded on {unseen} would not have shown in the search of {searched}; it would have to be answered by {actBy}, so the next search is due by {next}."));
        if (next <= searched)
            why.Add(Reason.Of("", $"With these settings no search comes soon enough: search every open day."));
        return why;
    }

    private static LocalDate NextSearch(LocalDate searched, int window, PlanSettings settings, OpenDays calendar) =>
        Answerable(searched, window, settings, calendar).Next is var next && next > searched ? next : FirstOpenDayFrom(searched.PlusDays(1), calendar);

    // Against the calendar itself: the earliest notice that the last search could not show yet must still be answered in time.
    private static (LocalDate Unseen, LocalDate ActBy, LocalDate Next) Answerable(LocalDate searched, int window, PlanSettings settings, OpenDays calendar)
    {
        var unseen = settings.IndexLagDays == 0 ? searched : BackPlan.OpenDaysBefore(searched, settings.IndexLagDays - 1, calendar);
        var actBy = calendar.LastOpenDayOnOrBefore(Period.LastDay(unseen, window));
        return (unseen, actBy, BackPlan.OpenDaysBefore(actBy, settings.ReserveDays + OpenDaysToRecord - 1, calendar));
    }

    private static LocalDate FirstOpenDayFrom(LocalDate day, OpenDays calendar)
    {
        while (!calendar.IsOpen(day))
            day = day.PlusDays(1);
        return day;
    }
}
