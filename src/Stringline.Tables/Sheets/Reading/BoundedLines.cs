using System.Globalization;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>A text of which no line is longer than the limit: whoever reads row by row then holds no more than a row.</summary>
internal sealed class BoundedLines(TextReader text, CancellationToken stop) : TextReader
{
    private int length;
    private int line = 1;

    /// <inheritdoc/>
    public override int Peek() => text.Peek();

    /// <inheritdoc/>
    public override int Read()
    {
        var one = text.Read();
        if (one >= 0)
            Follow([(char)one]);
        return one;
    }

    /// <inheritdoc/>
    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override int Read(Span<char> buffer)
    {
        stop.ThrowIfCancellationRequested();
        var read = text.Read(buffer);
        Follow(buffer[..read]);
        return read;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
            text.Dispose();
        base.Dispose(disposing);
    }

    private void Follow(ReadOnlySpan<char> read)
    {
        while (read.Length > 0)
        {
            var end = read.IndexOfAny('\n', '\r');
            length += end < 0 ? read.Length : end;
            if (length > TableLimits.LongestLine)
            {
                throw new TooLargeException(
                    string.Create(CultureInfo.InvariantCulture, $"line {line:N0}, of more than {TableLimits.LongestLine:N0} characters"),
                    "a line for each row");
            }

            if (end < 0)
                return;
            length = 0;
            if (read[end] == '\n')
                line++;
            read = read[(end + 1)..];
        }
    }
}
