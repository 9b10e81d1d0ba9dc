using Stringline.Law;
using Stringline.Law.Facts;
using Stringline.Law.Recording;
using Stringline.Papers.Catalogue;
using Stringline.Papers.Counter;
using Stringline.Papers.Layout;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// The page for whoever signs, mails or hands over the paper: what first, by when, to whom, how, and what to keep. Never part of the paper.
/// </summary>
internal sealed class GuideSheet(Paper paper, Matter matter, Bundle bundle, IReadOnlyList<PaperFile> files, FeeEstimate? fee,
    IReadOnlyList<Refusal> inTheWay, Closeness? set = null, int closer = 0) : ISheet
{
    private readonly Guide guide = bundle.Guide;

    private TypeStyle TextType => set?.Text ?? CounterType.Text.At(Points);

    private TypeStyle BoldType => set?.Bold ?? CounterType.Bold.At(Points);

    private TypeStyle HeadType => set?.Head ?? CounterType.Head;

    private TypeStyle LargeType => set?.Large ?? CounterType.Large;

    private double HeadRoom => set is null ? 11 - (2 * closer) : 5;

    private double Points => CounterType.Text.Points - (0.5 * closer);

    /// <summary>Title: a counter sheet where there is a counter, else a sheet to go by.</summary>
    public string Title => guide.Recording is null ? "Instruction sheet" : "Counter sheet";

    /// <summary>File name.</summary>
    public string FileName => guide.Recording is null ? "instruction-sheet.pdf" : "counter-sheet.pdf";

    /// <summary>The sheet's plan; that of a counter sheet has two pages at most, the first with all that the window asks for.</summary>
    public PaperPlan Plan(bool draft, Measure measure)
    {
        if (guide.Recording is not null && set is null)
        {
            // Nobody goes to the window with a draft: what its signer does comes first, and the sheet's first page holds that.
            var fitting = Closeness.Fitting(c => ForItsSigner ? [] : Set(c).Window(draft), c => Set(c).All(draft), measure);
            return Set(fitting).Plan(draft, measure);
        }

        return guide.Recording is not null ? Written(draft)
            : FewerPages.Of(Enumerable.Range(0, 3)
                .Select(c => new GuideSheet(paper, matter, bundle, files, fee, inTheWay, null, c).Written(draft)),
                measure);
    }

    private PaperPlan Written(bool draft) => new()
    {
        Title = $"{Titled(draft)}: {paper.Title}",
        Foot = $"{Titled(draft)}, {(guide.Recording is null ? "not part of the paper" : "not to be recorded")}. "
            + Shortened(matter.Job.Name, 50),
        FootStyle = new TypeStyle(Face.Sans, 8.5, 11),
        Made = matter.AsOf,
        Draft = draft,
        Blocks = [.. All(draft)],
    };

    private GuideSheet Set(Closeness closeness) => new(paper, matter, bundle, files, fee, inTheWay, closeness);

    private IEnumerable<Block> All(bool draft) => guide.Recording is not { } recording || fee is null || set is null
        ? draft && !ForItsSigner
            ? [.. Top(draft), .. FirstOfADraft(), .. Days(draft), .. Named()]
            : [.. Top(draft), .. First(), .. Days(false), .. ByHand(), .. To(), .. Steps(), .. After()]
        : draft && !ForItsSigner
        ? [.. Window(draft), .. Named(), .. CheckAndNames(recording, fee, set)]
        : [.. Window(draft), .. After(), .. To(),
            .. set.Part([set.Section(OfficeBlocks.OtherWaysHeading), .. OfficeBlocks.OtherWays(fee.Office, set)]),
                .. CheckAndNames(recording, fee, set)];

    /// <summary>
    /// Whether nothing stands against the paper but that somebody else completes and signs it: the steps are for that one.
    /// </summary>
    private bool ForItsSigner => bundle.AlwaysDraft is not null && inTheWay.Count == 1;

    private string Titled(bool draft) => draft ? $"{Title} of a draft" : Title;

    private IEnumerable<Block> Top(bool draft) =>
    [
        new Heading($"{Titled(draft)}: {paper.Title}", new TypeStyle(Face.SansBold, 16, 21)) { Before = 0, Align = Align.Left },
        new Paragraph($"{(set is null ? OneLine(matter.Job.Name) : Shortened(matter.Job.Name, 110))}, as of {Day(matter.AsOf)}."
            + (guide.Sections ?? paper.Sections) switch { "" => "", var sections => $" {sections}." }, TextType) { Before = 3 },
        .. guide.ForWhat is { } what ? (Block[])[new Paragraph(what, TextType) { Before = 2 }] : [],
        new Paragraph(Assessment.Caution, BoldType.At(9)) { Before = 5 },
    ];

    private IEnumerable<Block> First()
    {
        List<Block> lines = [.. ForItsSigner ? OnlyADraft() : [],
            .. set is null ? [] : RecorderBlocks.CountyQuestion(matter.Assessment, set),
            .. Said(guide.Effect), .. Said(guide.First)];
        if (lines.Count > 0)
        {
            yield return new Framed([new Heading("First", HeadType) { Before = 0, Align = Align.Left }, .. lines]) { Thickness =
                2 };
        }
    }

    /// <summary>A draft gives nobody leave: what stands against it, and no step to take with it.</summary>
    private IEnumerable<Block> FirstOfADraft()
    {
        yield return new Framed([new Heading("First", HeadType) { Before = 0, Align = Align.Left }, .. OnlyADraft(),
            .. set is null ? [] : RecorderBlocks.CountyQuestion(matter.Assessment, set), .. Said(guide.Effect)]) { Thickness = 2 };
    }

    private IEnumerable<Block> Said(IReadOnlyList<string> words) =>
        words.Select(w => new Paragraph(w, TextType) { Before = 4, Indent = 12, Mark = "•" });

    private const string CleanPaper = "The attorney makes a clean paper without the word DRAFT; this one cannot be recorded.";

    private IEnumerable<Block> OnlyADraft()
    {
        const int shown = 8;
        yield return new Paragraph(ForItsSigner
            ? "A draft for the attorney. Until the attorney has completed and signed it, it is not to be "
            + "given or recorded." : "Only a draft. Not to be signed, given or recorded.", LargeType) { Before = 2 };
        if (ForItsSigner)
        {
            yield return new Paragraph(CleanPaper, BoldType) { Before = 2 };
            yield break;
        }

        if (bundle.AlwaysDraft is null)
        {
            yield return new Paragraph(inTheWay.Count == 0
                ? "Nothing stands against the paper. Make it again, not as a draft: its sheet says what to do."
                : "Put right what is listed here, then make it again, not as a draft: its sheet says what to do.",
                TextType) { Before = 2 };
        }

        foreach (var refusal in inTheWay.Take(shown))
        {
            var said = RefusalInWords.Whole(matter.Job, matter.Assessment, refusal);
            yield return new Paragraph(set is null ? said : Sentences(said, 300), TextType) { Before = 2, Indent = 12,
                Mark = "•" };
        }

        if (inTheWay.Count > shown)
        {
            yield return new Paragraph($"and {inTheWay.Count - shown} more, listed where the draft was made.", TextType) { Before = 2,
                Indent = 12 };
        }
    }

    private IReadOnlyList<Block> Days(bool draft) =>
        [.. new DayToKeep(paper, matter, guide, draft ? null : fee?.Office, draft, set).Blocks];

    private IEnumerable<Block> ByHand()
    {
        var blanks = bundle.Papers.Count == 1 ? bundle.Papers[0].Blanks
            : [.. bundle.Papers.Where(l => l.Blanks.Count > 0).Select(l => $"{l.Title}: {string.Join("; ", l.Blanks)}").Distinct()];
        if (blanks.Count == 0)
            yield break;
        List<Block> list = [new Heading(ForItsSigner ? "For the attorney to fill in" : "Fill in by hand, in ink", HeadType)
            { Before = HeadRoom, Align = Align.Left }];
        list.AddRange(blanks.Select(Tick));
        foreach (var block in Kept(list))
            yield return block;
    }

    /// <summary>To whom the paper goes.</summary>
    private IEnumerable<Block> Named()
    {
        if (guide.To.Count > 0)
        {
            yield return new Heading(guide.To.Count == 1 ? "To whom"
                : bundle.Papers.Any(l => l.Addressee is not null) ? $"To whom: {guide.To.Count} notices, one addressed to each"
                : $"To whom: {guide.To.Count} copies", HeadType) { Before = HeadRoom,
                Align = Align.Left };
            yield return new Table(
                [new Column("Name", 0.4), new Column("Capacity", 0.2), new Column("Address", 0.4)],
                [.. guide.To.Select(Addressed)])
            { Style = CounterType.Small, HeadStyle = CounterType.Small with { Face = Face.SansBold }, Before = 3 };
        }
    }

    private IReadOnlyList<string> Addressed(Party party) =>
    [
        Addressees.NameLines(party),
        (guide.Capacity ?? CapacityWords.Of)(party),
        (guide.Attention?.Invoke(party) is { } officer ? $"{officer}\n" : "")
            + (matter.AddressOf(party) ?? "find it: see Civ. Code § 8108"),
    ];

    private IEnumerable<Block> To()
    {
        foreach (var block in Named())
            yield return block;
        if (guide.Manner is { } manner)
            yield return new Paragraph(manner, TextType) { Before = 5 };
    }

    private IEnumerable<Block> Steps() =>
        List(ForItsSigner ? "What the attorney’s office does, in this order" : "What to do", guide.Steps);

    private IEnumerable<Block> After() => List("Afterwards", guide.After);

    private IEnumerable<Block> List(string heading, IReadOnlyList<string> words)
    {
        if (words.Count == 0)
            yield break;
        List<Block> list = [new Heading(heading, HeadType) { Before = HeadRoom, Align = Align.Left }, .. words.Select(Tick)];
        foreach (var block in Kept(list))
            yield return block;
    }

    // A short list stays whole under its heading; of a long one no item stands alone with the heading, or on a page of its own.
    private IEnumerable<Block> Kept(List<Block> list)
    {
        const int whole = 4, ends = 2;
        return set is not null ? set.Part(list) : list.Count <= whole + 1 ? [new Together(list)]
            : [new Together([.. list.Take(1 + ends)]), .. list.Skip(1 + ends).SkipLast(ends), new Together([.. list.TakeLast(ends)])];
    }

    /// <summary>What the first page of a counter sheet holds.</summary>
    private IEnumerable<Block> Window(bool draft) => guide.Recording is not { } recording || fee is null || set is null ? []
        : draft && !ForItsSigner
        ? [.. Top(draft), .. FirstOfADraft(), .. Days(draft), set.Section("Where"), .. OfficeBlocks.Where(fee.Office, set)]
        :
        [
            .. Top(draft), .. First(), .. Days(false),
            .. ForItsSigner ? (Block[])[.. ByHand(), .. Steps()] : [],
            set.Section("Where"), .. OfficeBlocks.Where(fee.Office, set),
            .. Days(false).Any() ? [] : (Block[])[OfficeBlocks.LastTime(fee.Office, set.Bold)],
            set.Section($"The check: {Dollars(fee.Total)}, estimated"), .. OfficeBlocks.CheckToBring(fee, set),
            .. ForItsSigner ? [] : (Block[])[.. ByHand(), .. Steps()],
            .. set.Part(HandIn(recording, fee, set)),
            .. set.Part([set.Section("If it is refused at the window"), .. OfficeBlocks.Refused(set)]),
        ];

    private IEnumerable<Block> HandIn(Recording recording, FeeEstimate fee, Closeness set) =>
    [
        set.Section(ForItsSigner ? "Hand in, once the attorney has signed and the copies are mailed" : "Hand in"),
        Tick($"{(ForItsSigner ? CleanPaper + " Of it: two" : "Two")} originals, {Pages(files[0].Pages)} each, signed in ink "
            + "(Gov. Code § 27201(b)(1)): one to be recorded, one to be stamped and kept. White paper 8½ by 11 inches, one side, printed "
            + "at "
            + "actual size. Anyone may carry them."),
        Tick(recording.Why),
        Tick($"Bring back the stamped copy, the instrument number with the date, and the receipt. "
            + OfficeBlocks.CopyToBringBack(fee.Office)),
    ];

    private IEnumerable<Block> CheckAndNames(Recording recording, FeeEstimate fee, Closeness set)
    {
        yield return set.Section(RecorderBlocks.NamesHeading);
        foreach (var block in RecorderBlocks.Names(matter.Facts.Names, matter.Facts.Owners, set, recording.IsOwners))
            yield return block;
        yield return set.Section($"How {Dollars(fee.Total)} is figured");
        if (recording.Certificates > 0)
        {
            yield return new Paragraph(recording.Certificates == 1 ? "The notary’s certificate is counted as one page."
                : $"{recording.Certificates} certificate pages are counted, as the signers may sign apart; together before one notary they "
                + "may need one.", set.Text) { Before = 2 };
        }

        if (recording.ProofPages > 0)
        {
            yield return new Paragraph("The proof of service is counted as one page; each additional page of it, and each exhibit, costs "
                + "more.",
                set.Text) { Before = 2 };
        }

        foreach (var block in RecorderBlocks.Check(fee, set))
            yield return block;
    }

    private static string Pages(int pages) => pages == 1 ? "1 page" : $"{pages} pages";

    private TickBox Tick(string words) => new(words, false) { Style = TextType, Before = set is null ? 2.5 : 1.5 };
}
