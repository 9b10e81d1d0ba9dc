using Stringline.Law.Facts;
using Stringline.Law.Reasoning;

namespace Stringline.Law.Tests.DesignLien;

/// <summary>
/// A design professional hired by the owner records a claim that does not say which lien it is for, and nobody says whether the work
/// commenced: it may be the one or the other (Civ. Code §§ 8302, 8400).
/// </summary>
public sealed class WhichLienInDoubtTests
{
    private static JobBuilder Job(LienKind? lien = null) =>
        new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Furnished("2026-03-02", 6430m).Ended("2026-03-02")
        .ClaimRecorded("2026-04-06", 6430m, lien: lien, id: "claim").ActionFiled("2026-04-20");

    private static Standing[] Of(JobBuilder job) =>
        [.. ((string[])["claim-of-lien.last-day", "enforcement.last-day"]).Select(id => job.On("2026-05-04").Get(id).Standing)];

    [Fact]
    [Proves("Civ. Code § 8302(a)")]
    public void Claim_and_action_are_in_doubt_until_it_is_told()
    {
        Assert.Equal([Standing.InDoubt, Standing.InDoubt], Of(Job()));
        Assert.Equal([Standing.Kept, Standing.Kept], Of(Job(LienKind.Mechanics)));
        Assert.Equal([Standing.Kept, Standing.Kept], Of(Job().Work(w => w with { Commenced = JobBuilder.Day("2026-03-30") })));
    }

    // Labor that stopped by the day of the claim shows that work had commenced; a day later it shows nothing of that day.
    [Theory]
    [InlineData("2026-04-06", Standing.Kept)]
    [InlineData("2026-04-07", Standing.InDoubt)]
    [Proves("Civ. Code § 8302(a)")]
    public void That_labor_stopped_or_the_work_was_complete_shows_that_it_had_commenced(string day, Standing expected)
    {
        Assert.Equal([expected, expected], Of(Job().LaborCeased(day)));
        Assert.Equal([expected, expected], Of(Job().OwnerRecorded(day, OwnerNotice.Cessation)));
        Assert.Equal([expected, expected], Of(Job().Completed(day)));
    }

    // Chapter 4 gives it a lien right only once the work has commenced.
    [Theory]
    [InlineData("2026-03-29", Standing.InDoubt)]
    [InlineData("2026-03-30", Standing.Kept)]
    [Proves("Civ. Code § 8520(a)")]
    public void A_stop_payment_notice_before_the_work_commenced_is_in_doubt(string given, Standing expected)
    {
        var answer = new JobBuilder().Role(ClaimantRole.DesignProfessional, "owner").Furnished("2026-03-02", 6430m)
            .Work(w => w with { Commenced = JobBuilder.Day("2026-03-30") })
            .StopPaymentGiven(given, 6430m, false, "owner").On("2026-04-06");
        Assert.Equal(expected, answer.Get("stop-payment-notice.owner").Standing);
    }
}
