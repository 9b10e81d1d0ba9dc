using Stringline.Law;
using Stringline.Law.Reasoning;
using Stringline.Papers.Catalogue;
using Stringline.Papers.ClaimOfLien;
using Stringline.Papers.Counter;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// The page for whoever signs, mails or hands over the paper: what first, by when, to whom, how, and what to keep. Never part of the paper.
/// </summary>
internal sealed class GuideSheet(Paper paper, Matter matter, Bundle bundle, IReadOnlyList<PaperFile> files, FeeEstimate? fee,
    IReadOnlyList<Refusal> inTheWay)
{
    private readonly Guide guide = bundle.Guide;

    /// <summary>Title: a counter sheet where there is a counter, else a sheet to go by.</summary>
    public string Title => guide.Recording is null ? "Instruction sheet" : "Counter sheet";

    /// <summary>File name.</summary>
    public string FileName => guide.Recording is null ? "instruction-sheet.pdf" : "counter-sheet.pdf";

    /// <summary>The sheet's plan.</summary>
    public PaperPlan Plan(bool draft) => new()
    {
        Title = $"{Titled(draft)}: {paper.Title}",
        Foot = $"{Titled(draft)}, {(guide.Recording is null ? "not part of the paper" : "not to be recorded")}. "
            + Shortened(matter.Job.Name, 50),
        FootStyle = new TypeStyle(Face.Sans, 8.5, 11),
        Made = matter.AsOf,
        Draft = draft,
        Blocks = draft && !ForItsSigner
            ? [.. Top(draft), .. FirstOfADraft(), .. Days(draft), .. Named(), .. ToSee()]
            : [.. Top(draft), .. First(), .. Days(false), .. ByHand(), .. To(), .. Steps(), .. Counter(), .. After()],
    };

    /// <summary>
    /// Whether nothing stands against the paper but that somebody else completes and signs it: the steps are for that one.
    /// </summary>
    private bool ForItsSigner => bundle.AlwaysDraft is not null && inTheWay.Count == 1;

    private string Titled(bool draft) => draft ? $"{Title} of a draft" : Title;

    private IEnumerable<Block> Top(bool draft) =>
    [
        new Heading($"{Titled(draft)}: {paper.Title}", new TypeStyle(Face.SansBold, 16, 21)) { Before = 0, Align = Align.Left },
        new Paragraph($"{OneLine(matter.Job.Name)}, as of {Day(matter.AsOf)}. {paper.Sections}.", CounterType.Text) { Before = 3 },
        new Paragraph(Assessment.Caution, CounterType.Bold.At(9)) { Before = 5 },
    ];

    private IEnumerable<Block> First()
    {
        List<Block> lines = [.. ForItsSigner ? OnlyADraft() : [],
            .. guide.Recording is null ? [] : RecorderBlocks.CountyQuestion(matter.Assessment),
            .. Said(guide.Effect), .. Said(guide.First)];
        if (lines.Count > 0)
        {
            yield return new Framed([new Heading("First", CounterType.Head) { Before = 0, Align = Align.Left }, .. lines]) { Thickness =
                2 };
        }
    }

    /// <summary>A draft gives nobody leave: what stands against it, and no step to take with it.</summary>
    private IEnumerable<Block> FirstOfADraft()
    {
        yield return new Framed([new Heading("First", CounterType.Head) { Before = 0, Align = Align.Left }, .. OnlyADraft(),
            .. guide.Recording is null ? [] : RecorderBlocks.CountyQuestion(matter.Assessment), .. Said(guide.Effect)]) { Thickness = 2 };
    }

    private static IEnumerable<Block> Said(IReadOnlyList<string> words) =>
        words.Select(w => new Paragraph(RefusalInWords.Said(w), CounterType.Text) { Before = 4, Indent = 12, Mark = "•" });

    private IEnumerable<Block> OnlyADraft()
    {
        const int shown = 8;
        yield return new Paragraph("Only a draft. Not to be signed, given or recorded.", CounterType.Large) { Before = 2 };
        if (bundle.AlwaysDraft is null)
        {
            yield return new Paragraph(inTheWay.Count == 0
                ? "Nothing stands against the paper. Make it again, not as a draft: its sheet says what to do."
                : "Put right what stands here, then make it again, not as a draft: its sheet says what to do.",
                CounterType.Text) { Before = 2 };
        }

        foreach (var refusal in inTheWay.Take(shown))
        {
            yield return new Paragraph(RefusalInWords.Whole(matter.Job, matter.Assessment, refusal), CounterType.Text) { Before = 2, Indent = 12,
                Mark = "•" };
        }

        if (inTheWay.Count > shown)
        {
            yield return new Paragraph($"and {inTheWay.Count - shown} more, which stand beside the draft.", CounterType.Text) { Before = 2,
                Indent = 12 };
        }
    }

    private IEnumerable<Block> Days(bool draft)
    {
        if (paper.Deadline is null || matter.Assessment.Find(paper.Deadline) is not { } last)
            yield break;
        if (!last.IsDeadline)
        {
            // A day that is past reads as leave, which a draft never gives.
            var own = last.Band is { } from ? (from.Latest ?? from.Earliest).Day : (LocalDate?)null;
            if (draft && own > matter.AsOf)
                yield return NotBefore(own.Value, null);
            else if (!draft && (guide.NotBefore?.Day ?? own) is { } soonest)
                yield return NotBefore(soonest, guide.NotBefore?.If);

            yield break;
        }

        // A duty that is done, or that was never due, has no day.
        if (last is { ActBy: null, Band: null, Standing: Standing.Kept or Standing.Done })
            yield break;
        List<Block> lines =
        [
            new Paragraph("ACT BY", CounterType.Bold) { Before = 0, WithNext = true },
            new Paragraph(last.ActBy is { } day ? DayOfWeek(day) : "no day can be given yet",
                new TypeStyle(Face.SansBold, 24, 30)) { Before = 0 },
        ];
        if (last.ActBy is { } by && by < matter.AsOf)
        {
            lines.Add(new Paragraph(draft ? "That day is past. Ask a lawyer what is left."
                : "That day is past. Act at once, and ask a lawyer what is left.", CounterType.Bold) { Before = 2 });
        }

        if (last.Band is { } band)
        {
            lines.Add(new Paragraph($"Last day: {DayOfWeek(band.Earliest.Day)}, on the reading “{band.Earliest.Name}”.",
                CounterType.Text) { Before = 3 });
            if (band.Latest is { } latest && latest.Day != band.Earliest.Day)
            {
                lines.Add(new Paragraph($"On another reading (“{latest.Name}”) {DayOfWeek(latest.Day)}. Plan on the first; the later day "
                    + "is an argument, not a plan.", CounterType.Text) { Before = 2 });
            }
        }

        if (last.Standing is Standing.InDoubt or Standing.Narrowed or Standing.Lost)
        {
            lines.Add(new Paragraph($"Standing: {last.Standing.Word()}. {Shortened(Matter.Reasons(last), 600)}",
                CounterType.Text) { Before = 2 });
        }

        yield return new Framed(lines);
    }

    private static Framed NotBefore(LocalDate day, string? condition)
    {
        List<Block> lines =
        [
            new Paragraph("NOT BEFORE", CounterType.Bold) { Before = 0, WithNext = true },
            new Paragraph(DayOfWeek(day), new TypeStyle(Face.SansBold, 24, 30)) { Before = 0 },
        ];
        if (condition is not null)
            lines.Add(new Paragraph(condition, CounterType.Text) { Before = 2 });
        return new Framed(lines);
    }

    private IEnumerable<Block> ByHand()
    {
        var blanks = bundle.Leaves.SelectMany(l => l.Blanks.Select(b => bundle.Leaves.Count == 1 ? b : $"{l.Title}: {b}")).Distinct()
            .ToList();
        if (blanks.Count == 0)
            yield break;
        yield return new Heading("Fill in by hand, in ink", CounterType.Head) { Before = 11, Align = Align.Left };
        foreach (var blank in blanks)
            yield return Tick(blank);
    }

    /// <summary>To whom the paper goes.</summary>
    private IEnumerable<Block> Named()
    {
        if (guide.To.Count > 0)
        {
            yield return new Heading(guide.To.Count == 1 ? "To whom" : $"To whom: {guide.To.Count} copies", CounterType.Head) { Before = 11,
                Align = Align.Left };
            yield return new Table(
                [new Column("Name", 0.4), new Column("Capacity", 0.2), new Column("Address", 0.4)],
                [.. guide.To.Select(p =>
                    (IReadOnlyList<string>)[OneLine(Clean(p.Name) ?? ""), Service.CapacityOf(p), matter.AddressOf(p)
                    ?? "find it: see Civ. Code § 8108"])])
            { Style = CounterType.Small, HeadStyle = CounterType.Small with { Face = Face.SansBold }, Before = 3 };
        }
    }

    private IEnumerable<Block> To()
    {
        foreach (var block in Named())
            yield return block;
        if (guide.Manner is { } manner)
            yield return new Paragraph(manner, CounterType.Text) { Before = 5 };
    }

    private IEnumerable<Block> Steps() =>
        List(ForItsSigner ? "What is done by the one who completes and signs it" : "What to do", guide.Steps);

    private IEnumerable<Block> After() => List("Afterwards", guide.After);

    private static IEnumerable<Block> List(string heading, IReadOnlyList<string> words)
    {
        if (words.Count == 0)
            yield break;
        yield return new Heading(heading, CounterType.Head) { Before = 11, Align = Align.Left };
        foreach (var line in words)
            yield return Tick(line);
    }

    private IEnumerable<Block> Counter()
    {
        if (guide.Recording is not { } recording || fee is null)
            yield break;
        yield return new Heading("Where, and what to hand over", CounterType.Head) { Before = 11, Align = Align.Left };
        foreach (var block in RecorderBlocks.Where(fee.Office))
            yield return block;
        yield return Tick($"Two originals, {Pages(files[0].Pages)} each, signed in ink (Gov. Code § 27201(b)(1)): one to be recorded, one "
            + "to be stamped and kept. White paper 8½ by 11 inches, one side only, printed at actual size.");
        yield return Tick(recording.Why);
        yield return Tick($"A check for {Dollars(fee.Total)}, payable to the {fee.Office.Name}, and a self-addressed stamped envelope for "
            + "the stamped copy.");
        foreach (var block in CheckAndNames(recording, fee))
            yield return block;
    }

    /// <summary>Of the counter, what a draft may tell too.</summary>
    private IEnumerable<Block> ToSee()
    {
        if (guide.Recording is not { } recording || fee is null)
            yield break;
        yield return new Heading("Where", CounterType.Head) { Before = 11, Align = Align.Left };
        foreach (var block in RecorderBlocks.Where(fee.Office).Concat(CheckAndNames(recording, fee)))
            yield return block;
    }

    private IEnumerable<Block> CheckAndNames(Recording recording, FeeEstimate fee)
    {
        yield return new Heading($"The check: {Dollars(fee.Total)}, estimated", CounterType.Head) { Before = 11, Align = Align.Left };
        if (recording.Notary)
            yield return new Paragraph("The notary’s certificate is counted as one page.", CounterType.Text) { Before = 2,
                WithNext = true };
        foreach (var block in RecorderBlocks.Check(fee))
            yield return block;
        yield return new Heading("Names to be indexed", CounterType.Head) { Before = 11, Align = Align.Left };
        foreach (var block in RecorderBlocks.Names(matter.Facts.Names, matter.Facts.Owners, recording.IsOwners))
            yield return block;
    }

    private static string Pages(int pages) => pages == 1 ? "1 page" : $"{pages} pages";

    private static TickBox Tick(string words) => new(words, false) { Style = CounterType.Text, Before = 2.5 };
}
