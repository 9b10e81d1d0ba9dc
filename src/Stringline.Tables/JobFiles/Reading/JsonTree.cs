using System.Text.Json;

namespace Stringline.Tables.JobFiles.Reading;

/// <summary>Reads bytes into <see cref="JsonPiece"/>s: strict JSON, no comments, no trailing commas.</summary>
internal static class JsonTree
{
    /// <summary>A job file is five levels deep; far beyond that it is an attack on the stack or a mistake.</summary>
    public const int DeepestLevel = 32;

    /// <summary>So many values at most: each is held with its place. A file of the largest size has fewer where they have names.</summary>
    public const int MostValues = 1_000_000;

    private static readonly JsonReaderOptions Strict = new() { MaxDepth = DeepestLevel };

    /// <summary>Reads one value that is the whole text.</summary>
    /// <exception cref="JsonException">It is not JSON; the exception knows line and byte, both from 0.</exception>
    /// <exception cref="TooManyValuesException">It has too many values.</exception>
    public static JsonPiece Read(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, Strict);
        reader.Read();
        var left = MostValues;
        var piece = Piece(ref reader, ref left);
        reader.Read();
        return piece;
    }

    private static JsonPiece Piece(ref Utf8JsonReader reader, ref int left)
    {
        if (--left < 0)
            throw new TooManyValuesException();
        var start = (int)reader.TokenStartIndex;
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                var fields = new List<JsonField>();
                while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
                {
                    var at = (int)reader.TokenStartIndex;
                    var name = Decoded(ref reader) ?? "\uFFFD";
                    reader.Read();
                    fields.Add(new JsonField(name, at, Piece(ref reader, ref left)));
                }

                return new JsonPiece(JsonKind.Object, start, (int)reader.BytesConsumed, null, fields, []);
            case JsonTokenType.StartArray:
                var items = new List<JsonPiece>();
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                    items.Add(Piece(ref reader, ref left));
                return new JsonPiece(JsonKind.Array, start, (int)reader.BytesConsumed, null, [], items);
            case JsonTokenType.String:
                return Leaf(JsonKind.Text, ref reader, Decoded(ref reader));
            case JsonTokenType.Number:
                return Leaf(JsonKind.Number, ref reader, System.Text.Encoding.ASCII.GetString(reader.ValueSpan));
            case JsonTokenType.True:
                return Leaf(JsonKind.True, ref reader, null);
            case JsonTokenType.False:
                return Leaf(JsonKind.False, ref reader, null);
            default:
                return Leaf(JsonKind.Null, ref reader, null);
        }
    }

    private static JsonPiece Leaf(JsonKind kind, ref Utf8JsonReader reader, string? text) =>
        new(kind, (int)reader.TokenStartIndex, (int)reader.BytesConsumed, text, [], []);

    /// <summary>
    /// The text, or null where an escape stands for half a surrogate pair: JSON's grammar lets that pass, but it is no text.
    /// </summary>
    private static string? Decoded(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
