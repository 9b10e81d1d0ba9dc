using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>What else must be known of a claim before it is recorded, though nothing of it stands in the way.</summary>
internal static class ClaimWarnings
{
    /// <summary>The warnings, in sentences.</summary>
    public static IReadOnlyList<string> Of(JobFile job, Assessment assessment, PrintedFacts facts, Service service,
        EarlierClaim? earlier) =>
    [
        .. earlier is not null ? [earlier.Warning] : new FactsAsOf(job, assessment.AsOf).All<ClaimRecorded>()
            .Select(c => $"The file shows a claim recorded{(c.On.Earliest is { } day ? " on " + Day(day) : "")}. Be sure that a second "
                + "is meant."),
        .. earlier is Conversion || facts.OnStructure is not null ? [] : AmountInDoubt.Of(assessment.Amount, facts.Demand, "claim"),
        .. service.Notes,
        .. OnStructures(facts),
        .. earlier is Conversion ? [] : RightInDoubt(assessment),
    ];

    private static IEnumerable<string> OnStructures(PrintedFacts facts)
    {
        if (facts.OnStructure is not null)
        {
            yield return "This claim is on one structure and for its share alone: make one for each of the others. Enter it with its "
                + "structure, and release it by itself.";
        }

        if (facts.Works.Count > 1 && !facts.IsDesignated)
        {
            yield return $"The work is on {facts.Works.Count} structures, each a work of its own: its time runs from its own completion "
                + "(§ 8448). This claim does not say what is due for each, so it ranks behind other liens (§ 8446(b)). Put down the amount "
                + "of each, an equitable split where the price is a lump sum, or make one claim for each structure.";
        }
    }

    private static IEnumerable<string> RightInDoubt(Assessment assessment)
    {
        if (assessment.Find("lien-right") is { Standing: Standing.InDoubt or Standing.Narrowed } right)
        {
            yield return $"The right to a lien is {right.Standing.Word()}. "
                + RefusalInWords.Said(Sentence.Join(" ", right.Why.Where(w => w.Applied).Select(w => Because(assessment, w))));
        }
    }

    // Of another finding the right only says how it stands; why, and what would settle it, that finding says.
    private static Sentence Because(Assessment assessment, Reason why) =>
        assessment.Findings.FirstOrDefault(f => f.Id != "lien-right" && why.Text == $"{f.Title}: {f.Standing.Word()}.") is not { } leg
        ? why.Sentence
            : Sentence.Join(" ", [why.Sentence, .. NoneGivenOnce(assessment, [.. leg.Why.Where(w => w.Applied).Select(w => w.Sentence),
                .. leg.Questions.Select(q => q.Sentence)])]);

    // Several who had no notice are a list: one sentence and one question about each would say every name twice.
    private static IEnumerable<Sentence> NoneGivenOnce(Assessment assessment, IReadOnlyList<Sentence> told)
    {
        var missing = assessment.NoticeDueTo.Where(r => told.Any(t => t.ToString() == r.NoneGiven)).ToList();
        if (missing.Count < 2)
            return told;
        Sentence once = $"Due, and by the file given to none of these: the {string.Join("; the ", missing.Select(r => r.Words))}. "
            + $"Enter what was given.";
        return told.Where(t => !missing.Exists(r => t.ToString() == r.WasGiven.Text || (t.ToString() == r.NoneGiven && r != missing[0])))
            .Select(t => t.ToString() == missing[0].NoneGiven ? once : t);
    }
}
