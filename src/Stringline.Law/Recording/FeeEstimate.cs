using Stringline.Law.Counting;

namespace Stringline.Law.Recording;

/// <summary>One part of a recording fee.</summary>
/// <param name="Id">Stable id: base, extra-pages, fraud, homes, covenant, nonstandard, penalty-print, names, references, lien-notice,
/// conformed-copy.</param>
/// <param name="Words">What it is.</param>
/// <param name="Amount">Dollars and cents.</param>
/// <param name="Section">The section it rests on.</param>
/// <param name="Why">The arithmetic, and where the price comes from.</param>
public sealed record FeePart(string Id, string Words, decimal Amount, string Section, string Why)
{
    /// <summary>
    /// Whether its price must be asked: it was not read, or on no page with a date of the last five years, or pages disagree.
    /// </summary>
    public bool Ask { get; init; }

    /// <summary>The most it may come to where its price must be asked; else the amount.</summary>
    public decimal Most { get; init; } = Amount;
}

/// <summary>What recording a document is estimated to cost. The recorder decides.</summary>
/// <param name="Office">The office and its prices.</param>
/// <param name="Parts">The parts above zero, in order.</param>
public sealed record FeeEstimate(RecorderOffice Office, IReadOnlyList<FeePart> Parts)
{
    /// <summary>The ground on which no homes and covenant fee is reckoned; it must stand on the face or a cover page. Else null.</summary>
    public HomesFeeExemption? Exemption { get; init; }

    /// <summary>What could change the fee at the counter, each in a sentence with its section.</summary>
    public IReadOnlyList<string> WhatCouldChangeIt { get; init; } = [];

    /// <summary>
    /// What it is not expected to pass: wherever a price must be asked, the highest that any county prints, and on a later day that was
    /// named the dearer reading of the law. So much should be at hand, since a short check turns a paper back.
    /// </summary>
    public decimal AtMost { get; init; }

    /// <summary>The later day on which it may cost so much more; null where no later day that was named is the dearer one.</summary>
    public LocalDate? DearerOn { get; init; }

    /// <summary>
    /// What may be charged at a price that was not found, so that nothing of it is in the total: each with the most it may come to.
    /// </summary>
    public IReadOnlyList<FeePart> Unpriced { get; init; } = [];

    /// <summary>Whether the office may take the paper's proof of service in place of its own notice of a lien.</summary>
    public bool ProofSparesNotice { get; init; }

    /// <summary>Dollars and cents.</summary>
    public decimal Total => Parts.Sum(p => p.Amount);

    /// <summary>The part with that id, or null.</summary>
    public FeePart? Part(string id) => Parts.FirstOrDefault(p => p.Id == id);

    /// <summary>Where the prices come from, in a sentence.</summary>
    public string Source => Office.IsFromMemory
        ? $"No price list of {Office.County} County was found, and what this sheet says of the office is not verified. Each price is the "
        + "highest that any county prints. Call the office before you go: ask every price, the hours and where to hand it in."
        : !Office.HasPrices
        ? $"No price list of {Office.County} County was found. Each price is the highest that any county prints. Call the office before "
        + "you go: ask every price."
        : $"Prices as published on {Sites}{(Office.On < DateRead ? "" : $"; checked {LawText.LongDay(DateRead)}")}.";

    private string Sites
    {
        get
        {
            const int shown = 3;
            var sites = Office.PriceSources;
            return string.Join("; ", sites.Take(shown)) + (sites.Count > shown ? $" and {sites.Count - shown} more" : "");
        }
    }

    private LocalDate DateRead => Office.DateRead ?? throw new InvalidOperationException("A row with a source has the day it was read.");
}
