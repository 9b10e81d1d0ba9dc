namespace Stringline.Law.Facts;

/// <summary>What is said of the file itself.</summary>
internal static class JournalKinds
{
    private const string Group = "The file itself";

    public static EntryKind Withdrawn { get; } = new(
        "withdrawn", inFormat: 23, inJournal: 31, static (index, on) => new Withdrawn { Index = index, On = on })
    {
        Meaning = "An entry made by mistake is taken back.",
        Title = "Take an entry back",
        Group = Group,
        Help = "An entry that was made by mistake counts no more. It stays in the journal, with who took it back and when.",
        DayLabel = "The day you take it back",
        StartsToday = true,
        Words = "Taken back",
        TakesBack = true,
    };
}
