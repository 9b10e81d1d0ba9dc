using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Html;
using NodaTime.Text;
using Stringline.Office.Entering;
using Stringline.Law.Counting;

namespace Stringline.Web.Html;

/// <summary>What the law library says, as a page says it to a person: each day with its weekday, and no name of a field or a finding.</summary>
internal static partial class PlainWords
{
    /// <summary>The text in plain words.</summary>
    public static string Of(string text) => Day().Replace(WithoutPointers(text), day =>
        LocalDatePattern.Iso.Parse(day.Value) is { Success: true } read ? LawText.Day(read.Value) : day.Value);

    /// <summary>The text in plain words as markup, in which no day is broken at the end of a line.</summary>
    public static IHtmlContent Html(string text) => new Marked(Of(text));

    private static string WithoutPointers(string text)
    {
        var pointed = Pointer().Replace(text, pointer => pointer.Groups["entry"] is { Success: true, Value: var entry } && EntryForms.Find(entry) is null ? pointer.Value : "");
        var fields = Field().Replace(pointed, field => HeadForms.LabelOf(field.Value) is { } label ? $"“{label}” in the file" : field.Value);
        return Kind().Replace(fields, kind => EntryForms.Find(kind.Value) is { } form ? $"“{form.Title}”" : kind.Value);
    }

    /// <summary>The text in plain words, as the beginning of a sentence.</summary>
    public static string Sentence(string text) => Of(text) is { Length: > 0 } words ? char.ToUpper(words[0], CultureInfo.InvariantCulture) + words[1..] : "";

    // "2026-06-15", where no weekday follows.
    [GeneratedRegex(@"(?<![\w-])\d{4}-\d\d-\d\d(?![\w-]| \([A-Z][a-z]{2}\))")]
    private static partial Regex Day();

    private sealed class Marked(string words) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            var done = 0;
            foreach (Match day in NamedDay().Matches(words))
            {
                encoder.Encode(writer, words[done..day.Index]);
                writer.Write($"<time datetime=\"{day.Groups[1].Value}\">{day.Value}</time>");
                done = day.Index + day.Length;
            }

            encoder.Encode(writer, words[done..]);
        }
    }

    // "add claimant.license", "Enter furnishing-ended": the file's words for what a form asks.
    [GeneratedRegex(@"\b(?:work|claimant|contract|parties)\b(?:\.[a-zA-Z]+)+")]
    private static partial Regex Field();

    [GeneratedRegex(@"(?<=\b(?:[Aa]dd|[Ee]nter) )[a-z]+(?:-[a-z]+)+\b")]
    private static partial Regex Kind();

    [GeneratedRegex(@"(?<![\w-])(\d{4}-\d\d-\d\d) \([A-Z][a-z]{2}\)")]
    private static partial Regex NamedDay();

    // " (work.orderedByTenant)", " (see claim-of-lien.last-day)", " (add labor-ceased)": where the file or another finding holds it. The page has a link instead.
    [GeneratedRegex(@" \((?:see |add |enter )?(?:[a-z]+(?:-[a-z]+)*(?:\.[a-zA-Z]+(?:-[a-z]+)*)+|(?<entry>[a-z]+(?:-[a-z]+)+|(?<=add )completed)(?:, by actual)?)\)")]
    private static partial Regex Pointer();
}
