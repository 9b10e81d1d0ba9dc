namespace Stringline.Web;

/// <summary>
/// Answers no request that a page of another origin makes, also one of another port of this machine, to which the browser would send this
/// desk’s cookies. Only a person who follows a link comes from elsewhere; what that opens writes nothing.
/// </summary>
internal sealed class OwnPagesOnly(RequestDelegate next)
{
    /// <summary>Lets the request pass or refuses it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (!IsForeign(context.Request))
            return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync("The desk answers its own pages only. Nothing was written.\n");
    }

    /// <summary>Where the browser says that a request comes from (Fetch Metadata); empty where it does not say.</summary>
    public static string SiteOf(HttpRequest request) => request.Headers["Sec-Fetch-Site"].ToString();

    private static bool IsForeign(HttpRequest request)
    {
        if (request.Headers.Origin.ToString() is { Length: > 0 } origin && origin != $"{request.Scheme}://{request.Host}")
            return true;
        return SiteOf(request) is not ("" or "none" or "same-origin") && !IsFollowedLink(request);
    }

    private static bool IsFollowedLink(HttpRequest request) => HttpMethods.IsGet(request.Method)
        && request.Headers["Sec-Fetch-Mode"] == "navigate" && request.Headers["Sec-Fetch-Dest"] == "document";
}
