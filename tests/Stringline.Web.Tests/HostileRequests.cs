using System.Globalization;
using System.Text;

namespace Stringline.Web.Tests;

/// <summary>What a page has that can be asked for.</summary>
/// <param name="Address">Its address.</param>
/// <param name="Fields">The names of the fields of its forms, and of what its links ask with.</param>
/// <param name="Seal">The seal of its forms; empty where it has none.</param>
internal sealed record Asked(string Address, IReadOnlyList<string> Fields, string Seal);

/// <summary>
/// Requests that no browser sends, the same ones for the same seed: broken by the grammar of HTTP (RFC 9112), of addresses (RFC 3986), of
/// multipart (RFC 7578), or right in form with content that no person types.
/// </summary>
internal sealed class HostileRequests(int seed, string host, string cookies, IReadOnlyList<Asked> pages)
{
    private static readonly string[] Words =
    [
        "", " ", "0", "-1", "1e400", "NaN", "99999999999999999999", "-9223372036854775808", "2147483648", "2026-02-30", "9999-12-31",
        "0001-01-01",
        "10000-01-01", "'", "\"", "<script>", "{{7*7}}", "%00", "%", "%zz", "%c0%af", "%ff%fe", "\u0000", "\u0001\u001b", "\ud83e\uddf1",
        "\ufffe", "..", "../../etc/passwd",
        "..\\..\\x", "//", "C:\\", "' or 1=1 --", "; drop table jobs", "true", "null", "on", "save", "look", "e1", "paid", "withdrawn",
        "parties", "contract",
        "1,000.00", "1.000,00", "$", "79228162514264337593543950336", "100000000000000000000000000000000", "=1+1", "a\r\nb", "\u202e",
        "[]", "{}", "__proto__",
    ];

    private static readonly string[] Methods =
        ["GET", "POST", "HEAD", "PUT", "TRACE", "CONNECT", "get", "FOO", "G\u00c9T", "", "GET ", "PROPFIND", new('A', 9000)];

    private static readonly string[] Versions = ["HTTP/0.9", "HTTP/2.0", "HTTP/1.2", "HTTP/9.9", "HTTP", "ICY", "http/1.1", ""];

    private static readonly string[] Lengths =
        ["-1", "0", "1", "999999999", "9999999999999999999999", "abc", "3, 4", "+3", "0x3", " "];

    private static readonly string[] Addresses =
    [
        "*", "http://other.example/", "/../..", "/./", "//", "/%2e%2e/", "/%", "/a b", "/\u00e9", "", "http://", "/job/1#x", "/job/1%00",
        "/job/1/%2f/", "/job/99999999999999999999", "/job/-1/papers/claim", "/status/999999999999", "/open/%00",
    ];

    private static readonly string[] Names =
    [
        "a[", "a[b", "[", "]", "a]b[", "a[0][", "f-parties[0", "f-parties[99999999999].name", "f-parties[-1].name", ".", "", "Form.", "f-",
            "c-1",
        "c99999999999",
    ];

    private static readonly string[] Types =
    [
        "application/x-www-form-urlencoded", "multipart/form-data", "multipart/form-data; boundary=",
        "multipart/form-data; boundary=" + new string('b', 300),
        "multipart/form-data; boundary=b; boundary=c", "application/json", "text/plain", "", ";;;",
        "application/x-www-form-urlencoded; charset=utf-7", "multipart/mixed; boundary=b",
        "application/x-www-form-urlencoded; charset=nonsense", "\u0001", "image/svg+xml", "multipart/form-data; boundary=\"",
    ];

    private readonly Random random = new(seed);

