using System.Text.Json.Nodes;

namespace Stringline.Office.Entering;

/// <summary>Reaches fields of a head by their path, such as <c>work.site.county</c>.</summary>
internal static class HeadPaths
{
    /// <summary>The value at a path; null where there is none.</summary>
    public static JsonNode? At(this JsonObject from, string path)
    {
        JsonNode? at = from;
        foreach (var name in path.Split('.'))
            at = (at as JsonObject)?[name];
        return at;
    }

    /// <summary>Sets the value at a path; null takes the field away. Objects on the way are made where they are wanted.</summary>
    public static void Put(this JsonObject to, string path, JsonNode? value)
    {
        var names = path.Split('.');
        var at = to;
        foreach (var name in names[..^1])
        {
            if (at[name] is JsonObject next)
            {
                at = next;
                continue;
            }

            if (value is null)
                return;
            var made = new JsonObject();
            at[name] = made;
            at = made;
        }

        if (value is null)
            at.Remove(names[^1]);
        else
            at[names[^1]] = value;
    }

    /// <summary>The value as it is typed.</summary>
    public static string Text(JsonNode? value) => value switch
    {
        null => "",
        JsonValue text when text.TryGetValue<string>(out var said) => said,
        JsonArray { Count: > 0 } list when list.All(item => item is JsonValue) => string.Join('\n', list.Select(Text)),
        _ => value.ToJsonString(),
    };
}
