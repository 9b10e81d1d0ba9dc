using Stringline.Papers.Layout;

namespace Stringline.Papers.Writing;

/// <summary>The page that goes with a paper for whoever signs it, mails it or takes it to the counter. Never part of the paper.</summary>
internal interface ISheet
{
    /// <summary>Title.</summary>
    public string Title { get; }

    /// <summary>File name.</summary>
    public string FileName { get; }

    /// <summary>The sheet's plan.</summary>
    /// <param name="draft">Whether it goes with a draft.</param>
    /// <param name="measure">The widths of letters.</param>
    public PaperPlan Plan(bool draft, Measure measure);
}
