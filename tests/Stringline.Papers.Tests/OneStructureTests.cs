using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;
using static Stringline.Papers.Tests.PaperJobs;

namespace Stringline.Papers.Tests;

/// <summary>A claim of lien on one of several structures, for the share that the file gives it (Civ. Code §§ 8446, 8448).</summary>
public sealed class OneStructureTests
{
    // Two houses; the first was finished on February 27, 2026, so that its 90 days end on May 28; the second on May 1.
    private static JobFile Two(JobFile job) => job with
    {
        Work = job.Work with
        {
            Use = WorkUse.Residential,
            ResidentialStructures = 2,
            Structures =
            [
                new ResidentialStructure { Id = "a", Text = "House at 418 Alder Court", Share = 50_000m },
                new ResidentialStructure { Id = "b", Text = "House at 420 Alder Court", Share = 34_250m },
            ],
        },
        Entries =
        [
            .. job.Entries.Where(e => e is not (Completed or Furnished)),
            new Furnished { Index = 8, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-02-20")), Amount = 50_000m,
                Structure = "a" },
            new Furnished { Index = 9, On = DayFact.On(Day("2026-02-16")), Until = DayFact.On(Day("2026-03-27")), Amount = 34_250m,
                Structure = "b" },
            new Completed { Index = 10, On = DayFact.On(Day("2026-02-27")), By = CompletionTheory.Actual, Structure = "a" },
            new Completed { Index = 11, On = DayFact.On(Day("2026-05-01")), By = CompletionTheory.Actual, Structure = "b" },
        ],
    };

    private static PaperOptions On(PaperOptions options, string structure) => options with { Structure = structure };

    [Theory]
    [InlineData("a", "$50,000.00", "House at 418 Alder Court", "$34,250.00")]
    [InlineData("b", "$34,250.00", "House at 420 Alder Court", "$50,000.00")]
    public void Section_8448_b_1_the_claim_is_on_that_structure_and_for_its_share(string structure, string share, string words,
        string other)
    {
        var made = Make("claim", Two, o => On(o, structure));
        Assert.Contains(share, made.TextOf(), StringComparison.Ordinal);
        Assert.Contains($"Structure: {words}", made.TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain(other, made.TextOf(), StringComparison.Ordinal);
        Assert.DoesNotContain("$84,250.00", made.TextOf(), StringComparison.Ordinal);
        Assert.Contains("make one for each of the others", string.Join(' ', made.SheetText().Split('\n', ' ')), StringComparison.Ordinal);
    }

    /// <summary>
    /// Civ. Code § 8448(b)(1): "completion of each unit is determined separately"; on May 29 the first is over, and the second is not.
    /// </summary>
    [Theory]
    [InlineData("2026-05-28", "a", false)]
    [InlineData("2026-06-02", "a", true)]
    [InlineData("2026-06-02", "b", false)]
    public void Section_8448_b_1_each_has_its_own_time(string asOf, string structure, bool late)
    {
        var outcome = Outcome("claim", Two(Private()), Day(asOf), On(PaperOptions.None, structure));
        Assert.Equal(late, outcome is PacketOutcome.Refused refused && refused.Refusals.Any(r => r.Id == "structure-late"));
        Assert.Equal(late, outcome is PacketOutcome.Refused);
    }

    [Fact]
    public void Section_8446_b_the_share_is_the_law_s()
    {
        JobFile Shared(JobFile job, decimal? share) => Two(job) with
        {
            Work = Two(job).Work with { Structures =
                [.. Two(job).Work.Structures.Select(s => s.Id == "b" ? s with { Share = share } : s)] },
        };
        Assert.Contains(Refusals("claim", j => Shared(j, null), o => On(o, "a")), r => r.Id == "share-missing");
        Assert.Contains(Refusals("claim", j => Shared(j, 34_250.01m), o => On(o, "a")), r => r.Id == "share-missing");
        Assert.Contains(Refusals("claim", Two, o => On(o, "c")), r =>
            r is { Id: "structure-unknown", Where: Place.OfInput { Input: PaperInput.Structure } });
        Assert.Contains(Refusals("claim", options: o => On(o, "a")), r => r.Id == "structure-unknown");
        JobFile Unnamed(JobFile job) =>
            Two(job) with { Work = Two(job).Work with { Structures = [.. Two(job).Work.Structures.Select(s => s with { Text = null })] } };
        Assert.Contains(Refusals("claim", Unnamed, o => On(o, "a")), r => r.Id == "structure-not-described");
    }
}
