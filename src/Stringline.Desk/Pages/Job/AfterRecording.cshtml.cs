using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Desk.Line;
using Stringline.Desk.Papers;
using Stringline.Desk.Web;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Pages.Job;

/// <summary>The time after a claim of lien was taken to the counter: what happened there, and what must be done within the 90 days.</summary>
internal sealed class AfterRecordingModel(Office office, Ways ways) : PageModel
{
    /// <summary>The job's id.</summary>
    [BindProperty(SupportsGet = true)]
    public long Id { get; set; }

    /// <summary>The job.</summary>
    public OpenJob Job { get; private set; } = null!;

    /// <summary>What is known of the claim.</summary>
    public AfterRecording After { get; private set; } = null!;

    /// <summary>The findings about this time.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>What can be done: in words, for which finding its papers are, and which form enters it.</summary>
    public static IReadOnlyList<(string Title, string Told, string Finding, string Form)> Acts { get; } =
    [
        ("Sue to enforce the lien", "A lawyer files the action within the 90 days. Neither a demand nor a notice stops them.", "enforcement.last-day", "action-filed"),
        ("Give credit", "Where you and the owner agree on time to pay: both sign, and the notice of credit is recorded within the 90 days. The time to sue then runs from the end of the credit, at most one year after completion.", "credit.last-day", "credit-recorded"),
        ("Notice of pendency of action", "Recorded within 20 days after the suit is filed; buyers and lenders are bound from its recording.", "lis-pendens.last-day", "lis-pendens-recorded"),
        ("Release", "Once you are paid, or the claim cannot stand: it names the owners and the claim's instrument number, and is signed before a notary.", "release.when-paid", "release-recorded"),
        ("The owner acted", "A demand for release, or a release bond in place of the property: enter the day you got it.", "release.answer-by", "release-demanded"),
    ];

    /// <summary>The address of the papers for a finding; null where there are none. A suit is a lawyer's paper.</summary>
    public string? Papers(string finding) => ways.Has("/Job/Papers") && finding != "enforcement.last-day" && PaperFit.ServesAny(finding) ? $"/job/{Id}/papers?for={Uri.EscapeDataString(finding)}" : null;

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (office.Open(Id) is not { } job)
            return NotFound();
        Job = job;
        ViewData["Job"] = job;
        After = AfterRecording.Of(job);
        Findings = AfterRecording.Findings(job.Assessment);
        return Page();
    }
}
