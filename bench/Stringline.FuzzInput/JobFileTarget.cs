using System.Text.Json;
using Stringline.Answers;
using Stringline.Testing;

namespace Stringline.FuzzInput;

/// <summary>Job files.</summary>
internal static class JobFileTarget
{
    private static readonly string[] More =
    [
        "\"2026-02-30\"", "\"9999-12-31\"", "\"0001-01-01\"", "\"between\":[\"2026-06-05\",\"2026-06-12\"]", "null", "true", "false", "-1",
        "1e999", "0.001", "999999999999.99", "\\uD800", "\\u0000", "\"e1\"", "\"p1\"", "{", "}", "[", "]", ",", ":",
    ];

    /// <summary>The target.</summary>
    public static Target Target { get; } = new("job-file", Seeds, Words, bytes => JobFileAnswer.Of(bytes));

    private static IEnumerable<byte[]> Seeds() =>
        Directory.GetFiles(Repository.Path("data/demo"), "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)
            .Concat(BadFiles.Kept("jobs").Select(kept => kept.Content));

    // The names of the fields and the words of lists, as the schema has them.
    private static List<string> Words()
    {
        using var schema = JsonDocument.Parse(File.ReadAllBytes(Repository.Path("data/job-file.schema.json")));
        List<string> words = [.. More];
        Take(schema.RootElement, words);
        return words;
    }

    private static void Take(JsonElement piece, List<string> words)
    {
        switch (piece.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var field in piece.EnumerateObject())
                {
                    if (field is { Name: "properties", Value.ValueKind: JsonValueKind.Object })
                        words.AddRange(field.Value.EnumerateObject().Select(property => $"\"{property.Name}\":"));
                    if (field is { Name: "enum", Value.ValueKind: JsonValueKind.Array })
                        words.AddRange(field.Value.EnumerateArray().Select(word => word.GetRawText()));
                    if (field is { Name: "const" })
                        words.Add(field.Value.GetRawText());
                    Take(field.Value, words);
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in piece.EnumerateArray())
                    Take(item, words);
                break;
        }
    }
}
