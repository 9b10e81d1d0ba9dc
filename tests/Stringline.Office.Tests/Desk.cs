using System.Text;
using Stringline.Answers;
using Stringline.Law.Facts;
using Stringline.Law.Counting;
using Stringline.Tables.Sheets.Columns;
using Stringline.Office.Import;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>A folder with a store and files to import; all names in them are invented.</summary>
public sealed class Desk : IDisposable
{
    private readonly string folder = Scratch.Folder();
    private IJournal? journal;

    public IJournal Journal => journal ??= Journals.Open(Path.Combine(folder, "office.stringline"), SystemClock.Instance, OpenStore.OrMake);

    /// <summary>Writes a file and gives its path.</summary>
    public string File(string name, byte[] bytes)
    {
        var path = Path.Combine(folder, name);
        System.IO.File.WriteAllBytes(path, bytes);
        return path;
    }

    public string File(string name, string text) => File(name, Encoding.UTF8.GetBytes(text));

    /// <inheritdoc cref="SupplierRequest"/>
    public static ImportRequest Request(params string[] files) => SupplierRequest.Of(files);

    public ImportReport Import(ImportRequest request) => new SheetImport(Journal, OpenDays.Statutory).Run(request);

    public ImportReport Import(string name, string text, ColumnMapping? mapping = null) =>
        Import(Request(File(name, text)) with { Mapping = mapping ?? ColumnMapping.None });

    /// <summary>The entries of a job as now known, replaced ones left out.</summary>
    public List<Entry> Entries(string key) => [.. new FactsAsOf(Journal.Find(key)!.Job, new LocalDate(2090, 1, 1)).Known];

    public string Seal => Journal.Check().Seal.ToString();

    public void Dispose()
    {
        journal?.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
