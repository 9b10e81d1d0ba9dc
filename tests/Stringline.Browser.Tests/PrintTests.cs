using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Stringline.Browser.Tests;

/// <summary>
/// The desk and a job on paper: letter, as California offices print. What lies on the page is read from the PDF with PdfPig; colours and
/// what is hidden from the browser under the medium of print.
/// </summary>
public sealed class PrintTests(Chromium chromium)
{
    [Theory]
    [InlineData("/")]
    [InlineData("/job/11")]
    public async Task It_prints_dark_ink_on_white_without_what_only_a_screen_needs(string address)
    {
        await using var visit = await chromium.Visit();
        await visit.Go(address);
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal(["rgb(255, 255, 255)", "rgb(0, 0, 0)"],
            await visit.Lines("() => [getComputedStyle(document.body).backgroundColor, getComputedStyle(document.body).color]"));
        Assert.Empty(
            await visit.Lines(
                """() => [...document.querySelectorAll("nav, form, button, .button, .skip, .zoom")].filter(part => part.checkVisibility()).map(part => part.outerHTML.slice(0, 80))"""));

        using var pdf = PdfDocument.Open(await visit.Page.PdfAsync(new() { Format = "Letter" }));
        var words = string.Join(' ', pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
        Assert.Contains("Not legal advice", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Settings", words, StringComparison.Ordinal);
        foreach (var page in pdf.GetPages())
            Assert.All(page.Letters.Where(letter => letter.Value.Trim().Length > 0), letter =>
                Assert.InRange(letter.BoundingBox.Right, 0, page.Width));
    }

    [Fact]
    public async Task The_line_stands_whole_on_one_sheet()
    {
        await using var visit = await chromium.Visit();
        await visit.Go("/job/11");
        var months = await visit.Lines("() => [...document.querySelectorAll('.line .month-name')].map(name => name.textContent)");
        Assert.True(months.Length >= 6);

        // The months stand at the head of the drawing, and the words that explain it right below it. Spaces are not letters in a PDF.
        using var pdf = PdfDocument.Open(await visit.Page.PdfAsync(new() { Format = "Letter" }));
        var sheets = pdf.GetPages().Select(page => string.Concat(page.Letters.Select(letter => letter.Value.Trim()))).ToList();
        Assert.Single(sheets, sheet => months.Append("Pegs above the cord")
            .All(words => sheet.Contains(words.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal)));
    }
}
