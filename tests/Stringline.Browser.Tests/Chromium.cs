using Microsoft.Playwright;
using Stringline.Office.DemoOffice;
using Stringline.Testing;

[assembly: AssemblyFixture(typeof(Stringline.Browser.Tests.Chromium))]
[assembly: Slow(Slow.Browser)]

namespace Stringline.Browser.Tests;

/// <summary>One Chromium for all tests, and the desks that they share, on a day that stands.</summary>
public sealed class Chromium : IAsyncLifetime
{
    /// <summary>The day that the demo office takes for today.</summary>
    public static readonly LocalDate Today = new(2026, 7, 15);

    /// <summary>How long a test waits for what a page does before it fails; far more than a busy machine takes.</summary>
    internal static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Lazy<Task<Walk>> walk;
    private IPlaywright playwright = null!;
    private IBrowser browser = null!;
    private ServedDesk demo = null!;
    private ServedDesk empty = null!;
    private ServedDesk importing = null!;
    private IDisposable held = null!;

    /// <summary>Begins nothing yet.</summary>
    public Chromium() => walk = new(() => Walk.Over(this));

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        demo = await ServedDesk.Start(Today, DemoJobs.Of(Today));
        empty = await ServedDesk.Start(Today);
        (importing, held) = await ImportOffice.Start(Today);
        Assertions.SetDefaultExpectTimeout((float)Patience.TotalMilliseconds);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("STRINGLINE_CHROMIUM") ?? "/usr/bin/chromium",
            Args =
            [
                "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
            ],
        });
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
        await demo.DisposeAsync();
        await empty.DisposeAsync();
        held.Dispose();
        await importing.DisposeAsync();
    }

    /// <summary>Opens a window onto the demo office.</summary>
    internal Task<Visit> Visit(int width = 1280, int height = 800, float scale = 1) => Visit(demo, width, height, scale);

    /// <summary>Opens a window onto an office that is shared.</summary>
    internal Task<Visit> Visit(Office office) => Visit(office switch
    {
        Office.Demo => demo,
        Office.Empty => empty,
        Office.Importing => importing,
        _ => throw new InvalidOperationException($"No such office: {office}."),
    });

    /// <summary>The walk over every page, made when it is first asked for.</summary>
    internal Task<Walk> Walked() => walk.Value;

    /// <summary>Opens a window onto a desk.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="width">Width of the window in CSS pixels.</param>
    /// <param name="height">Height of the window in CSS pixels.</param>
    /// <param name="scale">Device pixels to a CSS pixel; 2 with half the width is what a zoom of 200 % makes of a window.</param>
    internal async Task<Visit> Visit(ServedDesk desk, int width = 1280, int height = 800, float scale = 1)
    {
        SlowAttribute.Must(Slow.Browser);
        var context = await browser.NewContextAsync(new()
        {
            BaseURL = desk.Address.ToString(),
            ViewportSize = new() { Width = width, Height = height },
            DeviceScaleFactor = scale,
            Locale = "en-US",
            TimezoneId = "America/Los_Angeles",
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout((float)Patience.TotalMilliseconds);
        await using (var let = await context.APIRequest.GetAsync(desk.Entry.ToString(), new() { MaxRedirects = 0 }))
            Assert.Equal(302, let.Status);
        return await Tests.Visit.Begin(context, desk.Address);
    }

    /// <summary>A browser that was not let into a desk.</summary>
    internal Task<IBrowserContext> Stranger(ServedDesk desk) =>
        browser.NewContextAsync(new() { BaseURL = desk.Address.ToString(), Locale = "en-US" });
}
