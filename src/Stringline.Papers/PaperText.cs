using NodaTime.Text;
using Stringline.Law.Facts;

namespace Stringline.Papers;

/// <summary>How days, dollars and names are written on papers: in American English, the same on every machine.</summary>
public static class PaperText
{
    private static readonly LocalDatePattern WeekDay = LocalDatePattern.CreateWithInvariantCulture("dddd, MMMM d, uuuu");

    private static readonly string[] Small =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
        "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    private static readonly (long Unit, string Name)[] Units =
        [(1_000_000_000_000, "trillion"), (1_000_000_000, "billion"), (1_000_000, "million"), (1_000, "thousand")];

    /// <summary>A day: <c>June 26, 2026</c>.</summary>
    public static string Day(LocalDate day) => Law.Counting.LawText.LongDay(day);

    /// <summary>A day with its weekday: <c>Friday, June 26, 2026</c>.</summary>
    public static string DayOfWeek(LocalDate day) => WeekDay.Format(day);

    /// <summary>Dollars and cents: <c>$1,234.56</c>.</summary>
    public static string Dollars(decimal amount) => Law.Counting.LawText.Money(amount);

    /// <summary>Dollars in words and cents in figures: <c>one thousand two hundred thirty-four and 56/100 dollars</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is negative, or has parts of a cent, or passes 999 trillion.</exception>
    public static string InWords(decimal amount)
    {
        var whole = decimal.Truncate(amount);
        var cents = (amount - whole) * 100;
        if (amount < 0 || cents != decimal.Truncate(cents) || whole > 999_999_999_999_999)
        {
            throw new ArgumentOutOfRangeException(nameof(amount), amount,
                "An amount in words is zero or more, in whole cents, below a quadrillion.");
        }

        return string.Create(CultureInfo.InvariantCulture, $"{Words((long)whole)} and {(int)cents:00}/100 dollars");
    }

    /// <summary>
    /// Article number in groups of four: <c>9589 0710 5270 0123 4567 85</c>. Anything but digits and spaces is left as written.
    /// </summary>
    public static string Article(string number)
    {
        var digits = number.Replace(" ", "", StringComparison.Ordinal);
        if (digits.Length == 0 || !digits.All(char.IsAsciiDigit))
            return number.Trim();
        return string.Join(' ', digits.Chunk(4).Select(c => new string(c)));
    }

    /// <summary>The text without white space at its ends and without empty lines; null when nothing is left.</summary>
    public static string? Clean(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        var lines = text.ReplaceLineEndings("\n").Replace('\t', ' ')
            .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return LatinLetters.Joined(string.Join('\n', lines));
    }

    /// <summary>The text on one line.</summary>
    public static string OneLine(string text) => text.ReplaceLineEndings(", ");

    /// <summary>The text on one line, ended at a word with an ellipsis where it is longer than so many characters.</summary>
    internal static string Shortened(string text, int most)
    {
        var line = OneLine(text);
        return line.Length <= most ? line : CutAtWord(line, most - 2);
    }

    /// <summary>
    /// The whole sentences that end within so many characters, and an ellipsis where more follow; a longer first sentence is cut at a word.
    /// </summary>
    internal static string Sentences(string text, int most)
    {
        var line = OneLine(text);
        if (line.Length <= most)
            return line;
        // A sentence ends before a capital letter: "Civ. Code" and "Dr. Ibarra" do not end where they have fewer letters than a word.
        for (var end = most - 2; end > most / 3; end--)
        {
            if (line[end] == ' ' && line[end - 1] is '.' or '?' or '!' && end + 1 < line.Length && char.IsUpper(line[end + 1])
                && line.LastIndexOf(' ', end - 1) is var from && end - from > 4 && line[..end].Count(c => c == '(') == line[..end]
                .Count(c => c == ')'))
                return line[..end] + " …";
        }

        return CutAtWord(line, most - 2);
    }

    /// <summary>The words that end within so many characters, and an ellipsis; a longer first word is cut where it must be.</summary>
    internal static string CutAtWord(string line, int end)
    {
        if (end >= line.Length)
            return line;
        var cut = line[end] == ' ' ? end : line.LastIndexOf(' ', Math.Max(0, end - 1));
        return line[..(cut > 0 ? cut : end)].TrimEnd(' ', ',', ';', '.', '(', '&') + " …";
    }

    private static string Words(long number)
    {
        foreach (var (unit, name) in Units)
        {
            if (number >= unit)
                return Join($"{Words(number / unit)} {name}", number % unit, " ");
        }

        if (number >= 100)
            return Join($"{Small[number / 100]} hundred", number % 100, " ");
        return number >= 20 ? Join(Tens[number / 10], number % 10, "-") : Small[number];
    }

    private static string Join(string head, long rest, string with) => rest == 0 ? head : head + with + Words(rest);
}
