using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>
/// A window onto a desk that watches what no page may do: ask any other host (the job's facts are nobody else's business), break the
/// desk's own Content-Security-Policy, or fail in its script. What it saw is judged when the visit ends.
/// </summary>
internal sealed class Visit : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly Uri desk;
    private readonly ConcurrentQueue<string> asked = new();
    private readonly ConcurrentQueue<string> troubles = new();
    private readonly HashSet<string> refusals = [];
    private ICDPSession? session;

    private Visit(IBrowserContext context, Uri desk, IPage page)
    {
        (this.context, this.desk, Page) = (context, desk, page);
        context.Request += (_, request) => asked.Enqueue(request.Url);
        context.Console += (_, message) => Told(message);
        context.WebError += (_, error) => troubles.Enqueue("script: " + error.Error);
    }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Opens a window.</summary>
    public static async Task<Visit> Begin(IBrowserContext context, Uri desk)
    {
        await context.AddInitScriptAsync("addEventListener('securitypolicyviolation', e => console.error(`policy: ${e.violatedDirective} "
            + "${e.blockedURI}`))");
        return new Visit(context, desk, await context.NewPageAsync());
    }

    /// <summary>
    /// Goes to an address of the desk, and waits until all that the page asks for is there. Only the place on a page may differ; then there
    /// is no answer.
    /// </summary>
    public async Task Go(string address, int status = 200)
    {
        if (status >= 400)
            ExpectRefusalOf(address);
        var answer = await Page.GotoAsync(address, new() { WaitUntil = WaitUntilState.Load });
        if (answer is not null)
            Assert.Equal(status, answer.Status);
    }

    /// <summary>Lets the browser say of this address that it was answered with an error, as it does of every such answer.</summary>
    public void ExpectRefusalOf(string address) => refusals.Add(new Uri(desk, address).ToString());

    /// <summary>A number that a script in the page works out.</summary>
    public Task<int> Number(string script) => Page.EvaluateAsync<int>(script);

    /// <summary>The lines that a script in the page gives.</summary>
    public Task<string[]> Lines(string script) => Page.EvaluateAsync<string[]>(script);

    /// <summary>Gives the window another size, in CSS pixels, and another number of device pixels to each.</summary>
    public async Task Scale(int width, int height, int scale)
    {
        session ??= await context.NewCDPSessionAsync(Page);
        await session.SendAsync("Emulation.setDeviceMetricsOverride",
            new Dictionary<string, object> { ["width"] = width, ["height"] = height, ["deviceScaleFactor"] = scale, ["mobile"] = false });
    }

    /// <summary>Ends the visit, and fails where a page did what none may.</summary>
    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Assert.NotEmpty(asked);
        Found.Nothing("asked of other hosts", asked.Where(url => !IsHere(url)).Distinct());
        Found.Nothing("console errors, script errors and breaches of the policy", troubles);
    }

    // Chromium shows a PDF with an extension and with resources of its own, which it carries in itself.
    private bool IsHere(string url) => new Uri(url) is var address
        && (address.Scheme is "data" or "blob" or "about" or "chrome-extension" or "chrome"
            || Uri.Compare(address, desk, UriComponents.SchemeAndServer, UriFormat.Unescaped, StringComparison.Ordinal) == 0);

    private void Told(IConsoleMessage message)
    {
        // Chromium logs the page itself, where it is answered with an error status on purpose.
        var expected = refusals.Any(refusal => message.Location.StartsWith(refusal, StringComparison.Ordinal))
            && message.Text.StartsWith("Failed to load resource", StringComparison.Ordinal);
        if (message.Type is "error" or "warning" && !expected)
            troubles.Enqueue($"{message.Type} at {message.Location}: {message.Text}");
    }
}
