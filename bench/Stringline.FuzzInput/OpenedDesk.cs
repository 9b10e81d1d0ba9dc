using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Stringline.Office;
using Stringline.Office.DemoOffice;
using Stringline.Office.Portfolio;
using Stringline.Web;
using Stringline.Store;
using Stringline.Testing;

namespace Stringline.FuzzInput;

/// <summary>A desk that is open on the demo office, with a browser that was let in.</summary>
internal sealed partial class OpenedDesk : IDisposable
{
    private const string Sample = "/jobs/new";
    private static readonly LocalDate Today = new(2026, 7, 15);

    private readonly string folder = Scratch.Folder();
    private readonly WebApplication desk;
    private readonly HttpClient browser;
    private readonly string seal;

    /// <summary>Opens it.</summary>
    public OpenedDesk()
    {
        var options = new DeskOptions(Path.Combine(folder, "office.stringline"), 0) { Who = "ana", AsOf = Today };
        desk = DeskHost.Build(options, SystemClock.Instance);
        var faults = Journal.PutMany(DemoJobs.Of(Today), "demo").Faults;
        if (faults.Count > 0)
            throw new InvalidOperationException($"The demo office is refused: {faults[0]}");
        desk.Services.GetRequiredService<Portfolio>().RefreshStale(Today, Environment.ProcessorCount);
        desk.StartAsync().GetAwaiter().GetResult();
        browser = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() })
        {
            BaseAddress = new Uri(DeskHost.AddressOf(desk)),
        };
        using var entry = new HttpRequestMessage(HttpMethod.Get, new Uri(DeskHost.EntryOf(desk)));
        using var let = browser.Send(entry);
        seal = SealOf().Match(Page(Sample)).Groups[1].Value;
        if (let.StatusCode != HttpStatusCode.Redirect || seal.Length == 0)
            throw new InvalidOperationException("The desk does not let the browser in.");
    }

    private IJournal Journal => desk.Services.GetRequiredService<IJournal>();

    /// <summary>Asks.</summary>
    /// <exception cref="InvalidOperationException">The desk fails.</exception>
    public void Ask(HttpRequestMessage request)
    {
        // The head counts before the field, so that a form is sealed whatever is in it.
        request.Headers.Add("RequestVerificationToken", seal);
        using var answer = browser.Send(request);
        using var content = new MemoryStream();
        if (answer.Content.Headers.ContentType?.MediaType != "text/event-stream")
            answer.Content.CopyTo(content, null, CancellationToken.None);
        if (answer.StatusCode == HttpStatusCode.InternalServerError)
            throw new InvalidOperationException($"{request.Method} {request.RequestUri} is answered 500.");
    }

    /// <summary>Its pages.</summary>
    public IReadOnlyList<DeskPage> Pages()
    {
        string[] more =
        [
            "/job/11/enter?what=paid", "/job/11/enter?what=notice-given", "/job/11/enter?what=waived", "/job/11/enter?what=furnished",
            "/job/11/enter?what=completed", "/job/11/file?part=parties", "/job/11/file?part=site", "/job/11/prove?entry=0",
        ];
        return
        [
            .. desk.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
                .Select(endpoint => "/" + Part().Replace(endpoint.RoutePattern.RawText!.TrimStart('/'), Filled))
                .Concat(more).Distinct().Order(StringComparer.Ordinal).Select(address => DeskPage.Of(address, Page(address))),
        ];
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        var check = Journal.Check();
        browser.Dispose();
        desk.StopAsync().GetAwaiter().GetResult();
        ((IDisposable)desk).Dispose();
        Directory.Delete(folder, recursive: true);
        if (!check.IsWhole)
            throw new InvalidOperationException($"After these requests the store is not whole: {check.Broken[0]}");
    }

    private string Page(string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(address, UriKind.Relative));
        using var answer = browser.Send(request);
        using var reader = new StreamReader(answer.Content.ReadAsStream());
        return reader.ReadToEnd();
    }

    private static string Filled(Match part) => part.Value.Contains(':', StringComparison.Ordinal) ? "11" : "claim";

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Part();

    [GeneratedRegex("""name="__RequestVerificationToken" type="hidden" value="([^"]+)["]""")]
    private static partial Regex SealOf();
}
