using System.Reflection;
using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace Stringline.Web;

/// <summary>The desk's own stylesheet and script. Their addresses change with their content, so a browser may keep them for good.</summary>
internal static class Assets
{
    private static readonly Dictionary<string, (byte[] Bytes, string Type, string Tag)> All = Load();

    /// <summary>The address of a file, such as <c>/assets/desk.css?v=1a2b3c4d</c>.</summary>
    public static string Address(string name) => $"/assets/{name}?v={All[name].Tag}";

    /// <summary>Serves them.</summary>
    public static void MapAssets(this WebApplication desk) => desk.MapGet("/assets/{name}", (string name, HttpContext context) =>
    {
        if (!All.TryGetValue(name, out var asset))
            return Results.NotFound();
        context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        return Results.Bytes(asset.Bytes, asset.Type, entityTag: new EntityTagHeaderValue($"\"{asset.Tag}\""));
    });

    private static Dictionary<string, (byte[], string, string)> Load()
    {
        const string folder = "assets/";
        var assembly = Assembly.GetExecutingAssembly();
        var all = new Dictionary<string, (byte[], string, string)>(StringComparer.Ordinal);
        foreach (var resource in assembly.GetManifestResourceNames().Where(name => name.StartsWith(folder, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(resource)!;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            var type = Path.GetExtension(resource) switch
            {
                ".css" => "text/css; charset=utf-8",
                ".js" => "text/javascript; charset=utf-8",
                ".svg" => "image/svg+xml",
                var other => throw new InvalidOperationException($"No type is known for {other} files."),
            };
            all.Add(resource[folder.Length..], (bytes, type, Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]));
        }

        return all;
    }
}
