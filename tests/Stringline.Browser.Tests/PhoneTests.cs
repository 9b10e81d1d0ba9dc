using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Stringline.Browser.Tests;

/// <summary>Every page on a phone that is 360 wide. The least size of a target comes from WCAG 2.2, 2.5.8 (24 by 24 CSS pixels).</summary>
public sealed class PhoneTests(Chromium chromium)
{
    /// <summary>Width of the phone in CSS pixels.</summary>
    internal const int Width = 360;

    /// <summary>Its height.</summary>
    internal const int Height = 740;

    // Whatever is pressed and stands for itself; a tick's target is its label. A link within a sentence is excepted by the rule.
    internal const string TooSmall = """
        () => [...document.querySelectorAll("button, .button, summary, select, textarea, nav a, input:not([type=hidden], [type=checkbox], [type=radio]), label:has([type=checkbox], [type=radio])")]
          .map(target => [target, target.getBoundingClientRect()])
          .filter(([target, box]) => target.checkVisibility() && (box.width < 24 || box.height < 24))
          .map(([target, box]) => `${target.outerHTML.slice(0, 120)} is ${box.width} by ${box.height}`)
        """;

    [Fact]
    public async Task No_page_is_wider_than_the_phone_and_whatever_is_pressed_is_large_enough_for_a_finger() =>
        Found.Nothing("things too wide or too small", (await chromium.Walked()).TooWide);

    [Fact]
    public async Task The_first_thing_to_do_on_a_job_is_within_two_screens_and_leads_where_it_is_done()
    {
        await using var visit = await chromium.Visit(Width, Height);
        await visit.Go("/job/11");
        var first = visit.Page.Locator(".next .button").First;
        var box = await first.BoundingBoxAsync();
        Assert.True(box!.Y + box.Height <= 2 * Height, $"The first button is {box.Y} down.");
        await first.ClickAsync();
        await Assertions.Expect(visit.Page).ToHaveURLAsync(new Regex("/job/11/enter[?]what=index-searched$"));
    }
}
