using System.Text;
using System.Text.Json.Nodes;
using Stringline.Web.Html;
using Stringline.Tables;
using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Store;

namespace Stringline.Web.Entering;

/// <summary>What others wrote to a job since a page was shown.</summary>
internal static class WrittenSince
{
    /// <summary>Each change in words, with who wrote it.</summary>
    /// <param name="stored">The job as it is.</param>
    /// <param name="sequence">The number of the last change that the page has shown.</param>
    public static IReadOnlyList<string> Of(StoredJob stored, long sequence)
    {
        var told = new List<string>();
        var entry = 0;
        foreach (var row in stored.Rows)
        {
            var what = row.Kind switch
            {
                ChangeKind.Entry => EntryInWords(stored.Job.Entries[entry++]),
                ChangeKind.Head => "the file itself: parties, site, contract or firm",
                ChangeKind.Proof => "a proof was attached",
                _ => throw new InvalidOperationException($"No such change: {row.Kind}."),
            };
            if (row.Sequence > sequence)
                told.Add($"{what} (written by {row.Who})");
        }

        return told;
    }

    /// <summary>Whether an entry that says the same was written since: then a form was sent twice.</summary>
    public static bool Holds(StoredJob stored, long sequence, Entry entry)
    {
        var same = WithoutId(JournalText.Entry(entry));
        return stored.Rows.Any(row => row.Sequence > sequence && row.Kind == ChangeKind.Entry && WithoutId(row.Payload.Span) == same);
    }

    private static string EntryInWords(Entry entry) =>
        EntryWords.Short(entry) + (EntryWords.Dollars(entry) is { } dollars ? ", " + LawText.Money(dollars) : "");

    private static string WithoutId(ReadOnlySpan<byte> payload)
    {
        var json = JsonNode.Parse(Encoding.UTF8.GetString(payload))!.AsObject();
        json.Remove("id");
        return json.ToJsonString();
    }
}
