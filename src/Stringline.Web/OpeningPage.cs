using Stringline.Store;

namespace Stringline.Web;

/// <summary>
/// A page on the disk that leads to the desk. The browser is opened with it and not with the address, because every account of the
/// machine can read what a program was started with. Only its owner can read the page; it is gone once the browser was let in.
/// </summary>
internal sealed class OpeningPage : IDisposable
{
    private readonly string folder;

    private OpeningPage(string folder) => this.folder = folder;

    /// <summary>Where it is.</summary>
    public string Path => System.IO.Path.Combine(folder, "open-the-desk.html");

    /// <summary>Writes one; null where no folder takes it.</summary>
    public static OpeningPage? To(string address)
    {
        foreach (var place in (string[])[Home, System.IO.Path.GetTempPath()])
        {
            var page = new OpeningPage(System.IO.Path.Combine(place, "stringline-" + Guid.NewGuid().ToString("N")[..12]));
            try
            {
                OwnerOnly.Folder(page.folder);
                OwnerOnly.Write(page.Path, System.Text.Encoding.UTF8.GetBytes(Html(address)));
                return page;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                page.Dispose();
            }
        }

        return null;
    }

    // On Linux browsers often come in a sandbox that sees neither the folder for temporary files nor what begins with a dot.
    private static string Home => OperatingSystem.IsLinux()
        ? Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)
        : System.IO.Path.GetTempPath();

    /// <summary>Deletes it.</summary>
    public void Dispose()
    {
        try
        {
            if (Directory.Exists(folder))
                Directory.Delete(folder, recursive: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The secret in it ends with the desk.
        }
    }

    private static string Html(string address) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="referrer" content="no-referrer">
        <meta http-equiv="refresh" content="0; url={address}">
        <title>Stringline</title>
        </head>
        <body><p>The desk opens. If it does not, <a href="{address}">open it here</a>.</p></body>
        </html>

        """;
}