    /// <summary>The next one, as it goes over the wire, and what kind it is.</summary>
    public (string Kind, byte[] Bytes) Next() => random.Next(16) switch
    {
        0 => ("random bytes", Noise(random.Next(1, 5000))),
        1 => ("odd method", Request(One(Methods), Path())),
        2 => ("odd address", Request("GET", One(Addresses))),
        3 => ("odd version", Raw($"GET / {One(Versions)}\r\nHost: {host}\r\n\r\n")),
        4 => ("odd head", Request("GET", Path(), Head())),
        5 => ("large head", Request("GET", Path(), $"X-Large: {new string('x', random.Next(1000, 200_000))}")),
        6 => ("many heads", Request("GET", Path(), string.Join("\r\n", Enumerable.Repeat("X-Many: y", random.Next(50, 3000))))),
        7 => ("bad length", Body(Page().Address, One(Types[..1]), "a=b", One(Lengths))),
        8 => ("bad chunks", Chunked()),
        9 => ("broken multipart", Multipart()),
        10 => ("odd type", Body(Page().Address, One(Types), Word() + "=" + Word())),
        11 => ("large field", Form(Page(), [(One(Page().Fields), new string('a', random.Next(10_000, 6_000_000)))])),
        12 => ("many fields", Form(Page(), [.. Enumerable.Range(0, random.Next(100, 5000)).Select(i => ($"f{i}", "x"))])),
        13 => ("hostile query", Request("GET", Query(Page()))),
        14 => ("hostile form", Hostile(Page())),
        _ => ("changed bytes", Changed(Hostile(Page()))),
    };

    private string Word() => One(Words);

    private string Field(Asked page) => random.Next(8) == 0 ? One(Names) : One(page.Fields);

    private string Path() => Page().Address;

    private Asked Page() => pages[random.Next(pages.Count)];

    private T One<T>(IReadOnlyList<T> among) => among[random.Next(among.Count)];

    private string Head() => One(
    [
        "Host: other.example", "Host:", "Cookie: " + new string(';', 500), "Cookie: stringline-form=\u0001",
        "Cookie: stringline-form=%%%; a; =b; ;", "Range: bytes=-1-", "Range: bytes=0-0,1-1,2-2,3-3,4-4",
        "If-None-Match: \"", "If-Modified-Since: never", "Accept-Encoding: \u00ff", "Accept-Language: " + new string('q', 4000),
        "Expect: 100-continue", "Expect: nonsense", "Upgrade: websocket\r\nConnection: Upgrade",
        "Upgrade: h2c\r\nConnection: Upgrade, HTTP2-Settings\r\nHTTP2-Settings: AAMAAABkAAQAAP__", "Transfer-Encoding: gzip",
        "No colon here", ": no name", "X y: z", " folded: line", "X: a\u0000b", "Origin: null", "Origin: http://[::1",
        "Sec-Fetch-Site: nonsense", "Content-Length: 5\r\nTransfer-Encoding: chunked", "Content-Length: 1\r\nContent-Length: 2",
        "X-HTTP-Method-Override: DELETE", "X-Forwarded-Host: other.example", "Connection: keep-alive, x",
    ]);

    private byte[] Request(string method, string address, string? head = null) =>
        Raw($"{method} {address} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n{Cookies()}{head}{(head is null ? "" : "\r\n")}\r\n");

    // One in eight comes without the secret.
    private string Cookies() => random.Next(8) == 0 ? "" : $"Cookie: {cookies}\r\n";

    private byte[] Body(string address, string type, string body, string? length = null) => Raw(
        $"{Head(address)}Content-Type: {type}\r\n"
        + $"Content-Length: {length ?? Encoding.UTF8.GetByteCount(body).ToString(CultureInfo.InvariantCulture)}\r\n\r\n{body}");

    private string Head(string address) => $"POST {address} HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n{Cookies()}";

    private byte[] Form(Asked page, IReadOnlyList<(string Name, string Value)> fields) => Body(page.Address, Types[0], string.Join(
        '&', fields.Append(("__RequestVerificationToken", page.Seal)).Select(field => $"{Escape(field.Item1)}={Escaped(field.Item2)}")));

