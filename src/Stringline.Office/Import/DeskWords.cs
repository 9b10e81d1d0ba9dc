namespace Stringline.Office.Import;

/// <summary>Says on a page what a refusal says for the command line: the page has fields where that has options.</summary>
internal static class DeskWords
{
    private const string Look = "look with --dry-run";

    // The longer before the shorter that it holds.
    private static readonly (string Option, string Field)[] All =
    [
        ("--claimant and --role", "your firm and what it is, under \"What the table does not say\""),
        ("said with --as invoices or --as payments", "chosen above"),
        ("other words can be given with --mapping", "choose the columns by hand"),
        (", or say which in a mapping:", ", or choose which below:"),
        ("; or say which in a mapping:", "; choose which below:"),
        ("\"days\": \"day-first\" or \"month-first\" in a mapping", "the order of days chosen by hand"),
        ("or --county", "or the county chosen for all new jobs"),
        ("or --customer-is", "or what the customer is, chosen for all new jobs"),
        ("no --work says otherwise", "no choice on the page says otherwise"),
        ("--work", "the kind of work"),
        ("; see --dry-run", ""),
    ];

    /// <summary>The words.</summary>
    /// <param name="text">A reason.</param>
    /// <param name="folder">A folder whose path is left out.</param>
    public static string Of(string text, string? folder = null)
    {
        if (folder is not null)
            text = text.Replace(folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        if (text.IndexOf(Look, StringComparison.Ordinal) is >= 0 and var at)
            text = text[..at] + "look again, and confirm what is right";
        foreach (var (option, field) in All)
            text = text.Replace(option, field, StringComparison.Ordinal);
        return text;
    }

    /// <inheritdoc cref="Of(string,string?)"/>
    public static string Of(string text) => Of(text, null);
}
