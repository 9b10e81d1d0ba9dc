using Stringline.Law.Facts;

namespace Stringline.Office.Entering;

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

    /// <summary>A whole number.</summary>
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

    /// <summary>Parties, by name; at least one where it must be answered.</summary>
    Parties,

    /// <summary>Something furnished or charged, by its reference.</summary>
    Reference,

    /// <summary>A percentage from 0 to 100.</summary>
    Percent,

    /// <summary>Any number of a few words.</summary>
    Several,

    /// <summary>Counties, one on a line.</summary>
    Counties,

    /// <summary>Days, one on a line.</summary>
    Days,

    /// <summary>An earlier entry of one kind.</summary>
    Entry,

    /// <summary>One of the residential structures of the work.</summary>
    Structure,
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

    /// <summary>Of parties in which capacities alone it is asked; empty of any.</summary>
    public IReadOnlyList<PartyCapacity> OnlyOf { get; init; } = [];

    /// <summary>The least count that is taken.</summary>
    public int Least { get; init; } = 1;

    /// <summary>Of which kind the entry is that is chosen; empty where none is.</summary>
    public string EntryOf { get; init; } = "";

    /// <summary>How a field of an entry is asked for.</summary>
    public static Asked Of(Field field) => new Asked(field.Name, field.Label, AnswerOf(field))
    {
        Hint = field.Hint,
        Required = field.Required,
        Repeats = field.Repeats,
        Offers = field.Offers,
        Choices = field switch
        {
            Field.Word word => Choice.Of(word.Table, word.Choices),
            Field.Words words => Choice.Of(words.Table, words.Choices),
            _ => [],
        },
        Among = (field as Field.Text)?.Among,
        Least = (field as Field.Count)?.Least ?? 1,
        EntryOf = (field as Field.Text)?.Of ?? "",
    };

    private static Answer AnswerOf(Field field) => field switch
    {
        Field.Text text => AnswerOf(text.Holds),
        Field.Money { Range: MoneyRange.Any } => Answer.SignedMoney,
        Field.Money => Answer.Money,
        Field.Day => Answer.Day,
        Field.Days => Answer.Days,
        Field.Count => Answer.Count,
        Field.YesNo => Answer.YesOrNo,
        Field.Tick => Answer.Tick,
        Field.Word => Answer.OneOf,
        Field.Words => Answer.Several,
        Field.Parties => Answer.Parties,
        _ => throw new ArgumentException($"{field.Name} is not asked for by itself.", nameof(field)),
    };

    private static Answer AnswerOf(TextHolds holds) => holds switch
    {
        TextHolds.Line or TextHolds.OwnReference => Answer.Line,
        TextHolds.Lines => Answer.Lines,
        TextHolds.County => Answer.County,
        TextHolds.Party => Answer.Party,
        TextHolds.Reference => Answer.Reference,
        TextHolds.Entry => Answer.Entry,
        TextHolds.Structure => Answer.Structure,
        _ => throw new ArgumentOutOfRangeException(nameof(holds), holds, "No such text."),
    };
}

/// <summary>A word to choose.</summary>
/// <param name="Word">As it stands in the job file.</param>
/// <param name="Words">As a person reads it.</param>
internal sealed record Choice(string Word, string Words)
{
    /// <summary>The words of a closed set beside what a person reads.</summary>
    public static IReadOnlyList<Choice> Of(WordTable table, params IReadOnlyList<string> words) =>
        [.. table.Words.Zip(words, (word, said) => new Choice(word, said))];
}
