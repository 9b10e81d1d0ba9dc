using System.Net;
using System.Text.RegularExpressions;

namespace Stringline.Web.Tests;

/// <summary>What the desk refuses, and what it tells the browser to refuse.</summary>
public sealed partial class SafetyTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    [Theory]
    [InlineData("/")]
    [InlineData("/no-such-page")]
    [InlineData("/assets/desk.css")]
    [InlineData("/desk.csv")]
    [InlineData("/desk.xlsx")]
    public async Task Every_answer_carries_the_headers(string address)
    {
        using var answer = await desk.Browser.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
        string Header(string name) => answer.Headers.TryGetValues(name, out var values) ? string.Join(",", values) : "";

        // Content Security Policy Level 3: without 'unsafe-inline' neither script nor style inside the page runs.
        var policy = Header("Content-Security-Policy");
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Header("X-Content-Type-Options"));
        Assert.Equal("DENY", Header("X-Frame-Options"));
        Assert.Equal("same-origin", Header("Referrer-Policy"));
        Assert.Equal("", Header("Server"));
    }

    [Theory]
    [InlineData("stringline.example")]
    [InlineData("127.0.0.1.example")]
    [InlineData("10.0.0.7")]
    public async Task A_request_under_another_name_is_refused(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/", UriKind.Relative));
        request.Headers.Host = host;
        using var answer = await desk.Browser.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MisdirectedRequest, answer.StatusCode);
        Assert.DoesNotContain("What needs doing", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_its_seal_writes_nothing()
    {
        var before = desk.Journal.CountJobs();
        using var answer = await desk.Browser.PostAsync(new Uri("/jobs/new", UriKind.Relative),
            new FormUrlEncodedContent(NewJob("Unsealed")), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("Nothing was written", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
        Assert.Equal(before, desk.Journal.CountJobs());
    }

    [Fact]
    public async Task A_hostile_name_is_shown_as_it_is_written_and_becomes_no_markup()
    {
        const string hostile = "<script>alert(1)</script>\"'><img src=x onerror=alert(2)>";
        using var answer = await Post(NewJob(hostile));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var job = answer.Headers.Location!.ToString();
        foreach (var address in (string[])[job, job + "/amount", "/", "/search?for=alert"])
        {
            var page = await desk.Page(address);
            Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        }

        Assert.Contains("&lt;script&gt;alert(1)", await desk.Page(job), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_job_is_on_the_desk_at_once_and_says_what_is_due()
    {
        using var answer = await Post(NewJob("Sawpit Row") with { First = "2026-07-10" });
        var page = await desk.Page(answer.Headers.Location!.ToString());
        Assert.Contains("Give the preliminary notice", page, StringComparison.Ordinal);
        Assert.Contains("Sawpit Row", await desk.Page("/?customer=Hostile%20Framing"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_entered_by_hand_has_the_offices_own_number_by_which_tables_reach_it()
    {
        using var answer = await Post(NewJob("Numbered Row") with { Number = " 26-0417 " });
        var job = answer.Headers.Location!.ToString();
        Assert.Equal("Numbered Row", desk.Journal.Find("26-0417")!.Job.Name);
        Assert.Contains("Job number 26-0417", await desk.Page(job), StringComparison.Ordinal);
        Assert.Contains("Numbered Row", await desk.Page("/search?for=26-0417"), StringComparison.Ordinal);

        var before = desk.Journal.Check().Seal;
        using var again = await Post(NewJob("Another Row") with { Number = "26-0417" });
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
        var page = WebUtility.HtmlDecode(await again.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Contains("The job \"Numbered Row\" has this number", page, StringComparison.Ordinal);
        Assert.Contains($"href=\"{job}\"", page, StringComparison.Ordinal);
        Assert.Contains("Another Row", page, StringComparison.Ordinal);
        Assert.Equal(before, desk.Journal.Check().Seal);
    }

    [Fact]
    public async Task A_number_that_cannot_be_kept_is_refused_beside_its_field()
    {
        using var answer = await Post(NewJob("Number too long") with { Number = new string('7', 300) });
        Assert.Contains("this one has 300", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_that_is_not_right_is_shown_again_with_what_was_typed_and_what_would_be_right()
    {
        var before = desk.Journal.CountJobs();
        using var answer = await Post(NewJob("Kept as typed") with { County = "Nowhere", Price = "12,5x" });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var page = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("Kept as typed", page, StringComparison.Ordinal);
        Assert.Contains("58 counties", page, StringComparison.Ordinal);
        Assert.Contains("12,5x", page, StringComparison.Ordinal);
        Assert.Equal(before, desk.Journal.CountJobs());
    }

    [Fact]
    public async Task A_cell_that_a_spreadsheet_would_take_for_a_formula_is_none()
    {
        using var answer = await Post(NewJob("=HYPERLINK(\"x\")") with { First = "2026-07-10" });
        Assert.Contains("\"'=HYPERLINK(\"\"x\"\")\"", await desk.Page("/desk.csv"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/jobs/new")]
    [InlineData("/job/11/enter?what=paid")]
    [InlineData("/job/11/file?part=site")]
    [InlineData("/import")]
    public async Task A_form_that_does_not_say_what_it_is_is_refused_also_with_its_seal(string address)
    {
        var page = await desk.Page("/jobs/new");
        var seal = Seal().Match(page).Groups[1].Value;
        Assert.NotEmpty(seal);
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(address, UriKind.Relative)) { Content =
            new ByteArrayContent("a=b"u8.ToArray()) };
        request.Headers.Add("RequestVerificationToken", seal);
        using var answer = await desk.Browser.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    private async Task<HttpResponseMessage> Post(Filled form)
    {
        var seal = Seal().Match(await desk.Page("/jobs/new")).Groups[1].Value;
        Assert.NotEmpty(seal);
        return await desk.Browser.PostAsync(new Uri("/jobs/new", UriKind.Relative),
            new FormUrlEncodedContent([.. (IEnumerable<KeyValuePair<string, string>>)form, new("__RequestVerificationToken", seal)]),
                TestContext.Current.CancellationToken);
    }

    private static Filled NewJob(string name) => new(name);

    [GeneratedRegex("""name="__RequestVerificationToken" type="hidden" value="([^"]+)["]""")]
    private static partial Regex Seal();

    private sealed record Filled(string Name) : IEnumerable<KeyValuePair<string, string>>
    {
        public string Number { get; init; } = "";

        public string County { get; init; } = "Yolo";

        public string Price { get; init; } = "";

        public string First { get; init; } = "";

        public IEnumerator<KeyValuePair<string, string>> GetEnumerator()
        {
            yield return new("Form.Name", Name);
            yield return new("Form.Number", Number);
            yield return new("Form.Kind", "private");
            yield return new("Form.County", County);
            yield return new("Form.Claimant", "Quillback Lumber & Truss, Inc.");
            yield return new("Form.Role", "supplier");
            yield return new("Form.Customer", "Hostile Framing");
            yield return new("Form.CustomerIs", "subcontractor");
            yield return new("Form.Price", Price);
            yield return new("Form.First", First);
        }

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
