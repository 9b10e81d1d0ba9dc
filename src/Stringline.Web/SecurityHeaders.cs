namespace Stringline.Web;

/// <summary>What an answer may do with frames beyond what all may.</summary>
internal enum Frames
{
    /// <summary>A page that shows papers of this desk in frames.</summary>
    ShowsPapers,

    /// <summary>A paper that a page of this desk may show in a frame.</summary>
    MayBeFramed,
}

/// <summary>
/// What every answer tells the browser to refuse: code and styles from elsewhere or inside the page, frames, guessing of types.
/// </summary>
internal sealed class SecurityHeaders(RequestDelegate next)
{
    private static readonly object NoReferrer = new();

    /// <summary>The Content-Security-Policy of every answer but papers and the pages that show them.</summary>
    public const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; "
            + "frame-ancestors 'none'";

    /// <summary>The policy of a page that shows papers: frames from this desk alone.</summary>
    public const string ShowingPolicy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self'; frame-src 'self'; object-src 'self'; base-uri 'none'; "
            + "form-action 'self'; frame-ancestors 'none'";

    /// <summary>The policy of a paper: a page of this desk may show it; it can load nothing but itself.</summary>
    public const string PaperPolicy = "default-src 'none'; object-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    /// <summary>Says what this answer may do with frames.</summary>
    public static void Framing(HttpContext context, Frames frames) => context.Items[typeof(Frames)] = frames;

    /// <summary>Says that the address of this answer is told to no page that follows, not even to one of this desk.</summary>
    public static void WithoutReferrer(HttpContext context) => context.Items[NoReferrer] = true;

    /// <summary>Sets the headers as the answer begins, so that error pages carry them too.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            var frames = context.Items[typeof(Frames)] as Frames?;
            headers.ContentSecurityPolicy = frames switch
            {
                null => Policy,
                Frames.ShowsPapers => ShowingPolicy,
                Frames.MayBeFramed => PaperPolicy,
                _ => throw new InvalidOperationException($"No such frames: {frames}."),
            };
            headers.XContentTypeOptions = "nosniff";
            headers.XFrameOptions = frames == Frames.MayBeFramed ? "SAMEORIGIN" : "DENY";
            headers["Referrer-Policy"] = context.Items.ContainsKey(NoReferrer) ? "no-referrer" : "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), payment=()";

            // A job's facts are nobody else's business: nothing of them stays in a cache on the disk.
            if (!headers.ContainsKey("Cache-Control") || context.Response.ContentType?.StartsWith("text/html", StringComparison.Ordinal)
                == true)
                headers.CacheControl = "no-store";
            return Task.CompletedTask;
        });
        return next(context);
    }
}
