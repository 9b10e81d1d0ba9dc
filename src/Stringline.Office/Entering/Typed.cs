using System.Text.Json;
using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>
/// What was typed into a form, field by field, before anything is made of it. It goes into hidden fields and back unchanged.
/// </summary>
internal sealed class Typed
{
    /// <summary>What stands before a field's name in the page.</summary>
    public const string Lead = "f-";

    private readonly Dictionary<string, IReadOnlyList<string>> values = new(StringComparer.Ordinal);

    /// <summary>Every field with what was typed.</summary>
    public IEnumerable<(string Field, string Value)> All =>
        values.OrderBy(typed => typed.Key, StringComparer.Ordinal).SelectMany(typed => typed.Value.Select(answer => (typed.Key, answer)));

    /// <summary>The first answer, without blanks around it; empty where there is none.</summary>
    public string this[string field] => values.TryGetValue(field, out var found) && found.Count > 0 ? found[0].Trim() : "";

    /// <summary>All answers of a field that takes several.</summary>
    public IReadOnlyList<string> Several(string field) => values.GetValueOrDefault(field) ?? [];

    /// <summary>Sets a field.</summary>
    public void Set(string field, params IReadOnlyList<string> answers) => values[field] = answers;

    /// <summary>The same with some fields answered otherwise.</summary>
    public Typed With(params IReadOnlyList<(string Field, IReadOnlyList<string> Answers)> others)
    {
        var typed = new Typed();
        foreach (var (field, answers) in values)
            typed.values[field] = answers;
        foreach (var (field, answers) in others)
            typed.values[field] = answers;
        return typed;
    }

    /// <summary>What a browser sent.</summary>
    public static Typed Of(IEnumerable<(string Name, IEnumerable<string?> Answers)> form)
    {
        var typed = new Typed();
        foreach (var (name, answers) in form)
        {
            // A browser sends line breaks as two characters (HTML, 4.10.22).
            if (name.StartsWith(Lead, StringComparison.Ordinal))
                typed.values[name[Lead.Length..]] = [.. answers.Select(answer => (answer ?? "").ReplaceLineEndings("\n"))];
        }

        return typed;
    }

    /// <summary>What would have been typed for an entry, and its kind.</summary>
    public static (string What, Typed Typed) Of(Entry entry)
    {
        using var json = JsonDocument.Parse(JournalText.Entry(entry));
        var typed = new Typed();
        var what = "";
        var isSpan = entry is Furnished { On: DayFact.Exact, Until: var until } && until != entry.On;
        foreach (var field in json.RootElement.EnumerateObject())
        {
            switch (field.Name)
            {
                case "what":
                    what = field.Value.GetString()!;
                    break;
                case "id" or "supersedes":
                    break;
                case "on":
                    typed.Set(WhenTyped.Choice, field.Value.ValueKind == JsonValueKind.Null ? WhenTyped.Unknown : WhenTyped.On);
                    typed.Set(WhenTyped.Day, Text(field.Value));
                    break;
                case "between":
                    typed.Set(WhenTyped.Choice, WhenTyped.Between);
                    typed.Set(WhenTyped.First, Text(field.Value[0]));
                    typed.Set(WhenTyped.Last, Text(field.Value[1]));
                    break;
                case "from" when isSpan:
                    typed.Set(WhenTyped.Choice, WhenTyped.Span);
                    typed.Set(WhenTyped.From, Text(field.Value));
                    break;
                case "to" when isSpan:
                    typed.Set(WhenTyped.To, Text(field.Value));
                    break;
                case "unpaidWaivers":
                    typed.Set("unpaidWaivers", field.Value.GetArrayLength() == 0
                        ? AnswerReading.NoDay : string.Join('\n', field.Value.EnumerateArray().Select(Text)));
                    break;
                case var name:
                    typed.Set(name, field.Value.ValueKind == JsonValueKind.Array
                        ? [.. field.Value.EnumerateArray().Select(Text)] : [Text(field.Value)]);
                    break;
            }
        }

        return (what, typed);
    }

    private static string Text(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => value.GetString()!,
        JsonValueKind.Null => "",
        _ => value.GetRawText(),
    };
}
