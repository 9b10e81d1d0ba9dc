using Stringline.Law.ClaimOfLien;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.ClaimOfLien;

/// <summary>A claim of a design professional's lien is no claim of mechanics lien, and each is read by its own rules only.</summary>
public sealed class WhichLienTests
{
    private static JobBuilder Architect(string? commenced) => new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Price(24_000m)
        .Contract(c => c with { Written = true })
        .Work(w => w with { Permit = new Permit { Number = "B-1" }, Commenced = commenced is null ? null : Day(commenced) })
        .Furnished("2025-03-05", 24_000m, until: "2025-06-30").Ended("2025-06-30");

    private static LienKind? Of(JobBuilder job, string asOf = "2026-07-15")
    {
        var facts = job.FactsOn(asOf);
        return WhichLien.Of(facts, facts.All<ClaimRecorded>()[0]);
    }

    [Theory]
    [InlineData(null, null)]
    [InlineData("2025-11-06", LienKind.Mechanics)]
    [InlineData("2025-11-07", LienKind.Mechanics)]
    [InlineData("2025-11-08", LienKind.Design)]
    [Proves("Civ. Code § 8302(a)")]
    public void A_claim_of_a_design_professional_that_does_not_say_is_read_by_whether_the_work_had_commenced(string? commenced,
        LienKind? expected) =>
        Assert.Equal(expected, Of(Architect(commenced).ClaimRecorded("2025-11-07")));

    [Theory]
    [InlineData("2025-11-06..2025-11-07", LienKind.Design)]
    [InlineData("2025-11-07..2025-11-08", null)]
    [InlineData("2025-11-08..2025-11-09", LienKind.Mechanics)]
    [InlineData("?", null)]
    [Proves("Civ. Code § 8302(a)")]
    public void A_recording_on_a_day_in_doubt_is_read_only_where_every_day_agrees(string recorded, LienKind? expected) =>
        Assert.Equal(expected, Of(Architect("2025-11-08").ClaimRecorded(recorded)));

    [Fact]
    [Proves("Civ. Code § 8302(a)")]
    public void What_the_file_says_is_taken_and_for_everyone_else_it_is_a_mechanics_lien()
    {
        Assert.Equal(LienKind.Converted, Of(Architect("2025-11-08").ClaimRecorded("2025-11-07", lien: LienKind.Converted)));
        Assert.Equal(LienKind.Mechanics, Of(Architect("2025-11-08").Role(ClaimantRole.DesignProfessional).ClaimRecorded("2025-11-07")));
        Assert.Equal(LienKind.Mechanics, Of(Architect(null).Role(ClaimantRole.DirectContractor, "owner").ClaimRecorded("2025-11-07")));
    }

    // The design claim of 7 November died on commencement (Civ. Code § 8306(b)(1)); the work was completed on 30 June 2026. Day 90 is
    // Monday 28 September.
    [Theory]
    [InlineData(LienKind.Design)]
    [InlineData(LienKind.Converted)]
    [InlineData(null)]
    [Proves("Civ. Code § 8302(a)")]
    [Proves("Civ. Code § 8414(b)")]
    public void A_claim_of_a_design_lien_leaves_the_mechanics_lien_still_to_be_recorded(LienKind? lien)
    {
        var last = Architect("2025-12-17").ClaimRecorded("2025-11-07", 24_000m, lien: lien).Completed("2026-06-30").On("2026-07-15")
            .Get("claim-of-lien.last-day");
        Assert.Equal(Standing.Open, last.Standing);
        Assert.Equal("2026-09-28", last.Plan());
        Assert.True(last.RuledOut("Civ. Code § 8308(a)"));
        Assert.Equal(Standing.Kept, Architect("2025-12-17").ClaimRecorded("2026-07-07", 24_000m).Completed("2026-06-30").On("2026-07-15")
            .Get("claim-of-lien.last-day").Standing);
    }
}
