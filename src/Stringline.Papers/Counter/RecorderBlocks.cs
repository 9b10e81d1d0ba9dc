using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Papers.Fees;
using Stringline.Papers.Indexing;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Counter;

/// <summary>
/// What a counter sheet says of the recorder, whatever the paper is: which county, which office, which names, which check.
/// </summary>
internal static class RecorderBlocks
{
    /// <summary>The finding that asks whether the site lies in the county named.</summary>
    private const string CountyFinding = "site.county";

    /// <summary>The question which county the site lies in, where the assessment asks it: to be seen first.</summary>
    public static IEnumerable<Block> CountyQuestion(Assessment assessment)
    {
        if (assessment.Find(CountyFinding) is not { } asked)
            yield break;
        yield return new Paragraph("Be sure of the county.", CounterType.Large) { Before = 4 };
        foreach (var line in asked.Why.Where(w => w.Applied).Select(w => $"{w.Text} ({w.Section})")
            .Concat(asked.Questions.Select(q => q.Text)))
            yield return new Paragraph(Writing.RefusalInWords.Said(line), CounterType.Text) { Before = 2 };
    }

    /// <summary>Whose counter, where, when; that nothing is known of it but from memory, where that is so.</summary>
    public static IEnumerable<Block> Where(RecorderOffice office)
    {
        var place = office.Place is { } where ? $", {where}" : "";
        yield return new Paragraph($"{office.Name}, where the site lies (Civ. Code § 8060){place}. Hours: "
            + $"{office.Words(RecorderField.Hours) ?? "ask"}.",
            CounterType.Text) { Before = 2 };
        if (office.IsFromMemory)
        {
            yield return new Paragraph("Nothing that this office publishes was read. Call it before you go.",
                CounterType.Bold) { Before = 2 };
        }
    }

    /// <summary>The names under which the paper is expected to be indexed.</summary>
    /// <param name="names">Those of the claim.</param>
    /// <param name="owners">The owners of the file.</param>
    /// <param name="isOwners">Whether it is the owner's paper, which has no claimant.</param>
    public static IEnumerable<Block> Names(IReadOnlyList<IndexName> names, IEnumerable<Party> owners, bool isOwners = false)
    {
        var claimant = isOwners ? "" : $"\nClaimant: {List(names, IndexSide.Claimant)}";
        yield return new Paragraph($"Owner: {List(names, IndexSide.Owner)}{claimant}", CounterType.Text) { Before = 2 };
        var unsaid = owners.Where(o => o.HoldsTitleAs is null).Select(o => OneLine(o.Name)).ToList();
        var more = unsaid.Count == 0 ? "" : $" The file does not say how {string.Join("; ", unsaid)} "
            + $"{(unsaid.Count == 1 ? "holds" : "hold")} title: others on the deed belong on the paper too.";
        yield return new Paragraph($"As of record (Gov. Code § 27288.1); surname first, trustees and trust: common practice, no "
            + $"source.{more}", CounterType.Small) { Before = 2 };
    }

    /// <summary>The check with its parts, and what could change it at the counter.</summary>
    public static IEnumerable<Block> Check(FeeEstimate fee)
    {
        yield return new Paragraph(fee.Source, fee.Office.IsFromMemory ? CounterType.Bold : CounterType.Text) { Before = 2,
            WithNext = true };
        yield return new Together(new Table(
            [new Column("Part", 0.25), new Column("Reckoned", 0.64), new Column("Dollars", 0.11, true)],
            [.. fee.Parts.Select(p => (IReadOnlyList<string>)[p.Words, $"{p.Why} ({p.Section})", Dollars(p.Amount)]),
                ["Total", "", Dollars(fee.Total)]])
        { Style = CounterType.Small, HeadStyle = CounterType.Small with { Face = Face.SansBold }, Before = 4, LastIsSum = true });
        if (fee.Exemption is { } exemption)
        {
            yield return new Paragraph($"No homes fee is reckoned. The first page or a cover page must say: {exemption.Wording}.",
                CounterType.Bold) { Before = 4 };
        }

        yield return new Paragraph("What could change it at the counter: ask, or take a second check", CounterType.Bold) { Before = 6,
            WithNext = true };
        foreach (var doubt in fee.WhatCouldChangeIt)
            yield return new Paragraph(doubt, CounterType.Small) { Before = 1.5, Indent = 12, Mark = "•" };
    }

    private static string List(IReadOnlyList<IndexName> names, IndexSide side) =>
        string.Join("; ", names.Where(n => n.Side == side).Select(n => n.Indexed).DefaultIfEmpty("not named"));
}
