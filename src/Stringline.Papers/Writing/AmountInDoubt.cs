using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>A sum that the assessment has in doubt: its sheet says both figures.</summary>
internal static class AmountInDoubt
{
    /// <summary>The warning; nothing where no open reading of the facts leaves less than the paper states.</summary>
    /// <param name="amount">What may be claimed.</param>
    /// <param name="stated">What the paper states.</param>
    /// <param name="paper">What the paper is called.</param>
    public static IEnumerable<string> Of(Waterfall amount, decimal stated, string paper)
    {
        if (!amount.IsUnknown && amount.AtLeast < stated)
        {
            yield return $"The amount is in doubt: this {paper} states {Dollars(stated)}; on another reading of the facts no more than "
                + $"{Dollars(amount.AtLeast)} may be claimed. {string.Concat(amount.Questions.Select(Why))}See how the amount of the job "
                + "is figured before you sign.";
        }
    }

    // Only what may lower it: an entry on both sides of a line, or one without a price, may raise it.
    private static string Why(Question question) => question.Corrects switch
    {
        Change change => $"In doubt is {Of(question, change.Amount)}, the change order{Named(change, change.Text)}. "
            + $"{RefusalInWords.Of(question.Sentence)} ",
        Credited credit => $"In doubt is {Of(question, credit.Amount)} of the credit{Named(credit, credit.Text)}. "
            + $"{RefusalInWords.Of(question.Sentence)} ",
        _ => "",
    };

    private static string Of(Question question, decimal amount) => Dollars(question.Dollars ?? amount);

    private static string Named(Entry entry, string? text) => (entry.On is DayFact.Exact on ? $" of {Day(on.Day)}" : "")
        + (Clean(text) is { } words ? $" (“{Shortened(OneLine(words), 90)}”)" : "");
}
