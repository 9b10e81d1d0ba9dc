using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime.Text;
using Stringline.Law.Reasoning;

namespace Stringline.Desk.Web.Html;

/// <summary>What the law library says, as a page says it to a person: each day with its weekday, and no name of a field or a finding.</summary>
internal static partial class PlainWords
{
    /// <summary>The text in plain words.</summary>
    public static string Of(string text) => Day().Replace(Pointer().Replace(text, ""), day =>
        LocalDatePattern.Iso.Parse(day.Value) is { Success: true } read ? LawText.Day(read.Value) : day.Value);

    /// <summary>The text in plain words, as the beginning of a sentence.</summary>
    public static string Sentence(string text) => Of(text) is { Length: > 0 } words ? char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..] : "";

    // "2026-06-15", where no weekday follows.
    [GeneratedRegex(@"(?<![\w-])\d{4}-\d\d-\d\d(?![\w-]| \([A-Z][a-z]{2}\))")]
    private static partial Regex Day();

    // " (work.orderedByTenant)", " (see claim-of-lien.last-day)": where the file or another finding holds it; the page has a link instead.
    [GeneratedRegex(@" \((?:see )?[a-z]+(?:-[a-z]+)*(?:\.[a-zA-Z]+(?:-[a-z]+)*)+\)")]
    private static partial Regex Pointer();
}
