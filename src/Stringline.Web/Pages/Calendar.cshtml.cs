using Microsoft.AspNetCore.Mvc;
using Stringline.Tables;
using Stringline.Law.Counting;
using Stringline.Law.Sources;
using Stringline.Places;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>
/// The days to act of the whole office, week by week, with the days on which offices and courts are closed. Made to be printed.
/// </summary>
internal sealed class CalendarModel(Desk office, NavLinks ways) : StepsPage(ways)
{
    private const int UsualWeeks = 8;
    private const int MostWeeks = 53;
    private const int MostOfOneWeek = 200;
    private const int MostChoices = 300;

    /// <summary>A day of the first week; blank for today.</summary>
    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    /// <summary>How many weeks.</summary>
    [BindProperty(SupportsGet = true)]
    public int Weeks { get; set; } = UsualWeeks;

    /// <summary>What is wrong with the day that was asked for; null where nothing is.</summary>
    public string? Fault { get; private set; }

    /// <summary>Today.</summary>
    public LocalDate Today => office.Today;

    /// <summary>The weeks.</summary>
    public IReadOnlyList<OfficeWeek> Shown { get; private set; } = [];

    /// <summary>Steps whose day is past, before the first week; only where that is this week.</summary>
    public IReadOnlyList<StepLine> Past { get; private set; } = [];

    /// <summary>Reads the weeks from the store's indexes.</summary>
    public void OnGet()
    {
        var asked = Today;
        if (!string.IsNullOrWhiteSpace(From) && DayText.Read(From.Trim(), out asked) is { } expected)
            (Fault, asked) = ($"\"{From}\" cannot be read as a day: it should be {expected}.", Today);
        if (asked < Today.PlusYears(-5) || asked > Today.PlusYears(20))
            (Fault, asked) = ($"\"{From}\" is too far from today.", Today);
        Weeks = Math.Clamp(Weeks, 1, MostWeeks);
        Choices = office.Journal.Choices(MostChoices);
        var first = MondayOf(asked);
        var closings = CountyClosings.All.Where(row => Choices.Counties.Contains(row.County)).ToLookup(row => row.Day);
        Shown = [.. Enumerable.Range(0, Weeks).Select(week => Week(first.PlusWeeks(week), closings))];
        if (first == MondayOf(Today))
            Past = Steps(new LocalDate(1, 1, 1), first.PlusDays(-1));
    }

    /// <summary>The Monday of a day's week.</summary>
    public static LocalDate MondayOf(LocalDate day) => day.PlusDays(1 - (int)day.DayOfWeek);

    private OfficeWeek Week(LocalDate monday, ILookup<LocalDate, CountyClosing> closings)
    {
        var steps = Steps(monday, monday.PlusDays(6)).ToLookup(line => line.Step.ActBy);
        var days = Enumerable.Range(0, 7).Select(monday.PlusDays)
            .Select(day => new OfficeDay(day, Closed(day, closings[day]), [.. steps[day]]))
            .Where(day => day.Steps.Count > 0 || day.Closed.Count > 0)
            .ToList();
        return new OfficeWeek(monday, days, steps.Sum(day => day.Count()) == MostOfOneWeek);
    }

    // By dollars the store picks, by day they stand.
    private IReadOnlyList<StepLine> Steps(LocalDate from, LocalDate through) =>
        [.. office.Journal.Steps(new StepQuery(Filter, from, through, MostOfOneWeek)).OrderBy(line => line.Step.ActBy)];

    private static List<string> Closed(LocalDate day, IEnumerable<CountyClosing> closings)
    {
        List<string> closed =
            day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday || OpenDays.Statutory.WhyClosed(day) is not { } why ? [] : [why];
        closed.AddRange(closings.Select(row =>
            $"{row.County} County closed: {row.Why}{(row.Sure == Sure.Read ? "" : " (not certain: ask the office)")}"));
        return closed;
    }
}

/// <summary>A week of the calendar.</summary>
/// <param name="Monday">Its Monday.</param>
/// <param name="Days">The days on which something is due or something is closed.</param>
/// <param name="MayBeMore">Whether more is due than is shown.</param>
internal sealed record OfficeWeek(LocalDate Monday, IReadOnlyList<OfficeDay> Days, bool MayBeMore);

/// <summary>A day of the calendar.</summary>
/// <param name="Day">The day.</param>
/// <param name="Closed">Why offices or courts are closed on it, beyond a weekend.</param>
/// <param name="Steps">What is due.</param>
internal sealed record OfficeDay(LocalDate Day, IReadOnlyList<string> Closed, IReadOnlyList<StepLine> Steps);
