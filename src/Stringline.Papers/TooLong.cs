namespace Stringline.Papers;

/// <summary>
/// Texts that no paper has room for. A word without an end could not be indexed, and a paper that broke it where its lines are full
/// could not be read back whole; a name that fills a page would part from the signature over it. Nobody has such a name or address,
/// so both are refused before anything is printed, drafts too.
/// </summary>
internal static class TooLong
{
    /// <summary>Most characters of a word that every paper has room for.</summary>
    public const int Word = 60;

    /// <summary>Most characters of a name or title under a signature.</summary>
    public const int UnderASignature = 300;

    private const int Shown = 24;

    private static readonly char[] Ends = [' ', '\n', '\r', '\t'];

    private static readonly char[] Points = ['.', ',', ';', ':', '(', ')', '’'];

    /// <summary>Whether the refusal is of this kind: nothing can be printed, a draft neither.</summary>
    public static bool Is(Refusal refusal) => refusal.Id is "word-too-long" or "signer-too-long";

    /// <summary>The refusals, at most one of each kind.</summary>
    /// <param name="texts">All texts of the paper that come from facts.</param>
    /// <param name="underSignatures">Names and titles under its signatures.</param>
    public static IEnumerable<Refusal> In(IReadOnlyList<string> texts, IEnumerable<string> underSignatures)
    {
        if (texts.SelectMany(t => t.Split(Ends, StringSplitOptions.RemoveEmptyEntries)).Select(w => w.Trim(Points))
            .FirstOrDefault(w => w.Length > Word) is { } word)
        {
            yield return new Refusal("word-too-long", Place.PaperTexts, $"“{word[..Shown]}…” has {word.Length} characters without a space.",
                $"Write it in words with spaces between, as the deed or the contract has it; a word may have {Word} characters.", "");
        }

        if (underSignatures.FirstOrDefault(t => t.Length > UnderASignature) is { } name)
        {
            yield return new Refusal("signer-too-long", Place.PaperTexts,
                $"“{name[..Shown]}…” has {name.Length} characters and is to stand under a signature.",
                $"Write the name or title alone; it may have {UnderASignature} characters.", "Gov. Code § 27201(a)");
        }
    }
}
