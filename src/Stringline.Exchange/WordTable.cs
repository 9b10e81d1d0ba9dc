using System.Diagnostics.CodeAnalysis;

namespace Stringline.Exchange;

/// <summary>The words by which a closed set of values stands in a file, both ways.</summary>
/// <typeparam name="T">The set.</typeparam>
public sealed class WordTable<T>
    where T : struct, Enum
{
    private readonly (string Word, T Value)[] rows;

    internal WordTable(params (string Word, T Value)[] rows) => this.rows = rows;

    /// <summary>Every word, in the order of the format's description.</summary>
    public IEnumerable<string> Words => rows.Select(row => row.Word);

    /// <summary>The word for a value.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is none of the set.</exception>
    public string WordFor(T value)
    {
        foreach (var row in rows)
        {
            if (EqualityComparer<T>.Default.Equals(row.Value, value))
                return row.Word;
        }

        throw new ArgumentOutOfRangeException(nameof(value), value, "The format has no word for it.");
    }

    /// <summary>The value of a word, compared letter by letter.</summary>
    public bool TryFind([NotNullWhen(true)] string? word, out T value)
    {
        foreach (var row in rows)
        {
            if (row.Word == word)
            {
                value = row.Value;
                return true;
            }
        }

        value = default;
        return false;
    }
}
