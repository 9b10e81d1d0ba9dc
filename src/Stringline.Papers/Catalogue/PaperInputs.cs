namespace Stringline.Papers.Catalogue;

/// <summary>The words by which what a paper may be told is named.</summary>
public static class PaperInputs
{
    /// <summary>Its word, the same on the command line, in the address of a page and at the head of a batch's column.</summary>
    public static string Word(this PaperInput input) => input switch
    {
        PaperInput.To => "to",
        PaperInput.Through => "through",
        PaperInput.Amount => "amount",
        PaperInput.Maker => "maker",
        PaperInput.Payee => "payee",
        PaperInput.Disputed => "disputed",
        PaperInput.PaymentCleared => "payment-cleared",
        PaperInput.Releases => "releases",
        PaperInput.ThroughAgain => "through-again",
        PaperInput.Bonded => "bonded",
        PaperInput.Until => "until",
        PaperInput.Words => "words",
        PaperInput.Day => "day",
        PaperInput.Number => "number",
        PaperInput.Grounds => "ground",
        PaperInput.ExtensionDays => "days",
        PaperInput.Documents => "document",
        PaperInput.Structure => "structure",
        PaperInput.FormerOwner => "former-owner",
        PaperInput.WholeWork => "whole-work",
        PaperInput.Notice => "kind",
        _ => throw new ArgumentOutOfRangeException(nameof(input), input, "No such option."),
    };
}
