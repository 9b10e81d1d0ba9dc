using System.Globalization;
using Stringline.Law.Plan;

namespace Stringline.Office.Import;

/// <summary>
/// What an import asks before it writes: rows that can be right and seldom are. Nothing is written until each is confirmed.
/// </summary>
/// <param name="Id">By which it is confirmed.</param>
/// <param name="Text">What would happen, in a sentence, with the number of rows.</param>
/// <param name="Lines">The first lines that it is about, with what is unlikely of each where that is more than the text.</param>
/// <param name="Count">How many rows.</param>
public sealed record ImportQuestion(string Id, string Text, IReadOnlyList<AskedRow> Lines, long Count);

/// <summary>A row that is asked about.</summary>
/// <param name="Line">Its line in the file.</param>
/// <param name="Told">What is told of it; empty where the question says it all.</param>
public sealed record AskedRow(int Line, string Told);

/// <summary>Gathers what is to be asked, row by row.</summary>
public sealed class ImportQuestions
{
    /// <summary>Rows with negative amounts that no type explains.</summary>
    public const string Negative = "negative-amounts";

    /// <summary>Rows of another kind than what was imported of them before.</summary>
    public const string ChangedKind = "changed-kinds";

    private const int MostLines = 20;

    private readonly Dictionary<string, (List<AskedRow> Lines, long Count)> asked = new(StringComparer.Ordinal);

    /// <summary>The ids of all questions.</summary>
    public static IReadOnlyList<string> Ids { get; } = [Negative, ChangedKind, .. Unlikely.Ids];

    /// <summary>Takes a row.</summary>
    internal void Ask(string id, int line, string told = "")
    {
        var (lines, count) = asked.GetValueOrDefault(id, ([], 0));
        if (lines.Count < MostLines)
            lines.Add(new AskedRow(line, told));
        asked[id] = (lines, count + 1);
    }

    /// <summary>The questions, each with its rows.</summary>
    public IReadOnlyList<ImportQuestion> All =>
        [.. Ids.Where(asked.ContainsKey).Select(id => new ImportQuestion(id, Text(id, asked[id].Count), asked[id].Lines, asked[id].Count))];

    private static string Text(string id, long count)
    {
        var rows = count.ToString("N0", CultureInfo.InvariantCulture) + (count == 1 ? " row" : " rows");
        return id switch
        {
            Negative => $"{rows} with negative amounts would be entered as credits.",
            ChangedKind => $"{rows} would replace an earlier entry of another kind, such as an invoice that is now a credit or a payment.",
            _ => $"{rows}: {Unlikely.What(id)}.",
        };
    }
}
