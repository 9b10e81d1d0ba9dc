using Stringline.Law.Facts;
using Stringline.Law.Plan;
using Stringline.Law.Reasoning;
using Stringline.Law.Counting;
using static Stringline.Testing.JobBuilder;

namespace Stringline.Law.Tests.Plan;

/// <summary>How often the county index is searched.</summary>
public sealed class IndexWatchTests
{
    private static JobBuilder Job(ClaimantRole role = ClaimantRole.Supplier) =>
        new JobBuilder().Role(role, role == ClaimantRole.DirectContractor ? "owner" : "direct")
        .Notice("2026-01-05").Furnished("2026-01-05", 1m);

    /// <summary>
    /// Against the calendar itself, for a search on every day of five years: the earliest notice of completion that this search could not
    /// see, because the index lags, must leave the whole back-plan when the next search finds it.
    /// </summary>
    [Theory]
    [InlineData(ClaimantRole.Supplier, 30)]
    [InlineData(ClaimantRole.DirectContractor, 60)]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void A_notice_of_completion_that_a_search_could_not_see_leaves_time_to_record_when_the_next_one_finds_it(ClaimantRole role,
        int window)
    {
        var calendar = OpenDays.Statutory;
        var settings = PlanSettings.Default;
        var shortest = int.MaxValue;
        for (var searched = Day("2026-01-05"); searched < Day("2031-01-01"); searched = searched.PlusDays(1))
        {
            var day = LawText.IsoDay(searched);
            var next = Job(role).IndexSearched(day).On(day).Get("index-watch.next-day").ActBy!.Value;
            var unseen = searched;
            while (Shown(unseen.PlusDays(-1)) > searched)
                unseen = unseen.PlusDays(-1);
            var actBy = calendar.LastOpenDayOnOrBefore(unseen.PlusDays(window));
            Assert.True(next <= BackPlan.OpenDaysBefore(actBy, settings.ReserveDays + 4, calendar),
                $"searched {day}, next {next}, recorded {unseen}, act by {actBy}");
            Assert.True(next >= Shown(unseen), $"searched {day}: the search of {next} does not show what was recorded on {unseen}");
            shortest = Math.Min(shortest, NodaTime.Period.DaysBetween(searched, next));
        }

        // A watch that asks for a search every day would pass the check above and help nobody.
        Assert.InRange(shortest, 5, window);

        LocalDate Shown(LocalDate recorded)
        {
            var shown = recorded;
            for (var open = 0; open < settings.IndexLagDays;)
            {
                shown = shown.PlusDays(1);
                open += calendar.IsOpen(shown) ? 1 : 0;
            }

            return shown;
        }
    }

    // Saturday 4 July 2026 and its observance on Friday: the first open day is Monday.
    [Theory]
    [InlineData("2026-07-02", "2026-07-02")]
    [InlineData("2026-07-03", "2026-07-06")]
    public void Without_a_search_yet_it_is_due_on_the_first_open_day(string asOf, string expected) =>
        Assert.Equal(expected, Job().On(asOf).Get("index-watch.next-day").Plan());

    [Fact]
    public void The_last_search_counts_and_a_missed_day_is_in_doubt()
    {
        var job = Job().IndexSearched("2026-06-01").IndexSearched("2026-06-15");
        var next = job.On("2026-06-15").Get("index-watch.next-day");
        Assert.Equal(job.On("2026-06-20").Get("index-watch.next-day").ActBy, next.ActBy);
        Assert.Equal(Standing.Open, job.On(next.Plan()!).Get("index-watch.next-day").Standing);
        Assert.Equal(Standing.InDoubt, job.On(LawText.IsoDay(next.ActBy!.Value.PlusDays(1))).Get("index-watch.next-day").Standing);
    }

    [Theory]
    [InlineData(29, false)]
    [InlineData(30, true)]
    public void A_mail_backlog_as_long_as_the_window_is_an_alarm(int backlog, bool alarm) =>
        Assert.Equal(alarm,
            Assessment.Of(Job().Build(), Day("2026-06-01"), OpenDays.Statutory, new PlanSettings { MailBacklogDays = backlog })
                .Get("index-watch.next-day").Says("cannot be answered at all"));

    private static JobBuilder InTwo() => Job().Work(w => w with { Site = w.Site with { AlsoIn = ["Solano"] } });

