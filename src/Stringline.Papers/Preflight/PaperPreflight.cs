using Stringline.Law.Recording;
using Stringline.Papers.Layout;

namespace Stringline.Papers.Preflight;

/// <summary>
/// Reads a finished paper back and checks it against what recorder and statute require. The reader is another library
/// than the writer, so a fault of the writer does not hide itself.
/// </summary>
public static class PaperPreflight
{
    /// <summary>Checks a paper. Every check that is called for is made; none stops the others.</summary>
    /// <exception cref="UglyToad.PdfPig.Core.PdfDocumentFormatException">The bytes are no sound PDF.</exception>
    public static PreflightReport Check(PaperFile paper, PaperExpectations expected)
    {
        var bytes = paper.Bytes.ToArray();
        var read = ReadBack.Of(bytes);
        List<PreflightCheck> checks =
        [
            PageSize(read), SideMargins(read), InsideThePage(read), NoOverlap(read), FileChecks.NothingOverText(read),
                FileChecks.AllSeen(read),
            FileChecks.AsItLooks(read), FileChecks.Whole(bytes), FileChecks.FacesInside(bytes), PageCount(read, expected),
        ];
        if (expected.InOrder.Count > 0)
            checks.Add(FileChecks.InOrder(read, expected.InOrder));
        if (expected.Recorded is { } recorded)
            checks.AddRange([RecordersSpace(read), ReturnBlock(read, recorded), Title(read, recorded), PrintDensity(read), Legible(read)]);
        if (expected.Wording is not null)
            checks.AddRange(WordingChecks.Of(read, expected));
        if (expected.LargestText is { } largest)
            checks.Add(WordingChecks.Largest(read, largest, expected.Wording?.Section ?? ""));
        if (expected.Signers.Count > 0)
            checks.Add(Signatures(read, expected.Signers));
        if (expected.MustHold.Count > 0)
            checks.Add(Held(read, expected.MustHold));
        checks.Add(DraftMark(read, expected.Draft));
        return new PreflightReport(paper.Name, checks);
    }

    // To a thousandth of an inch: a reader's figures have a tail.
    private static decimal Inches(double points, int places = 3) => decimal.Round((decimal)(points / Sheet.Inch), places);

    private static PreflightCheck PageSize(ReadBack read)
    {
        var wrong = read.Pages.Where(p => !RecordedForm.IsStandardSize(Inches(p.Width, 2), Inches(p.Height, 2))).ToList();
        return new PreflightCheck("page size", wrong.Count == 0,
            wrong.Count == 0 ? "every page is 8½ by 11 inches"
            : $"{Pages(wrong)}: {wrong[0].Width / 72:0.##} by {wrong[0].Height / 72:0.##} inches; 8½ by 11, upright, would be right",
            "Gov. Code § 27361.5(a)");
    }

    private static PreflightCheck SideMargins(ReadBack read)
    {
        var (left, right) = (Sheet.Width, Sheet.Width);
        void Widen(ReadPage page, double from, double to)
        {
            left = Math.Min(left, from);
            right = Math.Min(right, page.Width - to);
        }

        foreach (var page in read.Pages)
        {
            foreach (var word in page.Words)
                Widen(page, word.Left, word.Right);
            foreach (var shape in page.Shapes)
                Widen(page, shape.Left, shape.Right);
        }

        var least = Math.Min(left, right);
        return new PreflightCheck("side margins", RecordedForm.HasSideMargins(Inches(least)),
            $"{left:0.#} points left and {right:0.#} right at the narrowest; 36 (½ inch) is the least", "Gov. Code § 27361.6");
    }

    private static PreflightCheck InsideThePage(ReadBack read)
    {
        const double least = 18;
        var wrong = read.Pages.Where(p =>
            p.Letters.Any(l => l.Upright && (l.Baseline - (0.8 * l.Points) < least || l.Baseline + (0.25 * l.Points) > p.Height - least)))
            .ToList();
        return new PreflightCheck("inside the page", wrong.Count == 0,
            wrong.Count == 0 ? "no text is cut off above or below"
            : $"{Pages(wrong)}: text stands within ¼ inch of the upper or lower edge", "");
    }

    private static PreflightCheck NoOverlap(ReadBack read)
    {
        var clash = read.Pages.Select(Clash).FirstOrDefault(c => c is not null);
        return new PreflightCheck("no overlap", clash is null, clash ?? "no text stands on other text", "");
    }

