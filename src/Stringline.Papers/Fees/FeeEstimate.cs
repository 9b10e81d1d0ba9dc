namespace Stringline.Papers.Fees;

/// <summary>One part of a recording fee.</summary>
/// <param name="Id">Stable id: base, extra-pages, fraud, homes, covenant, nonstandard, penalty-print, names, references, lien-notice,
/// conformed-copy.</param>
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
    /// <summary>The ground on which no homes and covenant fee is reckoned; it must stand on the face or a cover page. Else null.</summary>
    public HomesFeeExemption? Exemption { get; init; }

    /// <summary>What could change the fee at the counter, each in a sentence with its section.</summary>
    public IReadOnlyList<string> WhatCouldChangeIt { get; init; } = [];

    /// <summary>Dollars and cents.</summary>
    public decimal Total => Parts.Sum(p => p.Amount);

    /// <summary>The part with that id, or null.</summary>
    public FeePart? Part(string id) => Parts.FirstOrDefault(p => p.Id == id);

    /// <summary>Where the prices come from, in a sentence.</summary>
    public string Source => Office.IsFromMemory
        ? $"No schedule of {Office.County} County was read; what this sheet says of the office is from memory. The highest prices the "
        + "statutes allow are taken. Call the office before you go: ask every price, the hours and where to hand it in."
        : $"Prices as published on {Office.Source}, {Office.DateOnPage}; read {Law.Reasoning.LawText.IsoDay(DateRead)}.";

    private LocalDate DateRead => Office.DateRead ?? throw new InvalidOperationException("A row with a source has the day it was read.");
}
