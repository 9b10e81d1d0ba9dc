using Stringline.Office.Portfolio;
using Stringline.Office.DemoOffice;
using Stringline.Web;
using Stringline.Tables.Sheets.Cells;
using Stringline.Tables.Sheets.Reading;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Cli.Tests;

/// <summary>The desk's list is one list, whichever file it comes in and by whichever door.</summary>
public sealed class DeskListTests : IDisposable
{
    private static readonly LocalDate Today = new(2026, 7, 15);

    private readonly string folder = Scratch.Folder();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_CSV_and_the_workbook_of_the_desk_and_of_the_command_line_say_the_same()
    {
        // A name with what the forms of a file might treat apart: blanks, a formula, quotes and a comma.
        var jobs = DemoJobs.Of(Today).Take(12).ToList();
        var odd = jobs[0].Job with { Name = "=Oak  &\u00A0\"Elm\", Lot 7" };
        var store = Path.Combine(folder, "office.stringline");
        var desk = DeskHost.Build(new DeskOptions(store, 0) { AsOf = Today }, SystemClock.Instance);
        await using var closing = desk;
        var journal = (IJournal)desk.Services.GetService(typeof(IJournal))!;
        Assert.Empty(journal.PutMany([new KeyedJob("odd", odd), .. jobs.Skip(1)], "ana").Faults);
        new Portfolio(journal).RefreshStale(Today, 2, stop: TestContext.Current.CancellationToken);
        await desk.StartAsync(TestContext.Current.CancellationToken);
        using var browser = new HttpClient { BaseAddress = new Uri(DeskHost.AddressOf(desk)) };
        await browser.GetStringAsync(new Uri(DeskHost.EntryOf(desk)), TestContext.Current.CancellationToken);
        foreach (var name in (string[])["desk.csv", "desk.xlsx"])
            File.WriteAllBytes(At(name),
                await browser.GetByteArrayAsync(new Uri(name, UriKind.Relative), TestContext.Current.CancellationToken));
        await desk.StopAsync(TestContext.Current.CancellationToken);

        using var errors = new StringWriter();
        var status = new CommandLine(Stream.Null, errors, SystemClock.Instance)
            .Run(["list", "--store", store, "--as-of", "2026-07-15", "--csv", At("list.csv"), "--xlsx", At("list.xlsx")]);
        Assert.True(status == CommandLine.Done, errors.ToString());

        Assert.Equal(File.ReadAllBytes(At("desk.csv")), File.ReadAllBytes(At("list.csv")));
        var csv = Rows("desk.csv");
        Assert.Contains(csv, row => row.Contains("=Oak & \"Elm\", Lot 7"));
        Assert.True(csv.Count > 12);
        Assert.Equal(csv, Rows("desk.xlsx"));
        Assert.Equal(csv, Rows("list.xlsx"));
    }

    private string At(string name) => Path.Combine(folder, name);

    // What stands in the cells for a person: a workbook keeps dollars as a number, a CSV file as a text with two places.
    private List<string[]> Rows(string name) =>
        [.. new SheetFile(At(name)).Rows()
            .Select(row => row.Cells.Select(Words).Reverse().SkipWhile(cell => cell.Length == 0).Reverse().ToArray())];

    private static string Words(Cell cell) => cell.Kind == CellKind.Text && decimal.TryParse(cell.ToString(), out var dollars)
        ? Cell.Of(dollars).ToString() : cell.ToString();
}
