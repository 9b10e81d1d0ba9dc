namespace Stringline.Papers.Fees;

/// <summary>One part of a recording fee.</summary>
/// <param name="Id">Stable id: base, extra-pages, fraud, homes, covenant, nonstandard, penalty-print, names, references, lien-notice, conformed-copy.</param>
/// <param name="Words">What it is.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Section">The section it rests on.</param>
/// <param name="Why">The arithmetic, and where the price comes from.</param>
public sealed record FeePart(string Id, string Words, decimal Amount, string Section, string Why);

/// <summary>What recording a document is estimated to cost. The recorder decides.</summary>
/// <param name="Office">The office and its prices.</param>
/// <param name="Parts">The parts above zero, in order.</param>
public sealed record FeeEstimate(RecorderOffice Office, IReadOnlyList<FeePart> Parts)
{
    /// <summary>Dollars and cents.</summary>
    public decimal Total => Parts.Sum(p => p.Amount);

    /// <summary>The part with that id, or null.</summary>
    public FeePart? Part(string id) => Parts.FirstOrDefault(p => p.Id == id);

    /// <summary>Where the prices come from, in a sentence.</summary>
    public string Source => Office.Source is null
        ? $"No schedule of {Office.County} County was read: the highest prices the statutes allow are taken. Ask the office."
        : $"Prices as published on {Office.Source}, {Office.DateOnPage}; read {Law.Reasoning.LawText.IsoDay(Office.DateRead ?? throw new InvalidOperationException("A row with a source has the day it was read."))}.";
}
