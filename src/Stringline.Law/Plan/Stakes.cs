using Stringline.Law.Reasoning;

namespace Stringline.Law.Plan;

/// <summary>
/// What hangs on a step: what is owed on the job, and what of it the step can still save. Two figures, never one that hides the other.
/// </summary>
/// <param name="Owed">Dollars and cents owed, by whatever road; null where the file does not say what the work was worth.</param>
/// <param name="Saves">Dollars and cents that the step reaches today; null where nobody can say.</param>
/// <param name="AgreedPrice">The price agreed in the contract; null where none is.</param>
public sealed record Stakes(decimal? Owed, decimal? Saves, decimal? AgreedPrice)
{
    /// <summary>The two figures in words.</summary>
    /// <param name="finding">Id of the finding whose step it is.</param>
    public string Text(string finding) => finding switch
    {
        _ when Owed is null || Saves is null => AgreedPrice is null ? "no amount yet" : Write($"no amount yet; agreed price {AgreedPrice}"),
        "preliminary-notice.last-day" => OfNotice(Owed.Value, Saves.Value),
        "release.when-paid" => "nothing owed; released in time it costs no petition and no attorney’s fees",
        _ when Owed == 0 => "nothing owed",
        _ when Owed == Saves => Write($"owed {Owed}, all of it at stake"),
        _ when Saves == 0 => Write($"owed {Owed}; this reaches $0.00 of it"),
        _ when Saves < Owed => Write($"owed {Owed}; this can save {Saves} of it"),
        _ => Write($"owed {Owed}; this reaches {Saves}"),
    };

    private string OfNotice(decimal owed, decimal saves) => (owed, AgreedPrice) switch
    {
        (0m, null) => "nothing owed yet; it secures all later deliveries",
        (0m, { } price) => Write($"nothing owed yet; agreed price {price}, all of which it secures from today on"),
        _ when owed == saves => Write($"owed {owed}; a notice mailed today reaches all of it, and all later deliveries"),
        _ => Write($"owed {owed}; a notice mailed today reaches {saves} of it, and all later deliveries"),
    };

    private static string Write(Sentence text) => text.ToString();
}
