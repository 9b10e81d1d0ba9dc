using System.Globalization;
using System.Text;

namespace Stringline.Tables.Tests.Hostile;

/// <summary>Small workbooks made part by part; all names in them are invented.</summary>
internal static class Books
{
    public const string Main = "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    public const string Sheet = "xl/worksheets/sheet1.xml";
    public const string Shared = "xl/sharedStrings.xml";
    public const string Styles = "xl/styles.xml";
    public const string Book = "xl/workbook.xml";
    public const string Relations = "xl/_rels/workbook.xml.rels";
    private const string Documents = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";

    private static readonly string[] Headers = ["job number", "job name", "customer", "invoice number", "invoice date", "amount", "city",
        "zip", "county"];
    private static readonly string[] Data = ["J1", "Job 1", "Brushline Builders", "I1", "03/02/2026", "100.00", "Davis", "95616", "Yolo"];

    /// <summary>The rows of a small table: headers and one invoice.</summary>
    public static string TwoRows => Row(1, Headers) + Row(2, Data);

    /// <summary>A row of inline texts.</summary>
    public static string Row(int number, IReadOnlyList<string> cells, string more = "") =>
        $"<row r=\"{number.ToString(CultureInfo.InvariantCulture)}\">{string.Concat(
            cells.Select((cell, i) => Cell($"{(char)('A' + i)}{number}", cell)))}{more}</row>";

    /// <summary>The invoice with something more in its row.</summary>
    public static string Invoice(string more) => Row(2, Data, more);

    /// <summary>The row of headers.</summary>
    public static string HeaderRow => Row(1, Headers);

    public static string Cell(string at, string text) => $"<c r=\"{at}\" t=\"inlineStr\"><is><t>{text}</t></is></c>";

    /// <summary>A text so many times over. (What the usual ways pool for it would count against the memory of these tests.)</summary>
    public static string Times(string text, int times) => new StringBuilder(text.Length * times).Insert(0, text, times).ToString();

    /// <summary>A worksheet part.</summary>
    public static string Worksheet(string rows, string before = "", string after = "") =>
        $"{Declaration}<worksheet {Main}>{before}<sheetData>{rows}</sheetData>{after}</worksheet>";

    /// <summary>A workbook with one sheet of these rows.</summary>
    public static byte[] Of(string rows, string before = "", string after = "") => With(Sheet, Worksheet(rows, before, after));

    /// <summary>A good workbook but for one part, which is this; where the text is null it is left out.</summary>
    public static byte[] With(string part, string? text, RawZip.Lie? lie = null)
    {
        var zip = new RawZip();
        foreach (var (name, good) in Parts(part == Sheet && text is not null ? text : Worksheet(TwoRows)))
        {
            if (name != part)
                zip.Add(name, good);
            else if (text is not null)
                zip.Add(name, text, lie);
        }

        if (text is not null && Parts("").All(good => good.Name != part))
            zip.Add(part, text, lie);
        return zip.ToArray();
    }

    /// <summary>A good workbook whose last part is made by hand, or comes on top of the others.</summary>
    /// <param name="instead">The part that is left out before; null for none.</param>
    /// <param name="last">Adds what comes last.</param>
    /// <param name="countSaid">How many parts the list says it has.</param>
    /// <param name="books">Another list of sheets and of relations.</param>
    public static byte[] Ending(string? instead, Func<RawZip, RawZip> last, int? countSaid = null,
        (string Book, string Relations)? books = null)
    {
        var zip = new RawZip();
        foreach (var (name, text) in Parts(Worksheet(TwoRows)).Where(part => part.Name != instead))
            zip.Add(name, books is not { } other ? text : name switch { Book => other.Book, Relations => other.Relations, _ => text });
        return last(zip).ToArray(countSaid);
    }

    /// <summary>The list of sheets.</summary>
    public static string BookOf(params IEnumerable<string> relations) =>
        $"{Declaration}<workbook {Main} xmlns:r=\"{Documents}\"><sheets>{string.Concat(relations.Select((id, i) =>
            $"<sheet name=\"S{i + 1}\" sheetId=\"{i + 1}\" r:id=\"{id}\"/>"))}</sheets></workbook>";

    /// <summary>The list of relations.</summary>
    public static string RelationsOf(params IEnumerable<(string Id, string Target)> targets) =>
        $"{Declaration}<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">{string.Concat(
            targets.Select(one =>
            $"<Relationship Id=\"{one.Id}\" Type=\"{Documents}/worksheet\" Target=\"{one.Target}\"/>"))}</Relationships>";

    /// <summary>The list of shared texts.</summary>
    public static string SharedOf(string items) => $"{Declaration}<sst {Main}>{items}</sst>";

    /// <summary>The parts of a good workbook.</summary>
    public static IEnumerable<(string Name, string Text)> GoodParts => Parts(Worksheet(TwoRows));

    private static IEnumerable<(string Name, string Text)> Parts(string sheet) =>
    [
        ("[Content_Types].xml",
            $"{Declaration}<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"xml\" "
                + $"ContentType=\"application/xml\"/></Types>"),
        ("_rels/.rels", RelationsOf(("a", "xl/workbook.xml"))),
        (Book, BookOf("a")),
        (Relations, RelationsOf(("a", "worksheets/sheet1.xml"))),
        (Shared, SharedOf("<si><t>shared</t></si>")),
        (Styles, $"{Declaration}<styleSheet {Main}><cellXfs count=\"1\"><xf numFmtId=\"0\"/></cellXfs></styleSheet>"),
        (Sheet, sheet),
    ];
}