    private static string? Clash(ReadPage page)
    {
        List<ReadWord> words = [.. page.Words];
        Sorted.ByNearlySorted(words, w => w.Baseline);
        for (var i = 0; i < words.Count; i++)
        {
            var above = words[i];
            for (var j = i + 1; j < words.Count && words[j].Baseline - (0.72 * words[j].Points) < above.Baseline - 0.5; j++)
            {
                var below = words[j];
                if (Math.Min(above.Right, below.Right) - Math.Max(above.Left, below.Left) > 0.5)
                    return $"page {page.Number}: '{above.Text}' and '{below.Text}' stand on each other";
            }
        }

        return null;
    }

    private static PreflightCheck PageCount(ReadBack read, PaperExpectations expected) => new("pages", read.Pages.Count == expected.Pages,
        $"{read.Pages.Count} read; {(expected.Recorded is null ? "laid out were" : "the fee is for")} {expected.Pages}",
        expected.Recorded is null ? "" : "Gov. Code § 27361(a)");

    private static PreflightCheck RecordersSpace(ReadBack read)
    {
        var page = read.Pages[0];
        var letter = page.Letters.FirstOrDefault(l => l.Upright && !l.Blank
            && RecordedForm.IsRecordersSpace(Inches(l.Right), Inches(l.Baseline - (0.72 * l.Points))));
        // A rule under the return block ends on the line between the two parts, and has a width of its own.
        var shape = page.Shapes.FirstOrDefault(s => RecordedForm.IsRecordersSpace(Inches(s.Right - 1), Inches(s.Top)));
        return new PreflightCheck("recorder’s space", letter is null && shape is null,
            letter is null && shape is null
                ? "the right 5 inches of the top 2½ inches are empty"
                : $"{(letter is null ? "a drawn line" : $"'{letter.Text}'")} stands in it; the right 5 by 2½ inches of page 1 must be "
                + "empty",
            "Gov. Code § 27361.6");
    }

    private static PreflightCheck ReturnBlock(ReadBack read, RecordedPaper recorded)
    {
        var block = read.Pages[0].Words.Where(w => RecordedForm.IsReturnSpace(Inches(w.Right), Inches(w.Baseline))).Select(w => w.Text);
        var there = Squeeze(string.Concat(block));
        var name = there.Contains(AsSet(recorded.ReturnName), StringComparison.Ordinal);
        var address = there.Contains(AsSet(recorded.ReturnAddress), StringComparison.Ordinal);
        var heads = there.Contains("RECORDINGREQUESTEDBY", StringComparison.Ordinal)
            && there.Contains("WHENRECORDEDMAILTO", StringComparison.Ordinal);
        return new PreflightCheck("return block", name && address && heads,
            name && address && heads ? "who asks for recording, and name and address for return, stand in the left 3½ inches"
            : $"in the left 3½ inches of the top 2½ inches "
            + $"{(heads ? "" : "the heads, ")}{(name ? "" : "the name, ")}{(address ? "" : "the address, ")}are not all there",
            "Gov. Code § 27361.6");
    }

    private static PreflightCheck Title(ReadBack read, RecordedPaper recorded)
    {
        var first = read.Pages[0].Lines.FirstOrDefault(l => l[0].Baseline > Sheet.RecorderBand);
        var title = first is null ? "" : string.Join(' ', first.Select(w => w.Text));
        var below = first is null ? 0 : first[0].Baseline - Sheet.RecorderBand;
        var good = first is not null && title == Typography.Of(recorded.Title) && RecordedForm.IsTitlesPlace(Inches(first[0].Baseline));
        return new PreflightCheck("title", good,
            good ? $"'{title}' stands directly below the recorder’s space"
            : $"'{title}' stands {below:0} points below the recorder’s space; '{recorded.Title}' within 36 would be right",
            "Gov. Code § 27324");
    }

    /// <summary>
    /// Print size and color must reproduce by an imaging process; 7½ points is the smallest type that stays clear of penalty print.
    /// </summary>
    private static PreflightCheck Legible(ReadBack read)
    {
        var bad = read.Pages.SelectMany(p => p.Words).FirstOrDefault(w => w.Letters.Any(l => !l.Black || l.Points < LeastPoints - 0.01));
        return new PreflightCheck("legibility", bad is null,
            bad is null ? "all type is black and of 7.5 points or more"
            : $"page {bad.Page}: '{bad.Text}' is not; black type of at least 7.5 points would be right", "Gov. Code § 27361.6");
    }

