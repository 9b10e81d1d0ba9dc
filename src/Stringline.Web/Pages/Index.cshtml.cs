using Microsoft.AspNetCore.Mvc;
using Stringline.Office.Backups;
using Stringline.Office.Portfolio;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>The desk: what needs doing, ordered by what is lost if it is not done.</summary>
internal sealed class IndexModel(Desk office, DeskFigures figures, PortfolioRefresh refresh, DailyBackup backup, NavLinks ways)
    : StepsPage(ways)
{
    private const int Shown = 25;
    private const int ShownOfOne = 200;

    /// <summary>Only this section, by its short name; with it, more rows are shown.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Only { get; set; }

    /// <summary>Which page of that section, from 1.</summary>
    [BindProperty(SupportsGet = true, Name = "p")]
    public int PageNumber { get; set; } = 1;

    /// <summary>Today.</summary>
    public LocalDate Today => office.Today;

    /// <summary>The sections, most urgent first.</summary>
    public IReadOnlyList<DeskSection> Sections { get; private set; } = [];

    /// <summary>Searches due within the week, by county.</summary>
    public IReadOnlyList<WatchTotal> Watches { get; private set; } = [];

    /// <summary>How many jobs there are in the store.</summary>
    public long Jobs { get; private set; }

    /// <summary>How far the assessment of the portfolio has come; null while none is under way.</summary>
    public PortfolioProgress? Progress => refresh.Progress;

    /// <summary>How it stands with the backups.</summary>
    public BackupStanding Backups => backup.Standing();

    /// <summary>Reads the page from the store's indexes; no job is assessed for it.</summary>
    public void OnGet()
    {
        var journal = office.Journal;
        Jobs = journal.CountJobs();
        if (Jobs == 0)
            return;
        var today = Today;
        LocalDate[] ends = [today, today.PlusDays(6), today.PlusDays(30)];
        var sums = figures.Of(Filter, ends);
        var totals = sums.Totals;
        var sections = new List<DeskSection>
        {
            new("now", "Today or overdue", new LocalDate(1, 1, 1), ends[0], totals[0]),
            new("week", "This week", today.PlusDays(1), ends[1], totals[1]),
            new("month", "Next 30 days", ends[1].PlusDays(1), ends[2], totals[2]),
            new("later", "Later", ends[2].PlusDays(1), new LocalDate(9999, 12, 31), totals[3]),
        };
        Sections = [.. sections.Where(section => Only is null || section.Key == Only)
            .Select(section => section with { Lines = Lines(journal, section) })];
        Watches = Only is null ? sums.Watches : [];
        Choices = sums.Choices;
    }

    private IReadOnlyList<StepLine> Lines(IJournal journal, DeskSection section) => section.Total.Steps == 0
        ? []
        : journal.Steps(new StepQuery(Filter, section.From, section.Through, Limit) { Skip = Only is null
            ? 0 : (Math.Clamp(PageNumber, 1, 100_000) - 1) * Limit });

    /// <summary>At most so many rows of a section are shown.</summary>
    public int Limit => Only is null ? Shown : ShownOfOne;
}

/// <summary>A section of the desk.</summary>
/// <param name="Key">Its short name in the address.</param>
/// <param name="Title">Its title.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day.</param>
/// <param name="Total">How much lies in it.</param>
internal sealed record DeskSection(string Key, string Title, LocalDate From, LocalDate Through, StepTotal Total)
{
    /// <summary>Its rows.</summary>
    public IReadOnlyList<StepLine> Lines { get; init; } = [];
}
