using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Writing;

namespace Stringline.Papers.Catalogue;

/// <summary>The one door to every paper of the catalogue. It reads no clock and touches no file.</summary>
public static class Scrivener
{
    /// <summary>Makes a paper with the sheet that goes with it, or says why not.</summary>
    /// <param name="paperId">An id of <see cref="PaperCatalogue"/>.</param>
    /// <param name="job">The facts.</param>
    /// <param name="assessment">What the law makes of them; days and amounts are taken from it.</param>
    /// <param name="options">What the paper needs to be told besides.</param>
    /// <returns>The papers, each read back and checked, or every reason why there is none.</returns>
    /// <exception cref="ArgumentException">No paper has that id.</exception>
    public static PacketOutcome Make(string paperId, JobFile job, Assessment assessment, PaperOptions options)
    {
        var shelved = Shelf.Papers.FirstOrDefault(p => p.Paper.Id == paperId)
            ?? throw new ArgumentException($"No paper is called '{paperId}'. There are: "
                + $"{string.Join(", ", PaperCatalogue.All.Select(p => p.Id))}.", nameof(paperId));
        return shelved.Make(new Matter(job, assessment, options));
    }
}
