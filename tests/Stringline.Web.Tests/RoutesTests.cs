using Stringline.Testing;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Stringline.Web.Tests;

/// <summary>
/// Every address that the desk answers, as the desk itself knows them: one that is added tomorrow is asked too. The request headers are
/// those of the Fetch Standard (Origin) and of Fetch Metadata.
/// </summary>
public sealed partial class RoutesTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private static readonly string[] Methods = ["GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS", "TRACE"];

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private List<string> Routes => [.. desk.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        .Select(endpoint => "/" + Part().Replace(endpoint.RoutePattern.RawText!.TrimStart('/'), Filled)).Distinct()];

    [Fact]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public async Task Without_the_secret_every_address_is_refused()
    {
        using var stranger = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false });
        stranger.BaseAddress = desk.Browser.BaseAddress;
        await Each(stranger, Methods, _ => { }, status => status == HttpStatusCode.Forbidden);
    }

    [Fact]
    public Task With_it_none_is_refused_for_want_of_it() => Each(
        desk.Browser,
        ["GET"],
        _ => { },
        status => status is HttpStatusCode.OK or HttpStatusCode.NotFound or HttpStatusCode.Redirect or HttpStatusCode.BadRequest);

    [Fact]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public Task Under_another_name_every_address_is_refused() => Each(
        desk.Browser,
        Methods,
        request => request.Headers.Host = "stringline.example",
        status => status == HttpStatusCode.MisdirectedRequest);

    [Theory]
    [InlineData("https://stringline.example")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://localhost")]
    [InlineData("null")]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public Task For_a_page_of_another_origin_every_address_is_refused(string origin) =>
        Each(desk.Browser, Methods, request => request.Headers.Add("Origin", origin), status => status == HttpStatusCode.Forbidden);

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public Task What_a_page_of_another_site_loads_or_sends_is_refused(string site) =>
        Each(desk.Browser, Methods, request => request.Headers.Add("Sec-Fetch-Site", site), status => status == HttpStatusCode.Forbidden);

    [Fact]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public Task A_form_that_another_site_makes_the_browser_send_is_refused() => Each(
        desk.Browser,
        ["POST"],
        request =>
        {
            request.Headers.Add("Sec-Fetch-Site", "cross-site");
            request.Headers.Add("Sec-Fetch-Mode", "navigate");
            request.Headers.Add("Sec-Fetch-Dest", "document");
        },
        status => status == HttpStatusCode.Forbidden);

    [Fact]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public Task No_address_takes_another_way_of_asking_than_pages_have() => Each(
        desk.Browser, ["PUT", "PATCH", "DELETE", "OPTIONS", "TRACE"], _ => { }, status => status == HttpStatusCode.MethodNotAllowed);

    [Fact]
    [Attack("every address without the secret; foreign Host, Origin, Sec-Fetch-Site; no form seal; other methods")]
    public async Task Without_the_seal_of_a_form_nothing_that_is_sent_is_taken()
    {
        var (seal, settings) = (desk.Journal.Check().Seal, desk.Journal.ReadSettings());
        await Each(
            desk.Browser,
            ["POST"],
            request => request.Content = new FormUrlEncodedContent([new("Step", "save"), new("step", "write")]),
            status => status is HttpStatusCode.BadRequest or HttpStatusCode.NotFound or HttpStatusCode.MethodNotAllowed);
        Assert.Equal((seal, settings), (desk.Journal.Check().Seal, desk.Journal.ReadSettings()));
    }

    private static string Filled(Match part) => part.Value.Contains(':') ? "1" : "x";

    private async Task Each(HttpClient browser, string[] methods, Action<HttpRequestMessage> change, Func<HttpStatusCode, bool> right)
    {
        var routes = Routes;
        Assert.True(routes.Count > 25, $"The desk knows only {routes.Count} addresses.");
        var wrong = new List<string>();
        foreach (var route in routes)
        {
            foreach (var method in methods)
            {
                using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(route, UriKind.Relative));
                change(request);
                using var answer = await browser.SendAsync(request, Stop);
                if (!right(answer.StatusCode))
                    wrong.Add($"{method} {route}: {(int)answer.StatusCode}");
            }
        }

        Assert.Empty(wrong);
        AttackAttribute.Tried(routes.Count * methods.Length);
    }

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Part();
}
