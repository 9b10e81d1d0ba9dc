using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Stringline.Browser.Tests;

/// <summary>
/// Writes a picture of a page anew with a palette: a page has few colours, and the guide's pictures are kept in the repository.
/// </summary>
/// <remarks>Reads and writes as the PNG specification (ISO/IEC 15948) says, as far as a browser's screenshot needs: 8 bits, not
/// interlaced.</remarks>
internal static class SmallPng
{
    private const int MostColours = 256;

    private static ReadOnlySpan<byte> Signature => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The same picture in at most 256 colours: the commonest as they are, each other as the nearest of them.</summary>
    public static byte[] Of(byte[] png)
    {
        var (width, height, pixels) = Read(png);
        var palette = pixels.CountBy(colour => colour).OrderByDescending(colour => colour.Value).ThenBy(colour => colour.Key)
            .Take(MostColours).Select(colour => colour.Key).ToArray();
        var known = palette.Index().ToDictionary(colour => colour.Item, colour => (byte)colour.Index);
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            for (var y = 0; y < height; y++)
            {
                deflate.WriteByte(0);
                for (var x = 0; x < width; x++)
                {
                    var colour = pixels[(y * width) + x];
                    if (!known.TryGetValue(colour, out var at))
                        known[colour] = at = Nearest(palette, colour);
                    deflate.WriteByte(at);
                }
            }
        }

        using var small = new MemoryStream();
        small.Write(Signature);
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        (head[8], head[9]) = (8, 3);
        Write(small, "IHDR", head);
        Write(small, "PLTE",
            [.. palette.SelectMany(colour => (byte[])[(byte)(colour >> 16), (byte)((colour >> 8) & 255), (byte)(colour & 255)])]);
        Write(small, "IDAT", packed.ToArray());
        Write(small, "IEND", []);
        return small.ToArray();
    }

    private static (int Width, int Height, int[] Pixels) Read(byte[] png)
    {
        Assert.True(png.AsSpan().StartsWith(Signature));
        using var packed = new MemoryStream();
        ReadOnlySpan<byte> head = default;
        for (var at = 8; at < png.Length;)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            var kind = Encoding.ASCII.GetString(png, at + 4, 4);
            if (kind == "IHDR")
                head = png.AsSpan(at + 8, length);
            else if (kind == "IDAT")
                packed.Write(png, at + 8, length);
            at += length + 12;
        }

        Assert.True(head[8] == 8 && head[9] is 2 or 6 && head[12] == 0, "Not a picture as browsers write them.");
        var (width, height, step) =
            (BinaryPrimitives.ReadInt32BigEndian(head), BinaryPrimitives.ReadInt32BigEndian(head[4..]), head[9] == 2 ? 3 : 4);
        packed.Position = 0;
        using var inflate = new ZLibStream(packed, CompressionMode.Decompress);
        var (row, above) = (new byte[width * step], new byte[width * step]);
        var pixels = new int[width * height];
        for (var y = 0; y < height; y++)
        {
            var filter = inflate.ReadByte();
            inflate.ReadExactly(row);
            for (var i = 0; i < row.Length; i++)
            {
                var (left, up, corner) = (i < step ? 0 : row[i - step], above[i], i < step ? 0 : above[i - step]);
                row[i] = unchecked((byte)(row[i]
                    + filter switch { 0 => 0, 1 => left, 2 => up, 3 => (left + up) / 2, _ => Paeth(left, up, corner) }));
            }

            for (var x = 0; x < width; x++)
                pixels[(y * width) + x] = (row[x * step] << 16) | (row[(x * step) + 1] << 8) | row[(x * step) + 2];
            (row, above) = (above, row);
        }

        return (width, height, pixels);
    }

    private static int Paeth(int left, int up, int corner)
    {
        var guess = left + up - corner;
        var (byLeft, byUp, byCorner) = (Math.Abs(guess - left), Math.Abs(guess - up), Math.Abs(guess - corner));
        return byLeft <= byUp && byLeft <= byCorner ? left : byUp <= byCorner ? up : corner;
    }

    private static byte Nearest(int[] palette, int colour) =>
        (byte)Array.IndexOf(palette, palette.MinBy(one => Apart(one >> 16, colour >> 16) + Apart((one >> 8) & 255, (colour >> 8) & 255)
            + Apart(one & 255, colour & 255)));

    private static int Apart(int one, int other) => (one - other) * (one - other);

    // The check sum of the specification's annex D.
    private static uint Crc(byte[] named)
    {
        var sum = uint.MaxValue;
        foreach (var one in named)
        {
            sum ^= one;
            for (var bit = 0; bit < 8; bit++)
                sum = (sum & 1) == 0 ? sum >> 1 : (sum >> 1) ^ 0xEDB88320;
        }

        return ~sum;
    }

    private static void Write(Stream to, string kind, byte[] content)
    {
        Span<byte> number = stackalloc byte[4];
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. content];
        BinaryPrimitives.WriteInt32BigEndian(number, content.Length);
        to.Write(number);
        to.Write(named);
        BinaryPrimitives.WriteUInt32BigEndian(number, Crc(named));
        to.Write(number);
    }
}
