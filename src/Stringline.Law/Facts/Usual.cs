namespace Stringline.Law.Facts;

/// <summary>Fields and words that several kinds of entry have.</summary>
internal static class Usual
{
    /// <summary>How a paper was given, where that is chosen.</summary>
    public static readonly string[] Manners =
    [
        "handed over in person", "certified mail", "registered mail", "express mail of the post office", "overnight delivery by a carrier",
        "first-class mail with a certificate of mailing (a claim of lien only)", "left at the place and mailed (Code Civ. Proc. § 415.20)",
        "plain first-class mail, without a postal record", "e-mail", "fax", "another way",
    ];

    private static readonly string[] MannersSaid =
    [
        "personal delivery", "certified mail", "registered mail", "express mail", "overnight carrier", "mail with a certificate of mailing",
        "left and mailed", "plain first-class mail", "e-mail", "fax", "another way",
    ];

    /// <summary>References are found as numbers.</summary>
    public static readonly SearchedAs References = new("ref", isNumber: true);

    /// <summary>The case, by its number.</summary>
    public static readonly SearchedAs Cases = new("case", isNumber: true);

    /// <summary>The case, by its court.</summary>
    public static readonly SearchedAs Courts = new("case", isNumber: false);

    /// <summary>Somebody by name.</summary>
    public static readonly SearchedAs Names = new("party", isNumber: false);

    private static readonly SearchedAs Articles = new("article", isNumber: true);

    /// <summary>The number that a recorder gave.</summary>
    public static readonly SearchedAs Instruments = new("instrument", isNumber: true);

    /// <summary>How a paper was given.</summary>
    public static Field.Word Manner(string label, Func<Entry, int?> get, Func<Entry, int, Entry> with) =>
        new("manner", label, JobFileWords.Manner, get, with) { Choices = Manners, SaidWords = MannersSaid, Said = "{0}" };

    /// <summary>Article number of the mailing.</summary>
    public static Field.Text Article(Func<Entry, string?> get, Func<Entry, string, Entry> with) =>
        new("article", "Article number of the mailing", get, with)
        {
            Hint = "as on the receipt of the post office or carrier",
            Meaning = "Article number of the mailing.",
            Searched = Articles,
            Said = "{0}",
        };

    /// <summary>The recorder's number.</summary>
    public static Field.Text Instrument(Func<Entry, string?> get, Func<Entry, string, Entry> with) =>
        new("instrument", "Instrument number", get, with)
        {
            Hint = "the recorder's number, as stamped",
            Meaning = "Recorder's instrument number.",
            Searched = Instruments,
            Said = "{0}",
        };

    /// <summary>When a paper that was left was mailed besides.</summary>
    public static Field.Day Mailed(Func<Entry, LocalDate?> get, Func<Entry, LocalDate, Entry> with) =>
        new("mailed", "Where it was left and mailed: mailed on", get, with)
        {
            Hint = "it is complete five days after (Civ. Code § 8116(c))",
            Meaning = "Only of a paper left and mailed (manner \"substituted\"): the day it was mailed.",
        };

    /// <summary>The tries to hand a paper over before it was left.</summary>
    public static Field.Count Tries(Func<Entry, int?> get, Func<Entry, int, Entry> with) =>
        new("tries", "Where it was left and mailed: tries to hand it over before", get, with)
        {
            Hint = "each on another day and at another time (Code Civ. Proc. § 415.20(b))",
            Meaning = "Only of a notice left and mailed: the tries to deliver by hand before, each on another day and at another time.",
            Least = 0,
        };
}
