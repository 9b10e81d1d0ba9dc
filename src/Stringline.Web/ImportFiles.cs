using System.Text;
using System.Text.Json;
using Stringline.Office.Import;

namespace Stringline.Web;

/// <summary>What an import hands out: how far it has come, the refused rows, and the kept choices of columns.</summary>
internal static class ImportFiles
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(300);

    /// <summary>Serves them.</summary>
    public static void MapImports(this WebApplication desk)
    {
        desk.MapGet("/import/{id}/progress", FollowAsync);
        desk.MapGet("/import/{id}/refused.csv", (string id, HttpContext context, ImportRuns runs, WaitingTables tables) =>
            runs.Find(id) is { IsRunning: false } state && tables.RefusedOf(state) is { } path
                ? Results.File(path, "text/csv; charset=utf-8", Path.GetFileName(path))
                : Results.NotFound());
        desk.MapGet("/settings/mapping", (string? name, Desk office) =>
            office.Settings.Mappings.Find(mapping => mapping.Name == name) is { } found
            ? Results.File(Encoding.UTF8.GetBytes(found.Json), "application/json", "columns.json")
            : Results.NotFound());
    }

    // WHATWG HTML, § 9.2 (server-sent events): an event for each change, a comment as a sign of life, and an event of our own at the end.
    private static async Task FollowAsync(string id, HttpContext context, ImportRuns runs, IHostApplicationLifetime life)
    {
        if (runs.Find(id) is null)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        context.Response.ContentType = "text/event-stream; charset=utf-8";
        using var both = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, life.ApplicationStopping);
        try
        {
            ToldProgress? last = null;
            // Of what another desk on this store does only that it goes on is known; it ends as ours does.
            while (runs.Find(id) is { IsRunning: true })
            {
                var told = runs.Current is { } run && run.Id == id ? run.Progress() : last;
                await context.Response.WriteAsync(told == last
                    ? ":\n\n" : $"event: progress\ndata: {JsonSerializer.Serialize(told, ImportJson.Default.ToldProgress)}\n\n", both.Token)
                    .ConfigureAwait(false);
                await context.Response.Body.FlushAsync(both.Token).ConfigureAwait(false);
                last = told;
                await Task.Delay(Beat, both.Token).ConfigureAwait(false);
            }

            await context.Response.WriteAsync("event: end\ndata: {}\n\n", both.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            // The page was left, or the desk is being closed: nobody listens any more.
        }
    }
}
