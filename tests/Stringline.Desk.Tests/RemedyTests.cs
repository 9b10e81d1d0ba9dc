using CsCheck;
using Stringline.Desk.Portfolio;
using Stringline.Testing;

namespace Stringline.Desk.Tests;

/// <summary>A finding stands on a page under the remedy it belongs to.</summary>
public sealed class RemedyTests
{
    [Fact]
    public void Every_finding_of_any_job_belongs_to_a_remedy_that_was_put_down_for_it() => Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(UseCases.Assess(job, day).Findings, finding =>
        {
            Assert.True(Remedies.Knows(finding.Id, out var remedy), finding.Id);
            Assert.Contains(remedy, Remedies.All);
            Assert.Equal(remedy, Remedies.Of(finding.Id));
        }),
        iter: 400);

    [Fact]
    public void Every_remedy_is_shown_once() => Assert.Equal(Remedies.All.Count, Remedies.All.Distinct().Count());

    /// <summary>What nobody put down is seen all the same.</summary>
    [Fact]
    public void An_unknown_finding_stands_with_the_file_itself() => Assert.Equal("The file itself", Remedies.Of("nothing-such.last-day"));

    [Theory]
    [InlineData("debt.last-day", "The debt itself")]
    [InlineData("owners-security.due", "Prompt payment")]
    [InlineData("design-lien.release", "Design professional's lien")]
    [InlineData("lower-tier.defense", "Claim of lien")]
    [InlineData("licence", "The file itself")]
    public void By_the_first_part(string finding, string remedy) => Assert.Equal(remedy, Remedies.Of(finding));
}
