using System.Globalization;
using System.Text;
using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Reads the XML of a part of a workbook for the checks: UTF-8, without a document type, no deeper and with no more names than
/// any workbook has.</summary>
internal static class CheckedXml
{
    /// <summary>Goes through a part element by element.</summary>
    /// <param name="part">The part.</param>
    /// <param name="node">Told every node.</param>
    public static void Read(Stream part, Action<XmlReader> node)
    {
        try
        {
            Go(part, node);
        }
        catch (XmlException e)
        {
            throw new InvalidDataException(
                string.Create(CultureInfo.InvariantCulture,
                    $"a part of it is not the XML of a workbook, from line {e.LineNumber}, position {e.LinePosition} on"), e);
        }
        catch (DecoderFallbackException e)
        {
            throw new InvalidDataException("a part of it is not written in UTF-8", e);
        }
    }

    private static void Go(Stream part, Action<XmlReader> node)
    {
        // Read as UTF-8 whatever it declares, and refused where it declares otherwise: the bounds are on bytes of UTF-8.
        using var text = new StreamReader(part, new UTF8Encoding(true, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: false,
            1 << 16, leaveOpen: true);
        using var reader = XmlReader.Create(text,
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, NameTable = new CountedNames() });
        while (reader.Read())
        {
            if (reader.NodeType == XmlNodeType.XmlDeclaration && reader.GetAttribute("encoding") is { } encoding
                && !encoding.Equals("utf-8", StringComparison.OrdinalIgnoreCase) && !encoding.Equals("us-ascii",
                    StringComparison.OrdinalIgnoreCase))
            {
                throw new InvalidDataException($"it is written in {encoding} and not in UTF-8");
            }

            if (reader.Depth > TableLimits.DeepestNesting)
                throw new TooLargeException("a workbook whose elements lie hundreds deep in each other",
                    "a workbook as a spreadsheet writes it");
            node(reader);
        }
    }
}
