using Stringline.Office.StoreNotes;
using Stringline.Store;
using Stringline.Store.Upkeep;

namespace Stringline.Cli.Terminal;

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

    /// <summary>What restores, and programs that were stopped midway, left beside the store; a line each.</summary>
    public static IEnumerable<string> Beside(IJournal journal)
    {
        try
        {
            return Leftovers.Of(journal).Select(Words);
        }
        catch (StoreException e)
        {
            return [e.Message];
        }
    }

    private static string Words(Leftover left) => left.Kind switch
    {
        LeftoverKind.Older => $"Kept from before a restore: {left.Place}. It holds every job and paper of that time; remove it when nobody "
            + $"needs it any more.",
        LeftoverKind.SecondName => $"A second name of this store, left by a restore that did not finish: {left.Place}. Do not use it. "
            + "The next program that opens the store to write removes it.",
        LeftoverKind.Unfinished => $"Left by a program that did not finish, and perhaps a copy of the data: {left.Place}. "
            + "The next backup, restore or export into that place removes it.",
        _ => throw new InvalidOperationException("No such kind."),
    };

    private static IEnumerable<string> Mends(CheckReport report)
    {
        foreach (var part in report.Broken.Select(link => link.Part).Distinct().Order())
        {
            yield return part switch
            {
                StorePart.Journal => "Stop writing, keep a copy of the store as it is, and restore the last backup that is whole.",
                StorePart.Guards =>
                    "Somebody changed how the store is made. `stringline store move` to a new place makes a store as it should be.",
                StorePart.Log => LogText.Mend,
                StorePart.Derived => "What is derived from the journal is mended by `stringline assess --all --anew`.",
                StorePart.Settings => "The settings are mended by the desk’s page of settings: set them anew and keep them there. Until "
                    + "then the usual ones hold.",
                _ => throw new InvalidOperationException("No such part."),
            };
        }
    }
}
