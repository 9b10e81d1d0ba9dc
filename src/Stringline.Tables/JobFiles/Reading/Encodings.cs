using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Tells whether bytes are UTF-8 text, and where they stop being so.</summary>
internal static class Encodings
{
    private const string Expected = "a file saved as UTF-8";

    /// <summary>The fault of bytes that are not UTF-8; null where they are.</summary>
    public static Fault? Fault(ReadOnlySpan<byte> bytes, string file)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return new Fault(file, "", $"a file in UTF-16: its mark 0x{bytes[0]:X2} 0x{bytes[1]:X2} stands at byte 0", Expected);
        if (Utf8.IsValid(bytes))
            return null;

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var consumed) == OperationStatus.Done)
            at += consumed;
        return new Fault(
            file,
            "",
            string.Create(CultureInfo.InvariantCulture,
                $"a file that is not UTF-8: byte {at:N0} is 0x{bytes[at]:X2}, after \"{Before(bytes, at)}\""),
            Expected);
    }

    private static string Before(ReadOnlySpan<byte> bytes, int at)
    {
        var start = Math.Max(0, at - 20);
        while (start < at && (bytes[start] & 0xC0) == 0x80)
            start++;
        return Excerpt.Of(bytes[start..at]);
    }
}
