using System.Text;
using CsCheck;

namespace Stringline.Testing;

/// <summary>Files made bad: good ones changed as files are damaged, and as those change them who mean harm.</summary>
public static class BadFiles
{
    private const int MostChanges = 6;
    private const int LongestRepeat = 4096;

    /// <summary>A file made from one of these.</summary>
    /// <param name="good">Good ones of one kind.</param>
    /// <param name="words">What such a file is made of, put where it does not belong.</param>
    public static Gen<byte[]> Of(IReadOnlyList<byte[]> good, IReadOnlyList<string> words)
    {
        SlowAttribute.Must(Slow.Fuzz);
        return from seed in Gen.ULong select Made(new Drawing(seed), good, words);
    }

    /// <summary>A text made from one of these.</summary>
    /// <param name="good">Good ones.</param>
    /// <param name="words">What such a text is made of.</param>
    public static Gen<string> TextOf(IReadOnlyList<string> good, IReadOnlyList<string> words) =>
        from bytes in Of([.. good.Select(Encoding.UTF8.GetBytes)], words)
        select Encoding.UTF8.GetString(bytes);

    /// <summary>
    /// Everything that ever broke the program, and is kept: <c>tests/Corpus</c>. A name that ends in <c>.b64</c> is of bytes that are no
    /// text.
    /// </summary>
    /// <param name="kind">The folder in it.</param>
    public static IEnumerable<(string Name, byte[] Content)> Kept(string kind) =>
        from path in Directory.GetFiles(Repository.Path($"tests/Corpus/{kind}")).Order(StringComparer.Ordinal)
        let name = Path.GetFileName(path)
        select name.EndsWith(".b64", StringComparison.Ordinal)
            ? (name[..^4], Convert.FromBase64String(File.ReadAllText(path)))
            : (name, File.ReadAllBytes(path));

    private static byte[] Made(Drawing draw, IReadOnlyList<byte[]> good, IReadOnlyList<string> words)
    {
        List<byte> file = [.. good[draw.From(0, good.Count - 1)]];
        for (var left = draw.From(1, MostChanges); left > 0; left--)
            Change(file, draw, good, words);
        return [.. file];
    }

    private static void Change(List<byte> file, Drawing draw, IReadOnlyList<byte[]> good, IReadOnlyList<string> words)
    {
        var at = draw.From(0, file.Count);
        var length = draw.From(0, Math.Min(file.Count - at, draw.In100(80) ? 16 : 4096));
        switch (draw.From(0, 9))
        {
            case 0 when at < file.Count:
                file[at] ^= (byte)(1 << draw.From(0, 7));
                break;
            case 1 when at < file.Count:
                file[at] = draw.Of<byte>(0x00, 0x0A, 0x20, 0x22, 0x2C, 0x3C, 0x5C, 0x7D, 0x7F, 0x80, 0xC3, 0xFE, 0xFF);
                break;
            case 2:
                file.RemoveRange(at, length);
                break;
            case 3:
                file.RemoveRange(at, draw.In100(10) ? file.Count - at : 0);
                break;
            case 4:
                file.InsertRange(at, file.GetRange(at, length));
                break;
            case 5:
                file.InsertRange(at, Enumerable.Repeat(file.GetRange(at, Math.Min(length, 8)), draw.From(1, LongestRepeat / 8))
                    .SelectMany(one => one));
                break;
            case 6:
                var other = good[draw.From(0, good.Count - 1)];
                file.RemoveRange(at, file.Count - at);
                file.AddRange(other[draw.From(0, other.Length)..]);
                break;
            case 7:
                for (var i = at; i < at + length; i++)
                    file[i] = (byte)draw.From(0, 255);
                break;
            default:
                file.RemoveRange(at, draw.In100(50) ? length : 0);
                file.InsertRange(at, Encoding.UTF8.GetBytes(words[draw.From(0, words.Count - 1)]));
                break;
        }
    }
}
