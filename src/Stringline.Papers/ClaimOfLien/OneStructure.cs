using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// A claim on one of several structures: each is a work of improvement of its own, with its own completion (Civ. Code § 8448(b)(1)). What
/// is due for it is the share that the file gives it, where the law finds that the shares come to the demand (Civ. Code § 8446(b)).
/// </summary>
/// <param name="Facts">What the claim says.</param>
/// <param name="Refusals">The reasons against it.</param>
internal sealed record OneStructure(PrintedFacts Facts, IReadOnlyList<Refusal> Refusals)
{
    private static readonly Place Where = Place.Of(PaperInput.Structure);
    private const string LastDay = "claim-of-lien.last-day";

    /// <summary>The claim on one structure.</summary>
    public static OneStructure Of(JobFile job, Assessment assessment, PrintedFacts whole, string id)
    {
        List<Refusal> refusals = [];
        if (job.Work.Structures.FirstOrDefault(s => s.Id == id) is not { } structure || job.Work.Structures.Count < 2)
        {
            var ids = string.Join(", ", job.Work.Structures.Select(s => s.Id));
            refusals.Add(new Refusal("structure-unknown", Where, $"'{id}' is none of several structures of the job file.",
                Sentence.Of(job.Work.Structures.Count < 2
                    ? "Leave it out: the file names no several structures." : $"Name one of them: {ids}."),
                "Civ. Code § 8448"));
            return new OneStructure(whole, refusals);
        }

        if (Clean(structure.Text) is null)
        {
            refusals.Add(new Refusal("structure-not-described", new Place.OfHead("work.structures"), $"The structure has no description.",
                $"Say which it is, such as its street number: the claim describes the site so that it can be identified.",
                "Civ. Code § 8416(a)(5)"));
        }

        if (!whole.IsDesignated)
        {
            refusals.Add(new Refusal("share-missing", new Place.OfHead("work.structures"),
                $"The file does not divide the demand among the structures.",
                $"Give each structure the amount that is due for it, so that together they come to the demand; a lump sum is divided by "
                    + $"the "
                + $"work in each.",
                "Civ. Code § 8446(b)"));
        }

        if (Recorded(assessment, structure) is { Standing: Standing.Lost } over)
        {
            refusals.Add(new Refusal("structure-late", new Place.OfFinding(over.Id),
                Sentence.Join(" ", over.Why.Where(w => w.Applied).Select(w => w.Sentence)),
                $"The time of this structure is over; make a claim on one whose time runs.", "Civ. Code §§ 8412, 8414, 8448(b)(1)"));
        }

        return new OneStructure(
            whole with { Demand = whole.IsDesignated ? structure.Share ?? 0m : 0m, Works = [],
                OnStructure = $"Structure: {OneLine(Clean(structure.Text) ?? id)}" },
            refusals);
    }

    // Were it recorded on the day of asking, and no other claim beside it.
    private static Finding? Recorded(Assessment assessment, ResidentialStructure structure) => assessment.Supposing(job => job with
    {
        Entries =
        [
            .. job.Entries.Where(e => e is not ClaimRecorded),
            new ClaimRecorded { Index = job.Entries.Count, On = DayFact.On(assessment.AsOf), Amount = structure.Share,
                Structure = structure.Id },
        ],
    }).Find(LastDay);
}
