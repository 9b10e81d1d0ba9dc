using System.Text.Json.Nodes;
using Stringline.Tables;
using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>The day of an entry as it is typed: one choice, and the days that belong to it.</summary>
internal static class WhenTyped
{
    /// <summary>The field of the choice.</summary>
    public const string Choice = "when";

    /// <summary>Choice: on one day.</summary>
    public const string On = "on";

    /// <summary>Choice: on one day that lies between two.</summary>
    public const string Between = "between";

    /// <summary>Choice: over a span of work.</summary>
    public const string Span = "span";

    /// <summary>Choice: nobody knows.</summary>
    public const string Unknown = "unknown";

    /// <summary>The field of the one day.</summary>
    public const string Day = "when-on";

    /// <summary>The field of the first day it can have been.</summary>
    public const string First = "when-first";

    /// <summary>The field of the last day it can have been.</summary>
    public const string Last = "when-last";

    /// <summary>The field of the first day of a span.</summary>
    public const string From = "when-from";

    /// <summary>The field of the last day of a span.</summary>
    public const string To = "when-to";

    /// <summary>Writes the day as the job file has it, or what is wrong under <see cref="Choice"/>.</summary>
    public static void Write(DayRule rule, Typed typed, JsonObject entry, Faults faults)
    {
        switch (typed[Choice])
        {
            case On when Others(typed):
                faults.Add(Choice, "Days stand in more than one line: choose the line that is meant, and empty the others.");
                break;
            case On:
                entry["on"] = One(typed[Day], "the day", faults);
                break;
            case Between:
                entry["between"] = new JsonArray(One(typed[First], "the first day it can have been", faults),
                    One(typed[Last], "the last day it can have been", faults));
                InOrder(typed[First], typed[Last], faults);
                break;
            case Span when rule == DayRule.Span:
                entry["from"] = One(typed[From], "the first day of the work", faults);
                entry["to"] = One(typed[To], "the last day of the work", faults);
                InOrder(typed[From], typed[To], faults);
                break;
            case Unknown when rule == DayRule.Any:
                entry["on"] = null;
                break;
            default:
                faults.Add(Choice, "Choose how well the day is known.");
                break;
        }
    }

    private static bool Others(Typed typed) => (typed[First] + typed[Last] + typed[From] + typed[To]).Length > 0;

    private static JsonValue? One(string text, string what, Faults faults)
    {
        if (text.Length == 0)
            faults.Add(Choice, $"Fill in {what}.");
        else if (DayText.Read(text, out _) is { } expected)
            faults.Add(Choice, $"\"{text}\" cannot be read as {what}: it should be {expected}.");
        else
            return JsonValue.Create(text);
        return null;
    }

    private static void InOrder(string first, string last, Faults faults)
    {
        if (DayText.Read(first, out var from) is null && DayText.Read(last, out var to) is null && to < from)
            faults.Add(Choice, $"The last day, {last}, is before the first, {first}.");
    }
}
