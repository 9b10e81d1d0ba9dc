using Stringline.Tables.Sheets;
using System.Text;
using Stringline.Tables.Sheets.Reading;
using Stringline.Tables.Tests.Hostile;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>What an import keeps of a table is bounded too, and whoever asked for it can stop it.</summary>
[Slow(Slow.Lasting)]
public sealed class BoundedImportTests : IDisposable
{
    private const string Headers = "Job #,Invoice Number,Delivery Date,Amount\n";

    private readonly Desk desk = new();

    [Fact]
    public void A_reason_says_a_long_cell_only_as_far_as_it_helps()
    {
        var report = desk.Import("long.csv", Headers + "J1,R-1,3/2/2026," + new string('x', 30_000) + "\n");
        var refused = Assert.Single(report.Files[0].Refused);
        Assert.InRange(refused.Why.Length, 100, TableLimits.LongestReason + 10);
    }

    [Fact]
    public void A_table_of_which_nearly_nothing_can_be_taken_is_refused_as_a_whole_and_nothing_is_written()
    {
        var text = new StringBuilder(Headers).Insert(Headers.Length, "J1,R-1,3/2/2026,forty\n", TableLimits.MostRefusedRows + 1).ToString();
        var refusal = Assert.Throws<SheetException>(() => desk.Import("slips.csv", text));
        Assert.Contains("more than 100,000 rows that would be refused, the first for this: \"forty\"", refusal.Fault.Found,
            StringComparison.Ordinal);
        Assert.Equal(0, desk.Journal.CountJobs());
    }

    [Fact]
    public void Reading_stops_when_it_is_told_to()
    {
        using var stop = new CancellationTokenSource();
        var table = new SheetFile(desk.File("rows.csv", new StringBuilder().Insert(0, "a,b\n", 100_000).ToString()), null, stop.Token);
        Assert.Throws<OperationCanceledException>(() =>
        {
            foreach (var row in table.Rows())
            {
                if (row.Line == 3)
                    stop.Cancel();
            }
        });
    }

    [Fact]
    public void Going_through_a_workbook_stops_when_it_is_told_to()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var path = desk.File("book.xlsx", Books.Of(Books.TwoRows));
        Assert.Throws<OperationCanceledException>(() => new SheetFile(path, null, stop.Token).Rows().Count());
        Assert.Throws<OperationCanceledException>(() => desk.Import(Desk.Request(path) with { Stop = stop.Token }));
    }

    [Fact]
    public void A_file_that_has_changed_is_gone_through_again()
    {
        var path = desk.File("book.xlsx", Books.Of(Books.TwoRows));
        var table = new SheetFile(path);
        Assert.Equal(2, table.Rows().Count());
        desk.File("book.xlsx", Books.Of(Books.HeaderRow + Books.Row(2147483647, ["J1"])));
        Assert.Throws<SheetException>(() => table.Rows().Count());
    }

    /// <inheritdoc/>
    public void Dispose() => desk.Dispose();
}
