using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>
/// Every question of the table is asked of an entry that calls for it and of none that does not. That recorders close on the day after
/// Thanksgiving is theirs by Gov. Code § 6700 and Code Civ. Proc. § 135; that the post office keeps no counter on Sundays is its own
/// published rule.
/// </summary>
public sealed class UnlikelyTests
{
    private static readonly LocalDate Today = new(2026, 11, 30);

    private static JobBuilder Job() => new JobBuilder().Furnished("2026-10-02", 1000m, "T-1");

    private static readonly (string Id, JobBuilder Asked, JobBuilder Not)[] Cases =
    [
        ("closed-office", Job().ClaimRecorded("2026-11-27", 1000m), Job().ClaimRecorded("2026-11-25", 1000m)),
        ("closed-office", Job().ReleaseRecorded("2026-11-29"), Job().ReleaseRecorded("2026-11-30")),
        ("closed-office", Job().CreditRecorded("2026-11-29", "2027-01-04"), Job().CreditRecorded("2026-11-26..2026-11-30", "2027-01-04")),
        ("closed-post-office", Job().Notice("2026-11-29"), Job().Notice("2026-11-28")),
        ("closed-post-office", Job().ClaimServed("2026-07-04"), Job().ClaimServed("2026-11-29", Manner.Personal)),
        ("learned-before", Job().Completed("2026-11-20").Which(e => e with { Learned = new LocalDate(2025, 1, 1) }),
            Job().Completed("2026-11-20").Which(e => e with { Learned = new LocalDate(2026, 11, 20) })),
        ("paid-too-much", Job().Paid("2026-11-20", 999_999_999.99m), Job().Paid("2026-11-20", 1000m)),
        ("paid-too-much", Job().Paid("2026-11-19", 600m).Paid("2026-11-20", 600m),
            Job().Charged("2026-11-01", 200m, ChargeKind.Interest).Paid("2026-11-19", 600m).Paid("2026-11-20", 600m)),
        ("paid-too-much", new JobBuilder().Paid("2026-11-20", 1m), new JobBuilder().Furnished("2026-11-19").Paid("2026-11-20", 1m)),
        ("same-delivery-twice", Job().Furnished("2026-10-02", 1000m), Job().Furnished("2026-10-02", 1000m, "T-2")),
        ("same-delivery-twice", Job().Furnished("2026-10-09", 70m, "T-1"), Job().Furnished("2026-10-03", 1000m)),
        ("first-after-last", Job().Ended("2026-10-05").Furnished("2026-10-06", 1m), Job().Ended("2026-10-05").Furnished("2026-10-05", 1m)),
        ("first-after-last", Job().Ended("2026-10-01"), Job().Ended("2026-10-02")),
        ("far-ahead", Job().Furnished("2028-01-03", 1m), Job().Furnished("2027-11-30", 1m)),
        ("far-back", Job().Furnished("1996-10-02", 1m), Job().Furnished("2016-12-01", 1m)),
    ];

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Cases.Length)];

    private static IEnumerable<string> Asked(JobBuilder job)
    {
        var file = job.Build();
        return new Unlikely(file, Today, OpenDays.Statutory).Of(file.Entries[^1]).Select(question => question.Id);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_question_is_asked_of_what_calls_for_it_and_of_nothing_else(int row)
    {
        var (id, asked, not) = Cases[row];
        Assert.Equal([id], Asked(asked));
        Assert.DoesNotContain(id, Asked(not));
    }

    [Fact]
    public void Every_question_of_the_table_is_tried_here() =>
        Assert.Equal(Unlikely.Ids.Order(), Cases.Select(row => row.Id).Distinct().Order());

    [Fact]
    public void What_was_corrected_or_withdrawn_no_longer_counts()
    {
        var twice = Job().Furnished("2026-10-02", 1000m).Which(e => e with { Supersedes = "first" });
        Assert.Equal(["same-delivery-twice"], Asked(twice));
        var corrected = new JobBuilder().Furnished("2026-10-02", 1000m, "T-1").Which(e =>
            e with { Id = "first" }).Furnished("2026-10-02", 1000m, "T-1").Which(e => e with { Id = "second", Supersedes = "first" });
        Assert.Empty(Asked(corrected));
    }
}
