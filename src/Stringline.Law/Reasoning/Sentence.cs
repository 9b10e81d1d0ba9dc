using System.Runtime.CompilerServices;
using System.Text;
using Stringline.Law.Counting;

namespace Stringline.Law.Reasoning;

/// <summary>
/// A sentence that keeps what stands in its holes, so that each door says a field, an entry or a day in its own words, and no text that
/// somebody typed is ever searched. It is written as an interpolated string, and no text is made before somebody reads it; a plain string
/// is no sentence, so that none is made of one whose holes were filled on the way. Two are the same only where they are one object.
/// </summary>
[InterpolatedStringHandler]
public sealed class Sentence
{
    // Our words, and what stands in a hole as itself; with how it is to be said where the hole says that.
    private object[] pieces;
    private int count;

    // Kept once it is made: readings are sorted and compared by their names.
    private string? plain;

    /// <summary>Begins a sentence; for the compiler.</summary>
    /// <param name="literalLength">How many characters of it are ours.</param>
    /// <param name="formattedCount">How many holes it has.</param>
    public Sentence(int literalLength, int formattedCount) =>
        pieces = new object[literalLength == 0 ? formattedCount : (2 * formattedCount) + 1];

    /// <summary>Nothing said.</summary>
    public static Sentence Empty { get; } = new(0, 0);

    /// <summary>Whether nothing is said.</summary>
    public bool IsEmpty => count == 0;

    /// <summary>What it names: all that stands in its holes and is no text, and what the sentences in them name.</summary>
    public IEnumerable<object> Names => pieces.Take(count).SelectMany(piece => piece switch
    {
        string => [],
        Sentence inner => inner.Names,
        Formatted { Value: Sentence inner } => inner.Names,
        Formatted formatted => [formatted.Value],
        _ => (IEnumerable<object>)[piece],
    });

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
        var joined = new Sentence(0, 0);
        foreach (var sentence in sentences)
        {
            if (joined.count > 0)
                joined.AppendLiteral(between);
            joined.AppendFormatted(sentence);
        }

        return joined;
    }

    /// <summary>Adds words of ours; for the compiler.</summary>
    public void AppendLiteral(string value) => Add(value);

    /// <summary>Adds a text; for the compiler.</summary>
    public void AppendFormatted(string? value) => Add(value ?? "");

    /// <summary>Adds a hole; for the compiler. One that holds nothing is a day that the file does not tell.</summary>
    public void AppendFormatted(object? value, string? format = null) =>
        Add(format is null ? value ?? Unknown : new Formatted(value ?? Unknown, format));

    // "The action ended {day} against the claimant".
    private const string Unknown = "on a day that is not known";

    /// <summary>The sentence in the words of a door.</summary>
    /// <param name="words">What the door says for something in a hole and its format.</param>
    /// <param name="text">How the door writes a text, which is said as it is; null where it writes it so.</param>
    public string Say(Func<object, string?, string> words, Func<string, string>? text = null)
    {
        if (count == 1 && pieces[0] is string only)
            return text is null ? only : text(only);
        var said = new StringBuilder();
        for (var i = 0; i < count; i++)
        {
            said.Append(pieces[i] switch
            {
                string ours => text is null ? ours : text(ours),
                Sentence inner => inner.Say(words, text),
                Formatted { Value: Sentence inner, Format: "capital" } => LawText.Capital(inner.Say(words, text)),
                Formatted formatted => words(formatted.Value, formatted.Format),
                var value => words(value, null),
            });
        }

        return said.ToString();
    }

    /// <summary>The sentence with the names that the job file and the command line have for things.</summary>
    public override string ToString() => plain ??= Say(Plainly);

    /// <summary>What a door says for something for which it has no words of its own.</summary>
    public static string Plain(object value, string? format) => Door.OfFile.Of(value, format);

    private static readonly Func<object, string?, string> Plainly = Plain;

    private void Add(object piece)
    {
        if (count == pieces.Length)
            Array.Resize(ref pieces, (2 * count) + 1);
        pieces[count++] = piece;
    }

    private sealed record Formatted(object Value, string Format);
}
