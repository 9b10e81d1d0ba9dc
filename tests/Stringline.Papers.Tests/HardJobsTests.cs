using Stringline.Papers.Catalogue;
using Stringline.Testing;

namespace Stringline.Papers.Tests;

/// <summary>Good papers of hard jobs pass their preflight: nothing is lost, cut, drawn over or refused without need.</summary>
[Slow(Slow.Lasting)]
public sealed class HardJobsTests
{
    public static TheoryData<string> Ids => [.. PaperCatalogue.All.Select(p => p.Id)];

    /// <summary>Every paper on every hard job: some four hundred of them, with their sheets.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void A_good_paper_of_a_hard_job_is_made(string id)
    {
        foreach (var (name, hard) in HardJobs.All)
        {
            var made = PaperJobs.Make(id, hard, o => id == "notice-of-pendency" ? o with { Draft = true } : o);
            Assert.All(made.Preflight, r => Assert.True(r.Passed, $"{name}: {r}"));
            foreach (var file in made.Files)
                Kept.Keep($"hard--{name.Replace(' ', '_')}--{id}--{file.Name}", file);
        }
    }
}
