using System.IO.Compression;
using System.Text;
using System.Xml;

namespace Stringline.Cli.Tests;

/// <summary>
/// Readers that take nothing but what the standards say, for what the program writes: RFC 4180, ECMA-376 with XML 1.0, RFC 5545. They
/// share no code with the writers.
/// </summary>
internal static class StrictReading
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>
    /// The records of comma-separated text: lines end with CR LF, quotes stand around a whole cell, all records are equally long.
    /// </summary>
    public static List<string[]> Csv(byte[] bytes)
    {
        var text = Utf8.GetString(bytes).TrimStart('\uFEFF');
        var records = new List<string[]>();
        for (var at = 0; at < text.Length;)
        {
            var cells = new List<string>();
            while (true)
            {
                cells.Add(Cell(text, ref at));
                Assert.True(at < text.Length, "the last line has no end");
                if (text[at] == ',')
                {
                    at++;
                    continue;
                }

                Assert.Equal("\r\n", text[at..(at + 2)]);
                at += 2;
                break;
            }

            records.Add([.. cells]);
        }

        Assert.All(records, record => Assert.Equal(records[0].Length, record.Length));
        return records;
    }

    private static string Cell(string text, ref int at)
    {
        var cell = new StringBuilder();
        if (text[at] != '"')
        {
            while (text[at] is not (',' or '\r'))
            {
                Assert.NotEqual('"', text[at]);
                Assert.NotEqual('\n', text[at]);
                cell.Append(text[at++]);
            }

            return cell.ToString();
        }

        for (at++; ; at++)
        {
            if (text[at] != '"')
                cell.Append(text[at]);
            else if (text[at + 1] == '"')
                cell.Append(text[++at]);
            else
                break;
        }

        at++;
        Assert.True(text[at] is ',' or '\r');
        return cell.ToString();
    }

    /// <summary>The texts of the cells of a workbook, none of which is a formula; every part is well-formed XML 1.0.</summary>
    public static List<string> Workbook(byte[] bytes)
    {
        var texts = new List<string>();
        using var zip = new ZipArchive(new MemoryStream(bytes));
        foreach (var part in zip.Entries)
        {
            using var stream = part.Open();
            using var xml =
                XmlReader.Create(stream,
                    new XmlReaderSettings { CheckCharacters = true, DtdProcessing = DtdProcessing.Prohibit, IgnoreWhitespace = false });
            while (xml.Read())
            {
                Assert.NotEqual("f", xml.LocalName);
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "t")
                {
                    xml.Read();
                    texts.Add(xml.NodeType == XmlNodeType.Element || xml.NodeType == XmlNodeType.EndElement ? "" : xml.Value);
                }
            }
        }

        return texts;
    }

    /// <summary>
    /// The values of one property of a calendar: lines end with CR LF and hold at most 75 octets, components are closed, escapes are known.
    /// </summary>
    public static List<string> Calendar(byte[] bytes, string property)
    {
        var values = new List<string>();
        var open = new Stack<string>();
        var text = Utf8.GetString(bytes);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        var lines = text[..^2].Split("\r\n");
        Assert.All(lines, line => Assert.InRange(Utf8.GetByteCount(line), 1, 75));
        Assert.All(lines, line => Assert.DoesNotContain(line, c => char.IsControl(c) && c != '\t'));
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal)[..^2].Split("\r\n"))
        {
            var (name, value) = (line[..line.IndexOfAny([':', ';'])], line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..]);
            Assert.Matches("^[A-Z-]+$", name);
            if (name == "BEGIN")
                open.Push(value);
            else if (name == "END")
                Assert.Equal(open.Pop(), value);
            Assert.True(name is not "BEGIN" || value is "VCALENDAR" or "VEVENT" or "VALARM");
            if (name is "SUMMARY" or "DESCRIPTION" or "LOCATION" or "CATEGORIES")
                Assert.DoesNotMatch(@"(?<!\\)(\\\\)*[;,]|(?<!\\)(\\\\)*\\[^\\;,n]", value);
            if (name == property)
                values.Add(value.Replace("\\\\", "\u0001", StringComparison.Ordinal).Replace("\\n", "\n", StringComparison.Ordinal)
                    .Replace("\\", "", StringComparison.Ordinal).Replace('\u0001', '\\'));
        }

        Assert.Empty(open);
        return values;
    }
}
