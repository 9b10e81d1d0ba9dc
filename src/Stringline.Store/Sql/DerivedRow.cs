using System.Buffers;
using System.Buffers.Binary;
using System.Data.Common;
using System.Text;

namespace Stringline.Store.Sql;

/// <summary>
/// A row of a table that is derived from the journal, value by value as it stands, and the hash by which it proves itself: SHA-256 over its
/// table, its values and what they hang on, each led by its kind and length.
/// </summary>
internal static class DerivedRow
{
    /// <summary>The hash of a row.</summary>
    /// <param name="table">The table.</param>
    /// <param name="values">Its values without the hash: numbers as long, texts, bytes, or null.</param>
    /// <param name="of">What else they hang on.</param>
    public static byte[] Hash(string table, ReadOnlySpan<object?> values, params ReadOnlySpan<object?> of)
    {
        var bytes = new ArrayBufferWriter<byte>(1024);
        Add(bytes, table);
        foreach (var value in values)
            Add(bytes, value);
        foreach (var value in of)
            Add(bytes, value);
        return ContentHash.Of(bytes.WrittenSpan).ToBytes();
    }

    /// <summary>So many values from a place on, as they stand.</summary>
    public static object?[] Read(DbDataReader reader, int at, int count)
    {
        var values = new object?[count];
        for (var i = 0; i < count; i++)
            values[i] = reader.IsDBNull(at + i) ? null : reader.GetValue(at + i);
        return values;
    }

    /// <summary>Whether the last of the values is the hash of the others.</summary>
    public static bool IsSound(string table, object?[] values, params ReadOnlySpan<object?> of) =>
        values[^1] is byte[] hash && Hash(table, values.AsSpan(0, values.Length - 1), of).AsSpan().SequenceEqual(hash);

    private static void Add(ArrayBufferWriter<byte> bytes, object? value)
    {
        switch (value)
        {
            case null:
                Head(bytes, 0, 0);
                break;
            case long number:
                Head(bytes, 1, number);
                break;
            case string text:
                Head(bytes, 2, Encoding.UTF8.GetByteCount(text));
                Encoding.UTF8.GetBytes(text, bytes);
                break;
            case byte[] content:
                Head(bytes, 3, content.Length);
                bytes.Write(content);
                break;
            default:
                // A number with a point, or whatever else stands where this program writes none: no row that was written has this hash.
                Head(bytes, 4, 0);
                break;
        }
    }

    private static void Head(ArrayBufferWriter<byte> bytes, byte kind, long number)
    {
        var head = bytes.GetSpan(1 + sizeof(long));
        head[0] = kind;
        BinaryPrimitives.WriteInt64BigEndian(head[1..], number);
        bytes.Advance(1 + sizeof(long));
    }
}
