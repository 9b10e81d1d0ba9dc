using System.Globalization;
using System.Text.Json.Nodes;
using Stringline.Law.Facts;

namespace Stringline.Tables.Tests;

/// <summary>
/// The part of the published schema that describes the entries, made from the descriptions of their kinds. What stands in the schema
/// besides stays as it is: the head of the file, and conditions between the fields of one kind, which the reader has as a check of its own.
/// </summary>
internal static class EntrySchema
{
    private const string Prefix = "entry-";

    private static readonly string[] Conditions = ["if", "then", "else", "not", "allOf"];

    /// <summary>The schema with its entries made anew.</summary>
    public static JsonObject With(JsonObject schema)
    {
        var made = schema.DeepClone().AsObject();
        var definitions = made["$defs"]!.AsObject();
        foreach (var gone in definitions.Select(definition => definition.Key).Where(IsOfNoKind).ToList())
            definitions.Remove(gone);
        foreach (var kind in EntryKinds.All)
            definitions[Prefix + kind.Name] = Kind(kind, definitions[Prefix + kind.Name] as JsonObject ?? []);
        var items = made["properties"]!["entries"]!["items"]!.AsObject();
        items["oneOf"] = new JsonArray([.. EntryKinds.All.Select(kind => Reference(Prefix + kind.Name))]);
        made["allOf"] = new JsonArray([OnlyOn(WorkKind.Public, "private", "federal"), OnlyOn(WorkKind.Private, "public", "federal")]);
        return made;
    }

    private static bool IsOfNoKind(string definition) =>
        definition.StartsWith(Prefix, StringComparison.Ordinal) && EntryKinds.Find(definition[Prefix.Length..]) is null;

    private static JsonObject Kind(EntryKind kind, JsonObject before)
    {
        var isSpan = kind.Day == DayRule.Span;
        var properties = new JsonObject
        {
            ["what"] = new JsonObject { ["const"] = kind.Name },
            ["on"] = kind.Day == DayRule.Any
                ? Described("The day; null where it happened but nobody knows when.", "optionalDay")
                : Reference("day"),
            ["between"] = Reference("between"),
        };
        if (isSpan)
        {
            properties["from"] = Described("First day of a span.", "day");
            properties["to"] = Described("Last day of a span, included.", "day");
        }

        foreach (var field in kind.Fields.Where(field => field is not Field.LastDay))
            properties[field.Name] = Property(field);
        properties["id"] = Described("Name by which a later entry may replace this one; unique in the file.", "optionalLine");
        properties["supersedes"] = kind.TakesBack
            ? Described("The id of the entry that is taken back.", "line")
            : Described("The id of the entry that this one replaces.", "optionalLine");
        properties["learned"] = Described("The day on which the claimant learned it; absent: on the day it happened.", "optionalDay");
        List<string> required = ["what", .. kind.Fields.Where(field => field.Required).Select(field => field.Name)];
        if (kind.TakesBack)
            required.Add("supersedes");
        var made = new JsonObject
        {
            ["description"] = kind.Meaning,
            ["type"] = "object",
            ["required"] = Texts(required),
            ["additionalProperties"] = false,
            ["oneOf"] = new JsonArray([Requires("on"), Requires("between"), .. isSpan ? [Requires("from", "to")] : (JsonObject[])[]]),
            ["properties"] = properties,
        };
        if (isSpan)
            made["dependentRequired"] = new JsonObject { ["from"] = Texts(["to"]), ["to"] = Texts(["from"]) };
        foreach (var condition in Conditions.Where(before.ContainsKey))
            made[condition] = before[condition]!.DeepClone();
        return InTheOrderOf(before, made);
    }

    private static JsonObject Property(Field field)
    {
        var made = new JsonObject();
        if (field.Meaning.Length > 0)
            made["description"] = field.Meaning;
        switch (field)
        {
            case Field.Text { Holds: TextHolds.County }:
                made["enum"] = new JsonArray([null, .. Counties.All.Select(county => JsonValue.Create(county))]);
                break;
            case Field.Word word:
                List<JsonNode?> words = [.. word.Table.Words.Select(one => JsonValue.Create(one))];
                if (word.TakesNumbers)
                    words.AddRange(word.Table.Words.Select(one => JsonValue.Create(int.Parse(one, CultureInfo.InvariantCulture))));
                if (!word.Required)
                    words.Add(null);
                made["enum"] = new JsonArray([.. words]);
                break;
            case Field.YesNo { Required: false }:
                made["type"] = Texts(["boolean", "null"]);
                break;
            case Field.YesNo or Field.Tick:
                made["type"] = "boolean";
                break;
            case Field.Words or Field.Days:
                made["type"] = Texts(["array", "null"]);
                made["uniqueItems"] = true;
                made["items"] = field is Field.Words few ? new JsonObject { ["enum"] = Texts(few.Table.Words) } : Reference("day");
                break;
            default:
                made["$ref"] = "#/$defs/" + Definition(field);
                break;
        }

        return made;
    }

    private static string Definition(Field field) => field switch
    {
        Field.Text { Holds: TextHolds.Lines } => "optionalText",
        Field.Text => "optionalLine",
        Field.Money { Range: MoneyRange.Any, Required: true } => "money",
        Field.Money { Range: MoneyRange.AboveZero, Required: true } => "moneyAboveZero",
        Field.Money { Range: MoneyRange.AboveZero } => "optionalMoneyAboveZero",
        Field.Money { Range: MoneyRange.ZeroOrMore, Required: false } => "optionalMoney",
        Field.Day { Required: true } => "day",
        Field.Day => "optionalDay",
        Field.Count { Least: 0 } => "whole",
        Field.Count => "count",
        Field.Parties { Required: true } => "partyIds",
        Field.Parties => "somePartyIds",
        _ => throw new InvalidOperationException($"No definition in the schema for {field.Name}."),
    };

    private static JsonObject OnlyOn(WorkKind needed, params string[] others) => new()
    {
        ["if"] = Under("work", Under("kind", new JsonObject { ["enum"] = Texts(others) })),
        ["then"] = Under("entries", new JsonObject
        {
            ["items"] = Under("what", new JsonObject { ["not"] = new JsonObject { ["enum"] = Texts(NamesOf(needed)) } }),
        }),
    };

    private static IEnumerable<string> NamesOf(WorkKind needed) =>
        EntryKinds.All.Where(kind => kind.OnlyOn == needed).Select(kind => kind.Name);

    private static JsonObject Under(string property, JsonObject schema) =>
        new() { ["properties"] = new JsonObject { [property] = schema } };

    private static JsonObject Requires(params string[] names) => new() { ["required"] = Texts(names) };

    private static JsonObject Described(string description, string definition) =>
        new() { ["description"] = description, ["$ref"] = "#/$defs/" + definition };

    private static JsonObject Reference(string definition) => new() { ["$ref"] = "#/$defs/" + definition };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => JsonValue.Create(text))]);

    private static JsonObject InTheOrderOf(JsonObject before, JsonObject made)
    {
        var ordered = new JsonObject();
        foreach (var name in before.Select(field => field.Key).Concat(made.Select(field => field.Key)).Distinct().Where(made.ContainsKey))
            ordered[name] = made[name]!.DeepClone();
        return ordered;
    }
}
