namespace Stringline.Law.Recording;

/// <summary>The numbers of recording: dollars, and how often each is charged.</summary>
public static class RecordingNumbers
{
    /// <summary>The first page alone, of any county: not more than $10 (Gov. Code § 27361(a)(1)).</summary>
    public const decimal RecordingAlone = 10;

    /// <summary>
    /// Highest base that any county was read to print: $10 (§ 27361(a)) and six dollars of the county's own, though only five additions of
    /// $1 were read (§§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    public const decimal HighestBase = 16;

    /// <summary>Each further page: not more than $3 (Gov. Code § 27361(a)(1)).</summary>
    public const decimal HighestExtraPage = 3;

    /// <summary>Each page of a document with a page of another size (Gov. Code § 27361(a)(2)).</summary>
    public const decimal Nonstandard = 3;

    /// <summary>Each page of penalty print (Gov. Code § 27361(a)(1)).</summary>
    public const decimal PenaltyPrint = 1;

    /// <summary>The reference that costs nothing (Gov. Code § 27361.2).</summary>
    public const int FreeReferences = 1;

    /// <summary>Each further reference to a recorded paper, where no price was read (Gov. Code § 27361.2).</summary>
    public const decimal Reference = 1;

    /// <summary>Each further reference: the highest that any county was read to print.</summary>
    public const decimal HighestReference = 4;

    /// <summary>Names in a group, of which the first costs nothing (Gov. Code § 27361.8).</summary>
    public const int NamesInAGroup = 10;

    /// <summary>Each further group of names, where no price was read (Gov. Code § 27361.8).</summary>
    public const decimal Names = 1;

    /// <summary>Each further ten names: the highest that any county was read to print.</summary>
    public const decimal HighestNames = 10;

    /// <summary>Fraud fee: not more than $10 (Gov. Code § 27388(a)(1)).</summary>
    public const decimal HighestFraud = 10;

    /// <summary>Homes fee (Gov. Code § 27388.1(a)(1)).</summary>
    public const decimal Homes = 75;

    /// <summary>The homes fee is charged three times at most: $225 (Gov. Code § 27388.1(a)(1)).</summary>
    public const int MostHomes = 3;

    /// <summary>Restrictive covenant fee, where the county took it up (Gov. Code § 27388.2).</summary>
    public const decimal HighestCovenant = 2;

    /// <summary>Each notice of involuntary lien: the highest that any county was read to print.</summary>
    public const decimal HighestNotice = 20;

    /// <summary>A conformed copy, for the whole or each page: the same.</summary>
    public const decimal HighestCopy = 6;

    /// <summary>Width of a standard page, inches (Gov. Code § 27361.5(a)).</summary>
    public const decimal PageWidth = 8.5m;

    /// <summary>Height of a standard page, inches (Gov. Code § 27361.5(a)).</summary>
    public const decimal PageHeight = 11;

    /// <summary>The least white left and right on every page, inches (Gov. Code § 27361.6).</summary>
    public const decimal SideMargin = 0.5m;

    /// <summary>Height of the band at the top of the first page, inches (Gov. Code § 27361.6).</summary>
    public const decimal TopBand = 2.5m;

    /// <summary>
    /// Width of the left part of that band, which says who asks for recording and where to return the paper; the rest is the recorder's,
    /// inches (Gov. Code § 27361.6).
    /// </summary>
    public const decimal ReturnPart = 3.5m;

    /// <summary>
    /// How far below that band the title may stand and still be directly below it, inches: our own measure of Gov. Code § 27324.
    /// </summary>
    public const decimal TitleWithin = 0.5m;

    /// <summary>Most lines in an inch that are no penalty print (Gov. Code § 27361(a)(1)).</summary>
    public const int LinesInAnInch = 9;

    /// <summary>Most characters and spaces in an inch, over at least three inches, that are no penalty print (the same).</summary>
    public const int CharactersInAnInch = 22;
}
