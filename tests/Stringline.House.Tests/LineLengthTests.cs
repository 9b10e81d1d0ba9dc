namespace Stringline.House.Tests;

/// <summary>No line of code is longer than 140 characters, so that none has to be scrolled.</summary>
public sealed class LineLengthTests
{
    private const int Most = 140;

    // One word or pattern, or text of a raw string that a line break would change.
    private static readonly (string File, int Lines)[] NotToBeBroken =
    [
        ("bench/Stringline.Comparison/Sheet/SheetFile.cs", 1),
        ("eng/Mutate/Schemata.cs", 2),
        ("tests/Stringline.Browser.Tests/AccessibilityTests.cs", 2),
        ("tests/Stringline.Browser.Tests/Fit.cs", 2),
        ("tests/Stringline.Browser.Tests/PhoneTests.cs", 1),
        ("tests/Stringline.Browser.Tests/PrintTests.cs", 1),
        ("tests/Stringline.Browser.Tests/WordsTests.cs", 1),
        ("tests/Stringline.Cli.Tests/EveryWriterTests.cs", 1),
        ("tests/Stringline.Papers.Tests/PrintedDaysTests.cs", 1),
        ("tests/Stringline.Store.Tests/ServerStopTests.cs", 1),
        ("tests/Stringline.Tables.Tests/RoundTripTests.cs", 1),
        ("tests/Stringline.Tables.Tests/TableRefusalTests.cs", 3),
    ];

    // Markup in which a line break would reach the page. The list only shrinks.
    private static readonly (string File, int Lines)[] Pages =
    [
        ("src/Stringline.Web/Pages/Calendar.cshtml", 8),
        ("src/Stringline.Web/Pages/Customer.cshtml", 16),
        ("src/Stringline.Web/Pages/Customers.cshtml", 4),
        ("src/Stringline.Web/Pages/Import.cshtml", 3),
        ("src/Stringline.Web/Pages/ImportTable.cshtml", 3),
        ("src/Stringline.Web/Pages/Index.cshtml", 21),
        ("src/Stringline.Web/Pages/Job/AfterRecording.cshtml", 5),
        ("src/Stringline.Web/Pages/Job/Amount.cshtml", 5),
        ("src/Stringline.Web/Pages/Job/Enter.cshtml", 8),
        ("src/Stringline.Web/Pages/Job/File.cshtml", 11),
        ("src/Stringline.Web/Pages/Job/Index.cshtml", 13),
        ("src/Stringline.Web/Pages/Job/Paper.cshtml", 22),
        ("src/Stringline.Web/Pages/Job/Papers.cshtml", 6),
        ("src/Stringline.Web/Pages/Job/Prove.cshtml", 2),
        ("src/Stringline.Web/Pages/Job/_Asked.cshtml", 9),
        ("src/Stringline.Web/Pages/Job/_AtTheCounter.cshtml", 4),
        ("src/Stringline.Web/Pages/Job/_Changes.cshtml", 2),
        ("src/Stringline.Web/Pages/Job/_EnterConfirm.cshtml", 3),
        ("src/Stringline.Web/Pages/Job/_EnterForm.cshtml", 14),
        ("src/Stringline.Web/Pages/Job/_Line.cshtml", 1),
        ("src/Stringline.Web/Pages/Job/_Papers.cshtml", 1),
        ("src/Stringline.Web/Pages/Job/_Since.cshtml", 1),
        ("src/Stringline.Web/Pages/Law.cshtml", 6),
        ("src/Stringline.Web/Pages/NewJob.cshtml", 7),
        ("src/Stringline.Web/Pages/Search.cshtml", 2),
        ("src/Stringline.Web/Pages/Searches.cshtml", 3),
        ("src/Stringline.Web/Pages/Settings.cshtml", 16),
        ("src/Stringline.Web/Pages/Shared/_FirstRun.cshtml", 3),
        ("src/Stringline.Web/Pages/Shared/_Layout.cshtml", 2),
        ("src/Stringline.Web/Pages/Shared/_StoreNotes.cshtml", 2),
        ("src/Stringline.Web/Pages/Status.cshtml", 6),
        ("src/Stringline.Web/Pages/_BackupNote.cshtml", 2),
        ("src/Stringline.Web/Pages/_ImportColumns.cshtml", 19),
        ("src/Stringline.Web/Pages/_ImportRunning.cshtml", 3),
        ("src/Stringline.Web/Pages/_ImportSummary.cshtml", 16),
    ];

    [Fact]
    public void No_line_is_longer_than_140_characters()
    {
        var found = from folder in (string[])["src", "tests", "bench", "eng"]
                    from pattern in (string[])["*.cs", "*.cshtml"]
                    from path in Directory.EnumerateFiles(Repository.Path(folder), pattern, SearchOption.AllDirectories)
                    let file = Path.GetRelativePath(Repository.Path(""), path).Replace('\\', '/')
                    where !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal)
                    let lines = File.ReadLines(path).Count(line => line.Length > Most)
                    where lines > 0
                    select (file, lines);
        Assert.Equal(NotToBeBroken.Concat(Pages).OrderBy(Name, StringComparer.Ordinal), found.OrderBy(Name, StringComparer.Ordinal));
    }

    private static string Name((string File, int Lines) row) => row.File;
}
