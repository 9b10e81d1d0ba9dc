namespace Stringline.Web;

/// <summary>
/// Lets no request pass to any page, file or form without the secret of this start. The address that carries it gives the cookie and
/// leads at once to one without it, so that it stays in no history and no Referer.
/// </summary>
internal sealed class SecretFirst(RequestDelegate next, StartSecret secret)
{
    private const string Onward = """
        <!DOCTYPE html>
        <html lang="en"><head><meta charset="utf-8"><title>Stringline</title></head><body><p><a href="/">To the desk</a></p></body></html>

        """;

    /// <summary>Lets the request pass, lets the browser in, or refuses.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (context.Request.Path.StartsWithSegments(StartSecret.Folder, out var rest))
            return HttpMethods.IsGet(context.Request.Method) && secret.Is(rest.Value?.TrimStart('/')) ? LetIn(context) : Refuse(context);
        return secret.Is(context.Request.Cookies[StartSecret.CookieOf(context.Request.Host)]) ? next(context) : Refuse(context);
    }

    private Task LetIn(HttpContext context)
    {
        context.Response.Cookies.Append(StartSecret.CookieOf(context.Request.Host), secret.Word, new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Path = "/",
            IsEssential = true,
        });
        SecurityHeaders.WithoutReferrer(context);
        secret.Say();
        if (OwnPagesOnly.SiteOf(context.Request) is "" or "none" or "same-origin")
        {
            context.Response.Redirect("/");
            return Task.CompletedTask;
        }

        // From the page that opens the desk (OpeningPage), which is of no site: a redirect would count as led by it, and the browser
        // would hold the strict cookie back. A page of this desk that leads on is of this site.
        context.Response.Headers.Append("Refresh", "0; url=/");
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(Onward);
    }

    private static Task Refuse(HttpContext context)
    {
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>The desk is closed to this browser · Stringline</title>
            </head>
            <body>
            <h1>The desk is closed to this browser</h1>
            <p>Only the person who started the desk can use it. Open the whole address that the terminal shows where the desk was started:
            {StartSecret.Folder}/ and a long word are in it, and it is another one after each start.
            Or start the desk again: it then opens in your browser by itself.</p>
            <p>If you have the desk open in this browser and a link from elsewhere led here, <a href="">go on to the page</a>.</p>
            </body>
            </html>

            """);
    }
}
