using System.Text;
using Stringline.Answers;

namespace Stringline.FuzzInput;

/// <summary>Papers that prove an entry: PDF, and pictures.</summary>
internal static class UploadTargets
{
    private static readonly string[] Names = ["scan.pdf", "../../x.jpg", "C:\\x.png", "x"];

    /// <summary>The targets.</summary>
    public static IReadOnlyList<Target> All { get; } =
    [
        new("pdf", Pdfs, () => ["%PDF-1.7\n", "%%EOF\n", "startxref\n", "trailer", "endobj", "stream\n", "endstream", "/Encrypt"], Answer),
        new("picture", Pictures, () => ["PNG\r\n\u001A\n", "IHDR", "IDAT", "IEND", "JFIF\0", "Exif\0\0", "GIF89a"], Answer),
    ];

    private static void Answer(byte[] bytes) => UploadAnswer.Of(Names[bytes.Length % Names.Length], bytes);

    private static IEnumerable<byte[]> Pdfs()
    {
        yield return Encoding.Latin1.GetBytes("%PDF-1.7\n1 0 obj << /Type /Catalog >> endobj\ntrailer << /Root 1 0 R >>\n%%EOF\n");
    }

    private static IEnumerable<byte[]> Pictures() =>
    [
        [0xFF, 0xD8, 0xFF, 0xE0, 0, 16, .. "JFIF\0\u0001\u0001"u8, 0, 0, 1, 0, 1, 0, 0, 0xFF, 0xDA, 0, 8, 1, 2, 3, 0xFF, 0xD9],
        [
            0x89, .. "PNG\r\n\u001A\n"u8, 0, 0, 0, 13, .. "IHDR"u8, 0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0, 1, 2, 3, 4, 0, 0, 0, 0,
            .. "IEND"u8, 0xAE, 0x42, 0x60, 0x82,
        ],
    ];
}
