using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>The construction lender: asked for, looked for, told late, come later (Civ. Code §§ 8200(a)(3), 8210).</summary>
public sealed class LenderTests
{
    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    private static JobBuilder Sought(JobBuilder job) => job.Add(i => new LenderSought { Index = i, On = JobBuilder.When("2026-03-04"), Where = "the permit and the deeds of trust" });

    [Theory]
    [InlineData(ClaimantRole.Supplier, "direct", true)]
    [InlineData(ClaimantRole.Subcontractor, "direct", true)]
    [InlineData(ClaimantRole.Supplier, "owner", true)]
    [InlineData(ClaimantRole.DirectContractor, "owner", true)]
    [InlineData(ClaimantRole.Laborer, "direct", false)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Everyone_who_owes_notice_is_asked_for_a_lender_until_one_is_named_or_was_sought(ClaimantRole role, string hiredBy, bool asks)
    {
        JobBuilder Job() => new JobBuilder().Role(role, hiredBy).Furnished("2026-03-02", 500m).Notice("2026-03-10");
        Assert.Equal(asks, Notice(Job()).Asks("Is there a construction lender?"));
        Assert.Equal(asks, Job().On("2026-06-01").Find("assumptions")?.Says("names no construction lender") ?? false);
        Assert.False(Notice(Sought(Job())).Asks("Is there a construction lender?"));
        Assert.False(Sought(Job()).On("2026-06-01").Find("assumptions")?.Says("names no construction lender") ?? false);
        Assert.Equal(asks, Notice(Sought(Job())).Says("the permit and the deeds of trust"));
        Assert.False(Notice(Job().Lender()).Asks("Is there a construction lender?"));
    }

    [Fact]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_public_work_has_no_lender_to_ask_for()
    {
        var assessment = new JobBuilder().PublicWork().Furnished("2026-03-02", 500m).On("2026-03-10");
        Assert.False(assessment.Get("preliminary-notice.last-day").Asks("lender"));
        Assert.False(assessment.Find("assumptions")?.Says("lender") ?? false);
    }

    // Owner and contractor were told in time, the lender on 8 October 2025, which reaches back to 18 September.
    [Theory]
    [InlineData(null, Standing.InDoubt)]
    [InlineData("2025-10-08", Standing.InDoubt)]
    [InlineData("2025-08-25", Standing.Kept)]
    [Proves("Civ. Code § 8204(a)")]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_lender_told_late_stands_no_better_than_one_never_told(string? told, Standing expected)
    {
        var assessment = Late(told).On("2025-12-01");
        Assert.Equal(expected, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(6430m, assessment.Amount.Demand);
        Assert.Equal(told == "2025-10-08", assessment.Get("preliminary-notice.last-day").Says("2025-09-18 (Thu)"));
    }

    private static JobBuilder Late(string? told)
    {
        var job = new JobBuilder().Lender().Furnished("2025-08-05", 4300m).Furnished("2025-09-22", 2130m).Notice("2025-08-14");
        return told is null ? job : job.Notice(told, Manner.CertifiedMail, "bank");
    }

    // Known since Wednesday 10 September 2025: the twentieth day is Tuesday the 30th.
    [Theory]
    [InlineData(null, "2025-09-10", Standing.Open)]
    [InlineData(null, "2025-09-30", Standing.Open)]
    [InlineData(null, "2025-10-01", Standing.InDoubt)]
    [InlineData("2025-09-30", "2025-12-01", Standing.Kept)]
    [InlineData("2025-10-01", "2025-12-01", Standing.Narrowed)]
    [Proves("Civ. Code § 8210")]
    public void A_lender_that_came_later_is_given_notice_by_a_day_of_its_own(string? told, string asOf, Standing expected)
    {
        var job = new JobBuilder().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2025-09-10")
            .Furnished("2025-08-05", 6430m, until: "2025-10-10").Notice("2025-08-14");
        if (told is not null)
            job.Notice(told, Manner.CertifiedMail, "bank");
        var assessment = job.On(asOf);
        var later = assessment.Get("preliminary-notice.later-lender");
        Assert.Equal(expected, later.Standing);
        Assert.Equal(["2025-09-30"], later.DaysOf());
        Assert.Equal("2025-09-30", later.Plan());
        Assert.True(later.Says("Kodiak"));
        Assert.Equal(Standing.Kept, assessment.Get("preliminary-notice.last-day").Standing);
        Assert.Equal(expected is Standing.Open or Standing.InDoubt, assessment.Next.Any(s => s.Finding == "preliminary-notice.later-lender"));
    }

    [Theory]
    [InlineData(ClaimantRole.Supplier, "2025-08-05", false)] // known on the first day: a recipient like any other
    [InlineData(ClaimantRole.Supplier, "2025-08-06", true)]
    [InlineData(ClaimantRole.Supplier, null, false)]
    [InlineData(ClaimantRole.Laborer, "2025-08-06", false)]
    [Proves("Civ. Code § 8210")]
    public void Only_a_lender_unknown_on_the_first_day_has_that_row(ClaimantRole role, string? since, bool row) =>
        Assert.Equal(row, new JobBuilder().Role(role).Party("bank", PartyCapacity.ConstructionLender, knownSince: since).Furnished("2025-08-05", 1m).On("2025-08-20").Find("preliminary-notice.later-lender") is not null);
}
