namespace Stringline.Web;

/// <summary>Whether a request has written: whatever fails after that, it is not to be said that nothing was written.</summary>
internal static class WrittenRequest
{
    /// <summary>Whether it has.</summary>
    public static bool Is(HttpContext context) => context.Items.ContainsKey(typeof(WrittenRequest));

    /// <summary>Notes of each request what it writes.</summary>
    public static void Note(Desk desk, IHttpContextAccessor request) =>
        desk.Wrote += () => request.HttpContext?.Items[typeof(WrittenRequest)] = true;
}
