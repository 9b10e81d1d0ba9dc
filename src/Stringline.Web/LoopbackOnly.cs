namespace Stringline.Web;

/// <summary>
/// Answers only requests that name this machine. A page elsewhere whose name is made to point at the loopback address is thus refused
/// (its browser still sends the name it believes in).
/// </summary>
internal sealed class LoopbackOnly(RequestDelegate next)
{
    /// <summary>Lets the request pass or refuses it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (context.Request.Host.Host is "127.0.0.1" or "localhost")
            return next(context);
        context.Response.StatusCode = StatusCodes.Status421MisdirectedRequest;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync("The desk answers at 127.0.0.1 and localhost only.\n");
    }
}
