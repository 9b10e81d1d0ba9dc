using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Indexing;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Counter;

/// <summary>
/// What a counter sheet says of the recorder, whatever the paper is: which county, which office, which names, which check.
/// </summary>
internal static class RecorderBlocks
{
    /// <summary>Heading over the names.</summary>
    public const string NamesHeading = "Names the recorder will index";

    /// <summary>The finding that asks whether the site lies in the county named.</summary>
    private const string CountyFinding = "site.county";

    /// <summary>The question which county the site lies in, where the assessment asks it: to be seen first.</summary>
    public static IEnumerable<Block> CountyQuestion(Assessment assessment, Closeness set)
    {
        if (assessment.Find(CountyFinding) is not { } asked)
            yield break;
        yield return new Paragraph("Be sure of the county.", set.Large) { Before = 4 };
        foreach (var line in asked.Why.Where(w => w.Applied).Select(w => (Sentence)$"{w.Sentence} ({w.Section})")
            .Concat(asked.Questions.Select(q => q.Sentence)).Take(set.CountyLines))
            yield return new Paragraph(Shortened(Writing.RefusalInWords.Said(line), 240), set.Text) { Before = 2 };
    }

    /// <summary>The names under which the paper is expected to be indexed: the first of many, since the paper has them all.</summary>
    /// <param name="names">Those of the claim.</param>
    /// <param name="owners">The owners of the file.</param>
    /// <param name="set">How close the sheet is set.</param>
    /// <param name="isOwners">Whether it is the owner's paper, which has no claimant.</param>
    public static IEnumerable<Block> Names(IReadOnlyList<IndexName> names, IEnumerable<Party> owners, Closeness set, bool isOwners = false)
    {
        var claimant = isOwners ? "" : $"\nClaimant: {List(names, IndexSide.Claimant, set)}";
        var all = owners.ToList();
        yield return new Paragraph($"{(IndexNames.AreSeveral(all) ? "Owners" : "Owner")}: {List(names, IndexSide.Owner, set)}{claimant}",
            set.Text)
        { Before = 2 };
        var unsaid = all.Where(o => o.HoldsTitleAs is null).Select(o => OneLine(o.Name)).ToList();
        var more = unsaid.Count == 0 ? "" : $" The file does not say how "
            + (unsaid.Count == 1
                ? $"{Some(unsaid, set)} holds" : unsaid.Count == all.Count ? "the owners hold" : $"{unsaid.Count} of the owners hold")
            + " title: others on the deed belong on the paper too.";
        yield return new Paragraph($"As of record (Gov. Code § 27288.1); surname first, trustees and trust: common practice, not "
            + $"verified.{more}", set.Fine) { Before = 2 };
    }

    /// <summary>The check with its parts, and what could change it at the counter.</summary>
    public static IEnumerable<Block> Check(FeeEstimate fee, Closeness set)
    {
        yield return new Paragraph(fee.Source, fee.Office.HasPrices ? set.Fine : set.Bold) { Before = 2, WithNext = true };
        yield return new Together(new Table(
            [new Column("Part, and how it is figured", 0.66), new Column("Gov. Code", 0.2), new Column("Dollars", 0.14, true)],
            [.. fee.Parts.Select(p => (IReadOnlyList<string>)
                [$"{p.Words}: {p.Why}", Section(p), $"{(p.Ask ? "ask " : "")}{Dollars(p.Amount)}"]),
                .. NoCopy(fee), ["Total", "", Dollars(fee.Total)]])
        { Style = set.Fine, HeadStyle = set.FineBold, Before = 2, LastIsSum = true });
        // Page 1 says that so much is to be ready: why is never cut.
        if (fee.AtMost > fee.Total)
        {
            yield return new Paragraph($"It may come to {Dollars(fee.AtMost)}, at the highest price that any county publishes. "
                + $"{AtMost(fee)}.", set.Fine) { Before = 2 };
        }

        if (fee.Exemption is { } exemption)
        {
            yield return new Paragraph($"No homes fee is figured in. The first page or a cover page must say: {exemption.Wording}.",
                set.Bold) { Before = 4 };
        }

        yield return new Paragraph("What could change it at the counter: ask, or take a second check", set.Bold) { Before = 4,
            WithNext = true };
        foreach (var doubt in fee.WhatCouldChangeIt.Take(set.Doubts))
            yield return new Paragraph(Sentences(doubt, set.DoubtLength), set.Fine) { Before = 1, Indent = 12, Mark = "•" };
        if (fee.WhatCouldChangeIt.Count > set.Doubts)
        {
            yield return new Paragraph($"and {fee.WhatCouldChangeIt.Count - set.Doubts} more, listed where this paper was made.",
                set.Fine) { Before = 1, Indent = 12 };
        }
    }

    private static IEnumerable<IReadOnlyList<string>> NoCopy(FeeEstimate fee) =>
        fee.Unpriced.Where(p => p.Id == "conformed-copy")
            .Select(p => (IReadOnlyList<string>)[$"{p.Words}: no price for it was found", p.Section, "ask"]);

    // What stands between the total and the most, in words.
    private static string AtMost(FeeEstimate fee) => string.Join("; ", (IEnumerable<string>)
    [
        .. fee.Parts.Where(p => p.Most > p.Amount).Select(p => $"{p.Words}: {Dollars(p.Most)} instead of {Dollars(p.Amount)}"),
        .. fee.Unpriced.Select(p => $"{p.Words}: up to {Dollars(p.Most)}"),
        .. fee.DearerOn is { } later ? [$"higher prices on {Day(later)}"] : Array.Empty<string>(),
    ]);

    private static string Section(FeePart part) => part.Section.Replace("Gov. Code ", "", StringComparison.Ordinal);

    private static string List(IReadOnlyList<IndexName> names, IndexSide side, Closeness set) =>
        Some([.. names.Where(n => n.Side == side).Select(n => n.Indexed).DefaultIfEmpty("not named")], set);

    // All of them where there is room: a sheet of two pages must hold whatever the paper holds.
    private static string Some(List<string> names, Closeness set)
    {
        var room = set.NamesLength;
        var shown = new List<string>();
        foreach (var name in names)
        {
            if (shown.Count > 0 && shown.Sum(s => s.Length + 2) + name.Length > room)
                break;
            shown.Add(set.IsCut ? Shortened(name, room) : name);
        }

        return string.Join("; ", shown.Select(Unbroken.Name))
            + (names.Count > shown.Count ? $"; and {names.Count - shown.Count} more, as the paper has them" : "");
    }
}
