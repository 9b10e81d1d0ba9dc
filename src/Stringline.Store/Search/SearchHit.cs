namespace Stringline.Store;

/// <summary>A job that was found.</summary>
/// <param name="Job">The job.</param>
/// <param name="Where">The texts in which a word that was sought begins.</param>
public sealed record SearchHit(JobTip Job, IReadOnlyList<SearchText> Where);

/// <summary>A text by which a job can be found.</summary>
/// <param name="Field">What it is: job, claimant, party, site, parcel, permit, instrument, article, case, ref.</param>
/// <param name="Text">The text, on one line.</param>
public sealed record SearchText(string Field, string Text);
