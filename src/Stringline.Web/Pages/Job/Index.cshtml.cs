using Microsoft.AspNetCore.Mvc;
using Stringline.Web.Drawings;
using Stringline.Office.Portfolio;
using Stringline.Tables;
using Stringline.Law.Counting;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Pages.Job;

/// <summary>One job: its line, where every right stands, what is open, and its journal.</summary>
internal sealed class IndexModel(Desk desk, NavLinks ways) : JobPage(desk)
{
    /// <summary>The day as known on which the job is shown; blank for today.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Known { get; set; }

    /// <summary>The first day of the line that is shown; blank for the beginning.</summary>
    [BindProperty(SupportsGet = true)]
    public string? From { get; set; }

    /// <summary>The last day of the line that is shown; blank for the end.</summary>
    [BindProperty(SupportsGet = true)]
    public string? To { get; set; }

    /// <summary>What is wrong with a day that was asked for; null where nothing is.</summary>
    public string? Fault { get; private set; }

    /// <summary>Today.</summary>
    public LocalDate Today => Desk.Today;

    /// <summary>The line.</summary>
    public LinePlan Line { get; private set; } = null!;

    /// <summary>The findings by remedy, in the order in which a person asks.</summary>
    public IEnumerable<IGrouping<string, Finding>> ByRemedy => Job.Assessment.Findings
        .GroupBy(finding => Remedies.Of(finding))
        .OrderBy(group => Remedies.All.ToList().IndexOf(group.Key));

    /// <summary>Open questions, those that move most days first, then those that move most dollars.</summary>
    public IReadOnlyList<(Finding Finding, Question Question)> Questions => [.. Job.Assessment.Findings
        .SelectMany(finding => finding.Questions.Select(question => (finding, question)))
        .OrderByDescending(open => open.question.Days ?? 0)
        .ThenByDescending(open => open.question.Dollars ?? 0)];

    /// <summary>The page on which a finding's step is done; null where the finding asks for no step.</summary>
    public Link? StepOf(Finding finding) => Job.Assessment.Next.FirstOrDefault(step => step.Finding == finding.Id) is { } next
        ? WayOf(next)
        : null;

    /// <summary>The page on which a step is done.</summary>
    public Link WayOf(Law.Plan.NextStep step) =>
        ways.To(Job.Id, new Store.AssessedStep(step.Finding, step.Do, "", step.ActBy, step.Standing));

    /// <summary>The papers that prove an entry, as links, and the way to attach one.</summary>
    public Entering.EntryProofs ProofsOf(Law.Facts.Entry entry) => Entering.EntryProofs.Of(Job.Stored, entry);

    /// <summary>Shows the job.</summary>
    public IActionResult OnGet()
    {
        var known = Day(Known, "known");
        if (known > Today)
            (Fault, known) = ($"\"{Known}\" lies after today, {LawText.Day(Today)}: what will be known then is not known yet.", null);
        if (!Find(known))
            return NotFound();
        Line = LinePlan.Of(Job, Day(From, "from"), Day(To, "to"));
        return Page();
    }

    private LocalDate? Day(string? text, string field)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        if (DayText.Read(text.Trim(), out var day) is not { } expected)
            return day;
        Fault = $"\"{text}\" cannot be read as the day \"{field}\": it should be {expected}.";
        return null;
    }
}
