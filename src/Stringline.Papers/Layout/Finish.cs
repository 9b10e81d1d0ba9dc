using System.Buffers.Binary;
using System.Text;
using System.Text.RegularExpressions;

namespace Stringline.Papers.Layout;

/// <summary>
/// Finishes a file that PDFsharp wrote. PDFsharp 6.2.4 leaves out the checksum with which the data of a compressed stream end (RFC 1950,
/// 2.2): viewers show such a file, strict readers and archives call it damaged. So it is asked to compress nothing, and its streams are
/// compressed here; one that is compressed all the same is ended. It also gives what a face reaches below the line without
/// its sign (PDF 32000-1, 9.8.1: a negative number). What is drawn at random, the identifiers of the XMP block and the six letters that
/// mark a part of a face (9.6.4), becomes the plan's own, so that the same plan gives the same bytes.
/// </summary>
internal static partial class Finish
{
    private const int TagLength = 6;

    /// <summary>The same file with its streams compressed and ended and its cross-reference table rewritten.</summary>
    /// <param name="file">What PDFsharp wrote.</param>
    /// <param name="id">Sixteen hexadecimal digits of the plan's own.</param>
    /// <exception cref="InvalidDataException">The file is not laid out so.</exception>
    public static byte[] Of(byte[] file, string id) => Of(file, file.Length, id);

    /// <summary>The same for a file that does not fill its room.</summary>
    public static byte[] Of(byte[] file, int length, string id)
    {
        var objects = new WrittenObjects(file, length);
        using var whole = new MemoryStream(length / 2);
        whole.Write(file, 0, objects.StartOf(0));
        var (from, to) = (new int[objects.Count], new int[objects.Count]);
        var faces = new List<string>();
        for (var place = 0; place < objects.Count; place++)
        {
            (from[place], to[place]) = (objects.StartOf(place), (int)whole.Position);
            Write(whole, file, from[place], objects[place], id, faces);
        }

        var newTable = whole.Position;
        Put(whole, string.Create(CultureInfo.InvariantCulture, $"xref\n0 {objects.Starts.Length}\n"));
        foreach (var start in objects.Starts)
        {
            Put(whole, start == 0 ? "0000000000 65535 f \n"
                : string.Create(CultureInfo.InvariantCulture, $"{to[Array.BinarySearch(from, start)]:D10} 00000 n \n"));
        }

        var trailer = Find(file, "trailer"u8, objects.Table);
        whole.Write(file, trailer, Find(file, "startxref"u8, trailer) - trailer);
        Put(whole, string.Create(CultureInfo.InvariantCulture, $"startxref\n{newTable}\n%%EOF\n"));
        return whole.ToArray();
    }

    /// <summary>Whether every compressed stream of a file ends with the checksum of what it holds.</summary>
    public static bool IsWhole(byte[] file)
    {
        var objects = new WrittenObjects(file, file.Length);
        for (var place = 0; place < objects.Count; place++)
        {
            var piece = objects[place];
            if (WrittenObjects.HasData(piece, out var from, out var length) && IsPacked(piece[..from])
                && !Deflate.IsEnded(file, objects.StartOf(place) + from, length))
                return false;
        }

        return true;
    }

    /// <summary>The name of a face that the file does not carry in itself; null where it carries all.</summary>
    public static string? FaceOutside(byte[] file)
    {
        var objects = new WrittenObjects(file, file.Length);
        for (var place = 0; place < objects.Count; place++)
        {
            var dictionary = WrittenObjects.Dictionary(objects[place]);
            if (dictionary.IndexOf("/Font"u8) < 0)
                continue;
            var piece = Encoding.Latin1.GetString(dictionary);
            var isOutside = piece.Contains("/Type/FontDescriptor", StringComparison.Ordinal)
                ? !piece.Contains("/FontFile", StringComparison.Ordinal)
                : !piece.Contains("/FontDescriptor", StringComparison.Ordinal) && SimpleFace().IsMatch(piece);
            if (isOutside)
                return NameOfFace().Match(piece) is { Success: true } name ? name.Groups[1].Value : "a face without a name";
        }

        return null;
    }

    [GeneratedRegex(@"/Type\s*/Font\b(?!Descriptor).*/Subtype\s*/(Type1|TrueType|MMType1)\b", RegexOptions.Singleline)]
    private static partial Regex SimpleFace();

    [GeneratedRegex(@"/(?:BaseFont|FontName)\s*/([^\s/<>]+)")]
    private static partial Regex NameOfFace();

