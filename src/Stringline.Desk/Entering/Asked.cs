using Stringline.Law.Facts;

namespace Stringline.Desk.Entering;

/// <summary>What kind of answer a field takes.</summary>
internal enum Answer
{
    /// <summary>A text on one line.</summary>
    Line,

    /// <summary>A text of one or several lines.</summary>
    Lines,

    /// <summary>Dollars and cents, never negative.</summary>
    Money,

    /// <summary>Dollars and cents, with a minus for a deduction.</summary>
    SignedMoney,

    /// <summary>A known day.</summary>
    Day,

    /// <summary>A whole number from 1.</summary>
    Count,

    /// <summary>One of the 58 counties.</summary>
    County,

    /// <summary>One of a few words.</summary>
    OneOf,

    /// <summary>Yes or no, or not known.</summary>
    YesOrNo,

    /// <summary>True where it is ticked.</summary>
    Tick,

    /// <summary>One party, by name.</summary>
    Party,

    /// <summary>At least one party, by name.</summary>
    Parties,

    /// <summary>Something furnished or charged, by its reference.</summary>
    Reference,
}

/// <summary>One field of a form: how it is asked for, and what answer it takes.</summary>
/// <param name="Name">The field's name in the job file; for the head its whole path, such as <c>work.site.county</c>.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Answer">The kind of answer.</param>
internal sealed record Asked(string Name, string Label, Answer Answer)
{
    /// <summary>What helps to answer; empty where the label says it all.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Whether it must be answered.</summary>
    public bool Required { get; init; }

    /// <summary>Whether what was answered last on the same job is filled in.</summary>
    public bool Repeats { get; init; }

    /// <summary>Whether what was answered before on the same job is offered while typing.</summary>
    public bool Offers { get; init; }

    /// <summary>The words to choose from.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>In which capacity a party must be to be chosen; null for any.</summary>
    public PartyCapacity? Among { get; init; }

    /// <summary>Of a party in which capacity alone it is asked; null of any.</summary>
    public PartyCapacity? OnlyOf { get; init; }
}

/// <summary>A word to choose.</summary>
/// <param name="Word">As it stands in the job file.</param>
/// <param name="Words">As a person reads it.</param>
internal sealed record Choice(string Word, string Words);
