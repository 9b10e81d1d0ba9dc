namespace Stringline.Papers.Preflight;

/// <summary>A letter as read back. Points; origin top left, y down.</summary>
/// <param name="Text">The character.</param>
/// <param name="Left">Where it begins.</param>
/// <param name="Right">Where the next begins.</param>
/// <param name="Baseline">Its baseline.</param>
/// <param name="Points">Type size.</param>
/// <param name="Font">Name of the face.</param>
/// <param name="Upright">Whether it stands upright; DRAFT does not.</param>
/// <param name="Black">Whether it is black, or near it.</param>
/// <param name="Seen">Whether it is painted at all.</param>
internal sealed record ReadLetter(string Text, double Left, double Right, double Baseline, double Points, string Font, bool Upright,
    bool Black, bool Seen)
{
    /// <summary>Whether the face is bold. PdfPig's own flag is false for every face our writer embeds, so its name decides.</summary>
    public bool Bold => Font.Contains("Bold", StringComparison.Ordinal);

    /// <summary>Whether it is a space.</summary>
    public bool Blank => string.IsNullOrWhiteSpace(Text);
}

/// <summary>A word: letters with no space between them.</summary>
internal sealed class ReadWord
{
    /// <summary>Makes a word of letters, at least one.</summary>
    public ReadWord(ReadLetter[] letters, int page)
    {
        (Letters, Page) = (letters, page);
        var text = new System.Text.StringBuilder(letters.Length);
        foreach (var letter in letters)
        {
            text.Append(letter.Text);
            Points = Math.Max(Points, letter.Points);
        }

        Text = text.ToString();
    }

    /// <summary>Its letters.</summary>
    public IReadOnlyList<ReadLetter> Letters { get; }

    /// <summary>The page on which it stands.</summary>
    public int Page { get; }

    /// <summary>The word.</summary>
    public string Text { get; }

    /// <summary>Where it begins.</summary>
    public double Left => Letters[0].Left;

    /// <summary>Where it ends.</summary>
    public double Right => Letters[^1].Right;

    /// <summary>Its baseline.</summary>
    public double Baseline => Letters[0].Baseline;

    /// <summary>Its largest type.</summary>
    public double Points { get; }
}

/// <summary>A drawn line or shape: its outermost edges.</summary>
internal sealed record ReadShape(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Whether it is a horizontal rule.</summary>
    public bool IsRule => Bottom - Top < 1.5 && Right - Left > 40;
}

/// <summary>A page as read back.</summary>
internal sealed record ReadPage(int Number, double Width, double Height, IReadOnlyList<ReadLetter> Letters,
    IReadOnlyList<IReadOnlyList<ReadWord>> Lines, IReadOnlyList<ReadShape> Shapes)
{
    /// <summary>What covers what lies under it: filled shapes and pictures.</summary>
    public required IReadOnlyList<ReadShape> Covers { get; init; }

    /// <summary>The single lines that are drawn; of a frame its four.</summary>
    public required IReadOnlyList<ReadShape> Strokes { get; init; }

    /// <summary>What makes the page other than it looks here: an annotation, a unit of its own. Null where nothing does.</summary>
    public string? Oddity { get; init; }

    /// <summary>The words in reading order.</summary>
    public IReadOnlyList<ReadWord> Words { get; } = [.. Lines.SelectMany(l => l)];
}
