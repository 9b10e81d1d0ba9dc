using PdfSharp.Pdf;
using PdfSharp.Pdf.IO;

namespace Stringline.Papers;

/// <summary>All papers of a packet in one PDF, to be printed at once: pages and fonts as they are, in the order of the files.</summary>
public static class PrintPacket
{
    /// <summary>Joins the papers.</summary>
    /// <param name="files">At least one paper.</param>
    /// <returns>The PDF.</returns>
    /// <exception cref="ArgumentException">There is no paper.</exception>
    public static byte[] Join(IReadOnlyList<PaperFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (files.Count == 0)
            throw new ArgumentException("A packet has at least one paper.", nameof(files));
        using var packet = new PdfDocument();
        packet.Info.Title = files[0].Title;
        packet.Info.Creator = "Stringline";
        foreach (var file in files)
        {
            using var stream = new MemoryStream(file.Bytes.ToArray());
            using var paper = PdfReader.Open(stream, PdfDocumentOpenMode.Import);
            foreach (var page in paper.Pages)
                packet.AddPage(page);
        }

        using var bytes = new MemoryStream();
        packet.Save(bytes);
        return bytes.ToArray();
    }
}