    private const double LeastPoints = 7.5;

    /// <summary>Characters and spaces in an inch are counted over at least three inches.</summary>
    private const double DensityOver = 3 * Sheet.Inch;

    /// <summary>Penalty print: more than nine lines an inch, or more than 22 characters an inch.</summary>
    private static PreflightCheck PrintDensity(ReadBack read)
    {
        var pitch = double.MaxValue;
        foreach (var page in read.Pages)
        {
            var above = new Dictionary<int, ReadWord>();
            foreach (var line in page.Lines)
            {
                var column = (int)Math.Round(line[0].Left);
                if (above.TryGetValue(column, out var word))
                    pitch = Math.Min(pitch, line[0].Baseline - word.Baseline);
                above[column] = line[0];
            }
        }

        var crowded = read.Pages.SelectMany(p => p.Lines).Where(l => l[^1].Right - l[0].Left >= DensityOver)
            .Select(l => (l.Sum(w => w.Letters.Count) + l.Count - 1) * Sheet.Inch / (l[^1].Right - l[0].Left)).DefaultIfEmpty(0).Max();
        return new PreflightCheck("print density", !RecordedForm.IsPenaltyPrint((decimal)(Sheet.Inch / pitch), (decimal)crowded),
            $"lines stand {pitch:0.#} points apart at the closest, {Sheet.Inch / RecordedForm.LinesInAnInch:0.#} is the least; "
            + $"{crowded:0.#} characters stand in an inch at the most, {RecordedForm.CharactersInAnInch} may",
            "Gov. Code § 27361(a)(1)");
    }

    private static PreflightCheck Signatures(ReadBack read, IReadOnlyList<string> signers)
    {
        var missing = signers.Distinct().Where(name => read.Pages.Sum(p => RulesOver(p, name)) < signers.Count(s => s == name)).ToList();
        return new PreflightCheck("names under signatures", missing.Count == 0,
            missing.Count == 0 ? "each name is typed under its signature"
            : $"{string.Join("; ", missing)}: not typed under {signers.Count(s => s == missing[0])} signature rule(s)",
            "Gov. Code § 27201(a)");
    }

    /// <summary>How many signature rules of the page have the name typed directly under them, on one line or several.</summary>
    private static int RulesOver(ReadPage page, string name)
    {
        var sought = AsSet(name);
        return page.Shapes.Count(s => s.IsRule && Squeeze(string.Concat(page.Words
            .Where(w => w.Left >= s.Left - 1 && w.Right <= s.Right + 1 && w.Baseline > s.Top && w.Baseline < s.Top + 70)
            .Select(w => w.Text))).StartsWith(sought, StringComparison.Ordinal));
    }

    private static PreflightCheck Held(ReadBack read, IReadOnlyList<string> texts)
    {
        var whole = read.Columns();
        var missing = texts.Where(t => !whole.Contains(AsSet(t), StringComparison.Ordinal)).ToList();
        return new PreflightCheck("names and facts", missing.Count == 0,
            missing.Count == 0 ? "every name and fact is read back whole" : $"not read back: {string.Join("; ", missing)}",
            "Gov. Code §§ 27201(a), 27288.1");
    }

    private static PreflightCheck DraftMark(ReadBack read, bool draft)
    {
        var marked = read.Pages.Count(p => string.Concat(p.Letters.Where(l => !l.Upright).Select(l => l.Text)) == "DRAFT");
        var good = marked == (draft ? read.Pages.Count : 0);
        return new PreflightCheck(draft ? "DRAFT on each page" : "no DRAFT", good, $"DRAFT stands on {marked} of {read.Pages.Count} pages",
            "");
    }

    /// <summary>A text as it is expected to be read back: set, and without white space.</summary>
    /// <param name="text">The text.</param>
    /// <param name="onSheet">Whether on a sheet.</param>
    internal static string AsSet(string text, bool onSheet = false) => Squeeze(Typography.Of(text, onSheet));

    internal static string Squeeze(string text)
    {
        var kept = new System.Text.StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (!char.IsWhiteSpace(letter))
                kept.Append(letter);
        }

        return kept.ToString();
    }

    private static string Pages(IEnumerable<ReadPage> pages) => "page " + string.Join(", ", pages.Select(p => p.Number));
}
