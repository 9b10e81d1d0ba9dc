namespace Stringline.Published;

/// <summary>
/// What people of the trade carry in their heads. Common practice, no source: each test says what a person at a counter would
/// answer, and the law library must agree with it where the facts are plain.
/// </summary>
public sealed class FactsOfTheTrade
{
    /// <summary>Common practice, no source: 90 days for everyone where no notice of completion is recorded.</summary>
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner")]
    [InlineData(ClaimantRole.Subcontractor, "direct")]
    [InlineData(ClaimantRole.Supplier, "direct")]
    [InlineData(ClaimantRole.Supplier, "owner")]
    [InlineData(ClaimantRole.EquipmentLessor, "direct")]
    [InlineData(ClaimantRole.Laborer, "direct")]
    [InlineData(ClaimantRole.DesignProfessional, "owner")]
    [Proves("Civ. Code § 8412")]
    [Proves("Civ. Code § 8414(b)")]
    public void Everyone_has_ninety_days_where_no_notice_of_completion_is_recorded(ClaimantRole role, string hiredBy) =>
        Check(Plain(role, hiredBy), LastDayToRecord("2026-07-30"));

    /// <summary>
    /// Common practice, no source: 60 days for a direct contractor, 30 for everyone else, from a recorded notice of completion.
    /// </summary>
    [Theory]
    [InlineData(ClaimantRole.DirectContractor, "owner", "2026-07-09")]
    [InlineData(ClaimantRole.Subcontractor, "direct", "2026-06-09")]
    [InlineData(ClaimantRole.Supplier, "direct", "2026-06-09")]
    [InlineData(ClaimantRole.Supplier, "owner", "2026-06-09")]
    [InlineData(ClaimantRole.EquipmentLessor, "direct", "2026-06-09")]
    [InlineData(ClaimantRole.Laborer, "direct", "2026-06-09")]
    [InlineData(ClaimantRole.DesignProfessional, "owner", "2026-06-09")]
    [Proves("Civ. Code § 8412(b)")]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_notice_of_completion_leaves_sixty_days_to_a_direct_contractor_and_thirty_to_all_others(ClaimantRole role, string hiredBy,
        string lastDay) =>
        Check(Plain(role, hiredBy).OwnerRecorded("2026-05-10", states: "2026-05-01").OwnerToldUs("2026-05-12"), LastDayToRecord(lastDay));

    /// <summary>Common practice, no source: 90 days to sue once the claim is recorded.</summary>
    [Fact]
    [Proves("Civ. Code § 8460(a)")]
    public void There_are_ninety_days_to_sue_after_recording() =>
        Check(Plain(ClaimantRole.Subcontractor, "direct").ClaimRecorded("2026-06-01"), LastDayToSue("2026-08-30"));

    private static JobBuilder Plain(ClaimantRole role, string hiredBy) => Begin(role, hiredBy)
        .NoticeNotInIssue("2026-03-02")
        .Furnished("2026-03-02", until: "2026-04-30")
        .Ended("2026-04-30")
        .Completed("2026-05-01");

    private static void Check(JobBuilder file, Expectation expected) =>
        Assert.Null(expected(new Take("plain facts", file, "2026-06-01").Assess()));
}
