using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.Web.Tests;

/// <summary>
/// Requests that no browser sends, over bare sockets: none is answered with 500, none keeps its connection, and the desk answers after all
/// of them. <c>STRINGLINE_REQUESTS</c> says how many; <c>bench/requests</c> asks for thousands of a desk in a process of its own, and shows
/// the figures.
/// </summary>
[Slow(Testing.Slow.Fuzz)]
public sealed partial class HostileRequestTests(OpenDesk desk) : IClassFixture<OpenDesk>
{
    private const int Seed = 20_261_201;
    private const int Usual = 300;

    // Megabytes, the program itself among them.
    private const int MostMemory = 600;

    // Far more than any takes, for a machine that is busy with other tests; what is slow is shown by the bench.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    // After so long without an end a request counts as cut off, and no more of it comes.
    private static readonly TimeSpan Cut = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Slow = TimeSpan.FromSeconds(2);

    private string seal = "";
    private Uri entry = desk.Entry;
    private HttpClient browser = desk.Browser;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    [Attack("requests that no browser sends")]
    public async Task No_request_makes_the_desk_fail_or_wait_and_it_answers_after_all_of_them()
    {
        var isBench = int.TryParse(Environment.GetEnvironmentVariable("STRINGLINE_REQUESTS"), CultureInfo.InvariantCulture, out var count);
        if (!isBench)
            count = Usual;
        using var apart = isBench ? await DeskProcess.Open(OpenDesk.Today) : null;
        using var letIn = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() });
        if (apart is not null)
        {
            (entry, browser) = (apart.Entry, letIn);
            browser.BaseAddress = new Uri(entry.GetLeftPart(UriPartial.Authority));
            using var let = await browser.GetAsync(entry, Stop);
            Assert.Equal(HttpStatusCode.Redirect, let.StatusCode);
        }

        var requests = new HostileRequests(Seed, entry.Authority, await Cookies(), await Pages());
        var wrong = new List<string>();
        var statuses = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var times = new List<TimeSpan>();
        var memory = new List<long>();
        for (var i = 0; i < count; i++)
        {
            var (kind, bytes) = requests.Next();
            var watch = Stopwatch.StartNew();
            var status = await Ask(bytes);
            times.Add(watch.Elapsed);
            statuses[status] = statuses.GetValueOrDefault(status) + 1;
            if (status is "500" or "waits")
                wrong.Add($"request {i} ({kind}) is answered {status}: {Start(bytes)}");
            if (apart is not null && i % Math.Max(1, count / 10) == 0)
                memory.Add(apart.Megabytes().Now);
        }

        if (apart is not null)
            Tell(statuses, times, memory, apart.Megabytes());
        Assert.Empty(wrong);
        Assert.True(statuses.Count > 4, "The requests are all alike: " + string.Join(", ", statuses.Keys));
        Assert.Contains("What needs doing", await browser.GetStringAsync(new Uri("/", UriKind.Relative), Stop), StringComparison.Ordinal);
        using var store = apart is null ? null : Journals.Open(apart.Store, SystemClock.Instance);
        Assert.True((store ?? desk.Journal).Check().IsWhole);
        AttackAttribute.Tried(count);
    }

    private static void Tell(SortedDictionary<string, int> statuses, List<TimeSpan> times, List<long> memory, (long Now, long Most) after)
    {
        times.Sort();
        TestContext.Current.SendDiagnosticMessage(
            "{0} requests; answers {1}; median {2:0.0} ms, slowest {3:0} ms, over 2 s: {4}; MB of the desk's process at each tenth: {5}, "
                + "after: {6}, most: {7}",
            times.Count, string.Join(", ", statuses.Select(pair => $"{pair.Key}: {pair.Value}")), times[times.Count / 2].TotalMilliseconds,
            times[^1].TotalMilliseconds, times.Count(time => time > Slow), string.Join(" ", memory), after.Now, after.Most);
        Assert.True(after.Most < MostMemory, $"The desk took {after.Most} MB.");
        Assert.DoesNotContain(times, time => time > Slow);
    }

    // The status; "closed" where the desk only closes the connection.
    private async Task<string> Ask(byte[] request)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Patience);
        using var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
        using var answer = new MemoryStream();
        try
        {
            await socket.ConnectAsync(IPAddress.Loopback, entry.Port, patience.Token);
            await using var stream = new NetworkStream(socket);
            try
            {
                await stream.WriteAsync(request, patience.Token);
            }
            catch (IOException)
            {
                // It has heard enough; what it said is read below.
            }

            var all = stream.CopyToAsync(answer, patience.Token);

            // One that is cut off is waited for, and rightly: then the line is closed on this side.
            if (await Task.WhenAny(all, Task.Delay(Cut, patience.Token)) != all)
                socket.Shutdown(SocketShutdown.Send);
            await all;
        }
        catch (Exception e) when (e is IOException or SocketException)
        {
            // It closed the connection, before or after it answered.
        }
        catch (OperationCanceledException) when (!Stop.IsCancellationRequested)
        {
            return "waits";
        }

        var line = Encoding.ASCII.GetString(answer.GetBuffer(), 0, (int)Math.Min(answer.Length, 16));
        return line.StartsWith("HTTP/1.", StringComparison.Ordinal) && line.Length >= 12 ? line[9..12]
            : answer.Length == 0 ? "closed"
            : "other";
    }

    private async Task<string> Cookies()
    {
        using var bare = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });
        using var let = await bare.GetAsync(entry, Stop);
        var cookie = let.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(entry, "/jobs/new"));
        request.Headers.Add("Cookie", cookie);
        using var answer = await bare.SendAsync(request, Stop);
        seal = Seal().Match(await answer.Content.ReadAsStringAsync(Stop)).Groups[1].Value;
        return $"{cookie}; {answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0]}";
    }

    private async Task<IReadOnlyList<Asked>> Pages()
    {
        var pages = new List<Asked>();
        var routes = desk.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Select(endpoint => "/" + Part().Replace(endpoint.RoutePattern.RawText!.TrimStart('/'), Filled));
        string[] more =
        [
            "/job/11/enter?what=paid", "/job/11/enter?what=notice-given", "/job/11/enter?what=waived", "/job/11/file?part=parties",
            "/job/11/file?part=site", "/job/11/prove?entry=0",
        ];
        foreach (var address in routes.Concat(more).Distinct().Order(StringComparer.Ordinal))
        {
            using var answer = await browser.GetAsync(new Uri(address, UriKind.Relative), Stop);
            var page = await answer.Content.ReadAsStringAsync(Stop);
            var names = Name().Matches(page).Concat(Asking().Matches(page)).Select(name => WebUtility.HtmlDecode(name.Groups[1].Value))
                .Concat(["known", "Step", "handler"]).Where(name => name != "__RequestVerificationToken").Distinct();
            pages.Add(new Asked(address, [.. names.Order(StringComparer.Ordinal)], seal));
        }

        Assert.True(pages.Count > 25);
        return pages;
    }

    private static string Filled(Match part) => part.Value.Contains(':') ? "11" : "claim";

    private static string Start(byte[] request) => Encoding.UTF8.GetString(request.AsSpan(0, Math.Min(request.Length, 700)));

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Part();

    [GeneratedRegex("<(?:input|select|textarea|button)[^>]* name=\"([^\"]+)\"")]
    private static partial Regex Name();

    [GeneratedRegex("href=\"[^\"]*[?;]([A-Za-z.-]+)=")]
    private static partial Regex Asking();

    [GeneratedRegex("""name="__RequestVerificationToken" type="hidden" value="([^"]+)["]""")]
    private static partial Regex Seal();
}
