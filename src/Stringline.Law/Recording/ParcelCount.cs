using System.Globalization;
using System.Text.RegularExpressions;

namespace Stringline.Law.Recording;

/// <summary>How many parcels a text of parcel numbers names: listed, told in a range, or with only their last figures repeated.</summary>
/// <remarks>
/// The homes fee is charged for each parcel, so many times at most (Gov. Code § 27388.1(a)(1)). A text that cannot be counted is never
/// taken for one parcel: the fee is reckoned at that most, and asked about.
/// </remarks>
/// <param name="Count">The number counted, at least 1.</param>
/// <param name="Unread">The part that could not be counted; null where all of it was.</param>
/// <param name="Ranged">Whether a range was counted out: the counter may want each number.</param>
public sealed partial record ParcelCount(int Count, string? Unread, bool Ranged)
{
    // A range of more is more likely a slip of the pen than a job.
    private const int MostInARange = 2000;

    // Words beside which numbers do not tell how many parcels there are. "et" stands for "et al." and "et seq.".
    private static readonly string[] OpenWords =
    [
        "et", "etc", "other", "others", "more", "all", "see", "attached", "following", "range", "parcels", "lots", "to", "through", "thru",
    ];

    /// <summary>Counts.</summary>
    /// <param name="text">Parcel numbers as written; null or empty counts as one.</param>
    [Rule("Gov. Code § 27388.1(a)(1)", Sure = Sure.OurReading)]
    public static ParcelCount Of(string? text)
    {
        var (count, ranged, unread) = (0, false, (string?)null);
        var hyphens = text?.Contains('-', StringComparison.Ordinal) ?? false;
        foreach (var part in Parts().Split(text ?? "").Select(p => Dashes(p.Trim(), hyphens)).Where(p => p.Length > 0))
        {
            var range = Range(part);
            ranged |= range is not null || part.Contains('/', StringComparison.Ordinal);
            if ((range is { } ends ? InRange(ends.From, ends.To) : Listed(part)) is { } parcels)
                count += parcels;
            else
                unread ??= part;
        }

        return new ParcelCount(Math.Max(1, count), unread, ranged && unread is null);
    }

    // A long dash stands for "to" where the numbers themselves are written with hyphens, where it is the only one, and between spaces.
    private static string Dashes(string part, bool hyphens)
    {
        var dashes = LongDash().Matches(part);
        var isTo = hyphens || dashes.Count == 1 || dashes.Any(d => d.Length > 1);
        return LongDash().Replace(part, isTo ? " to " : "-");
    }

    private static (string From, string To)? Range(string part)
    {
        if (RangeWord().Split(part) is [var from, var to, ..] words)
            return words.Length == 2 ? (from, to) : ("", "");

        // A hyphen between spaces is one too, unless the number itself is written so: 012 - 340 - 05.
        return part.Split(" - ") is [var left, var right] && (left.Contains('-', StringComparison.Ordinal) || Groups(left).Length == 1)
            ? (left, right) : null;
    }

    /// <summary>
    /// Both ends are counted. They may differ in one group of figures only; the second may leave out the groups before it.
    /// </summary>
    private static int? InRange(string from, string to)
    {
        if (Number().Matches(from) is not [.., var first] || Number().Match(to) is not { Success: true } last || IsOpenEnded(to))
            return null;
        var (start, end) = (Groups(first.Value), Groups(last.Value));
        if (end.Length > start.Length)
            return null;
        end = [.. start.Take(start.Length - end.Length), .. end];
        var differ = Enumerable.Range(0, start.Length).Where(i => start[i] != end[i]).ToList();
        if (differ is not [var at] || !int.TryParse(start[at], NumberStyles.None, CultureInfo.InvariantCulture, out var low)
            || !int.TryParse(end[at], NumberStyles.None, CultureInfo.InvariantCulture, out var high))
            return null;

        // Between equal ends lie more parcels than the numbers tell: 101-000 to 103-000 may hold 102-001.
        var sure = start.Skip(at + 1).All(g => g.All(c => c == '0'));
        return sure && high > low && high - low < MostInARange ? high - low + 1 : null;
    }

    private static int? Listed(string part)
    {
        if (IsOpenEnded(part) || !part.Any(char.IsAsciiDigit))
            return null;
        var pieces = part.Split('/', StringSplitOptions.TrimEntries);
        if (pieces.Length > 1)
            return pieces.All(p => Number().IsMatch(p)) ? pieces.Length : null;

        // Whole numbers side by side with only a space between.
        return Math.Max(1, Number().Matches(part).Count(n => Groups(n.Value).Length > 2));
    }

    private static string[] Groups(string number) =>
        number.Split(['-', '.', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    [GeneratedRegex(@"[;,&\n]|\band\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Parts();

    [GeneratedRegex("\\s*[\u2012-\u2015\u2212]\\s*", RegexOptions.CultureInvariant)]
    private static partial Regex LongDash();

    [GeneratedRegex(@"\s+(?:up\s+)?(?:to|through|thru|til|till|until)\s+|\.\.+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex RangeWord();

    [GeneratedRegex(@"[0-9]+[A-Z]?(?:[-.][0-9A-Z]+)*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Number();

    private static bool IsOpenEnded(string text) =>
        Word().Matches(text).Any(w => OpenWords.Contains(w.Value, StringComparer.OrdinalIgnoreCase));

    [GeneratedRegex(@"\w+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
