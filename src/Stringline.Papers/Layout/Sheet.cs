using Stringline.Law.Recording;

namespace Stringline.Papers.Layout;

/// <summary>
/// The geometry of a page. All figures are points (1/72 inch); the origin is the top left corner,
/// x runs to the right and y runs down.
/// </summary>
internal static class Sheet
{
    /// <summary>Points in an inch.</summary>
    public const double Inch = 72;

    /// <summary>8½ inches (Gov. Code § 27361.5(a), from memory).</summary>
    public static readonly double Width = (double)RecordedForm.PageWidth * Inch;

    /// <summary>11 inches.</summary>
    public static readonly double Height = (double)RecordedForm.PageHeight * Inch;

    /// <summary>The least white left and right: ½ inch on every page (Gov. Code § 27361.6).</summary>
    public static readonly double LeastSideMargin = (double)RecordedForm.SideMargin * Inch;

    /// <summary>Our own side margin: 7/8 inch.</summary>
    public const double Left = 63;

    /// <summary>Right edge of the text.</summary>
    public static readonly double Right = Width - Left;

    /// <summary>Width of the text.</summary>
    public static readonly double TextWidth = Right - Left;

    /// <summary>Top of the text on a page that has no recorder's space.</summary>
    public const double Top = 58;

    /// <summary>Bottom of the text. Below it stands only the running foot.</summary>
    public const double Bottom = 730;

    /// <summary>Baseline of the running foot.</summary>
    public const double FootBaseline = 756;

    /// <summary>The band kept for recording information on the first page: 2½ inches (Gov. Code § 27361.6).</summary>
    public static readonly double RecorderBand = (double)RecordedForm.TopBand * Inch;

    /// <summary>
    /// The left part of that band, 3½ inches, says who asks for recording and where to return the paper. The rest is the recorder's.
    /// </summary>
    public static readonly double ReturnBlockRight = (double)RecordedForm.ReturnPart * Inch;

    /// <summary>Top of the return block.</summary>
    public const double ReturnBlockTop = 40;

    /// <summary>Top of the title: directly below the recorder's space (Gov. Code § 27324).</summary>
    public const double TitleTop = 192;
}