    // Civ. Code § 8060(b): a notice may be recorded in any county in which a part of the work is.
    [Fact]
    [Proves("Civ. Code § 8060")]
    public void Of_a_site_in_two_counties_the_index_searched_least_lately_sets_the_day()
    {
        var one = InTwo().IndexSearched("2026-06-15", "Yolo").On("2026-06-15").Get("index-watch.next-day");
        Assert.Equal("2026-06-15", one.Plan());
        Assert.True(one.Says("no search yet of the index of Solano"));
        var both = InTwo().IndexSearched("2026-06-15", "Yolo").IndexSearched("2026-06-01", "Solano").On("2026-06-15")
            .Get("index-watch.next-day");
        Assert.Equal(Job().IndexSearched("2026-06-01").On("2026-06-15").Get("index-watch.next-day").Plan(), both.Plan());
        var other = InTwo().IndexSearched("2026-06-01", "Yolo").IndexSearched("2026-06-15", "Solano").On("2026-06-15")
            .Get("index-watch.next-day");
        Assert.Equal(both.Plan(), other.Plan());
        // In one county a search need not name it; in several one that names none is of nobody knows which.
        var unsaid = InTwo().IndexSearched("2026-06-15").On("2026-06-15").Get("index-watch.next-day");
        Assert.Equal("2026-06-15", unsaid.Plan());
        Assert.True(unsaid.Asks("(index-searched.county)"));
        Assert.True(Job().IndexSearched("?").On("2026-06-15").Get("index-watch.next-day").Asks("(index-searched.on)"));
    }

    // Bus. & Prof. Code § 7031(a): without a license nothing is left for which the index would be watched.
    [Fact]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void It_ends_where_the_license_bars_everything()
    {
        var unlicensed = Job(ClaimantRole.Subcontractor).Claimant(c => c with { License = new License { Required = true, Never = true } });
        Assert.Null(unlicensed.On("2026-06-01").Find("index-watch.next-day"));
        Assert.NotNull(Job(ClaimantRole.Subcontractor).Licensed("2012-06-01..").On("2026-06-01").Find("index-watch.next-day"));
        Assert.Null(unlicensed.PublicWork().On("2026-06-01").Find("index-watch.next-day"));
    }

    private const string Watch = "index-watch.next-day";

    // A stop payment notice is given before the time to record ends (§ 8508(b)): a recorded notice of completion cuts that time too.
    [Fact]
    [Proves("Civ. Code § 8414(b)(2)")]
    public void There_is_no_watch_before_the_first_work_or_after_claim_and_stop_payment_notice()
    {
        Assert.Null(new JobBuilder().On("2026-06-01").Find(Watch));
        var recorded = Job().Ended("2026-03-02").Completed("2026-05-04").ClaimRecorded("2026-05-11");
        Assert.True(recorded.On("2026-06-01").Get(Watch).Says("leaves 30 days"));
        Assert.Null(recorded.StopPaymentGiven("2026-05-12", 1m, false, "owner").On("2026-06-01").Find(Watch));
    }

    // Without a preliminary notice only the bond notice is left, for 15 days after a recorded notice of completion; without a license
    // nothing is.
    [Fact]
    [Proves("Civ. Code § 8612(b)")]
    [Proves("Bus. & Prof. Code § 7031(a)")]
    public void It_is_kept_for_what_is_left_only()
    {
        var bond = new JobBuilder().PaymentBond("2025-07-01", principal: "direct").Furnished("2025-08-05", 6430m).Ended("2025-08-05")
            .Completed("2025-10-22");
        var watch = bond.On("2025-12-01").Get(Watch);
        Assert.True(watch.Says("leaves 15 days"));
        Assert.Contains("Civ. Code § 8612(b)", watch.Sections);
        Assert.Null(bond.BondNoticeGiven("2025-11-03").On("2025-12-01").Find(Watch));

        var barred = new JobBuilder().Role(ClaimantRole.Subcontractor).Licensed("2025-09-15..").Furnished("2025-08-05", 6430m)
            .Ended("2025-08-05").Notice("2025-08-14");
        Assert.Equal(Standing.Lost, barred.On("2025-12-01").Get("license").Standing);
        Assert.Null(barred.On("2025-12-01").Find(Watch));
        Assert.Null(barred.PublicWork().On("2025-12-01").Find(Watch));
    }
}
