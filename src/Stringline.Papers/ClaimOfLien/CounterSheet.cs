using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Reasoning;
using Stringline.Law.Recording;
using Stringline.Papers.Counter;
using Stringline.Papers.Layout;
using Stringline.Papers.Writing;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.ClaimOfLien;

/// <summary>
/// The page for whoever stands at the counter: what first, by when, where, with what, and what to bring back. Never recorded.
/// </summary>
internal sealed class CounterSheet(JobFile job, Assessment assessment, PrintedFacts facts, Service service, FeeEstimate fee, int claimPages,
    IReadOnlyList<Refusal> inTheWay, EarlierClaim? earlier = null) : ISheet
{
    /// <inheritdoc/>
    public string Title => "Counter sheet";

    /// <inheritdoc/>
    public string FileName => "counter-sheet.pdf";

    private readonly Finding? last = assessment.Find(earlier?.Deadline ?? ClaimPaper.Deadline);
    private readonly IReadOnlyList<string> warned = ClaimWarnings.Of(job, assessment, facts, service, earlier);
    private readonly StillToServe serve = new(facts, service);
    private readonly Finding? first = earlier is Conversion ? null : assessment.Find("claim-of-lien.first-day");

    /// <inheritdoc/>
    public PaperPlan Plan(bool draft, Measure measure)
    {
        var set = Closeness.Fitting(c => Window(draft, c), c => All(draft, c), measure);
        return new PaperPlan
        {
            Title = $"{Titled(draft)}: {ClaimPaper.TitleOf(earlier)}",
            Foot = $"{Titled(draft)}, not to be recorded. {Shortened(job.Name, 50)}",
            FootStyle = new TypeStyle(Face.Sans, 8.5, 11),
            Made = assessment.AsOf,
            Draft = draft,
            Blocks = [.. All(draft, set)],
        };
    }

    private IEnumerable<Block> All(bool draft, Closeness set) => draft
        ? [.. Window(draft, set), .. Readings(set), .. Names(set), .. Check(set)]
        : [.. Window(draft, set), .. AlsoRead(set), .. Readings(set), .. set.FirstThings ? [] : BeforeYouGo(set),
            .. set.Part(OtherWays(set)), .. Names(set), .. Check(set)];

    /// <summary>What the first page holds.</summary>
    private IEnumerable<Block> Window(bool draft, Closeness set) => draft
        ? [.. Top(draft, set), .. FirstOfADraft(set), .. Days(draft, set), .. Where(set)]
        : [.. Top(draft, set), .. First(set), .. Days(draft, set), .. Where(set), .. CheckToBring(set),
            .. set.FirstThings ? BeforeYouGo(set) : [], .. set.Part(InThisOrder(set)), .. Refused(set)];

    private string Titled(bool draft) => draft ? $"{Title} of a draft" : Title;

    private IEnumerable<Block> Top(bool draft, Closeness set) =>
    [
        new Heading($"{Titled(draft)}: {ClaimPaper.TitleOf(earlier)}", new TypeStyle(Face.SansBold, 15, 19)) { Before = 0,
            Align = Align.Left },
        new Paragraph($"{Shortened(job.Name, 90)}, as of {Day(assessment.AsOf)}\n"
            + $"{Shortened(facts.Claimant ?? "Claimant not named", 90)}: {Dollars(facts.Demand)}", set.Text) { Before = 2 },
        new Paragraph(Assessment.Caution, set.Bold.At(8.5)) { Before = 3 },
    ];

    /// <summary>What must be seen before anything else, the day in doubt before all.</summary>
    private IEnumerable<Block> First(Closeness set)
    {
        List<Block> warnings =
        [
            .. LastDayInDoubt(set), .. TooEarly(set), .. RecorderBlocks.CountyQuestion(assessment, set),
            .. Unserved(set),
        ];
        if (warned.Count > 0)
        {
            warnings.Add(new Paragraph($"Read “Also read this” {(set.IsFull ? "below" : "on page 2")} before you go: {warned.Count} "
                + $"{(warned.Count == 1 ? "point" : "points")} on this claim.", set.Bold) { Before = 3 });
        }

        if (!set.FirstThings)
            warnings.Add(new Paragraph("Go through “Before you go” on page 2 before you start.", set.Bold) { Before = 3 });
        if (warnings.Count > 0)
        {
            yield return new Framed([new Heading("First", set.Head) { Before = 0, Align = Align.Left }, .. warnings]) { Thickness = 2,
                Before = 6 };
        }
    }

    /// <summary>A draft gives nobody leave: what stands against it, and no step to take with it.</summary>
    private IEnumerable<Block> FirstOfADraft(Closeness set)
    {
        yield return new Framed([new Heading("First", set.Head) { Before = 0, Align = Align.Left }, .. OnlyADraft(set),
            .. LastDayInDoubt(set),
            .. RecorderBlocks.CountyQuestion(assessment, set)]) { Thickness = 2, Before = 6 };
    }

    private IEnumerable<Block> OnlyADraft(Closeness set)
    {
        const int shown = 6;
        yield return new Paragraph("Only a draft. Not to be signed, served or recorded.", set.Large) { Before = 2 };
        yield return new Paragraph(inTheWay.Count == 0
            ? "Nothing stands against the claim. Make it again, not as a draft: its sheet says what to do."
            : "Put right what is listed here, then make it again, not as a draft: its sheet says what to do.", set.Text) { Before = 2 };
        foreach (var refusal in inTheWay.Take(shown))
            yield return set.Point(Shortened(RefusalInWords.There(job, assessment, refusal), 300));
        if (inTheWay.Count > shown)
            yield return set.Point($"and {inTheWay.Count - shown} more, listed where the draft was made.", "");
    }

    private IEnumerable<Block> LastDayInDoubt(Closeness set)
    {
        if (last is not { Standing: Standing.InDoubt })
            yield break;
        yield return last.Band is { } band
            ? new Paragraph($"The last day is in doubt. It may be {DayOfWeek(band.Earliest.Day)}, or "
                + $"{(band.Latest is { } latest ? DayOfWeek(latest.Day) : "a later day that is not known yet")}.", set.Large) { Before = 2 }
            : new Paragraph("The last day is in doubt, and no day can be given.", set.Large) { Before = 2 };
        yield return new Paragraph("Plan on the first, and waste no day where it is past: the later day is an argument, not a plan.",
            set.Text) { Before = 2 };
    }

    private IEnumerable<Block> TooEarly(Closeness set)
    {
        if (first is not { Standing: Standing.NotYet or Standing.InDoubt })
            yield break;
        var day = first.Band is { } band ? band.Latest?.Day ?? band.Earliest.Day : first.Readings.Select(r => (LocalDate?)r.Day).Max();
        yield return new Paragraph(day is not { } d ? "Do not record yet: the first day is not known."
            : d <= assessment.AsOf ? "The first day to record is in doubt: be sure that the work had ended."
            : $"Do not record before {DayOfWeek(d)}.", set.Large) { Before = 4 };
        yield return new Paragraph($"A claim recorded too early is no claim "
            + $"({string.Join("; ", first.Sections.DefaultIfEmpty("Civ. Code §§ 8412, 8414"))}).", set.Text) { Before = 2 };
    }

    private IEnumerable<Block> Unserved(Closeness set)
    {
        if (serve.Head is not { } head)
            yield break;
        yield return new Paragraph(head, set.Large) { Before = 2 };
        foreach (var words in serve.Doubts)
            yield return new Paragraph(Sentences(words, set.IsCut ? 300 : 420), set.Bold) { Before = 2 };
    }

    private IEnumerable<Block> InThisOrder(Closeness set) =>
    [
        set.Section("In this order"),
        .. ClaimSteps.Of(serve, fee.Office, claimPages, earlier as Amendment).Select((step, i) => set.Point(step, $"{i + 1}.")),
    ];

    private static IEnumerable<Block> Refused(Closeness set) =>
        set.Part([set.Section("If it is refused at the window"), .. OfficeBlocks.Refused(set)]);

    // The first page says that it stands on the second.
    private IEnumerable<Block> AlsoRead(Closeness set)
    {
        if (warned.Count == 0)
            yield break;
        yield return set.IsFull ? set.Section("Also read this") : new OnNewPage(set.Section("Also read this"));
        foreach (var words in warned.Take(set.Warnings))
            yield return set.Point(Sentences(words, set.WarningLength));
        if (warned.Count > set.Warnings)
            yield return set.Point($"and {warned.Count - set.Warnings} more: see the job’s assessment.", "");
    }

    private IEnumerable<Block> Days(bool draft, Closeness set)
    {
        var actBy = last?.ActBy;
        List<Block> lines =
        [
            new Paragraph("ACT BY", set.Bold) { Before = 0, WithNext = true },
            new Paragraph(actBy is { } day ? DayOfWeek(day) : "no day can be given", set.Day) { Before = 0,
                WithNext = true },
        ];
        if (actBy is { } by && by < assessment.AsOf)
        {
            lines.Add(new Paragraph(last?.Standing == Standing.Lost
                ? "The time to record is over."
                : draft ? "That day is past. Ask a lawyer which reading carries a claim."
                : "That day is past. If a packet is made at all, record on the next day the office is open, and ask a lawyer which reading "
                + "carries it.", set.Bold) { Before = 2 });
        }

        if (!draft)
            lines.Add(OfficeBlocks.LastTime(fee.Office));
        lines.AddRange(LastDay(draft, set));
        yield return new Framed(lines) { Before = 6 };
    }

    // The day itself only where it is another than the one to act by.
    private IEnumerable<Block> LastDay(bool draft, Closeness set)
    {
        if (last?.Band is not { } band)
            yield break;
        var earliest = band.Earliest;
        var differs = last.ActBy != earliest.Day ? $"Last day: {DayOfWeek(earliest.Day)}. " : "";
        var reading = last.Readings.Count > 1
            ? set.IsCut ? "The readings are on page 2."
                : $"Reading: {Shortened(LawForReaders.Of(earliest), 110)}, the earliest of {last.Readings.Count}; "
                + $"{(last.Readings.Count > set.Readings ? "page 2 has the first of them" : "page 2 has them all")}."
            : $"Reading: {Shortened(LawForReaders.Of(earliest), set.IsCut ? 60 : 110)}. {Roll(earliest)}".TrimEnd();
        yield return new Paragraph($"{differs}{reading}"
            + (draft ? "" : " It must be recorded by then, not only mailed or handed in."), set.Text) { Before = 2 };
    }

    private IEnumerable<Block> Readings(Closeness set)
    {
        if (last is not { Readings.Count: > 1 })
            yield break;
        yield return set.Section("The last day, by how the facts are read");
        if (!set.IsCut)
            yield return new Paragraph("“Act by” on page 1 keeps the earliest of them.", set.Text) { Before = 1, WithNext = true };
        yield return new Table(
            [new Column("Reading of the facts", 0.5), new Column("Last day", 0.5)],
            [.. last.Readings.Take(set.Readings).Select(r => (IReadOnlyList<string>)[
                Shortened(LawForReaders.Of(r), set.Readings > 6 ? 160 : 54),
                DayOfWeek(r.Day) + (r.Rolled is { } rolled ? $"; rolls to {Day(rolled)}: an argument only" : "")])])
        { Style = set.Fine, HeadStyle = set.FineBold, Before = 4 };
        if (last.Readings.Count > set.Readings)
        {
            yield return new Paragraph($"and {last.Readings.Count - set.Readings} more: see the job’s assessment.", set.Fine) { Before =
                1 };
        }
    }

    private static string Roll(Reading reading) =>
        reading.Rolled is { } rolled ? $"It falls on a closed day; that it rolls to {Day(rolled)} is an argument only." : "";

    private IEnumerable<Block> Where(Closeness set) => [set.Section("Where"), .. OfficeBlocks.Where(fee.Office, set)];

    private IEnumerable<Block> CheckToBring(Closeness set) =>
        [set.Section($"The check: {Dollars(fee.Total)}, estimated"), .. OfficeBlocks.CheckToBring(fee, set)];

    private IEnumerable<Block> Names(Closeness set) =>
        [set.Section(RecorderBlocks.NamesHeading), .. RecorderBlocks.Names(facts.Names, facts.Owners, set)];

    private IEnumerable<Block> Check(Closeness set) =>
        [set.Section($"How {Dollars(fee.Total)} is figured"), .. RecorderBlocks.Check(fee, set)];

    private IEnumerable<Block> BeforeYouGo(Closeness set) => set.Part(
    [
        set.Section("Before you go"),
        .. Ticks(set,
            "Search the county index, or ask the recorder, for a notice of completion or cessation recorded lately: an unseen one shortens "
                + "the time (Civ. Code §§ 8412, 8414).",
            "Ask the office: the last time for recording that same day, how to get past a backlog, the price with every fee.",
            "Printed at actual size, nothing cut off: your address in the upper left, the upper right 5 by 2½ inches empty, the one title "
                + "directly below, ½ inch white left and right.",
            $"{(facts.SeveralOwners ? "The owners’ names are" : "The owner’s name is")} spelled as on the deed, and yours as well. No "
                + "social security, account or tax number is on any page.",
            $"The site lies in {facts.County ?? "the county of this recorder"}"
                + $"{(facts.County is null or "San Francisco" ? "" : " County")}: a map says so, a ZIP does not. Land in two counties: "
                + "record in each."),
    ]);

    private IEnumerable<Block> OtherWays(Closeness set) =>
        [set.Section(OfficeBlocks.OtherWaysHeading), .. OfficeBlocks.OtherWays(fee.Office, set)];

    private static IEnumerable<Block> Ticks(Closeness set, params IReadOnlyList<string> lines) =>
        lines.Select(l => new TickBox(l, false) { Style = set.Text, Before = 1.5 });
}
