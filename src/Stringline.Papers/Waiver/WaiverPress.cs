using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Waiver;

/// <summary>
/// Prints waivers one after another and keeps its typefaces and widths between them. One for each thread: an instance is not shared,
/// several instances work side by side.
/// </summary>
public sealed class WaiverPress
{
    private readonly Measure measure = new();

    /// <summary>Prints a waiver and does not read it back; see <see cref="Check"/>.</summary>
    /// <param name="waiver">What it says.</param>
    /// <param name="made">The day it is made, for the file's properties; not the day of signature, which is written by hand.</param>
    /// <param name="draft">Prints whatever is there, with DRAFT across each page.</param>
    /// <exception cref="InvalidOperationException">It may not be made as it stands: ask <see cref="WaiverToBe.Refusals"/>
    /// first.</exception>
    public PaperFile Print(WaiverToBe waiver, LocalDate made, bool draft = false)
    {
        if (!draft && waiver.Refusals() is { Count: > 0 } refusals)
            throw new InvalidOperationException(string.Join("\n", refusals));
        var leaf = WaiverBuilder.Of(waiver);
        var printed = Press.Print(leaf.Plan(null, made, draft), measure);
        return new PaperFile(leaf.FileName, leaf.Title, printed.Pages, printed.Bytes);
    }

    /// <summary>
    /// Reads a printed waiver back and checks it against the prescribed wording with its blanks filled. Any thread may call it.
    /// </summary>
    public static PreflightReport Check(PaperFile paper, WaiverToBe waiver, bool draft = false) =>
        PaperPreflight.Check(paper, WaiverBuilder.Of(waiver).Expected(paper.Pages, draft));
}
