using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Stringline.Law.Reasoning;

/// <summary>
/// A sentence that keeps what stands in its holes, so that each door says a field, an entry or a day in its own words, and no text that
/// somebody typed is ever searched. It is written as an interpolated string. Two are the same only where they are one object.
/// </summary>
/// <param name="literalLength">How many characters of it are ours.</param>
/// <param name="formattedCount">How many holes it has.</param>
[InterpolatedStringHandler]
public sealed class Sentence(int literalLength, int formattedCount)
{
    private Piece[] pieces = new Piece[(2 * formattedCount) + 1];
    private int count;

    /// <summary>Nothing said.</summary>
    public static Sentence Empty { get; } = new(0, 0);

    /// <summary>Whether nothing is said.</summary>
    public bool IsEmpty => count == 0;

    /// <summary>What it names: all that stands in its holes and is no text, and what the sentences in them name.</summary>
    public IEnumerable<object> Names => pieces.Take(count).Select(piece => piece.Value).Where(value => value is not (null or string))
        .SelectMany(value => value is Sentence inner ? inner.Names : [value!]);

    /// <summary>A sentence without holes.</summary>
    public static implicit operator Sentence(string text) => Of(text);

    /// <summary>A sentence without holes.</summary>
    public static Sentence Of(string text)
    {
        var sentence = new Sentence(text.Length, 0);
        if (text.Length > 0)
            sentence.AppendLiteral(text);
        return sentence;
    }

    /// <summary>Several, one after another.</summary>
    public static Sentence Join(string between, IEnumerable<Sentence> sentences)
    {
        var joined = new Sentence(0, 1);
        foreach (var sentence in sentences)
        {
            if (joined.count > 0)
                joined.AppendLiteral(between);
            joined.AppendFormatted(sentence);
        }

        return joined;
    }

    /// <summary>Adds words of ours; for the compiler.</summary>
    public void AppendLiteral(string value) => Add(new Piece(value, null));

    /// <summary>Adds a hole; for the compiler.</summary>
    public void AppendFormatted<T>(T value, string? format = null) => Add(new Piece(value, format));

    /// <summary>The sentence in the words of a door.</summary>
    /// <param name="words">What the door says for something in a hole and its format. Texts are said as they are, and never come here.</param>
    public string Say(Func<object, string?, string> words)
    {
        var said = new StringBuilder(literalLength + (16 * formattedCount));
        for (var i = 0; i < count; i++)
        {
            said.Append(pieces[i].Value switch
            {
                null => "",
                string text => text,
                Sentence inner => inner.Say(words),
                var value => words(value, pieces[i].Format),
            });
        }

        return said.ToString();
    }

    /// <summary>The sentence with the names that the job file and the command line have for things.</summary>
    public override string ToString() => Say(Plain);

    /// <summary>What a door says for something for which it has no words of its own.</summary>
    public static string Plain(object value, string? format) =>
        value is IFormattable formattable ? formattable.ToString(format, CultureInfo.InvariantCulture) : value.ToString() ?? "";

    private void Add(Piece piece)
    {
        if (count == pieces.Length)
            Array.Resize(ref pieces, (2 * count) + 1);
        pieces[count++] = piece;
    }

    private readonly record struct Piece(object? Value, string? Format);
}
