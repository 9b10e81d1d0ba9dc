namespace Stringline.Desk.Entering;

/// <summary>Which answers the day of an entry takes.</summary>
internal enum DayRule
{
    /// <summary>A day, a day in doubt between two, or nobody knows.</summary>
    Any,

    /// <summary>A day, or a day in doubt: money needs one.</summary>
    Known,

    /// <summary>A day, a span of work from day to day, or a day in doubt.</summary>
    Span,
}

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
    public string DayLabel { get; init; } = "When it happened";

    /// <summary>Which answers the day takes.</summary>
    public DayRule Day { get; init; }

    /// <summary>Whether today stands in the field of the day: not where a day is read off a paper or told by others.</summary>
    public bool StartsToday { get; init; }

    /// <summary>The section; empty where the statute does not speak of it.</summary>
    public string Section { get; init; } = "";
}
