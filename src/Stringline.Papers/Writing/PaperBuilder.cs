using Stringline.Papers.Layout;
using Stringline.Papers.Preflight;
using static Stringline.Papers.PaperText;

namespace Stringline.Papers.Writing;

/// <summary>
/// One paper while it is written: its blocks in order, what must be read back from it, and which blanks are left to be filled in by hand.
/// Every label's value is looked for when the finished paper is read back.
/// </summary>
/// <param name="FileName">File name.</param>
/// <param name="Title">Title in the usual capitals; printed in capitals.</param>
internal sealed class PaperBuilder(string FileName, string Title)
{
    /// <summary>Letters of an addressee’s name that a foot holds.</summary>
    public const int FootName = 40;

    private readonly List<Block> blocks = [];
    private readonly List<string> held = [];
    private readonly List<string> blanks = [];
    private readonly List<string> signers = [];
    private readonly List<string> texts = [];
    private readonly List<string> underSignatures = [];
    private int number;

    /// <summary>File name.</summary>
    public string FileName { get; } = FileName;

    /// <summary>Title.</summary>
    public string Title { get; } = Title;

    /// <summary>The one to whom it goes, where each of several has a paper of its own; else null.</summary>
    public Law.Facts.Party? Addressee { get; init; }

    /// <summary>Name of the one who signs and gives it, where that is not the claimant of the job file; else null.</summary>
    public string? SpeaksFor { get; init; }

    /// <summary>What the foot says of the paper behind its title, on every page, with a space before it; null where nothing.</summary>
    public string? FootMore { get; init; }

    /// <summary>What the foot calls the one to whom it goes; null takes the name.</summary>
    public string? FootTo { get; init; }

    /// <summary>The return block, where the paper is recorded.</summary>
    public ReturnBlock? Return { get; set; }

    /// <summary>Wording that must stand on it letter for letter.</summary>
    public Prescribed.PrescribedText? Wording { get; set; }

    /// <summary>Least size in points of that wording, in boldface; null where the section says nothing of type.</summary>
    public double? WordingPoints { get; set; }

    /// <summary>
    /// Whether the last sentence of that wording must be in capitals, but for a web address in lower case (Civ. Code § 8416(a)(8)).
    /// </summary>
    public bool LastSentenceInCapitals { get; set; }

    /// <summary>Points before each numbered row.</summary>
    public double RowBefore { get; init; } = 5.5;

    /// <summary>Points before the words of an oath.</summary>
    public double OathBefore { get; init; } = 9;

    /// <summary>Text that must be in type at least as large as any other on the paper.</summary>
    public string? LargestText { get; set; }

    /// <summary>The blocks.</summary>
    public IReadOnlyList<Block> Blocks => blocks;

    /// <summary>What is left to be filled in by hand.</summary>
    public IReadOnlyList<string> Blanks => blanks;

    /// <summary>Everything written that came from facts, for the check of letters.</summary>
    public IReadOnlyList<string> Texts =>
        Return is { } block ? [.. texts, .. underSignatures, block.Name, block.Address] : [.. texts, .. underSignatures];

    /// <summary>Title of a paper in capitals.</summary>
    public string InCapitals => Title.ToUpperInvariant();

    /// <summary>Names and titles under its signatures.</summary>
    public IReadOnlyList<string> UnderSignatures => underSignatures;

    /// <summary>The title at its place, and the sections under it.</summary>
    public void Head(string sections)
    {
        blocks.Add(new Heading(InCapitals, TypeStyle.Title) { Before = 0 });
        blocks.Add(new Heading(sections, TypeStyle.Body) { Before = 0 });
    }

    /// <summary>A heading within the paper.</summary>
    public void Heading(string words) => blocks.Add(new Heading(words, TypeStyle.Heading) { Before = 18 });

    /// <summary>A paragraph.</summary>
    public void Say(string words, TypeStyle? style = null, double before = 9)
    {
        texts.Add(words);
        blocks.Add(new Paragraph(words, style ?? TypeStyle.Body) { Before = before });
    }

    /// <summary>A paragraph that clings to what follows.</summary>
    public void Lead(string words)
    {
        texts.Add(words);
        blocks.Add(new Paragraph(words, TypeStyle.Body) { Before = 9, WithNext = true });
    }

    /// <summary>A label and its value, numbered on; an absent value leaves a ruled blank that is named on the accompanying sheet.</summary>
    public void Field(string label, params IReadOnlyList<string?> values) => Field(label, null, values);

    /// <summary>The same with another type for the first line.</summary>
    public void Field(string label, TypeStyle? first, IReadOnlyList<string?> values)
    {
        number++;
        Row(new FieldRow(label, [.. values.Select(Clean)]) { Number = string.Create(CultureInfo.InvariantCulture, $"{number}."),
            FirstStyle = first, Before = RowBefore });
    }

