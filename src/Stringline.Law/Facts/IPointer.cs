namespace Stringline.Law.Facts;

/// <summary>
/// What a sentence points to: a field of a job file's head, a kind of entry, a field of one, another finding. It stands in the sentence as
/// itself and not as text, so that each door names it in its own words or links to it.
/// </summary>
public interface IPointer
{
    /// <summary>Its name in the job file, or among the findings.</summary>
    public string Name { get; }
}
