using System.IO.Compression;
using System.Text;
using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>The addresses of made papers: each file, all of them in one PDF to print, and all of them as a zip.</summary>
internal static class PaperFiles
{
    /// <summary>The name of the one PDF that holds every paper.</summary>
    public const string Packet = "packet.pdf";

    /// <summary>The name of the zip.</summary>
    public const string Zip = "papers.zip";

    /// <summary>
    /// Serves them. The address carries the change of the job it was made from; when another was written since, the answer is 409.
    /// </summary>
    public static void MapPapers(this WebApplication desk) =>
        desk.MapGet("/job/{id:long}/papers/{paper}/{name}",
            (long id, string paper, string name, long at, bool? save, HttpContext context, Desk office, PaperWorkbench bench) =>
        {
            if (office.Open(id) is not { } job || PaperCatalogue.Find(paper) is not { } found)
                return Results.NotFound();
            if (job.Stored.Tip.Sequence != at)
                return Results.StatusCode(StatusCodes.Status409Conflict);
            var request = PaperRequest.Read(found, context.Request.Query);
            if (!request.MayBeMade || bench.Make(job, request) is not PacketOutcome.Made made)
                return Results.NotFound();
            string SavedAs(PaperFile paperFile) =>
                PaperFileName.Of(job.Facts.Name, found.Id, paperFile, made.InTheWay.Count > 0, job.AsOf, request.Options);
            if (name == Zip)
                return Results.Bytes(Zipped(made.Files, SavedAs, job.AsOf), "application/zip", $"{found.Id}.zip");
            var file = name == Packet ? null : made.Files.FirstOrDefault(one => one.Name == name);
            if (file is null && name != Packet)
                return Results.NotFound();
            SecurityHeaders.Framing(context, Frames.MayBeFramed);
            var bytes = file?.Bytes.ToArray() ?? PrintPacket.Join(made.Files);
            return save == true
                ? Results.Bytes(bytes, "application/pdf", file is null ? found.Id + "-" + Packet : SavedAs(file))
                : Results.Bytes(bytes, "application/pdf");
        });

    private static byte[] Zipped(IReadOnlyList<PaperFile> files, Func<PaperFile, string> name, LocalDate day)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8))
        {
            foreach (var file in files)
            {
                var entry = zip.CreateEntry(name(file));
                entry.LastWriteTime = new DateTimeOffset(day.Year, day.Month, day.Day, 0, 0, 0, TimeSpan.Zero);
                using var content = entry.Open();
                content.Write(file.Bytes.Span);
            }
        }

        return bytes.ToArray();
    }
}
