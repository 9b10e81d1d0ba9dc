namespace Stringline.Law.Facts;

/// <summary>An entry of a kind that says a certain thing, as a sentence points to it.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Says">What it is to say, in the words of the file.</param>
public sealed record EntrySaying(EntryKind Kind, string Says) : IPointer
{
    /// <inheritdoc/>
    public string Name => $"{Kind.Name}, {Says}";
}
