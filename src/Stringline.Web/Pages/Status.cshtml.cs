using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Web.Pages;

/// <summary>What a request that failed has written.</summary>
public enum Failure
{
    /// <summary>Nothing: it failed before the store was told to keep anything.</summary>
    NothingWritten,

    /// <summary>Nothing: it was to read only.</summary>
    OnlyReading,

    /// <summary>It failed while the store was told to keep it, and only the store knows.</summary>
    MaybeWritten,

    /// <summary>What it was to write: it failed after that.</summary>
    AfterWriting,
}

/// <summary>What went wrong with a request, in words, and what to do about it. Asked for by itself it is no page.</summary>
[IgnoreAntiforgeryToken]
internal sealed class StatusModel : PageModel
{
    /// <summary>The status.</summary>
    public int Code { get; private set; }

    /// <summary>What the store says, where it is the store that cannot be used.</summary>
    public string? Store { get; private set; }

    /// <summary>What was written.</summary>
    public Failure Failure { get; private set; }

    /// <summary>Where to read more, where it is a fault of the program.</summary>
    public string Report => Store is null ? " The reason is on the console from which the desk was started; please report it." : "";

    /// <summary>Says it.</summary>
    public IActionResult OnGet(int code) => Show(code);

    /// <summary>Says it, for a form that was refused.</summary>
    public IActionResult OnPost(int code) => Show(code);

    private IActionResult Show(int code)
    {
        var thrown = HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        if (thrown is null && HttpContext.Features.Get<IStatusCodeReExecuteFeature>() is null)
            return NotFound();
        Code = code;
        Store = (thrown as StoreException)?.Message;
        Failure = WrittenRequest.Is(HttpContext) ? Failure.AfterWriting
            : thrown is StoreException { MaybeWritten: true } ? Failure.MaybeWritten
            : HttpMethods.IsPost(Request.Method) ? Failure.NothingWritten
            : Failure.OnlyReading;
        return Page();
    }
}
