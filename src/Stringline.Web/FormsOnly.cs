using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.Net.Http.Headers;

namespace Stringline.Web;

/// <summary>Answers only what links and forms of pages send: three methods, and two kinds of content in UTF-8.</summary>
internal sealed class FormsOnly(RequestDelegate next)
{
    private static readonly string[] Kinds = ["application/x-www-form-urlencoded", "multipart/form-data"];

    /// <summary>Lets the request pass or refuses it.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        var method = context.Request.Method;
        if (!HttpMethods.IsGet(method) && !HttpMethods.IsHead(method) && !HttpMethods.IsPost(method))
        {
            // A page would take any other method for a question.
            context.Response.Headers.Allow = "GET, HEAD, POST";
            return Refuse(context, StatusCodes.Status405MethodNotAllowed, "The desk takes GET, HEAD and POST.");
        }

        // A form that does not say what it is cannot be read: what asks for its fields would fail.
        var isAnswered = context.Request.ContentType is { Length: > 0 } type ? IsForm(type) : !HttpMethods.IsPost(method);
        return isAnswered
            ? next(context)
            : Refuse(context, StatusCodes.Status415UnsupportedMediaType, "The desk takes forms in UTF-8 only.");
    }

    private static bool IsForm(string type) => MediaTypeHeaderValue.TryParse(type, out var parsed)
        && Kinds.Any(kind => parsed.MediaType.Equals(kind, StringComparison.OrdinalIgnoreCase))
        && (!parsed.Charset.HasValue || HeaderUtilities.RemoveQuotes(parsed.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase));

    private static Task Refuse(HttpContext context, int status, string why)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(why + " Nothing was written.\n");
    }
}

/// <summary>Refuses what a page has no answer for, such as a form sent to one without: it would be shown without its content.</summary>
internal sealed class AnsweredOnly : IPageFilter
{
    /// <inheritdoc/>
    public void OnPageHandlerSelected(PageHandlerSelectedContext context)
    {
    }

    /// <inheritdoc/>
    public void OnPageHandlerExecuting(PageHandlerExecutingContext context)
    {
        var isForm = HttpMethods.IsPost(context.HttpContext.Request.Method);
        if (context.HandlerMethod is null && isForm)
            context.Result = new StatusCodeResult(StatusCodes.Status405MethodNotAllowed);

        // A page that reads nothing before it is shown has none for a question; one that has some was asked with a name that none has.
        else if (context.HandlerMethod is null && context.ActionDescriptor.HandlerMethods.Any(handler => handler.HttpMethod == "Get"))
            context.Result = new NotFoundResult();
    }

    /// <inheritdoc/>
    public void OnPageHandlerExecuted(PageHandlerExecutedContext context)
    {
    }
}
