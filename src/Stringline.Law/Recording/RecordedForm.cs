using Stringline.Law.Numbers;

namespace Stringline.Law.Recording;

/// <summary>
/// The form that a paper must have to be recorded, so that the recorder takes it and asks no penalty. All lengths are inches. Who lays a
/// page out and who checks it ask here; neither has a measure of its own.
/// </summary>
/// <remarks>The measures are the newest that the table has: a page is laid out in one way, whatever its day.</remarks>
public static class RecordedForm
{
    // Our own measure of "directly below" (Gov. Code § 27324).
    private const decimal TitleWithin = 0.5m;

    /// <summary>Width of a standard page.</summary>
    public static decimal PageWidth { get; } = Newest(Number.PageWidth);

    /// <summary>Height of a standard page.</summary>
    public static decimal PageHeight { get; } = Newest(Number.PageHeight);

    /// <summary>The least white left and right.</summary>
    public static decimal SideMargin { get; } = Newest(Number.SideMargin);

    /// <summary>Height of the band at the top of the first page.</summary>
    public static decimal TopBand { get; } = Newest(Number.TopBand);

    /// <summary>Width of the part of that band that is not the recorder's.</summary>
    public static decimal ReturnPart { get; } = Newest(Number.ReturnPart);

    /// <summary>Most lines in an inch that are no penalty print.</summary>
    public static int LinesInAnInch { get; } = (int)Newest(Number.LinesInAnInch);

    /// <summary>Most characters and spaces in an inch, over at least three inches, that are no penalty print.</summary>
    public static int CharactersInAnInch { get; } = (int)Newest(Number.CharactersInAnInch);

    /// <summary>Whether a page is of the standard size; a paper with another page costs more for every page.</summary>
    [Rule("Gov. Code § 27361.5(a)", Sure = Sure.FromMemory)]
    public static bool IsStandardSize(decimal width, decimal height) =>
        (width, height) == (PageWidth, PageHeight);

    /// <summary>Whether enough of a page is white left and right.</summary>
    /// <param name="narrowest">The narrower of its two side margins.</param>
    [Rule("Gov. Code § 27361.6")]
    public static bool HasSideMargins(decimal narrowest) => narrowest >= SideMargin;

    /// <summary>
    /// Whether a place of the first page is in the space that is the recorder's alone: the right part of the band at its top.
    /// </summary>
    /// <param name="left">How far from the left edge.</param>
    /// <param name="top">How far from the upper edge.</param>
    [Rule("Gov. Code § 27361.6")]
    public static bool IsRecordersSpace(decimal left, decimal top) => IsTopBand(top) && left > ReturnPart;

    /// <summary>
    /// Whether a place of the first page is where it says who asks for recording and where the paper goes back: the left part of that band.
    /// </summary>
    /// <inheritdoc cref="IsRecordersSpace"/>
    [Rule("Gov. Code § 27361.6")]
    public static bool IsReturnSpace(decimal left, decimal top) => IsTopBand(top) && left <= ReturnPart;

    /// <summary>Whether a place of the first page is where the title must stand: directly below that band.</summary>
    /// <param name="top">How far from the upper edge.</param>
    [Rule("Gov. Code § 27324")]
    public static bool IsTitlesPlace(decimal top) => !IsTopBand(top) && top <= TopBand + TitleWithin;

    /// <summary>Whether the print of a page is so close that each such page costs more.</summary>
    /// <param name="linesInAnInch">Lines in an inch, at the closest.</param>
    /// <param name="charactersInAnInch">Characters and spaces in an inch, over at least three inches, at the closest.</param>
    [Rule("Gov. Code § 27361(a)(1)")]
    public static bool IsPenaltyPrint(decimal linesInAnInch, decimal charactersInAnInch) =>
        linesInAnInch > LinesInAnInch || charactersInAnInch > CharactersInAnInch;

    private static bool IsTopBand(decimal top) => top < TopBand;

    private static decimal Newest(Number measure) => NumberTable.Shipped.Of(measure)[^1].Value;
}