    /// <summary>A label and its value without a number.</summary>
    public void Line(string label, params IReadOnlyList<string?> values) => Row(new FieldRow(label, [.. values.Select(Clean)]));

    private void Row(FieldRow row)
    {
        foreach (var value in row.Values)
        {
            if (value is null)
                Blank(row.Label);
            else
                Hold(value);
        }

        blocks.Add(row);
    }

    /// <summary>Any other block.</summary>
    public void Add(Block block) => blocks.Add(block);

    /// <summary>Any other block, with the texts in it that come from facts, for the check of letters.</summary>
    public void Add(Block block, IEnumerable<string> facts)
    {
        texts.AddRange(facts);
        blocks.Add(block);
    }

    /// <summary>Names a blank that a block leaves.</summary>
    public void Blank(string words)
    {
        if (!blanks.Contains(words))
            blanks.Add(words);
    }

    /// <summary>Names a text that must be read back whole.</summary>
    public void Hold(string text)
    {
        held.Add(text);
        texts.Add(text);
    }

    /// <summary>A table; its cells must be read back.</summary>
    public void Rows(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows, bool lastIsSum = false)
    {
        foreach (var cell in rows.SelectMany(r => r).Where(c => c.Length > 0))
            Hold(cell);
        blocks.Add(new Table(columns, rows) { LastIsSum = lastIsSum });
    }

    /// <summary>A table under a heading and a sentence, on one page while a page holds it.</summary>
    public void RowsUnder(string heading, string words, IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows,
        bool lastIsSum = false)
    {
        foreach (var cell in rows.SelectMany(r => r).Where(c => c.Length > 0))
            Hold(cell);
        texts.Add(words);
        blocks.Add(new Together(
            new Heading(heading, TypeStyle.Heading) { Before = 22 },
            new Paragraph(words, TypeStyle.Body) { Before = 9, WithNext = true },
            new Table(columns, rows) { LastIsSum = lastIsSum }));
    }

    /// <summary>Room to sign.</summary>
    public void Sign(string? name, params IReadOnlyList<string> under)
    {
        Signer(name, under);
        blocks.Add(new Signature(name, under) { Before = 10 });
    }

    /// <summary>An oath and the signature under it, never parted.</summary>
    public void Oath(string? heading, string words, string? name, params IReadOnlyList<string> under)
    {
        texts.Add(words);
        Signer(name, under);
        List<Block> together = heading is null ? [] : [new Heading(heading, TypeStyle.Heading) { Before = 20 }];
        together.Add(new Paragraph(words, TypeStyle.Body) { Before = OathBefore });
        together.Add(new Paragraph("I declare under penalty of perjury under the laws of the State of California that the foregoing is "
            + "true and correct.", TypeStyle.Body));
        together.Add(new Signature(name, under));
        blocks.Add(new Together(together) { WithPrevious = heading is null });
    }

    private void Signer(string? name, IReadOnlyList<string> under)
    {
        if (name is null)
        {
            foreach (var line in (string[])["Signature", "Name, printed", .. under, "Date of signing", "Signed at (city, state)"])
                Blank(line);
        }
        else
        {
            signers.Add(name);
            underSignatures.Add(name);
        }

        underSignatures.AddRange(under);
    }

    /// <summary>The plan of the paper.</summary>
    public PaperPlan Plan(string? claimant, LocalDate made, bool draft) => new()
    {
        Title = Title,
        Foot = Title + FootMore + (Addressee, SpeaksFor ?? claimant) switch
        {
            (null, null) => "",
            (null, { } giver) => $", {Shortened(giver, 60)}",
            ({ } to, null) => $" to {ToInFoot(to)}",
            ({ } to, { } giver) => $" to {ToInFoot(to)}, from {Shortened(giver, 40)}",
        },
        Made = made,
        Return = Return,
        Draft = draft,
        Blocks = blocks,
    };

    private string ToInFoot(Law.Facts.Party to) => FootTo ?? Shortened(OneLine(to.Name), FootName);

    /// <summary>What the finished paper must be.</summary>
    public PaperExpectations Expected(int pages, bool draft) => new()
    {
        Pages = pages,
        Draft = draft,
        InOrder = [.. blocks.SelectMany(b => b.Says)],
        Recorded = Return is null ? null : new RecordedPaper(InCapitals, Return.Name, Return.Address),
        Wording = Wording,
        WordingPoints = WordingPoints,
        LastSentenceInCapitals = LastSentenceInCapitals,
        LargestText = LargestText,
        Signers = signers,
        MustHold = held,
    };
}
