using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>Whether the lien stands before or behind the construction lender's deed of trust. Commenced 28 July 2025.</summary>
public sealed class RankTests
{
    private static JobBuilder Job(string? deed, string? commenced = "2025-07-28") =>
        new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = deed is null ? null : Day(deed) })
        .Work(w => w with { Commenced = commenced is null ? null : Day(commenced) }).Furnished("2025-08-05", 6430m)
        .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank");

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
        var job = Job("2025-08-01").Role(ClaimantRole.DesignProfessional)
            .Add(i => new ClaimRecorded { Index = i, On = When("2025-09-01"), Lien = LienKind.Design });
        Assert.Equal(Standing.Narrowed, Rank(job).Standing);
        Assert.Contains("Civ. Code § 8316", Rank(job).Sections);
        Assert.DoesNotContain("Civ. Code § 8316", Rank(Job("2025-08-01")).Sections);
    }

    [Fact]
    [Proves("Civ. Code § 8450")]
    public void Toward_a_lender_that_was_not_told_in_time_it_is_in_doubt()
    {
        var job = new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = Day("2025-08-01") })
            .Work(w => w with { Commenced = Day("2025-07-28") })
            .Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Notice("2025-08-14");
        Assert.Equal(Standing.InDoubt, Rank(job).Standing);
        Assert.Equal(Standing.InDoubt, Rank(job.Notice("2025-10-08", Manner.CertifiedMail, "bank")).Standing);
    }

    // One stands before the deed of 1 August, behind that of 21 July, and nobody knows of the third: the weakest place toward any lender is
    // told, and each is named.
    [Theory]
    [InlineData("2025-08-01", "2025-08-04", Standing.Open, 0)]
    [InlineData("2025-08-01", "2025-07-21", Standing.Narrowed, 0)]
    [InlineData("2025-07-21", "2025-08-01", Standing.Narrowed, 0)]
    [InlineData("2025-08-01", null, Standing.InDoubt, 1)]
    [InlineData(null, "2025-08-01", Standing.InDoubt, 1)]
    [InlineData(null, "2025-07-21", Standing.InDoubt, 1)]
    [InlineData("2025-07-21", null, Standing.InDoubt, 1)]
    [InlineData(null, null, Standing.InDoubt, 2)]
    [Proves("Civ. Code § 8450")]
    public void Of_several_lenders_the_weakest_place_is_told_and_each_is_named(string? first, string? second, Standing expected, int asked)
    {
        var rank = Rank(Job(first).Party("fund", PartyCapacity.ConstructionLender, "Gantry Fund")
            .PartyWith("fund", p => p with { DeedRecorded = second is null ? null : Day(second) })
            .Notice("2025-08-14", Manner.CertifiedMail, "owner", "direct", "bank", "fund"));
        Assert.Equal(expected, rank.Standing);
        Assert.Equal(asked, rank.Questions.Count);
        Assert.Equal([true, true],
            rank.Why.Zip((string[])["Quay Street Bank", "Gantry Fund"], (why, name) => why.Text.Contains(name, StringComparison.Ordinal)));
    }

    // Commenced on a day that nobody gives: asked once, however many lenders there are.
    [Fact]
    [Proves("Civ. Code § 8450")]
    public void What_is_asked_for_every_lender_is_asked_once() =>
        Assert.Single(Rank(Job("2025-08-01", null).Party("fund", PartyCapacity.ConstructionLender, "Gantry Fund")
            .PartyWith("fund", p => p with { DeedRecorded = Day("2025-08-01") })
            .Notice("2025-08-14", Manner.CertifiedMail, "fund")).Questions);

    // § 8458: a deed of the day on which the site improvement commenced is not after it; a recorded bond may turn it round.
    [Theory]
    [InlineData("2025-07-28", null, Standing.InDoubt, "solely or primarily to finance")]
    [InlineData("2025-07-29", null, Standing.Open, "Before the deed of trust")]
    [InlineData("2025-07-29", "2025-07-30", Standing.InDoubt, "at least 50 percent")]
    [Proves("Civ. Code § 8458")]
    public void A_site_improvement_stands_before_a_later_deed_unless_a_bond_turns_it_round(string deed, string? bond, Standing expected,
        string says)
    {
        var rank = Rank(Job(deed).Work(w => w with { SiteImprovement = true }).PaymentBond(bond));
        Assert.Equal(expected, rank.Standing);
        Assert.True(rank.Says(says));
    }

    // Told late, the lender is told for the work from 20 days before; told in time, for all.
    [Theory]
    [InlineData("2025-08-25", Standing.Open, null)]
    [InlineData("2025-08-26", Standing.InDoubt, "Civ. Code § 8204(a)")]
    [InlineData(null, Standing.InDoubt, "Civ. Code § 8200(a)(3)")]
    [Proves("Civ. Code § 8204(a)")]
    public void Toward_a_lender_told_late_the_place_is_in_doubt_for_the_work_before(string? told, Standing expected, string? section)
    {
        var job = new JobBuilder().Lender().PartyWith("bank", p => p with { DeedRecorded = Day("2025-08-01") })
            .Work(w => w with { Commenced = Day("2025-07-28") })
            .Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Notice("2025-08-14");
        var rank = Rank(told is null ? job : job.Notice(told, Manner.CertifiedMail, "bank"));
        Assert.Equal(expected, rank.Standing);
        Assert.Equal(section is null ? [] : [section], rank.Sections.Where(s => s.StartsWith("Civ. Code § 82", StringComparison.Ordinal)));
        // What lies behind an earlier deed lies behind it whether the lender was told or not.
        Assert.Equal(Standing.Narrowed, Rank(job.PartyWith("bank", p => p with { DeedRecorded = Day("2025-07-21") })).Standing);
    }

    [Fact]
    public void Without_a_lender_nothing_is_said_of_rank() =>
        Assert.Null(new JobBuilder().Furnished("2025-08-05", 1m).On("2025-12-01").Find("lien-right.rank"));
}
