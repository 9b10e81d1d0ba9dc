using System.Text;
using CsCheck;
using Stringline.Testing;

namespace Stringline.Store.Tests;

/// <summary>Papers made bad, the same ones in each run: each is refused in words, or taken as what its first and last bytes say (ISO 32000-1,
/// 7.5.2 and 7.5.5; ITU T.81, B.1.1.3; ISO/IEC 15948, 5.2), and is kept byte for byte.</summary>
public sealed class BadUploadTests
{
    private static readonly byte[][] Good =
    [
        Encoding.Latin1.GetBytes("%PDF-1.7\n1 0 obj << /Type /Catalog >> endobj\ntrailer << /Root 1 0 R >>\n%%EOF\n"),
        [0xFF, 0xD8, 0xFF, 0xE0, 0, 16, .. "JFIF\0\u0001\u0001"u8, 0, 0, 1, 0, 1, 0, 0, 0xFF, 0xDA, 0, 8, 1, 2, 3, 0xFF, 0xD9],
        [0x89, .. "PNG\r\n\u001A\n"u8, 0, 0, 0, 13, .. "IHDR"u8, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 1, 2, 3, 4, 0, 0, 0, 0, .. "IEND"u8, 0xAE, 0x42, 0x60, 0x82],
    ];

    private static readonly string[] Words = ["%PDF-", "%%EOF", "PK\u0003\u0004", "MZ", "<script>alert(1)</script>", "<!doctype html>", "<svg/>", "GIF89a", "\0", "IEND"];
    private static readonly string[] Names = ["scan.pdf", "../../etc/passwd", "C:\\x\\y.png", "a\0b.pdf", "con", "\u202Efdp.exe", "", "...", new string('x', 5_000), "a\nb.jpg"];

    [Fact]
    public void Of_300_bad_uploads_each_is_refused_in_words_or_taken_as_it_is()
    {
        var (refused, taken) = (0, 0);
        Gen.Select(BadFiles.Of(Good, Words), Gen.Int[0, Names.Length * 3]).Sample(
            (bytes, name) =>
            {
                if (Answer(bytes, name < Names.Length ? Names[name] : "scan.pdf"))
                    Interlocked.Increment(ref taken);
                else
                    Interlocked.Increment(ref refused);
            },
            print: drawn => $"{drawn.Item2}: {Convert.ToHexString(drawn.Item1)}",
            iter: 300);
        Assert.True(refused > 50, $"{refused} refused");
        Assert.True(taken > 20, $"{taken} taken");
    }

    private static bool Answer(byte[] bytes, string name)
    {
        var taken = false;
        Hang.Never(() =>
        {
            switch (Proof.Of(name, bytes))
            {
                case ProofResult.Taken { Proof: var proof }:
                    Assert.True(bytes.AsSpan().SequenceEqual(proof.Content.Span));
                    Assert.DoesNotContain(proof.Name, c => char.IsControl(c) || c is '/' or '\\');
                    Assert.True(bytes.AsSpan().StartsWith(proof.Kind switch
                    {
                        ProofKind.Pdf => "%PDF-"u8,
                        ProofKind.Jpeg => [0xFF, 0xD8, 0xFF],
                        _ => [0x89, (byte)'P', (byte)'N', (byte)'G'],
                    }));
                    taken = true;
                    break;
                case ProofResult.Refused refused:
                    Assert.DoesNotContain("   at ", refused.Why.ToString(), StringComparison.Ordinal);
                    break;
            }
        });
        return taken;
    }
}
