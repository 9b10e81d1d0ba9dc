using Stringline.Papers.Layout;

namespace Stringline.Papers.Preflight;

/// <summary>Checks of what could be done to a file between the press and the counter, or go wrong in the press itself.</summary>
internal static class FileChecks
{
    /// <summary>No filled shape or picture lies on text, and no line runs through it.</summary>
    public static PreflightCheck NothingOverText(ReadBack read)
    {
        foreach (var page in read.Pages)
        {
            foreach (var word in page.Words)
            {
                // Of a word the part that is read: small letters from the baseline up; what rules a blank lies under it.
                var (top, bottom) = (word.Baseline - (0.6 * word.Points), word.Baseline - (0.08 * word.Points));
                bool Meets(ReadShape shape) =>
                    shape.Left < word.Right - 0.5 && shape.Right > word.Left + 0.5 && shape.Top < bottom && shape.Bottom > top;
                var covered = page.Covers.Any(Meets);
                if (covered || page.Strokes.Any(Meets))
                {
                    return new PreflightCheck("nothing over text", false,
                        $"page {page.Number}: {(covered ? "a shape lies on" : "a line runs through")} '{word.Text}'", Legibility);
                }
            }
        }

        return new PreflightCheck("nothing over text", true, "no shape lies on text and no line runs through it", Legibility);
    }

    private const string Legibility = "Gov. Code § 27361.6";

    /// <summary>Every letter is painted: one that is only there for a search is not on the paper.</summary>
    public static PreflightCheck AllSeen(ReadBack read)
    {
        var unseen = read.Pages.SelectMany(p => p.Words).FirstOrDefault(w => w.Letters.Any(l => !l.Seen));
        return new PreflightCheck("all text is seen", unseen is null,
            unseen is null ? "every letter is painted" : $"page {unseen.Page}: '{unseen.Text}' is in the file and not on the page",
            Legibility);
    }

    /// <summary>The pages print as they look: nothing is laid over them, none has a unit of its own, and the file may be printed.</summary>
    public static PreflightCheck AsItLooks(ReadBack read)
    {
        var odd = read.Pages.FirstOrDefault(p => p.Oddity is not null);
        var words = read.IsLocked ? "the file is locked, so that it may not be printable"
            : odd is null ? "nothing is laid over the pages, and the file is not locked"
            : $"page {odd.Number}: {odd.Oddity}";
        return new PreflightCheck("prints as it looks", !read.IsLocked && odd is null, words, "");
    }

    /// <summary>Every stream of the file ends as its format asks (RFC 1950, 2.2).</summary>
    public static PreflightCheck Whole(byte[] file)
    {
        string? why = null;
        try
        {
            why = Finish.IsWhole(file) ? null : "a compressed stream lacks its end";
        }
        catch (InvalidDataException e)
        {
            why = e.Message;
        }

        return new PreflightCheck("whole file", why is null, why ?? "every compressed stream is ended", "");
    }

    /// <summary>Every face is in the file, so that each printer sets the same type.</summary>
    public static PreflightCheck FacesInside(byte[] file)
    {
        var outside = Finish.FaceOutside(file);
        return new PreflightCheck("faces in the file", outside is null, outside is null ? "every face is in the file"
            : $"{outside} is not in the file", "");
    }

    /// <summary>
    /// What was laid out across the pages is read back whole and in its order; so a page that is missing, put twice or swapped is found.
    /// </summary>
    public static PreflightCheck InOrder(ReadBack read, IReadOnlyList<string> texts)
    {
        const string Name = "in its order";
        for (var i = 0; i < read.Pages.Count; i++)
        {
            var foot = string.Join(' ', read.Pages[i].Words.Where(w => w.Baseline >= Sheet.FootBaseline - 8).Select(w => w.Text));
            var folio = string.Create(CultureInfo.InvariantCulture, $"Page {i + 1} of {read.Pages.Count}");
            if (!foot.EndsWith(folio, StringComparison.Ordinal))
                return new PreflightCheck(Name, false, $"page {i + 1} bears '{foot}' at its foot; '{folio}' would be right", "");
        }

        var whole = string.Concat(read.Body.Select(w => w.Text));
        var at = 0;
        foreach (var text in texts)
        {
            var sought = PaperPreflight.AsSet(text);
            var found = whole.IndexOf(sought, at, StringComparison.Ordinal);
            if (found < 0)
                found = whole.IndexOf(sought = PaperPreflight.AsSet(text, onSheet: true), at, StringComparison.Ordinal);
            if (found < 0)
                return new PreflightCheck(Name, false, $"'{PaperText.Shortened(text, 60)}' does not stand where it was laid out", "");
            at = found + sought.Length;
        }

        return new PreflightCheck(Name, true, "every heading and paragraph is read back whole, in its order and on numbered pages", "");
    }
}
