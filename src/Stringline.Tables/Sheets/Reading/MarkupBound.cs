using System.Globalization;
using System.IO.Hashing;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>
/// What a part of a workbook unpacks to, counted and summed up while it is read, so that neither the archive's word nor the length of one
/// tag or text is trusted. Whoever reads XML from it never holds more than one of them, and each is bounded.
/// </summary>
internal sealed class MarkupBound(Stream unpacked, Func<int, bool> count, bool isMarkup) : Stream
{
    private readonly Crc32 sum = new();
    private Inside inside = Inside.Text;
    private int length;
    private byte quote;
    private int start;

    private enum Inside
    {
        Text,
        TagStart,
        Tag,
        Quoted,
        Comment,
        Data,
        Instruction,
    }

    /// <summary>Bytes so far.</summary>
    public long Count { get; private set; }

    /// <summary>CRC-32 of the bytes so far (ISO-HDLC, as ZIP has it: APPNOTE § 4.4.7).</summary>
    public uint Sum => sum.GetCurrentHashAsUInt32();

    /// <inheritdoc/>
    public override bool CanRead => true;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => false;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => Count;
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer)
    {
        var read = unpacked.Read(buffer);
        var bytes = buffer[..read];
        Count += read;
        sum.Append(bytes);
        if (!count(read))
            throw new TooLargeException($"a workbook that unpacks to more than {N(TableLimits.MostUnpacked)} bytes",
                "a smaller workbook; or save the sheet as CSV");
        if (isMarkup)
            Follow(bytes);
        return read;
    }

    /// <summary>Reads what is left.</summary>
    public void ReadToEnd()
    {
        var buffer = new byte[1 << 16];
        while (Read(buffer) > 0)
        {
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
    }

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private static string N(long number) => number.ToString("N0", CultureInfo.InvariantCulture);

    // Only as much of XML as it takes to know where a tag, a text, a comment ends. In UTF-8 the bytes of < and > stand for nothing else.
    private void Follow(ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length > 0)
        {
            var at = inside switch
            {
                Inside.Text => bytes.IndexOf((byte)'<'),
                Inside.TagStart => 0,
                Inside.Tag => bytes.IndexOfAny((byte)'>', (byte)'"', (byte)'\''),
                Inside.Quoted => bytes.IndexOf(quote),
                _ => bytes.IndexOf((byte)'>'),
            };
            var step = at < 0 ? bytes.Length : at + 1;
            if (length + (long)step > (inside is Inside.Text or Inside.Comment or Inside.Data ? TableLimits.LongestText
                : TableLimits.LongestTag))
                throw new TooLargeException("a workbook with a text or a tag that is too long",
                    $"cells of at most {N(TableLimits.LongestCell)} characters");
            length += step;
            if (inside is Inside.Comment or Inside.Data or Inside.Instruction)
                Remember(bytes[..step]);
            if (at >= 0)
                Turn(bytes[at]);
            bytes = bytes[step..];
        }
    }

    private void Turn(byte at)
    {
        switch (inside)
        {
            case Inside.Text:
                Go(Inside.TagStart);
                start = 0;
                break;
            case Inside.TagStart:
                StartOfTag(at);
                break;
            case Inside.Tag when at == '>':
                Go(Inside.Text);
                break;
            case Inside.Tag:
                (inside, quote) = (Inside.Quoted, at);
                break;
            case Inside.Quoted:
                inside = Inside.Tag;
                break;
            case Inside.Comment when (start & 0xFFFFFF) == 0x2D2D3E:
            case Inside.Data when (start & 0xFFFFFF) == 0x5D5D3E:
            case Inside.Instruction when (start & 0xFFFF) == 0x3F3E:
                Go(Inside.Text);
                break;
        }
    }

    // The first bytes after < tell what it is: "<!--", "<![", "<?", or a tag.
    private void StartOfTag(byte at)
    {
        start = (start << 8) | at;
        switch (start)
        {
            case '!' or 0x212D:
                break;
            case '?':
                Go(Inside.Instruction);
                break;
            case 0x212D2D:
                Go(Inside.Comment);
                break;
            case 0x215B:
                Go(Inside.Data);
                break;
            default:
                inside = Inside.Tag;
                if (at is (byte)'>')
                    Go(Inside.Text);
                else if (at is (byte)'"' or (byte)'\'')
                    (inside, quote) = (Inside.Quoted, at);
                break;
        }
    }

    private void Go(Inside next) => (inside, length, start) = (next, 0, 0);

    // The last three bytes: "-->", "]]>" or "?>" ends what they end, also where a reading cut it in two.
    private void Remember(ReadOnlySpan<byte> bytes)
    {
        foreach (var one in bytes[Math.Max(0, bytes.Length - 3)..])
            start = ((start & 0xFFFF) << 8) | one;
    }
}
