using System.Text.Json.Nodes;

namespace Stringline.Law.Tests.Habits.Statutes;

/// <summary>Which facts a job file can say, by the published schema.</summary>
internal static class FieldsOfTheFile
{
    private static readonly JsonObject Schema = JsonNode.Parse(File.ReadAllText(Repository.Path("data/job-file.schema.json")))!.AsObject();

    private static readonly JsonObject Definitions = Schema["$defs"]!.AsObject();

    /// <summary>The kinds of entry, such as <c>owner-told-us</c>.</summary>
    public static IEnumerable<string> EntryKinds =>
        Definitions.Select(d => d.Value!["properties"]?["what"]?["const"]?.GetValue<string>()).OfType<string>();

    /// <summary>Whether there is a field at a path: <c>work.use</c> of the head, <c>owner-told-us.mailed</c> of an entry.</summary>
    public static bool Has(string path)
    {
        var names = path.Split('.');
        JsonNode? at = Schema;
        if (Definitions["entry-" + names[0]] is { } entry)
        {
            at = entry;
            names = names[1..];
        }

        foreach (var name in names)
        {
            at = Object(at)?["properties"]?[name];
            if (at is null)
                return false;
        }

        return names.Length > 0;
    }

    // Past references and lists, to what has the properties.
    private static JsonNode? Object(JsonNode? at)
    {
        while (at is not null)
        {
            if (at["$ref"]?.GetValue<string>() is { } reference)
                at = Definitions[reference["#/$defs/".Length..]];
            else if (at["items"] is { } items)
                at = items;
            else
                break;
        }

        return at;
    }
}
