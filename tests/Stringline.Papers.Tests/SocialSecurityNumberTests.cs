using Stringline.Law.Facts;
using Stringline.Papers.Catalogue;
using static Stringline.Papers.Tests.Jobs;

namespace Stringline.Papers.Tests;

/// <summary>
/// What is recorded is open to everyone for good: no number that looks like a social security number (common practice, no source).
/// </summary>
public sealed class SocialSecurityNumberTests
{
    private static JobFile With(JobFile job, string work) => job with { Contract = job.Contract with { Work = work } };

    [Theory]
    [InlineData("Framing. Tax ID 95-1234567, SSN 123-45-6789")]
    [InlineData("Framing (123-45-6789)")]
    [InlineData("Framing (123–45–6789)")]
    [InlineData("Framing, social security number: 123456789")]
    [InlineData("Framing, SSN 123 45 6789")]
    [InlineData("Framing, Soc. Sec. no. 123.45.6789")]
    public void A_number_that_looks_like_one_is_refused_by_its_field_on_a_draft_too(string work)
    {
        foreach (var draft in (bool[])[false, true])
        {
            var refused = Assert.IsType<PacketOutcome.Refused>(
                Kept.Claim(With(Demo(), work), Demo().Assessed(), draft)).Refusals;
            Assert.Equal(("social-security-number", "contract.work"), (Assert.Single(refused).Id, refused[0].Where.ToString()));
            Assert.DoesNotContain("6789", refused[0].ToString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("Framing of lot 027-310-0144")]
    [InlineData("Framing on 012-345-67-8901 and 123-45-678")]
    [InlineData("Framing under permit 123456789")]
    [InlineData("Framing, telephone 916-555-0143, ZIP 95616-1234")]
    [InlineData("Framing, SSN ends in 6789")]
    public void Another_number_is_none(string work) => Kept.Packet("no-ssn", With(Demo(), work));

    [Fact]
    public void The_field_of_a_party_and_of_the_site_is_named()
    {
        var job = Demo() with { Work = Demo().Work with { Site = Demo().Work.Site with { Apn = "123-45-6789" } } };
        job = job.WithOwners(new Party { Id = "p1", Capacity = PartyCapacity.Owner, Name = "Ana María Ibarra, SSN 123-45-6780",
            Address = "77 Cordage Way, Davis, CA 95616" });
        Assert.Equal(["work.site.apn", "parties[0].name"], Kept.Refusals(job).Select(r => r.Where.ToString()));
    }

    public static TheoryData<string> Recorded() => [.. PaperCatalogue.All.Where(p => p.Use == PaperUse.Recorded).Select(p => p.Id)];

    /// <summary>Every paper that is recorded, with the number in every field that a paper may take its words from.</summary>
    [Theory]
    [MemberData(nameof(Recorded))]
    public void No_recorded_paper_prints_one(string id)
    {
        const string number = " 123-45-6789";
        var (job, asOf, options) = PaperJobs.For(id);
        job = job with
        {
            Claimant = job.Claimant with { Name = job.Claimant.Name + number, Address = job.Claimant.Address + number },
            Contract = job.Contract with { Work = job.Contract.Work + number },
            Work = job.Work with { Site = job.Work.Site with { Legal = job.Work.Site.Legal + number } },
            Parties = [.. job.Parties.Select(p => p with { Name = p.Name + number, Address = p.Address + number })],
        };
        var refused = Assert.IsType<PacketOutcome.Refused>(
            PaperMaker.Make(id, job, PaperJobs.Assess(job, asOf), options with { Draft = true })).Refusals;
        Assert.All(refused, r => Assert.Equal("social-security-number", r.Id));
    }

    /// <summary>What is told with the request has no field: the paper is named.</summary>
    [Fact]
    public void A_number_told_with_the_request_is_refused_too() =>
        Assert.Contains(PaperJobs.Refusals("notice-of-credit", null, o => o with { Words = "SSN 123-45-6789" }),
            r => r.Id == "social-security-number" && r.Where.ToString() == "the texts of the paper");
}
