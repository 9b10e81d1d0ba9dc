using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>
/// Civ. Code § 8448: each of several residential structures is a work of its own. Three houses, completed Tuesday 8 July, Wednesday 10
/// September and Wednesday 22 October 2025: 90 days end on Monday 6 October, Tuesday 9 December and Tuesday 20 January 2026.
/// </summary>
public sealed class SeveralStructuresTests
{
    private static JobBuilder Houses(bool named = false, string? into = null, bool several = true) => new JobBuilder()
        .Work(w => w with
        {
            Use = WorkUse.Residential,
            ResidentialStructures = several ? 3 : null,
            Structures = named ? [new() { Id = "h1", Text = "No. 1" }, new() { Id = "h2", Text = "No. 2" }, new() { Id = "h3" }] : [],
        })
        .Add(i => new Furnished { Index = i, On = JobBuilder.When("2025-06-05"), Until = JobBuilder.When("2025-06-05"), Amount = 6430m,
            Structure = into })
        .Notice("2025-06-14").Ended("2025-07-05")
        .Done("2025-07-08", named ? "h1" : null).Done("2025-09-10", named ? "h2" : null).Done("2025-10-22", named ? "h3" : null);

    private static Finding Last(JobBuilder job, string asOf = "2025-12-01") => job.On(asOf).Get("claim-of-lien.last-day");

    [Theory]
    [InlineData("2025-10-06", Standing.Open, "2025-10-06", "2025-10-06 2025-12-09")] // the third is not completed yet
    [InlineData("2025-10-07", Standing.InDoubt, "2025-12-09", "2025-12-09")]
    [InlineData("2025-12-01", Standing.InDoubt, "2025-12-09", "2025-12-09 2026-01-20")]
    [InlineData("2026-01-20", Standing.InDoubt, "2026-01-20", "2026-01-20")]
    [InlineData("2026-01-21", Standing.Lost, "2025-10-06", "2025-10-06 2025-12-09 2026-01-20")]
    [Proves("Civ. Code § 8448(b)(1)")]
    public void The_first_completion_ends_the_time_for_its_own_structure_only(string asOf, Standing expected, string plan, string days)
    {
        var last = Last(Houses(), asOf);
        Assert.Equal(expected, last.Standing);
        Assert.Equal(plan, last.Plan());
        Assert.Equal(days.Split(' '), last.DaysOf());
        Assert.Equal(last.Readings[^1], last.Band!.Latest);
    }

    [Fact]
    [Proves("Civ. Code § 8448(b)(1)")]
    public void Which_structure_was_completed_is_asked_and_on_one_work_the_first_completion_counts()
    {
        var day = Houses().On("2025-12-01").Get("completion.day");
        Assert.Equal(3, day.Questions.Count(q => q.Text.Contains("(completed.structure)", StringComparison.Ordinal)
            && q.Corrects is Completed));
        Assert.False(Houses(named: true).On("2025-12-01").Get("completion.day").Asks("(completed.structure)"));
        Assert.Equal(["2025-10-06"], Last(Houses(several: false)).DaysOf());
        Assert.Equal(Standing.Lost, Last(Houses(several: false)).Standing);
        Assert.True(Last(Houses()).RuledOut("Civ. Code § 8448(b)(1)"));
    }

    // What went into one house counts for that house.
    [Theory]
    [InlineData("h1", Standing.Lost, "2025-10-06")]
    [InlineData("h2", Standing.Open, "2025-12-09")]
    [InlineData("h3", Standing.Open, "2026-01-20")]
    [Proves("Civ. Code § 8448(b)(2)")]
    public void The_structure_into_which_it_went_decides(string into, Standing expected, string day)
    {
        var last = Last(Houses(named: true, into));
        Assert.Equal(expected, last.Standing);
        Assert.Equal([day], last.DaysOf());
        Assert.True(last.RuledOut("Civ. Code § 8448(b)(2)"));
    }

    [Theory]
    [InlineData("h1", Standing.Lost)]
    [InlineData("h2", Standing.Kept)]
    [InlineData("h3", Standing.Kept)]
    [InlineData(null, Standing.InDoubt)]
    [InlineData("h9", Standing.InDoubt)] // the file knows nothing of such a one
    [Proves("Civ. Code § 8448(b)(1)")]
    public void A_claim_is_measured_by_the_structure_it_is_on(string? on, Standing expected) =>
        Assert.Equal(expected,
            Last(Houses(named: true)
                .Add(i => new ClaimRecorded { Index = i, On = JobBuilder.When("2025-11-20"), Amount = 6430m, Structure = on })).Standing);

    // A second contention for one house rules itself out after the first, and says nothing of the others.
    [Fact]
    [Proves("Civ. Code § 8448(b)(1)")]
    public void The_first_completion_of_one_structure_counts_for_that_one() =>
        Assert.Equal(["2025-12-09 actual completion of No. 2", "2026-01-20 actual completion of h3"],
            Last(Houses(named: true).Done("2025-10-27", "h2")).Lines());

