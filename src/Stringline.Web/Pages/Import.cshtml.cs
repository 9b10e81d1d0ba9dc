using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;
using NodaTime.Text;
using Stringline.Office.Import;
using Stringline.Law.Counting;

namespace Stringline.Web.Pages;

/// <summary>
/// Takes a table for an import. The form is read here and not by the framework, so that the table goes straight into its file.
/// </summary>
/// <remarks>The seal of the form is its first field and is checked before a byte of the table is taken.</remarks>
[IgnoreAntiforgeryToken]
[DisableRequestSizeLimit]
internal sealed class ImportModel(ImportRuns runs, WaitingTables tables, TableOffer offer, DeskOptions options, IAntiforgery seal)
: PageModel
{
    private const string SealField = "__RequestVerificationToken";
    private const string SealHeader = "RequestVerificationToken";
    private const int LongestSeal = 4096;
    private static readonly DateTimeZone California = DateTimeZoneProviders.Tzdb["America/Los_Angeles"];

    /// <summary>Why the table was not taken.</summary>
    public string? Refused { get; private set; }

    /// <summary>Tables given before, the last first.</summary>
    public IReadOnlyList<ImportState> Waiting { get; private set; } = [];

    /// <summary>The largest table in bytes.</summary>
    public long Largest => options.LargestTable;

    /// <summary>The largest table in MiB.</summary>
    public long LargestMegabytes => options.LargestTable / (1024 * 1024);

    /// <summary>When a table was received.</summary>
    public static string When(ImportState state) => InstantPattern.General.Parse(state.Received) is { Success: true } parsed
        ? $"{LawText.Day(parsed.Value.InZone(California).Date)}, {parsed.Value.InZone(California)
            .ToString("h:mm tt", CultureInfo.InvariantCulture)}"
        : "";

    /// <summary>How far a table is, in words.</summary>
    public static string Stand(ImportState state) => state.Step switch
    {
        ImportStep.Received => "waits to be looked at; nothing is written",
        ImportStep.Looking => "is being read; nothing is written",
        ImportStep.Looked => "looked at; nothing is written",
        ImportStep.Writing => "is being written",
        ImportStep.Written => "written",
        ImportStep.Broken => "was broken off; look again",
        ImportStep.SetAside => "was set aside, since the desk ended while reading it; nothing is written",
        _ => throw new InvalidOperationException($"No such step: {state.Step}."),
    };

    /// <summary>Shows the form.</summary>
    public void OnGet() => Waiting = [.. tables.All().Select(state => runs.Find(state.Id)).OfType<ImportState>()];

    /// <summary>Takes a table.</summary>
    public async Task<IActionResult> OnPostAsync()
    {
        var body = Request.Body;
        var boundary = MediaTypeHeaderValue.TryParse(Request.ContentType, out var type) && type.MediaType == "multipart/form-data"
            ? HeaderUtilities.RemoveQuotes(type.Boundary).Value
            : null;

        // The page that says what is wrong must not read the form a second time.
        Request.Form = FormCollection.Empty;
        if (string.IsNullOrEmpty(boundary))
            return BadRequest();
        try
        {
            return await TakeAsync(new MultipartReader(boundary, body)).ConfigureAwait(false);
        }
        catch (Exception e) when (e is InvalidDataException or IOException && !HttpContext.RequestAborted.IsCancellationRequested)
        {
            return Refuse("The form broke off before the table was whole.");
        }
    }

    private async Task<IActionResult> TakeAsync(MultipartReader form)
    {
        var stop = HttpContext.RequestAborted;
        while (await form.ReadNextSectionAsync(stop).ConfigureAwait(false) is { } section)
        {
            if (section.GetContentDispositionHeader() is not { } disposition)
                continue;
            if (disposition.Name == SealField)
            {
                Request.Headers[SealHeader] = await SealAsync(section.Body, stop).ConfigureAwait(false);
            }
            else if (disposition.IsFileDisposition())
            {
                if (!await seal.IsRequestValidAsync(HttpContext).ConfigureAwait(false))
                    return BadRequest();
                var name = disposition.FileNameStar.HasValue ? disposition.FileNameStar.Value : disposition.FileName.Value;
                if (string.IsNullOrWhiteSpace(name))
                    return Refuse("No file was chosen.");
                switch (await tables.ReceiveAsync(section.Body, name, stop).ConfigureAwait(false))
                {
                    case Outcome<ImportState>.Done { Value: var state }:
                        tables.Keep(offer.Make(state, stop));
                        return Redirect($"/import/{state.Id}");
                    case Outcome<ImportState>.Refused refused:
                        return Refuse(refused.Why[0]);
                }
            }
        }

        return await seal.IsRequestValidAsync(HttpContext).ConfigureAwait(false) ? Refuse("No file was chosen.") : BadRequest();
    }

    private PageResult Refuse(string why)
    {
        OnGet();
        Refused = why;
        return Page();
    }

    private static async Task<string> SealAsync(Stream body, CancellationToken stop)
    {
        var bytes = new byte[LongestSeal];
        var length = await body.ReadAtLeastAsync(bytes, LongestSeal, throwOnEndOfStream: false, stop).ConfigureAwait(false);
        return Encoding.ASCII.GetString(bytes, 0, length);
    }
}
