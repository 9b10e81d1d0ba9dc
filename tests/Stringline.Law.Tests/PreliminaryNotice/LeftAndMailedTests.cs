using Stringline.Law.Facts;
using Stringline.Law.PreliminaryNotice;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>A notice left and mailed as Code Civ. Proc. § 415.20 has it (Civ. Code §§ 8106(c), 8116(c), 9302).</summary>
public sealed class LeftAndMailedTests
{
    private static JobBuilder Left(string on, int? tries, bool? natural, string first) => new JobBuilder()
        .PartyWith("owner", p => p with { NaturalPerson = natural }).PartyWith("direct", p => p with { NaturalPerson = false })
        .Furnished(first, 6430m)
        .Notice(on, Manner.Substituted, "owner").Which(e => (NoticeGiven)e with { Mailed = Day(on), Tries = tries })
        .Notice(on, Manner.CertifiedMail, "direct");

    private static Finding Notice(JobBuilder job, string asOf = "2027-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    // Given on the last day of 2026 the old text asks for reasonable diligence (two tries, from memory); from 1 January 2027 three tries
    // show it.
    [Theory]
    [InlineData("2026-12-31", false, null, Standing.Kept)]
    [InlineData("2026-12-31", true, 2, Standing.Kept)]
    [InlineData("2026-12-31", true, 1, Standing.InDoubt)]
    [InlineData("2026-12-31", true, null, Standing.InDoubt)]
    [InlineData("2026-12-31", true, 0, Standing.Narrowed)]
    [InlineData("2026-12-31", null, null, Standing.InDoubt)]
    [InlineData("2026-12-31", null, 2, Standing.Kept)]
    [InlineData("2027-01-01", false, null, Standing.Kept)]
    [InlineData("2027-01-01", true, 3, Standing.Kept)]
    [InlineData("2027-01-01", true, 2, Standing.InDoubt)]
    [InlineData("2027-01-01", true, 0, Standing.Narrowed)]
    [InlineData("2027-01-01", null, 2, Standing.InDoubt)]
    [InlineData("2027-01-01", null, 3, Standing.Kept)]
    [InlineData("2027-01-01", null, 0, Standing.InDoubt)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    [Proves("Code Civ. Proc. § 415.20(b)(2)")]
    public void Toward_a_natural_person_it_takes_tries_by_the_law_of_the_day_it_was_given(string on, bool? natural, int? tries,
        Standing expected)
    {
        var notice = Notice(Left(on, tries, natural, first: "2026-12-21"));
        Assert.Equal(expected, notice.Standing);
        Assert.Equal(expected == Standing.InDoubt, notice.Asks("(notice-given.tries)"));
    }

    // A day in doubt over the change of law is judged by the newer text, which asks for more.
    [Fact]
    [Proves("Code Civ. Proc. § 415.20(b)(2)")]
    public void A_day_in_doubt_over_the_new_year_is_judged_by_the_newer_text()
    {
        Assert.Equal(Standing.InDoubt, Notice(Between(2)).Standing);
        Assert.Equal(Standing.Kept, Notice(Between(3)).Standing);
    }

    private static JobBuilder Between(int tries) => new JobBuilder().PartyWith("owner", p => p with { NaturalPerson = true })
        .Furnished("2026-12-21", 6430m).Notice("2026-12-31..2027-01-01", Manner.Substituted, "owner")
        .Which(e => (NoticeGiven)e with { Mailed = Day("2027-01-02"), Tries = tries }).Notice("2027-01-02", Manner.CertifiedMail, "direct");

    [Theory]
    [InlineData(TitleForm.Company, Standing.Kept)]
    [InlineData(TitleForm.PublicEntity, Standing.Kept)]
    [InlineData(TitleForm.Individual, Standing.InDoubt)]
    [InlineData(TitleForm.JointTenants, Standing.InDoubt)]
    [InlineData(TitleForm.Trust, Standing.InDoubt)]
    [InlineData(TitleForm.Estate, Standing.InDoubt)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    public void How_an_owner_holds_title_tells_whether_it_is_a_natural_person(TitleForm form, Standing expected) =>
        Assert.Equal(expected,
            Notice(Left("2027-01-01", null, null, "2026-12-21")
                .PartyWith("owner", p => p with { HoldsTitleAs = new TitleHolding { Form = form } })).Standing);

    // Entities by what they are; of all others the file must say it, or how they hold title.
    [Theory]
    [InlineData(PartyCapacity.PublicEntity, false)]
    [InlineData(PartyCapacity.Surety, false)]
    [InlineData(PartyCapacity.Association, false)]
    [InlineData(PartyCapacity.Owner, null)]
    [InlineData(PartyCapacity.DirectContractor, null)]
    [InlineData(PartyCapacity.Subcontractor, null)]
    [InlineData(PartyCapacity.ConstructionLender, null)]
    [InlineData(PartyCapacity.Supplier, null)]
    [InlineData(PartyCapacity.Architect, null)]
    [InlineData(PartyCapacity.OwnersAgent, null)]
    [Proves("Code Civ. Proc. § 415.20(b)")]
    public void A_public_entity_a_surety_and_an_association_are_no_natural_persons(PartyCapacity capacity, bool? natural)
    {
        var party = new Party { Id = "party", Capacity = capacity, Name = "Heron" };
        Assert.Equal(natural, LeftAndMailed.IsNaturalPerson(party));
        Assert.True(LeftAndMailed.IsNaturalPerson(party with { NaturalPerson = true }));
        if (natural is null)
            Assert.True(LeftAndMailed.IsNaturalPerson(party with { HoldsTitleAs = new TitleHolding { Form = TitleForm.Individual } }));
    }

    [Fact]
    [Proves("Code Civ. Proc. § 415.20(b)(2)")]
    public void On_public_work_the_entity_needs_no_tries_and_a_contractor_of_whom_nobody_says_what_it_is_does()
    {
        var job = new JobBuilder().PublicWork().Furnished("2027-02-01", 6430m).Notice("2027-02-09", Manner.Substituted, "city", "direct")
            .Which(e => (NoticeGiven)e with { Mailed = Day("2027-02-09") });
        Assert.Equal(Standing.InDoubt, Notice(job, "2027-03-15").Standing);
        Assert.True(Notice(job, "2027-03-15").Asks("(notice-given.tries)"));
        Assert.Equal(Standing.Kept, Notice(job.PartyWith("direct", p => p with { NaturalPerson = false }), "2027-03-15").Standing);
    }

    // First furnished 5 August 2025: the twentieth day is Monday the 25th. Left on the 20th.
    [Theory]
    [InlineData("2025-08-20", Standing.Kept, 6430)]
    [InlineData("2025-08-21", Standing.Narrowed, 0)] // complete on the 26th, reaching back to the 6th
    [InlineData("2025-08-22", Standing.Narrowed, 0)]
    [InlineData(null, Standing.Kept, 6430)]
    [Proves("Civ. Code § 8116")]
    public void It_is_complete_five_days_after_mailing_not_after_leaving(string? mailed, Standing expected, int demand)
    {
        var job = new JobBuilder().PartyWith("owner", p => p with { NaturalPerson = false })
            .PartyWith("direct", p => p with { NaturalPerson = false })
            .Furnished("2025-08-05", 6430m).Notice("2025-08-20", Manner.Substituted)
            .Which(e => (NoticeGiven)e with { Mailed = mailed is null ? null : Day(mailed) });
        Assert.Equal(expected, Notice(job, "2025-10-01").Standing);
        Assert.Equal(demand, job.On("2025-10-01").Amount.Demand);
        Assert.Equal(mailed is null, Notice(job, "2025-10-01").Asks("(notice-given.mailed)"));
    }
}
