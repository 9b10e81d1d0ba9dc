using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

/// <summary>The form of one kind of entry.</summary>
/// <param name="What">The kind's word in the job file.</param>
/// <param name="Title">What a person looks for.</param>
/// <param name="Group">Under which heading it stands on the start page.</param>
/// <param name="Told">What it is for, in one sentence.</param>
internal sealed record EntryForm(string What, string Title, string Group, string Told)
{
    /// <summary>The fields besides the day.</summary>
    public IReadOnlyList<Asked> Fields { get; init; } = [];

    /// <summary>Whose day it is.</summary>
    public required string DayLabel { get; init; }

    /// <summary>Which answers the day takes.</summary>
    public DayRule Day { get; init; }

    /// <summary>Whether today stands in the field of the day: not where a day is read off a paper or told by others.</summary>
    public bool StartsToday { get; init; }

    /// <summary>The section; empty where the statute does not speak of it.</summary>
    public string Section { get; init; } = "";

    /// <summary>The form of a kind of entry, as its description has it.</summary>
    public static EntryForm Of(EntryKind kind) => new(kind.Name, kind.Title, kind.Group, kind.Help)
    {
        Fields = [.. kind.FormOrder.Where(field => field is not Field.LastDay).Select(Asked.Of)],
        DayLabel = kind.DayLabel,
        Day = kind.Day,
        StartsToday = kind.StartsToday,
        Section = kind.Section,
    };
}
