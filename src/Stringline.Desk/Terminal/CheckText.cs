using Stringline.Store;
using Stringline.Store.Upkeep;

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

    /// <summary>What restores, and programs that were killed, left beside the store.</summary>
    public static IEnumerable<string> Beside(IEnumerable<Leftover> leftovers) => leftovers.Select(left => left.Kind switch
    {
        LeftoverKind.Older => $"Kept beside it, from before a restore: {left.Place}. It holds every job and paper of that time; remove it when nobody needs it any more.",
        LeftoverKind.SecondName => $"A second name of this store, left by a restore that was broken off: {left.Place}. Do not open the store by it. The next program that opens the store removes it.",
        LeftoverKind.Unfinished => $"Left by a program that was broken off, and perhaps a part of the data: {left.Place}. The next backup into that folder, or the next restore, removes it.",
        _ => throw new InvalidOperationException("No such kind."),
    });

    private static IEnumerable<string> Mends(CheckReport report)
    {
        foreach (var part in report.Broken.Select(link => link.Part).Distinct().Order())
        {
            yield return part switch
            {
                StorePart.Journal => "Stop writing, keep a copy of the store as it is, and restore the last backup that is whole.",
                StorePart.Guards => "Somebody changed how the store is made. `stringline store move` to a new place makes a store as it should be.",
                StorePart.Log => "Compare the store with the papers of the last days before the program or the computer stopped, and enter what is missing again. "
                    + "Then move the kept log out of the folder.",
                StorePart.Derived => "What is derived from the journal is mended by `stringline assess --all --anew`.",
                StorePart.Settings => "The settings are mended by the desk’s page of settings: set them anew and keep them there. Until then the usual ones hold.",
                _ => throw new InvalidOperationException("No such part."),
            };
        }
    }
}