    private static void Write(MemoryStream to, byte[] file, int start, ReadOnlySpan<byte> piece, string id, List<string> faces)
    {
        if (WrittenObjects.HasData(piece, out var from, out var length))
        {
            var dictionary = piece[..from];
            if (IsPacked(dictionary))
                WriteEnded(to, file, start, piece, from, length);
            else if (dictionary.IndexOf("/Type/Metadata"u8) >= 0)
                to.Write(WithOwnId(piece, id));
            else if (dictionary.IndexOf("/Filter"u8) >= 0)
                to.Write(piece);
            else
                WritePacked(to, file, start, piece, from, length);
        }
        else if (piece.IndexOf("/Type/Font"u8) >= 0)
            WriteFace(to, piece, faces);
        else
            to.Write(piece);
    }

    private static void WritePacked(MemoryStream to, byte[] file, int start, ReadOnlySpan<byte> piece, int from, int length)
    {
        // Only a part of a face tells how long it is unpacked (PDF 32000-1, table 127).
        var packed = piece[..from].IndexOf("/Length1"u8) >= 0 ? Deflate.PackFace(file, start + from, length)
            : Deflate.Pack(file, start + from, length);
        WriteLength(to, piece[..from], "/Filter/FlateDecode", packed.Length);
        to.Write(packed);
        to.Write(piece[(from + length)..]);
    }

    private static void WriteEnded(MemoryStream to, byte[] file, int start, ReadOnlySpan<byte> piece, int from, int length)
    {
        Span<byte> checksum = stackalloc byte[Deflate.ChecksumLength];
        BinaryPrimitives.WriteUInt32BigEndian(checksum, Deflate.Checksum(file, start + from, length));
        if (piece.Slice(from, length).EndsWith(checksum))
        {
            to.Write(piece);
            return;
        }

        // Of nothing the library writes the two bytes of the head alone; deflate says of nothing that its one block is the last.
        ReadOnlySpan<byte> nothing = length == 2 ? [3, 0] : [];
        WriteLength(to, piece[..from], "", length + nothing.Length + checksum.Length);
        to.Write(piece.Slice(from, length));
        to.Write(nothing);
        to.Write(checksum);
        to.Write(piece[(from + length)..]);
    }

    // A dictionary with another length, and what is said besides.
    private static void WriteLength(MemoryStream to, ReadOnlySpan<byte> dictionary, string besides, int length)
    {
        var at = WrittenObjects.Length(dictionary, out _, out var digits);
        to.Write(dictionary[..(at - "/Length ".Length)]);
        Put(to, string.Create(CultureInfo.InvariantCulture, $"{besides}/Length {length}"));
        to.Write(dictionary[(at + digits)..]);
    }

    private static bool IsPacked(ReadOnlySpan<byte> dictionary) => dictionary.IndexOf("/FlateDecode"u8) >= 0;

    private static void WriteFace(MemoryStream to, ReadOnlySpan<byte> piece, List<string> faces)
    {
        var own = piece.ToArray();
        for (var plus = TagLength + 1; plus < own.Length; plus++)
        {
            var tag = own.AsSpan(plus - TagLength, TagLength);
            if (own[plus] != '+' || own[plus - TagLength - 1] != '/' || tag.IndexOfAnyExceptInRange((byte)'A', (byte)'Z') >= 0)
                continue;
            var name = Encoding.ASCII.GetString(tag);
            if (!faces.Contains(name))
                faces.Add(name);
            tag.Fill((byte)'A');
            tag[^1] = (byte)('A' + faces.IndexOf(name));
        }

        var key = "/Descent "u8;
        var below = own.AsSpan().IndexOf(key) is >= 0 and var at && own[at + key.Length] is >= (byte)'0' and <= (byte)'9'
            ? at + key.Length : 0;
        to.Write(own, 0, below);
        if (below > 0)
            to.WriteByte((byte)'-');
        to.Write(own, below, own.Length - below);
    }

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

    private static void Put(MemoryStream to, string text)
    {
        foreach (var letter in text)
            to.WriteByte((byte)letter);
    }

    private static int Find(byte[] file, ReadOnlySpan<byte> word, int from)
    {
        var at = file.AsSpan(from).IndexOf(word);
        return at < 0 ? throw new InvalidDataException($"The file has no \"{Encoding.ASCII.GetString(word)}\".") : from + at;
    }
}
