using Stringline.Law.Facts;
using Stringline.Law.Numbers;

namespace Stringline.Law.PromptPayment;

/// <summary>What a section that fixes a penalty by the month says of money that comes late.</summary>
/// <param name="PerMonth">The penalty, of what is wrongly withheld.</param>
/// <param name="MostHeld">How much of what is disputed may be held; null where the money is not disputed.</param>
internal sealed record LateLaw(Number PerMonth, Number? MostHeld)
{
    /// <summary>Progress payments from the owner of private work.</summary>
    public static LateLaw OwnersProgress { get; } = new(Number.OwnersProgressPenalty, Number.OwnersProgressHeld);

    /// <summary>Progress payments that a contractor passes on.</summary>
    public static LateLaw HirersProgress { get; } = new(Number.HirersProgressPenalty, Number.HirersProgressHeld);

    /// <summary>The same on State work.</summary>
    public static LateLaw StateHirersProgress { get; } = new(Number.StateHirersProgressPenalty, Number.StateHirersProgressHeld);

    /// <summary>Retention from the owner of private work.</summary>
    public static LateLaw OwnersRetention { get; } = new(Number.RetentionPenalty, Number.OwnersRetentionHeld);

    /// <summary>Retention that a direct contractor passes on, on private work.</summary>
    public static LateLaw HirersRetention { get; } = new(Number.RetentionPenalty, Number.HirersRetentionHeld);

    /// <summary>Retention on public work, from the entity and passed on.</summary>
    [Rule("Pub. Contract Code § 7107(e)")]
    public static LateLaw PublicRetention { get; } = new(Number.PublicRetentionCharge, Number.PublicRetentionHeld);

    /// <summary>The charges of a motor carrier in dump truck equipment.</summary>
    public static LateLaw Charges { get; } = new(Number.ChargesPenalty, Number.ChargesHeld);

    /// <summary>The part of a claim that the owner does not dispute.</summary>
    public static LateLaw UndisputedPart { get; } = new(Number.OwnersInterest, null);

    /// <summary>What it says of money that falls due by a day.</summary>
    public LateTerms On(FactsAsOf facts, LocalDate due) =>
        new(facts.Numbers.On(PerMonth, due), MostHeld is { } most ? facts.Numbers.On(most, due) : null);
}

/// <summary>What the law of a day says of money that comes late.</summary>
/// <param name="PerMonth">The penalty by the month, of what is wrongly withheld.</param>
/// <param name="MostHeld">How much of what is disputed may be held; null where the money is not disputed.</param>
public sealed record LateTerms(NumberRow PerMonth, NumberRow? MostHeld)
{
    private const int MonthsOfAYear = 12;

    /// <summary>The same by the year, in words: <c>24 percent a year</c>.</summary>
    public string ByTheYear => $"{CapMeasure.InWords(PerMonth.Value * MonthsOfAYear)} percent a year";

    /// <summary>Dollars and cents of one year's penalty, not rounded.</summary>
    /// <param name="withheld">Dollars and cents wrongly withheld.</param>
    public decimal OfAYear(decimal withheld) => PerMonth.PercentOf(withheld) * MonthsOfAYear;
}
