using Stringline.Law.Counting;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;

namespace Stringline.Papers;

/// <summary>
/// What a sentence of a paper names, so that each door says it in its own words: the command line says what <see cref="ToString"/> does.
/// </summary>
public abstract record Named
{
    private protected Named()
    {
    }

    /// <summary>As the command line and the job file have it.</summary>
    protected abstract string Plain { get; }

    /// <inheritdoc/>
    public sealed override string ToString() => Plain;
}

/// <summary>What is told with the request: <c>--amount</c>, or two of them, <c>--amount and --day</c>.</summary>
/// <param name="Input">What.</param>
/// <param name="And">What beside it.</param>
public sealed record InputName(PaperInput Input, PaperInput? And = null) : Named
{
    /// <inheritdoc/>
    protected override string Plain => And is { } and ? $"--{Input.Word()} and --{and.Word()}" : $"--{Input.Word()}";
}

/// <summary>What is told with the request, with what it may say: <c>--through 2026-05-31</c>.</summary>
/// <param name="Input">What.</param>
/// <param name="Value">A day, dollars, or words, which stand in quotation marks.</param>
public sealed record InputTold(PaperInput Input, object Value) : Named
{
    /// <summary>What it may say, alone.</summary>
    public string Said => Value switch
    {
        LocalDate day => LawText.IsoDay(day),
        decimal dollars => dollars.ToString("0.00", CultureInfo.InvariantCulture),
        var words => $"\"{words}\"",
    };

    /// <inheritdoc/>
    protected override string Plain => $"--{Input.Word()} {Said}";
}

/// <summary>That a draft is printed in spite of everything, which is said with the request: <c>--draft</c>.</summary>
public sealed record DraftName : Named
{
    /// <summary>The one there is.</summary>
    public const string Word = "draft";

    /// <inheritdoc/>
    protected override string Plain => "--" + Word;
}

/// <summary>What helps only the one who asks for the paper, such as an example; a printed sheet leaves it out.</summary>
/// <param name="Words">The words, with the sign or space before them.</param>
public sealed record ForTheAsker(Sentence Words) : Named
{
    /// <inheritdoc/>
    protected override string Plain => Words.ToString();

    /// <summary>An example.</summary>
    public static ForTheAsker SuchAs(PaperInput input, object value) => new($", such as {new InputTold(input, value)}");

    /// <summary>By what it is told.</summary>
    public static ForTheAsker InBrackets(PaperInput input) => new($" ({new InputName(input)})");
}

/// <summary>A kind of entry: <c>"furnishing-ended"</c>.</summary>
/// <param name="Kind">Its description.</param>
public sealed record KindName(EntryKind Kind) : Named
{
    /// <summary>The kind with that word in the job file.</summary>
    public KindName(string word)
        : this(EntryKinds.Find(word) ?? throw new ArgumentException($"No such kind of entry: {word}.", nameof(word)))
    {
    }

    /// <inheritdoc/>
    protected override string Plain => $"\"{Kind.Name}\"";
}

/// <summary>A word of the job file that is no kind of entry: a field by itself, a capacity, a list: <c>"paymentCleared"</c>.</summary>
/// <param name="Word">The word.</param>
public sealed record FileWord(string Word) : Named
{
    /// <summary>The word of a capacity.</summary>
    public FileWord(PartyCapacity capacity)
        : this(JobFileWords.Word(capacity))
    {
    }

    /// <inheritdoc/>
    protected override string Plain => $"\"{Word}\"";
}

/// <summary>What a field of the job file is to say: <c>"reputed": true</c>.</summary>
/// <param name="Field">The field.</param>
/// <param name="Value">What, as JSON.</param>
public sealed record FieldSaid(string Field, string Value) : Named
{
    /// <inheritdoc/>
    protected override string Plain => $"\"{Field}\": {Value}";
}

/// <summary>A field of the head of the job file, by its path: <c>work.permit.ownerAddress</c>.</summary>
/// <param name="Path">The path.</param>
public sealed record HeadField(string Path) : Named
{
    /// <inheritdoc/>
    protected override string Plain => Path;
}

/// <summary>A paper of the catalogue: <c>paper claim-request</c>, or <c>the paper claim-request</c>.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="The">Whether the article stands before it.</param>
public sealed record PaperName(Paper Paper, bool The = false) : Named
{
    /// <inheritdoc/>
    protected override string Plain => $"{(The ? "the " : "")}paper {Paper.Id}";
}

/// <summary>What a paper of the catalogue is called: <c>"claim-request"</c>.</summary>
/// <param name="Paper">The paper.</param>
public sealed record PaperWord(Paper Paper) : Named
{
    /// <inheritdoc/>
    protected override string Plain => $"\"{Paper.Id}\"";
}

/// <summary>What the law says of these facts, in its own words.</summary>
/// <param name="Words">The words.</param>
public sealed record SaidByLaw(Sentence Words) : Named
{
    /// <summary>Whether it is put for somebody who does not work with the law.</summary>
    public bool ForReaders { get; init; }

    /// <summary>In the words of a door.</summary>
    public string In(Door door) => ForReaders ? Writing.LawForReaders.Of(door.Of(Words)) : door.Of(Words);

    /// <inheritdoc/>
    protected override string Plain => In(Door.OfFile);
}
