using System.Globalization;
using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Bounds a workbook's list of shared texts, which the reader holds in memory as a whole.</summary>
internal sealed class SharedTextsCheck(CancellationToken stop)
{
    private readonly CellText text = new();
    private long characters;

    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>Goes through the list.</summary>
    public void Read(Stream part) => CheckedXml.Read(part, reader =>
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element when reader.Depth == 1:
                if (Count % 1024 == 0)
                    stop.ThrowIfCancellationRequested();
                if (reader.LocalName == "si" && ++Count > TableLimits.MostSharedTexts)
                    throw new TooLargeException($"a workbook with more than {N(TableLimits.MostSharedTexts)} different texts",
                        "a smaller table; or save the sheet as CSV");
                text.Begin();
                break;
            case XmlNodeType.Element:
                text.Piece(reader, string.Create(CultureInfo.InvariantCulture, $"shared text {Count}"));
                break;
            case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace when reader.Depth > 1:
                if ((characters += text.Add(reader,
                    string.Create(CultureInfo.InvariantCulture, $"shared text {Count}"))) > TableLimits.MostSharedCharacters)
                {
                    throw new TooLargeException(
                        $"a workbook with more than {N(TableLimits.MostSharedCharacters)} characters of shared texts",
                            "a smaller table; or save the sheet as CSV");
                }

                break;
        }
    });

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
