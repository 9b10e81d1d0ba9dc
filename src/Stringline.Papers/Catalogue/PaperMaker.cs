using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Catalogue;

/// <summary>The one door to every paper of the catalogue. It reads no clock and touches no file.</summary>
public static class PaperMaker
{
    /// <summary>Makes a paper with the sheet that goes with it, or says why not.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="job">The facts.</param>
    /// <param name="assessment">What the law makes of them; days and amounts are taken from it.</param>
    /// <param name="options">What the paper needs to be told besides.</param>
    /// <returns>The papers, each read back and checked, or every reason why there is none.</returns>
    public static PacketOutcome Make(Paper paper, JobFile job, Assessment assessment, PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return paper.Make(new Matter(job, assessment, options));
    }

    /// <inheritdoc cref="Make(Paper, JobFile, Assessment, PaperOptions)"/>
    /// <param name="paperId">An id of <see cref="PaperCatalogue"/>.</param>
    /// <param name="job">The facts.</param>
    /// <param name="assessment">What the law makes of them.</param>
    /// <param name="options">What the paper needs to be told besides.</param>
    /// <exception cref="ArgumentException">No paper has that id.</exception>
    public static PacketOutcome Make(string paperId, JobFile job, Assessment assessment, PaperOptions options) =>
        Make(PaperCatalogue.Find(paperId) ?? throw new ArgumentException($"No paper is called '{paperId}'. There are: "
            + $"{string.Join(", ", PaperCatalogue.All.Select(p => p.Id))}.", nameof(paperId)), job, assessment, options);

    /// <summary>
    /// Gets fonts, writer and reader ready by printing and reading back one line, so that a program may do that on another core
    /// while it still reads the job file. It changes nothing in what <see cref="Make(Paper, JobFile, Assessment, PaperOptions)"/> gives.
    /// </summary>
    public static void GetReady()
    {
        var made = new LocalDate(2026, 1, 1);
        var printed = Press.Print(new PaperPlan { Title = "Ready", Foot = "Ready", Made = made,
            Blocks = [new Paragraph("Ready.", TypeStyle.Body)] });
        PaperPreflight.Check(new PaperFile("ready.pdf", "Ready", printed.Pages, printed.Bytes),
            new PaperExpectations { Pages = printed.Pages });
    }
}
