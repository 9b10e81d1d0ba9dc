using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Preflight;

namespace Stringline.Papers.Tests;

/// <summary>Makes packets, and leaves the papers for the eye in the folder that STRINGLINE_PAPERS_OUT names, if it is set.</summary>
internal static class Kept
{
    private static readonly string? Folder = Environment.GetEnvironmentVariable("STRINGLINE_PAPERS_OUT");

    public static PacketOutcome.Made Packet(string name, JobFile job, Assessment? assessment = null, bool draft = false)
    {
        var outcome = Claim(job, assessment ?? job.Assessed(), draft);
        if (outcome is PacketOutcome.Refused refused)
            Assert.Fail(string.Join("\n", refused.Refusals));
        var made = Assert.IsType<PacketOutcome.Made>(outcome);
        foreach (var file in made.Files)
            Keep($"{name}-{file.Name}", file);
        return made;
    }

    public static IReadOnlyList<Refusal> Refusals(JobFile job, Assessment? assessment = null) =>
        Assert.IsType<PacketOutcome.Refused>(Claim(job, assessment ?? job.Assessed(), draft: false)).Refusals;

    /// <summary>The claim of lien, or why not.</summary>
    public static PacketOutcome Claim(JobFile job, Assessment assessment, bool draft, Stringline.Law.Recording.RecorderOffice? office =
        null) =>
        PaperMaker.Make(PaperCatalogue.ClaimOfLien, job, assessment, new PaperOptions { Draft = draft, Office = office });

    public static ReadBack Claim(this PacketOutcome.Made made) => ReadBack.Of(made.Files[0].Bytes);

    public static ReadBack Sheet(this PacketOutcome.Made made) => ReadBack.Of(made.Files[1].Bytes);

    public static void Keep(string name, PaperFile file)
    {
        if (Folder is null)
            return;
        Directory.CreateDirectory(Folder);
        File.WriteAllBytes(Path.Combine(Folder, name), file.Bytes.ToArray());
    }
}
