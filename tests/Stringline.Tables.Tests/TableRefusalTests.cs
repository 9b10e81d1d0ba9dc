using System.Globalization;
using System.Text;
using Stringline.Tables.Sheets;
using Stringline.Tables.Sheets.Reading;
using Stringline.Tables.Tests.Hostile;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// Tables made to break their reader. This program runs with a heap of 600 MB at most (see its project file): a file that takes more
/// fails its test. The second part of <c>docs/refusals.md</c> is made from them.
/// </summary>
[Slow(Slow.Fuzz)]
public sealed class TableRefusalTests : IDisposable
{
    private const string Title = "# What a table is refused for";
    // Ends a reading that hangs; a busy machine may take its time.
    private static readonly TimeSpan Hang = TimeSpan.FromMinutes(3);

    private readonly string folder = Scratch.Folder();

    public static TheoryData<string> Names => [.. HostileFile.All.Select(file => file.Name)];

    [Fact]
    public void There_are_more_than_sixty_kinds_and_each_has_its_own_name()
    {
        Assert.True(HostileFile.All.Count > 60);
        Assert.Equal(HostileFile.All.Count, HostileFile.All.Select(file => file.Name).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    [Attack("hostile tables (far cells, bombs, lengths that lie, wrong checksums)")]
    public async Task A_hostile_table_is_refused_or_read_within_bounds(string name)
    {
        var file = HostileFile.All.Single(one => one.Name == name);
        var (rows, refusal) = await Read(file);
        Assert.Equal(file.Rows, rows);
        Assert.Equal(file.Rows is null, refusal is not null);
    }

    [Fact]
    public void The_heap_of_these_tests_is_bounded() => Assert.True(GC.GetGCMemoryInfo().TotalAvailableMemoryBytes <= 600L * 1024 * 1024);

    [Fact]
    public async Task The_page_of_refusals_tells_each_of_them()
    {
        var committed = Repository.Path("docs/refusals.md");
        var told = File.ReadAllText(committed);
        var first = told.IndexOf(Title, StringComparison.Ordinal) is >= 0 and var at ? told[..at] : told + "\n";
        var page = first + await Page();
        if (told == page)
            return;
        File.WriteAllText(Repository.Path("docs/refusals.received.md"), page);
        Assert.Fail("docs/refusals.md is stale: read docs/refusals.received.md and move it there.");
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private async Task<(int? Rows, SheetException? Refusal)> Read(HostileFile file)
    {
        var path = Path.Combine(folder, file.Name);
        await File.WriteAllBytesAsync(path, file.Make(), TestContext.Current.CancellationToken);
        return await Task.Run(() =>
        {
            try
            {
                return ((int?)new SheetFile(path).Rows().Count(), (SheetException?)null);
            }
            catch (SheetException refusal)
            {
                return (null, refusal);
            }
        }).WaitAsync(Hang, TestContext.Current.CancellationToken);
    }

    private async Task<string> Page()
    {
        var page = new StringBuilder($"""
            {Title}

            Made from the files that `tests/Stringline.Tables.Tests/Hostile` makes; a test fails when this page is stale. The limits stand in
            `src/Stringline.Tables/Sheets/Reading/TableLimits.cs`. A table is refused before any of its rows is taken: of a workbook (XLSX) every part is
            unpacked once, counted and compared with its checksum first. An old workbook (XLS) has no checksum, and a CSV file has none: a letter
            that was changed in them cannot be told. None of these files takes more than 600 MB of memory.


            """);
        foreach (var file in HostileFile.All.Where(file => file.Rows is null))
        {
            var refusal = (await Read(file)).Refusal!.Message.Replace(folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
            page.Append(CultureInfo.InvariantCulture, $"## {file.Name}\n\nMade of: {file.How}.\n\n```text\n{refusal}\n```\n\n");
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }
}
