using System.Net;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>Only who was shown the address of this start gets in. The attributes of cookies are those of RFC 6265bis.</summary>
public sealed class SecretTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_address_of_the_start_gives_a_cookie_that_no_script_and_no_other_site_sees_and_leads_on_without_it()
    {
        using var browser = Stranger();
        using var answer = await browser.GetAsync(desk.Entry, Stop);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/", answer.Headers.Location!.ToString());
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.StartsWith($"stringline-desk-{desk.Entry.Port}=", cookie, StringComparison.Ordinal);
        Assert.EndsWith("; path=/; samesite=strict; httponly", cookie, StringComparison.Ordinal);
        Assert.Equal(64, desk.Entry.Segments[^1].Length);
    }

    [Fact]
    public async Task From_the_page_that_opens_the_browser_a_page_of_the_desk_leads_on_so_that_the_strict_cookie_is_sent()
    {
        using var browser = Stranger();
        using var request = new HttpRequestMessage(HttpMethod.Get, desk.Entry);
        request.Headers.Add("Sec-Fetch-Site", "cross-site");
        request.Headers.Add("Sec-Fetch-Mode", "navigate");
        request.Headers.Add("Sec-Fetch-Dest", "document");
        using var answer = await browser.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("0; url=/", Assert.Single(answer.Headers.GetValues("Refresh")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.DoesNotContain(desk.Entry.Segments[^1], await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/open/")]
    [InlineData("/open")]
    [InlineData("/open/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/job/1")]
    [InlineData("/no-such-page")]
    [InlineData("/status/500")]
    [Attack("an address guessed without the secret")]
    public async Task Whoever_does_not_know_it_is_told_how_to_get_in_and_nothing_else(string address)
    {
        using var browser = Stranger();
        using var answer = await browser.GetAsync(new Uri(desk.Entry, address), Stop);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        var page = await answer.Content.ReadAsStringAsync(Stop);
        Assert.Contains("Open the whole address that the terminal shows", page, StringComparison.Ordinal);
        Assert.DoesNotContain(desk.Entry.Segments[^1], page, StringComparison.Ordinal);
    }

    [Fact]
    [Attack("cookie of an earlier start, or of another desk")]
    public async Task A_cookie_of_an_earlier_start_or_of_another_desk_opens_nothing()
    {
        var folder = Scratch.Folder();
        var clock = new StoppedClock(Instant.FromUtc(2026, 7, 15, 20, 0));
        await using (var other = DeskHost.Build(new DeskOptions(Path.Combine(folder, "other.stringline"), 0), clock))
        {
            await other.StartAsync(Stop);
            using var browser = Stranger();
            using (var answer = await browser.GetAsync(new Uri(DeskHost.EntryOf(other)), Stop))
                Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            Assert.NotEqual(desk.Entry.Segments[^1], new Uri(DeskHost.EntryOf(other)).Segments[^1]);

            // One browser may hold the cookies of both at once.
            using (var answer = await browser.GetAsync(new Uri(desk.Entry, "/"), Stop))
                Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            using (var answer = await browser.GetAsync(desk.Entry, Stop))
                Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            foreach (var address in (string[])[DeskHost.AddressOf(other), new Uri(desk.Entry, "/").ToString()])
            {
                using var answer = await browser.GetAsync(new Uri(address), Stop);
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            }

            await other.StopAsync(Stop);
        }

        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("POST")]
    [Attack("an address guessed without the secret")]
    public async Task The_page_for_what_went_wrong_is_no_page_of_its_own(string method)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), new Uri("/status/500", UriKind.Relative))
        {
            Content = method == "POST" ? new FormUrlEncodedContent([]) : null,
        };
        using var answer = await desk.Browser.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static HttpClient Stranger() =>
        new(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() });
}
