using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Stringline.Exchange;
using Stringline.Law.Facts;

namespace Stringline.Desk.Entering;

/// <summary>Turns what was typed into the value that the job file has in its place.</summary>
internal static partial class AnswerReading
{
    /// <summary>The value; null where nothing was answered, or where it is noted what is wrong.</summary>
    public static JsonNode? Read(Asked asked, Typed typed, Faults faults) => Read(asked, asked.Name, typed, faults);

    /// <summary>The value of one field of several that are asked for alike.</summary>
    public static JsonNode? Read(Asked asked, string field, Typed typed, Faults faults)
    {
        if (asked.Answer == Answer.Tick)
            return JsonValue.Create(typed[field] == "true");
        if (asked.Answer == Answer.Parties)
        {
            var ids = typed.Several(field).Where(id => id.Length > 0).ToList();
            if (ids.Count > 0)
                return new JsonArray([.. ids.Select(id => JsonValue.Create(id))]);
            faults.Add(field, "Choose at least one.");
            return null;
        }

        var text = typed[field];
        if (text.Length == 0)
        {
            if (asked.Required)
                faults.Add(field, asked.Answer is Answer.OneOf or Answer.YesOrNo or Answer.Party or Answer.County ? "Choose one." : "This must be filled in.");
            return null;
        }

        switch (asked.Answer)
        {
            case Answer.Money or Answer.SignedMoney:
                if (Dollars(text) is { } dollars && (dollars >= 0 || asked.Answer == Answer.SignedMoney))
                    return JsonValue.Create(dollars);
                faults.Add(field, $"\"{text}\" is no amount: dollars and cents, such as 12,500.00{(asked.Answer == Answer.SignedMoney ? " or -350.00" : "")}.");
                return null;
            case Answer.Day:
                if (DayText.Read(text, out _) is not { } expected)
                    return JsonValue.Create(text);
                faults.Add(field, $"\"{text}\" cannot be read: it should be {expected}.");
                return null;
            case Answer.Count:
                if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is > 0 and <= 9999)
                    return JsonValue.Create(count);
                faults.Add(field, $"\"{text}\" is no count: a whole number from 1 to 9999.");
                return null;
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

    /// <summary>Dollars and cents as a person types them; null where it is no amount. Commas stand at thousands only, so that 12,50 is not taken for 1,250.</summary>
    public static decimal? Dollars(string text)
    {
        var match = Amount().Match(text);
        return match.Success && decimal.TryParse(match.Groups[1].Value + match.Groups[2].Value.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var dollars)
            && Math.Abs(dollars) <= MoneyText.Largest ? dollars : null;
    }

    [GeneratedRegex(@"^\s*(-?)\s*\$?\s*((?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]{1,12})(?:\.[0-9]{1,2})?)\s*\z", RegexOptions.CultureInvariant)]
    private static partial Regex Amount();
}
