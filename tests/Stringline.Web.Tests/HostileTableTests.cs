using Stringline.Testing;
using System.IO.Compression;
using System.Net;
using System.Text;
using Stringline.Office.Import;

namespace Stringline.Web.Tests;

/// <summary>A table that is made to end or to hang the desk does neither, not even at the next start.</summary>
[Slow(Slow.Fuzz)]
public sealed class HostileTableTests(ImportDesk desk) : IClassFixture<ImportDesk>
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly byte[] Plain = Encoding.UTF8.GetBytes(
        "Job number,Invoice number,Invoice date,Amount\nHT-1,I-1,03/02/2026,10.00\n");

    [Theory]
    [InlineData("row.xlsx", "<row r=\"2147483647\"/>", "row 2147483647 of a sheet")]
    [InlineData("column.xlsx", "<row r=\"1\"><c r=\"ZZZZZZ1\"><v>1</v></c></row>", "the cell ZZZZZZ1")]
    [Attack("hostile tables (far cells, bombs, lengths that lie, wrong checksums)")]
    public async Task A_workbook_beyond_the_limits_does_not_even_wait(string name, string rows, string told)
    {
        using var answer = await desk.Send(name, Book(rows));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains(told, page, StringComparison.Ordinal);
        Assert.Contains("Nothing was imported", page, StringComparison.Ordinal);
        Assert.DoesNotContain($"<th scope=\"row\" data-label=\"Table\"><a href=\"/import/{name}", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_table_is_read_once_and_not_at_every_visit()
    {
        var table = await desk.Give("once.csv", Plain);
        await desk.Page(table);
        var read = desk.Looks.Read;
        await desk.Page(table);
        await desk.Page(table);
        Assert.Equal(read, desk.Looks.Read);
    }

    [Fact]
    [Attack("the program ended while it read a table; a browser that leaves")]
    public async Task A_table_that_a_program_was_reading_when_it_ended_is_set_aside_until_a_person_says_otherwise()
    {
        var table = await desk.Give("ended.csv", Plain);
        var folder = desk.Tables.FolderOf(desk.State(table));
        await File.WriteAllBytesAsync(Path.Combine(folder, "reading"), [], TestContext.Current.CancellationToken);
        var read = desk.Looks.Read;
        var page = await desk.Page(table);
        Assert.Contains("The desk ended while it was reading this table, so the table was set aside. Nothing of it was written.", page,
            StringComparison.Ordinal);
        Assert.Contains("set aside, since the desk ended while reading it", await desk.Page("/import"), StringComparison.Ordinal);
        Assert.Equal(read, desk.Looks.Read);

        await desk.Press(table, "back");
        Assert.Contains("How the columns are understood", await desk.Page(table), StringComparison.Ordinal);
        Assert.Equal(read + 1, desk.Looks.Read);
        Assert.False(File.Exists(Path.Combine(folder, "reading")));
    }

    [Fact]
    [Attack("the program ended while it read a table; a browser that leaves")]
    public async Task A_look_in_which_the_program_ended_is_told_so_too_and_a_writing_as_broken_off()
    {
        var table = await desk.Give("looking.csv", Plain);
        foreach (var (step, then) in ((ImportStep, ImportStep)[])[(ImportStep.Looking, ImportStep.SetAside),
            (ImportStep.Writing, ImportStep.Broken)])
        {
            desk.Tables.Keep(desk.State(table) with { Step = step });
            await File.WriteAllBytesAsync(
                Path.Combine(desk.Tables.FolderOf(desk.Tables.Find(table.Split('/')[2])!), "reading"), [],
                    TestContext.Current.CancellationToken);
            Assert.Equal(then, desk.State(table).Step);
        }
    }

    [Fact]
    [Attack("the program ended while it read a table; a browser that leaves")]
    public async Task A_table_that_another_desk_is_reading_is_not_set_aside()
    {
        var table = await desk.Give("other.csv", Plain);
        var path = Path.Combine(desk.Tables.FolderOf(desk.State(table)), "reading");
        await using (new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None))
            Assert.Contains("How the columns are understood", await desk.Page(table), StringComparison.Ordinal);
        Assert.Equal(ImportStep.Received, desk.Tables.Find(table.Split('/')[2])!.Step);
    }

    [Fact]
    [Attack("the program ended while it read a table; a browser that leaves")]
    public async Task Reading_ends_when_the_browser_leaves_and_other_tables_are_read()
    {
        // Ten million blank cells: within the limits, and long work. The table after it could not be read before it.
        var slow = await desk.Give("slow.xlsx",
            Book(new StringBuilder().Insert(0, $"<row>{new StringBuilder().Insert(0, "<c/>", 500)}</row>", 20_000).ToString()));
        var read = desk.Looks.Read;
        using var leaves = new CancellationTokenSource();
        var visit = desk.Browser.GetAsync(new Uri(slow, UriKind.Relative), leaves.Token);
        while (desk.Looks.Read == read && !visit.IsCompleted)
            await Task.Delay(10, TestContext.Current.CancellationToken);
        await leaves.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => visit);
        var next = await desk.Give("next.csv", Plain);
        Assert.Contains("How the columns are understood",
            await desk.Page(next).WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(desk.Tables.FolderOf(desk.State(slow)), "reading")));
        Assert.Equal(ImportStep.Received, desk.State(slow).Step);
    }

    private static byte[] Book(string rows)
    {
        using var file = new MemoryStream();
        using (var archive = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in (IEnumerable<(string, string)>)
                [
                    ("[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"/>"),
                    ("xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Documents}\"><sheets><sheet name=\"S\" sheetId=\"1\" "
                        + $"r:id=\"a\"/></sheets></workbook>"),
                    ("xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                        + $"<Relationship Id=\"a\" Type=\"{Documents}/worksheet\" Target=\"worksheets/sheet1.xml\"/></Relationships>"),
                    ("xl/worksheets/sheet1.xml", $"<worksheet xmlns=\"{Main}\"><sheetData>{rows}</sheetData></worksheet>"),
                ])
            {
                using var part = new StreamWriter(archive.CreateEntry(name).Open());
                part.Write(text);
            }
        }

        return file.ToArray();
    }
}
