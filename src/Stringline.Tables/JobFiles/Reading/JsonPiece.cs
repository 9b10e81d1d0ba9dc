namespace Stringline.Tables.JobFiles.Reading;

/// <summary>The kinds of JSON value.</summary>
internal enum JsonKind
{
    Object,
    Array,
    Text,
    Number,
    True,
    False,
    Null,
}

/// <summary>A JSON value that remembers where it stands in the file, so that faults can be told in the file's order.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Offset of its first byte.</param>
/// <param name="End">Offset after its last byte.</param>
/// <param name="Text">A text decoded (null where it holds half a surrogate pair), or a number's digits as they stand.</param>
/// <param name="Fields">An object's fields in order, doubles kept.</param>
/// <param name="Items">An array's items.</param>
internal sealed record JsonPiece(
    JsonKind Kind, int Start, int End, string? Text, IReadOnlyList<JsonField> Fields, IReadOnlyList<JsonPiece> Items);

/// <summary>A field of an object.</summary>
/// <param name="Name">Its name, decoded.</param>
/// <param name="Start">Offset of the name's first byte.</param>
/// <param name="Value">Its value.</param>
internal sealed record JsonField(string Name, int Start, JsonPiece Value);

/// <summary>A value with the path at which it stands.</summary>
/// <param name="Item">The value.</param>
/// <param name="Path">Its path.</param>
internal sealed record PlacedPiece(JsonPiece Item, string Path);
