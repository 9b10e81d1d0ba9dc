using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;

namespace Stringline.Law.Tests.Plan;

/// <summary>The steps counted back over open days, with a calendar of the year 2026 kept apart in Python.</summary>
public sealed class BackPlanTests
{
    private static readonly string[] Steps = ["index-check", "amount", "sign", "mail-copy", "counter", "mail-to-recorder"];

    private static JobBuilder Job(string completed) =>
        new JobBuilder().Notice("2026-03-02").Furnished("2026-03-02", 1m).Ended("2026-03-30").Completed(completed);

    private static string?[] Days(Assessment assessment) => [.. Steps.Select(s => assessment.Find($"back-plan.{s}")?.Plan())];

    // Completed 4 May: last day Sunday 2 August, act by Friday 31 July. Completed 7 April: last and act-by day Monday 6 July, with
    // Independence Day and its observance on Friday before it. Completed 1 September: Monday 30 November, after Thanksgiving and its
    // Friday.
    [Theory]
    [InlineData("2026-05-04", "2026-07-24", "2026-07-27", "2026-07-28", "2026-07-29", "2026-07-30", "2026-06-18")]
    [InlineData("2026-04-07", "2026-06-26", "2026-06-29", "2026-06-30", "2026-07-01", "2026-07-02", "2026-05-22")]
    [InlineData("2026-09-01", "2026-11-19", "2026-11-20", "2026-11-23", "2026-11-24", "2026-11-25", "2026-10-19")]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void Index_amount_signature_mailing_and_counter_each_have_an_open_day_of_their_own(string completed, string index, string amount,
        string sign, string mail, string counter, string byMail) =>
        Assert.Equal([index, amount, sign, mail, counter, byMail], Days(Job(completed).On(completed)));

    [Fact]
    [Proves("Civ. Code § 8416(a)(7)")]
    public void The_copy_is_mailed_before_the_claim_is_handed_in_on_every_day_of_a_year()
    {
        for (var completed = JobBuilder.Day("2026-04-01"); completed < JobBuilder.Day("2027-04-01"); completed = completed.PlusDays(1))
        {
            var assessment = Job(LawText.IsoDay(completed)).On(LawText.IsoDay(completed));
            var days = Steps.Take(5).Select(s => assessment.Get($"back-plan.{s}").ActBy!.Value)
                .Append(assessment.Get("claim-of-lien.last-day").ActBy!.Value).ToArray();
            Assert.Equal(days.Distinct().Order(), days);
            Assert.All(days, d => Assert.True(OpenDays.Statutory.IsOpen(d)));
        }
    }

    [Theory]
    [InlineData("2026-07-30", Standing.Open)]
    [InlineData("2026-07-31", Standing.InDoubt)]
    public void A_step_whose_day_has_passed_is_in_doubt_not_lost(string asOf, Standing expected) =>
        Assert.Equal(expected, Job("2026-05-04").On(asOf).Get("back-plan.counter").Standing);

    [Fact]
    public void There_is_no_plan_once_the_claim_is_recorded_or_late_or_its_day_unknown()
    {
        Assert.All(Days(Job("2026-05-04").ClaimRecorded("2026-05-11").On("2026-06-01")), Assert.Null);
        Assert.All(Days(Job("2026-05-04").On("2026-08-10")), Assert.Null);
        Assert.All(Days(new JobBuilder().Work(w => w with { SubjectToAcceptanceBy = "City of Davis", PublicTakesOver = true })
            .Notice("2026-03-02").Furnished("2026-03-02", 1m).On("2026-06-01")), Assert.Null);
    }

    // Act by Friday 31 July; ten days of mail end on Tuesday 21 July, three days in hand on Tuesday 28 July.
    [Fact]
    public void A_backlog_and_a_reserve_of_ones_own_are_reckoned_with()
    {
        var assessment = Assessment.Of(Job("2026-05-04").Build(), JobBuilder.Day("2026-06-01"), OpenDays.Statutory,
            new PlanSettings { MailBacklogDays = 10, ReserveDays = 3 });
        Assert.Equal("2026-07-21", assessment.Get("back-plan.mail-to-recorder").Plan());
        Assert.Equal("2026-07-28", assessment.Get("back-plan.counter").Plan());
    }

    [Fact]
    public void A_countys_own_closing_days_are_passed_over()
    {
        var closed = new CountyClosing("Yolo", JobBuilder.Day("2026-07-30"), "a day of mourning", "invented for this test",
            JobBuilder.Day("2026-06-01"));
        var assessment = Assessment.Of(Job("2026-05-04").Build(), JobBuilder.Day("2026-06-01"), OpenDays.ForCounty("Yolo", [closed]));
        Assert.Equal("2026-07-29", assessment.Get("back-plan.counter").Plan());
    }
}
