using System.Text.Json;

namespace Stringline.Tables.JobFiles.Writing;

/// <summary>Writes optional fields: what is null is left out.</summary>
internal static class JsonFields
{
    public static void Text(this Utf8JsonWriter json, string name, string? text)
    {
        if (!string.IsNullOrWhiteSpace(text))
            json.WriteString(name, text);
    }

    public static void Day(this Utf8JsonWriter json, string name, LocalDate? day)
    {
        if (day is { } known)
            json.WriteString(name, DayText.Write(known));
    }

    public static void Truth(this Utf8JsonWriter json, string name, bool? truth)
    {
        if (truth is { } known)
            json.WriteBoolean(name, known);
    }

    /// <summary>Writes dollars and cents with exactly two decimals.</summary>
    public static void Money(this Utf8JsonWriter json, string name, decimal? dollars)
    {
        if (dollars is not { } known)
            return;
        json.WritePropertyName(name);
        json.WriteRawValue(MoneyText.Write(known), skipInputValidation: true);
    }

    public static void Texts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    /// <summary>Writes a list only where it holds something.</summary>
    public static void SomeTexts(this Utf8JsonWriter json, string name, IReadOnlyCollection<string> texts)
    {
        if (texts.Count > 0)
            json.Texts(name, texts);
    }

    /// <summary>Writes true; false is what an absent field says.</summary>
    public static void Flag(this Utf8JsonWriter json, string name, bool flag)
    {
        if (flag)
            json.WriteBoolean(name, true);
    }

    public static void Count(this Utf8JsonWriter json, string name, int? count)
    {
        if (count is { } known)
            json.WriteNumber(name, known);
    }
}
