using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>Whether the lien stands before or behind the construction lender's deed of trust. Commenced 28 July 2025.</summary>
public sealed class RankTests
{
    private static JobBuilder Job(string? deed, string? commenced = "2025-07-28") => new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = deed is null ? null : Day(deed) })
        .Work(w => w with { Commenced = commenced is null ? null : Day(commenced) }).Furnished("2025-08-05", 6430m).Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank");

    private static Finding Rank(JobBuilder job) => job.On("2025-12-01").Get("lien-right.rank");

    [Theory]
    [InlineData("2025-08-01", Standing.Open)]
    [InlineData("2025-07-29", Standing.Open)]
    [InlineData("2025-07-28", Standing.InDoubt)]
    [InlineData("2025-07-27", Standing.Narrowed)]
    [InlineData("2025-07-21", Standing.Narrowed)]
    [Proves("Civ. Code § 8450")]
    public void It_stands_before_a_deed_of_after_the_commencement_and_behind_an_earlier_one(string deed, Standing expected) =>
        Assert.Equal(expected, Rank(Job(deed)).Standing);

    [Theory]
    [InlineData(null, "2025-07-28", "(parties.deedRecorded)")]
    [InlineData("2025-08-01", null, "(work.commenced)")]
    [Proves("Civ. Code § 8450")]
    public void Without_the_days_it_is_in_doubt_and_asked(string? deed, string? commenced, string field)
    {
        var rank = Rank(Job(deed, commenced));
        Assert.Equal(Standing.InDoubt, rank.Standing);
        Assert.EndsWith(field, Assert.Single(rank.Questions).Text, StringComparison.Ordinal);
        Assert.Equal(commenced is null, rank.Asks("photographs"));
    }

    [Theory]
    [InlineData("2025-08-01", Standing.InDoubt)] // a bond that names the deed, of 75 percent, turns it round
    [InlineData("2025-07-21", Standing.Narrowed)]
    [Proves("Civ. Code § 8452")]
    public void A_recorded_payment_bond_may_turn_it_round(string deed, Standing expected)
    {
        Assert.Equal(expected, Rank(Job(deed).PaymentBond("2025-07-30")).Standing);
        Assert.Equal(deed == "2025-08-01", Rank(Job(deed).PaymentBond("2025-07-30")).Sections.Contains("Civ. Code § 8452"));
        Assert.Equal(deed == "2025-08-01" ? Standing.Open : Standing.Narrowed, Rank(Job(deed).PaymentBond(null)).Standing);
    }

    [Theory]
    [InlineData("2025-08-01", Standing.Open)]
    [InlineData("2025-07-21", Standing.InDoubt)] // given to finance the site improvement it is behind all the same
    [Proves("Civ. Code § 8458")]
    public void A_site_improvement_may_stand_before_an_earlier_deed(string deed, Standing expected)
    {
        var rank = Rank(Job(deed).Work(w => w with { SiteImprovement = true }));
        Assert.Equal(expected, rank.Standing);
        Assert.Contains("Civ. Code § 8458", rank.Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8316")]
    public void A_design_professionals_lien_is_behind_the_construction_lender_always()
    {
        var job = Job("2025-08-01").Role(ClaimantRole.DesignProfessional).Add(i => new ClaimRecorded { Index = i, On = When("2025-09-01"), Lien = LienKind.Design });
        Assert.Equal(Standing.Narrowed, Rank(job).Standing);
        Assert.Contains("Civ. Code § 8316", Rank(job).Sections);
        Assert.DoesNotContain("Civ. Code § 8316", Rank(Job("2025-08-01")).Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8450")]
    public void Toward_a_lender_that_was_not_told_in_time_it_is_in_doubt()
    {
        var job = new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = Day("2025-08-01") }).Work(w => w with { Commenced = Day("2025-07-28") })
            .Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Notice("2025-08-14");
        Assert.Equal(Standing.InDoubt, Rank(job).Standing);
        Assert.Equal(Standing.InDoubt, Rank(job.Notice("2025-10-08", Manner.CertifiedMail, "bank")).Standing);
    }

    [Fact]
    public void Without_a_lender_nothing_is_said_of_rank() => Assert.Null(new JobBuilder().Furnished("2025-08-05", 1m).On("2025-12-01").Find("lien-right.rank"));
}
