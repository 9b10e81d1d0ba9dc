using Stringline.Exchange;

namespace Stringline.Desk.Entering.Forms;

/// <summary>Completion of the work of improvement.</summary>
internal static class CompletionForms
{
    private const string Group = "Completion";

    /// <summary>The forms.</summary>
    public static IReadOnlyList<EntryForm> All { get; } =
    [
        new("completed", "The whole work was completed", Group, "Somebody says, or the site shows, that the whole work of improvement was complete: not only your part.")
        {
            DayLabel = "The day of completion",
            Fields =
            [
                new("by", "How it was completed", Answer.OneOf) { Required = true, Choices = Usual.Words(JobFileWords.Completion, "actually finished", "occupied or used by the owner, labor having ceased", "labor ceased", "accepted by a public entity") },
                new("contested", "Somebody disputes it", Answer.Tick),
                Usual.Structure("Which structure"),
            ],
            Section = "Civ. Code § 8180",
        },
        new("labor-ceased", "Labor on the whole work stopped", Group, "Nobody works at the site any more: after 60 days that completes the work.")
        {
            DayLabel = "The last day of labor",
            Fields =
            [
                new("until", "Labor resumed on", Answer.Day) { Hint = "nothing while it is still stopped" },
                Usual.YesNo("unfinished", "Was the work left unfinished?", "no, where it was finished: then enter its completion as well"),
            ],
            Section = "Civ. Code § 8180(a)",
        },
        new("index-searched", "County index searched", Group, "You looked in the county's index for notices of the owner and found nothing that is not in this file.")
        {
            DayLabel = "The day you searched",
            StartsToday = true,
            Fields = [new("county", "County", Answer.County) { Hint = "of a site in more than one county: each has an index of its own" }],
        },
    ];
}
