namespace Stringline.Store;

/// <summary>Recognises the kind of a file by how it begins and ends.</summary>
public static class ProofKinds
{
    // PDF (ISO 32000-1, 7.5.2 and 7.5.5): "%PDF-", at the close "%%EOF", after which some writers leave a line end or padding.
    // JPEG (ITU T.81, B.1.1.3): start of image FFD8, then a marker; end of image FFD9. PNG (ISO/IEC 15948, 5.2 and 11.2.5): signature,
    // then the chunk IHDR; at the close the chunk IEND.
    private const int PdfTail = 1024;

    private static ReadOnlySpan<byte> PngHead => [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52];

    private static ReadOnlySpan<byte> PngEnd => [0, 0, 0, 0, 0x49, 0x45, 0x4E, 0x44, 0xAE, 0x42, 0x60, 0x82];

    /// <summary>The kind; null where the file is none of them, or broken off.</summary>
    public static ProofKind? Recognise(ReadOnlySpan<byte> content)
    {
        if (content.StartsWith("%PDF-"u8))
            return content[Math.Max(0, content.Length - PdfTail)..].IndexOf("%%EOF"u8) >= 0 ? ProofKind.Pdf : null;
        if (content is [0xFF, 0xD8, 0xFF, ..])
            return content.TrimEnd((byte)0) is [.., 0xFF, 0xD9] ? ProofKind.Jpeg : null;
        if (content.StartsWith(PngHead))
            return content.EndsWith(PngEnd) ? ProofKind.Png : null;
        return null;
    }

    /// <summary>The word for a kind, in the store and as the ending of a file's name.</summary>
    public static string Word(this ProofKind kind) => kind switch
    {
        ProofKind.Pdf => "pdf",
        ProofKind.Jpeg => "jpeg",
        ProofKind.Png => "png",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of proof."),
    };

    internal static string Describe(ReadOnlySpan<byte> content) => content switch
    {
        [] => "an empty file",
        _ when content.StartsWith("%PDF-"u8) => "a PDF whose end is missing",
        [0xFF, 0xD8, 0xFF, ..] => "a JPEG whose end is missing",
        _ when content.StartsWith(PngHead[..8]) => "a PNG that is broken off",
        _ => "a file of another kind (it begins with the bytes " + Convert.ToHexString(content[..Math.Min(8, content.Length)]) + ")",
    };
}