    [Theory]
    [InlineData(null, null, Standing.InDoubt, true)]
    [InlineData(4000.00, 2430.00, Standing.Kept, false)]
    [InlineData(4000.00, 2430.01, Standing.InDoubt, true)]
    [InlineData(6430.00, null, Standing.InDoubt, true)]
    [Proves("Civ. Code § 8446(b)")]
    public void The_amount_due_for_each_structure_is_designated_or_asked_for(double? first, double? second, Standing expected, bool asks)
    {
        var job = Houses().Work(w =>
            w with { Structures = [new() { Id = "h1", Share = (decimal?)first }, new() { Id = "h2", Share = (decimal?)second }] });
        if (second is 2430.01)
            Assert.True(job.On("2025-12-01").Get("claim-of-lien.by-structure").Says("$6,430.01"));
        var divided = job.On("2025-12-01").Get("claim-of-lien.by-structure");
        Assert.Equal(expected, divided.Standing);
        Assert.Equal(6430m, divided.Amount);
        Assert.Equal(asks, divided.Asks("(work.structures)"));
        Assert.All(divided.Questions, q => Assert.Equal(6430m, q.Dollars));
    }

    // One share is no division of a lump sum, whatever it comes to; of two recorded claims each must be on a structure.
    [Theory]
    [InlineData(new[] { 6430.00 }, new string?[0], Standing.InDoubt, "")]
    [InlineData(new[] { 4000.00, 2430.00 }, new string?[0], Standing.Kept, "add up to the demand, $6,430.00")]
    [InlineData(new[] { 4000.00, 2000.00 }, new string?[0], Standing.InDoubt, "add up to $6,000.00, and the demand is $6,430.00")]
    [InlineData(new[] { 4000.00, 2000.00 }, new[] { "h1" }, Standing.InDoubt, "add up to $6,000.00")]
    [InlineData(new double[0], new[] { "h1", "h2" }, Standing.Kept, "")]
    [InlineData(new double[0], new[] { "h1", null }, Standing.InDoubt, "")]
    [InlineData(new double[0], new string?[] { null }, Standing.InDoubt, "")]
    [Proves("Civ. Code § 8446(b)")]
    public void A_claim_designates_the_amount_for_each_structure(double[] shares, string?[] claimedOn, Standing expected, string says)
    {
        var job = Houses(named: true, "h2");
        if (shares.Length > 0)
            job.Work(w =>
                w with { Structures =
                    [.. shares.Select((share, i) =>
                        new ResidentialStructure { Id = $"h{i + 1}", Text = $"No. {i + 1}", Share = (decimal)share })] });
        foreach (var on in claimedOn)
            job.Add(i =>
                new ClaimRecorded { Index = i, On = DayFact.On(JobBuilder.Day("2025-11-20").PlusDays(i)), Amount = 3000m, Structure = on });
        var divided = job.On("2025-12-01").Get("claim-of-lien.by-structure");
        Assert.Equal(expected, divided.Standing);
        Assert.True(divided.Says(says));
        Assert.Equal(says.Length > 0, divided.Says("shares of the structures"));
        Assert.Equal(shares.Length == 1
            ? [] : ["Furnished into No. 2: $6,430.00."], divided.Why.Where(w => w.Section == "Civ. Code § 8448(b)(2)").Select(w => w.Text));
    }

    [Fact]
    [Proves("Civ. Code § 8446(b)")]
    public void Half_a_dollar_is_divided_too_and_work_without_a_value_counts_for_nothing()
    {
        var divided = Houses(named: true, "h2")
            .Add(i => new Furnished { Index = i, On = JobBuilder.When("2025-06-06"), Until = JobBuilder.When("2025-06-06"),
                Structure = "h2" }).Paid("2025-10-01", 6429.50m)
            .On("2025-12-01").Get("claim-of-lien.by-structure");
        Assert.Equal(0.50m, divided.Amount);
        Assert.True(divided.Says("Furnished into No. 2: $6,430.00."));
    }

    [Fact]
    [Proves("Civ. Code § 8446(b)")]
    public void One_work_has_nothing_to_divide_and_a_claim_on_one_structure_is_divided()
    {
        Assert.Null(Houses(several: false).On("2025-12-01").Find("claim-of-lien.by-structure"));
        Assert.Null(Houses().Paid("2025-10-01", 6430m).On("2025-12-01").Find("claim-of-lien.by-structure"));
        Assert.Equal(Standing.Kept, Houses(named: true)
            .Add(i => new ClaimRecorded { Index = i, On = JobBuilder.When("2025-11-20"), Amount = 6430m, Structure = "h2" })
            .On("2025-12-01").Get("claim-of-lien.by-structure").Standing);
        Assert.True(Houses(named: true, "h2").On("2025-12-01").Get("claim-of-lien.by-structure").Says("Furnished into No. 2: $6,430.00"));
    }
}

file static class Houses
{
    public static JobBuilder Done(this JobBuilder job, string on, string? structure) =>
        job.Add(i => new Completed { Index = i, On = JobBuilder.When(on), By = CompletionTheory.Actual, Structure = structure });
}
