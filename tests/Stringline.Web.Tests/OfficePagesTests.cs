using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Stringline.Office.Customers;
using Stringline.Office.Settings;
using Stringline.Law;

namespace Stringline.Web.Tests;

/// <summary>
/// Customers, calendar, settings. Holidays are those of Gov. Code § 6700 and Code Civ. Proc. § 135; sums are added here from the demo
/// office's own jobs.
/// </summary>
public sealed partial class OfficePagesTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Theory]
    [InlineData("/customers")]
    [InlineData("/calendar")]
    [InlineData("/calendar?from=2026-09-07&weeks=1")]
    [InlineData("/settings")]
    public async Task A_page_answers_with_the_caution_and_without_code_or_style_inside(string address)
    {
        var page = await desk.Page(address);
        Assert.Contains(Assessment.Caution, page, StringComparison.Ordinal);
        Assert.DoesNotMatch(InlineCode(), page);
    }

    [Fact]
    public async Task Every_customer_has_its_page_and_its_dollars_are_those_of_its_jobs()
    {
        var totals = desk.Journal.Customers(OpenDesk.Today, "", 100);
        Assert.Equal(8, totals.Count);      // the demo office has forty jobs for eight customers
        Assert.Equal(40, totals.Sum(total => total.Jobs));
        var list = WebUtility.HtmlDecode(await desk.Page("/customers"));
        foreach (var total in totals)
        {
            Assert.Contains(total.Customer, list, StringComparison.Ordinal);
            var jobs = Enumerable.Range(1, 40).Select(id => desk.Office.Open(id)!).Where(job => job.Customer == total.Customer).ToList();
            Assert.Equal(jobs.Sum(job => Security.Of(job.Assessment).Owed), total.Owed);
            Assert.True(total.Held >= 0 && total.MaySecure >= 0 && total.Unsecured >= 0);
            var page = await desk.Page("/customer?name=" + Uri.EscapeDataString(total.Customer));
            Assert.Contains("<svg", page, StringComparison.Ordinal);
            Assert.DoesNotMatch(InlineCode(), page);
            Assert.All(jobs, job => Assert.Contains($"href=\"/job/{job.Id}\"", page, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task A_customer_nobody_knows_is_not_found()
    {
        using var answer =
            await desk.Browser.GetAsync(new Uri("/customer?name=Nobody", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public void Ahead_of_today_what_is_owed_stays_and_what_is_secured_only_falls()
    {
        foreach (var total in desk.Journal.Customers(OpenDesk.Today, "", 100))
        {
            var weeks = CustomerWeeks.Of(CustomerBook.Of(desk.Journal, total.Customer)!, desk.Office);
            Assert.Equal(CustomerWeeks.Behind, weeks.Past.Count);
            Assert.Equal((total.Owed, total.Held, total.MaySecure), (weeks.Ahead[0].Owed, weeks.Ahead[0].Held, weeks.Ahead[0].MaySecure));
            for (var week = 1; week < weeks.Ahead.Count; week++)
            {
                Assert.Equal(weeks.Ahead[0].Owed, weeks.Ahead[week].Owed);
                Assert.True(weeks.Ahead[week].Unsecured >= weeks.Ahead[week - 1].Unsecured);
            }
        }
    }

    [Fact]
    public async Task The_calendar_has_every_step_in_its_week()
    {
        var page = await desk.Page("/calendar?from=2026-07-15&weeks=53");
        var steps = Enumerable.Range(1, 40)
            .SelectMany(id => desk.Office.Open(id)!.Assessment.Next.Where(step => !step.Watch).Select(step => (id, step))).ToList();
        var shown = steps.Count(one => one.step.ActBy < new LocalDate(2026, 7, 13).PlusWeeks(53));
        Assert.Equal(shown, DueLine().Count(page));
    }

    [Fact]
    public async Task The_calendar_file_has_an_event_for_every_step_with_the_offices_reminders()
    {
        // RFC 5545 §§ 3.4, 3.6.1, 3.6.6: one VEVENT for each step, an alarm inside it for each reminder that still lies ahead.
        var file = await desk.Page("/calendar.ics");
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", file, StringComparison.Ordinal);
        var steps = Enumerable.Range(1, 40).SelectMany(id => desk.Office.Open(id)!.Assessment.Next.Where(step => !step.Watch)).ToList();
        Assert.Equal(steps.Count, file.Split("BEGIN:VEVENT").Length - 1);
        var alarms = steps.Sum(step =>
            desk.Office.Settings.Reminders.Count(days => step.ActBy >= OpenDesk.Today && step.ActBy.PlusDays(-days) >= OpenDesk.Today));
        Assert.Equal(alarms, file.Split("BEGIN:VALARM").Length - 1);
        Assert.Contains("/calendar.ics", await desk.Page("/calendar"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-09-07", "Labor Day")]         // first Monday in September: Gov. Code § 6700(a), Code Civ. Proc. § 135
    [InlineData("2026-11-26", "Thanksgiving")]      // Thursday in November appointed as Thanksgiving Day
    [InlineData("2026-10-12", "Columbus Day")]      // second Monday in October: on the State's list, not the courts'
    public async Task The_calendar_shows_the_days_on_which_offices_are_closed(string day, string holiday)
    {
        var page = await desk.Page($"/calendar?from={day}&weeks=1");
        Assert.Matches($"datetime=\"{day}\"[\\s\\S]*Closed: [^<]*{holiday}", page);
    }

    [Fact]
    public async Task A_day_that_cannot_be_read_is_said()
    {
        Assert.Contains("role=\"alert\"", await desk.Page("/calendar?from=tomorrow"), StringComparison.Ordinal);
        Assert.Contains("role=\"alert\"", await desk.Page("/calendar?from=9998-01-01"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_are_kept_used_and_never_written_over_unseen()
    {
        // Sixty calendar days by mail instead of forty-two: the last day to mail is a plain count of days before the day to act by.
        var job = Enumerable.Range(1, 40)
            .First(id => desk.Office.Open(id)!.Assessment.Find("back-plan.mail-to-recorder") is { ActBy: not null });
        var seen = desk.Journal.ReadSettings();
        try
        {
            using (var answer =
                await Post(new() { ["Form.Name"] = "Millrace office", ["Form.Signers"] = "Ana Ruiz, credit manager", ["Form.Reminders"] =
                    "21, 7", ["Form.MailBacklogDays"] = "60", ["Form.IndexLagDays"] = "5", ["Form.ReserveDays"] = "1" }))
                Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            var kept = OfficeSettings.Of(desk.Journal);
            Assert.Equal([21, 7], kept.Reminders);
            Assert.Equal((60, "Ana Ruiz", "credit manager"), (kept.Plan.MailBacklogDays, kept.Signers[0].Name, kept.Signers[0].Title));
            Assert.DoesNotContain('\n', desk.Journal.ReadSettings()!);     // HTML Standard, form submission: line breaks come back as CR LF
            Assert.Contains("Millrace office", await desk.Page("/"), StringComparison.Ordinal);
            var open = desk.Office.Open(job)!.Assessment;
            var latest = open.Find("claim-of-lien.last-day")!.ActBy!.Value.PlusDays(-60);
            Assert.InRange(open.Find("back-plan.mail-to-recorder")!.ActBy!.Value, latest.PlusDays(-6), latest);

            Assert.False(desk.Journal.WriteSettings("something else", "{}"));
            using var bad =
                await Post(new() { ["Form.MailBacklogDays"] = "soon", ["Form.IndexLagDays"] = "5", ["Form.ReserveDays"] = "1",
                    ["Form.Reminders"] = "0" });
            Assert.Equal(HttpStatusCode.OK, bad.StatusCode);
            var page = await bad.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.Contains("a whole number from 0 to 180", page, StringComparison.Ordinal);
            Assert.Contains("whole numbers from 1 to 180", page, StringComparison.Ordinal);
            Assert.Equal(60, OfficeSettings.Of(desk.Journal).Plan.MailBacklogDays);
        }
        finally
        {
            desk.Journal.WriteSettings(desk.Journal.ReadSettings(), seen ?? OfficeSettings.Default.Document());
        }
    }

    [Fact]
    public async Task A_county_whose_page_was_not_read_is_marked_so()
    {
        // data/recorders.csv: Of Glenn no page was read, Alameda's was read.
        var page = await desk.Page("/settings");
        Assert.Matches(">Glenn\\s*<[\\s\\S]*?from memory: call the office", page);
        Assert.Matches(">Alameda\\s*<[\\s\\S]*?auditor.alamedacountyca.gov", page);
    }

    [Fact]
    public async Task The_page_of_the_law_says_most_rules_in_words_and_names_their_tests()
    {
        var page = await desk.Page("/law");
        Assert.True(Words().Count(page) > 100, Words().Count(page).ToString(CultureInfo.InvariantCulture));
        Assert.DoesNotMatch("no test names it[\\s\\S]*no test names it[\\s\\S]*no test names it", page);
    }

    private async Task<HttpResponseMessage> Post(Dictionary<string, string> fields)
    {
        var page = await desk.Page("/settings");
        fields["__RequestVerificationToken"] = Seal().Match(page).Groups[1].Value;
        fields["Seen"] = desk.Journal.ReadSettings() ?? "";
        return await desk.Browser.PostAsync(new Uri("/settings", UriKind.Relative), new FormUrlEncodedContent(fields));
    }

    [GeneratedRegex("""<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=""")]
    private static partial Regex InlineCode();

    [GeneratedRegex("""<span class="for">""")]
    private static partial Regex DueLine();

    [GeneratedRegex("""<p>[A-Z][^<]{20,}</p>""")]
    private static partial Regex Words();

    [GeneratedRegex("""name="__RequestVerificationToken" type="hidden" value="([^"]+)["]""")]
    private static partial Regex Seal();
}
