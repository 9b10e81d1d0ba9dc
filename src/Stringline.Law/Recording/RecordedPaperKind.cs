namespace Stringline.Law.Recording;

/// <summary>
/// What is recorded, as far as it changes the price. An office's list for the fraud fee may name one and leave out another.
/// </summary>
public enum RecordedPaperKind
{
    /// <summary>A claim of mechanics lien.</summary>
    ClaimOfLien,

    /// <summary>A release of a mechanics lien.</summary>
    Release,

    /// <summary>A notice of completion.</summary>
    NoticeOfCompletion,

    /// <summary>Any other paper about real property.</summary>
    Other,
}
