using System.Text;
using Stringline.Tables.Sheets.Columns;
using Stringline.Tables.Sheets.Reading;
using Stringline.Testing;

namespace Stringline.Tables.Tests;

/// <summary>
/// How a table is understood before it is read, and how a person's choice of its columns is kept. The meanings are those a reader of the
/// headers gives them.
/// </summary>
public sealed class TableLookTests : IDisposable
{
    private readonly string folder = Scratch.Folder();

    [Fact]
    public void A_choice_by_hand_is_read_back_from_its_json_as_it_was_made()
    {
        // "Notes" would be the description by its words, "Date" stands there twice, and "Worth" means nothing by itself.
        var file = File("Our books\nJob,Date,Date,Invoice no,Worth,Notes\nJ-1,1/2/2026,1/5/2026,I-1,10,mine alone\n");
        var look = TableLook.At(file, new ColumnMapping { Kind = TableKind.Invoices });
        Assert.NotNull(look.Unclear);
        Assert.Equal(2, look.Header!.Value.Line);

        var chosen = new Dictionary<int, Column> { [0] = Column.Job, [2] = Column.Furnished, [3] = Column.Invoice, [4] = Column.Amount };
        var mapping = look.Chosen(TableKind.Invoices, chosen, ColumnMapping.None);
        Assert.Equal("column C", mapping.Headers[Column.Furnished]);
        Assert.Equal("", mapping.Headers[Column.Text]);
        var read = MappingJson.Read(MappingJson.Write(mapping), "columns.json");
        var again = TableLook.At(file, read);
        Assert.Null(again.Unclear);
        Assert.Equal(chosen, again.Meanings);
        Assert.True(again.Has(read));
        Assert.False(TableLook.At(File("Job,Invoice no,Amount\nJ-1,I-1,10\n"), ColumnMapping.None).Has(read));
    }

    [Fact]
    public void A_file_with_nothing_in_it_has_no_headers_and_says_so()
    {
        var look = TableLook.At(File("\n\n"), ColumnMapping.None);
        Assert.Null(look.Header);
        Assert.NotNull(look.Unclear);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);

    private SheetFile File(string text)
    {
        var path = Path.Combine(folder, Guid.NewGuid().ToString("N") + ".csv");
        System.IO.File.WriteAllBytes(path, Encoding.UTF8.GetBytes(text));
        return new SheetFile(path);
    }
}
