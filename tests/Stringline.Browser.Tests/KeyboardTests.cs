using Stringline.Office.DemoOffice;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>The desk by keyboard alone: nothing here is clicked or filled in otherwise.</summary>
public sealed class KeyboardTests(Chromium chromium)
{
    private const string Focused = "document.activeElement";

    // WCAG 2.2, 2.4.7: wherever the keyboard is can be seen.
    private const string Outlined = """
        () => {
          const at = document.activeElement, style = getComputedStyle(at), box = at.getBoundingClientRect();
          return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2 && box.bottom > 0 && box.top < innerHeight;
        }
        """;

    [Fact]
    public async Task The_first_press_offers_to_skip_to_the_content_and_goes_there()
    {
        await using var visit = await chromium.Visit();
        await visit.Go("/job/11");
        await visit.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("To the content", await Text(visit));
        Assert.True(await visit.Page.EvaluateAsync<bool>(Outlined));
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("#"));
        await visit.Page.Keyboard.PressAsync("Tab");
        Assert.True(await visit.Page.EvaluateAsync<bool>($"{Focused}.closest('main') !== null"), await Text(visit));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/job/11")]
    [InlineData("/job/11/papers/claim?draft=yes")]
    public async Task The_focus_is_seen_at_every_stop_and_goes_down_the_page(string address)
    {
        await using var visit = await chromium.Visit();
        await visit.Go(address);
        var unseen = new List<string>();
        var order = new List<int>();
        for (var stop = 0; stop < 45; stop++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (await visit.Page.EvaluateAsync<bool>($"{Focused} === document.body || {Focused}.tagName === 'IFRAME'"))
                break;
            if (!await visit.Page.EvaluateAsync<bool>(Outlined))
                unseen.Add(await Text(visit));
            order.Add(await visit.Number($"[...document.querySelectorAll('*')].indexOf({Focused})"));
        }

        Found.Nothing("stops that cannot be seen", unseen);
        Assert.True(order.Count >= 15);
        Assert.Equal(order.Order(), order);
    }

    [Fact]
    public async Task A_job_is_opened_from_the_desk_a_fact_is_entered_and_confirmed_and_the_line_is_walked()
    {
        await using var desk = await ServedDesk.Start(Chromium.Today, DemoJobs.Of(Chromium.Today, 12));
        await using var visit = await chromium.Visit(desk);
        var keyboard = visit.Page.Keyboard;
        await visit.Go("/");
        await TabTo(visit, "Alder Court, building 3");
        await Enter(visit, "/job/1$");

        await TabTo(visit, "Enter a fact");
        await Enter(visit, "/job/1/enter$");
        await TabTo(visit, "Payment received");
        await Enter(visit, "/enter[?]what=paid$");

        // The day is today's and has the focus; then the amount.
        await TabTo(visit, "amount");
        await keyboard.TypeAsync("250.00");
        await Enter(visit, "/enter");
        Assert.Equal("Before it is written", await visit.Page.InnerTextAsync("h1"));
        Assert.Equal("Write it to the journal", await Text(visit));
        await Enter(visit, "/enter[?]written=");
        Assert.Contains("$250.00", await visit.Page.InnerTextAsync("[role=status]"), StringComparison.Ordinal);

        await TabTo(visit, "The line");
        await Enter(visit, "/job/1$");
        await visit.Page.Locator(".line svg a").First.WaitForAsync();
        await TabTo(visit, "The line; scrolls sideways on narrow screens");
        await keyboard.PressAsync("Tab");
        var pegs = new List<string>();
        for (var peg = 0; peg < 4; peg++)
        {
            pegs.Add(await Text(visit));
            Assert.True(await visit.Page.EvaluateAsync<bool>(Outlined));
            await keyboard.PressAsync("ArrowRight");
        }

        Assert.Equal(4, pegs.Distinct().Count());
        await keyboard.PressAsync("ArrowLeft");
        Assert.Equal(pegs[3], await Text(visit));
        await keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("#"));
    }

    private static async Task TabTo(Visit visit, string name)
    {
        for (var press = 0; press < 120; press++)
        {
            await visit.Page.Keyboard.PressAsync("Tab");
            if (await Text(visit) == name)
                return;
        }

        Assert.Fail($"The keyboard never comes to \"{name}\".");
    }

    // Whoever asks only after the press may find the old address, and listen for a new one when it has already come.
    private static async Task Enter(Visit visit, string leadsTo)
    {
        var loaded = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void Tell(object? sender, IPage page) => loaded.TrySetResult();
        visit.Page.Load += Tell;
        await visit.Page.Keyboard.PressAsync("Enter");
        await loaded.Task.WaitAsync(Chromium.Patience);
        visit.Page.Load -= Tell;
        Assert.Matches(leadsTo, visit.Page.Url);
    }

    private static Task<string> Text(Visit visit) =>
        visit.Page.EvaluateAsync<string>($"({Focused}.getAttribute('aria-label') || {Focused}.id || {Focused}.textContent).trim()");
}
