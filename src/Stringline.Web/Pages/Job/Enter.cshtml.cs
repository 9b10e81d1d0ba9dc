using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Office.Entering;
using Stringline.Web.Entering;
using Stringline.Web.Papers;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Places;
using Stringline.Store;

namespace Stringline.Web.Pages.Job;

/// <summary>Enters a fact, corrects one, or takes one back: first the form, then what it will change, then it is written.</summary>
[RequestSizeLimit(ProofFiles.LargestForm)]
[RequestFormLimits(MultipartBodyLengthLimit = ProofFiles.LargestForm)]
internal sealed class EnterModel(Desk desk, WaitingProofs waiting) : JobPage(desk)
{
    /// <summary>The kind of entry; blank for the page on which one is chosen.</summary>
    [BindProperty(SupportsGet = true)]
    public string? What { get; set; }

    /// <summary>The id of the entry that is corrected or taken back.</summary>
    [BindProperty(SupportsGet = true)]
    public string? Supersedes { get; set; }

    /// <summary>The index of an entry that has no id and therefore cannot be corrected.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Unnamed { get; set; }

    /// <summary>The index of an entry that was just written.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Written { get; set; }

    /// <summary>The number of the last change that the page has shown.</summary>
    [BindProperty]
    public long Expected { get; set; }

    /// <summary>What is to be done with the form: look, write, or back to it.</summary>
    [BindProperty]
    public string? Step { get; set; }

    /// <summary>The papers that wait to be written.</summary>
    [BindProperty]
    public IReadOnlyList<string> Kept { get; set; } = [];

    /// <summary>Today.</summary>
    public LocalDate Today => Desk.Today;

    /// <summary>The form; null on the page on which one is chosen.</summary>
    public EntryForm? Form { get; private set; }

    /// <summary>What stands in it.</summary>
    public Typed Typed { get; private set; } = new();

    /// <summary>What is wrong.</summary>
    public Faults Faults { get; } = new();

    /// <summary>The entry that is corrected or taken back; null where a new one is entered.</summary>
    public Entry? Older { get; private set; }

    /// <summary>Why the older entry cannot be corrected; null where it can.</summary>
    public string? Closed { get; private set; }

    /// <summary>The entries as they would be written, one for each article number; none where the form is shown.</summary>
    public IReadOnlyList<Entry> Drafts { get; private set; } = [];

    /// <summary>How many entries were just written; 1 where the address does not say.</summary>
    [BindProperty(SupportsGet = true)]
    public int Count { get; set; } = 1;

    /// <summary>What it changes.</summary>
    public WhatChanges? Changes { get; private set; }

    /// <summary>What a waiver does; null for other entries.</summary>
    public string? WaiverTold { get; private set; }

    /// <summary>What is unlikely about the entry, for the person to look at again; nothing is refused for it.</summary>
    public IReadOnlyList<UnlikelyFact> Unlikely { get; private set; } = [];

    /// <summary>What others wrote while the form was open.</summary>
    public IReadOnlyList<string> Since { get; private set; } = [];

    /// <summary>The papers that wait, with their tokens.</summary>
    public IReadOnlyList<(string Token, Proof Proof)> Papers { get; private set; } = [];

    /// <summary>Shows the form, or the page on which one is chosen.</summary>
    public IActionResult OnGet()
    {
        if (!Open())
            return NotFound();
        if (Form is not null)
            Typed = Older is not null && Form != EntryForms.TakeBack ? Filled(Older) : Fresh(Form);
        return Page();
    }

    /// <summary>Looks at what was typed, and writes it once it was looked at.</summary>
    public async Task<IActionResult> OnPostAsync()
    {
        if (!Open() || Form is null)
            return NotFound();
        Typed = Request.Form.AsTyped();
        await TakePapersAsync().ConfigureAwait(false);
        if (Closed is not null || Step == "back")
            return Page();
        var draft = EntryDrafts.Of(Job.Facts, Form, Typed, Today, Supersedes);
        if (draft.Job is not { } job)
            return Refuse(draft.Faults);
        if (!Faults.None)
            return Page();
        if (Step == "save" && Expected == Job.Stored.Tip.Sequence)
            return Save(draft.Entries);
        if (Step == "save" && draft.Entries.All(entry => WrittenSince.Holds(Job.Stored, Expected, entry)))
            return Redirect(
                $"/job/{Id}/enter?written={LastAlike(draft.Entries[0]) + 1 - draft.Entries.Count}{Several(draft.Entries)}&again=1");
        Since = WrittenSince.Of(Job.Stored, Expected);
        return Show(job, draft.Entries);
    }

    /// <summary>What earlier entries of the job said in a field, last first, to be offered while typing.</summary>
    public IReadOnlyList<string> Offered(Asked asked) => !asked.Offers ? [] :
    [
        .. Job.Facts.Entries.Reverse().Select(entry => Typed.Of(entry).Typed[asked.Name])
            .Concat(asked.Name == "from" ? Job.Facts.Parties.Select(party => party.Name) : [])
            .Where(text => text.Length > 0).Distinct().Take(12),
    ];

