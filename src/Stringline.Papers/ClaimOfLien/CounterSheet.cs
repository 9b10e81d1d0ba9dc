using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Papers.Counter;
using Stringline.Papers.Fees;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// The page for whoever stands at the counter: what first, by when, where, with what, and what to bring back. Never recorded.
/// </summary>
internal sealed class CounterSheet(JobFile job, Assessment assessment, ClaimFacts facts, Service service, FeeEstimate fee, int claimPages,
    IReadOnlyList<Refusal> inTheWay, EarlierClaim? earlier = null)
{
    /// <summary>Title.</summary>
    public const string Title = "Counter sheet";

    /// <summary>File name.</summary>
    public const string FileName = "counter-sheet.pdf";

    private static readonly TypeStyle Text = CounterType.Text;
    private static readonly TypeStyle Bold = CounterType.Bold;
    private static readonly TypeStyle Head = CounterType.Head;
    private static readonly TypeStyle Small = CounterType.Small;
    private static readonly TypeStyle Large = CounterType.Large;

    private string What => earlier switch
    {
        null => "claim of mechanics lien",
        Amendment => "amended claim of mechanics lien",
        _ => "converted claim of mechanics lien",
    };

    private readonly Finding? last = assessment.Find(earlier?.Deadline ?? ClaimPaper.Deadline);
    private readonly Finding? first = earlier is Conversion ? null : assessment.Find("claim-of-lien.first-day");

    /// <summary>The sheet's plan.</summary>
    public PaperPlan Plan(bool draft) => new()
    {
        Title = $"{Titled(draft)}: {What}",
        Foot = $"{Titled(draft)}, not to be recorded. {Shortened(job.Name, 50)}",
        FootStyle = new TypeStyle(Face.Sans, 8.5, 11),
        Made = assessment.AsOf,
        Draft = draft,
        Blocks = draft
            ? [.. Top(draft), .. FirstOfADraft(), .. Days(draft), .. Where(), .. Names(), .. Check()]
            : [.. Top(draft), .. First(), .. Days(draft), .. Where(), .. Ask(), .. HandOver(), .. Names(), .. Check(),
                .. BeforeYouHandItOver(), .. GetBack()],
    };

    private static string Titled(bool draft) => draft ? $"{Title} of a draft" : Title;

    private IEnumerable<Block> Top(bool draft) =>
    [
        new Heading($"{Titled(draft)}: {What}", new TypeStyle(Face.SansBold, 18, 23)) { Before = 0, Align = Align.Left },
        new Paragraph($"{OneLine(job.Name)}, as of {Day(assessment.AsOf)}\n{facts.Claimant ?? "Claimant not named"}: "
            + $"{Dollars(facts.Demand)}", Text) { Before = 3 },
        new Paragraph(Assessment.Caution, Bold.At(9)) { Before = 5 },
    ];

    /// <summary>What must be seen before anything else, the day in doubt before all.</summary>
    private IEnumerable<Block> First()
    {
        List<Block> warnings =
            [.. LastDayInDoubt(), .. TooEarly(), .. RecorderBlocks.CountyQuestion(assessment), .. Unserved(),
            .. OtherWarnings()];
        if (warnings.Count > 0)
            yield return new Framed([new Heading("First", Head) { Before = 0, Align = Align.Left }, .. warnings]) { Thickness = 2 };
    }

    /// <summary>A draft gives nobody leave: what stands against it, and no step to take with it.</summary>
    private IEnumerable<Block> FirstOfADraft()
    {
        yield return new Framed([new Heading("First", Head) { Before = 0, Align = Align.Left }, .. OnlyADraft(), .. LastDayInDoubt(),
            .. RecorderBlocks.CountyQuestion(assessment)]) { Thickness = 2 };
    }

    private IEnumerable<Block> OnlyADraft()
    {
        const int shown = 6;
        yield return new Paragraph("Only a draft. Not to be signed, served or recorded.", Large) { Before = 2 };
        yield return new Paragraph(inTheWay.Count == 0
            ? "Nothing stands against the claim. Make it again, not as a draft: its sheet says what to do."
            : "Put right what stands here, then make it again, not as a draft: its sheet says what to do.", Text) { Before = 2 };
        foreach (var refusal in inTheWay.Take(shown))
            yield return new Paragraph(RefusalInWords.There(job, assessment, refusal), Text) { Before = 2, Indent = 12, Mark = "•" };
        if (inTheWay.Count > shown)
            yield return new Paragraph($"and {inTheWay.Count - shown} more, which stand beside the draft.", Text) { Before = 2, Indent = 12 };
    }

    private IEnumerable<Block> LastDayInDoubt()
    {
        if (last is not { Standing: Standing.InDoubt })
            yield break;
        yield return last.Band is { } band
            ? new Paragraph($"The last day is in doubt. It may be {DayOfWeek(band.Earliest.Day)}, or "
                + $"{(band.Latest is { } latest ? DayOfWeek(latest.Day) : "a later day that is not known yet")}.", Large) { Before = 2 }
            : new Paragraph("The last day is in doubt, and no day can be given.", Large) { Before = 2 };
        yield return new Paragraph("Plan on the first, and waste no day where it is past: the later day is an argument, not a plan.",
            Text) { Before = 2 };
    }

    private IEnumerable<Block> TooEarly()
    {
        if (first is not { Standing: Standing.NotYet or Standing.InDoubt })
            yield break;
        var day = first.Band is { } band ? band.Latest?.Day ?? band.Earliest.Day : first.Readings.Select(r => (LocalDate?)r.Day).Max();
        yield return new Paragraph(day is not { } d ? "Do not record yet: the first day is not known."
            : d <= assessment.AsOf ? "The first day to record is in doubt: be sure that the work had ended."
            : $"Do not record before {DayOfWeek(d)}.", Large) { Before = 4 };
        yield return new Paragraph($"A claim recorded too early is no claim "
            + $"({string.Join("; ", first.Sections.DefaultIfEmpty("Civ. Code §§ 8412, 8414"))}).", Text) { Before = 2 };
    }

    private IEnumerable<Block> Unserved() => new StillToServe(facts, service).Blocks;

    private IEnumerable<Block> OtherWarnings()
    {
        IEnumerable<string> words =
        [
            .. service.Notes,
            .. facts.OnStructure is null ? Array.Empty<string>() :
                ["This claim is on one structure and for its share alone: make one for each of the others. Enter it with its structure, "
                    + "and release it by itself."],
            .. facts.Works.Count > 1 && !facts.IsDesignated
            ? [$"The work is on {facts.Works.Count} structures, each a work of its own: its time runs from its own completion (§ 8448). "
            + "This claim does not say what is due for each, so it ranks behind other liens (§ 8446(b)). Put down the amount "
            + "of each, an equitable split where the price is a lump sum, or make one claim for each structure."]
            : Array.Empty<string>(),
            .. earlier is not null ? [earlier.Warning] : new FactsAsOf(job, assessment.AsOf).All<ClaimRecorded>()
                .Select(c => $"The file shows a claim recorded{(c.On.Earliest is { } day ? " on " + Day(day) : "")}. Be sure that a second "
                    + "is meant."),
            .. RightInDoubt(),
            .. service.Done ? ["Before you go: the affidavit’s blanks (who mailed, where) are filled in and the person who mailed has "
                + "signed it, on both originals."] : Array.Empty<string>(),
        ];
        return words.Select(w => new Paragraph(RefusalInWords.Said(w), Text) { Before = 4, Indent = 12, Mark = "•" });
    }

    private IEnumerable<string> RightInDoubt()
    {
        if (earlier is Conversion)
            yield break;
        if (assessment.Find("lien-right") is { Standing: Standing.InDoubt or Standing.Narrowed } right)
        {
            yield return $"The right to a lien is {right.Standing.Word()}. "
                + $"{string.Join(" ", right.Why.Where(w => w.Applied).Select(w => w.Text))}";
        }
    }

    private IEnumerable<Block> Days(bool draft)
    {
        var actBy = last?.ActBy;
        List<Block> lines =
        [
            new Paragraph("ACT BY", Bold) { Before = 0, WithNext = true },
            new Paragraph(actBy is { } day ? DayOfWeek(day) : "no day can be given", new TypeStyle(Face.SansBold, 29, 36)) { Before = 0,
                WithNext = true },
        ];
        if (actBy is { } by && by < assessment.AsOf)
        {
            lines.Add(new Paragraph(last?.Standing == Standing.Lost
                ? "The time to record is over."
                : draft ? "That day is past. Ask a lawyer which reading carries a claim."
                : "That day is past. If a packet is made at all, record on the next day the office is open, and ask a lawyer which reading "
                + "carries it.", Bold) { Before = 2 });
        }

        if (last?.Band is { } band)
        {
            lines.Add(new Paragraph($"Last day: {DayOfWeek(band.Earliest.Day)}", Large) { Before = 3 });
            if (last.Readings.Count == 1)
                lines.Add(new Paragraph($"Reading: {last.Readings[0].Name}. {Roll(last.Readings[0])}".TrimEnd(), Text) { Before = 1 });
            if (!draft)
            {
                lines.Add(new Paragraph("The paper must be recorded, not only mailed or handed in, by then. Plan on the act-by day.",
                    Text) { Before = 2 });
            }
        }

        yield return new Framed(lines);
        if (last is { Readings.Count: > 1 })
        {
            yield return new Table(
                [new Column("Reading of the facts", 0.44), new Column("Last day", 0.34), new Column("Weekend or holiday", 0.22)],
                [.. last.Readings.Select(r =>
                    (IReadOnlyList<string>)[r.Name, DayOfWeek(r.Day), r.Rolled is { } rolled ? $"rolls to {Day(rolled)}: an argument only"
                    : ""])])
            { Style = Small, HeadStyle = Small with { Face = Face.SansBold } };
        }
    }

    private static string Roll(Reading reading) =>
        reading.Rolled is { } rolled ? $"It falls on a closed day; that it rolls to {Day(rolled)} is an argument only." : "";

    private IEnumerable<Block> Where() =>
    [
        Section("Where"),
        .. RecorderBlocks.Where(fee.Office),
    ];

    private IEnumerable<Block> HandOver() =>
    [
        Section("Hand over"),
        .. Ticks(
            $"Two originals of the claim, {claimPages} page{(claimPages == 1 ? "" : "s")} each, both signed in ink (Gov. Code § "
            + "27201(b)(1)): one to be recorded, one to be stamped and kept. White paper 8½ by 11 inches, one side only, black ink.",
            "No notary, no acknowledgment page: a verified claim of lien is recorded without one (Civ. Code § 8416(b); Gov. Code § 27287). "
                + "An added page only costs more.",
            $"A check for {Dollars(fee.Total)}, payable to the {fee.Office.Name}.",
            "A self-addressed stamped envelope for the stamped copy."),
    ];

    private IEnumerable<Block> Names() => [Section("Names the recorder will index"), .. RecorderBlocks.Names(facts.Names, facts.Owners)];

    private IEnumerable<Block> Check() => [Section($"The check: {Dollars(fee.Total)}, estimated"), .. RecorderBlocks.Check(fee)];

    private static IEnumerable<Block> GetBack() =>
    [
        Section("Bring back"),
        .. Ticks(
            "The conformed copy: the second original with the recorder’s stamp.",
            $"The instrument number and the recording date. {EntryName.Enter("claim-recorded")}both, and the amount. The time to sue runs from "
                + "that date.",
            "The receipt. If the paper is refused: the refusal in writing, with the reason, at once."),
    ];

    private static IEnumerable<Block> Ask() =>
    [
        Section("Ask before you go"),
        .. Ticks(
            "Until what hour is a paper taken and recorded the same day? Is the office open on the day you plan?",
            "How long between handing in and recording? If there is a backlog, how is same-day recording had? Never mail it if mail waits "
                + "weeks.",
            "What does a claim of mechanics lien of this many pages cost, with every fee, and is a check “not to exceed” an amount taken?"),
    ];

    private IEnumerable<Block> BeforeYouHandItOver() =>
    [
        Section("Before you hand it over"),
        .. Ticks(
            "Printed at actual size (100 percent), nothing cut off: your name and address in the upper left, the upper right 5 by 2½ "
            + "inches empty, the one title directly below, ½ inch white left and right on every page.",
            "The owner’s name is spelled as on the deed; so is yours. Look the deed up if you have not.",
            "Claim and verification signed in ink, dated, with place. Affidavit filled in and signed by the person who mailed.",
            $"The site lies in {facts.County ?? "the county of this recorder"}"
                + $"{(facts.County is null or "San Francisco" ? "" : " County")}: a map says so, a ZIP does not. Land in two counties: "
                + "record in each.",
            "The check is not short: that is the commonest reason for a rejection.",
            "No social security, account or tax number stands on any page."),
    ];

    private static Heading Section(string text) => new(text, Head) { Before = 9, Align = Align.Left };

    private static IEnumerable<Block> Ticks(params IReadOnlyList<string> lines) =>
        lines.Select(l => new TickBox(l, false) { Style = Text, Before = 2.5 });
}
