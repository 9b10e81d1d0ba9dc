using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Stringline.Office.DemoOffice;
using Stringline.Law;
using Stringline.Papers.Catalogue;
using Stringline.Testing;
using UglyToad.PdfPig;

namespace Stringline.Web.Tests;

/// <summary>
/// The pages that make papers. What a PDF and a zip are comes from their readers (PdfPig; System.IO.Compression), the headers from CSP
/// Level 3 and RFC 7034, what an unconditional waiver does from Civ. Code §§ 8134 and 8138.
/// </summary>
public sealed partial class PaperPagesTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Fact]
    public async Task Every_job_of_the_demo_office_shows_every_paper_once()
    {
        for (var job = 1; job <= DemoJobs.Usual; job++)
        {
            var page = await desk.Page($"/job/{job}/papers");
            Assert.Contains(Assessment.Caution, page, StringComparison.Ordinal);
            Assert.DoesNotMatch(InlineCode(), page);
            foreach (var paper in PaperCatalogue.All)
                Assert.Single(Regex.Matches(page, $"class=\"do\" href=\"/job/{job}/papers/{Regex.Escape(paper.Id)}\""));
        }
    }

    [Fact]
    [Slow(Slow.Lasting)]
    public async Task Every_paper_says_of_every_stage_of_a_job_what_is_missing_or_is_there()
    {
        // Two jobs in each of twenty stages; the first twenty show each stage once.
        for (var job = 1; job <= DemoJobs.Usual / 2; job++)
        {
            foreach (var paper in PaperCatalogue.All)
            {
                var page = await desk.Page($"/job/{job}/papers/{paper.Id}");
                Assert.DoesNotMatch(InlineCode(), page);
                Assert.True(
                    page.Contains("id=\"s-missing\"", StringComparison.Ordinal) || page.Contains("id=\"s-made\"", StringComparison.Ordinal)
                        || page.Contains("not made yet", StringComparison.Ordinal),
                    $"Job {job}, {paper.Id}: neither made nor refused.");
                Assert.DoesNotContain("--payment-cleared", page, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public async Task The_steps_of_the_desk_lead_to_the_papers_that_do_them()
    {
        using var straight = await desk.Browser.GetAsync(new Uri("/job/1/papers?for=claim-of-lien.last-day", UriKind.Relative),
            TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, straight.StatusCode);
        Assert.Equal("/job/1/papers/claim", straight.Headers.Location!.ToString());
        var list = await desk.Page("/job/1/papers?for=payment-bond.action-last-day");
        Assert.Contains("What fits now", list, StringComparison.Ordinal);
        Assert.Contains("/job/1/papers?for=claim-of-lien.last-day", await desk.Page("/job/1"), StringComparison.Ordinal);
    }

    /// <summary>The kind of notice is chosen by its words; what is chosen stays chosen, and leads from the notice itself.</summary>
    [Fact]
    public async Task A_proof_of_notice_asks_for_its_kind_in_words()
    {
        var page = WebUtility.HtmlDecode(await desk.Page("/job/1/papers/proof-of-notice?kind=stop-payment"));
        Assert.Contains("Which notice is proved", page, StringComparison.Ordinal);
        foreach (var kind in ProvedNotices.All)
            Assert.Matches($"<option value=\"{kind.Word()}\"[^>]*>{Regex.Escape(kind.Words())}</option>", page);
        Assert.Single(Regex.Matches(page, "<option[^>]* selected"));
        Assert.Contains("/job/1/papers/proof-of-notice?kind=stop-payment", await desk.Page("/job/1/papers/stop-payment-notice"),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_made_paper_is_shown_opened_saved_printed_and_packed_as_the_same_bytes()
    {
        var (address, page) = await Made();
        var files = FrameSource().Matches(page).Select(match => WebUtility.HtmlDecode(match.Groups[1].Value)).ToList();
        Assert.True(files.Count >= 2, address);
        var pages = 0;
        var bytes = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var names = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in files)
        {
            using var answer = await desk.Browser.GetAsync(new Uri(file, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal("SAMEORIGIN", string.Join(",", answer.Headers.GetValues("X-Frame-Options")));
            Assert.Contains("frame-ancestors 'self'", string.Join(",", answer.Headers.GetValues("Content-Security-Policy")),
                StringComparison.Ordinal);
            var content = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            bytes.Add(FileName().Match(file).Groups[1].Value, content);
            using var pdf = PdfDocument.Open(content);
            pages += pdf.NumberOfPages;
            using var saved =
                await desk.Browser.GetAsync(new Uri(file + "&save=true", UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal("attachment", saved.Content.Headers.ContentDisposition!.DispositionType);
            names.Add(FileName().Match(file).Groups[1].Value, saved.Content.Headers.ContentDisposition.FileName!.Trim('"'));
            Assert.Equal(content, await saved.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
        }

        using var packet =
            PdfDocument.Open(
                await Bytes(files[0].Replace(FileName().Match(files[0]).Groups[1].Value, "packet.pdf", StringComparison.Ordinal)));
        Assert.Equal(pages, packet.NumberOfPages);
        using var zip =
            new ZipArchive(
                new MemoryStream(
                    await Bytes(files[0].Replace(FileName().Match(files[0]).Groups[1].Value, "papers.zip", StringComparison.Ordinal))));
        Assert.All(names.Values, name => Assert.Matches("^[a-z0-9-]+_[a-z0-9-]+(_[a-z0-9-]+)*_20[0-9-]{8}[.]pdf$", name));
        Assert.Equal(names.Values.Order(StringComparer.Ordinal), zip.Entries.Select(entry => entry.FullName).Order(StringComparer.Ordinal));
        foreach (var entry in zip.Entries)
        {
            using var content = new MemoryStream();
            using var stream = entry.Open();
            await stream.CopyToAsync(content, TestContext.Current.CancellationToken);
            Assert.Equal(bytes[names.Single(name => name.Value == entry.FullName).Key], content.ToArray());
        }
    }

    [Fact]
    public async Task Only_the_page_that_shows_papers_may_have_frames_and_only_of_its_own_desk()
    {
        var (address, page) = await Made();
        using var showing = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        var policy = string.Join(",", showing.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("frame-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.All(FrameSource().Matches(page).Select(match => match.Groups[1].Value), source =>
            Assert.StartsWith("/job/", source, StringComparison.Ordinal));
        using var list = await desk.Browser.GetAsync(new Uri("/job/1/papers", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Contains("object-src 'none'", string.Join(",", list.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("waiver-8134", "through=2026-06-01&amount=100.00")]
    [InlineData("waiver-8138", "")]
    public async Task An_unconditional_waiver_is_not_made_before_its_effect_is_confirmed_with_the_day_the_payment_cleared(string paper,
        string told)
    {
        // Civ. Code §§ 8134, 8138: the forms bind though the claimant was not paid.
        var at = desk.Office.Open(6)!.Stored.Tip.Sequence;
        foreach (var halfway in (string[])[$"?{told}", $"?{told}&confirmed=yes", $"?{told}&payment-cleared=2026-07-01"])
        {
            var page = await desk.Page($"/job/6/papers/{paper}{halfway}");
            Assert.Contains("paid or not", page, StringComparison.Ordinal);
            Assert.DoesNotContain("id=\"s-made\"", page, StringComparison.Ordinal);
            using var packet = await desk.Browser.GetAsync(new Uri($"/job/6/papers/{paper}/packet.pdf{halfway}&at={at}", UriKind.Relative),
                TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, packet.StatusCode);
        }

        // What it gives away is said in dollars, and typed: the tick alone does not make it.
        var confirmed = $"?{told}&payment-cleared=2026-07-01&confirmed=yes";
        var asking = await desk.Page($"/job/6/papers/{paper}{confirmed}");
        Assert.Contains("id=\"given-away\"", asking, StringComparison.Ordinal);
        Assert.Contains("href=\"#field-releases\"", asking, StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"s-made\"", asking, StringComparison.Ordinal);
        var figure = ReleasedFigure().Match(asking).Groups[1].Value;
        Assert.DoesNotContain("id=\"s-made\"", await desk.Page($"/job/6/papers/{paper}{confirmed}&releases=1{figure}"),
            StringComparison.Ordinal);
        using var untyped = await desk.Browser.GetAsync(new Uri($"/job/6/papers/{paper}/packet.pdf{confirmed}&at={at}", UriKind.Relative),
            TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, untyped.StatusCode);
        confirmed += $"&releases={figure}";
        Assert.Contains("id=\"s-made\"", await desk.Page($"/job/6/papers/{paper}{confirmed}"), StringComparison.Ordinal);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString((await Bytes($"/job/6/papers/{paper}/packet.pdf{confirmed}&at={at}")).AsSpan(0, 5)));
    }

    /// <summary>Released, paid, and the difference stand in a table; a day to come is asked for a second time.</summary>
    [Fact]
    public async Task A_waiver_says_what_it_gives_away_and_asks_for_a_day_to_come_twice()
    {
        const string told = "/job/6/papers/waiver-8132?amount=100.00&maker=X&through=2099-06-01";
        var page = await desk.Page(told);
        Assert.Contains("$100.00", Away().Match(page).Value, StringComparison.Ordinal);
        Assert.Contains("more than the payment of $100.00", Away().Match(page).Value, StringComparison.Ordinal);
        Assert.Contains("Monday, June 1, 2099", page, StringComparison.Ordinal);
        Assert.Contains("href=\"#field-through-again\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("2099-06-01", string.Concat(ListItem().Matches(page).Select(m => m.Value)), StringComparison.Ordinal);
        var figure = ReleasedFigure().Match(page).Groups[1].Value;
        var typed = $"{told}&releases={figure}";
        Assert.DoesNotContain("id=\"s-made\"", await desk.Page(typed), StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"s-made\"", await desk.Page($"{typed}&through-again=2099-06-02"), StringComparison.Ordinal);
        Assert.Contains("id=\"s-made\"", await desk.Page($"{typed}&through-again=2099-06-01"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_missing_is_said_with_the_place_to_mend_it()
    {
        var page = await desk.Page("/job/6/papers/waiver-8132");
        Assert.Contains("href=\"#field-maker\"", page, StringComparison.Ordinal);
        Assert.Contains("id=\"field-maker\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_read_is_shown_as_typed_with_what_would_be_right()
    {
        var page = await desk.Page("/job/6/papers/waiver-8132?amount=12%2C5x&through=soon");
        Assert.Contains("12,5x", page, StringComparison.Ordinal);
        Assert.Contains("such as 12,500.00", page, StringComparison.Ordinal);
        Assert.Contains("id=\"fault-through\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"s-made\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_link_to_a_paper_of_a_job_that_changed_since_is_refused_in_words()
    {
        using var answer = await desk.Browser.GetAsync(new Uri("/job/1/papers/claim/packet.pdf?at=1&draft=yes", UriKind.Relative),
            TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("The job has changed", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/job/4711/papers")]
    [InlineData("/job/4711/papers/claim")]
    [InlineData("/job/1/papers/no-such-paper")]
    [InlineData("/job/1/papers/claim/no-such-file.pdf?at=1")]
    public async Task What_is_not_there_is_not_found(string address)
    {
        if (address.Contains("at=1", StringComparison.Ordinal))
            address = address.Replace("at=1", $"draft=yes&at={desk.Office.Open(1)!.Stored.Tip.Sequence}", StringComparison.Ordinal);
        using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    // A paper that some job of the demo office lacks nothing for; a preliminary notice needs the least.
    private async Task<(string Address, string Page)> Made()
    {
        for (var job = 1; job <= DemoJobs.Usual; job++)
        {
            var address = $"/job/{job}/papers/preliminary-notice";
            var page = await desk.Page(address);
            if (page.Contains("id=\"s-made\"", StringComparison.Ordinal))
                return (address, page);
        }

        throw new InvalidOperationException("No job of the demo office lets a preliminary notice be made.");
    }

    private async Task<byte[]> Bytes(string address)
    {
        using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsByteArrayAsync();
    }

    [GeneratedRegex("""<script(?![^>]*\bsrc=)|<style|\sstyle=|\son[a-z]+=""")]
    private static partial Regex InlineCode();

    [GeneratedRegex("""<iframe class="sheet" src="([^"]+)["]""")]
    private static partial Regex FrameSource();

    [GeneratedRegex("""/([^/?]+)\?""")]
    private static partial Regex FileName();

    [GeneratedRegex(@"\$([\d,]+\.\d\d) is released")]
    private static partial Regex ReleasedFigure();

    [GeneratedRegex("<div class=\"note[^>]*id=\"given-away\".*?</div>", RegexOptions.Singleline)]
    private static partial Regex Away();

    [GeneratedRegex("<li>.*?</li>", RegexOptions.Singleline)]
    private static partial Regex ListItem();
}