    private bool Open()
    {
        if (!Find())
            return false;
        if (Unnamed is { } index)
            Older = Job.Facts.Entries.ElementAtOrDefault(Math.Max(index, 0));
        if (Supersedes is not null)
        {
            Older = Job.Facts.Entries.FirstOrDefault(entry => entry.Id == Supersedes);
            if (Older is null)
                return false;
            if (Replacement(Older) is { } newer)
                Closed = $"This entry was already replaced or taken back by {newer.Id ?? "another"}: correct that one.";
            What ??= Typed.Of(Older).What;
        }

        Form = EntryForms.Find(What);
        return (Form is not null || string.IsNullOrEmpty(What)) && (Form != EntryForms.TakeBack || Older is not null);
    }

    // A withdrawal may itself be taken back; then what it had taken back counts again and can be corrected.
    private Entry? Replacement(Entry older) => new FactsAsOf(Job.Facts, Today).Known.Contains(older) || older is Withdrawn
        ? null
        : Job.Facts.Entries.LastOrDefault(entry => entry.Supersedes == older.Id);

    private Typed Filled(Entry older)
    {
        var typed = Typed.Of(older).Typed;
        typed.Set(EntryDraft.Learned.Name, LawText.IsoDay(Today));
        return typed;
    }

    private Typed Fresh(EntryForm form)
    {
        var typed = new Typed();
        typed.Set(WhenTyped.Choice, WhenTyped.On);
        if (form.StartsToday)
            typed.Set(WhenTyped.Day, LawText.IsoDay(Today));
        typed.Set(EntryDraft.Learned.Name, LawText.IsoDay(Today));
        var last = Job.Facts.Entries.Reverse().Select(Typed.Of).FirstOrDefault(entry => entry.What == form.What).Typed;
        foreach (var asked in form.Fields.Where(asked => asked.Repeats && last is not null))
            typed.Set(asked.Name, last![asked.Name]);

        // What the paper said that was just made stands before what was entered last.
        foreach (var asked in form.Fields)
        {
            if (Request.Query.TryGetValue(Prefilled.Lead + asked.Name, out var told))
                typed.Set(asked.Name, [.. told.OfType<string>()]);
        }

        return typed;
    }

    private async Task TakePapersAsync()
    {
        var papers = new List<(string, Proof)>();
        foreach (var token in Kept)
        {
            if (waiting.Find(token) is { } proof)
                papers.Add((token, proof));
            else
                Faults.Add(ProofFiles.Field, "A paper that was chosen before is no longer here: choose it again.");
        }

        foreach (var proof in await ProofFiles.TakeAsync(Request.Form.Files, Faults).ConfigureAwait(false))
            papers.Add((waiting.Keep(proof), proof));
        Papers = papers;
    }

    private PageResult Refuse(Faults faults)
    {
        Faults.AddAll(faults);
        return Page();
    }

    private PageResult Show(JobFile job, IReadOnlyList<Entry> entries)
    {
        var after = Desk.Assess(job, Today);
        Drafts = entries;
        Changes = WhatChanges.Between(Job.Assessment, after);
        var unlikely = new Unlikely(job, Today, CountyClosings.Calendar(job.Work.Site.County));
        Unlikely = [.. entries.SelectMany(unlikely.Of).Distinct()];
        WaiverTold = WaiverWords.Of(entries[0], after);
        Expected = Job.Stored.Tip.Sequence;
        ModelState.Clear();
        return Page();
    }

    private static string Several(IReadOnlyList<Entry> entries) =>
        entries.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"&count={entries.Count}");

    private IActionResult Save(IReadOnlyList<Entry> entries)
    {
        JobChange[] changes =
            [.. entries.Select(entry => new JobChange.Happened(entry) { Proofs = [.. Papers.Select(paper => paper.Proof)] })];
        switch (Desk.Append(Id, Expected, changes))
        {
            case AppendOutcome.Appended:
                waiting.Release(Papers.Select(paper => paper.Token));
                return Redirect($"/job/{Id}/enter?written={entries[0].Index}{Several(entries)}");
            case AppendOutcome.SomeoneWroteFirst:
                // Between our reading and our writing: look again at what there is now.
                Open();
                Since = WrittenSince.Of(Job.Stored, Expected);
                var draft = EntryDrafts.Of(Job.Facts, Form!, Typed, Today, Supersedes);
                return draft.Job is { } job ? Show(job, draft.Entries) : Refuse(draft.Faults);
            case AppendOutcome.Refused refused:
                foreach (var fault in refused.Faults)
                    Faults.Add("", $"{fault.Path}: {fault.Found}; it should be {fault.Expected}.");
                return Page();
            case AppendOutcome.NoSuchJob:
                return NotFound();
            default:
                throw new InvalidOperationException("No such outcome.");
        }
    }

    private int LastAlike(Entry entry) => Job.Facts.Entries.Last(other => other.GetType() == entry.GetType()).Index;
}
