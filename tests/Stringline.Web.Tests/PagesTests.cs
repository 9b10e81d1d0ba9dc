using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Stringline.Office.DemoOffice;
using Stringline.Law;
using Stringline.Law.Counting;
using Stringline.Store;

namespace Stringline.Web.Tests;

/// <summary>
/// The pages with the demo office. The checks of what is safe come from outside: the names of the headers and what they forbid are those of
/// the web's standards (CSP Level 3, RFC 9110).
/// </summary>
public sealed partial class PagesTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/?only=now")]
    [InlineData("/?remedy=Claim%20of%20lien&county=Yolo")]
    [InlineData("/law")]
    [InlineData("/jobs/new")]
    [InlineData("/search")]
    [InlineData("/search?for=fenn")]
    [InlineData("/searches?county=Yolo")]
    public async Task A_page_answers_with_the_caution_and_without_code_or_style_inside(string address)
    {
        var page = await desk.Page(address);
        Assert.Contains(Assessment.Caution, page, StringComparison.Ordinal);
        Assert.DoesNotMatch(InlineCode(), page);
    }

    [Fact]
    public async Task Every_job_of_the_demo_office_has_its_line_and_its_amount()
    {
        for (var job = 1; job <= DemoJobs.Usual; job++)
        {
            var page = await desk.Page($"/job/{job}");
            Assert.Contains("<svg", page, StringComparison.Ordinal);
            Assert.Contains(Assessment.Caution, page, StringComparison.Ordinal);
            Assert.DoesNotMatch(InlineCode(), page);
            foreach (Match link in LinkInside().Matches(page))
                Assert.Contains($"id=\"{link.Groups[1].Value}\"", page, StringComparison.Ordinal);
            Assert.Contains(Assessment.Caution, await desk.Page($"/job/{job}/amount"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_job_as_known_on_an_earlier_day_leaves_out_what_came_later()
    {
        var later = await desk.Page("/job/11");
        var earlier = await desk.Page("/job/11?known=2026-05-20");
        Assert.Contains("Said to be complete", later, StringComparison.Ordinal);
        Assert.DoesNotContain("Said to be complete", earlier, StringComparison.Ordinal);
        Assert.Contains("As known on", earlier, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/job/11?known=tomorrow")]
    [InlineData("/job/11?known=2027-01-01")]
    [InlineData("/job/11?from=2026-13-01")]
    public async Task A_day_that_cannot_be_taken_is_said_and_the_job_is_shown(string address)
    {
        var page = await desk.Page(address);
        Assert.Contains("role=\"alert\"", page, StringComparison.Ordinal);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/job/4711")]
    [InlineData("/job/4711/amount")]
    [InlineData("/no-such-page")]
    [InlineData("/searches?county=Nowhere")]
    public async Task What_is_not_there_is_answered_404_in_words(string address)
    {
        using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("Not here", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_goes_by_day_and_of_one_day_by_dollars()
    {
        var all = desk.Journal.Steps(new StepQuery(StepFilter.None, new LocalDate(1, 1, 1), new LocalDate(9999, 12, 31), 1000));
        var expected = all.Where(line => line.Step.ActBy <= OpenDesk.Today).OrderBy(line => line.Step.ActBy)
            .ThenByDescending(line => line.Step.AtStake ?? 0).Select(line => line.Name).ToList();
        Assert.NotEmpty(expected);
        var page = await desk.Page("/?only=now");
        Assert.Equal(expected.Take(3), JobLink().Matches(page).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value)).Take(3));

        var whole = await desk.Page("/");
        var titles = ((string[])["Today or overdue", "This week", "Next 30 days", "Later"]).Select(title =>
            whole.IndexOf($">{title}</h2>", StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, titles);
        Assert.Equal(titles.Order(), titles);
    }

    [Fact]
    public async Task The_sums_of_the_sections_are_those_of_the_assessments_each_job_once()
    {
        var expected = Enumerable.Range(1, DemoJobs.Usual)
            .Select(id => desk.Office.Open(id)!.Assessment.Next.FirstOrDefault(step => !step.Watch)?.AtStake ?? 0m).Sum();
        var page = await desk.Page("/");
        var shown = Sum().Matches(page)
            .Sum(match => decimal.Parse(match.Groups[1].Value.TrimStart('$'), NumberStyles.Number, CultureInfo.InvariantCulture));
        Assert.Equal(expected, shown);
    }

    [Fact]
    public async Task The_file_of_the_list_has_a_row_for_every_step()
    {
        var steps = Enumerable.Range(1, DemoJobs.Usual).Sum(id => desk.Office.Open(id)!.Assessment.Next.Count);
        var rows = (await desk.Page("/desk.csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(steps + 1, rows.Length);
    }

    [Fact]
    public async Task A_link_to_a_section_leads_to_a_place_on_the_page_of_the_law()
    {
        var law = await desk.Page("/law");
        var links = SectionLink().Matches(await desk.Page("/job/1")).Select(match => match.Groups[1].Value).Distinct().ToList();
        Assert.NotEmpty(links);
        Assert.All(links, anchor => Assert.Contains($"id=\"{anchor}\"", law, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Days_stand_with_their_weekday()
    {
        var page = await desk.Page("/job/1");
        foreach (Match time in Time().Matches(page))
        {
            var day = NodaTime.Text.LocalDatePattern.Iso.Parse(time.Groups[1].Value).Value;
            Assert.Equal(LawText.Day(day), time.Groups[2].Value);
        }
    }

    [GeneratedRegex("""<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=""")]
    private static partial Regex InlineCode();

    [GeneratedRegex("""href="#([^"]+)["]""")]
    private static partial Regex LinkInside();

    [GeneratedRegex("""<td data-label="Job"><a href="/job/\d+">([^<]+)</a>""")]
    private static partial Regex JobLink();

    [GeneratedRegex("""<strong class="money">([^<]+)</strong> at stake""")]
    private static partial Regex Sum();

    [GeneratedRegex("""href="/law#([^"]+)["]""")]
    private static partial Regex SectionLink();

    [GeneratedRegex("""<time datetime="([^"]+)">([^<]+)</time>""")]
    private static partial Regex Time();
}
