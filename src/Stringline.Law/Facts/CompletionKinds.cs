using Stringline.Law.Counting;

namespace Stringline.Law.Facts;

/// <summary>Completion of the work of improvement.</summary>
internal static class CompletionKinds
{
    private const string Group = "Completion";

    public static EntryKind Completed { get; } = new(
        "completed", inFormat: 8, inJournal: 7, static (index, on) => new Completed { Index = index, On = on, By = default },
        [
            new Field.Word("by", "How it was completed", JobFileWords.Completion,
                e => (int)((Completed)e).By, (e, word) => (Completed)e with { By = (CompletionTheory)word })
            {
                Required = true,
                Choices =
                [
                    "actually finished", "occupied or used by the owner, labor having ceased", "labor ceased",
                    "accepted by a public entity",
                ],
                SaidWords = ["actual completion", "by occupation", "by cessation of labor", "by acceptance"],
                Said = "{0}",
            },
            new Field.Tick("contested", "Somebody disputes it",
                e => ((Completed)e).Contested, (e, truth) => (Completed)e with { Contested = truth })
            { Meaning = "Whether somebody disputes it; absent: nobody.", AlwaysWritten = true, Said = "disputed" },
            new Field.Text("structure", "Which structure",
                e => ((Completed)e).Structure, (e, text) => (Completed)e with { Structure = text })
            {
                Hint = "nothing for the whole work",
                Meaning = "Id of the residential structure that was completed; absent for the whole work.",
                Holds = TextHolds.Structure,
                Said = "{0}",
            },
        ])
    {
        Meaning = "A contention that the work of improvement was completed that day.",
        Title = "The whole work was completed",
        Group = Group,
        Help = "Somebody says, or the site shows, that the whole work of improvement was complete: not only your part.",
        Section = "Civ. Code § 8180",
        DayLabel = "The day of completion",
        Words = "Said to be complete",
    };

    public static EntryKind LaborCeased { get; } = new(
        "labor-ceased", inFormat: 9, inJournal: 16, static (index, on) => new LaborCeased { Index = index, On = on },
        [
            new Field.Day("until", "Labor resumed on", e => ((LaborCeased)e).Until, (e, day) => (LaborCeased)e with { Until = day })
            {
                Hint = "nothing while it is still stopped",
                Meaning = "The day labor resumed; absent: still stopped.",
                Said = "resumed {0}",
                SaidWithoutIt = "still stopped",
            },
            new Field.YesNo("unfinished", "Was the work left unfinished?",
                e => ((LaborCeased)e).Unfinished, (e, truth) => (LaborCeased)e with { Unfinished = truth })
            {
                Hint = "no, where it was finished: then enter its completion as well",
                Meaning = "Whether the work was left unfinished: then only the days without labor complete it. Absent where nobody has "
                    + "said so.",
                SaidOfYes = "work left unfinished",
                SaidOfNo = "work finished",
            },
        ])
    {
        Meaning = "Labor on the whole work stopped: the last day of labor.",
        Title = "Labor on the whole work stopped",
        Group = Group,
        Help = "Nobody works at the site any more: after 60 days that completes the work.",
        Section = "Civ. Code § 8180(a)",
        DayLabel = "The last day of labor",
        Words = "Labor stopped",
        Check = static (e, faults) =>
        {
            if (((LaborCeased)e).Until is { } until && e.On.Earliest is { } first && until <= first)
                faults.Refuse("until", $"the day labor resumed, after {LawText.IsoDay(first)}");
        },
    };

    public static EntryKind IndexSearched { get; } = new(
        "index-searched", inFormat: 24, inJournal: 15, static (index, on) => new IndexSearched { Index = index, On = on },
        [
            new Field.Text("county", "County", e => ((IndexSearched)e).County, (e, text) => (IndexSearched)e with { County = text })
            {
                Hint = "of a site in more than one county: each has an index of its own",
                Meaning = "The county whose index was searched; null where it is that of the site, which lies in one county alone.",
                Holds = TextHolds.County,
            },
        ])
    {
        Meaning = "The county index was searched for the owner's notices and nothing unknown was found.",
        Title = "County index searched",
        Group = Group,
        Help = "You looked in the county's index for notices of the owner and found nothing that is not in this file.",
        DayLabel = "The day you searched",
        StartsToday = true,
        Words = "Index searched",
    };

    /// <summary>Those of the group, in the order in which they are offered.</summary>
    public static IReadOnlyList<EntryKind> All { get; } =
    [
        Completed, LaborCeased, IndexSearched,
    ];
}
