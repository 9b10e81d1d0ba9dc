using Stringline.Papers.Layout;

namespace Stringline.Papers.Counter;

/// <summary>
/// How close a counter sheet is set. It has two pages at most, the first with all that the window asks for; what is long is set closer,
/// and then shortened where the paper itself or the program has the rest, until it fits.
/// </summary>
internal sealed record Closeness
{
    /// <summary>The pages that whoever stands at the counter is to carry, at most.</summary>
    public const int Pages = 2;

    private Closeness(double points, double pitch, double fine, double large, double day)
    {
        Large = new TypeStyle(Face.SansBold, large, large * 1.22);
        Day = new TypeStyle(Face.SansBold, day, day + 4);
        Text = new TypeStyle(Face.Sans, points, pitch);
        Bold = Text with { Face = Face.SansBold };
        Head = new TypeStyle(Face.SansBold, points + 2, pitch + 2);
        Fine = new TypeStyle(Face.Sans, fine, fine * 1.22);
        FineBold = Fine with { Face = Face.SansBold };
    }

    private const int Whole = int.MaxValue;

    /// <summary>
    /// From wide to close. A small letter is better than a warning that ends in the middle, and a step that goes on to page 2 too: nothing
    /// is cut while the whole has two pages in any setting. Then first goes what the paper or the program has as well.
    /// </summary>
    public static IReadOnlyList<Closeness> FromWide { get; } =
    [
        AllOf(9.5, 12, 8.5, 14, 28) with { FirstThings = true },
        AllOf(9, 11.2, 8.25, 14, 28) with { FirstThings = true },
        AllOf(8.5, 10, 8, 14, 28) with { FirstThings = true },
        AllOf(9.5, 12, 8.5, 14, 28),
        AllOf(9, 11.2, 8.25, 14, 28),
        AllOf(8.5, 10, 8, 14, 28),
        AllOf(8.5, 10, 8, 12, 22),
        Small,
        Smallest,
        .. Going(AllOf(9, 11.2, 8.25, 14, 28), AllOf(8.5, 10, 8, 12, 22), Small, Smallest),
        .. Cut(Smallest),
        .. Going([.. Cut(Smallest)]),
    ];

    private static Closeness Small => AllOf(8, 9.4, 7.5, 12, 22);

    private static Closeness Smallest => AllOf(7.75, 9.1, 7.5, 11, 18);

    // What is done before one goes stands before the steps wherever these begin.
    private static IEnumerable<Closeness> Going(params IEnumerable<Closeness> settings) =>
        settings.Select(s => s with { GoesOn = true, FirstThings = true });

    // Names, doubts of the fee and readings before warnings; the questions of the county, which stand on page 1, as far as it asks.
    private static IEnumerable<Closeness> Cut(Closeness set)
    {
        Closeness[] cuts =
        [
            set with { NamesLength = 170 },
            set with { NamesLength = 170, Doubts = 9, DoubtLength = 320 },
            set with { NamesLength = 80, Doubts = 3, DoubtLength = 200 },
            set with { NamesLength = 60, Doubts = 1, DoubtLength = 160, Readings = 4 },
            set with { NamesLength = 60, Doubts = 1, DoubtLength = 160, Readings = 1, Warnings = 7, WarningLength = 380 },
            set with { NamesLength = 60, Doubts = 1, DoubtLength = 160, Readings = 1, Warnings = 3, WarningLength = 180 },
            set with { NamesLength = 60, Doubts = 1, DoubtLength = 160, Readings = 1, Warnings = 2, WarningLength = 140 },
        ];
        return cuts.SelectMany(c => new[] { Whole, 3, 1 }.Select(lines => c with { CountyLines = lines, IsCut = true }));
    }

    private static Closeness AllOf(double points, double pitch, double fine, double large, double day) =>
        new(points, pitch, fine, large, day) { Warnings = Whole, WarningLength = Whole, Readings = Whole, CountyLines = Whole,
            Doubts = Whole,
            DoubtLength = Whole, NamesLength = Whole };

    /// <summary>Running text.</summary>
    public TypeStyle Text { get; }

    /// <summary>The same in boldface.</summary>
    public TypeStyle Bold { get; }

    /// <summary>Heading of a section.</summary>
    public TypeStyle Head { get; }

    /// <summary>What must be seen first.</summary>
    public TypeStyle Large { get; }

    /// <summary>The day to act by.</summary>
    public TypeStyle Day { get; }

    /// <summary>The sum and what could change it, for the desk and not for the window.</summary>
    public TypeStyle Fine { get; }

    /// <summary>The same in boldface.</summary>
    public TypeStyle FineBold { get; }

    /// <summary>How many warnings are told.</summary>
    public required int Warnings { get; init; }

    /// <summary>How many letters of each.</summary>
    public required int WarningLength { get; init; }

    /// <summary>How many readings of the facts are told.</summary>
    public required int Readings { get; init; }

    /// <summary>How many sentences on the county.</summary>
    public required int CountyLines { get; init; }

    /// <summary>How many doubts of the fee, those about this office first.</summary>
    public required int Doubts { get; init; }

    /// <summary>How many letters of each.</summary>
    public required int DoubtLength { get; init; }

    /// <summary>How many letters of the names to be indexed.</summary>
    public required int NamesLength { get; init; }

    /// <summary>Whether the steps and what the window asks for may go on to page 2, in their order.</summary>
    public bool GoesOn { get; init; }

    /// <summary>Whether what is done before one goes stands on the first page, before the steps.</summary>
    public bool FirstThings { get; init; }

    /// <summary>The widest setting in which the window’s blocks have one page, or go on, and all have two; else the closest.</summary>
    /// <param name="window">The blocks that the first page is to hold.</param>
    /// <param name="all">All blocks.</param>
    /// <param name="measure">The measure.</param>
    public static Closeness Fitting(
        Func<Closeness, IEnumerable<Block>> window, Func<Closeness, IEnumerable<Block>> all, Measure measure) =>
        FromWide.FirstOrDefault(c => (c.GoesOn || Count(window(c), measure) == 1) && Count(all(c), measure) <= Pages) ?? FromWide[^1];

    private static int Count(IEnumerable<Block> blocks, Measure measure) => Flow.OntoPages(
        [.. blocks.SelectMany(b => b.Cut(measure, Sheet.TextWidth))], Sheet.Top, Sheet.Top, Sheet.Bottom).Count;

    /// <summary>Whether something is shortened, since not all of it has room.</summary>
    public bool IsCut { get; init; }

    /// <summary>Whether there is too little room to begin a part on the next page for its sake.</summary>
    public bool IsFull => IsCut || GoesOn;

    /// <summary>
    /// A list under its heading, on one page while there is room: one that begins on the next has its heading there. Where there is little,
    /// no item stands alone with the heading, or on a page of its own.
    /// </summary>
    public IEnumerable<Block> Part(IEnumerable<Block> blocks)
    {
        const int ends = 2;
        List<Block> all = [.. blocks];
        return all.Count == 0 ? []
            : !IsFull || all.Count <= 1 + ends ? [new Together(all)]
            : [new Together([.. all.Take(ends)]), .. all.Skip(ends).SkipLast(ends), new Together([.. all.Skip(ends).TakeLast(ends)])];
    }

    /// <summary>A heading of a section.</summary>
    public Heading Section(string words) => new(words, Head) { Before = 5, Align = Align.Left };

    /// <summary>A point of a list.</summary>
    public Paragraph Point(string words, string mark = "•") => new(words, Text) { Before = 1.5, Indent = 14, Mark = mark };
}
