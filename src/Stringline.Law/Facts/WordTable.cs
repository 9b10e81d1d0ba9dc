namespace Stringline.Law.Facts;

/// <summary>
/// The words by which an enum's values stand in a file, in the order in which the enum declares them from 0.
/// Not generic on purpose: a generic table would be compiled anew for every enum at each start of the program.
/// </summary>
public sealed class WordTable
{
    private readonly string[] words;

    internal WordTable(params string[] words) => this.words = words;

    /// <summary>Every word.</summary>
    public IReadOnlyList<string> Words => words;

    /// <summary>The place of a word, compared letter by letter; null where the table does not have it.</summary>
    public int? IndexOf(string? word) => Array.IndexOf(words, word) is >= 0 and var index ? index : null;
}
