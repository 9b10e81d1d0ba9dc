namespace Stringline.Law.Recording;

/// <summary>
/// The highest price that any county was read to print, where the statute sets none or counties charge more than it says. None is a number
/// of the law: they stand in where an office's own price was not read, since a short check turns a paper back.
/// </summary>
public static class HighestPrinted
{
    /// <summary>
    /// The first page: that of the statute and six dollars of the county's own, though only five additions of $1 were read
    /// (Gov. Code §§ 27361(d), 27361.4(a)-(c), 27397(c)(1)).
    /// </summary>
    public const decimal Base = 16;

    /// <summary>Each further reference to a recorded paper.</summary>
    public const decimal Reference = 4;

    /// <summary>Each further ten names.</summary>
    public const decimal Names = 10;

    /// <summary>Each notice of involuntary lien.</summary>
    public const decimal Notice = 20;

    /// <summary>A conformed copy, for the whole or each page.</summary>
    public const decimal Copy = 6;
}
