using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Stringline.Store;

namespace Stringline.Desk.Pages;

/// <summary>What went wrong with a request, in words, and what to do about it.</summary>
[IgnoreAntiforgeryToken]
internal sealed class StatusModel : PageModel
{
    /// <summary>The status.</summary>
    public int Code { get; private set; }

    /// <summary>What the store says, where it is the store that cannot be used.</summary>
    public string? Store { get; private set; }

    /// <summary>Says it.</summary>
    public void OnGet(int code) => Show(code);

    /// <summary>Says it, for a form that was refused.</summary>
    public void OnPost(int code) => Show(code);

    private void Show(int code)
    {
        Code = code;
        Store = (HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error as StoreException)?.Message;
    }
}
