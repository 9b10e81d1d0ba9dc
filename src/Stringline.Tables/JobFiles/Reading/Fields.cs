using System.Globalization;
using System.Text.Json;
using Stringline.Law.Facts;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>
/// Reads one object field by field. Every field asked for is thereby known; <see cref="Finish"/> refuses the rest.
/// A field that is absent, null or faulty gives null; a fault makes the whole file refused, so no stand-in value gets out.
/// </summary>
internal sealed partial class Fields
{
    private const int LongestLine = 500;
    private const int LongestName = 60;
    private const int LongestText = 20_000;

    private readonly Source source;
    private readonly JsonPiece piece;
    private readonly List<string> known = [];

    private Fields(Source source, JsonPiece piece, string path)
    {
        this.source = source;
        this.piece = piece;
        Path = path;
    }

    /// <summary>The object's own path; empty for the outermost.</summary>
    public string Path { get; }

    /// <summary>Offset of the object's first byte.</summary>
    public int Start => piece.Start;

    /// <summary>The fields of an object, or null with a fault where the piece is something else.</summary>
    public static Fields? Of(Source source, JsonPiece piece, string path, string expected)
    {
        if (piece.Kind == JsonKind.Object)
            return new Fields(source, piece, path);
        source.Faults.Add(piece, path, expected);
        return null;
    }

    /// <summary>The path of a field of this object.</summary>
    public string PathOf(string name)
    {
        var plain = name.Length is > 0 and <= LongestName && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
        return plain
            ? Path.Length == 0 ? name : $"{Path}.{name}"
            : $"{Path}[\"{JsonEncodedText.Encode(Beginning(name))}\"]";
    }

    /// <summary>The value of a field, JSON null included; null where the field is absent.</summary>
    public JsonPiece? Raw(string name)
    {
        if (!known.Contains(name))
            known.Add(name);
        foreach (var field in piece.Fields)
        {
            if (field.Name == name)
                return field.Value;
        }

        return null;
    }

    /// <summary>Whether a field is present and not null.</summary>
    public bool Has(string name) => Raw(name) is { Kind: not JsonKind.Null };

    /// <summary>Takes note of a field's fault.</summary>
    public void Fault(string name, JsonPiece at, string expected) => source.Faults.Add(at, PathOf(name), expected);

    /// <summary>The same; what would be right is sought only where the fault is told.</summary>
    public void Fault(string name, JsonPiece at, Func<string> expected) => source.Faults.Add(at, PathOf(name), expected);

    /// <summary>Takes note of a fault of the object as a whole, told in words.</summary>
    public void Fault(string found, string expected) => source.Faults.Add(Start, Path, found, expected);

    /// <summary>A text on one line; blank counts as absent.</summary>
    public string? Line(string name) => Text(name, lines: false);

    /// <summary>A text of one or several lines; blank counts as absent.</summary>
    public string? Lines(string name) => Text(name, lines: true);

    /// <summary>A text on one line that must be there and not be blank.</summary>
    public string RequiredLine(string name, string meaning)
    {
        if (Present(name, meaning) is not { } value)
            return "";
        if (value.Kind == JsonKind.Text && value.Text is { } text && string.IsNullOrWhiteSpace(text))
            Fault(name, value, meaning);
        return Text(name, lines: false) ?? "";
    }

    /// <summary>Refuses the object where the field is absent or null.</summary>
    public void Required(string name, string expected) => Present(name, expected);

    /// <summary>A text on one line that names something; where it stands is noted.</summary>
    public string? Mentioned(string name, List<Mention> mentions)
    {
        var text = Line(name);
        if (text is not null)
            mentions.Add(new Mention(text, Raw(name)!, PathOf(name)));
        return text;
    }

