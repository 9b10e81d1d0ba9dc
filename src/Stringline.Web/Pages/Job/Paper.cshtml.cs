using Microsoft.AspNetCore.Mvc;
using Stringline.Web.Papers;
using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Waiver;
using Stringline.Places;

namespace Stringline.Web.Pages.Job;

/// <summary>One paper of a job: what it is for, what it asks, what is missing, and once nothing is, the paper itself.</summary>
internal sealed class PaperModel(Desk desk, NavLinks ways, PaperWorkbench bench) : JobPage(desk)
{
    /// <summary>The paper's id.</summary>
    [BindProperty(SupportsGet = true, Name = "paper")]
    public string PaperId { get; set; } = "";

    /// <summary>What was asked for.</summary>
    public PaperRequest Asked { get; private set; } = null!;

    /// <summary>The fields of its form.</summary>
    public IReadOnlyList<PaperField> Fields { get; private set; } = [];

    /// <summary>What is missing.</summary>
    public IReadOnlyList<Refusal> Missing { get; private set; } = [];

    /// <summary>What a waiver gives away; null on any other paper, and while nothing says how far it reaches or what is paid.</summary>
    public WaiverOutlook? Outlook { get; private set; }

    /// <summary>The papers; null where they are not made.</summary>
    public PacketOutcome.Made? Made { get; private set; }

    /// <summary>The finding whose day governs it; null where no day does.</summary>
    public Finding? Governing => Asked.Paper.Deadline is { } id ? Job.Assessment.Find(id) : null;

    /// <summary>The question of the county, for a paper that is recorded; null where it is none.</summary>
    public Finding? County => Asked.Paper.Use == PaperUse.Recorded ? Job.Assessment.Find(SiteCounty.FindingId) : null;

    /// <summary>The parties to whom it may go.</summary>
    public IReadOnlyList<Party> Parties => Job.Facts.Parties;

    /// <summary>What is typed in a field.</summary>
    public IReadOnlyList<string> Typed(string field) => Asked.Typed.GetValueOrDefault(field) ?? [];

    /// <summary>The place of which a refusal speaks, in words.</summary>
    public string Place(Refusal refusal) => PageWords.Head(refusal.Where, Fields, Job.Assessment);

    /// <summary>Where a refusal is mended; null where no page can.</summary>
    public Link? Fix(Refusal refusal) => FixLink.Of(refusal, Job, ways);

    /// <summary>Where what happened with the paper is entered.</summary>
    public IReadOnlyList<Link> Afterwards => [.. AfterPaper.Of(Asked.Paper, Asked.Options, Job, ways)];

    /// <summary>The address of one of the files.</summary>
    public string Address(string file) =>
        $"/job/{Id}/papers/{Asked.Paper.Id}/{Uri.EscapeDataString(file)}{Asked.Query(Job.Stored.Tip.Sequence)}";

    /// <summary>Shows it.</summary>
    public IActionResult OnGet()
    {
        if (!Find() || PaperCatalogue.Find(PaperId) is not { } paper)
            return NotFound();
        Asked = PaperRequest.Read(paper, Request.Query);
        Fields = [.. paper.Asks.Select(PaperField.Of)];
        if (Asked.Faults.Count > 0)
            return Page();
        if (paper.Waiver is { } form)
            Outlook = WaiverOrder.Of(form, Job.Facts, Job.Assessment, Asked.Options).Outlook;
        switch (bench.Make(Job, Asked))
        {
            case PacketOutcome.Refused refused:
                Missing = refused.Refusals;
                break;
            case PacketOutcome.Made made when Asked.MayBeMade:
                Made = made;
                SecurityHeaders.Framing(HttpContext, Frames.ShowsPapers);
                break;
            case PacketOutcome.Made:
                break;
            default:
                throw new InvalidOperationException("Neither made nor refused.");
        }

        return Page();
    }
}
