namespace Stringline.Law.Recording;

/// <summary>
/// The form that a paper must have to be recorded, so that the recorder takes it and asks no penalty. All lengths are inches. Who lays a
/// page out and who checks it ask here; neither has a measure of its own.
/// </summary>
public static class RecordedForm
{
    /// <summary>Whether a page is of the standard size; a paper with another page costs more for every page.</summary>
    [Rule("Gov. Code § 27361.5(a)", Sure = Sure.FromMemory)]
    public static bool IsStandardSize(decimal width, decimal height) =>
        (width, height) == (RecordingNumbers.PageWidth, RecordingNumbers.PageHeight);

    /// <summary>Whether enough of a page is white left and right.</summary>
    /// <param name="narrowest">The narrower of its two side margins.</param>
    [Rule("Gov. Code § 27361.6")]
    public static bool HasSideMargins(decimal narrowest) => narrowest >= RecordingNumbers.SideMargin;

    /// <summary>
    /// Whether a place of the first page is in the space that is the recorder's alone: the right part of the band at its top.
    /// </summary>
    /// <param name="left">How far from the left edge.</param>
    /// <param name="top">How far from the upper edge.</param>
    [Rule("Gov. Code § 27361.6")]
    public static bool IsRecordersSpace(decimal left, decimal top) => IsTopBand(top) && left > RecordingNumbers.ReturnPart;

    /// <summary>
    /// Whether a place of the first page is where it says who asks for recording and where the paper goes back: the left part of that band.
    /// </summary>
    /// <inheritdoc cref="IsRecordersSpace"/>
    [Rule("Gov. Code § 27361.6")]
    public static bool IsReturnSpace(decimal left, decimal top) => IsTopBand(top) && left <= RecordingNumbers.ReturnPart;

    /// <summary>Whether a place of the first page is where the title must stand: directly below that band.</summary>
    /// <param name="top">How far from the upper edge.</param>
    [Rule("Gov. Code § 27324")]
    public static bool IsTitlesPlace(decimal top) => !IsTopBand(top) && top <= RecordingNumbers.TopBand + RecordingNumbers.TitleWithin;

    /// <summary>Whether the print of a page is so close that each such page costs more.</summary>
    /// <param name="linesInAnInch">Lines in an inch, at the closest.</param>
    /// <param name="charactersInAnInch">Characters and spaces in an inch, over at least three inches, at the closest.</param>
    [Rule("Gov. Code § 27361(a)(1)")]
    public static bool IsPenaltyPrint(decimal linesInAnInch, decimal charactersInAnInch) =>
        linesInAnInch > RecordingNumbers.LinesInAnInch || charactersInAnInch > RecordingNumbers.CharactersInAnInch;

    private static bool IsTopBand(decimal top) => top < RecordingNumbers.TopBand;
}
