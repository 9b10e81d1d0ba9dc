using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>The names that a reader of XML has met. It keeps each for as long as it reads, so their number is bounded.</summary>
internal sealed class CountedNames : NameTable
{
    private int count;

    /// <inheritdoc/>
    public override string Add(char[] key, int start, int len) => Get(key, start, len) ?? Counted(base.Add(key, start, len));

    /// <inheritdoc/>
    public override string Add(string key) => Get(key) ?? Counted(base.Add(key));

    private string Counted(string added) => ++count <= TableLimits.MostNames
        ? added
        : throw new TooLargeException("a workbook with thousands of names that no workbook has", "a workbook as a spreadsheet writes it");
}
