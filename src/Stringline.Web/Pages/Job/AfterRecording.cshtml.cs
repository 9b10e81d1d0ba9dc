using Microsoft.AspNetCore.Mvc;
using Stringline.Web.Drawings;
using Stringline.Web.Papers;
using Stringline.Law.Enforcement;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Pages.Job;

/// <summary>
/// The time after a claim of lien was taken to the counter: what happened there, and what must be done within the 90 days.
/// </summary>
internal sealed class AfterRecordingModel(Desk desk, NavLinks ways) : JobPage(desk)
{
    /// <summary>What is known of the claim.</summary>
    public AfterRecording After { get; private set; } = null!;

    /// <summary>What can be done.</summary>
    public IReadOnlyList<ActOnClaim> Acts { get; private set; } = [];

    /// <summary>The findings about this time.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>The address of the papers for an act; null where there are none of a claimant's own.</summary>
    public string? Papers(ActOnClaim act) => act.IsAttorneys ? null : Papers(act.Finding);

    /// <summary>The address of the papers for a finding; null where there are none.</summary>
    public string? Papers(string finding) => ways.Has("/Job/Papers") && PaperFit.ServesAny(finding)
        ? $"/job/{Id}/papers?for={Uri.EscapeDataString(finding)}"
        : null;

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (!Find())
            return NotFound();
        After = AfterRecording.Of(Job);
        Acts = ActOnClaim.On(Job.Assessment.Numbers, Job.Assessment.AsOf);
        Findings = AfterRecording.Findings(Job.Assessment);
        return Page();
    }
}
