using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Stringline.Office.Entering;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Html;

/// <summary>
/// What the law library says, as a page says it to a person: each day with its weekday, fields and entries as the forms call them, and no
/// word of where the file or another finding holds a thing, since a link stands there.
/// </summary>
internal class PlainWords : Door
{
    /// <summary>The door itself.</summary>
    public static Door Page { get; } = new PlainWords();

    private PlainWords()
    {
    }

    /// <summary>The sentence in plain words.</summary>
    public static new string Of(Sentence sentence) => Page.Of(sentence);

    /// <summary>The sentence in plain words as markup, in which no day is broken at the end of a line.</summary>
    public static IHtmlContent Html(Sentence sentence) => new Content(sentence);

    /// <inheritdoc/>
    protected override string OfDay(LocalDate day, bool named) => LawText.Day(day);

    /// <inheritdoc/>
    protected override string OfPointer(IPointer aim) => aim switch
    {
        HeadField { Path: var path } => HeadForms.LabelOf(path) is { } label ? $"“{label}” in the file" : path,
        EntryKind kind => $"“{kind.Title}”",
        _ => aim.Name,
    };

    /// <inheritdoc/>
    protected override string OfAside(IReadOnlyList<IPointer> pointers, string how) => "";

    private sealed class Content(Sentence sentence) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder) => writer.Write(((Door)new Markup(encoder)).Of(sentence));
    }

    private sealed class Markup(HtmlEncoder encoder) : PlainWords
    {
        protected override string OfDay(LocalDate day, bool named) => $"<time datetime=\"{LawText.IsoDay(day)}\">{LawText.Day(day)}</time>";

        protected override string OfText(string text) => encoder.Encode(text);

        protected override string OfPointer(IPointer aim) => encoder.Encode(base.OfPointer(aim));
    }
}
