using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Stringline.Papers.Layout;

/// <summary>
/// Finishes a file that PDFsharp wrote. PDFsharp 6.2.4 leaves out the checksum with which the data of a compressed stream end (RFC 1950,
/// 2.2): viewers show such a file, strict readers and archives call it damaged. It also gives what a face reaches below the line without
/// its sign (PDF 32000-1, 9.8.1: a negative number). What is drawn at random, the identifiers of the XMP block and the six letters that
/// mark a part of a face (9.6.4), becomes the plan's own, so that the same plan gives the same bytes.
/// </summary>
internal static partial class Finish
{
    private const int ChecksumLength = 4;

    private static readonly byte[] LengthKey = "/Length "u8.ToArray();

    /// <summary>The same file with its streams ended and its cross-reference table rewritten.</summary>
    /// <param name="file">What PDFsharp wrote: one cross-reference table, every length a number in its stream's dictionary.</param>
    /// <param name="id">Sixteen hexadecimal digits of the plan's own.</param>
    /// <exception cref="InvalidDataException">The file is not laid out so.</exception>
    public static byte[] Of(byte[] file, string id)
    {
        var table = TableOf(file);
        var starts = StartsOf(file, table);
        var objects = Objects(starts, table);
        using var whole = new MemoryStream(file.Length + (objects.Count * ChecksumLength));
        whole.Write(file, 0, objects[0].Start.Value);
        var moved = new Dictionary<int, long>();
        var faces = new List<string>();
        foreach (var piece in objects)
        {
            moved[piece.Start.Value] = whole.Position;
            Write(whole, file.AsSpan(piece), id, faces);
        }

        var newTable = whole.Position;
        whole.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {starts.Length}\n")));
        foreach (var start in starts)
        {
            whole.Write(Encoding.ASCII.GetBytes(start == 0
                ? "0000000000 65535 f \n"
                : string.Create(CultureInfo.InvariantCulture, $"{moved[start]:D10} 00000 n \n")));
        }

        var trailer = Find(file, "trailer"u8, table);
        whole.Write(file.AsSpan(trailer, Find(file, "startxref"u8, trailer) - trailer));
        whole.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"startxref\n{newTable}\n%%EOF\n")));
        return whole.ToArray();
    }

    /// <summary>Whether every compressed stream of a file ends with the checksum of what it holds.</summary>
    public static bool IsWhole(byte[] file)
    {
        foreach (var place in Objects(file))
        {
            var piece = file.AsSpan(place);
            if (DataOf(piece) is { } data && !IsEnded(piece[data]))
                return false;
        }

        return true;
    }

    /// <summary>The name of a face that the file does not carry in itself; null where it carries all.</summary>
    public static string? FaceOutside(byte[] file)
    {
        foreach (var place in Objects(file))
        {
            var piece = Encoding.Latin1.GetString(file.AsSpan(place));
            var isOutside = piece.Contains("/Type/FontDescriptor", StringComparison.Ordinal)
                ? !piece.Contains("/FontFile", StringComparison.Ordinal)
                : SimpleFace().IsMatch(piece) && !piece.Contains("/FontDescriptor", StringComparison.Ordinal);
            if (isOutside)
                return NameOfFace().Match(piece) is { Success: true } name ? name.Groups[1].Value : "a face without a name";
        }

        return null;
    }

    [GeneratedRegex(@"/Type\s*/Font\b(?!Descriptor).*/Subtype\s*/(Type1|TrueType|MMType1)\b", RegexOptions.Singleline)]
    private static partial Regex SimpleFace();

    [GeneratedRegex(@"/(?:BaseFont|FontName)\s*/([^\s/<>]+)")]
    private static partial Regex NameOfFace();

    private static void Write(MemoryStream to, ReadOnlySpan<byte> piece, string id, List<string> faces)
    {
        if (DataOf(piece) is { } data)
            WriteEnded(to, piece, data);
        else if (piece.IndexOf("/Type/Font"u8) >= 0)
            to.Write(OfFace(piece, faces));
        else if (piece.IndexOf("/Type/Metadata"u8) >= 0)
            to.Write(WithOwnId(piece, id));
        else
            to.Write(piece);
    }

    private static void WriteEnded(MemoryStream to, ReadOnlySpan<byte> piece, Range data)
    {
        Span<byte> checksum = stackalloc byte[ChecksumLength];
        BinaryPrimitives.WriteUInt32BigEndian(checksum, Checksum(Inflated(piece[data])));
        if (piece[data].EndsWith(checksum))
        {
            to.Write(piece);
            return;
        }

        // Of nothing the library writes the two bytes of the head alone; deflate says of nothing that its one block is the last.
        ReadOnlySpan<byte> nothing = piece[data].Length == 2 ? [3, 0] : [];
        var digits = DigitsOf(piece);
        to.Write(piece[..digits.Start.Value]);
        to.Write(Encoding.ASCII.GetBytes((piece[data].Length + nothing.Length + ChecksumLength).ToString(CultureInfo.InvariantCulture)));
        to.Write(piece[digits.End.Value..data.End.Value]);
        to.Write(nothing);
        to.Write(checksum);
        to.Write(piece[data.End..]);
    }

    private static byte[] OfFace(ReadOnlySpan<byte> piece, List<string> faces)
    {
        var text = Encoding.Latin1.GetString(piece);
        text = PartOfFace().Replace(text, found =>
        {
            if (!faces.Contains(found.Value))
                faces.Add(found.Value);
            return $"/AAAAA{(char)('A' + faces.IndexOf(found.Value))}+";
        });
        return Encoding.Latin1.GetBytes(Below().Replace(text, "/Descent -$1"));
    }

    [GeneratedRegex("/[A-Z]{6}[+]")]
    private static partial Regex PartOfFace();

    [GeneratedRegex("/Descent ([0-9]+)")]
    private static partial Regex Below();

    private static byte[] WithOwnId(ReadOnlySpan<byte> piece, string id)
    {
        var text = piece.ToArray();
        var own = Encoding.ASCII.GetBytes($"{id[..8]}-{id[8..12]}-4{id[13..16]}-8000-{id[..12]}".ToLowerInvariant());
        for (var at = text.AsSpan().IndexOf("uuid:"u8); at >= 0;)
        {
            own.CopyTo(text.AsSpan(at + 5));
            var next = text.AsSpan(at + 5).IndexOf("uuid:"u8);
            at = next < 0 ? -1 : at + 5 + next;
        }

        return text;
    }

    // The bytes of a compressed stream within its object; null where the object has none.
    private static Range? DataOf(ReadOnlySpan<byte> piece)
    {
        var stream = piece.IndexOf("stream\n"u8);
        if (stream < 0 || piece[..stream].IndexOf("/FlateDecode"u8) < 0)
            return null;
        var digits = DigitsOf(piece[..stream]);
        var length = int.Parse(Encoding.ASCII.GetString(piece[digits]), CultureInfo.InvariantCulture);
        var from = stream + "stream\n".Length;
        return from..(from + length);
    }

    private static Range DigitsOf(ReadOnlySpan<byte> dictionary)
    {
        var at = dictionary.IndexOf(LengthKey);
        if (at < 0)
            throw new InvalidDataException("A stream of the file does not say how long it is.");
        at += LengthKey.Length;
        var end = at;
        while (dictionary[end] is >= (byte)'0' and <= (byte)'9')
            end++;
        return at..end;
    }

    private static bool IsEnded(ReadOnlySpan<byte> data) =>
        data.Length > 2 + ChecksumLength && BinaryPrimitives.ReadUInt32BigEndian(data[^ChecksumLength..]) == Checksum(Inflated(data));

    // Behind the two bytes of a zlib head lies plain deflate, which says itself where it ends.
    private static byte[] Inflated(ReadOnlySpan<byte> data)
    {
        using var packed = new MemoryStream(data[2..].ToArray());
        using var inflater = new DeflateStream(packed, CompressionMode.Decompress);
        using var plain = new MemoryStream(data.Length * 3);
        inflater.CopyTo(plain);
        return plain.ToArray();
    }

    // Adler-32 (RFC 1950, 8.2): two sums modulo the largest prime under 65536; 3,800 bytes at a time stay within 32 bits.
    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        const uint prime = 65521;
        const int atATime = 3800;
        uint a = 1, b = 0;
        while (!bytes.IsEmpty)
        {
            var part = bytes[..Math.Min(atATime, bytes.Length)];
            foreach (var value in part)
            {
                a += value;
                b += a;
            }

            (a, b) = (a % prime, b % prime);
            bytes = bytes[part.Length..];
        }

        return (b << 16) | a;
    }

    private static int TableOf(byte[] file)
    {
        var last = file.AsSpan().LastIndexOf("startxref\n"u8);
        if (last < 0)
            throw new InvalidDataException("The file says nowhere where its cross-reference table is.");
        var end = last + "startxref\n".Length;
        var from = end;
        while (file[end] is >= (byte)'0' and <= (byte)'9')
            end++;
        var table = int.Parse(Encoding.ASCII.GetString(file, from, end - from), CultureInfo.InvariantCulture);
        return file.AsSpan(table).StartsWith("xref\n0 "u8) ? table
            : throw new InvalidDataException("The cross-reference table is not where the file says.");
    }

    private static List<Range> Objects(byte[] file)
    {
        var table = TableOf(file);
        return Objects(StartsOf(file, table), table);
    }

    // The objects as they lie in the file: each ends where the next begins, the last at the table.
    private static List<Range> Objects(int[] starts, int table)
    {
        int[] inOrder = [.. starts.Where(s => s > 0).Order(), table];
        return [.. inOrder.Zip(inOrder.Skip(1), (start, end) => start..end)];
    }

    // Where each object begins, by its number; 0 for one that is free.
    private static int[] StartsOf(byte[] file, int table)
    {
        const int row = 20;
        var at = table + "xref\n0 ".Length;
        var end = at;
        while (file[end] != (byte)'\n')
            end++;
        var starts = new int[int.Parse(Encoding.ASCII.GetString(file, at, end - at).Trim(), CultureInfo.InvariantCulture)];
        for (var i = 0; i < starts.Length; i++)
        {
            var entry = Encoding.ASCII.GetString(file, end + 1 + (i * row), row);
            starts[i] = entry[17] == 'n' ? int.Parse(entry.AsSpan(0, 10), CultureInfo.InvariantCulture) : 0;
        }

        return starts;
    }

    private static int Find(byte[] file, ReadOnlySpan<byte> word, int from)
    {
        var at = file.AsSpan(from).IndexOf(word);
        return at < 0 ? throw new InvalidDataException($"The file has no \"{Encoding.ASCII.GetString(word)}\".") : from + at;
    }
}
