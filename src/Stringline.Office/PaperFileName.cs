using System.Globalization;
using System.Text;
using Stringline.Law.Facts;
using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Office;

/// <summary>
/// The name under which a paper is written: job, paper, what it is about, addressee and day, in letters, digits, hyphens and underscores
/// that every system takes: <c>alder-court_stop-payment-notice_granger-slough-bank_2026-06-22.pdf</c>.
/// </summary>
internal static class PaperFileName
{
    private const int Longest = 60;

    /// <summary>The name of a paper.</summary>
    /// <param name="job">The job's name.</param>
    /// <param name="paper">What it is for the catalogue: two papers may have sheets of the same name.</param>
    /// <param name="file">The paper or its sheet.</param>
    /// <param name="isDraft">Whether it may not be used: a draft never takes the name of what may.</param>
    /// <param name="day">The day as of which it is made.</param>
    /// <param name="told">What was told with the request: two papers of one day may differ in nothing else.</param>
    public static string Of(string job, string paper, PaperFile file, bool isDraft, LocalDate day, PaperOptions told)
    {
        var name = Path.GetFileNameWithoutExtension(file.Name);
        string?[] parts =
        [
            Stem(job, "job"), file.IsSheet ? $"{paper}-{name}" : name, isDraft ? "draft" : null,
            told.Through is { } through ? $"through-{Tables.DayText.Write(through)}" : null,
            told.Structure is { } structure ? Stem($"structure {structure}", "structure") : null,
            told.Number is { } number ? Stem($"no {number}", "number") : null,
            file.Addressee is { } to ? Stem(to, "addressee") : null, Tables.DayText.Write(day),
        ];
        return string.Join('_', parts.OfType<string>()) + ".pdf";
    }

    /// <summary>Lower-case letters and digits; accents are left off, all else becomes a hyphen.</summary>
    /// <param name="text">The text.</param>
    /// <param name="otherwise">What stands for a text that has none of them.</param>
    public static string Stem(string text, string otherwise)
    {
        var stem = new StringBuilder();
        foreach (var letter in text.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(letter))
                stem.Append(letter);
            else if (LatinLetters.Plain(letter) is { } plain)
                stem.Append(plain);
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark && stem.Length > 0 && stem[^1] != '-')
                stem.Append('-');
            if (stem.Length >= Longest)
                break;
        }

        return stem.ToString().Trim('-') is { Length: > 0 } name ? name : otherwise;
    }
}
