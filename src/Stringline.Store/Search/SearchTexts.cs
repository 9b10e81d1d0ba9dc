using System.Text;
using Stringline.Law.Facts;

namespace Stringline.Store.Search;

/// <summary>The texts by which a job can be found, and the words of them that are indexed.</summary>
internal sealed class SearchTexts
{
    private readonly StringBuilder lines = new();
    private readonly HashSet<string> met = new(StringComparer.Ordinal);
    private readonly HashSet<string> words = new(StringComparer.Ordinal);

    private SearchTexts()
    {
    }

    /// <summary>The texts, as the table keeps them: a line for each, its field, a tab, the text.</summary>
    public string Lines => lines.ToString();

    /// <summary>The words, each once, parted by spaces.</summary>
    public string Words => string.Join(' ', words);

    /// <summary>The texts of a job.</summary>
    public static SearchTexts Of(string key, JobFile job)
    {
        var texts = new SearchTexts();
        texts.Name("job", key);
        texts.Name("job", job.Name);
        texts.Name("claimant", job.Claimant.Name);
        foreach (var party in job.Parties)
            texts.Name("party", party.Name);
        var site = job.Work.Site;
        texts.Name("site", string.Join(", ", new[] { site.Street, site.City, site.County, site.Zip }.Where(part => part is not null)));
        texts.Number("parcel", site.Apn);
        texts.Number("permit", job.Work.Permit?.Number);
        foreach (var entry in job.Entries)
            texts.Entry(entry);
        return texts;
    }

    /// <summary>Those of the lines in which a word begins with one that is sought.</summary>
    public static List<SearchText> Where(string lines, IReadOnlyList<string> sought)
    {
        var found = new List<SearchText>();
        foreach (var line in lines.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            var tab = line.IndexOf('\t', StringComparison.Ordinal);

            // A line without a tab is none that was written: a check says so, a search goes on.
            if (tab < 0)
                continue;
            var text = new SearchText(line[..tab], line[(tab + 1)..]);
            var words = Folding.Words(text.Text);
            if (IsNumber(text.Field) && Folding.Joined(words) is { } joined)
                words.Add(joined);
            if (words.Exists(word => sought.Any(start => word.StartsWith(start, StringComparison.Ordinal))))
                found.Add(text);
        }

        return found;
    }

    // Numbers first: a court stands after its case.
    private void Entry(Entry entry)
    {
        Texts(entry, areNumbers: true);
        Texts(entry, areNumbers: false);
    }

    private void Texts(Entry entry, bool areNumbers)
    {
        foreach (var field in EntryKinds.Of(entry).Fields)
        {
            if (field is Field.Text { Searched: { } searched } text && searched.IsNumber == areNumbers)
                Add(searched.Heading, text.Get(entry), searched.IsNumber);
        }
    }

    private static bool IsNumber(string field) => field is "parcel" or "permit" or "instrument" or "article" or "case" or "ref";

    private void Name(string field, string? text) => Add(field, text, joined: false);

    private void Number(string field, string? text) => Add(field, text, joined: true);

    private void Add(string field, string? text, bool joined)
    {
        if (string.IsNullOrWhiteSpace(text))
            return;
        var line = field + '\t' + text.Replace('\n', ' ').Replace('\t', ' ') + '\n';
        if (!met.Add(line))
            return;
        lines.Append(line);
        var parts = Folding.Words(text);
        words.UnionWith(parts);
        if (joined && Folding.Joined(parts) is { } whole)
            words.Add(whole);
    }
}
