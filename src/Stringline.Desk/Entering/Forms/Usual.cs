using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Fields that several kinds of entry have.</summary>
internal static class Usual
{
    private static readonly string[] Manners =
    [
        "handed over in person", "certified mail", "registered mail", "express mail of the post office", "overnight delivery by a carrier",
        "first-class mail with a certificate of mailing (a claim of lien only)", "left at the place and mailed (Code Civ. Proc. § 415.20)",
    ];

    /// <summary>To whom.</summary>
    public static Asked To(string label) => new("to", label, Answer.Parties) { Required = true };

    /// <summary>How a paper was given.</summary>
    public static Asked Manner => new("manner", "How", Answer.OneOf) { Required = true, Repeats = true, Choices = Words(JobFileWords.Manner, Manners) };

    /// <summary>Article number of the mailing.</summary>
    public static Asked Article => new("article", "Article number of the mailing", Answer.Line) { Hint = "as on the receipt of the post office or carrier" };

    /// <summary>The recorder's number.</summary>
    public static Asked Instrument => new("instrument", "Instrument number", Answer.Line) { Hint = "the recorder's number, as stamped" };

    /// <summary>Dollars that must be said.</summary>
    public static Asked Amount(string label = "Amount") => new("amount", label, Answer.Money) { Required = true };

    /// <summary>Dollars that may be left out.</summary>
    public static Asked MaybeAmount(string label, string hint = "") => new("amount", label, Answer.Money) { Hint = hint };

    /// <summary>What for.</summary>
    public static Asked Text(string label = "What it was for") => new("text", label, Answer.Lines);

    /// <summary>The words of a closed set beside what a person reads.</summary>
    public static IReadOnlyList<Choice> Words(WordTable table, params IReadOnlyList<string> words) =>
        [.. table.Words.Zip(words, (word, said) => new Choice(word, said))];
}
