using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Stringline.Papers.Layout;

/// <summary>
/// The drawer of type: hands the embedded faces to the PDF library. A face's bytes are read when it is first used.
/// Nothing is ever taken from the system's fonts, so a paper looks the same on every machine.
/// </summary>
internal sealed class Fonts : IFontResolver
{
    private static readonly Lock Opening = new();
    private static readonly ConcurrentDictionary<Face, byte[]> Bytes = new();
    private static readonly ConcurrentDictionary<Face, FontCoverage> Coverage = new();
    private static bool open;

    private Fonts()
    {
    }

    /// <summary>Makes the faces known to the PDF library; does nothing after the first time.</summary>
    /// <exception cref="InvalidOperationException">Another font resolver stands in the process already.</exception>
    public static void Open()
    {
        lock (Opening)
        {
            if (open)
                return;
            if (GlobalFontSettings.FontResolver is not null)
            {
                throw new InvalidOperationException("Another font resolver is set in this process; the papers would be printed in the "
                    + "wrong type.");
            }

            GlobalFontSettings.FontResolver = new Fonts();
            open = true;
        }
    }

    /// <summary>The face at a size, embedded with the whole of Unicode in one subset.</summary>
    public static XFont Font(TypeStyle style) =>
        new(style.Face.ToString(), style.Points, XFontStyleEx.Regular, XPdfFontOptions.UnicodeDefault);

    /// <summary>The characters of the text for which the face has no letter, each once.</summary>
    public static IReadOnlyList<string> Missing(Face face, string text)
    {
        var coverage = Coverage.GetOrAdd(face, f => FontCoverage.Read(FaceBytes(f)));
        return [.. text.EnumerateRunes()
            .Where(r => r.Value is not ('\n' or '\r' or '\t') && !coverage.Has(r.Value))
            .Select(r => r.ToString())
            .Distinct()];
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => Enum.TryParse<Face>(faceName, out var face) ? FaceBytes(face) : null;

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        Enum.TryParse<Face>(familyName, out _) ? new FontResolverInfo(familyName) : null;

    private static byte[] FaceBytes(Face face) => Bytes.GetOrAdd(face, f => Resources.Bytes($"fonts/{f}.ttf"));
}
