using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Papers.Catalogue;

namespace Stringline.Web.Papers;

/// <summary>A paper as a job's list of papers shows it.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Why">Why it fits now; null for one that only may be made.</param>
/// <param name="Step">The step it serves; null where it serves none that has a day.</param>
internal sealed record FittingPaper(Paper Paper, string? Why, NextStep? Step);

/// <summary>Sorts the catalogue for a job: what fits its moment, what else may be made, what is for other work.</summary>
internal sealed record PaperFit
{
    /// <summary>The papers that fit now, the most pressing first.</summary>
    public required IReadOnlyList<FittingPaper> Now { get; init; }

    /// <summary>The rest for this kind of work, in the catalogue's order.</summary>
    public required IReadOnlyList<FittingPaper> Also { get; init; }

    /// <summary>Papers for another kind of work.</summary>
    public required IReadOnlyList<FittingPaper> OtherWork { get; init; }

    /// <summary>Sorts the catalogue.</summary>
    /// <param name="job">The job.</param>
    /// <param name="asked">Id of the finding whose papers are asked for, which then come first; null for none.</param>
    public static PaperFit Of(OpenJob job, string? asked)
    {
        var occasion = new Occasion(job.Facts, job.Assessment);
        List<FittingPaper> now = [], also = [], other = [];
        foreach (var paper in PaperCatalogue.All)
        {
            if (!paper.Works.Contains(job.Facts.Work.Kind))
            {
                other.Add(new FittingPaper(paper, null, null));
                continue;
            }

            var step = paper.IsAskedForByItsStep ? job.Assessment.Next.FirstOrDefault(next => paper.Serves(next.Finding)) : null;
            var why = step is not null ? $"{step.Do}."
                : asked is not null && paper.Serves(asked) ? "It serves the finding you came from."
                : paper.WhyItFits(occasion);
            (why is null ? also : now).Add(new FittingPaper(paper, why, step));
        }

        return new PaperFit
        {
            Now =
            [
                .. now.OrderBy(fit => asked is not null && fit.Paper.Serves(asked) ? 0 : 1)
                    .ThenBy(fit => fit.Step?.ActBy ?? LocalDate.MaxIsoValue),
            ],
            Also = also,
            OtherWork = other,
        };
    }

    /// <summary>Whether some paper of the catalogue serves a finding.</summary>
    public static bool ServesAny(string finding) => PaperCatalogue.All.Any(paper => paper.Serves(finding));

    /// <summary>The one paper that does what a finding asks for on this kind of work; null where none does or there is a choice.</summary>
    public static Paper? ThatDoes(string finding, WorkKind work) =>
        PaperCatalogue.All.Where(paper => paper.Works.Contains(work) && paper.IsAskedForByItsStep && paper.Serves(finding))
        .ToList() is [var only]
            ? only
            : null;
}
