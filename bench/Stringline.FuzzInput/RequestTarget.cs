using System.Net.Http.Headers;
using System.Text;

namespace Stringline.FuzzInput;

/// <summary>
/// Requests to an open desk, from a browser that was let in: method, address and kind of content on the first line, then the content. None
/// may be answered with 500. What comes before the desk (the server's reading of heads) is not ours; bench/requests tries it.
/// </summary>
internal static class RequestTarget
{
    private static readonly string[] More =
    [
        "GET ", "POST ", "HEAD ", "application/x-www-form-urlencoded", "multipart/form-data; boundary=b", "--b\r\n", "--b--\r\n",
        "Content-Disposition: form-data; name=\"proof\"; filename=\"scan.pdf\"\r\n\r\n", "%PDF-1.7\n", "%%EOF", "%00", "%FF", "%EF%BF%BF",
        "&", "=", "?", "2026-02-30", "9999-12-31", "0001-01-01", "1e400", "-1", "99999999999999999999", "handler=", "[0]", "_1",
    ];

    // What was written by earlier requests changes the answers to later ones: after so many the desk begins anew.
    private const int MostRequests = 1_000;

    private static OpenedDesk? desk;
    private static int asked;

    /// <summary>The target.</summary>
    public static Target Target { get; } = new("request", Seeds, Words, Answer);

    private static void Answer(byte[] bytes)
    {
        if (Request(bytes) is not { } request)
            return;
        if (desk is null || ++asked > MostRequests)
        {
            desk?.Dispose();
            (desk, asked) = (new OpenedDesk(), 0);
        }

        using (request)
            desk.Ask(request);
    }

    // Null where it is none that a client can send.
    private static HttpRequestMessage? Request(byte[] bytes)
    {
        var end = bytes.AsSpan().IndexOf((byte)'\n');
        var head = Encoding.Latin1.GetString(bytes.AsSpan(0, end < 0 ? bytes.Length : end)).Split(' ', 3);
        if (head.Length < 2 || !head[1].StartsWith('/') || !Uri.TryCreate("http://127.0.0.1" + head[1], UriKind.Absolute, out var address)
            || address.Host != "127.0.0.1" || !address.IsDefaultPort || address.PathAndQuery.StartsWith("//", StringComparison.Ordinal))
        {
            return null;
        }

        var request = new HttpRequestMessage(head[0] switch { "POST" => HttpMethod.Post, "HEAD" => HttpMethod.Head, _ => HttpMethod.Get },
            new Uri(address.PathAndQuery, UriKind.Relative));
        if (request.Method != HttpMethod.Post)
            return request;
        request.Content = new ByteArrayContent(end < 0 ? [] : bytes[(end + 1)..]);
        if (head.Length == 3 && MediaTypeHeaderValue.TryParse(head[2], out var type))
            request.Content.Headers.ContentType = type;
        return request;
    }

    private static IEnumerable<byte[]> Seeds()
    {
        using var open = new OpenedDesk();
        foreach (var page in open.Pages())
        {
            yield return Encoding.UTF8.GetBytes($"GET {page.Address}\n");
            if (page.Fields.Count == 0)
                continue;
            yield return Encoding.UTF8.GetBytes($"POST {page.Address} application/x-www-form-urlencoded\n"
                + string.Join('&', page.Fields.Select(field => $"{Uri.EscapeDataString(field.Name)}={Uri.EscapeDataString(field.Value)}")));
            if (page.TakesFiles)
                yield return Multipart(page);
        }
    }

    private static byte[] Multipart(DeskPage page)
    {
        var body = new StringBuilder();
        foreach (var (name, value) in page.Fields)
        {
            var content = name == "proof" ? "%PDF-1.7\n%%EOF\n" : "Job #,Invoice Number,Delivery Date,Amount\nJ1,R-1,3/2/2026,10\n";
            body.Append("--b\r\nContent-Disposition: form-data; name=\"").Append(name).Append('"');
            body.Append(name is "proof" or "table"
                ? $"; filename=\"a.{(name == "proof" ? "pdf" : "csv")}\"\r\n\r\n{content}" : $"\r\n\r\n{value}");
            body.Append("\r\n");
        }

        return Encoding.UTF8.GetBytes($"POST {page.Address} multipart/form-data; boundary=b\n{body}--b--\r\n");
    }

    private static IEnumerable<string> Words()
    {
        using var open = new OpenedDesk();
        return [.. open.Pages().SelectMany(page => page.Fields.Select(field => field.Name + "=").Append(page.Address)), .. More];
    }
}
