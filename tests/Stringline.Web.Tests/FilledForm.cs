using System.Net;
using System.Text.RegularExpressions;

namespace Stringline.Web.Tests;

/// <summary>Fills in and sends forms of an open desk as a browser would: with the hidden fields of the page that was shown.</summary>
internal sealed partial class FilledForm(OpenDesk desk, string address)
{
    private readonly List<KeyValuePair<string, string>> fields = [];
    private readonly List<(string Name, byte[] Content)> files = [];

    /// <summary>Adds a field.</summary>
    public FilledForm With(string name, string value)
    {
        fields.Add(new(name, value));
        return this;
    }

    /// <summary>Adds a paper.</summary>
    public FilledForm Attach(string name, byte[] content)
    {
        files.Add((name, content));
        return this;
    }

    /// <summary>Sends it with the hidden fields of the page at its address, and gives the page that answers.</summary>
    public async Task<string> Look() => await Read(await Send(Hidden(await desk.Page(address)), "look"), HttpStatusCode.OK);

    /// <summary>Sends it, and what the page of confirmation holds after it; gives where the desk leads then.</summary>
    public async Task<string> Save() => await Confirm(await Look());

    /// <summary>Sends what a page of confirmation holds; gives where the desk leads then.</summary>
    public async Task<string> Confirm(string confirmation)
    {
        using var answer = await Resend(confirmation);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    /// <summary>Sends what a page of confirmation holds.</summary>
    public async Task<HttpResponseMessage> Resend(string confirmation) => await desk.Browser.PostAsync(
        new Uri(address, UriKind.Relative),
        new FormUrlEncodedContent([.. Hidden(confirmation), new("Step", "save")]));

    /// <summary>The hidden fields of a page.</summary>
    public static List<KeyValuePair<string, string>> Hidden(string page) =>
        [.. HiddenField().Matches(page).Select(Pair), .. Seal().Matches(page)
            .Select(seal => new KeyValuePair<string, string>("__RequestVerificationToken", seal.Groups[1].Value))];

    private static KeyValuePair<string, string> Pair(Match field) =>
        new(WebUtility.HtmlDecode(field.Groups[1].Value), WebUtility.HtmlDecode(field.Groups[2].Value));

    private async Task<HttpResponseMessage> Send(List<KeyValuePair<string, string>> hidden, string step)
    {
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in hidden.Concat(fields).Append(new("Step", step)))
            content.Add(new StringContent(value), $"\"{name}\"");
        foreach (var (name, bytes) in files)
            content.Add(new ByteArrayContent(bytes), "\"proof\"", name);
        return await desk.Browser.PostAsync(new Uri(address, UriKind.Relative), content);
    }

    private static async Task<string> Read(HttpResponseMessage answer, HttpStatusCode status)
    {
        using (answer)
        {
            Assert.Equal(status, answer.StatusCode);
            return await answer.Content.ReadAsStringAsync();
        }
    }

    [GeneratedRegex("""<input type="hidden" name="([^"]+)" value="([^"]*)"[^>]*>""")]
    private static partial Regex HiddenField();

    [GeneratedRegex("""name="__RequestVerificationToken" type="hidden" value="([^"]+)["]""")]
    private static partial Regex Seal();
}
