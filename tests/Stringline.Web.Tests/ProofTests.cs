using System.Net;
using System.Text;
using Stringline.Store;

namespace Stringline.Web.Tests;

/// <summary>
/// Papers that prove entries, sent and handed out. What is safe comes from outside: RFC 6266 (attachment), the WHATWG's nosniff.
/// </summary>
public sealed class ProofTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    // The least that begins and ends as ISO 32000-1, 7.5.2 and 7.5.5 say; with a page's markup inside, as a hostile file would have.
    private static readonly byte[] Pdf = Encoding.ASCII.GetBytes("%PDF-1.7\n<script>alert(1)</script>\n%%EOF\n");

    [Fact]
    public async Task A_page_that_is_named_as_a_pdf_is_refused_and_nothing_is_written()
    {
        var id = Put();
        var page = await Search(id).Attach("receipt.pdf", "<html><script>alert(1)</script></html>"u8.ToArray()).Look();
        Assert.Contains("id=\"fault-proof\"", page, StringComparison.Ordinal);
        Assert.Contains("was not taken", page, StringComparison.Ordinal);
        Assert.Equal(2, desk.Office.Open(id)!.Facts.Entries.Count);
    }

    [Fact]
    public async Task A_paper_goes_with_its_entry_and_comes_back_only_as_a_download_named_after_its_content()
    {
        var id = Put();
        await Search(id).Attach("receipt.html", Pdf).Save();
        var page = await desk.Page($"/job/{id}");
        var address = $"/job/{id}/proof/{desk.Office.Open(id)!.Stored.Tip.Sequence}/0";
        Assert.Contains($"href=\"{address}\"", page, StringComparison.Ordinal);
        using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("receipt.html.pdf", answer.Content.Headers.ContentDisposition.FileName!.Trim('"'));
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal(Pdf, await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_paper_is_kept_while_what_is_wrong_is_mended()
    {
        var id = Put();
        var form = new FilledForm(desk, $"/job/{id}/enter?what=index-searched").With("f-when", "on").With("f-when-on", "")
            .Attach("search.pdf", Pdf);
        var page = await form.Look();
        Assert.Contains("id=\"fault-when\"", page, StringComparison.Ordinal);
        Assert.Matches("""name="Kept" value="[0-9a-f]{32}" checked> search.pdf""", page);
    }

    [Fact]
    public async Task A_paper_is_attached_to_an_entry_made_earlier()
    {
        var id = Put();
        using var empty = await Prove(id, null);
        Assert.Contains("Choose a file", await empty.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
        using var answer = await Prove(id, Pdf);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("delivery ticket.pdf", Assert.Single(desk.Office.Open(id)!.Stored.ProofsOf(0)).Name);
        Assert.Empty(desk.Office.Open(id)!.Stored.ProofsOf(1));
        Assert.Contains("delivery ticket.pdf", await desk.Page($"/job/{id}"), StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> Prove(long id, byte[]? paper)
    {
        var address = $"/job/{id}/prove?entry=0";
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in FilledForm.Hidden(await desk.Page(address)))
            content.Add(new StringContent(value), $"\"{name}\"");
        if (paper is not null)
            content.Add(new ByteArrayContent(paper), "\"proof\"", "delivery ticket.pdf");
        return await desk.Browser.PostAsync(new Uri(address, UriKind.Relative), content);
    }

    private FilledForm Search(long id) =>
        new FilledForm(desk, $"/job/{id}/enter?what=index-searched").With("f-when", "on").With("f-when-on", "2026-07-15");

    private long Put() =>
        Assert.IsType<PutOutcome.Added>(desk.Office.Add(new KeyedJob(Guid.NewGuid().ToString("N"), DraftTests.Owed()))).Job;
}
