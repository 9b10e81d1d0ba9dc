using Microsoft.AspNetCore.Mvc;
using Stringline.Office.Entering;
using Stringline.Web.Entering;
using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Web.Pages.Job;

/// <summary>Attaches papers to an entry made earlier.</summary>
[RequestSizeLimit(ProofFiles.LargestForm)]
[RequestFormLimits(MultipartBodyLengthLimit = ProofFiles.LargestForm)]
internal sealed class ProveModel(Desk desk, WaitingProofs waiting) : JobPage(desk)
{
    /// <summary>The index of the entry.</summary>
    [BindProperty(SupportsGet = true)]
    public int Entry { get; set; }

    /// <summary>The number of the last change that the page has shown.</summary>
    [BindProperty]
    public long Expected { get; set; }

    /// <summary>The papers that wait, where the page is shown again.</summary>
    [BindProperty]
    public IReadOnlyList<string> Kept { get; set; } = [];

    /// <summary>The entry that is proved.</summary>
    public Entry Proved { get; private set; } = null!;

    /// <summary>What is wrong.</summary>
    public Faults Faults { get; } = new();

    /// <summary>What others wrote while the page was open.</summary>
    public IReadOnlyList<string> Since { get; private set; } = [];

    /// <summary>The papers that wait, with their tokens.</summary>
    public IReadOnlyList<(string Token, Proof Proof)> Papers { get; private set; } = [];

    /// <summary>Shows the page.</summary>
    public IActionResult OnGet() => Open() ? Page() : NotFound();

    /// <summary>Attaches what was sent.</summary>
    public async Task<IActionResult> OnPostAsync()
    {
        if (!Open())
            return NotFound();
        var proofs = Kept.Select(waiting.Find).OfType<Proof>().ToList();
        proofs.AddRange(await ProofFiles.TakeAsync(Request.Form.Files, Faults).ConfigureAwait(false));
        if (proofs.Count == 0)
            Faults.Add(ProofFiles.Field, "Choose a file.");
        if (Faults.None && Desk.Append(Id, Expected, new JobChange.Proved(Job.Stored.RowOf(Entry).Sequence, proofs))
            is AppendOutcome.Appended)
        {
            waiting.Release(Kept);
            return Redirect($"/job/{Id}#entry-{Entry}");
        }

        // Sent twice, or someone wrote first: the papers wait, and the page shows what came in between.
        Papers = [.. proofs.Select(proof => (waiting.Keep(proof), proof))];
        if (Open())
            Since = WrittenSince.Of(Job.Stored, Expected);
        ModelState.Clear();
        return Page();
    }

    private bool Open()
    {
        if (Entry < 0 || !Find() || Job.Facts.Entries.ElementAtOrDefault(Entry) is not { } proved)
            return false;
        Proved = proved;
        return true;
    }
}
