using Stringline.Store;

namespace Stringline.Office.StoreNotes;

/// <summary>What is said where a log of the store was damaged, so that what was recorded may be missing.</summary>
internal static class LogText
{
    /// <summary>What is to be done.</summary>
    public const string Mend =
        "Compare the store with the papers of the last days before the program or the computer stopped, and enter again "
        + "what is missing. Then move the kept log out of the folder.";

    /// <summary>A line for each such log.</summary>
    public static IEnumerable<string> Of(IJournal journal) =>
        journal.LogFaults.Select(fault => $"Something that was recorded may be missing: {fault}. {Mend}");
}
