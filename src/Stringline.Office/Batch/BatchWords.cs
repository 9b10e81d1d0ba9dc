using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers;
using Stringline.Papers.Catalogue;

namespace Stringline.Office.Batch;

/// <summary>What the report of a run says for what a refusal names: what is an option on the command line is a column here.</summary>
internal sealed class BatchWords : Door
{
    private static readonly BatchWords Table = new();

    private BatchWords()
    {
    }

    /// <summary>A sentence in the words of the table.</summary>
    public static new string Of(Sentence sentence) => ((Door)Table).Of(sentence);

    /// <summary>A place in the words of the table.</summary>
    public static string Of(Place where) =>
        where is Place.OfInput input ? string.Join(", ", input.All.Select(told => told.Word())) : where.ToString();

    /// <inheritdoc/>
    protected override string OfPointer(IPointer aim) => aim switch
    {
        InputName { Input: var input, And: { } and } => $"{input.Word()} and {and.Word()}",
        InputName { Input: var input } => input.Word(),
        InputTold told => $"{told.Input.Word()} {told.Said}",
        DraftName => DraftName.Word,
        ForTheAsker { Words: var words } => Of(words),
        OptionName { Word: var word } => word,
        _ => aim.Name,
    };
}

/// <summary>An option of the program itself: <c>--store</c>.</summary>
/// <param name="Word">Its word.</param>
internal sealed record OptionName(string Word) : IPointer
{
    /// <inheritdoc/>
    public string Name => "--" + Word;
}