    private byte[] Hostile(Asked page) => Form(page, [.. Enumerable.Range(0, random.Next(0, 12)).Select(_ => (Field(page), Word()))]);

    private string Query(Asked page) => page.Address.Split('?')[0] + "?" + string.Join('&', Enumerable.Range(0, random.Next(1, 5))
        .Select(_ => $"{Escape(Field(page))}={Escaped(Word())}"));

    // Now and then as it is, which is no escape then.
    private string Escaped(string word) => word.Length > 200 || (random.Next(6) == 0 && word.All(c => c is > ' ' and < '\u007f'))
        ? word
        : Escape(word);

    // Uri.EscapeDataString refuses half a pair of surrogates; here such a text may stand.
    private static string Escape(string word) => string.Concat(Encoding.UTF8.GetBytes(word).Select(b =>
        char.IsAsciiLetterOrDigit((char)b) ? ((char)b).ToString() : $"%{b:X2}"));

    private byte[] Chunked()
    {
        var chunks = One(
        [
            "zz\r\nabc\r\n0\r\n\r\n", "3\r\nabcd\r\n0\r\n\r\n", "FFFFFFFFFFFFFFFFF\r\nabc", "-3\r\nabc\r\n0\r\n\r\n", "3\r\nab",
            "3;x=y\r\na=b\r\n0\r\n\r\n", "0\r\nTrailer: x\r\n\r\n", "\r\n", "3\nabc\n0\n\n",
            "3" + new string(';', 9000) + "\r\na=b\r\n0\r\n\r\n", "00000000000000000003\r\na=b\r\n0\r\n\r\n",
        ]);
        return Raw($"{Head(Path())}Content-Type: {Types[0]}\r\nTransfer-Encoding: chunked\r\n\r\n{chunks}");
    }

    private byte[] Multipart()
    {
        var page = Page();
        var seal = $"--b\r\nContent-Disposition: form-data; name=\"__RequestVerificationToken\"\r\n\r\n{page.Seal}\r\n";
        var part = One(
        [
            "--b\r\n\r\nx\r\n--b--", "--b\r\nContent-Disposition: form-data\r\n\r\nx\r\n--b--\r\n",
            "--b\r\nContent-Disposition: form-data; name=\"a\r\n\r\nx", "--b--", "", "--c\r\n\r\n--c--",
            $"--b\r\nContent-Disposition: form-data; name=\"proof\"; filename=\"{Word()}\"\r\n\r\n%PDF-1.7\r\n--b--\r\n",
            $"--b\r\nContent-Disposition: form-data; name=\"table\"; filename=\"{new string('n', 5000)}.csv\"\r\n\r\na,b\r\n--b--\r\n",
            "--b\r\nContent-Disposition: form-data; name=\"table\"; filename=\"x.xlsx\"\r\n\r\nPK\u0003\u0004\r\n--b--\r\n",
            "--b\r\n" + new string('H', 40_000) + ": x\r\n\r\nx\r\n--b--\r\n",
            "--b\r\nContent-Disposition: attachment; filename*=utf-7''x\r\n\r\nx\r\n--b--\r\n",
            string.Concat(Enumerable.Repeat("--b\r\nContent-Disposition: form-data; name=\"a\"\r\n\r\nx\r\n", 2000)) + "--b--\r\n",
        ]);
        return Body(page.Address, "multipart/form-data; boundary=b", seal + part);
    }

    private byte[] Changed(byte[] request)
    {
        for (var i = random.Next(1, 8); i > 0; i--)
            request[random.Next(request.Length)] = (byte)random.Next(256);
        return random.Next(3) == 0 ? request[..random.Next(request.Length)] : request;
    }

    private byte[] Noise(int length)
    {
        var bytes = new byte[length];
        random.NextBytes(bytes);
        return bytes;
    }

    private static byte[] Raw(string request) => Encoding.UTF8.GetBytes(request);
}
