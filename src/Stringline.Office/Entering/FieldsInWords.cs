using System.Text.RegularExpressions;

namespace Stringline.Office.Entering;

/// <summary>What the reader of job files says of a fault, with the words of the form in the place of the file's own names.</summary>
internal static partial class FieldsInWords
{
    /// <summary>The text for the one who fills in these fields.</summary>
    public static string Of(string expected, IReadOnlyList<Asked> fields)
    {
        var labeled = Name().Replace(expected, name => Labeled(name.Groups[1].Value, fields) ?? name.Groups[1].Value);
        foreach (var choice in fields.SelectMany(asked => asked.Choices))
            labeled = labeled.Replace($"\"{choice.Word}\"", $"“{choice.Words}”", StringComparison.Ordinal);
        return labeled;
    }

    private static string? Labeled(string name, IReadOnlyList<Asked> fields) =>
        fields.FirstOrDefault(asked => asked.Name == name || asked.Name.EndsWith("." + name, StringComparison.Ordinal)) is { } found
        ? $"“{found.Label}”" : null;

    [GeneratedRegex("`([a-zA-Z.]+)`")]
    private static partial Regex Name();
}
