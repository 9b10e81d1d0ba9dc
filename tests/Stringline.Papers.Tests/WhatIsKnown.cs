using System.Collections;
using Stringline.Law;
using Stringline.Law.LienableAmount;
using Stringline.Law.Reasoning;

namespace Stringline.Papers.Tests;

/// <summary>
/// Everything that a paper may print: sums, days and texts of the law's findings and amounts, of the job file, of what was told with the
/// request, of a refusal and of the recorder's prices.
/// </summary>
internal static class WhatIsKnown
{
    private const int Deepest = 6;

    /// <summary>The sums, days and texts, each as what it is.</summary>
    public static IEnumerable<object> Of(PaperDraw drawn, Assessment assessment, PacketOutcome.Made papers)
    {
        yield return drawn.AsOf;
        foreach (var value in assessment.Findings.SelectMany(In))
            yield return value;
        var waterfalls = Enum.GetValues<Remedy>().Select(assessment.AmountOf).Append(assessment.Amount).Append(assessment.Owed);
        foreach (var value in waterfalls.SelectMany(w => Walk(w, 0)))
            yield return value;
        foreach (var value in Walk(drawn.Job, 0).Concat(Walk(drawn.Options, 0)).Concat(Walk(papers.Fee, 0)))
            yield return value;
        // A refusal on a draft's sheet may show by an example what would be right.
        foreach (var refusal in papers.InTheWay)
            yield return refusal.Right.ToString();
    }

    /// <summary>What a finding says: its days and its amount, its reasons and questions.</summary>
    public static IEnumerable<object> In(Finding finding) => Walk(finding, 0);

    // Every sum, day and text that a record holds, however deep.
    private static IEnumerable<object> Walk(object? value, int depth)
    {
        switch (value)
        {
            case null or Enum or bool or int or long:
                return [];
            case decimal or LocalDate or string:
                return [value];
            case Reason reason:
                return [reason.Text, .. reason.Children.SelectMany(child => Walk(child, depth))];
            case IEnumerable many:
                return many.Cast<object?>().SelectMany(one => Walk(one, depth + 1));
        }

        if (depth > Deepest || value is Delegate || value.GetType().Namespace?.StartsWith("Stringline", StringComparison.Ordinal) != true)
            return [];
        return value.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0)
            .SelectMany(p => Walk(p.GetValue(value), depth + 1));
    }
}
