using System.Globalization;
using System.Text.Json.Nodes;
using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>Turns what was typed into the value that the job file has in its place.</summary>
internal static class AnswerReading
{
    /// <summary>What is typed for a list of days that is known to be empty.</summary>
    public const string NoDay = "none";

    /// <summary>The value; null where nothing was answered, or where it is noted what is wrong.</summary>
    public static JsonNode? Read(Asked asked, Typed typed, Faults faults) => Read(asked, asked.Name, typed, faults);

    /// <summary>The value of one field of several that are asked for alike.</summary>
    public static JsonNode? Read(Asked asked, string field, Typed typed, Faults faults)
    {
        if (asked.Answer == Answer.Tick)
            return JsonValue.Create(typed[field] == "true");
        if (asked.Answer is Answer.Parties or Answer.Several)
        {
            var ids = typed.Several(field).Where(id => id.Length > 0).ToList();
            if (ids.Count > 0)
                return new JsonArray([.. ids.Select(id => JsonValue.Create(id))]);
            if (asked.Required)
                faults.Add(field, "Choose at least one.");
            return null;
        }

        var text = typed[field];
        if (text.Length == 0)
        {
            if (asked.Required)
                faults.Add(field, asked.Answer is Answer.OneOf or Answer.YesOrNo or Answer.Party or Answer.County
                    ? "Choose one." : "This must be filled in.");
            return null;
        }

        switch (asked.Answer)
        {
            case Answer.Money or Answer.SignedMoney:
                if (TypedMoney.Read(text) is { } dollars && (dollars >= 0 || asked.Answer == Answer.SignedMoney))
                    return JsonValue.Create(dollars);
                faults.Add(field, $"\"{text}\" is no amount: dollars and cents, such as "
                    + $"12,500.00{(asked.Answer == Answer.SignedMoney ? " or -350.00" : "")}.");
                return null;
            case Answer.Day:
                if (DayText.Read(text, out _) is not { } expected)
                    return JsonValue.Create(text);
                faults.Add(field, $"\"{text}\" cannot be read: it should be {expected}.");
                return null;
            case Answer.Count:
                if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= asked.Least
                    && count <= 9999)
                    return JsonValue.Create(count);
                faults.Add(field, $"\"{text}\" is no count: a whole number from {asked.Least} to 9999.");
                return null;
            case Answer.Percent:
                if (Percent(text) is { } percent)
                    return JsonValue.Create(percent);
                faults.Add(field, $"\"{text}\" is no percentage: from 0 to 100, such as 5.");
                return null;
            case Answer.Days or Answer.Counties:
                return Lines(asked, field, text, faults);
            case Answer.YesOrNo when text is "true" or "false":
                return JsonValue.Create(text == "true");
            case Answer.County when Counties.Find(text) is { } county:
                return JsonValue.Create(county);
            case Answer.YesOrNo or Answer.County:
                faults.Add(field, $"\"{text}\" is none of the choices.");
                return null;
            default:
                return JsonValue.Create(text);
        }
    }

    private static JsonArray? Lines(Asked asked, string field, string text, Faults faults)
    {
        var lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (asked.Answer == Answer.Days && lines is [var only] && only.Equals(NoDay, StringComparison.OrdinalIgnoreCase))
            return [];
        var read = new JsonArray();
        foreach (var line in lines)
        {
            var value = asked.Answer == Answer.Days ? DayText.Read(line, out _) is null ? line : null : Counties.Find(line);
            if (value is null)
            {
                faults.Add(field, asked.Answer == Answer.Days
                    ? $"\"{line}\" is no day: year-month-day, such as 2026-03-02, one on a line."
                    : $"\"{line}\" is none of California's 58 counties; one on a line.");
            }

            read.Add(JsonValue.Create(value));
        }

        return read;
    }

    private static decimal? Percent(string text) =>
        TypedMoney.Read(text.EndsWith('%') ? text[..^1] : text) is { } percent and >= 0m and <= 100m
        && !text.Contains('$', StringComparison.Ordinal) ? percent : null;
}
