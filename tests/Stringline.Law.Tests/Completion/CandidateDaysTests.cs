using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Completion;

/// <summary>
/// A last day does not follow the day of completion evenly: of a completion in doubt the days on which the answer turns are shown beside
/// both ends.
/// </summary>
public sealed class DaysToTryTests
{
    // Recorded on Wednesday 13 May 2026 a notice is in time for a completion from 28 April through 13 May, and takes effect for no other
    // (§ 8182): 30 days from it end on 12 June. Completed on 1 April, 90 days end on 30 June; on the 27th, the day before it is in time, on
    // 26 July; on 14 May, the day after the recording, on 12 August; on the 20th, on the 18th.
    [Theory]
    [InlineData("2026-05-04", "2026-06-12")]
    [InlineData("2026-04-28..2026-05-13", "2026-06-12")]
    [InlineData("2026-04-27..2026-05-10", "2026-06-12 2026-07-26")]
    [InlineData("2026-04-26..2026-05-10", "2026-06-12 2026-07-25 2026-07-26")]
    [InlineData("2026-04-01..2026-05-10", "2026-06-12 2026-06-30 2026-07-26")]
    [InlineData("2026-04-01..2026-04-27", "2026-06-30 2026-07-26")]
    [InlineData("2026-05-10..2026-05-14", "2026-06-12 2026-08-12")]
    [InlineData("2026-05-10..2026-05-20", "2026-06-12 2026-08-12 2026-08-18")]
    [InlineData("2026-04-01..2026-05-20", "2026-06-12 2026-06-30 2026-07-26 2026-08-12 2026-08-18")]
    [Proves("Civ. Code § 8414(b)")]
    [Proves("Civ. Code § 8182(a)")]
    public void The_days_about_those_for_which_a_notice_is_in_time_are_shown(string completed, string days) =>
        Assert.Equal(days.Split(' '), new JobBuilder().Furnished("2026-03-02", 10m).Ended("2026-03-02").Completed(completed)
            .OwnerRecorded("2026-05-13", states: "2026-05-04", heldIneffective: false)
            .On("2026-05-25").Get("claim-of-lien.last-day").Readings.Where(r =>
                !r.Name.Contains("owner's notice states", StringComparison.Ordinal)).Select(r => LawText.IsoDay(r.Day)).Distinct());

    // A bond of 15 May: of a completion of that day both the six months and the four years may be said, of one of the 16th it was surely
    // recorded before (§ 8610), and of one of the 14th surely not. 182 days and six months from the 15th, the 16th and the 31st; four years
    // from the work of 2 March.
    [Theory]
    [InlineData("2026-05-01..2026-05-31", "2026-11-13 2026-11-14 2026-11-15 2026-11-16 2026-11-29 2026-11-30 2030-03-02")]
    [InlineData("2026-05-15..2026-05-31", "2026-11-13 2026-11-14 2026-11-15 2026-11-16 2026-11-29 2026-11-30 2030-03-02")]
    [InlineData("2026-05-16..2026-05-31", "2026-11-14 2026-11-16 2026-11-29 2026-11-30")]
    [InlineData("2026-05-01..2026-05-14", "2030-03-02")]
    [InlineData("2026-05-01..2026-05-15", "2026-11-13 2026-11-15 2030-03-02")]
    [InlineData("2026-05-15", "2026-11-13 2026-11-15 2030-03-02")]
    [Proves("Civ. Code § 8610")]
    [Proves("Code Civ. Proc. § 337(a)")]
    public void The_days_about_the_recording_of_a_bond_are_shown(string completed, string days) =>
        Assert.Equal(days.Split(' '), new JobBuilder().PaymentBond("2026-05-15").Notice("2026-03-02").Furnished("2026-03-02", 400m)
            .Ended("2026-03-02").Completed(completed)
            .On("2026-06-01").Get("payment-bond.action-last-day").DaysOf());
}
