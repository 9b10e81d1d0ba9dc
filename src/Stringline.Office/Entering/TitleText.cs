using System.Text.Json.Nodes;

namespace Stringline.Office.Entering;

/// <summary>
/// Persons who hold title as they are typed: one on a line, <c>Surname, Given names, Suffix</c> (with semicolons where a name holds a
/// comma), or <c>= Entity</c>. Surname and given names are never guessed.
/// </summary>
internal static class TitleText
{
    private const string Persons = "holdsTitleAs.persons";
    private const string Decedent = "holdsTitleAs.decedent";

    /// <summary>Whether a field holds such persons.</summary>
    public static bool IsTitle(string name) => name is Persons or Decedent;

    /// <summary>As typed.</summary>
    public static string Write(JsonNode? value) => value switch
    {
        JsonArray persons => string.Join('\n', persons.OfType<JsonObject>().Select(Line)),
        JsonObject person => Line(person),
        _ => "",
    };

    /// <summary>As the file has it; null where nothing was typed.</summary>
    public static JsonNode? Read(string name, string text, string field, Faults faults)
    {
        var persons = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(line => Person(line, field, faults)).OfType<JsonNode>().ToArray();
        return persons.Length == 0 ? null : name == Decedent ? persons[0] : new JsonArray(persons);
    }

    private static string Line(JsonObject person) => person["entity"] is { } entity
        ? "= " + HeadPaths.Text(entity)
        : Parts([.. ((string[])["surname", "given", "suffix"]).Select(part => HeadPaths.Text(person[part]))]);

    // A name may hold a comma; then semicolons stand between the parts.
    private static string Parts(string[] parts)
    {
        var mark = parts.Any(part => part.Contains(',', StringComparison.Ordinal)) ? ';' : ',';
        var line = string.Join(mark + " ", parts).TrimEnd(mark, ' ');
        return mark == ';' && !line.Contains(';', StringComparison.Ordinal) ? line + ";" : line;
    }

    private static JsonObject? Person(string line, string field, Faults faults)
    {
        if (line.StartsWith('='))
            return new JsonObject { ["entity"] = line[1..].Trim() };
        var parts = line.Contains(';', StringComparison.Ordinal)
            ? line.TrimEnd(';', ' ').Split(';', StringSplitOptions.TrimEntries) : line.Split(',', StringSplitOptions.TrimEntries);
        if (parts.Length > 3 || parts[0].Length == 0)
        {
            faults.Add(field, $"\"{line}\" cannot be read: Surname, Given names, Suffix, or an entity after a = sign.");
            return null;
        }

        var person = new JsonObject { ["surname"] = parts[0] };
        if (parts.Length > 1 && parts[1].Length > 0)
            person["given"] = parts[1];
        if (parts.Length > 2 && parts[2].Length > 0)
            person["suffix"] = parts[2];
        return person;
    }
}
