using Stringline.Law.Counting;

namespace Stringline.Law.Facts;

/// <summary>Checks that several kinds of entry have.</summary>
public static class EntryChecks
{
    /// <summary>Refuses a day before another that it follows: before the first that this other can have been.</summary>
    internal static void NotBefore(
        this IEntryFaults faults, string field, LocalDate? day, DayFact other, string whose = "the day of the entry")
    {
        if (day is { } given && other.Earliest is { } first && given < first)
            faults.Refuse(field, $"a day not before {LawText.IsoDay(first)}, {whose}");
    }

    /// <summary>The same of a day that has no meaning where what it follows did not happen.</summary>
    internal static void Follows(
        this IEntryFaults faults, string field, LocalDate? day, LocalDate? other, string whose, string expectedWithoutIt)
    {
        if (other is { } first)
            faults.NotBefore(field, day, DayFact.On(first), whose);
        else if (day is not null)
            faults.Refuse(field, expectedWithoutIt);
    }

    /// <summary>Refuses what has no meaning but on a work of one kind.</summary>
    internal static void OnlyOn(this IEntryFaults faults, WorkKind needed, string field)
    {
        if (faults.Work is { } kind && kind != needed)
            faults.Refuse(field, OnlyOn(needed, kind));
    }

    /// <summary>What would be right where something is said that belongs to a work of another kind.</summary>
    public static string OnlyOn(WorkKind needed, WorkKind kind) =>
        $"nothing of this kind: it is for a {JobFileWords.Word(needed)} work only, and `work.kind` is \"{JobFileWords.Word(kind)}\"";

    /// <summary>A notice of acceptance is a public entity's (Civ. Code § 9356(a)).</summary>
    internal static void AcceptanceIsPublic(this IEntryFaults faults, OwnerNotice notice)
    {
        if (notice == OwnerNotice.Acceptance)
            faults.OnlyOn(WorkKind.Public, "notice");
    }

    /// <summary>Refuses the day of mailing, and the tries before it, of a paper that was not left and mailed.</summary>
    internal static void LeftAndMailed(this IEntryFaults faults, Entry entry, Manner? manner, LocalDate? mailed, int? tries = null)
    {
        const string Expected = "nothing: it is asked only of a paper left and mailed, whose `manner` is \"substituted\"";
        if (manner != Manner.Substituted && mailed is not null)
            faults.Refuse("mailed", Expected);
        faults.NotBefore("mailed", mailed, entry.On);
        if (manner != Manner.Substituted && tries is not null)
            faults.Refuse("tries", Expected);
    }
}
