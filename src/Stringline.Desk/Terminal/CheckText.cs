using Stringline.Store;

namespace Stringline.Desk.Terminal;

/// <summary>What a check found, and what mends it.</summary>
internal static class CheckText
{
    /// <summary>A line each; nothing where the store is whole.</summary>
    public static IEnumerable<string> Of(string store, CheckReport report)
    {
        if (report.IsWhole)
            yield break;
        yield return report.JournalIsWhole
            ? $"{store} is not whole, though every change and paper of its journal is as it was written:"
            : $"{store} is not whole. First:";
        foreach (var link in report.Broken)
            yield return "  " + link;
        foreach (var mend in Mends(report))
            yield return mend;
    }

    /// <summary>What is damaged where the journal is whole.</summary>
    public static IEnumerable<string> BesideTheJournal(CheckReport report) =>
        ["Every change and paper is as it was written, but:", .. report.Broken.Select(link => "  " + link), .. Mends(report)];

    private static IEnumerable<string> Mends(CheckReport report)
    {
        foreach (var part in report.Broken.Select(link => link.Part).Distinct().Order())
        {
            yield return part switch
            {
                StorePart.Journal => "Stop writing, keep a copy of the store as it is, and restore the last backup that is whole.",
                StorePart.Guards => "Somebody changed how the store is made. `stringline store move` to a new place makes a store as it should be.",
                StorePart.Derived => "What is derived from the journal is mended by `stringline assess --all --anew`.",
                StorePart.Settings => "The settings are mended by the desk’s page of settings: set them anew and keep them there. Until then the usual ones hold.",
                _ => throw new InvalidOperationException("No such part."),
            };
        }
    }
}
