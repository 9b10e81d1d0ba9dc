using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Fields that several kinds of entry have.</summary>
internal static class Usual
{
    private static readonly string[] Manners =
    [
        "handed over in person", "certified mail", "registered mail", "express mail of the post office", "overnight delivery by a carrier",
        "first-class mail with a certificate of mailing (a claim of lien only)", "left at the place and mailed (Code Civ. Proc. § 415.20)",
        "plain first-class mail, without a postal record", "e-mail", "fax", "another way",
    ];

    /// <summary>To whom.</summary>
    public static Asked To(string label) => new("to", label, Answer.Parties) { Required = true };

    /// <summary>How a paper was given.</summary>
    public static Asked Manner => new("manner", "How", Answer.OneOf) { Required = true, Repeats = true, Choices = Words(JobFileWords.Manner, Manners) };

    /// <summary>How a paper was given, where it may be left open.</summary>
    public static Asked MaybeManner(string label = "How") => new("manner", label, Answer.OneOf) { Choices = Words(JobFileWords.Manner, Manners) };

    /// <summary>The tries to hand a paper over before it was left.</summary>
    public static Asked Tries => new("tries", "Where it was left and mailed: tries to hand it over before", Answer.Count) { Least = 0, Hint = "each on another day and at another time (Code Civ. Proc. § 415.20(b))" };

    /// <summary>When a paper that was left was mailed besides.</summary>
    public static Asked Mailed => new("mailed", "Where it was left and mailed: mailed on", Answer.Day) { Hint = "it is complete five days after (Civ. Code § 8116(c))" };

    /// <summary>What a paper lacks.</summary>
    public static Asked Lacks(string hint) => new("lacks", "What it lacks, if anything", Answer.Line) { Hint = hint };

    /// <summary>The residential structure.</summary>
    public static Asked Structure(string label) => new("structure", label, Answer.Structure) { Hint = "nothing for the whole work" };

    /// <summary>An earlier entry.</summary>
    public static Asked Earlier(string name, string label, string what, string hint = "") => new(name, label, Answer.Entry) { EntryOf = what, Hint = hint };

    /// <summary>Yes, no, or not known.</summary>
    public static Asked YesNo(string name, string question, string hint = "") => new(name, question, Answer.YesOrNo) { Hint = hint };

    /// <summary>To whom, where it may be left open.</summary>
    public static Asked MaybeTo(string label) => new("to", label, Answer.Parties);

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
