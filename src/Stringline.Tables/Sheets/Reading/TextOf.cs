using System.Text;
using System.Text.Unicode;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Tells in which encoding a text file is written: by its mark, else UTF-8 where every byte allows it, else
/// Windows-1252.</summary>
public static class TextOf
{
    private const int Head = 64 * 1024;

    /// <summary>The encoding; the stream stands at its start again.</summary>
    /// <param name="stream">One that can seek.</param>
    public static Encoding Encoding(Stream stream)
    {
        CodePagesEncodingProvider.Instance.GetEncoding(1252);
        System.Text.Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        var head = new byte[4096];
        var length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        var encoding = Marked(head.AsSpan(0, length)) ?? Unmarked(head.AsSpan(0, length)) ?? (IsUtf8(stream, head, length)
            ? new UTF8Encoding(false) : System.Text.Encoding.GetEncoding(1252));
        stream.Position = 0;
        return encoding;
    }

    /// <summary>Whether a file begins as text does: no control characters but tab, line ends and form feed. The stream stands at its start
    /// again.</summary>
    public static bool IsText(Stream stream)
    {
        var head = new byte[Head];
        var length = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        stream.Position = 0;
        return IsText(head.AsSpan(0, length));
    }

    /// <summary>Whether these bytes are the beginning of a text. In UTF-16 every second byte of English text is zero.</summary>
    public static bool IsText(ReadOnlySpan<byte> start)
    {
        if (start.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || start.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return true;
        // Without a zero byte control characters tell; with them, whether they are every second byte does.
        var zeros = start.Count((byte)0);
        return zeros > 0
            ? Unmarked(start) is not null
            : start.IndexOfAnyInRange((byte)0x00, (byte)0x08) < 0 && start.IndexOf((byte)0x0B) < 0 && start.IndexOfAnyInRange((byte)0x0E,
                (byte)0x1F) < 0;
    }

    private static Encoding? Marked(ReadOnlySpan<byte> head) =>
        head.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? new UTF8Encoding(true)
        : head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) ? new UnicodeEncoding(bigEndian: false, byteOrderMark: true)
        : head.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) ? new UnicodeEncoding(bigEndian: true, byteOrderMark: true)
        : null;

    // UTF-16 without a mark: of a text in English every second byte is zero. No other text holds a zero byte.
    private static UnicodeEncoding? Unmarked(ReadOnlySpan<byte> head)
    {
        int even = 0, odd = 0;
        for (var i = 0; i < head.Length; i++)
        {
            if (head[i] == 0)
                _ = i % 2 == 0 ? even++ : odd++;
        }

        return odd > head.Length / 4 && even == 0 ? new UnicodeEncoding(false, false)
            : even > head.Length / 4 && odd == 0 ? new UnicodeEncoding(true, false)
            : null;
    }

    private static bool IsUtf8(Stream stream, byte[] head, int length)
    {
        stream.Position = 0;
        var buffer = new byte[Math.Max(head.Length, 1 << 16)];
        var kept = 0;
        while (true)
        {
            var read = stream.Read(buffer, kept, buffer.Length - kept);
            if (read == 0)
                return Utf8.IsValid(buffer.AsSpan(0, kept));
            var whole = kept + read;
            var cut = Cut(buffer.AsSpan(0, whole));
            if (!Utf8.IsValid(buffer.AsSpan(0, cut)))
                return false;
            kept = whole - cut;
            buffer.AsSpan(cut, kept).CopyTo(buffer);
        }
    }

    // Where the last character that may be cut off by the end of the buffer begins.
    private static int Cut(ReadOnlySpan<byte> bytes)
    {
        for (var back = 1; back <= Math.Min(3, bytes.Length); back++)
        {
            var value = bytes[^back];
            if (value >= 0xC0)
                return bytes.Length - back;
            if (value < 0x80)
                break;
        }

        return bytes.Length;
    }
}
