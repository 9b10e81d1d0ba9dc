using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Web.Html;

/// <summary>The reasons of a finding as nested details, each with its section and the entries it stood on.</summary>
internal static class WhyTree
{
    /// <summary>A finding's id as an anchor: <c>claim-of-lien-last-day</c>.</summary>
    public static string Anchor(string finding) => finding.Replace('.', '-');

    /// <summary>The tree.</summary>
    /// <param name="reasons">The reasons.</param>
    /// <param name="entriesAt">The address of the page that lists the entries; empty for this page.</param>
    public static IHtmlContent Of(IReadOnlyList<Reason> reasons, string entriesAt = "") => new Tree(reasons, entriesAt);

    /// <summary>A section, as a link to its place on the page of the law where it has one.</summary>
    public static IHtmlContent Section(string section) => new SectionLink(section);

    private sealed class SectionLink(string section) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            // "Civ. Code §§ 8102, 8502; Gov. Code § 27361.6": each section leads to its own place.
            var parts = section.Split("; ");
            for (var part = 0; part < parts.Length; part++)
            {
                if (part > 0)
                    writer.Write("; ");
                var sign = parts[part].IndexOf("§§ ", StringComparison.Ordinal);
                if (sign < 0)
                {
                    One(writer, encoder, parts[part], parts[part]);
                    continue;
                }

                var code = parts[part][..sign] + "§ ";
                var numbers = parts[part][(sign + 3)..].Split(", ");
                for (var i = 0; i < numbers.Length; i++)
                {
                    if (i > 0)
                        writer.Write(", ");
                    var first = numbers[i].Split('-', '–')[0];
                    One(writer, encoder, i == 0 ? parts[part][..(sign + 3)] + numbers[i] : numbers[i], code + first);
                }
            }
        }

        private static void One(TextWriter writer, HtmlEncoder encoder, string words, string leadsTo)
        {
            var anchor = LawIndex.AnchorOf(leadsTo);
            writer.Write(anchor is null ? "<span class=\"section\">" : $"<a class=\"section\" href=\"/law#{anchor}\">");
            encoder.Encode(writer, words);
            writer.Write(anchor is null ? "</span>" : "</a>");
        }
    }

    private sealed class Tree(IReadOnlyList<Reason> reasons, string entriesAt) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            if (reasons.Count == 0)
                return;
            writer.Write("<ul class=\"why\">");
            foreach (var reason in reasons)
            {
                writer.Write(reason.Applied ? "<li>" : "<li class=\"not-taken\">");
                if (reason.Children.Count > 0)
                {
                    // The links stand below the summary and not in it: whoever presses it by keyboard means one thing.
                    writer.Write("<details open><summary>");
                    Words(writer, encoder, reason);
                    writer.Write("</summary>");
                    if (reason.Section.Length > 0 || reason.Facts.Count > 0)
                    {
                        writer.Write("<p class=\"by\">");
                        StoodOn(writer, encoder, reason);
                        writer.Write("</p>");
                    }

                    new Tree(reason.Children, entriesAt).WriteTo(writer, encoder);
                    writer.Write("</details>");
                }
                else
                {
                    Words(writer, encoder, reason);
                    StoodOn(writer, encoder, reason);
                }

                writer.Write("</li>");
            }

            writer.Write("</ul>");
        }

        private static void Words(TextWriter writer, HtmlEncoder encoder, Reason reason)
        {
            if (!reason.Applied)
                writer.Write("<span class=\"road\">Looked at, did not apply:</span> ");
            PlainWords.Html(reason.Sentence).WriteTo(writer, encoder);
        }

        private void StoodOn(TextWriter writer, HtmlEncoder encoder, Reason reason)
        {
            if (reason.Section.Length > 0)
            {
                writer.Write(' ');
                Section(reason.Section).WriteTo(writer, encoder);
            }

            foreach (var entry in reason.Facts.Take(Most))
                Fact(writer, encoder, entry);
            if (reason.Facts.Count > Most)
                writer.Write($" <span class=\"fact\">and {reason.Facts.Count - Most} more entries</span>");
        }

        private const int Most = 8;

        private void Fact(TextWriter writer, HtmlEncoder encoder, Entry entry)
        {
            writer.Write($" <a class=\"fact\" href=\"{entriesAt}#entry-{entry.Index}\">");
            encoder.Encode(writer, EntryWords.Short(entry));
            writer.Write("</a>");
        }
    }
}
