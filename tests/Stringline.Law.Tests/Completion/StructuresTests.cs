using Stringline.Law.Completion;
using Stringline.Law.Counting;
using Stringline.Law.Facts;

namespace Stringline.Law.Tests.Completion;

/// <summary>Civ. Code § 8448: each of two or more residential structures is a work of its own.</summary>
public sealed class StructuresTests
{
    private static CompletionReadings Read(JobBuilder job, string asOf = "2026-09-01") => CompletionDay.Of(job.FactsOn(asOf), []);

    private static ResidentialStructure[] Named(int count) =>
        [.. Enumerable.Range(1, count).Select(i => new ResidentialStructure { Id = $"h{i}", Text = $"No. {i}" })];

    private static JobBuilder Houses(int named, params string[] into)
    {
        var job = new JobBuilder().Work(w => w with { Structures = Named(named) });
        foreach (var structure in into)
            job.Add(i => new Furnished { Index = i, On = JobBuilder.When("2026-02-02"), Until = JobBuilder.When("2026-02-02"), Amount = 10m,
                Structure = structure });
        return job;
    }

    private static JobBuilder Done(JobBuilder job, string on, string? structure) =>
        job.Add(i => new Completed { Index = i, On = JobBuilder.When(on), By = CompletionTheory.Actual, Structure = structure });

    // "Two or more" (subdivision (a)): by the number that the file tells, or by those that it names.
    [Theory]
    [InlineData(null, 0, false)]
    [InlineData(1, 0, false)]
    [InlineData(2, 0, true)]
    [InlineData(3, 0, true)]
    [InlineData(null, 1, false)]
    [InlineData(1, 1, false)]
    [InlineData(null, 2, true)]
    [InlineData(1, 2, true)]
    [InlineData(null, 3, true)]
    [Proves("Civ. Code § 8448(b)(1)")]
    public void Two_structures_are_several_and_one_is_the_work(int? told, int named, bool several)
    {
        var job = Done(Houses(named).Work(w => w with { ResidentialStructures = told }), "2026-05-04", null);
        var reading = Assert.Single(Read(job).Open);
        Assert.Equal(several ? "actual completion of one of several structures" : "actual completion", reading.Name);
        Assert.Equal(several, reading.Structure is not null);
        Assert.Equal(several, job.On("2026-09-01").Get("completion.day").Asks("(completed.structure)"));
    }

    // Three houses. The material counts for the structures into which it went; where it is not said of all of it, every completion stands.
    [Theory]
    [InlineData("", "h1 h2 h3")]
    [InlineData("h1", "h1")]
    [InlineData("h1 h2", "h1 h2")]
    [InlineData("h3 h1", "h1 h3")]
    [InlineData("h1 h2 h3", "h1 h2 h3")]
    [Proves("Civ. Code § 8448(b)(2)")]
    public void Only_the_completion_of_structures_into_which_something_went_starts_a_time(string into, string stand)
    {
        var job = Houses(3, into.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        foreach (var structure in (string[])["h1", "h2", "h3"])
            Done(job, "2026-05-04", structure);
        var read = Read(job);
        Assert.Equal(stand.Split(' '), read.Open.Select(r => r.Structure).Order());
        Assert.Equal(3 - stand.Split(' ').Length, read.RuledOut.Count(r => r.Section == "Civ. Code § 8448(b)(2)"));
        Assert.Equal(3, Read(job.Furnished("2026-02-03", 10m)).Open.Count);
    }

    // Labor ceased on Monday 2 March and was never resumed: the sixtieth day is Friday 1 May, and the work is every structure.
    [Theory]
    [InlineData("2026-04-20", "h1 2026-04-20, whole 2026-05-01")]
    [InlineData("2026-06-01", "whole 2026-05-01")]
    [Proves("Civ. Code § 8180(a)")]
    [Proves("Civ. Code § 8448(b)(1)")]
    public void A_completion_of_the_whole_is_one_of_each_structure_and_one_of_a_structure_none_of_the_others(string completed,
        string expected)
    {
        var job = Done(Houses(2).LaborCeased("2026-03-02", unfinished: true), completed, "h1");
        Assert.Equal(expected, string.Join(", ", Read(job).Open.Select(r => $"{r.Structure ?? "whole"} {LawText.IsoDay(r.On.Earliest)}")));
        // Of h2 nothing is ruled out by the completion of h1.
        var other = Done(Done(Houses(2), "2026-04-20", "h1"), "2026-05-20", "h2");
        Assert.Equal(["h1", "h2"], Read(other).Open.Select(r => r.Structure));
        // Of h1 a second one is.
        Assert.Equal(["h1"], Read(Done(Done(Houses(2), "2026-04-20", "h1"), "2026-05-20", "h1")).Open.Select(r => r.Structure));
    }
}
