using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Stringline.Tables.Sheets.Cells;

namespace Stringline.Tables.Sheets.Columns;

/// <summary>A mapping as JSON. What is written is read back the same; an unknown field is refused.</summary>
public static class MappingJson
{
    private const string Format = "stringline-columns/1";
    private static readonly JsonWriterOptions Options =
        new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly string[] Orders = ["month-first-unless-shown", "month-first", "day-first"];

    /// <summary>Writes a mapping.</summary>
    public static byte[] Write(ColumnMapping mapping)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            if (mapping.Kind is { } kind)
                json.WriteString("rows", Word(kind));
            json.WriteString("days", Orders[(int)mapping.Days]);
            if (mapping.Sheet is { } sheet)
                json.WriteString("sheet", sheet);
            json.WriteStartObject("columns");
            foreach (var (column, header) in mapping.Headers.OrderBy(pair => pair.Key))
                json.WriteString(Word(column), header);
            json.WriteEndObject();
            if (mapping.Types.Count > 0)
            {
                json.WriteStartObject("types");
                foreach (var (type, means) in mapping.Types.OrderBy(pair => pair.Key, StringComparer.Ordinal))
                    json.WriteString(type, RowKinds.Word(means));
                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.ToArray();
    }

    /// <summary>Reads a mapping.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="file">How faults name it.</param>
    /// <exception cref="SheetException">It is none.</exception>
    public static ColumnMapping Read(ReadOnlyMemory<byte> utf8, string file)
    {
        try
        {
            using var json = JsonDocument.Parse(utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8);
            var mapping = new ColumnMapping();
            var headers = new Dictionary<Column, string>();
            var types = new Dictionary<string, RowKind>(StringComparer.Ordinal);
            var format = "";
            if (json.RootElement.ValueKind != JsonValueKind.Object)
                throw Refuse(file, "", "no object", "JSON text in braces { }");
            foreach (var field in json.RootElement.EnumerateObject())
            {
                switch (field.Name)
                {
                    case "format":
                        format = Text(file, field);
                        break;
                    case "rows":
                        mapping = mapping with { Kind = Find(file, field.Name, Text(file, field), Enum.GetValues<TableKind>(), Word) };
                        break;
                    case "days":
                        mapping = mapping with { Days =
                            Find(file, field.Name, Text(file, field), Enum.GetValues<DayOrder>(), order => Orders[(int)order]) };
                        break;
                    case "sheet":
                        mapping = mapping with { Sheet = Text(file, field) };
                        break;
                    case "columns" when field.Value.ValueKind == JsonValueKind.Object:
                        foreach (var column in field.Value.EnumerateObject())
                        {
                            if (!headers.TryAdd(Find(file, "columns", column.Name, Enum.GetValues<Column>(), Word), Text(file, column)))
                                throw Refuse(file, "columns." + column.Name, "the same column twice", "each once");
                        }

                        break;
                    case "types" when field.Value.ValueKind == JsonValueKind.Object:
                        foreach (var type in field.Value.EnumerateObject())
                            types[type.Name] = Find(file, "types." + type.Name, Text(file, type), Enum.GetValues<RowKind>(), RowKinds.Word);
                        break;
                    default:
                        throw Refuse(file, field.Name, "a field that a mapping has not", "format, rows, days, sheet, columns, types");
                }
            }

            return format == Format
                ? mapping with { Headers = headers, Types = types } : throw Refuse(file, "format", $"\"{format}\"", $"\"{Format}\"");
        }
        catch (JsonException e)
        {
            throw Refuse(file, string.Create(CultureInfo.InvariantCulture, $"line {e.LineNumber + 1}"), "text that is not JSON",
                "a mapping as --save-mapping writes it");
        }
    }

    /// <summary>The word for a kind of table.</summary>
    public static string Word(TableKind kind) => kind switch
    {
        TableKind.Jobs => "jobs",
        TableKind.Invoices => "invoices",
        TableKind.Payments => "payments",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind of table."),
    };

    /// <summary>The word for a column: its name with a small first letter.</summary>
    public static string Word(Column column) => JsonNamingPolicy.CamelCase.ConvertName(column.ToString());

    private static T Find<T>(string file, string path, string word, T[] values, Func<T, string> words)
    {
        foreach (var value in values)
        {
            if (words(value) == word)
                return value;
        }

        throw Refuse(file, path, $"\"{word}\"", "one of " + string.Join(", ", values.Select(words)));
    }

    private static string Text(string file, JsonProperty field) => field.Value.ValueKind == JsonValueKind.String
        ? field.Value.GetString()!
        : throw Refuse(file, field.Name, field.Value.GetRawText(), "a text");

    private static SheetException Refuse(string file, string path, string found, string expected) =>
        new(new Fault(file, path, found, expected));
}
