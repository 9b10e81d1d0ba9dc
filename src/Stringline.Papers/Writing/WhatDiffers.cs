using Stringline.Law.Facts;
using Stringline.Law.LienableAmount;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>Why two papers of one job state two sums: the steps in which the law's two amounts part.</summary>
internal static class WhatDiffers
{
    /// <summary>One line for a sheet; nothing where the two are the same, or one is not known.</summary>
    /// <param name="claimed">What may be claimed by a remedy.</param>
    /// <param name="owed">What is owed under the contract.</param>
    public static IEnumerable<string> Between(Waterfall claimed, Waterfall owed)
    {
        if (claimed.IsUnknown || owed.IsUnknown || claimed.Demand == owed.Demand)
            yield break;
        var steps = claimed.Steps.Concat(owed.Steps).Select(s => s.Id).Distinct().Select(id => (
            Title: (Step(claimed, id) ?? Step(owed, id))!.Title,
            By: (Step(claimed, id)?.Amount ?? 0m) - (Step(owed, id)?.Amount ?? 0m))).Where(s => s.By != 0m);
        yield return $"{Remedies(claimed.Remedy)} can state {Dollars(claimed.Demand)}; {Dollars(owed.Demand)} is owed under the contract. "
            + $"What makes the difference: {string.Join("; ", steps.Select(s => $"“{s.Title},” {Signed(s.By)}"))}.";
    }

    /// <summary>A line for each stop payment notice whose amount a later paper does not repeat.</summary>
    /// <param name="stated">What the later paper states.</param>
    /// <param name="given">The notices.</param>
    public static IEnumerable<string> FromNotice(decimal stated, IEnumerable<StopPaymentGiven> given) =>
        given.Where(g => g.Amount is { } amount && amount != stated).Select(g =>
            $"The amount differs: this paper states {Dollars(stated)}, the stop payment notice "
            + $"{(g.On is DayFact.Exact on ? $"given on {Day(on.Day)} " : "")}{Dollars(g.Amount!.Value)}. Be sure why before you sign.");

    /// <summary>The sum of each such notice beside that of the paper, so that no two sums have one description.</summary>
    /// <param name="stated">What the paper states.</param>
    /// <param name="given">The notices.</param>
    public static IEnumerable<string> BesideNotice(decimal stated, IEnumerable<StopPaymentGiven> given) =>
        given.Where(g => g.Amount is { } amount && amount != stated).Select(g => "The stop payment notice "
            + $"{(g.On is DayFact.Exact on ? $"given on {Day(on.Day)}, " : "")}states a different "
            + $"amount, {Dollars(g.Amount!.Value)}.").Distinct();

    private static WaterfallStep? Step(Waterfall waterfall, string id) => waterfall.Steps.FirstOrDefault(s => s.Id == id);

    private static string Signed(decimal amount) => amount < 0 ? $"{Dollars(-amount)} less" : $"{Dollars(amount)} more";

    private static string Remedies(Remedy remedy) => remedy switch
    {
        Remedy.Lien => "A claim of lien",
        Remedy.DesignLien => "A design professional’s lien",
        Remedy.StopPaymentNotice => "A stop payment notice",
        Remedy.PaymentBond or Remedy.FederalBond => "A claim on the payment bond",
        Remedy.Debt => "A demand for payment",
        _ => throw new ArgumentOutOfRangeException(nameof(remedy), remedy, "No such remedy."),
    };
}
