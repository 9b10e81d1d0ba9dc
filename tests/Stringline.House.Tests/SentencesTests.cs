using System.Text.RegularExpressions;
using Stringline.Law.Facts;

namespace Stringline.House.Tests;

/// <summary>
/// Sentences hold fields, entries and days as themselves: nobody takes them out of prose again, and no sentence holds their names as text.
/// </summary>
public sealed partial class SentencesTests
{
    // Each reads what a person typed, a table, a page or an address, and no sentence of the law.
    private static readonly string[] ReadNoSentence =
    [
        // Readers of things that are no sentences.
        "ParcelCount.cs", "RecorderFact.cs", "IndexNames.cs", "SocialSecurityNumber.cs", "CompletionSheet.cs", "CsvLine.cs",
            "WaitingTables.cs",
        "LawInWords.cs", "PrescribedText.cs", "StoreAddress.cs", "SqliteDatabase.cs", "SqliteGuards.cs", "KeptStores.cs", "PartFolder.cs",
        "Finish.cs",
        // Typography: where a line may break, and how a day is printed.
        "Typography.cs", "Unbroken.cs", "FeeDoubts.cs",
        // The reader of job files says what it expects in one text for every door.
        "FieldsInWords.cs",
        // Warnings of a counter sheet are still texts when they get there.
        "RefusalInWords.cs",
    ];

    [Fact]
    public void Regular_expressions_stand_only_where_no_sentence_is_read() => Assert.Empty(
        from file in Sources("src")
        where File.ReadAllText(file).Contains("Regex", StringComparison.Ordinal) && !ReadNoSentence.Contains(Path.GetFileName(file))
        select file);

    [Fact]
    public void No_sentence_of_the_law_holds_the_name_of_a_field_or_an_entry_as_text()
    {
        var kinds = EntryKinds.All.Select(kind => kind.Name).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(
            from file in Sources("src/Stringline.Law")
            where !file.Contains("/Facts/", StringComparison.Ordinal) && !file.Contains("/Numbers/", StringComparison.Ordinal)
            from line in File.ReadLines(file)
            where !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
            from Match text in Text().Matches(Hole().Replace(line, ""))
            where text.Value.Contains(' ', StringComparison.Ordinal)
            from Match name in Name().Matches(text.Value)
            where kinds.Contains(name.Groups[1].Value.Split('.')[0])
            && (name.Groups[1].Value.Contains('-', StringComparison.Ordinal)
                || name.Groups[1].Value.Contains('.', StringComparison.Ordinal))
                || Head().IsMatch(name.Groups[1].Value)
            select $"{Path.GetFileName(file)}: {text.Value}");
    }

    private static IEnumerable<string> Sources(string folder) =>
        Directory.EnumerateFiles(Repository.Path(folder), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal));

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Text();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Hole();

    [GeneratedRegex(@"(?<![\w.-])([a-z]+(?:-[a-z]+)*(?:\.[a-zA-Z]+)*)(?![\w-])")]
    private static partial Regex Name();

    [GeneratedRegex(@"^(?:work|claimant|contract|parties)\.[a-zA-Z]")]
    private static partial Regex Head();
}
