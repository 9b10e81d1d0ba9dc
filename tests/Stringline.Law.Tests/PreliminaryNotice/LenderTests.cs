using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.PreliminaryNotice;

/// <summary>The construction lender: asked for, looked for, told late, come later (Civ. Code §§ 8200(a)(3), 8210).</summary>
public sealed class LenderTests
{
    private static Finding Notice(JobBuilder job, string asOf = "2026-06-01") => job.On(asOf).Get("preliminary-notice.last-day");

    private static JobBuilder Sought(JobBuilder job) =>
        job.Add(i => new LenderSought { Index = i, On = JobBuilder.When("2026-03-04"), Where = "the permit and the deeds of trust" });

    [Theory]
    [InlineData(ClaimantRole.Supplier, "direct", true)]
    [InlineData(ClaimantRole.Subcontractor, "direct", true)]
    [InlineData(ClaimantRole.Supplier, "owner", true)]
    [InlineData(ClaimantRole.DirectContractor, "owner", true)]
    [InlineData(ClaimantRole.Laborer, "direct", false)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void Everyone_who_owes_notice_is_asked_for_a_lender_until_one_is_named_or_was_sought(ClaimantRole role, string hiredBy,
        bool asks)
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
        Assert.Equal(expected is Standing.Open or Standing.InDoubt,
            assessment.Next.Any(s => s.Finding == "preliminary-notice.later-lender"));
    }

    // Of several such lenders the row is as urgent as the one that is left: who was told late, in time, not at all. Known on 10 September
    // or the 20th: the twentieth days are 30 September and 10 October.
    private static readonly Dictionary<Standing, (string Known, string? Told)> Told = new()
    {
        [Standing.Kept] = ("2025-09-10", "2025-09-25"),
        [Standing.Narrowed] = ("2025-09-10", "2025-10-02"),
        [Standing.Open] = ("2025-09-20", null),
        [Standing.InDoubt] = ("2025-09-10", null),
    };

    [Theory]
    [InlineData(Standing.Kept, Standing.Narrowed, Standing.Narrowed)]
    [InlineData(Standing.Kept, Standing.Open, Standing.Open)]
    [InlineData(Standing.Kept, Standing.InDoubt, Standing.InDoubt)]
    [InlineData(Standing.Narrowed, Standing.Open, Standing.Open)]
    [InlineData(Standing.Narrowed, Standing.InDoubt, Standing.InDoubt)]
    [InlineData(Standing.Open, Standing.InDoubt, Standing.InDoubt)]
    [Proves("Civ. Code § 8210")]
    public void Of_several_that_came_later_the_one_most_pressing_is_shown(Standing one, Standing other, Standing expected)
    {
        Finding Row(Standing bank, Standing fund)
        {
            var job = new JobBuilder().Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: Told[bank].Known)
                .Party("fund", PartyCapacity.ConstructionLender, "Fund Control Co.", knownSince: Told[fund].Known)
                .Furnished("2025-08-05", 6430m, until: "2025-10-10").Notice("2025-08-14");
            if (Told[bank].Told is { } first)
                job.Notice(first, Manner.CertifiedMail, "bank");
            if (Told[fund].Told is { } second)
                job.Notice(second, Manner.CertifiedMail, "fund");
            return job.On("2025-10-05").Get("preliminary-notice.later-lender");
        }

