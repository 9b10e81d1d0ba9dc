using CsCheck;
using Stringline.Office.Portfolio;
using Stringline.Law.Facts;
using Stringline.Testing;

namespace Stringline.Office.Tests;

/// <summary>A finding stands on a page under the remedy it belongs to.</summary>
public sealed class RemedyTests
{
    [Fact]
    public void Every_finding_of_any_job_belongs_to_a_remedy_that_was_put_down_for_it() =>
        Gen.Select(JobFileGen.Job, JobFileGen.Day).Sample(
        (job, day) => Assert.All(UseCases.Assess(job, day).Findings, finding =>
        {
            Assert.True(Remedies.Knows(finding.Id, out var remedy), finding.Id);
            Assert.Contains(remedy, Remedies.All);
            Assert.Equal(remedy, Remedies.Of(finding.Id));
            Assert.Contains(Remedies.Of(finding), Remedies.All);
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
    [InlineData("license", "The file itself")]
    public void By_the_first_part(string finding, string remedy) => Assert.Equal(remedy, Remedies.Of(finding));

    // The index is watched for what a recorded notice of completion would cut short (Civ. Code §§ 8414(b)(2), 8612(b), 9356(a), 9560(b)).
    [Theory]
    [InlineData(WorkKind.Private, true, "Claim of lien")]
    [InlineData(WorkKind.Private, false, "Payment bond")]
    [InlineData(WorkKind.Public, true, "Stop payment notice")]
    [InlineData(WorkKind.Public, false, "Payment bond")]
    public void The_watch_of_the_index_belongs_to_what_it_is_kept_for(WorkKind kind, bool noticed, string remedy)
    {
        var job = new JobBuilder().PaymentBond("2025-07-01", "direct").Furnished("2025-08-05", 6_430m).Ended("2025-08-05");
        if (noticed)
            job = job.Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "city");
        if (kind == WorkKind.Public)
            job = job.PublicWork();
        var assessment = UseCases.Assess(job.Build(), new LocalDate(2025, 10, 1));
        Assert.Equal(remedy, Remedies.Of(assessment.Find("index-watch.next-day")!));
    }

    // On federal work nothing is recorded with a county and no county's index is searched.
    [Theory]
    [InlineData(WorkKind.Federal, false)]
    [InlineData(WorkKind.Public, true)]
    [InlineData(WorkKind.Private, true)]
    public void The_county_is_asked_about_only_where_a_county_keeps_a_record(WorkKind kind, bool asked) =>
        Assert.Equal(asked,
            UseCases.Assess(new JobBuilder().Work(w => w with { Kind = kind, Site = w.Site with { Zip = null, City = null } })
                .Furnished("2025-08-05", 1m).Build(), new LocalDate(2025, 10, 1)).Find("site.county") is not null);
}
