using System.Text.RegularExpressions;
using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>What an office manager would strike out on a printed page: the faults found, none where it is clean.</summary>
internal static partial class Lint
{
    private const int LeastLines = 3;

    /// <summary>The faults of one paper.</summary>
    public static IReadOnlyList<string> Of(PaperFile file, JobFile job)
    {
        var read = ReadBack.Of(file.Bytes);
        return [.. Pages(read).Concat(file.IsSheet ? Lists(read) : []).Concat(Blocks(read, job)).Concat(Type(read))
            .Concat(file.IsSheet ? Codes(read) : [])
            .Select(fault => $"{file.Name} {fault}")];
    }

    private static List<IReadOnlyList<ReadWord>> Body(ReadPage page) =>
        [.. page.Lines.Where(l => l[0].Baseline < Sheet.FootBaseline - 8)];

    private static string Text(IReadOnlyList<ReadWord> line) => string.Join(' ', line.Select(w => w.Text));

    // A page with next to nothing on it, a heading or a table's head with nothing under it, a foot cut within a word.
    private static IEnumerable<string> Pages(ReadBack read)
    {
        foreach (var page in read.Pages)
        {
            var body = Body(page);
            if (read.Pages.Count > 1 && body.Count < LeastLines)
                yield return $"page {page.Number} has {body.Count} lines";
            if (body.Count > 0 && page.Number < read.Pages.Count && IsHead(page, body[^1]))
                yield return $"page {page.Number} ends with the heading '{Text(body[^1])}'";
            var foot = page.Words.Where(w => w.Baseline >= Sheet.FootBaseline - 8).Select(w => w.Text).ToList();
            var cut = foot.FindIndex(w => w.EndsWith('…'));
            if (cut > 0 && foot[cut] != "…")
                yield return $"page {page.Number}: the foot is cut in '{foot[cut]}'";
        }
    }

    // A list that leaves its heading on a page with one point and goes on over it, and a sheet's page of three lines.
    private static IEnumerable<string> Lists(ReadBack read)
    {
        for (var i = 0; i < read.Pages.Count; i++)
        {
            var body = Body(read.Pages[i]);
            if (i > 0 && body.Count < LeastLines + 1)
                yield return $"page {i + 1} of the sheet has {body.Count} lines";
            if (i + 1 == read.Pages.Count || body.Count == 0)
                continue;
            var next = Body(read.Pages[i + 1]);
            var heading = body.FindLastIndex(l => IsHead(read.Pages[i], l));
            var points = heading < 0 ? 2 : body.Skip(heading).Count(l => IsPoint(read.Pages[i], l));
            if (next.Count > 0 && IsPoint(read.Pages[i + 1], next[0]) && points == 1)
                yield return $"page {i + 1}: one point alone under '{Text(body[heading])}'";
            // The last point of a list, alone on its page.
            if (next.Count > 0 && IsPoint(read.Pages[i + 1], next[0]) && IsAlone(read.Pages[i + 1], next))
                yield return $"page {i + 2} begins with the one point that is left of a list: '{Text(next[0])}'";
        }
    }

    private static bool IsAlone(ReadPage page, List<IReadOnlyList<ReadWord>> body)
    {
        var end = body.FindIndex(l => IsHead(page, l));
        return body.Take(end < 0 ? body.Count : end).Count(l => IsPoint(page, l)) == 1;
    }

    // A square to be ticked stands on the line.
    private static bool IsPoint(ReadPage page, IReadOnlyList<ReadWord> line) => page.Shapes.Any(s => s.Right - s.Left is > 6 and < 11
        && s.Bottom - s.Top is > 6 and < 11 && s.Right < line[0].Left && s.Top < line[0].Baseline && s.Bottom > line[0].Baseline - 6);

    private static bool IsHead(ReadPage page, IReadOnlyList<ReadWord> line)
    {
        if (!line.All(w => w.Letters.All(l => l.Bold)))
            return false;
        var isHeading = line[0].Points is > 11.4 and < 13;
        var isTableHead = !Text(line).Contains('$', StringComparison.Ordinal) && page.Strokes.Any(s => s.IsRule
            && s.Right - s.Left > Sheet.TextWidth - 30 && s.Top > line[0].Baseline && s.Top < line[0].Baseline + 9);
        return isHeading || isTableHead;
    }

    // Two lines of one address on two pages.
    private static IEnumerable<string> Blocks(ReadBack read, JobFile job)
    {
        var addresses = job.Parties.Select(p => p.Address).Append(job.Claimant.Address).Select(PaperText.Clean).OfType<string>()
            .Select(a => Typography.Of(a).Split('\n')).Where(a => a.Length > 1).ToList();
        for (var i = 0; i + 1 < read.Pages.Count; i++)
        {
            var (above, below) = (Body(read.Pages[i]), Body(read.Pages[i + 1]));
            if (above.Count == 0 || below.Count == 0)
                continue;
            foreach (var address in addresses)
            {
                for (var line = 0; line + 1 < address.Length; line++)
                {
                    if (Text(above[^1]).EndsWith(address[line], StringComparison.Ordinal)
                        && below.Take(2).Any(b => Text(b).StartsWith(address[line + 1], StringComparison.Ordinal)))
                        yield return $"page {i + 1}: '{address[line]}' is parted from '{address[line + 1]}'";
                }
            }
        }
    }

    // Typewriter's marks and a file's way of writing days.
    private static IEnumerable<string> Type(ReadBack read)
    {
        foreach (var word in read.Pages.SelectMany(p => p.Words))
        {
            if (word.Text.AsSpan().IndexOfAny('\'', '"') >= 0)
                yield return $"page {word.Page}: straight marks in {word.Text}";
            if (IsoDay().IsMatch(word.Text))
                yield return $"page {word.Page}: a file's day, {word.Text}";
        }
    }

    // What only a file or a command line says.
    private static IEnumerable<string> Codes(ReadBack read)
    {
        foreach (Match found in Code().Matches(read.Text))
            yield return $"says {found.Value}";
        foreach (var word in read.Pages.SelectMany(p => p.Words).Select(w => w.Text.Trim('“', '”', ',', '.', ':', ';', '(', ')')))
        {
            if (word.Contains('-', StringComparison.Ordinal) && EntryKinds.Find(word) is not null)
                yield return $"says the code {word}";
        }
    }

    [GeneratedRegex(@"(?<![\d-])\d{4}-\d\d-\d\d(?![\d-])")]
    private static partial Regex IsoDay();

    [GeneratedRegex(@"(?<!\S)--[a-z]+|[”""]: ?(?:true|false|\[|[“""])|\b[a-z]+[A-Z][a-zA-Z]*\b|\b(?:entries|parties)\[\d"
        + @"|\b(?:work|claimant|contract|parties)\.[a-z]")]
    private static partial Regex Code();
}
