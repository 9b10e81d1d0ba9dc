using Stringline.Cli.Terminal;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;

namespace Stringline.Cli.Tests;

/// <summary>What a table says is repeated on the terminal without what a terminal obeys.</summary>
public sealed class ImportTextTests
{
    [Fact]
    public void Headers_and_customers_are_told_with_every_sign_that_cannot_be_seen_spelled_out()
    {
        var file = new FileReport
        {
            File = "t.csv",
            Kind = TableKind.Payments,
            Rows = 1,
            New = 0,
            Changed = 0,
            Unchanged = 0,
            Refused = [new RefusedRow(2, ["\"\u001B[2J\" is no day"])],
            Blank = 0,
            Ignored = [new IgnoredRow(3, "of the type \"\u202Ex\"")],
            ColumnsNotUsed = ["note\u001B[31m"],
            Columns = [(Column.Amount, "Amount\u202E")],
        };
        var paid = new AcrossReport("t.csv", 1, "Brush\u009Bline", new LocalDate(2026, 3, 2), 10m, []);
        var text = ImportText.Of(new ImportReport([file], 0, 0, 0, [paid], []), dryRun: true, "s");
        Assert.DoesNotContain(text.EnumerateRunes(), rune => rune.Value != '\n' && Tables.Signs.IsRefused(rune));
        foreach (var spelled in (string[])["\\u001B[2J", "\\u202Ex", "note\\u001B[31m", "Amount\\u202E", "Brush\\u009Bline"])
            Assert.Contains(spelled, text, StringComparison.Ordinal);
    }
}