        Assert.Equal((expected, expected), (Row(one, other).Standing, Row(other, one).Standing));
        Assert.Equal(Told[one].Told is null, Row(one, other).Says("The file shows none given to Quay Street Bank"));
        Assert.Equal(Told[one].Told is not null, Row(one, other).Says("Given to Quay Street Bank: " + Told[one].Told));
        Assert.NotNull(Row(one, other).Band!.Latest);
        // The day of one that was told is no day to act by while another was not.
        string[] days = (one, other) switch
        {
            (Standing.Open, Standing.InDoubt) => ["2025-09-30", "2025-10-10"],
            (_, Standing.Open) => ["2025-10-10"],
            _ => ["2025-09-30"],
        };
        Assert.Equal(days, Row(one, other).DaysOf());
        Assert.Equal(days, Row(other, one).DaysOf());
        Assert.Equal((one, other) is (_, Standing.InDoubt) and not (Standing.Open, _)
            ? 1 : days.Length + (other == Standing.Narrowed ? 1 : 0), Row(one, other).Readings.Count);
    }

    // A notice that lacks something, or was left with somebody of whom nobody says what it is, leaves a doubt; that it was in time by a
    // roll, or by a commencement that nobody knows, is no matter of this row, which has a day of its own. First furnished Monday 2 March
    // 2026, known on the 5th: 25 March.
    [Theory]
    [InlineData("2026-03-20", Manner.CertifiedMail, null, ClaimantRole.Supplier, Standing.Kept)]
    [InlineData("2026-03-20", Manner.CertifiedMail, "the estimate", ClaimantRole.Supplier, Standing.InDoubt)]
    [InlineData("2026-03-10", Manner.Substituted, null, ClaimantRole.Supplier, Standing.InDoubt)]
    [InlineData("2026-03-23", Manner.CertifiedMail, null, ClaimantRole.Supplier, Standing.Kept)]
    [InlineData("2026-03-25", Manner.CertifiedMail, null, ClaimantRole.DesignProfessional, Standing.Kept)]
    [InlineData("2026-03-26", Manner.CertifiedMail, null, ClaimantRole.DesignProfessional, Standing.Narrowed)]
    [Proves("Civ. Code § 8210")]
    public void Only_a_doubt_whether_it_counts_leaves_that_row_in_doubt(string told, Manner manner, string? lacks, ClaimantRole role,
        Standing expected) =>
        Assert.Equal(expected, new JobBuilder().Role(role)
            .Party("bank", PartyCapacity.ConstructionLender, "Quay Street Bank", knownSince: "2026-03-05").Furnished("2026-03-02", 500m)
            .Notice(told, manner, "bank").Which(e => (NoticeGiven)e with { Lacks = lacks }).On("2026-06-01")
            .Get("preliminary-notice.later-lender").Standing);

    // A lender told in time by a notice that lacks something leaves the lien's rank, and the row, in doubt; so does one told late.
    [Theory]
    [InlineData("2025-08-14", null, Standing.Kept)]
    [InlineData("2025-08-14", "the estimate", Standing.InDoubt)]
    [InlineData("2025-10-08", null, Standing.InDoubt)]
    [Proves("Civ. Code § 8200(a)(3)")]
    public void A_doubt_toward_the_lender_is_a_doubt_of_the_notice(string told, string? lacks, Standing expected) =>
        Assert.Equal(expected,
            Notice(new JobBuilder().Lender().Furnished("2025-08-05", 4300m).Notice("2025-08-14").Notice(told, Manner.CertifiedMail, "bank")
                .Which(e => (NoticeGiven)e with { Lacks = lacks })).Standing);

    // Hired by the owner, nobody is to be told but the lender that came later.
    [Fact]
    [Proves("Civ. Code § 8210")]
    public void A_direct_contractor_gives_notice_to_a_lender_that_came_later_too() =>
        Assert.NotNull(new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Party("bank", PartyCapacity.ConstructionLender, knownSince: "2025-08-06").Furnished("2025-08-05", 1m)
            .On("2025-08-20").Find("preliminary-notice.later-lender"));

    [Theory]
    [InlineData(ClaimantRole.Supplier, "2025-08-05", false)] // known on the first day: a recipient like any other
    [InlineData(ClaimantRole.Supplier, "2025-08-06", true)]
    [InlineData(ClaimantRole.Supplier, null, false)]
    [InlineData(ClaimantRole.Laborer, "2025-08-06", false)]
    [Proves("Civ. Code § 8210")]
    public void Only_a_lender_unknown_on_the_first_day_has_that_row(ClaimantRole role, string? since, bool row) =>
        Assert.Equal(row, new JobBuilder().Role(role).Party("bank", PartyCapacity.ConstructionLender, knownSince: since)
            .Furnished("2025-08-05", 1m).On("2025-08-20").Find("preliminary-notice.later-lender") is not null);
}
