using System.Text;
using CsCheck;
using Stringline.Answers;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Papers made bad, the same ones in each run: each is refused in words, or taken as what its first and last bytes say, and kept
/// byte for byte.</summary>
[Slow(Slow.Fuzz)]
public sealed class BadUploadTests(ITestOutputHelper output)
{
    private static readonly byte[][] Good =
    [
        Encoding.Latin1.GetBytes("%PDF-1.7\n1 0 obj << /Type /Catalog >> endobj\ntrailer << /Root 1 0 R >>\n%%EOF\n"),
        [0xFF, 0xD8, 0xFF, 0xE0, 0, 16, .. "JFIF\0\u0001\u0001"u8, 0, 0, 1, 0, 1, 0, 0, 0xFF, 0xDA, 0, 8, 1, 2, 3, 0xFF, 0xD9],
        [
            0x89, .. "PNG\r\n\u001A\n"u8, 0, 0, 0, 13, .. "IHDR"u8, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 1, 2, 3, 4, 0, 0, 0, 0,
            .. "IEND"u8, 0xAE, 0x42, 0x60, 0x82,
        ],
    ];

    private static readonly string[] Words =
        ["%PDF-", "%%EOF", "PK\u0003\u0004", "MZ", "<script>alert(1)</script>", "<!doctype html>", "<svg/>", "GIF89a", "\0", "IEND"];

    private static readonly string[] Names =
    [
        "scan.pdf", "../../etc/passwd", "C:\\x\\y.png", "a\0b.pdf", "con", "\u202Efdp.exe", "", "...", new string('x', 5_000), "a\nb.jpg",
        "\uD800.pdf", "a/", "\u001b[2J.png",
    ];

    // They are small and quickly told, so all of them are tried in each run.
    [Fact]
    [Attack("uploads made bad: PDF, JPEG, PNG, names that lead elsewhere")]
    public void Of_300_bad_uploads_each_is_refused_in_words_or_taken_as_it_is()
    {
        var (refused, taken) = (0, 0);
        Gen.Select(BadFiles.Of(Good, Words), Gen.Int[0, Names.Length * 3]).Sample(
            (bytes, name) => _ = Hang.Never(() => UploadAnswer.Of(name < Names.Length ? Names[name] : "scan.pdf", bytes))
                ? Interlocked.Increment(ref taken) : Interlocked.Increment(ref refused),
            print: drawn => $"{drawn.Item2}: {Convert.ToHexString(drawn.Item1)}",
            iter: 300);
        output.WriteLine(LongRun.Told("uploads", refused, taken));
        AttackAttribute.Tried(refused + taken);
        Assert.True(refused > 50, $"{refused} refused");
        Assert.True(taken > 20, $"{taken} taken");
    }
}
