using System.Text.RegularExpressions;

namespace Stringline.Papers.Layout;

/// <summary>Which words no line parts, on any paper or sheet: a number stays with what it numbers, and a ZIP code with its state.</summary>
internal static partial class Unbroken
{
    /// <summary>A space at which no line breaks while the words fit on one; it is set as any other.</summary>
    public const char Space = '\u00A0';

    /// <summary>A name whose words stay on one line while they fit on it.</summary>
    public static string Name(string name) => name.Replace(' ', Space);

    private static readonly HashSet<string> BeforeNumber = new(StringComparer.OrdinalIgnoreCase)
    {
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
        "no.", "nos.", "section", "sections", "subdivision", "subdivisions", "paragraph", "paragraphs", "page", "pages", "book", "lot",
        "unit", "units", "room", "suite", "ste.", "floor", "building", "apt.", "apartment", "space", "phase", "tract", "parcel", "box",
            "district",
        "SB", "AB",
    };

    /// <summary>Whether two words that follow each other stay on one line.</summary>
    public static bool Are(string word, string next)
    {
        if (word.EndsWith('§'))
            return true;
        var bare = word.TrimStart('(', '[', '“', '‘');
        return bare is "CA" or "California" ? Zip().IsMatch(next) : BeforeNumber.Contains(bare) && Number().IsMatch(next);
    }

    // "15,", "2026-0012345", "(d)(4))", and one letter, as in "Unit C".
    [GeneratedRegex(@"^\(?(?:[0-9]|[A-Z][0-9]|[A-Za-z]\)|[A-Z][.,;)]*$)")]
    private static partial Regex Number();

    [GeneratedRegex(@"^[0-9]{5}(?:-[0-9]{4})?[.,;:)]*$")]
    private static partial Regex Zip();
}
