using System.Globalization;

namespace Stringline.Store;

/// <summary>What the store takes as a name: of a job, a person, an attached file.</summary>
public static class Names
{
    /// <summary>What would be right; null where the name is.</summary>
    public static string? Fault(string name)
    {
        if (string.IsNullOrWhiteSpace(name))
            return "a name that is not blank";
        if (name.Length > Journals.LongestName)
            return string.Create(
                CultureInfo.InvariantCulture, $"a name of at most {Journals.LongestName} characters; this one has {name.Length}");
        foreach (var rune in name.EnumerateRunes())
        {
            if (rune.Value == 0xFFFD || Tables.Signs.IsNoncharacter(rune)
                || System.Text.Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
            {
                return $"a name on one line without invisible characters; this one holds U+{rune.Value:X4}";
            }
        }

        return null;
    }

    /// <summary>The name itself.</summary>
    /// <exception cref="ArgumentException">It is none that the store takes.</exception>
    public static string Checked(string name, string parameter) =>
        Fault(name) is { } expected ? throw new ArgumentException("Should be " + expected + ".", parameter) : name;
}