    /// <summary>One of a set of words, as its place in the table.</summary>
    public int? Word(string name, WordTable table)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind == JsonKind.Text && table.IndexOf(value.Text) is { } index)
            return index;
        Fault(name, value, () => OneOf(name, table, value.Text));
        return null;
    }

    /// <summary>One of a set of words that must be there, as its place in the table.</summary>
    public int RequiredWord(string name, WordTable table)
    {
        if (Value(name) is not null)
            return Word(name, table) ?? 0;
        Present(name, OneOf(name, table, null));
        return 0;
    }

    /// <summary>True or false.</summary>
    public bool? Truth(string name)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind is JsonKind.True or JsonKind.False)
            return value.Kind == JsonKind.True;
        Fault(name, value, "true or false");
        return null;
    }

    /// <summary>True or false; false where it is absent.</summary>
    public bool Flag(string name) => Raw(name) is not null && RequiredTruth(name);

    /// <summary>True or false, and it must be said.</summary>
    public bool RequiredTruth(string name) => Present(name, "true or false") is not null && (Truth(name) ?? false);

    /// <summary>A count up to 9,999.</summary>
    public int? Count(string name, int least = 1)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind == JsonKind.Number
            && value.Text!.Length <= 4
            && int.TryParse(value.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            && count >= least)
        {
            return count;
        }

        Fault(name, value, $"a whole number from {least} to 9999");
        return null;
    }

    /// <summary>A percentage from 0 to 100, with at most two decimals.</summary>
    public decimal? Percent(string name)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind == JsonKind.Number && MoneyText.Read(value.Text!, out var percent) is null && percent is >= 0m and <= 100m)
            return percent;
        Fault(name, value, "a percentage from 0 to 100 as a JSON number with at most two decimals, such as 5");
        return null;
    }

    /// <summary>A known day.</summary>
    public LocalDate? Day(string name) => Value(name) is { } value ? DayOf(PathOf(name), value) : null;

    /// <summary>A known day that must be there.</summary>
    public LocalDate RequiredDay(string name) =>
        Present(name, "a day as year-month-day, such as 2026-03-02") is null ? default : Day(name) ?? default;

    /// <summary>An amount in dollars and cents.</summary>
    public decimal? Money(string name, MoneyRange range)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind != JsonKind.Number)
        {
            Fault(name, value, "an amount as a JSON number without quotation marks, such as 1200.00");
            return null;
        }

        if (MoneyText.Read(value.Text!, out var dollars) is { } expected)
        {
            Fault(name, value, expected);
            return null;
        }

        var inRange = range switch
        {
            MoneyRange.AboveZero => dollars > 0m,
            MoneyRange.ZeroOrMore => dollars >= 0m,
            _ => true,
        };
        if (inRange)
            return dollars;
        Fault(name, value, range == MoneyRange.AboveZero ? "an amount above zero" : "an amount of zero or more");
        return null;
    }

    /// <summary>An amount that must be there.</summary>
    public decimal RequiredMoney(string name, MoneyRange range) =>
        Present(name, "an amount in dollars, such as 1200.00") is null ? 0m : Money(name, range) ?? 0m;

    /// <summary>An object; null where it is absent.</summary>
    public Fields? Object(string name) =>
        Value(name) is { } value ? Of(source, value, PathOf(name), "an object in braces { }") : null;

    /// <summary>An object that must be there.</summary>
    public Fields? RequiredObject(string name) =>
        Present(name, "an object in braces { }") is null ? null : Object(name);

    /// <summary>Two days in order, as <c>["2026-03-01", "2026-03-10"]</c>.</summary>
    public DayFact? Between(string name)
    {
        var value = Raw(name)!;
        if (value.Kind != JsonKind.Array || value.Items.Count != 2)
        {
            Fault(name, value, "two days in order, such as [\"2026-03-01\", \"2026-03-10\"]");
            return null;
        }

        var first = DayOf($"{PathOf(name)}[0]", value.Items[0]);
        var last = DayOf($"{PathOf(name)}[1]", value.Items[1]);
        if (first is not { } from || last is not { } to)
            return null;
        if (from <= to)
            return new DayFact.Between(from, to);
        Fault(name, value, $"the earlier day first: [\"{DayText.Write(to)}\", \"{DayText.Write(from)}\"]");
        return null;
    }

    /// <summary>Refuses every field that was not asked for, and every field that stands twice.</summary>
    public void Finish()
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < piece.Fields.Count; i++)
        {
            var field = piece.Fields[i];
            var isSecond = !met.Add(field.Name);
            if (!known.Contains(field.Name))
            {
                source.Faults.Add(
                    field.Start,
                    () => PathOf(field.Name),
                    "an unknown field",
                    () => $"one of the fields {string.Join(", ", known)}{TradeWords.FieldClause(field.Name, known)}");
            }
            else if (isSecond)
            {
                source.Faults.Add(field.Start, () => PathOf(field.Name), "the field a second time", () => "each field once");
            }
        }
    }

    // No half of a character is left at the cut: that could not be written.
    private static string Beginning(string name) => name.Length <= LongestName ? name
        : name[..(char.IsHighSurrogate(name[LongestName - 1]) ? LongestName - 1 : LongestName)] + "...";

    private static string OneOf(string name, WordTable table, string? text) =>
        "one of " + string.Join(", ", table.Words.Select(word => $"\"{word}\""))
        + (text is null ? "" : TradeWords.Clause(name, text, table.Words));

    /// <summary>The value of a field; null where it is absent or JSON null.</summary>
    private JsonPiece? Value(string name) => Raw(name) is { Kind: not JsonKind.Null } value ? value : null;

    private JsonPiece? Present(string name, string expected)
    {
        var value = Raw(name);
        if (value is null)
            source.Faults.Add(Start, PathOf(name), "nothing: the field is missing", expected);
        else if (value.Kind == JsonKind.Null)
            Fault(name, value, expected);
        else
            return value;
        return null;
    }

    private string? Text(string name, bool lines)
    {
        if (Value(name) is not { } value)
            return null;
        if (value.Kind != JsonKind.Text)
        {
            Fault(name, value, "a text in quotation marks");
            return null;
        }

        if (value.Text is not { } text)
        {
            Fault(name, value, "a text without half characters: an escape from \\uD800 to \\uDFFF needs its partner");
            return null;
        }

        var longest = lines ? LongestText : LongestLine;
        if (text.Length > longest)
            Fault(name, value, $"a text of at most {longest} characters; this one has {text.Length}");
        foreach (var rune in text.EnumerateRunes())
        {
            if (!(source.IsNew(value) ? Signs.IsRefused(rune) : Signs.IsInvisible(rune)) || (lines && rune.Value == '\n'))
                continue;
            Fault(
                name,
                value,
                lines
                    ? $"a text without invisible characters other than the line break \\n; this one holds U+{rune.Value:X4}"
                    : $"a text on one line without invisible characters; this one holds U+{rune.Value:X4}");
            break;
        }

        return string.IsNullOrWhiteSpace(text) ? null : text;
    }

    private LocalDate? DayOf(string path, JsonPiece value)
    {
        if (value.Kind != JsonKind.Text || value.Text is null)
        {
            source.Faults.Add(value, path, "a day in quotation marks as year-month-day, such as \"2026-03-02\"");
            return null;
        }

        if (DayText.Read(value.Text, out var day) is not { } expected)
            return day;
        source.Faults.Add(value, path, expected);
        return null;
    }
}
