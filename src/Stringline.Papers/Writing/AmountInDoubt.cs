using Stringline.Law.LienableAmount;
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
                + $"{Dollars(amount.AtLeast)} may be claimed. See how the amount of the job is figured before you sign.";
        }
    }
}
