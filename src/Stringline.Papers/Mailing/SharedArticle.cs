using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Mailing;

/// <summary>
/// One article number is one envelope: it goes to one address on one day. A number that the file has for two cannot be proved for both, and
/// a paper that swears to it would be wrong for one of them.
/// </summary>
internal static class SharedArticle
{
    private sealed record Envelope(Entry Entry, Party To, string Number, string Where, LocalDate? Day);

    /// <summary>The reason against a paper that states the article number of an entry; null where nothing else has that number.</summary>
    /// <param name="facts">The file as known.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="section">The section under which the paper proves the mailing.</param>
    public static Refusal? Refused(FactsAsOf facts, Entry entry, string section)
    {
        var all = Envelopes(facts).ToList();
        foreach (var own in all.Where(e => e.Entry == entry))
        {
            if (all.Find(e => e.Number == own.Number && (e.Where != own.Where || e.Day != own.Day)) is not { } other)
                continue;
            var days = other.Day == own.Day || own.Day is null || other.Day is null ? ""
                : $", on {PaperText.Day(own.Day.Value)} and {PaperText.Day(other.Day.Value)}";
            return new Refusal("article-number-shared", Place.Of(entry, "article"),
                $"{Article(own.Number)} stands for two envelopes: to {OneLine(own.To.Name)} and to {OneLine(other.To.Name)}{days}.",
                $"One number is one envelope, to one address on one day. Enter each addressee by itself, with the number on its own "
                + $"label and receipt.", section);
        }

        return null;
    }

    private static IEnumerable<Envelope> Envelopes(FactsAsOf facts)
    {
        var notices = GivenNotice.In(facts).Select(n => (n.Entry, n.To, n.Article));
        var claims = facts.All<ClaimServed>().Select(s => ((Entry)s, s.To, s.Article));
        foreach (var (entry, to, article) in notices.Concat(claims))
        {
            if (Clean(article) is not { } number)
                continue;
            foreach (var party in to.Select(facts.Job.Party).OfType<Party>())
            {
                yield return new Envelope(entry, party, ArticleNumber.Bare(number),
                    Bare(Clean(ServiceOfClaim.AddressOf(party, facts.Job.Work)) ?? party.Name),
                    entry.On is DayFact.Exact on ? on.Day : null);
            }
        }
    }

    // The same address however it is broken into lines.
    private static string Bare(string address) =>
        string.Concat(address.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
