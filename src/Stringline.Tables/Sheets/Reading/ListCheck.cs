using System.Globalization;
using System.Xml;

namespace Stringline.Tables.Sheets.Reading;

/// <summary>Bounds one of the lists of a workbook, of its sheets, relations or formats, which the reader holds in memory.</summary>
internal static class ListCheck
{
    /// <summary>Goes through a list of which nothing but its length matters.</summary>
    public static void Read(Stream part) => Read(part, _ => { });

    /// <summary>Goes through a list.</summary>
    /// <param name="part">Its part.</param>
    /// <param name="element">Told every element.</param>
    public static void Read(Stream part, Action<XmlReader> element)
    {
        var count = 0;
        CheckedXml.Read(new Shortened(part), reader =>
        {
            if (reader.NodeType != XmlNodeType.Element)
                return;
            if (++count > TableLimits.MostListed)
                throw TooLong();
            element(reader);
        });
    }

    private static TooLargeException TooLong() => new(
        "a workbook with a list of sheets or formats that is too long",
        string.Create(CultureInfo.InvariantCulture, $"at most {TableLimits.MostListed:N0} of them; or save the sheet as CSV"));

    private sealed class Shortened(Stream part) : Stream
    {
        private long read;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => read;
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var length = part.Read(buffer, offset, count);
            return (read += length) <= TableLimits.MostUnpackedOfAList ? length : throw TooLong();
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
