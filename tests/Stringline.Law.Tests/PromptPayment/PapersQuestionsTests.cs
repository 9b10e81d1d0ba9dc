using Stringline.Law.Completion;
using Stringline.Law.Facts;
using Stringline.Law.Numbers;
using Stringline.Law.PromptPayment;

namespace Stringline.Law.Tests.PromptPayment;

/// <summary>What papers ask the law library for: days and sums that they may not count themselves.</summary>
public sealed class PapersQuestionsTests
{
    /// <summary>
    /// Civ. Code § 8832: 35 days after the due day. Ten days after October 6, 2025 are October 16, the first day November 21.
    /// </summary>
    [Fact]
    public void Section_8832_the_due_day_is_the_one_that_the_first_day_was_counted_from()
    {
        var notice = new JobBuilder().Role(ClaimantRole.DirectContractor, "owner")
            .Contract(c => c with { Written = true, PaymentDueDays = 10 }).Price(20_000m)
            .Furnished("2025-08-05", 20_000m).PaymentDemanded("2025-10-06", 20_000m).On("2025-12-01").Find("stop-work.notice-first-day")!;
        Assert.Equal(JobBuilder.Day("2025-11-21"), notice.Band!.Earliest.Day);
        Assert.Equal(JobBuilder.Day("2025-10-16"), StopWork.DueDay(NumberTable.Shipped, notice.Band!.Earliest.Day));
    }

    /// <summary>
    /// Civ. Code § 8800(d): retention has an article of its own; what is owed beyond it can be a progress payment, and never less than
    /// nothing.
    /// </summary>
    [Theory]
    [InlineData(20_000, 18_000)]
    [InlineData(2_000.01, 0.01)]
    [InlineData(2_000, 0)]
    [InlineData(500, 0)]
    public void Section_8800_d_a_progress_payment_is_what_is_owed_without_the_retention(decimal owed, decimal progress) =>
        Assert.Equal(progress, MoneyDue.WithoutRetention(new JobBuilder().Retained("2025-09-10", 1_500m).Retained("2025-09-20", 500m)
            .FactsOn("2025-12-01"), owed));

    [Fact]
    public void A_question_about_no_file_is_refused()
    {
        Assert.Throws<ArgumentNullException>(() => MoneyDue.WithoutRetention(null!, 1m));
        Assert.Throws<ArgumentNullException>(() => StopWork.DueDay(null!, JobBuilder.Day("2025-11-21")));
    }

    /// <summary>
    /// Civ. Code § 8182(a): 15 days after May 2, 2026 are Sunday, May 17. The recorder is open on Friday the 15th; the roll goes to Monday
    /// the 18th.
    /// </summary>
    [Fact]
    public void Section_8182_a_the_owner_plans_on_an_open_day_and_may_argue_the_roll() =>
        Assert.Equal(
            new TimeToRecord(NumberTable.Shipped.On(Number.RecordCompletion, JobBuilder.Day("2026-05-02")), JobBuilder.Day("2026-05-15"),
                JobBuilder.Day("2026-05-17"), JobBuilder.Day("2026-05-18")),
            new JobBuilder().On("2026-05-06").TimeToRecordCompletion(JobBuilder.Day("2026-05-02")));

    /// <summary>Another file is supposed without changing the one that was asked about.</summary>
    [Fact]
    public void What_is_supposed_of_the_file_changes_nothing_in_it()
    {
        var asked = new JobBuilder().Furnished("2026-03-02", 9_000m).On("2026-05-04");
        Assert.Equal(7_000m,
            asked.Supposing(job =>
                job with { Entries =
                    [.. job.Entries,
                        new Paid { Index = 1, On = DayFact.On(JobBuilder.Day("2026-04-01")), Amount = 2_000m }] }).Owed.Demand);
        Assert.Equal(9_000m, asked.Owed.Demand);
        Assert.Throws<ArgumentNullException>(() => asked.Supposing((Func<JobFile, JobFile>)null!));
    }
}
