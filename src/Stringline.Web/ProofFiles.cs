using Microsoft.Net.Http.Headers;
using Stringline.Office.Entering;
using Stringline.Store;

namespace Stringline.Web;

/// <summary>Papers that prove entries: taken from a form, and handed out as downloads.</summary>
internal static class ProofFiles
{
    /// <summary>The field of the form that takes files.</summary>
    public const string Field = "proof";

    /// <summary>The largest form, in bytes: three of the largest files and what is typed beside them.</summary>
    public const long LargestForm = (3L * Proof.LargestFile) + (1024 * 1024);

    /// <summary>
    /// Takes the files of a form as proofs: by their content, never by their name. What is wrong is noted beside the field.
    /// </summary>
    public static async Task<IReadOnlyList<Proof>> TakeAsync(IFormFileCollection files, Faults faults)
    {
        var taken = new List<Proof>();
        foreach (var file in files.GetFiles(Field))
        {
            if (file.Length > Proof.LargestFile)
            {
                faults.Add(Field, $"\"{file.FileName}\" is too large: at most {Proof.LargestFile / (1024 * 1024)} MiB.");
                continue;
            }

            var content = new byte[file.Length];
            await using (var stream = file.OpenReadStream())
                await stream.ReadExactlyAsync(content).ConfigureAwait(false);
            switch (Proof.Of(file.FileName, content))
            {
                case ProofResult.Taken proof:
                    taken.Add(proof.Proof);
                    break;
                case ProofResult.Refused refused:
                    faults.Add(Field, $"\"{file.FileName}\" was not taken. It is {refused.Why.Found}; it should "
                        + $"be {refused.Why.Expected}.");
                    break;
            }
        }

        return taken;
    }

    /// <summary>Serves attached papers, always as a download under a name that ends as its content is.</summary>
    public static void MapProofs(this WebApplication desk) =>
        desk.MapGet("/job/{id:long}/proof/{sequence:long}/{number:int}",
            (HttpContext context, IJournal journal, long id, long sequence, int number) =>
        {
            var row = journal.Read(id)?.Rows.FirstOrDefault(row => row.Sequence == sequence);
            if (number < 0 || row?.Proofs.ElementAtOrDefault(number) is not { } link || journal.ReadProof(link) is not { } proof)
                return Results.NotFound();
            var type = proof.Kind switch
            {
                ProofKind.Pdf => "application/pdf",
                ProofKind.Jpeg => "image/jpeg",
                ProofKind.Png => "image/png",
                _ => throw new InvalidOperationException($"No such kind of proof: {proof.Kind}."),
            };
            var disposition = new ContentDispositionHeaderValue("attachment");
            disposition.SetHttpFileName(NameOf(proof));
            context.Response.Headers.ContentDisposition = disposition.ToString();
            return Results.Bytes(proof.Content, type);
        });

    // A paper kept as evil.html is still a PDF to us: on the disk of the reader it must not become a page.
    private static string NameOf(Proof proof)
    {
        var ending = "." + proof.Kind.Word();
        var fits = proof.Name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)
            || (proof.Kind == ProofKind.Jpeg && proof.Name.EndsWith(".jpg", StringComparison.OrdinalIgnoreCase));
        return fits ? proof.Name : proof.Name + ending;
    }
}
