namespace Stringline.Desk.Web;

/// <summary>What every answer tells the browser to refuse: code and styles from elsewhere or inside the page, frames, guessing of types.</summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>The Content-Security-Policy of every answer.</summary>
    public const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Sets the headers as the answer begins, so that error pages carry them too.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.ContentSecurityPolicy = Policy;
            headers.XContentTypeOptions = "nosniff";
            headers.XFrameOptions = "DENY";
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), payment=()";

            // A job's facts are nobody else's business: nothing of them stays in a cache on the disk.
            if (!headers.ContainsKey("Cache-Control") || context.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) == true)
                headers.CacheControl = "no-store";
            return Task.CompletedTask;
        });
        return next(context);
    }
}
